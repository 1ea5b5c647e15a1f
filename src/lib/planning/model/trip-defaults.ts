import { say, text, type Text } from '../../texts/say.ts';
import type { Terrain, WalkingTimeMethod } from './route.ts';
import type { Trip } from './trip.ts';
import type { FuelKind, MainMeal } from './words.ts';

/** A value that stands in for one the user left out, with the reason a person can read. */
export type Default<T> = { readonly value: T; readonly reason: string };

const commonPractice = (why: Text): string => say('{why} (common practice)', { why: say(why) });
/** Its reason is said when it is read, in the language then around. */
const byCommonPractice = <T>(value: T, why: Text): Default<T> => ({
  value,
  get reason() {
    return commonPractice(why);
  },
});

export const TRIP_DEFAULTS = {
  firstMeal: byCommonPractice<MainMeal>(
    'lunch',
    text('most parties have breakfast at home on the first day'),
  ),
  lastMeal: byCommonPractice<MainMeal>('lunch', text('most parties are home for dinner on the last day')),
  energyKcal: byCommonPractice(
    3000,
    text('an adult who walks all day with a pack needs some 2500 to 4000 kcal'),
  ),
  maxLoadG: byCommonPractice(18_000, text('about a quarter of the body mass of an adult of 72 kg')),
  baseLoadG: byCommonPractice(8_000, text('pack, shelter, sleeping bag, clothes and a share of the kitchen')),
  waterCapacityMl: byCommonPractice(3000, text('two bottles and a bag')),
  planFor: byCommonPractice<NonNullable<Trip['planFor']>>('middle', text('the central estimate')),
  deficitShare: byCommonPractice(0, text('nobody goes hungry unless the party chooses to')),
  treatment: byCommonPractice<NonNullable<Trip['treatment']>>(
    'filter',
    text('the most widespread way on the trail'),
  ),
  paceMethod: {
    value: 'din-33466' as WalkingTimeMethod,
    get reason() {
      return say('the figures of DIN 33466, as signposts in the Alps use');
    },
  },
  partyFactor: byCommonPractice(1, text('a party as fast as the method')),
  restShare: byCommonPractice(0.2, text('ten minutes of rest an hour, roughly')),
  walkingH: byCommonPractice(6, text('a usual day on the trail')),
  campAltitudeM: byCommonPractice(500, text('low hills')),
  airTemperatureC: byCommonPractice(18, text('a mild day')),
  waterTemperatureC: byCommonPractice(10, text('a stream in the hills in summer')),
  humidityShare: byCommonPractice(0.5, text('a fair day')),
  wind: byCommonPractice<'calm' | 'breezy' | 'windy'>('calm', text('the stove stands behind its shield')),
  terrain: byCommonPractice<Terrain>('dirt-road', text('a trodden path')),
  campWater: byCommonPractice<'source' | 'dry' | 'snow'>(
    'source',
    text('camps are mostly chosen near water'),
  ),
  waterEveryH: byCommonPractice(3, text('streams or huts twice a day')),
  fuel: byCommonPractice<FuelKind>('canister-gas', text('the most widespread stove')),
  potG: byCommonPractice(250, text('a light pot of 1.5 l with its lid')),
  potMl: byCommonPractice(1500, text('a pot for two to four')),
  reserve: byCommonPractice(0.25, text('wind, spills and a hot drink more')),
} as const;

export type EfficiencyRange = Default<number> & { readonly low: number; readonly high: number };

const range = (value: number, low: number, high: number, why: Text): EfficiencyRange => ({
  value,
  low,
  high,
  get reason() {
    return commonPractice(why);
  },
});

/** Share of a fuel's heat that reaches the water in a pot with a lid behind a wind shield, in calm mild air (common practice). */
export const STOVE_EFFICIENCY: Readonly<Record<FuelKind, EfficiencyRange>> = {
  'canister-gas': range(
    0.5,
    0.4,
    0.6,
    text('canister stoves bring 40 to 60 % of the heat into the water, more with a heat exchanger'),
  ),
  naphtha: range(
    0.45,
    0.35,
    0.55,
    text('pressure stoves bring 35 to 55 % of the heat into the water, less what priming burns'),
  ),
  kerosene: range(
    0.45,
    0.35,
    0.55,
    text('pressure stoves bring 35 to 55 % of the heat into the water, less what priming burns'),
  ),
  ethanol: range(0.4, 0.3, 0.5, text('open spirit burners bring 30 to 50 % of the heat into the water')),
};
