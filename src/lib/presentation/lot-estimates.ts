import type { Estimable, EstimateBasis, LotEstimate } from '../planning/model/lot-estimate.ts';
import { ESTIMABLE } from '../planning/model/lot-estimate.ts';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { MEAL_WORDS, WATER_WORDS } from './code-words.ts';
import { about } from './about.ts';
import { show, shownNumber, type Quantity, type UnitSystem } from './show.ts';
import { say, sayList, text, type Text } from '../texts/say.ts';

const BASIS_WORDS: Readonly<Record<EstimateBasis, Text>> = {
  composition: text('from what else is known of it'),
  recipe: text('from your recipe'),
  'similar lots': text('from another lot of that name'),
  'kind of dish': text('by the kind of dish'),
  'rule of thumb': text('rule of thumb'),
};

/** What is measured, and to what step an estimate of it is rounded where it is shown: finer digits would say more than is known. */
const MEASURED: Partial<Record<Estimable, readonly [quantity: Quantity, step: number]>> = {
  energyKcal: ['energy', 10],
  waterMl: ['pour', 10],
  tareG: ['food', 1],
};

/** What nobody has said of a lot, in words. */
export type ShownEstimate = {
  readonly field: Estimable;
  /** The value with its unit. */
  readonly value: string;
  /** Between what it may well lie; left out where the estimate has no range. */
  readonly range?: string;
  /** The value, its range and what it rests on: "about 290 kcal (240 to 360 kcal), by the kind of dish". */
  readonly whole: string;
};

/** @returns the estimates of a lot in the order of `ESTIMABLE`; empty where all was stated. */
export const shownEstimates = (lot: PouchLot, unitSystem: UnitSystem): ShownEstimate[] =>
  ESTIMABLE.flatMap((field) => {
    const estimate = lot.estimated?.[field];
    return estimate ? [shownEstimate(lot, field, estimate, unitSystem)] : [];
  });

function shownEstimate(
  lot: PouchLot,
  field: Estimable,
  { low, high, from }: LotEstimate,
  unitSystem: UnitSystem,
): ShownEstimate {
  const inWords = (value: number | string, bare = false): string => {
    if (typeof value === 'string') return value;
    const [quantity, step] = MEASURED[field] ?? [];
    if (quantity === undefined || step === undefined) return bare ? String(value) : `${value} min`;
    return (bare ? shownNumber : show)(Math.round(value / step) * step, quantity, unitSystem);
  };
  const value =
    field === 'mealKinds'
      ? sayList(
          lot.mealKinds.map((meal) => say(MEAL_WORDS[meal])),
          'disjunction',
        )
      : field === 'waterKind'
        ? say(WATER_WORDS[lot.waterKind])
        : inWords(lot[field]);
  const basis = say(BASIS_WORDS[from]);
  if (low === undefined || high === undefined || low === high)
    return { field, value, whole: say('{value}, {basis}', { value, basis }) };
  const range = say('{low} to {high}', { low: inWords(low, true), high: inWords(high) });
  return {
    field,
    value,
    range,
    whole: say('{value} ({range}), {basis}', { value: about(value), range, basis }),
  };
}

/** @returns what each field of the form of a lot takes that is left blank. */
export const blankFields = (lot: PouchLot, unitSystem: UnitSystem): Readonly<Record<string, string>> =>
  Object.fromEntries(shownEstimates(lot, unitSystem).map(({ field, whole }) => [field, whole]));
