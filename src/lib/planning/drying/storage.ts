import { say } from '../../texts/say.ts';
import { addMonths } from '../model/calendar.ts';
import type { Barrier, FatClass, Kitchen, Process } from '../model/kitchen.ts';
import { BARRIER_WORDS, FAT_CLASS_WORDS, PROCESS_WORDS } from '../model/words.ts';
import { shownFixed } from '../units/show.ts';

export type Keeping = {
  readonly months: number;
  readonly bestBefore: string;
  /** How the months came about. */
  readonly terms: readonly string[];
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
    terms: [
      say(
        '{months} months: {process}, {fat}, {barrier}, {absorber, select, yes {with} other {without}} oxygen absorber, at {warmth} °C',
        {
          months: String(rule.months),
          process: say(PROCESS_WORDS[food.process]),
          fat: say(FAT_CLASS_WORDS[food.fatClass]),
          barrier: say(BARRIER_WORDS[food.barrier]),
          absorber: food.absorber ? 'yes' : 'no',
          warmth: TABLE_C,
        },
      ),
      ...(warmth < 1
        ? [
            say('× {factor}: kept at {warmth} °C', {
              factor: shownFixed(warmth, 2),
              warmth: shownFixed(kitchen.storageTemperatureC, 0),
            }),
          ]
        : []),
      ...(moisture < 1
        ? [
            say('× {factor}: {residual} % residual moisture, {expected} % were expected', {
              factor: shownFixed(moisture, 2),
              residual: shownFixed(food.residual * 100, 1),
              expected: shownFixed(expected * 100, 1),
            }),
          ]
        : []),
    ],
  };
}
