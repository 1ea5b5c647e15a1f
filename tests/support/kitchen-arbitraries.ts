import fc from 'fast-check';
import type { z } from 'zod';
import { safetyChecks } from '../../src/lib/planning/drying/safety-steps.ts';
import { ALLERGENS } from '../../src/lib/planning/model/allergens.ts';
import { Batch } from '../../src/lib/planning/model/batch.ts';
import {
  COOKING_CLASSES,
  PROCESSES,
  TRAY_FEELS,
  WATER_FINDINGS,
  WATER_KINDS,
} from '../../src/lib/planning/model/words.ts';
import { Food } from '../../src/lib/planning/model/composition.ts';
import { DIETS } from '../../src/lib/planning/model/diets.ts';
import { ENERGY_FACTORS } from '../../src/lib/planning/model/energy-factors.ts';
import { defaultKitchen, Kitchen, type Process } from '../../src/lib/planning/model/kitchen.ts';
import { Recipe } from '../../src/lib/planning/model/recipe.ts';
import { amount, optional, present } from './arbitraries.ts';

/** Random foods, recipes, kitchens and batches that the schemas accept, for what must hold for all of them. */

const thousandths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 1000);
const DAY = '2026-09-01';

/** Parts of 100 g by weights of a draw, so that they never come to more. */
const compositions = fc
  .tuple(amount(0, 10), amount(0, 5), amount(0, 5), amount(0, 5), amount(0, 2), amount(0, 1), amount(0, 1))
  .map(([water, protein, fat, carbohydrate, fibre, alcohol, ash]) => {
    const all = water + protein + fat + carbohydrate + fibre + alcohol + ash;
    const of = (weight: number) => (all > 0 ? (99.99 * weight) / all : 0);
    return {
      waterG: of(water),
      proteinG: of(protein),
      fatG: of(fat),
      carbohydrateG: of(carbohydrate),
      fibreG: of(fibre),
      alcoholG: of(alcohol),
    };
  });

const foods: fc.Arbitrary<Food> = fc
  .record({
    name: fc.constantFrom('beans', 'oil', 'rice', 'stock', 'tomatoes'),
    composition: compositions,
    allergens: optional(fc.subarray([...ALLERGENS], { maxLength: 3 })),
    diets: fc.subarray([...DIETS], { maxLength: 3 }),
    cookingClass: fc.constantFrom(...COOKING_CLASSES),
  })
  .map((food) => Food.parse(present({ ...food, source: 'random' })));

export const recipes: fc.Arbitrary<Recipe> = fc
  .record({
    ingredients: fc.array(
      fc.record({
        food: foods,
        quantity: fc.record({ amount: amount(0.1, 3000), unit: fc.constant('g' as const) }),
        trimmedShare: amount(0.1, 1),
        price: optional(
          fc.record({
            paidMinor: fc.integer({ min: 0, max: 5000 }),
            paidFor: fc.constant({ amount: 1, unit: 'kg' as const }),
          }),
        ),
      }),
      { maxLength: 6 },
    ),
    servings: fc.oneof(fc.integer({ min: 1, max: 40 }), amount(0.5, 12)),
    cookingYield: fc.oneof(fc.constant(1), amount(0.3, 3)),
    fatDrainedG: fc.oneof(fc.constant(0), amount(0, 200)),
    energyFactors: fc.constantFrom(...ENERGY_FACTORS),
    bulkGPerMl: amount(0.2, 1.2),
    waterKind: fc.constantFrom(...WATER_KINDS),
    steepMin: optional(fc.integer({ min: 0, max: 40 })),
    stirAfterMin: optional(fc.integer({ min: 0, max: 40 })),
    waterShare: optional(amount(0.1, 2)),
    waterNotes: fc.array(fc.record({ date: fc.constant(DAY), finding: fc.constantFrom(...WATER_FINDINGS) }), {
      maxLength: 5,
    }),
  })
  .map(({ ingredients, ...recipe }) =>
    Recipe.parse(
      present({
        ...recipe,
        name: 'random dish',
        mealKinds: ['dinner'],
        ingredients: ingredients.map(present),
      }),
    ),
  );

/** The usual kitchen, and kitchens that lack or overdo something. */
export const kitchens: fc.Arbitrary<Kitchen> = fc
  .record({
    pouches: fc.oneof(fc.constant(defaultKitchen().pouches), fc.subarray(defaultKitchen().pouches)),
    absorbers: fc.subarray(defaultKitchen().absorbers),
    storage: fc.oneof(fc.constant(defaultKitchen().storage), fc.subarray(defaultKitchen().storage)),
    headspaceShare: amount(0, 0.8),
    absorberReserve: amount(0, 5),
    storageTemperatureC: fc.integer({ min: -30, max: 45 }),
    shopServingMinor: optional(fc.integer({ min: 0, max: 2000 })),
    residualShare: fc.constantFrom(0, 0.02, 0.08, 0.5),
  })
  .map(({ residualShare, ...kitchen }) => {
    const { processes } = defaultKitchen();
    return Kitchen.parse(
      present({
        ...kitchen,
        processes: {
          ...processes,
          'freeze-dried': { ...processes['freeze-dried'], residualShare },
        },
      }),
    );
  });

const doneChecks = (recipe: Recipe, process: Process) =>
  safetyChecks(recipe, process).map(({ id }) => ({ id, on: DAY, readingC: 90 }));

