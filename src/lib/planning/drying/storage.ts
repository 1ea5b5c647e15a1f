import { addMonths } from '../model/calendar.ts';
import type { Barrier, FatClass, Kitchen, Process } from '../model/kitchen.ts';

export type Keeping = {
  readonly months: number;
  readonly bestBefore: string;
  /** How the months came about. */
  readonly terms: readonly string[];
};

/** Table months are for this temperature; warmer halves them for each 10 °C (a Q10 of 2: Labuza 1982, Shelf-Life Dating of Foods, memory), cooler adds nothing. */
export const TABLE_C = 20;
const Q10 = 2;
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
    terms: [
      `${rule.months} months: ${food.process}, ${food.fatClass}, ${food.barrier}, ${food.absorber ? 'with' : 'without'} oxygen absorber, at ${TABLE_C} °C`,
      ...(warmth < 1 ? [`× ${warmth.toFixed(2)}: kept at ${kitchen.storageTemperatureC.toFixed(0)} °C`] : []),
      ...(moisture < 1
        ? [
            `× ${moisture.toFixed(2)}: ${(food.residual * 100).toFixed(1)} % residual moisture, ${(expected * 100).toFixed(1)} % were expected`,
          ]
        : []),
    ],
  };
}
