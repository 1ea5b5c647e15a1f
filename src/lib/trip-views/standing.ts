import type { DayLoad, Notice, TripPlan } from '../planning/model/trip-plan.ts';
import { say, text } from '../texts/say.ts';

/** The figures that stand at the head of every page of a trip. */
export type Standing = {
  readonly dayCount: number;
  readonly eaterCount: number;
  readonly eatenKcal: number;
  readonly targetKcal: number;
  /** What has to be dried or bought: days that come close to their target miss nothing. */
  readonly missingKcal: number;
  /** The heaviest pack of day 1. */
  readonly heaviest: DayLoad | undefined;
  readonly fuelGrossG: number;
  readonly fuelWithReserveG: number;
  readonly peakWaterMl: number;
  readonly peakWaterDay: number;
  readonly pouches: number;
};

export function standingOf(plan: TripPlan): Standing {
  const onDay1 = plan.carry.loads.filter(({ day }) => day === 1);
  return {
    dayCount: plan.demand.length,
    eaterCount: plan.carry.packs.length,
    eatenKcal: plan.totals.eatenKcal,
    targetKcal: plan.totals.targetKcal,
    missingKcal: plan.shortfall.missingKcal,
    heaviest: onDay1.reduce<DayLoad | undefined>(
      (heaviest, load) => (heaviest && heaviest.peakG >= load.peakG ? heaviest : load),
      undefined,
    ),
    fuelGrossG: plan.fuel.grossG,
    fuelWithReserveG: plan.fuel.withReserveG,
    peakWaterMl: plan.water.peakMl,
    peakWaterDay: plan.water.peakDay,
    pouches: plan.totals.pouches,
  };
}

/** The pages of a trip, in the order of the work. */
export const TRIP_PAGES = [
  { slug: 'party', label: text('Party') },
  { slug: 'route', label: text('Route') },
  { slug: 'menu', label: text('Menu') },
  { slug: 'loads', label: text('Loads') },
  { slug: 'water', label: text('Water and fuel') },
  { slug: 'missing', label: text('Missing') },
  { slug: 'card', label: text('Trail card') },
  { slug: 'pouches', label: text('Set aside') },
  { slug: 'afterwards', label: text('Afterwards') },
] as const;
export type TripPage = (typeof TRIP_PAGES)[number]['slug'];

const PAGE_OF: Readonly<Record<Notice['topic'], TripPage>> = {
  route: 'route',
  body: 'party',
  menu: 'menu',
  allergen: 'missing',
  energy: 'missing',
  load: 'loads',
  water: 'water',
  fuel: 'water',
  stove: 'water',
};

/** @returns the page on which what a notice says can be mended or looked up. */
export function pageOf(notice: Notice): (typeof TRIP_PAGES)[number] {
  const slug = PAGE_OF[notice.topic];
  return TRIP_PAGES.find((page) => page.slug === slug) ?? TRIP_PAGES[0];
}

const LEVELS: readonly Notice['level'][] = ['wrong', 'caution', 'note'];

/** @returns the notices, the worst first, otherwise in their order. */
export function worstFirst(notices: readonly Notice[]): Notice[] {
  return [...notices].sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level));
}

/** What is wrong with a plan in a few words: the worst notice, and how many more there are of its level. */
export type Verdict = {
  readonly level: 'good' | 'caution' | 'wrong';
  readonly text: string;
  readonly more: number;
};

export function verdictOf(plan: TripPlan): Verdict {
  const wrong = plan.notices.filter(({ level }) => level === 'wrong');
  const cautions = plan.notices.filter(({ level }) => level === 'caution');
  const [worst] = wrong.length > 0 ? wrong : cautions;
  if (!worst)
    return { level: 'good', text: say('Enough food for everyone, and no pack too heavy.'), more: 0 };
  return wrong.length > 0
    ? { level: 'wrong', text: worst.text, more: wrong.length - 1 }
    : { level: 'caution', text: worst.text, more: cautions.length - 1 };
}
