import type { BodyData } from './body.ts';

/** Below this age loads and drinking are those of a child or youth, years. */
export const MINOR_UNDER_Y = 18;

/** Whether somebody is known to be under age: `isMinor({ ageY: 9 })` is `true`, `isMinor({})` is `false`. */
export const isMinor = ({ ageY }: BodyData): boolean => ageY !== undefined && ageY < MINOR_UNDER_Y;
