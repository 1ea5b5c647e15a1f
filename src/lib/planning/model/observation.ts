import { z } from 'zod';
import { wrong } from './faults.ts';
import { CalendarDate, FuelKind, ShortText } from './kinds.ts';
import { APPETITES, LIKINGS } from './words.ts';

export const AppetiteAnswer = z.enum(APPETITES);
export type AppetiteAnswer = z.infer<typeof AppetiteAnswer>;

const ofTrip = {
  tripId: z.string().max(64),
  trip: ShortText.describe('Name of the trip'),
  date: CalendarDate.describe('When it was said'),
};
const hours = (what: string) =>
  z
    .number(wrong('not-hours'))
    .positive(wrong('not-positive'))
    .max(2000, wrong('over', { most: 2000, unit: 'h' }))
    .describe(what);
const fuelG = (what: string) =>
  z
    .number(wrong('not-a-weight'))
    .positive(wrong('not-positive'))
    .max(1_000_000, wrong('over', { most: 1000, unit: 'kg' }))
    .describe(what);

/** What a finished trip taught, as it was said or weighed; what follows from it is made anew each time. */
export const Observation = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('appetite'),
    ...ofTrip,
    eater: ShortText,
    answer: AppetiteAnswer,
    ofOwnFigure: z
      .boolean()
      .describe(
        'The target was a figure entered for the trip or the eater, so the answer is no word on the usual one',
      ),
  }),
  z.strictObject({
    kind: z.literal('taste'),
    ...ofTrip,
    tripId: ofTrip.tripId.optional().describe('Left out: said at home, of a pouch that was eaten there'),
    eater: ShortText,
    dish: ShortText,
    answer: z.enum(LIKINGS),
  }),
  z.strictObject({
    kind: z.literal('fuel'),
    ...ofTrip,
    fuel: FuelKind,
    efficiency: z
      .number(wrong('not-a-share'))
      .min(0.01, wrong('under', { least: 1, unit: '%' }))
      .max(1, wrong('over', { most: 100, unit: '%' }))
      .describe('Efficiency of the stove, in calm mild air, that the plan was made with'),
    plannedG: fuelG('Fuel that the plan would have burnt for what was eaten, g'),
    burntG: fuelG('Fuel burnt, by the scale, g'),
  }),
  z.strictObject({
    kind: z.literal('pace'),
    ...ofTrip,
    plannedH: hours('Hours of the method with rests, at a party factor of 1, of the days that were timed'),
    walkedH: hours('Hours walked on these days, rests included'),
  }),
]);
export type Observation = z.infer<typeof Observation>;
export type ObservationOf<Kind extends Observation['kind']> = Extract<Observation, { readonly kind: Kind }>;
