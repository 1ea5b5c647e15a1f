import { addDays, addMonths } from '../model/calendar.ts';
import type { Barrier, FatClass, Kitchen, Process, StorageRule } from '../model/kitchen.ts';

export type Keeping = {
  readonly months: number;
  readonly bestBefore: string;
  /** How the months came about: the line of the table, and the factors for warmth and for residual moisture, 1 where there is nothing to take off. */
  readonly from: {
    readonly line: StorageRule;
    readonly warmth: { readonly factor: number; readonly temperatureC: number };
    readonly moisture: { readonly factor: number; readonly residual: number; readonly expected: number };
    /** Days after which meat dried in warm air is no longer kept, where that is less. */
    readonly meatDays?: number;
  };
};

/**
 * Table months are for this temperature; warmer halves them for each 20 °F (11.1 °C), cooler adds nothing. Source: University of Georgia Extension, So Easy to Preserve: dried
 * fruit keeps a year at 60 °F and six months at 80 °F.
 */
export const TABLE_C = 20;
export const HALVED_BY_C = 100 / 9;
/** @returns share of the table's months that is left at a storage temperature */
export const warmthFactor = (storageC: number): number =>
  2 ** (-Math.max(0, storageC - TABLE_C) / HALVED_BY_C);

/**
 * Days that meat dried in warm air keeps, by where it is stored: at room temperature two weeks, in the refrigerator 3 to 6 months, in the freezer a year.
 * Source: University of Wyoming Extension (Hayman) on jerky made at home; the lower end is taken.
 */
export const DRIED_MEAT_DAYS = { room: 14, refrigerator: 90, freezer: 365 } as const;
const driedMeatDays = (storageC: number): number =>
  storageC <= -18
    ? DRIED_MEAT_DAYS.freezer
    : storageC <= 4
      ? DRIED_MEAT_DAYS.refrigerator
      : DRIED_MEAT_DAYS.room;
const DAYS_OF_MONTH = 30;
/** Kitchen scales do not tell food of less moisture from food of this (common practice). */
const LEAST_TOLD_APART = 0.01;

/**
 * How long sealed food keeps: the table's line for its process, fat, barrier and absorber, less for warmth and for more residual moisture than expected.
 * An estimate of quality, not of safety.
 *
 * @param residual residual moisture, share
 * @returns `undefined` where the table has no such line
 */
export function keeping(
  food: {
    readonly process: Process;
    readonly fatClass: FatClass;
    readonly residual: number;
    readonly barrier: Barrier;
    readonly absorber: boolean;
    readonly sealedOn: string;
    /** Meat, poultry or fish is in it. */
    readonly hasMeat: boolean;
  },
  kitchen: Pick<Kitchen, 'storage' | 'storageTemperatureC' | 'processes'>,
): Keeping | undefined {
  const rule = kitchen.storage.find(
    (line) =>
      line.process === food.process &&
      line.fatClass === food.fatClass &&
      line.barrier === food.barrier &&
      line.absorber === food.absorber,
  );
  if (!rule) return undefined;
  const expected = Math.max(LEAST_TOLD_APART, kitchen.processes[food.process].residualShare);
  const moisture = food.residual > expected + 1e-9 ? expected / food.residual : 1;
  const warmth = warmthFactor(kitchen.storageTemperatureC);
  const months = Math.floor(rule.months * moisture * warmth + 1e-9);
  const byTable = addMonths(food.sealedOn, months);
  const meatDays =
    food.process === 'dehydrated' && food.hasMeat ? driedMeatDays(kitchen.storageTemperatureC) : Infinity;
  const byMeat = Number.isFinite(meatDays) ? addDays(food.sealedOn, meatDays) : byTable;
  const isMeatShorter = byMeat < byTable;
  return {
    months: isMeatShorter ? Math.min(months, Math.floor(meatDays / DAYS_OF_MONTH)) : months,
    bestBefore: isMeatShorter ? byMeat : byTable,
    from: {
      ...(isMeatShorter && { meatDays }),
      line: rule,
      warmth: { factor: warmth, temperatureC: kitchen.storageTemperatureC },
      moisture: { factor: moisture, residual: food.residual, expected },
    },
  };
}
