import type { Terrain, WalkingTimeMethod } from '$lib/planning/model/route.ts';
import type { DayConditions, Trip } from '$lib/planning/model/trip.ts';

/* What a person reads for the choices of a trip, in the order of the lists. */

export const TERRAIN_WORDS: Readonly<Record<Terrain, string>> = {
  blacktop: 'paved road',
  'dirt-road': 'trodden path',
  'light-brush': 'light brush',
  'heavy-brush': 'heavy brush',
  'swampy-bog': 'bog',
  'loose-sand': 'loose sand',
};

export const WIND_WORDS: Readonly<Record<NonNullable<DayConditions['wind']>, string>> = {
  calm: 'calm',
  breezy: 'breezy',
  windy: 'windy',
};

export const CAMP_WATER_WORDS: Readonly<Record<NonNullable<DayConditions['campWater']>, string>> = {
  source: 'a source',
  dry: 'dry camp',
  snow: 'snow to melt',
};

export const WALKING_TIME_WORDS: Readonly<Record<WalkingTimeMethod, string>> = {
  'din-33466': 'DIN 33466',
  tobler: 'Tobler',
  naismith: 'Naismith',
};

export const PLAN_FOR_WORDS: Readonly<Record<NonNullable<Trip['planFor']>, string>> = {
  low: 'the low end',
  middle: 'the middle',
  high: 'the high end',
};

export const TREATMENT_WORDS: Readonly<Record<NonNullable<Trip['treatment']>, string>> = {
  boil: 'boiling',
  filter: 'a filter',
  chemical: 'tablets or drops',
  none: 'not treated',
};

/** @returns the choices of a list, the usual one, which is to leave the field empty, first. */
export function choicesOf(
  words: Readonly<Record<string, string>>,
  usual: string,
): { value: string; label: string }[] {
  return [
    { value: '', label: `usual: ${usual}` },
    ...Object.entries(words).map(([value, label]) => ({ value, label })),
  ];
}
