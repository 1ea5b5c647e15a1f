import { error } from '@sveltejs/kit';
import { jsonLdOf } from '$lib/recipe-text/json-ld.ts';
import { say } from '$lib/texts/say.ts';
import type { RequestHandler } from './$types';

/** The recipe in the open format of schema.org. */
export const GET: RequestHandler = async ({ locals: { app }, params }) => {
  const recipe = await app.kitchen.recipes.get(params.id);
  if (!recipe)
    error(404, say('Recipe not found. It may have been deleted; batches made from it keep their own copy.'));
  return new Response(JSON.stringify(jsonLdOf(recipe.value), null, 2), {
    headers: {
      'content-type': 'application/ld+json',
      'content-disposition': 'attachment; filename="recipe.json"',
    },
  });
};
