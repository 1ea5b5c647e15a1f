import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeTotals } from '../../src/lib/planning/drying/recipe-totals.ts';
import { traysFor } from '../../src/lib/planning/drying/load-trays.ts';
import { ALLERGENS, avoided } from '../../src/lib/planning/model/allergens.ts';
import { addDays } from '../../src/lib/planning/model/calendar.ts';
import { DIETS, dietsMet } from '../../src/lib/planning/model/diets.ts';
import { Kitchen } from '../../src/lib/planning/model/kitchen.ts';
import { MEAL_KINDS, PROCESSES, WEEKDAYS } from '../../src/lib/planning/model/words.ts';
import { ingredientG, Recipe } from '../../src/lib/planning/model/recipe.ts';
import {
  planDrying,
  type DryingInput,
  type DryingPlan,
  type PlannedRun,
} from '../../src/lib/planning/shortfall/plan-drying.ts';

const TODAY = '2027-06-07';
const DUST_KCAL = 0.001;
const NAMES = ['cellar', 'shed', 'kitchen'];
const whole = (min: number, max: number) => fc.integer({ min, max });
const MEALS = MEAL_KINDS.slice(2, 4);
const oftenNone = <T>(all: fc.Arbitrary<T[]>) =>
  fc.oneof({ weight: 3, arbitrary: fc.constant<T[]>([]) }, { weight: 1, arbitrary: all });
const allergens = oftenNone(fc.subarray([...ALLERGENS.slice(0, 4)], { maxLength: 2 }));
const diets = oftenNone(fc.subarray([...DIETS.slice(0, 3)], { maxLength: 1 }));
const mealKinds = fc.subarray([...MEALS], { minLength: 1 });

const foods = fc
  .record({
    name: fc.constantFrom('rice', 'beans', 'beef', 'cheese', 'apple'),
    waterG: whole(0, 60),
    fatG: whole(0, 25),
    carbohydrateG: whole(0, 15),
    allergens: fc.option(allergens, { nil: undefined, freq: 6 }),
    diets: fc.subarray([...DIETS.slice(0, 3)]),
  })
  .map(({ name, allergens: held, diets: met, ...composition }) => ({
    name,
    source: 'made up',
    ...(held && { allergens: held }),
    diets: met,
    composition: { ...composition, proteinG: 0 },
  }));
const recipes = fc
  .array(
    fc.record({
      mealKinds,
      servings: whole(1, 16),
      cookingYield: whole(80, 300).map((percent) => percent / 100),
      bulkGPerMl: whole(2, 11).map((tenths) => tenths / 10),
      ingredients: fc.array(
        fc.record({ food: foods, quantity: whole(50, 1500).map((amount) => ({ amount, unit: 'g' })) }),
        { maxLength: 3, minLength: 1 },
      ),
    }),
    { maxLength: 4, minLength: 1 },
  )
  .map((all) =>
    all.map((fields, index) => ({
      id: `r${index}`,
      recipe: Recipe.parse({ ...fields, name: `recipe ${index}` }),
    })),
  );
