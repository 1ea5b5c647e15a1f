import { error, fail, redirect, type Cookies } from '@sveltejs/kit';
import { offerUndo, sayDone, type Done } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { readLine } from '$lib/recipe-text/read-line.ts';
import { ingredientsOf } from '$lib/kitchen-forms/pasted-recipe.ts';
import { UNSETTLED_WORDS } from '$lib/kitchen-forms/unsettled-words.ts';
import {
  ingredientFields,
  namesLike,
  readIngredient,
  readRecipe,
  readWaterNote,
  recipeFields,
} from '$lib/kitchen-forms/recipe-form.ts';
import { recipeView } from '$lib/kitchen-views/recipe.ts';
import type { Recipe } from '$lib/planning/model/recipe.ts';
import { PROCESSES } from '$lib/planning/model/words.ts';
import type { Settings } from '$lib/planning/model/settings.ts';
import type { App } from '$lib/server/app.ts';
import { allFoods, foodTables } from '$lib/server/food-tables.ts';
import type { Stored } from '$lib/server/records.ts';
import { recipePhoto } from '$lib/photo-href.ts';
import { say } from '$lib/texts/say.ts';
import { recipeReasons } from '$lib/reasons/kitchen.ts';
import type { Actions, PageServerLoad } from './$types';

/** What an action hands back, and of which form of the page. */
type Refusal = RefusedForm & {
  readonly of: 'recipe' | 'ingredient' | 'lines' | 'water' | 'delete';
  /** Names of foods like the one that is in no table. */
  readonly like?: readonly string[];
};

async function recipeOf(app: App, id: string): Promise<Stored<Recipe>> {
  return (
    (await app.kitchen.recipes.get(id)) ??
    error(404, say('Recipe not found. It may have been deleted; batches made from it keep their own copy.'))
  );
}

export const load: PageServerLoad = async ({ locals: { app }, params, parent, url }) => {
  const [{ id, version, value }, { shown }, kitchen, tables] = await Promise.all([
    recipeOf(app, params.id),
    parent(),
    app.settings.getKitchen(),
    allFoods(app),
  ]);
  const line = Number(url.searchParams.get('line') ?? 0);
  const edited = value.ingredients[line - 1];
  const process =
    PROCESSES.find((name) => name === url.searchParams.get('process')) ??
    kitchen.dryers[0]?.process ??
    'freeze-dried';
  return {
    id,
    version,
    photo: recipePhoto(id, await app.photos.markOf(id)),
    recipe: value,
    view: recipeView(value, kitchen, process, shown.unitSystem),
    fields: recipeFields(value, shown),
    line: edited ? line : undefined,
    edited: edited?.food,
    ingredientFields: ingredientFields(edited, shown),
    toSettle: (value.toSettle ?? []).map((text) => {
      const { unsettled, foodText } = readLine(text, [], value.servings);
      return { text, why: unsettled && say(UNSETTLED_WORDS[unsettled]), like: namesLike(tables, foodText) };
    }),
    today: app.today(),
    reasons: recipeReasons(shown),
  };
};

/** Changes the recipe by one of its forms; what was typed stays where it is refused. */
async function change(
  { request, locals: { app }, cookies, params }: Parameters<NonNullable<Actions['recipe']>>[0],
  of: Refusal['of'],
  done: Done,
  changed: (
    read: FormReader,
    recipe: Recipe,
    settings: Settings,
  ) => Recipe | undefined | Promise<Recipe | undefined>,
) {
  const settings = await app.settings.get();
  const stored = await recipeOf(app, params.id);
  const read = new FormReader(await request.formData(), settings.unitSystem);
  const recipe = await changed(read, stored.value, settings);
  if (!recipe || read.problems.length > 0) {
    const name = of === 'ingredient' ? read.text('food.name') : undefined;
    const like = name === undefined ? [] : namesLike(await allFoods(app), name);
    return fail<Refusal>(422, { ...read.refused(), of, ...(like.length > 0 && { like }) });
  }
  try {
    const version = read.number('version') ?? 0;
    if (done === 'ingredient-removed' || done === 'water-forgotten')
      offerUndo(cookies, await app.kitchen.recipes.updateUndoably(stored.id, recipe, version));
    else await app.kitchen.recipes.update(stored.id, recipe, version);
  } catch (caught) {
    return fail<Refusal>(addUserError(read, caught, of === 'recipe' ? 'name' : ''), {
      ...read.refused(),
      of,
    });
  }
  return leave(cookies, done, `/kitchen/recipes/${stored.id}#${of}`);
}

