import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { readRecipe, recipeFields } from '$lib/kitchen-forms/recipe-form.ts';
import { newRecipeReasons } from '$lib/reasons/kitchen.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent }) => {
  const { shown } = await parent();
  return {
    reasons: newRecipeReasons(shown),
    fields: recipeFields({ mealKinds: ['dinner'], cookingYield: 1, fatDrainedG: 0, bulkGPerMl: 1 }, shown),
  };
};

export const actions: Actions = {
  default: async ({ request, locals: { app }, cookies }) => {
    const shown = await app.settings.get();
    const read = new FormReader(await request.formData(), shown.unitSystem);
    const recipe = readRecipe(read, {});
    if (!recipe) return fail<RefusedForm>(422, read.refused());
    let id: string;
    try {
      ({ id } = await app.kitchen.recipes.create(recipe));
    } catch (caught) {
      return fail<RefusedForm>(addUserError(read, caught, 'name'), read.refused());
    }
    sayDone(cookies, 'recipe-added');
    redirect(303, `/kitchen/recipes/${id}`);
  },
};
