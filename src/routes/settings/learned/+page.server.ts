import { error, redirect, type RequestEvent } from '@sveltejs/kit';
import { sayDone, type Done } from '$lib/forms/done.ts';
import { FormReader } from '$lib/forms/read-form.ts';
import { waterShareOf } from '$lib/planning/drying/rehydration.ts';
import { servingSizeOf } from '$lib/planning/drying/serving-size.ts';
import type { Recipe } from '$lib/planning/model/recipe.ts';
import { say } from '$lib/texts/say.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { isOfFigure, learnedViews } from '$lib/trip-views/learned.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app } }) => {
  const [settings, kitchen, recipes] = await Promise.all([
    app.settings.get(),
    app.settings.getKitchen(),
    app.kitchen.recipes.list(),
  ]);
  return {
    figures: learnedViews(settings, settings.unitSystem),
    portions: recipes
      .filter(({ value }) => (value.portionNotes ?? []).length > 0)
      .map(({ id, version, value }) => ({ id, version, name: value.name, serving: servingSizeOf(value) })),
    waters: recipes
      .filter(({ value }) => value.waterNotes.length > 0)
      .map(({ id, version, value }) => ({
        id,
        version,
        name: value.name,
        water: waterShareOf(value, kitchen.processes[kitchen.dryers[0]?.process ?? 'freeze-dried']),
      })),
  };
};

export const actions: Actions = {
  forget: async ({ request, locals: { app }, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const key = read.text('figure');
    if (key === undefined) error(400, say('This page is out of date. Reload it and try again.'));
    await app.settings.forget(isOfFigure(key));
    sayDone(cookies, 'figure-forgotten');
    redirect(303, '/settings/learned');
  },

  forgetWater: (event) => forgetNotes(event, { waterNotes: [] }, 'water-forgotten'),
  forgetPortions: (event) => forgetNotes(event, { portionNotes: [] }, 'figure-forgotten'),
};

async function forgetNotes(
  { request, locals: { app }, cookies }: RequestEvent,
  none: Partial<Pick<Recipe, 'waterNotes' | 'portionNotes'>>,
  done: Done,
): Promise<never> {
  const read = new FormReader(await request.formData(), 'metric');
  const stored = await app.kitchen.recipes.get(read.text('recipe') ?? '');
  if (!stored) error(404, say('There is no such recipe any more.'));
  await app.kitchen.recipes
    .update(stored.id, { ...stored.value, ...none }, read.number('version') ?? 0)
    .catch(toHttpError);
  sayDone(cookies, done);
  redirect(303, '/settings/learned');
}
