import { error, fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { recipePhoto } from '$lib/photo-href.ts';
import { takePhoto } from '$lib/server/take-photo.ts';
import { toFailure } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, params: { id } }) => {
  const recipe = await app.kitchen.recipes.get(id);
  if (!recipe) error(404, say('There is no such recipe any more.'));
  return {
    name: recipe.value.name,
    back: `/kitchen/recipes/${id}`,
    photo: recipePhoto(id, await app.photos.markOf(id)),
  };
};

export const actions: Actions = {
  default: async ({ request, locals: { app }, params: { id }, cookies, setHeaders }) => {
    try {
      const problem = await takePhoto(app, request, { kind: 'recipe', id });
      if (problem !== undefined) return fail(422, { problem });
    } catch (caught) {
      return toFailure({ setHeaders }, caught, (problem) => ({ problem }));
    }
    sayDone(cookies, 'photo-saved');
    redirect(303, `/kitchen/recipes/${id}`);
  },
};
