import type { Against } from '../planning/menu/meal-options.ts';
import type { Wall } from '../planning/menu/exclusions.ts';
import type { Exclusions } from '../planning/model/trip-plan.ts';
import { allergenLabel, dietLabel, MEAL_WORDS } from './code-words.ts';
import { say } from '../texts/say.ts';

/** @returns what an eater avoids and keeps to: "no milk", "vegan" */
export const exclusionTexts = ({ allergens, diets }: Exclusions): string[] =>
  [
    ...allergens.map((code) => say('no {allergen}', { allergen: allergenLabel(code) })),
    ...diets.map(dietLabel),
  ].sort();

/** @returns why somebody must not be served a food: "contains milk, tree nuts" */
export function wallText(wall: Wall): string {
  switch (wall.kind) {
    case 'unstated':
      return say('allergens not declared');
    case 'holds':
      return say('contains {allergens}', { allergens: wall.allergens.map(allergenLabel).join(', ') });
    case 'unmet':
      return say('not declared as {diets}', { diets: wall.diets.map(dietLabel).join(', ') });
  }
}

/** @returns what speaks against a lot at a meal: "not for Ben: contains milk", "meant for breakfast" */
export const againstText = (against: Against): string =>
  against.kind === 'not for'
    ? say('not for {eater}: {why}', { eater: against.eater, why: wallText(against.why) })
    : say('meant for {meals}', { meals: against.meals.map((kind) => say(MEAL_WORDS[kind])).join(', ') });
