import type { Boil, FuelPlan } from '../planning/model/trip-plan.ts';
import type { StartedContainer } from '../planning/model/trip.ts';
import { MEAL_WORDS } from '../presentation/code-words.ts';
import { say, text, type Text } from '../texts/say.ts';

/** @returns the fuel that is left in a started container, g. */
export const fuelLeftG = ({ grossG, tareG }: StartedContainer): number => grossG - tareG;

/** @returns what a boil is for: its meal, or what is done to the water. */
export const boilPurpose = ({ purpose, meal }: Boil): string =>
  say(purpose === 'meal' && meal ? MEAL_WORDS[meal] : PURPOSE_WORDS[purpose]);
const PURPOSE_WORDS: Readonly<Record<Boil['purpose'], Text>> = {
  meal: text('meal'),
  melting: text('melting'),
  'making safe': text('making safe'),
};

/** @returns where the efficiency of the stove comes from, in words. */
export function efficiencyBasisInWords({ efficiencyBasis }: FuelPlan): string {
  switch (efficiencyBasis) {
    case 'entered':
      return say('as entered for this trip');
    case 'learned':
      return say('learned from the fuel weighed after earlier trips');
    case 'measured':
      return say('from your measured boils');
    case 'usual':
      return say('usual for this fuel; measure your own stove below');
  }
}
