import type { Terrain, WalkingTimeMethod } from './route.ts';
import type { Trip } from './trip.ts';
import type { FuelKind, MainMeal } from './words.ts';

/** A value that stands in for one the user left out, with the reason a person can read. */
export type Default<T> = { readonly value: T; readonly reason: string };

const byCommonPractice = <T>(value: T, why: string): Default<T> => ({
  value,
  reason: `${why} (common practice)`,
});

export const TRIP_DEFAULTS = {
  firstMeal: byCommonPractice<MainMeal>('lunch', 'most parties have breakfast at home on the first day'),
  lastMeal: byCommonPractice<MainMeal>('lunch', 'most parties are home for dinner on the last day'),
  energyKcal: byCommonPractice(3000, 'an adult who walks all day with a pack needs some 2500 to 4000 kcal'),
  maxLoadG: byCommonPractice(18_000, 'about a quarter of the body mass of an adult of 72 kg'),
  baseLoadG: byCommonPractice(8_000, 'pack, shelter, sleeping bag, clothes and a share of the kitchen'),
  waterCapacityMl: byCommonPractice(3000, 'two bottles and a bag'),
  planFor: byCommonPractice<NonNullable<Trip['planFor']>>('middle', 'the central estimate'),
  deficitShare: byCommonPractice(0, 'nobody goes hungry unless the party chooses to'),
  treatment: byCommonPractice<NonNullable<Trip['treatment']>>(
    'filter',
    'the most widespread way on the trail',
  ),
  paceMethod: {
    value: 'din-33466' as WalkingTimeMethod,
    reason: 'the figures of DIN 33466, as signposts in the Alps use',
  },
  partyFactor: byCommonPractice(1, 'a party as fast as the method'),
  restShare: byCommonPractice(0.2, 'ten minutes of rest an hour, roughly'),
  walkingH: byCommonPractice(6, 'a usual day on the trail'),
  campAltitudeM: byCommonPractice(500, 'low hills'),
  airTemperatureC: byCommonPractice(18, 'a mild day'),
  waterTemperatureC: byCommonPractice(10, 'a stream in the hills in summer'),
  humidityShare: byCommonPractice(0.5, 'a fair day'),
  wind: byCommonPractice<'calm' | 'breezy' | 'windy'>('calm', 'the stove stands behind its shield'),
  terrain: byCommonPractice<Terrain>('dirt-road', 'a trodden path'),
  campWater: byCommonPractice<'source' | 'dry' | 'snow'>('source', 'camps are mostly chosen near water'),
  waterEveryH: byCommonPractice(3, 'streams or huts twice a day'),
  fuel: byCommonPractice<FuelKind>('canister-gas', 'the most widespread stove'),
  potG: byCommonPractice(250, 'a light pot of 1.5 l with its lid'),
  potMl: byCommonPractice(1500, 'a pot for two to four'),
  reserve: byCommonPractice(0.25, 'wind, spills and a hot drink more'),
} as const;

export type EfficiencyRange = Default<number> & { readonly low: number; readonly high: number };

/** Share of a fuel's heat that reaches the water in a pot with a lid behind a wind shield, in calm mild air (common practice). */
export const STOVE_EFFICIENCY: Readonly<Record<FuelKind, EfficiencyRange>> = {
  'canister-gas': {
    ...byCommonPractice(
      0.5,
      'canister stoves bring 40 to 60 % of the heat into the water, more with a heat exchanger',
    ),
    low: 0.4,
    high: 0.6,
  },
  naphtha: {
    ...byCommonPractice(
      0.45,
      'pressure stoves bring 35 to 55 % of the heat into the water, less what priming burns',
    ),
    low: 0.35,
    high: 0.55,
  },
  kerosene: {
    ...byCommonPractice(
      0.45,
      'pressure stoves bring 35 to 55 % of the heat into the water, less what priming burns',
    ),
    low: 0.35,
    high: 0.55,
  },
  ethanol: {
    ...byCommonPractice(0.4, 'open spirit burners bring 30 to 50 % of the heat into the water'),
    low: 0.3,
    high: 0.5,
  },
};
