import type { AbsorberSize } from '../model/kitchen.ts';

/** Oxygen in dry air by volume (standard atmosphere, ISO 2533). */
export const OXYGEN_SHARE = 0.2095;
const MOST_IN_A_POUCH = 20;

export type AbsorberChoice = { readonly absorber: AbsorberSize; readonly absorbers: number };

/**
 * Oxygen that a sealed pouch shuts in, ml: what is neither food nor pouch is air.
 *
 * @param pouchMl volume of the sealed pouch, ml
 * @param foodMl true volume of its food, ml
 */
export function oxygenInPouchMl(pouchMl: number, foodMl: number): number {
  return OXYGEN_SHARE * Math.max(0, pouchMl - foodMl);
}

/**
 * The fewest absorbers of one size that take up the oxygen with its reserve; of equal numbers the smaller size.
 *
 * @param reserve share above the oxygen
 * @returns `undefined` where no size is on hand, or more than twenty would be needed
 */
export function chooseAbsorbers(
  oxygenMl: number,
  reserve: number,
  sizes: readonly AbsorberSize[],
): AbsorberChoice | undefined {
  const neededMl = oxygenMl * (1 + reserve);
  return sizes
    .map((absorber) => ({ absorber, absorbers: Math.max(1, Math.ceil(neededMl / absorber.oxygenMl - 1e-9)) }))
    .filter(({ absorbers }) => absorbers <= MOST_IN_A_POUCH)
    .sort(
      (a, b) =>
        a.absorbers - b.absorbers ||
        a.absorber.oxygenMl - b.absorber.oxygenMl ||
        (a.absorber.label < b.absorber.label ? -1 : 1),
    )[0];
}

/**
 * What to hold the calculation against: oxygen-absorbing capacity by pouch volume, ml, between a pouch that is filled tight and one that is mostly air
 * (rule of thumb).
 */
export const ruleOfThumbMl = (pouchMl: number): { readonly low: number; readonly high: number } => ({
  low: pouchMl * 0.07,
  high: pouchMl * 0.25,
});
