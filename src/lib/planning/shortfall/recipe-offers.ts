import { batchSheet } from '../drying/batch-sheet.ts';
import type { Run } from '../drying/expect-run.ts';
import { containerMl, containerTareG } from '../drying/portioning.ts';
import { cookAfterOf } from '../drying/safety-steps.ts';
import { addMonths } from '../model/calendar.ts';
import type { Batch } from '../model/batch.ts';
import type { Kitchen } from '../model/kitchen.ts';
import type { Recipe } from '../model/recipe.ts';
import { dishOf, fitsDryer } from './fill-dryer.ts';
import type { Offer } from './offers.ts';
import { lastCookDay, wholeDays } from './plan-drying.ts';

/** Months that dried food is planned to keep where the storage table says nothing (rule of thumb). */
const KEEPS_MONTHS = 6;
const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

/**
 * Dishes that can be dried from recipes of the kitchen before a departure: each as the pouches that a batch of it is expected to give, with the last day to
 * cook it on. A recipe that does not come to a dish yet, fits no dryer, or would not be sealed in time is left out.
 */
export function recipeOffers(
  recipes: readonly { readonly id: string; readonly recipe: Recipe }[],
  kitchen: Kitchen,
  runs: readonly Run[],
  today: string,
  departure: string,
): Offer[] {
  return recipes.flatMap((entry): Offer[] => {
    const dish = dishOf(entry);
    const dryer = dish && kitchen.dryers.find((other) => fitsDryer(dish, other));
    if (!dish || !dryer) return [];
    const { recipe } = entry;
    const batch: Batch = {
      code: '+',
      recipe,
      timesCooked: 1,
      cookedOn: today,
      dryer,
      preFrozen: false,
      trays: [],
      weighings: [],
      checks: [],
      note: '',
    };
    const { totals, dry, water, steep, allergens, cost, fills, expected } = batchSheet(
      batch,
      kitchen,
      runs,
      today,
    );
    const by = lastCookDay(wholeDays(expected.run.hours), today, departure, kitchen);
    const [fill] = [...fills].sort((a, b) => b.fill.pouches - a.fill.pouches);
    if (by === undefined || !fill || dry.servingKcal <= 0) return [];
    const cookAfter = cookAfterOf(recipe);
    const { pouch, servings, absorbers, absorber } = fill.fill;
    return [
      {
        way: 'dry',
        by,
        lot: {
          code: '+',
          recipe: recipe.name,
          mealKinds: recipe.mealKinds,
          sealedOn: departure,
          bestBefore: fill.keeping?.bestBefore ?? addMonths(departure, KEEPS_MONTHS),
          pouches: 0,
          servingsPerPouch: servings,
          dryWeightG: rounded(dry.servingG, 2),
          energyKcal: rounded(dry.servingKcal, 1),
          proteinG: rounded(dry.servingParts.proteinG, 2),
          fatG: rounded(dry.servingParts.fatG, 2),
          carbohydrateG: rounded(dry.servingParts.carbohydrateG, 2),
          waterMl: rounded(water.servingMl, 0),
          waterKind: recipe.waterKind,
          ...steep,
          tareG: rounded(containerTareG(fill.fill) + absorbers * (absorber?.tareG ?? 0), 1),
          volumeMl: rounded(containerMl(fill.fill), 0),
          ...(allergens && { allergens: [...allergens] }),
          diets: [...totals.diets],
          ...(totals.unpriced.length === 0 && { costMinor: Math.round(cost.perServingMinor) }),
          ...(pouch.noBoilingWater && { pouchTakesBoilingWater: false }),
          ...(pouch.noEating && { eatFromPouch: false }),
          ...(pouch.stands && { pouchStands: true }),
          ...(cookAfter && { cookAfter }),
          note: '',
        },
      },
    ];
  });
}
