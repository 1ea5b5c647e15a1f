import type { FuelKind, MainMeal } from './words.ts';
import type { Eater, Trip } from './trip.ts';

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
  walkingH: byCommonPractice(6, 'a usual day on the trail'),
  campAltitudeM: byCommonPractice(500, 'low hills'),
  airTemperatureC: byCommonPractice(18, 'a mild day'),
  waterTemperatureC: byCommonPractice(10, 'a stream in the hills in summer'),
  campWater: byCommonPractice<'source' | 'dry'>('source', 'camps are mostly chosen near water'),
  waterEveryH: byCommonPractice(3, 'streams or huts twice a day'),
  fuel: byCommonPractice<FuelKind>('canister-gas', 'the most widespread stove'),
  reserve: byCommonPractice(0.25, 'wind, spills and a hot drink more'),
} as const;

/** Share of a fuel's heat that reaches the water in an open pot with a lid and a wind shield, out of strong wind (common practice). */
export const STOVE_EFFICIENCY: Readonly<Record<FuelKind, Default<number>>> = {
  'canister-gas': byCommonPractice(
    0.5,
    'canister stoves bring 40 to 60 % of the heat into the water, more with a heat exchanger',
  ),
  naphtha: byCommonPractice(
    0.45,
    'pressure stoves bring 35 to 55 % of the heat into the water, less what priming burns',
  ),
  kerosene: byCommonPractice(
    0.45,
    'pressure stoves bring 35 to 55 % of the heat into the water, less what priming burns',
  ),
  ethanol: byCommonPractice(0.4, 'open spirit burners bring 30 to 50 % of the heat into the water'),
};

/** One value that a plan rests on although nobody entered it. */
export type Assumption = { readonly field: string; readonly value: string | number; readonly reason: string };

export type ResolvedEater = Pick<Eater, 'name' | 'allergens' | 'diets'> & {
  readonly energyKcal: number;
  readonly maxLoadG: number;
  readonly baseLoadG: number;
};
export type ResolvedDay = {
  readonly day: number;
  readonly date: string;
  readonly walkingH: number;
  readonly campAltitudeM: number;
  readonly airTemperatureC: number;
  readonly waterTemperatureC: number;
  readonly campWater: 'source' | 'dry';
  readonly waterEveryH: number;
};
export type ResolvedTrip = {
  readonly name: string;
  readonly firstMeal: MainMeal;
  readonly lastMeal: MainMeal;
  readonly party: readonly ResolvedEater[];
  readonly days: readonly ResolvedDay[];
  readonly stove: { readonly fuel: FuelKind; readonly efficiency: number; readonly reserve: number };
  readonly menu: Trip['menu'];
  readonly assumptions: readonly Assumption[];
};

/** @returns the calendar date `days` after `date`. */
export function addDays(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

/**
 * Fills in what the user left out and lists every value filled in, so that a plan can show its defaults as such.
 *
 * @param trip a valid trip
 */
export function resolveTrip(trip: Trip): ResolvedTrip {
  const assumptions: Assumption[] = [];
  const orDefault = <T extends string | number>(
    field: string,
    given: T | undefined,
    fallback: Default<T>,
  ): T => {
    if (given !== undefined) return given;
    assumptions.push({ field, value: fallback.value, reason: fallback.reason });
    return fallback.value;
  };

  const allHaveEnergy = trip.party.every((eater) => eater.energyKcal !== undefined);
  const energyKcal = allHaveEnergy ? 0 : orDefault('energyKcal', trip.energyKcal, TRIP_DEFAULTS.energyKcal);
  const firstMeal = orDefault('firstMeal', trip.firstMeal, TRIP_DEFAULTS.firstMeal);
  const lastMealDefault =
    trip.dayCount === 1 && firstMeal === 'dinner' && trip.lastMeal === undefined
      ? { value: 'dinner' as const, reason: 'the only day begins with dinner' }
      : TRIP_DEFAULTS.lastMeal;
  const lastMeal = orDefault('lastMeal', trip.lastMeal, lastMealDefault);
  const party = trip.party.map((eater, index) => ({
    name: eater.name,
    energyKcal: eater.energyKcal ?? energyKcal,
    allergens: eater.allergens,
    diets: eater.diets,
    maxLoadG: orDefault(`party.${index}.maxLoadG`, eater.maxLoadG, TRIP_DEFAULTS.maxLoadG),
    baseLoadG: orDefault(`party.${index}.baseLoadG`, eater.baseLoadG, TRIP_DEFAULTS.baseLoadG),
  }));
  const days = Array.from({ length: trip.dayCount }, (_, index): ResolvedDay => {
    const given = trip.days[index] ?? {};
    const at = (name: string) => `days.${index}.${name}`;
    return {
      day: index + 1,
      date: addDays(trip.startDate, index),
      walkingH: orDefault(at('walkingH'), given.walkingH, TRIP_DEFAULTS.walkingH),
      campAltitudeM: orDefault(at('campAltitudeM'), given.campAltitudeM, TRIP_DEFAULTS.campAltitudeM),
      airTemperatureC: orDefault(at('airTemperatureC'), given.airTemperatureC, TRIP_DEFAULTS.airTemperatureC),
      waterTemperatureC: orDefault(
        at('waterTemperatureC'),
        given.waterTemperatureC,
        TRIP_DEFAULTS.waterTemperatureC,
      ),
      campWater: orDefault(at('campWater'), given.campWater, TRIP_DEFAULTS.campWater),
      waterEveryH: orDefault(at('waterEveryH'), given.waterEveryH, TRIP_DEFAULTS.waterEveryH),
    };
  });
  const fuel = orDefault('stove.fuel', trip.stove.fuel, TRIP_DEFAULTS.fuel);
  const stove = {
    fuel,
    efficiency: orDefault('stove.efficiency', trip.stove.efficiency, STOVE_EFFICIENCY[fuel]),
    reserve: orDefault('stove.reserve', trip.stove.reserve, TRIP_DEFAULTS.reserve),
  };
  return { name: trip.name, firstMeal, lastMeal, party, days, stove, menu: trip.menu, assumptions };
}
