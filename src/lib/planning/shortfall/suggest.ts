import { mayEat } from '../menu/exclusions.ts';
import { unitsOf } from '../menu/lot-rules.ts';
import { MOST_UNITS } from '../menu/menu-model.ts';
import { pouchesFrom, packetsOf, type PlannedLot } from '../model/planned-lot.ts';
import { pouchEnergyKcal, pouchFoodG } from '../model/pouch-totals.ts';
import type { Eater } from '../model/trip.ts';
import { MAIN_MEALS, type MealKind } from '../model/words.ts';
import { fillsMeal, unitKcal, type Offer } from './offers.ts';

/** What one person lacks at one meal of one day. */
export type Gap = { readonly day: number; readonly eater: string; readonly missingKcal: number };

/** Portions from a pot are quarters of a serving, at least a half; one plate holds no more than so many servings of one food (rule of thumb). */
const QUARTER = 0.25;
const LEAST_SERVINGS = 0.5;
const MOST_SERVINGS = 2.5;
/** Extras that are no piece are eaten at most so much of a day, g (rule of thumb: two handfuls). */
const MOST_EXTRA_G = 100;
/** So many dishes share a line of the shopping list where there are as many. */
const MOST_SHARING = 3;

const isMain = (meal: MealKind): boolean => (MAIN_MEALS as readonly MealKind[]).includes(meal);

/** What a plate takes of a food for a gap, servings, and the energy that it brings of what is missing, kcal. */
function plateOf(offer: Offer, meal: MealKind, { missingKcal }: Gap): { servings: number; kcal: number } {
  const { lot } = offer;
  if (isMain(meal)) {
    const wanted = Math.round(missingKcal / lot.energyKcal / QUARTER) * QUARTER;
    const servings = Math.min(MOST_SERVINGS, Math.max(LEAST_SERVINGS, wanted));
    return { servings, kcal: Math.min(missingKcal, servings * lot.energyKcal) };
  }
  const perUnit = unitKcal(offer);
  const unitG = pouchFoodG(lot) / unitsOf(lot);
  const most =
    lot.pieces === undefined
      ? Math.min(MOST_UNITS, Math.max(1, Math.floor(MOST_EXTRA_G / unitG)))
      : MOST_UNITS;
  const units = Math.min(most, Math.ceil(missingKcal / perUnit - 1e-9));
  return {
    servings: (units * lot.servingsPerPouch) / unitsOf(lot),
    kcal: Math.min(missingKcal, units * perUnit),
  };
}

/** What a line of the shopping list still lacks, gap by gap. */
export class OpenGaps {
  #gaps: readonly Gap[];
  readonly #meal: MealKind;

  constructor(meal: MealKind, gaps: readonly Gap[]) {
    this.#meal = meal;
    this.#gaps = gaps;
  }

  get missingKcal(): number {
    return this.#gaps.reduce((sum, { missingKcal }) => sum + missingKcal, 0);
  }

  /**
   * Fills gaps with one food, so that nobody eats the same all the time: plates of a dish on every `sharing`-th day; of extras that part of each day, and no more
   * than one eats of one.
   *
   * @returns servings that it takes
   */
  fill(offer: Offer, sharing: number): number {
    const days = [...new Set(this.#gaps.map(({ day }) => day))].sort((a, b) => a - b);
    let servings = 0;
    this.#gaps = this.#gaps.flatMap((gap): Gap[] => {
      if (isMain(this.#meal) && days.indexOf(gap.day) % sharing !== 0) return [gap];
      const plate = plateOf(
        offer,
        this.#meal,
        isMain(this.#meal) ? gap : { ...gap, missingKcal: gap.missingKcal / sharing },
      );
      servings += plate.servings;
      const missingKcal = isMain(this.#meal) ? 0 : gap.missingKcal - plate.kcal;
      return missingKcal > 1 ? [{ ...gap, missingKcal }] : [];
    });
    return servings;
  }
}

/** Foods that may fill a line, for the meal and for everybody of it. */
export const offersFor = (
  offers: readonly Offer[],
  meal: MealKind,
  group: readonly Pick<Eater, 'allergens' | 'diets'>[],
): Offer[] =>
  offers.filter((offer) => fillsMeal(offer, meal) && group.every((eater) => mayEat(offer.lot, eater)));

/** @returns so much of a food as planned, in whole pouches, of bought food in whole packets. */
export function amountOf(offer: Offer, servings: number): PlannedLot {
  const { lot, packetG } = offer;
  const pouches = Math.max(1, Math.ceil(servings / lot.servingsPerPouch - 1e-9));
  const planned = { ...offer, lot: { ...lot, pouches } };
  if (packetG === undefined) return planned;
  return { ...planned, lot: { ...lot, pouches: pouchesFrom(packetsOf(planned), packetG, lot) } };
}

/** One food for a line: on half of its days where others could be on the rest, else on all. */
export function suggestionOf(
  offer: Offer,
  meal: MealKind,
  gaps: readonly Gap[],
  hasOthers: boolean,
): PlannedLot & { readonly energyKcal: number } {
  const open = new OpenGaps(meal, gaps);
  const planned = amountOf(offer, open.fill(offer, hasOthers ? 2 : 1));
  return { ...planned, energyKcal: planned.lot.pouches * pouchEnergyKcal(planned.lot) };
}

/** A line filled with several foods, the first before the others. @returns amounts of those that are used */
export function fillLine(offers: readonly Offer[], meal: MealKind, gaps: readonly Gap[]): PlannedLot[] {
  const open = new OpenGaps(meal, gaps);
  const days = new Set(gaps.map(({ day }) => day)).size;
  const sharing = isMain(meal)
    ? offers.slice(0, Math.min(MOST_SHARING, days))
    : offers.slice(0, MOST_SHARING);
  const servings = new Map<Offer, number>();
  sharing.forEach((offer, index) => {
    if (open.missingKcal < 1) return;
    const taken = open.fill(offer, sharing.length - index);
    if (taken > 0) servings.set(offer, taken);
  });
  return [...servings].map(([offer, taken]) => amountOf(offer, taken));
}
