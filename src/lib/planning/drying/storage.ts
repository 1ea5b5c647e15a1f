import { addMonths } from '../model/calendar.ts';
import type { Barrier, FatClass, Kitchen, Process, StorageRule } from '../model/kitchen.ts';

export type Keeping = {
  readonly months: number;
  readonly bestBefore: string;
  /** How the months came about: the line of the table, and the factors for warmth and for residual moisture, 1 where there is nothing to take off. */
  readonly from: {
    readonly line: StorageRule;
    readonly warmth: { readonly factor: number; readonly temperatureC: number };
    readonly moisture: { readonly factor: number; readonly residual: number; readonly expected: number };
  };
};

/** Table months are for this temperature; warmer halves them for each 10 °C (a Q10 of 2: Labuza 1982, Shelf-Life Dating of Foods, memory), cooler adds nothing. */
export const TABLE_C = 20;
export const Q10 = 2;
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
  const warmth = Q10 ** (-Math.max(0, kitchen.storageTemperatureC - TABLE_C) / 10);
  const months = Math.floor(rule.months * moisture * warmth + 1e-9);
  return {
    months,
    bestBefore: addMonths(food.sealedOn, months),
    from: {
      line: rule,
      warmth: { factor: warmth, temperatureC: kitchen.storageTemperatureC },
      moisture: { factor: moisture, residual: food.residual, expected },
    },
  };
}
