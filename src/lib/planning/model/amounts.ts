import { z } from 'zod';
import { sayLater } from '../../texts/say.ts';

/** A weight in g: not negative, at most `most`. */
export const weightG = (mostG = 200_000) =>
  z
    .number(sayLater('must be a weight'))
    .nonnegative(sayLater('must not be negative'))
    .max(mostG, sayLater('must be at most {most, number} g', { most: mostG }));

/** A weight in g of something that is there. */
export const someWeightG = (mostG = 200_000) => weightG(mostG).positive(sayLater('must be more than 0'));

/** A volume in ml of something that is there. */
export const someVolumeMl = (mostMl = 200_000) =>
  z
    .number(sayLater('must be a volume'))
    .positive(sayLater('must be more than 0'))
    .max(mostMl, sayLater('must be at most {most, number} ml', { most: mostMl }));

/** A share of 1. */
export const share = () =>
  z
    .number(sayLater('must be a share'))
    .min(0, sayLater('must not be negative'))
    .max(1, sayLater('must be at most 100 %'));

/** Money in minor units of the currency of the settings. */
export const priceMinor = () =>
  z
    .int(sayLater('must be whole minor units, such as cents'))
    .nonnegative(sayLater('must not be negative'))
    .max(1_000_000_000, sayLater('must be at most 1,000,000,000 minor units'));

/** A number of things from `least` to `most`. */
export const count = (least: number, most: number) =>
  z
    .int(sayLater('must be a whole number'))
    .min(least, sayLater('must be at least {least}', { least }))
    .max(most, sayLater('must be at most {most, number}', { most }));

/** A time in minutes, at most a day. */
export const minutes = () =>
  z
    .number(sayLater('must be a number of minutes'))
    .nonnegative(sayLater('must not be negative'))
    .max(1440, sayLater('must be at most 1440 minutes'));
