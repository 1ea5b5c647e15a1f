import { batchSheet } from '../drying/batch-sheet.ts';
import type { Run } from '../drying/expect-run.ts';
import { lotOfFill } from '../drying/lot-of-fill.ts';
import { addMonths } from '../model/calendar.ts';
import type { Batch } from '../model/batch.ts';
import type { Kitchen } from '../model/kitchen.ts';
import type { Recipe } from '../model/recipe.ts';
import { dishOf, fitsDryer } from './fill-dryer.ts';
import type { Offer } from './offers.ts';
import { lastCookDay, daysToSealing } from './plan-drying.ts';

/** Months that dried food is planned to keep where the storage table says nothing (rule of thumb). */
const KEEPS_MONTHS = 6;

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
    const sheet = batchSheet(batch, kitchen, runs, today);
    const by = lastCookDay(
      daysToSealing(batch.dryer, sheet.expected.run.hours, kitchen),
      today,
      departure,
      kitchen,
    );
    const [fill] = [...sheet.fills].sort((a, b) => b.fill.pouches - a.fill.pouches);
    if (by === undefined || !fill || sheet.dry.servingKcal <= 0) return [];
    return [
      {
        way: 'dry',
        by,
        lot: lotOfFill(recipe, sheet, fill.fill, {
          code: '+',
          sealedOn: departure,
          bestBefore: fill.keeping?.bestBefore ?? addMonths(departure, KEEPS_MONTHS),
          pouches: 0,
          note: '',
        }),
      },
    ];
  });
}
