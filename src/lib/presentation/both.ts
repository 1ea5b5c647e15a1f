import { show, type Quantity } from './show.ts';

/** A value of the core in both unit systems, for sentences of a plan, which is the same whatever the units on the screen: "21.9 l (23.1 qt)". */
export function showBoth(value: number, quantity: Quantity): string {
  return `${show(value, quantity, 'metric')} (${show(value, quantity, 'us')})`;
}