type TrayDraw = { tareG: number; wetG: number; shares: readonly number[]; feel: (typeof TRAY_FEELS)[number] };

/** Trays that get lighter from weighing to weighing, some of them left out of one. */
function dried(
  trays: readonly TrayDraw[],
  hours: readonly number[],
): Pick<z.input<typeof Batch>, 'trays' | 'weighings'> {
  return {
    trays: trays.map(({ tareG, wetG }) => ({ tareG, loadedG: tareG + wetG })),
    weighings: hours.map((_, at) => ({
      afterH: hours.slice(0, at + 1).reduce((sum, hour) => sum + hour, 0),
      trays: trays.map(({ tareG, wetG, shares, feel }) => {
        const left = shares.slice(0, at + 1).reduce((product, share) => product * share, 1);
        return shares[at] === 1 ? { feel } : { grossG: tareG + wetG * left, feel };
      }),
    })),
  };
}

/** Batches at any stage, right and wrong. */
export const batches: fc.Arbitrary<Batch> = fc
  .record({
    recipe: recipes,
    process: fc.constantFrom(...PROCESSES),
    timesCooked: fc.constantFrom(1, 1, 2, 0.5),
    cookedG: optional(amount(0.1, 20_000)),
    preFrozen: fc.boolean(),
    trays: fc.array(
      fc.record({
        tareG: fc.constantFrom(0, 0, 350),
        wetG: amount(0.1, 1500),
        shares: fc.array(amount(0.1, 1), { minLength: 4, maxLength: 4 }),
        feel: fc.constantFrom(...TRAY_FEELS),
      }),
      { maxLength: 4 },
    ),
    hours: fc.array(amount(0.1, 20), { maxLength: 4 }),
    checked: fc.boolean(),
    energyKwh: optional(amount(0, 60)),
    packedShare: optional(amount(0.1, 1)),
    cup: optional(fc.record({ volumeMl: amount(50, 500), netG: amount(1, 400) })),
    servings: optional(fc.oneof(fc.integer({ min: 1, max: 60 }), amount(0.1, 20))),
    mostPerPouch: optional(fc.integer({ min: 1, max: 6 })),
    allergens: optional(fc.subarray([...ALLERGENS], { maxLength: 2 })),
    bestBefore: optional(fc.constantFrom('2026-01-01', '2027-06-30')),
  })
  .map(({ process, trays, hours, checked, packedShare, ...batch }) =>
    Batch.parse(
      present({
        ...batch,
        code: 'R1',
        cookedOn: DAY,
        dryer: defaultKitchen().dryers.find((dryer) => dryer.process === process),
        ...dried(trays, hours),
        checks: checked ? doneChecks(batch.recipe, process) : [],
        packedG:
          packedShare && trays.length > 0
            ? packedShare * trays.reduce((sum, { wetG }) => sum + wetG, 0)
            : undefined,
      }),
    ),
  );

/**
 * Batches as they should be: a dish with water in it, all of it on trays, dried to a little residual moisture, in whole servings of a size that people eat.
 * A batch with `moister` is the same with that much more weight left.
 */
export const soundBatches: fc.Arbitrary<{ batch: Batch; moister: Batch }> = fc
  .record({
    food: foods,
    solidsG: fc.integer({ min: 400, max: 2000 }),
    waterPerSolids: thousandths(500, 8000),
    process: fc.constantFrom(...PROCESSES),
    onTrays: thousandths(500, 1000),
    residual: thousandths(0, 120),
    more: thousandths(1000, 1300),
    servings: fc.integer({ min: 6, max: 30 }),
    packedShare: optional(thousandths(300, 1000)),
    checked: fc.boolean(),
    mostPerPouch: optional(fc.integer({ min: 1, max: 4 })),
    recipe: recipes,
  })
  .filter(({ food }) => 100 - food.composition.waterG - food.composition.alcoholG > 20)
  .map(
    ({
      food,
      solidsG,
      waterPerSolids,
      process,
      onTrays,
      residual,
      more,
      servings,
      packedShare,
      checked,
      mostPerPouch,
      recipe,
    }) => {
      const amountG = (100 * solidsG) / (100 - food.composition.waterG - food.composition.alcoholG);
      const cookedG = solidsG * (1 + waterPerSolids);
      const dryer = defaultKitchen().dryers.find((one) => one.process === process);
      const trayCount = dryer?.trayCount ?? 1;
      const trayG = (cookedG * onTrays) / trayCount;
      const dryG = (solidsG * onTrays) / (1 - residual) / trayCount;
      const dish = Recipe.parse({
        ...recipe,
        fatDrainedG: 0,
        ingredients: [{ food, quantity: { amount: amountG, unit: 'g' } }],
      });
      const grown = (factor: number) => {
        const grossG = Math.min(trayG, dryG * factor);
        const line = Array.from({ length: trayCount }, () => ({ grossG, feel: 'dry through' as const }));
        return Batch.parse(
          present({
            code: 'S1',
            recipe: dish,
            checks: checked ? doneChecks(dish, dryer?.process ?? 'freeze-dried') : [],
            cookedOn: DAY,
            cookedG,
            dryer,
            trays: Array.from({ length: trayCount }, () => ({ loadedG: trayG })),
            weighings: [
              { afterH: 20, trays: line },
              { afterH: 22, trays: line },
            ],
            servings,
            packedG: packedShare && packedShare * grossG * trayCount,
            mostPerPouch,
          }),
        );
      };
      return { batch: grown(1), moister: grown(more) };
    },
  );
