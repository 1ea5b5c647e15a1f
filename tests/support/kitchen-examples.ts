import type { z } from 'zod';
import { Batch } from '../../src/lib/planning/model/batch.ts';
import { Food } from '../../src/lib/planning/model/composition.ts';
import { defaultKitchen } from '../../src/lib/planning/model/kitchen.ts';
import { Recipe } from '../../src/lib/planning/model/recipe.ts';
import { safetyChecks } from '../../src/lib/planning/drying/safety-steps.ts';

/** 70 g of water, 30 g of dry matter (1 g of it ash) and, by the EU factors, 130 kcal in 100 g. */
export function exampleFood(changes: Partial<z.input<typeof Food>> = {}): Food {
  return Food.parse({
    name: 'bean mix',
    composition: { waterG: 70, proteinG: 9, fatG: 4, carbohydrateG: 13, fibreG: 3 },
    source: 'invented',
    allergens: [],
    diets: ['vegan'],
    ...changes,
  });
}

/** 4 kg of one food, which come out of the pot as they went in: 1200 g of dry matter in 11 servings. */
export function exampleRecipe(changes: Partial<z.input<typeof Recipe>> = {}): Recipe {
  return Recipe.parse({
    name: 'bean pan',
    mealKinds: ['dinner'],
    servings: 11,
    ingredients: [
      {
        food: exampleFood(),
        quantity: { amount: 4, unit: 'kg' },
        price: { paidMinor: 1000, paidFor: { amount: 4, unit: 'kg' } },
      },
    ],
    ...changes,
  });
}

const fourTrays = <T>(tray: T): T[] => Array.from({ length: 4 }, () => tray);

/** The recipe on four trays of 1 kg, dry at 306 g each (1200 g of dry matter in 1224 g), every check done. */
export function exampleBatch(changes: Partial<z.input<typeof Batch>> = {}): Batch {
  const recipe = Recipe.parse(changes.recipe ?? exampleRecipe());
  const dryer = changes.dryer ?? defaultKitchen().dryers[0];
  const dry = fourTrays({ grossG: 306, feel: 'dry through' as const });
  return Batch.parse({
    code: 'BP1',
    recipe,
    cookedOn: '2026-09-01',
    dryer,
    trays: fourTrays({ loadedG: 1000 }),
    weighings: [
      { afterH: 24, trays: dry },
      { afterH: 26, trays: dry },
    ],
    checks: safetyChecks(recipe, dryer?.process ?? 'freeze-dried').map(({ id, leastC }) => ({
      id,
      on: '2026-09-01',
      ...(leastC !== undefined && { readingC: 80 }),
    })),
    ...changes,
  });
}
