import {
  STEP,
  type Influence,
  type Input,
  type Sensitivity,
  type Watched,
} from '../planning/sensitivity/sensitivity-of.ts';
import { show, shownExactly, shownNumber, type Quantity, type UnitSystem } from '../presentation/show.ts';
import { say, text, type Text } from '../texts/say.ts';

/** The figures that are watched, in the order of the table. */
export const WATCHED = [
  { key: 'packsG', label: text('All packs, day 1'), quantity: 'pack' },
  { key: 'fuelG', label: text('Fuel'), quantity: 'food' },
  { key: 'waterMl', label: text('Water'), quantity: 'water' },
  { key: 'energyKcal', label: text('Energy'), quantity: 'energy' },
] as const satisfies readonly { key: keyof Watched; label: Text; quantity: Quantity }[];

/** What each input is called. */
const INPUT_WORDS: Readonly<Record<Input, Text>> = {
  'energy target': text('energy target'),
  'body mass': text('body weight'),
  'base load': text('base weight'),
  'walking hours': text('walking hours'),
  'altitude of the camps': text('altitude of the camps'),
  'air temperature': text('air temperature'),
  'water temperature': text('water temperature'),
  'energy of the pouches': text('energy of the pouches'),
  'dry weight of the pouches': text('dry weight of the pouches'),
  'water the pouches take': text('water added to the pouches'),
  'water of a day at rest': text('water of a day at rest'),
  'drinking for each hour of walking': text('drinking for each hour of walking'),
  'efficiency of the stove': text('efficiency of the stove'),
  'fuel reserve': text('fuel reserve'),
};

/** One input: what each watched figure gains or loses with the input a step lower and a step higher. */
export type Mover = {
  readonly input: string;
  readonly step: string;
  readonly largestShare: number;
  readonly changes: readonly {
    readonly key: keyof Watched;
    readonly lower: number;
    readonly higher: number;
  }[];
};

/** @returns the inputs that move something, the strongest first, and the names of those that do not. */
export function moversOf({ base, influences }: Sensitivity): { movers: Mover[]; idle: string[] } {
  const moves = ({ largestShare }: Influence) => largestShare >= 0.0005;
  return {
    movers: influences.filter(moves).map(({ input, stepC, lower, higher, largestShare }) => ({
      input: say(INPUT_WORDS[input]),
      step: stepC === undefined ? show(STEP, 'share', 'metric') : stepText(stepC),
      largestShare,
      changes: WATCHED.map(({ key }) => ({
        key,
        lower: lower[key] - base[key],
        higher: higher[key] - base[key],
      })),
    })),
    idle: influences.filter((influence) => !moves(influence)).map(({ input }) => say(INPUT_WORDS[input])),
  };
}

const stepText = (stepC: number): string => `${shownExactly(stepC)} °C (${shownExactly((stepC * 9) / 5)} °F)`;

/** @returns a change with its sign, such as "+0.4 kg"; a dash where it is too small to show. */
export function shownChange(change: number, quantity: Quantity, system: UnitSystem): string {
  const size = Math.abs(change);
  if (!/[1-9]/.test(shownNumber(size, quantity, system))) return '–';
  return `${change < 0 ? '−' : '+'}${show(size, quantity, system)}`;
}
