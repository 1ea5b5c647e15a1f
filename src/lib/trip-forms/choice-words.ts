import type { Body } from '$lib/planning/model/body.ts';
import type { Terrain, WalkingTimeMethod } from '$lib/planning/model/route.ts';
import { say, text, type Text } from '$lib/texts/say.ts';
import type { DayConditions, Trip } from '$lib/planning/model/trip.ts';

/* What a person reads for the choices of a trip, in the order of the lists. */

export const TERRAIN_WORDS: Readonly<Record<Terrain, Text>> = {
  blacktop: text('paved road'),
  'dirt-road': text('trail'),
  'light-brush': text('light brush'),
  'heavy-brush': text('heavy brush'),
  'swampy-bog': text('bog'),
  'loose-sand': text('loose sand'),
  'firm-snow': text('firm snow (footprints 2 cm)'),
  'soft-snow': text('soft snow (footprints 10 cm)'),
  'deep-snow': text('deep snow (footprints 20 cm)'),
};

export const SUN_WORDS: Readonly<Record<NonNullable<DayConditions['sun']>, Text>> = {
  sun: text('full sun'),
  mixed: text('sun and shade'),
  shade: text('full shade'),
};

export const ACCLIMATISED_WORDS: Readonly<Record<NonNullable<Trip['acclimatised']>, Text>> = {
  yes: text('yes, all of us'),
  no: text('no, not all of us'),
};

export const WIND_WORDS: Readonly<Record<NonNullable<DayConditions['wind']>, Text>> = {
  calm: text('calm'),
  breezy: text('breezy'),
  windy: text('windy'),
};

export const CAMP_WATER_WORDS: Readonly<Record<NonNullable<DayConditions['campWater']>, Text>> = {
  source: text('water source'),
  dry: text('dry camp'),
  snow: text('snow to melt'),
};

export const WALKING_TIME_WORDS: Readonly<Record<WalkingTimeMethod, Text>> = {
  'din-33466': text('DIN 33466'),
  tobler: text('Tobler'),
  naismith: text('Naismith'),
};

export const PLAN_FOR_WORDS: Readonly<Record<NonNullable<Trip['planFor']>, Text>> = {
  low: text('low estimate'),
  middle: text('middle estimate'),
  high: text('high estimate'),
};

export const SEX_WORDS: Readonly<Record<Body['sex'], Text>> = {
  female: text('female'),
  male: text('male'),
};

export const TREATMENT_WORDS: Readonly<Record<NonNullable<Trip['treatment']>, Text>> = {
  boil: text('boiling'),
  filter: text('a filter'),
  chemical: text('tablets or drops'),
  none: text('not treated'),
};

/** @returns the choices of a list, the usual one, which is to leave the field empty, first. */
export function choicesOf(
  words: Readonly<Record<string, Text>>,
  usual: string,
): { value: string; label: string }[] {
  return [
    { value: '', label: say('default: {value}', { value: usual }) },
    ...Object.entries(words).map(([value, label]) => ({ value, label: say(label) })),
  ];
}
