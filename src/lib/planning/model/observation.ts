import { z } from 'zod';
import { sayLater } from '../../texts/say.ts';
import { CalendarDate, FuelKind, ShortText } from './kinds.ts';
import { APPETITES } from './words.ts';

export const AppetiteAnswer = z.enum(APPETITES);
export type AppetiteAnswer = z.infer<typeof AppetiteAnswer>;

const ofTrip = {
  tripId: z.string().max(64),
  trip: ShortText.describe('Name of the trip'),
  date: CalendarDate.describe('When it was said'),
};
const hours = (what: string) =>
  z
    .number(sayLater('must be a number of hours'))
    .positive(sayLater('must be more than 0'))
    .max(2000, sayLater('must be at most 2000 hours'))
    .describe(what);
const fuelG = (what: string) =>
  z
    .number(sayLater('must be a weight'))
    .positive(sayLater('must be more than 0'))
    .max(1_000_000, sayLater('must be at most 1000 kg'))
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
    kind: z.literal('fuel'),
    ...ofTrip,
    fuel: FuelKind,
    efficiency: z
      .number(sayLater('must be a share'))
      .min(0.01, sayLater('must be at least 1 %'))
      .max(1, sayLater('must be at most 100 %'))
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