const kitchens = fc
  .record({
    dryers: fc.array(
      fc.record({
        process: fc.constantFrom(...PROCESSES),
        trayCount: whole(1, 6),
        trayAreaCm2: whole(300, 1500),
        trayLimitG: whole(200, 1500),
        depthLimitMm: whole(4, 25),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    cookDays: fc.subarray([...WEEKDAYS], { minLength: 2 }),
    readyDaysBefore: whole(0, 3),
  })
  .map(({ dryers, ...others }) =>
    Kitchen.parse({
      ...others,
      dryers: dryers.map((dryer, index) => ({ ...dryer, name: NAMES[index], meanPowerW: 500 })),
    }),
  );
const needs = fc.array(
  fc.record({
    meal: fc.constantFrom(...MEALS),
    missingKcal: whole(1, 20_000),
    eaters: fc
      .array(fc.record({ allergens, diets }), { minLength: 1, maxLength: 2 })
      .map((all) => all.map((eater, index) => ({ ...eater, name: `eater ${index}` }))),
  }),
  { minLength: 1, maxLength: 4 },
);
const pastRuns = fc.array(
  fc.record({
    dryer: fc.constantFrom(...NAMES),
    preFrozen: fc.boolean(),
    waterRemovedG: whole(200, 6000),
    hours: whole(4, 60),
  }),
  { maxLength: 6 },
);
const underWay = fc
  .array(
    fc.record({
      dryer: fc.constantFrom(...NAMES),
      cookedOn: whole(-3, 5).map((days) => addDays(TODAY, days)),
      loaded: fc.boolean(),
      trays: fc.constant(1),
      waterG: whole(0, 3000),
      hours: whole(5, 70).map((value) => ({ value, low: value, high: value, terms: [] })),
      food: fc.record({ mealKinds, allergens, diets }),
      energyKcal: whole(200, 6000),
    }),
    { maxLength: 1 },
  )
  .map((all) =>
    all.map((batch, index) => ({ ...batch, id: `b${index}`, code: `B${index}`, recipe: 'soup' })),
  );
const inputs: fc.Arbitrary<DryingInput> = fc.record({
  needs,
  recipes,
  kitchen: kitchens,
  runs: pastRuns,
  underWay,
  today: fc.constant(TODAY),
  departure: whole(0, 25).map((days) => addDays(TODAY, days)),
});

function holds(property: (plan: DryingPlan, input: DryingInput) => void): void {
  fc.assert(
    fc.property(inputs, (input) => property(planDrying(input), input)),
    { numRuns: 300, seed: 20_270_607 },
  );
}
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const loadsOf = (plan: DryingPlan) => plan.runs.flatMap(({ loads }) => loads);
const recipeOf = ({ recipes: all }: DryingInput, id: string) => {
  const found = all.find((other) => other.id === id);
  if (!found) throw new Error(`the plan cooks recipe ${id}, which there is not`);
  return found.recipe;
};
const dryerOf = ({ kitchen }: DryingInput, { dryer: name }: PlannedRun) => {
  const found = kitchen.dryers.find((dryer) => dryer.name === name);
  if (!found) throw new Error(`the plan uses dryer ${name}, which there is not`);
  return found;
};
const missingKcal = (plan: DryingPlan) => sum(plan.toBuy.map((line) => line.missingKcal));
const weekdayOf = (date: string) => WEEKDAYS[(new Date(`${date}T12:00:00Z`).getUTCDay() + 6) % 7];

describe('every drying plan', () => {
  it('loads no more trays than a dryer has, with what is in it already, and no tray beyond weight or depth', () =>
    holds((plan, input) => {
      for (const run of plan.runs) {
        const dryer = dryerOf(input, run);
        const joined = input.underWay.filter(({ code }) => run.joins.includes(code));
        expect(run.trays).toBe(sum(run.loads.map(({ trays }) => trays)));
        expect(run.trays + sum(joined.map(({ trays }) => trays))).toBeLessThanOrEqual(dryer.trayCount);
        for (const { recipeId, trayG, trays, timesCooked } of run.loads) {
          const recipe = recipeOf(input, recipeId);
          expect(trayG).toBeLessThanOrEqual(dryer.trayLimitG * (1 + 1e-9));
          expect((10 * trayG) / recipe.bulkGPerMl / dryer.trayAreaCm2).toBeLessThanOrEqual(
            dryer.depthLimitMm * (1 + 1e-9),
          );
          const wetG = recipeTotals(recipe, timesCooked).cookedG;
          expect(trays).toBe(traysFor(wetG, dryer, recipe.bulkGPerMl));
        }
      }
    }));

  it('has one thing in a dryer at a time, for at least its hours', () =>
    holds((plan, input) => {
      for (const [index, run] of plan.runs.entries()) {
        const joined = input.underWay.filter(({ code }) => run.joins.includes(code));
        for (const { hours } of [run, ...joined])
          expect(run.readyOn >= addDays(run.cookOn, Math.ceil(hours.high / 24))).toBe(true);
        const others = plan.runs.filter((other, place) => place !== index && other.dryer === run.dryer);
        for (const other of others)
          expect(run.cookOn >= other.freeOn || run.freeOn <= other.cookOn).toBe(true);
        for (const batch of input.underWay) {
          if (batch.dryer !== run.dryer || run.joins.includes(batch.code)) continue;
          const from = batch.loaded || batch.cookedOn > TODAY ? batch.cookedOn : TODAY;
          const until = addDays(from, Math.ceil(batch.hours.high / 24));
          expect(run.cookOn >= until || run.freeOn <= from).toBe(true);
        }
      }
    }));

  it('cooks and seals on cook days only, from today on, all in time', () =>
    holds((plan, input) => {
      const last = addDays(input.departure, -input.kitchen.readyDaysBefore);
      for (const { cookOn, readyOn } of plan.runs) {
        for (const date of [cookOn, readyOn]) expect(input.kitchen.cookDays).toContain(weekdayOf(date));
        expect(cookOn >= TODAY && readyOn <= last).toBe(true);
      }
      for (const { readyOn } of plan.underWay) expect(readyOn >= TODAY && readyOn <= last).toBe(true);
    }));

  it('gives nobody what they exclude, nor what is not for the meal', () =>
    holds((plan, input) => {
      const given = [
        ...loadsOf(plan).map(({ recipeId, shares }) => {
          const recipe = recipeOf(input, recipeId);
          const totals = recipeTotals(recipe);
          const stated = totals.allergensUnstated.length === 0;
          return { mealKinds: recipe.mealKinds, diets: totals.diets, stated, held: totals.allergens, shares };
        }),
        ...plan.underWay.map(({ id, shares }) => {
          const food = input.underWay.find((batch) => batch.id === id)!.food;
          return { ...food, stated: true, held: food.allergens ?? [], shares };
        }),
      ];
      for (const food of given)
        for (const { line } of food.shares) {
          expect(food.mealKinds).toContain(input.needs[line]?.meal);
          for (const eater of input.needs[line]?.eaters ?? []) {
            if (eater.allergens.length > 0) expect(food.stated).toBe(true);
            const avoid = avoided(eater.allergens);
            expect(food.held.filter((allergen) => avoid.has(allergen))).toEqual([]);
            for (const diet of eater.diets) expect(dietsMet(food.diets).has(diet)).toBe(true);
          }
        }
    }));

  it('accounts for energy: what each load brings, what is under way and what is to buy are what is missing', () =>
    holds((plan, input) => {
      for (const load of loadsOf(plan)) {
        const energyKcal = recipeTotals(recipeOf(input, load.recipeId), load.timesCooked).energyKcal;
        expect(load.energyKcal).toBeCloseTo(energyKcal, 6);
        expect(sum(load.shares.map((share) => share.energyKcal))).toBeLessThanOrEqual(energyKcal + DUST_KCAL);
      }
      input.needs.forEach((need, line) => {
        const given = [...loadsOf(plan), ...plan.underWay]
          .flatMap(({ shares }) => shares)
          .filter((share) => share.line === line);
        for (const share of given) expect(share.energyKcal).toBeGreaterThan(0);
        const bought = plan.toBuy.filter((toBuy) => toBuy.line === line);
        const all = sum([
          ...given.map((share) => share.energyKcal),
          ...bought.map((toBuy) => toBuy.missingKcal),
        ]);
        expect(Math.abs(all - need.missingKcal)).toBeLessThan(DUST_KCAL);
      });
    }));

  it('lists as groceries the ingredients of its loads, in quarters of their recipes', () =>
    holds((plan, input) => {
      const needed = new Map<string, number>();
      for (const { recipeId, timesCooked } of loadsOf(plan)) {
        expect(Number.isInteger(timesCooked * 4) && timesCooked > 0).toBe(true);
        for (const ingredient of recipeOf(input, recipeId).ingredients)
          needed.set(
            ingredient.food.name,
            (needed.get(ingredient.food.name) ?? 0) + timesCooked * ingredientG(ingredient),
          );
      }
      expect(new Set(plan.groceries.map(({ food }) => food))).toEqual(new Set(needed.keys()));
      for (const { food, weightG } of plan.groceries) expect(weightG).toBeCloseTo(needed.get(food)!, 6);
    }));

  it('dries nothing without time', () =>
    holds((_, input) => {
      const late = planDrying({
        ...input,
        departure: TODAY,
        kitchen: { ...input.kitchen, readyDaysBefore: 0 },
      });
      expect([late.runs, late.groceries]).toEqual([[], []]);
    }));

  it('never brings less with more time, and in the end lacks only what no recipe or dryer can bring', () =>
    holds((plan, input) => {
      let before = missingKcal(plan);
      for (const days of [1, 2, 3, 7, 30]) {
        const after = missingKcal(planDrying({ ...input, departure: addDays(input.departure, days) }));
        expect(after).toBeLessThanOrEqual(before + DUST_KCAL);
        before = after;
      }
      const endless = planDrying({ ...input, departure: addDays(input.departure, 3000) });
      expect(endless.toBuy.filter(({ why }) => why.kind === 'no time')).toEqual([]);
    }));

  it('is the same for the same input', () =>
    holds((plan, input) => {
      expect(planDrying(structuredClone(input))).toEqual(plan);
    }));
});
