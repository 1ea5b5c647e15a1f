import { z } from 'zod';
import { wrong } from './faults.ts';

/** A weight in g: not negative, at most `most`. */
export const weightG = (mostG = 200_000) =>
  z
    .number(wrong('not-a-weight'))
    .nonnegative(wrong('negative'))
    .max(mostG, wrong('over', { most: mostG, unit: 'g' }));

/** A weight in g of something that is there. */
export const someWeightG = (mostG = 200_000) => weightG(mostG).positive(wrong('not-positive'));

/** A volume in ml of something that is there. */
export const someVolumeMl = (mostMl = 200_000) =>
  z
    .number(wrong('not-a-volume'))
    .positive(wrong('not-positive'))
    .max(mostMl, wrong('over', { most: mostMl, unit: 'ml' }));

/** A share of 1. */
export const share = () =>
  z
    .number(wrong('not-a-share'))
    .min(0, wrong('negative'))
    .max(1, wrong('over', { most: 100, unit: '%' }));

/** Money in minor units of the currency of the settings. */
export const priceMinor = () =>
  z
    .int(wrong('not-minor-units'))
    .nonnegative(wrong('negative'))
    .max(1_000_000_000, wrong('over', { most: 1_000_000_000, unit: 'minor' }));

/** A number of things from `least` to `most`. */
export const count = (least: number, most: number) =>
  z.int(wrong('not-whole')).min(least, wrong('under', { least })).max(most, wrong('over', { most }));

/** A time in minutes, at most a day. */
export const minutes = () =>
  z
    .number(wrong('not-minutes'))
    .nonnegative(wrong('negative'))
    .max(1440, wrong('over', { most: 1440, unit: 'min' }));
