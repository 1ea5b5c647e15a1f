import { z } from 'zod';

/** A weight in g: not negative, at most `most`. */
export const weightG = (mostG = 200_000) =>
  z
    .number('must be a weight')
    .nonnegative('must not be negative')
    .max(mostG, `must be at most ${mostG.toLocaleString('en')} g`);

/** A weight in g of something that is there. */
export const someWeightG = (mostG = 200_000) => weightG(mostG).positive('must be more than 0');

/** A volume in ml of something that is there. */
export const someVolumeMl = (mostMl = 200_000) =>
  z
    .number('must be a volume')
    .positive('must be more than 0')
    .max(mostMl, `must be at most ${mostMl.toLocaleString('en')} ml`);

/** A share of 1. */
export const share = () =>
  z.number('must be a share').min(0, 'must not be negative').max(1, 'must be at most 100 %');

/** Money in minor units of the currency of the settings. */
export const priceMinor = () =>
  z
    .int('must be whole minor units, such as cents')
    .nonnegative('must not be negative')
    .max(1_000_000_000, 'must be at most 1,000,000,000 minor units');

/** A number of things from `least` to `most`. */
export const count = (least: number, most: number) =>
  z
    .int('must be a whole number')
    .min(least, `must be at least ${least}`)
    .max(most, `must be at most ${most.toLocaleString('en')}`);

/** A time in minutes, at most a day. */
export const minutes = () =>
  z
    .number('must be a number of minutes')
    .nonnegative('must not be negative')
    .max(1440, 'must be at most 1440 minutes');
