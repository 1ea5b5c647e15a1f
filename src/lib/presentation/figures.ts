import { show, type UnitSystem } from './show.ts';

/** @returns energy in a sentence, to 10 kcal above 1,000: a menu is not known more exactly. `energyText(1127, 'metric')` is "1,130 kcal". */
export function energyText(kcal: number, units: UnitSystem): string {
  return show(kcal > 1000 ? Math.round(kcal / 10) * 10 : kcal, 'energy', units);
}
