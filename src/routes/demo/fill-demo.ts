import demoRecipes from '../../../demo-data/recipes.json';
import shelfCsv from '../../../demo-data/shelf.csv?raw';
import demoTrip from '../../../demo-data/trip.json';
import { kitchenFoods } from '$lib/foods/kitchen-foods.ts';
import { findFood } from '$lib/foods/find-food.ts';
import { Recipe } from '$lib/planning/model/recipe.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import { moneyToMinor } from '$lib/presentation/money.ts';
import type { App } from '$lib/server/app.ts';
import { UserError } from '$lib/server/errors.ts';
import { createPlannedTrip } from '$lib/server/plan-meals.ts';
import { say } from '$lib/texts/say.ts';
import { demoName } from './demo-names.ts';
import { readShelfCsv } from '$lib/shelf-csv/read-shelf-csv.ts';

const CURRENCY = 'EUR';

/**
 * Puts the invented shelf, recipes and trip of `demo-data` into an empty data folder, named in the language around.
 *
 * @returns the trip, and whether its menu had to be planned without a search
 * @throws UserError `Refused` where there are lots or recipes already: what is invented must not mix with what is real
 */
export async function fillDemo(app: App): ReturnType<typeof createPlannedTrip> {
  const trip = Trip.parse({ ...demoTrip, name: demoName(demoTrip.name) });
  const recipes = demoRecipes.map(recipeOf);
  const { lots } = await readShelfCsv(new TextEncoder().encode(shelfCsv), {
    currency: CURRENCY,
    known: { today: app.today() },
  });
  const [stored, own] = await Promise.all([app.shelf.listLots(), app.kitchen.recipes.list()]);
  if (stored.length > 0 || own.length > 0)
    throw new UserError(
      'Refused',
      say(
        'The {place, select, shelf {shelf already has lots} other {kitchen already has recipes}}. The demo only loads into an empty shelf, so it never mixes with your own data. To try it, start Ridgelarder with another data folder (RIDGELARDER_DATA).',
        { place: stored.length > 0 ? 'shelf' : 'kitchen' },
      ),
    );
  await app.shelf.importLots(
    lots.map((lot) => ({ ...lot, recipe: demoName(lot.recipe), note: lot.note && demoName(lot.note) })),
    'demo',
  );
  await app.kitchen.recipes.putAll(recipes);
  return createPlannedTrip(app, trip);
}

/** A recipe of the demo names its foods; what is known of them comes from the tables of every kitchen. */
function recipeOf({ ingredients, ...recipe }: (typeof demoRecipes)[number]): Recipe {
  return Recipe.parse({
    ...recipe,
    name: demoName(recipe.name),
    note: demoName(recipe.note),
    ingredients: ingredients.map((line) => {
      const food = findFood(kitchenFoods().foods, line.food);
      if (!food) throw new Error(`the demo's "${line.food}" is in no table`);
      return {
        food,
        quantity: { amount: line.amount, unit: line.unit },
        ...('trimmed' in line && { trimmedShare: line.trimmed }),
        ...('paid' in line && {
          price: {
            paidMinor: moneyToMinor(line.paid, CURRENCY),
            paidFor: { amount: line.for, unit: line.forUnit },
          },
        }),
      };
    }),
  });
}
