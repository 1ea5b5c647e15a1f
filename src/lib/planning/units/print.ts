import { LENGTH_M } from './convert.ts';

/* Lengths on paper are in mm, type is in points of 1/72 inch, as in CSS and PDF. */

export const MM_PER_INCH = 1000 * LENGTH_M.in;
export const MM_PER_POINT = MM_PER_INCH / 72;