function leave(cookies: Cookies, done: Done, to: string): never {
  sayDone(cookies, done);
  redirect(303, to);
}

/** The place in the list that a form is about, from 1; `undefined` for a new line. */
const lineOf = (read: FormReader, recipe: Recipe): number | undefined => {
  const line = read.number('line');
  return line !== undefined && recipe.ingredients[line - 1] ? line : undefined;
};

export const actions: Actions = {
  recipe: (event) => change(event, 'recipe', 'recipe-saved', readRecipe),

  ingredient: (event) =>
    change(event, 'ingredient', 'ingredient-saved', async (read, recipe, settings) => {
      const line = lineOf(read, recipe);
      const stored = line === undefined ? undefined : recipe.ingredients[line - 1];
      const ingredient = readIngredient(read, settings, await allFoods(event.locals.app), stored);
      if (!ingredient) return undefined;
      return {
        ...recipe,
        ingredients:
          line === undefined
            ? [...recipe.ingredients, ingredient]
            : recipe.ingredients.with(line - 1, ingredient),
      };
    }),

  remove: (event) =>
    change(event, 'ingredient', 'ingredient-removed', (read, recipe) => {
      const line = lineOf(read, recipe);
      return { ...recipe, ingredients: recipe.ingredients.filter((_, index) => index + 1 !== line) };
    }),

  /** Several lines at once, as they are written; one of those left to settle may be among them, changed. */
  lines: (event) =>
    change(event, 'lines', 'ingredient-saved', async (read, recipe) => {
      const { own } = await foodTables(event.locals.app);
      const removed = read.number('removes');
      const settled = removed ?? read.number('settles');
      const lines = (removed === undefined ? (read.text('lines') ?? '') : '')
        .split('\n')
        .filter((line) => line.trim() !== '');
      const { ingredients, toSettle } = ingredientsOf(
        lines.map((line) =>
          readLine(
            line,
            own.map(({ value }) => value),
            recipe.servings,
          ),
        ),
      );
      const left = (recipe.toSettle ?? []).filter((_, index) => index + 1 !== settled);
      if (lines.length === 0 && settled === undefined)
        read.add([{ field: 'lines', message: say('Write at least one line, such as "200 g rice".') }]);
      const { toSettle: _, ...rest } = recipe;
      return {
        ...rest,
        ingredients: [...recipe.ingredients, ...ingredients],
        ...(left.length + toSettle.length > 0 && { toSettle: [...left, ...toSettle] }),
      };
    }),

  water: (event) =>
    change(event, 'water', 'water-noted', (read, recipe) => {
      const note = readWaterNote(read);
      return note && { ...recipe, waterNotes: [...recipe.waterNotes, note] };
    }),

  forget: (event) =>
    change(event, 'water', 'water-forgotten', (_, recipe) => ({ ...recipe, waterNotes: [] })),

  delete: async ({ request, locals: { app }, cookies, params }) => {
    const read = new FormReader(await request.formData(), 'metric');
    try {
      offerUndo(cookies, await app.kitchen.recipes.delete(params.id, read.number('version') ?? 0));
    } catch (caught) {
      return fail<Refusal>(addUserError(read, caught), { ...read.refused(), of: 'delete' });
    }
    return leave(cookies, 'recipe-deleted', '/kitchen');
  },
};
