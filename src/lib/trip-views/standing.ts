import { noticeText } from '../presentation/notice-words.ts';
import type { Notice } from '../planning/model/notices.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import { NOTICE_SEVERITIES } from '../planning/model/words.ts';
import type { UnitSystem } from '../presentation/show.ts';
import { say, text } from '../texts/say.ts';

/** The pages of a trip, in the order of the work. */
export const TRIP_PAGES = [
  { slug: 'party', label: text('Group') },
  { slug: 'route', label: text('Route') },
  { slug: 'menu', label: text('Menu') },
  { slug: 'loads', label: text('Pack weights') },
  { slug: 'water', label: text('Water and fuel') },
  { slug: 'missing', label: text('Shortfall') },
  { slug: 'resupply', label: text('Resupply') },
  { slug: 'card', label: text('Trail card') },
  { slug: 'pouches', label: text('Set aside') },
  { slug: 'afterwards', label: text('After the trip') },
] as const;
export type TripPage = (typeof TRIP_PAGES)[number]['slug'];

/** @returns the page on which something can be done about a notice. */
export function pageOf({ page }: Pick<Notice, 'page'>): (typeof TRIP_PAGES)[number] {
  return TRIP_PAGES.find(({ slug }) => slug === page) ?? TRIP_PAGES[0];
}

/** @returns the notices, the gravest first, otherwise in their order. */
export function worstFirst<T extends Pick<Notice, 'severity'>>(notices: readonly T[]): T[] {
  const rank = ({ severity }: T) => NOTICE_SEVERITIES.indexOf(severity);
  return [...notices].sort((a, b) => rank(a) - rank(b));
}

/** What is wrong with a plan in a few words: the gravest notice, and how many more there are as grave. */
export type Verdict =
  | { readonly severity: 'good'; readonly text: string; readonly more: 0 }
  | { readonly severity: Exclude<Notice['severity'], 'note'>; readonly text: string; readonly more: number };

/** @param units those of the reader */
export function verdictOf(plan: Pick<TripPlan, 'notices'>, units: UnitSystem): Verdict {
  const [worst] = worstFirst(plan.notices);
  if (!worst || worst.severity === 'note')
    return { severity: 'good', text: say('Enough food for everyone, and no pack over its limit.'), more: 0 };
  const { severity } = worst;
  const alike = plan.notices.filter((notice) => notice.severity === severity);
  return { severity, text: noticeText(worst, units), more: alike.length - 1 };
}
