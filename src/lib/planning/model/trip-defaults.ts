import { say, text, type Text } from '../../texts/say.ts';
import type { BodyData } from './body.ts';
import { isMinor } from './minors.ts';
import type { Terrain, WalkingTimeMethod } from './route.ts';
import type { Trip } from './trip.ts';
import type { CanisterGas, FuelKind, MainMeal, ServingStyle } from './words.ts';

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
  acclimatised: byCommonPractice<NonNullable<Trip['acclimatised']>>(
    'no',
    text('the body takes 10 to 14 days to get used to heat'),
  ),
  treatment: byCommonPractice<NonNullable<Trip['treatment']>>(
    'filter',
    text('the most widespread way on the trail'),
  ),
  servingStyle: byCommonPractice<ServingStyle>(
    'mixed',
    text('a pot or pouches of their own, whichever costs less food, fuel and weight'),
  ),
  reserveMeals: byCommonPractice(
    0,
    text('take a meal or two more where weather or a late bus can hold you up'),
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
  sun: byCommonPractice<'sun' | 'mixed' | 'shade'>('mixed', text('some sun and some shade')),
  wind: byCommonPractice<'calm' | 'breezy' | 'windy'>('calm', text('the stove stands behind its shield')),
  terrain: byCommonPractice<Terrain>('dirt-road', text('a trodden path')),
  campWater: byCommonPractice<'source' | 'dry' | 'snow'>(
    'source',
    text('camps are mostly chosen near water'),
  ),
  waterEveryH: byCommonPractice(3, text('streams or huts twice a day')),
  fuel: byCommonPractice<FuelKind>('canister-gas', text('the most widespread stove')),
  gas: byCommonPractice<CanisterGas>('isobutane', text('what most canisters for hiking hold')),
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

/** Share of a fuel's heat that reaches the water and the pot, with a lid behind a wind shield, in calm mild air (common practice). */
export const STOVE_EFFICIENCY: Readonly<Record<FuelKind, EfficiencyRange>> = {
  'canister-gas': range(
    0.5,
    0.4,
    0.6,
    text('canister stoves bring 40 to 60 % of the heat into water and pot, more with a heat exchanger'),
  ),
  naphtha: range(
    0.45,
    0.35,
    0.55,
    text('pressure stoves bring 35 to 55 % of the heat into water and pot, less what priming burns'),
  ),
  kerosene: range(
    0.45,
    0.35,
    0.55,
    text('pressure stoves bring 35 to 55 % of the heat into water and pot, less what priming burns'),
  ),
  ethanol: range(0.4, 0.3, 0.5, text('open spirit burners bring 30 to 50 % of the heat into water and pot')),
};

/** Loads of a body that is known, as shares of its mass. */
export const LOAD_SHARES = {
  /** Usual limits. Adults: common practice. Minors: the 15 % up to which a limit is justified by evidence (Brackley & Stevenson 2004, Spine 29:2184). */
  adultLimit: 0.25,
  minorLimit: 0.15,
  /** Usual gear. Adults: that of a person of 72 kg, not less than LEAST_GEAR_G (common practice). Minors: clothes and a small bag (common practice). */
  adultGear: 8 / 72,
  minorGear: 0.05,
} as const;
const LEAST_GEAR_G = 6000;
const MOST_GEAR_G = 10_000;
/** A small bag of a child whose mass is not known: a jacket, a bottle, a toy (common practice). */
const SMALL_BAG_G = 1000;
const MINOR_BOTTLES_ML = 1000;

/** What an eater may carry, has in the pack, and drinks from, where nobody entered it: by mass and age as far as they are known. */
export function usualLoads(body: BodyData): {
  readonly maxLoadG: Default<number>;
  readonly baseLoadG: Default<number>;
  readonly waterCapacityMl: Default<number>;
} {
  const { massG } = body;
  if (isMinor(body)) {
    const waterCapacityMl = byCommonPractice(MINOR_BOTTLES_ML, text('a bottle of their own'));
    if (massG === undefined) {
      const bag = byCommonPractice(
        SMALL_BAG_G,
        text('a child whose body mass is not entered carries a small bag of their own and nothing else'),
      );
      return { maxLoadG: bag, baseLoadG: bag, waterCapacityMl };
    }
    return {
      maxLoadG: {
        value: wholeHundred(LOAD_SHARES.minorLimit * massG),
        get reason() {
          return say('15% of the body mass of a child or youth (Brackley & Stevenson 2004)');
        },
      },
      baseLoadG: byCommonPractice(
        wholeHundred(LOAD_SHARES.minorGear * massG),
        text('5% of the body mass: clothes and a small bag, adults carry the rest'),
      ),
      waterCapacityMl,
    };
  }
  if (massG === undefined)
    return {
      maxLoadG: TRIP_DEFAULTS.maxLoadG,
      baseLoadG: TRIP_DEFAULTS.baseLoadG,
      waterCapacityMl: TRIP_DEFAULTS.waterCapacityMl,
    };
  return {
    maxLoadG: byCommonPractice(
      wholeHundred(LOAD_SHARES.adultLimit * massG),
      text('a quarter of the body mass of an adult'),
    ),
    baseLoadG: byCommonPractice(
      wholeHundred(Math.min(MOST_GEAR_G, Math.max(LEAST_GEAR_G, LOAD_SHARES.adultGear * massG))),
      text('a ninth of the body mass: pack, shelter, sleeping bag, clothes and a share of the kitchen'),
    ),
    waterCapacityMl: TRIP_DEFAULTS.waterCapacityMl,
  };
}
const wholeHundred = (g: number): number => Math.floor(g / 100) * 100;
