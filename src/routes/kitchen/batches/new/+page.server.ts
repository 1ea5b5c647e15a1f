import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { freeBatchCode, readNewBatch, runChoice, runOptions } from '$lib/kitchen-forms/batch-form.ts';
import { PROCESS_WORDS } from '$lib/presentation/code-words.ts';
import { recipeTotals } from '$lib/planning/drying/recipe-totals.ts';
import { say } from '$lib/texts/say.ts';
import { newBatchReasons } from '$lib/reasons/kitchen.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, url }) => {
  const [recipes, batches, kitchen] = await Promise.all([
    app.kitchen.recipes.list(),
    app.kitchen.batches.list(),
    app.settings.getKitchen(),
  ]);
  return {
    reasons: newBatchReasons(),
    recipes: recipes.map(({ id, value }) => ({
      value: id,
      label:
        recipeTotals(value).problems.length === 0
          ? value.name
          : say('{recipe} (not ready: see its page)', { recipe: value.name }),
    })),
    runs: runOptions(runChoice(batches)),
    dryers: kitchen.dryers.map(({ name, process }) => ({
      value: name,
      label: `${name} (${say(PROCESS_WORDS[process])})`,
    })),
    fields: {
      recipe: url.searchParams.get('recipe') ?? recipes[0]?.id ?? '',
      timesCooked: url.searchParams.get('times') ?? '1',
      dryer: url.searchParams.get('dryer') ?? kitchen.dryers[0]?.name ?? '',
      cookedOn: app.today(),
      code: freeBatchCode(
        app.today(),
        batches.map(({ value }) => value.code),
      ),
    },
  };
};

export const actions: Actions = {
  default: async ({ request, locals: { app }, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const [kitchen, recipe] = await Promise.all([
      app.settings.getKitchen(),
      app.kitchen.recipes.get(read.text('recipe') ?? ''),
    ]);
    const batch = readNewBatch(read, recipe, kitchen, runChoice(await app.kitchen.batches.list()));
    if (!batch) return fail<RefusedForm>(422, read.refused());
    let id: string;
    try {
      await app.settings.keepKitchen(kitchen);
      ({ id } = await app.kitchen.batches.create(batch));
    } catch (caught) {
      return fail<RefusedForm>(addUserError(read, caught, 'code'), read.refused());
    }
    sayDone(cookies, 'batch-begun');
    redirect(303, `/kitchen/batches/${id}${read.text('then') === 'quick' ? '/quick' : ''}`);
  },
};
