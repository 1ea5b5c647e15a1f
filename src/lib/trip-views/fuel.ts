import type { Boil, FuelPlan } from '../planning/model/trip-plan.ts';
import type { StartedContainer } from '../planning/model/trip.ts';

/** @returns the fuel that is left in a started container, g. */
export const fuelLeftG = ({ grossG, tareG }: StartedContainer): number => grossG - tareG;

/** @returns what a boil is for: its meal, or what is done to the water. */
export const boilPurpose = ({ purpose, meal }: Boil): string =>
  purpose === 'meal' ? (meal ?? 'meal') : purpose;

/** @returns where the efficiency of the stove comes from, in words. */
export function efficiencyBasisInWords({ efficiencyBasis }: FuelPlan): string {
  switch (efficiencyBasis) {
    case 'entered':
      return 'as entered for this trip';
    case 'learned':
      return 'learned from the fuel weighed after earlier trips';
    case 'measured':
      return 'from your measured boils';
    case 'usual':
      return 'usual for this fuel; measure your own stove below';
  }
}
