import type { BodyData } from './body.ts';
import { isMinor } from './minors.ts';
import type { Terrain, WalkingTimeMethod } from './route.ts';
import type { Trip } from './trip.ts';
import type { UsualValue, Why } from './why.ts';
import type { CanisterGas, FuelKind, MainMeal, ServingStyle } from './words.ts';

/** A value that stands in for one the user left out, and why. */
export type Default<T> = { readonly value: T; readonly why: Why };

const byCommonPractice = <T>(value: T, of: UsualValue): Default<T> => ({ value, why: { code: 'usual', of } });

export const TRIP_DEFAULTS = {
  firstMeal: byCommonPractice<MainMeal>('lunch', 'first meal'),
  lastMeal: byCommonPractice<MainMeal>('lunch', 'last meal'),
  energyKcal: byCommonPractice(3000, 'energy'),
  maxLoadG: byCommonPractice(18_000, 'carry limit'),
  baseLoadG: byCommonPractice(8_000, 'base weight'),
  waterCapacityMl: byCommonPractice(3000, 'bottles'),
  planFor: byCommonPractice<NonNullable<Trip['planFor']>>('middle', 'range'),
  deficitShare: byCommonPractice(0, 'deficit'),
  acclimatised: byCommonPractice<NonNullable<Trip['acclimatised']>>('no', 'acclimatised'),
  treatment: byCommonPractice<NonNullable<Trip['treatment']>>('filter', 'treatment'),
  servingStyle: byCommonPractice<ServingStyle>('mixed', 'serving style'),
  reserveMeals: byCommonPractice(0, 'reserve meals'),
  paceMethod: {
    value: 'din-33466' as WalkingTimeMethod,
    why: { code: 'signposts' } as Why,
  },
  partyFactor: byCommonPractice(1, 'party factor'),
  restShare: byCommonPractice(0.2, 'rests'),
  walkingH: byCommonPractice(6, 'walking hours'),
  campAltitudeM: byCommonPractice(500, 'camp altitude'),
  airTemperatureC: byCommonPractice(18, 'air temperature'),
  waterTemperatureC: byCommonPractice(10, 'water temperature'),
  humidityShare: byCommonPractice(0.5, 'humidity'),
  sun: byCommonPractice<'sun' | 'mixed' | 'shade'>('mixed', 'sun'),
  wind: byCommonPractice<'calm' | 'breezy' | 'windy'>('calm', 'wind'),
  terrain: byCommonPractice<Terrain>('dirt-road', 'terrain'),
  campWater: byCommonPractice<'source' | 'dry' | 'snow'>('source', 'camp water'),
  waterEveryH: byCommonPractice(3, 'water on the way'),
  fuel: byCommonPractice<FuelKind>('canister-gas', 'fuel'),
  gas: byCommonPractice<CanisterGas>('isobutane', 'gas'),
  potG: byCommonPractice(250, 'pot'),
  potMl: byCommonPractice(1500, 'water in a pot'),
  reserve: byCommonPractice(0.25, 'fuel reserve'),
} as const;

export type EfficiencyRange = Default<number> & { readonly low: number; readonly high: number };

const range = (value: number, low: number, high: number, of: UsualValue): EfficiencyRange => ({
  ...byCommonPractice(value, of),
  low,
  high,
});

/** Share of a fuel's heat that reaches the water and the pot, with a lid behind a wind shield, in calm mild air (common practice). */
export const STOVE_EFFICIENCY: Readonly<Record<FuelKind, EfficiencyRange>> = {
  'canister-gas': range(0.5, 0.4, 0.6, 'efficiency of canister-gas'),
  naphtha: range(0.45, 0.35, 0.55, 'efficiency of naphtha'),
  kerosene: range(0.45, 0.35, 0.55, 'efficiency of kerosene'),
  ethanol: range(0.4, 0.3, 0.5, 'efficiency of ethanol'),
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
    const waterCapacityMl = byCommonPractice(MINOR_BOTTLES_ML, 'bottle of a minor');
    if (massG === undefined) {
      const bag = byCommonPractice(SMALL_BAG_G, 'bag of a child');
      return { maxLoadG: bag, baseLoadG: bag, waterCapacityMl };
    }
    return {
      maxLoadG: {
        value: wholeHundred(LOAD_SHARES.minorLimit * massG),
        why: { code: 'carry limit of a minor' },
      },
      baseLoadG: byCommonPractice(wholeHundred(LOAD_SHARES.minorGear * massG), 'base weight of a minor'),
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
    maxLoadG: byCommonPractice(wholeHundred(LOAD_SHARES.adultLimit * massG), 'carry limit of an adult'),
    baseLoadG: byCommonPractice(
      wholeHundred(Math.min(MOST_GEAR_G, Math.max(LEAST_GEAR_G, LOAD_SHARES.adultGear * massG))),
      'base weight of an adult',
    ),
    waterCapacityMl: TRIP_DEFAULTS.waterCapacityMl,
  };
}
const wholeHundred = (g: number): number => Math.floor(g / 100) * 100;
