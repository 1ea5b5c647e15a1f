import { fail, redirect } from '@sveltejs/kit';
import { offerUndo, sayDone, type Done } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import {
  batchFields,
  readConditioning,
  readCook,
  readFills,
  readLoad,
  readPortions,
  readSeal,
  readWeighing,
  runChoice,
  runOptions,
  type ReadStep,
} from '$lib/kitchen-forms/batch-form.ts';
import { wordedSheet } from '$lib/presentation/batch-words.ts';
import { UserError } from '$lib/server/errors.ts';
import { say } from '$lib/texts/say.ts';
import { batchReasons } from '$lib/reasons/kitchen.ts';
import type { Actions, PageServerLoad } from './$types';
import { batchOf, sheetOf, whyNotSealed } from './sheet-of.ts';

/** The steps of the sheet, each with a form of its own. */
type Step = 'cook' | 'load' | 'dry' | 'portion' | 'fills' | 'seal' | 'delete';
type Refusal = RefusedForm & { readonly of: Step };

export const load: PageServerLoad = async ({ locals: { app }, params, parent }) => {
  const [stored, { shown }, kitchen] = await Promise.all([
    batchOf(app, params.id),
    parent(),
    app.settings.getKitchen(),
  ]);
  const sheet = await sheetOf(app, stored, kitchen);
  const run = runChoice(await app.kitchen.batches.list(), stored);
  return {
    id: stored.id,
    version: stored.version,
    batch: stored.value,
    sheet: wordedSheet(sheet, shown.unitSystem),
    fields: batchFields(
      stored.value,
      sheet.fills.map(({ fill }) => fill),
      shown,
    ),
    run: {
      options: runOptions(run),
      beside: run.beside.map(({ id, value }) => ({ id, code: value.code, recipe: value.recipe.name })),
    },
    kitchen,
    reasons: batchReasons(kitchen),
    recipeIsThere:
      stored.value.recipeId !== undefined &&
      (await app.kitchen.recipes.get(stored.value.recipeId)) !== undefined,
  };
};

/** Changes the batch by the form of one step; what was typed stays where it is refused. */
async function change(
  { request, locals: { app }, cookies, params }: Parameters<NonNullable<Actions['cook']>>[0],
  of: Step,
  step: ReadStep,
  done: Done = 'batch-saved',
) {
  const [settings, kitchen, stored] = await Promise.all([
    app.settings.get(),
    app.settings.getKitchen(),
    batchOf(app, params.id),
  ]);
  const read = new FormReader(await request.formData(), settings.unitSystem);
  if (stored.value.sealed)
    read.add([
      {
        field: '',
        message: say(
          'This batch was sealed on {date}, so its sheet cannot be changed. Edit its lots on the shelf.',
          { date: stored.value.sealed.on },
        ),
      },
    ]);
  const run = runChoice(await app.kitchen.batches.list(), stored);
  const batch = step(read, stored.value, kitchen, app.today(), run);
  if (!batch || read.problems.length > 0) return fail<Refusal>(422, { ...read.refused(), of });
  try {
    const version = read.number('version') ?? 0;
    if (done === 'weighing-removed')
      offerUndo(cookies, await app.kitchen.batches.updateUndoably(stored.id, batch, version));
    else await app.kitchen.batches.update(stored.id, batch, version);
  } catch (caught) {
    return fail<Refusal>(addUserError(read, caught), { ...read.refused(), of });
  }
  sayDone(cookies, done);
  redirect(303, `/kitchen/batches/${stored.id}#${of === 'fills' ? 'portion' : of}`);
}

export const actions: Actions = {
  cook: (event) => change(event, 'cook', readCook),
  load: (event) => change(event, 'load', readLoad),
  condition: (event) => change(event, 'dry', readConditioning),
  weigh: (event) => change(event, 'dry', readWeighing),
  unweigh: (event) =>
    change(
      event,
      'dry',
      (_, batch) => ({ ...batch, weighings: batch.weighings.slice(0, -1) }),
      'weighing-removed',
    ),
  portion: (event) => change(event, 'portion', readPortions),
  fills: (event) => change(event, 'fills', readFills),
  propose: (event) => change(event, 'fills', (_, { fills: _chosen, ...batch }) => batch),

  /** What stands on the form is saved first, so that nothing of it is lost where sealing is refused. */
  seal: async (event) => {
    const { request, locals, cookies, params } = event;
    const { app } = locals;
    const [settings, kitchen, stored] = await Promise.all([
      app.settings.get(),
      app.settings.getKitchen(),
      batchOf(app, params.id),
    ]);
    const read = new FormReader(await request.formData(), settings.unitSystem);
    let { entered } = read;
    const refused = (status: number) => fail<Refusal>(status, { ...read.refused(), entered, of: 'seal' });
    const batch = stored.value.sealed ? stored.value : readSeal(read, stored.value, kitchen, app.today());
    if (!batch) return refused(422);
    try {
      const saved = stored.value.sealed
        ? stored
        : await app.kitchen.batches.update(stored.id, batch, read.number('version') ?? 0);
      if (read.text('then') === 'save') {
        sayDone(cookies, 'batch-saved');
        redirect(303, `/kitchen/batches/${stored.id}#seal`);
      }
      const sheet = await sheetOf(app, saved, kitchen);
      entered = { ...entered, version: [String(saved.version)] };
      read.add(whyNotSealed(sheet, batch, settings.unitSystem));
      if (read.problems.length > 0) return refused(422);
      await app.kitchen.sealBatch(saved, sheet.lots, app.today());
    } catch (caught) {
      return refused(
        addUserError(read, caught, caught instanceof UserError && caught.code === 'Conflict' ? 'code' : ''),
      );
    }
    sayDone(cookies, 'batch-sealed');
    redirect(303, `/kitchen/batches/${stored.id}#sealed`);
  },

  delete: async ({ request, locals: { app }, cookies, params }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const { value, id } = await batchOf(app, params.id);
    const refused = (status: number) => fail<Refusal>(status, { ...read.refused(), of: 'delete' });
    if (value.sealed) {
      read.add([{ field: '', message: say('A sealed batch cannot be deleted: its lots refer to it.') }]);
      return refused(422);
    }
    try {
      offerUndo(cookies, await app.kitchen.batches.delete(id, read.number('version') ?? 0));
    } catch (caught) {
      return refused(addUserError(read, caught));
    }
    sayDone(cookies, 'batch-deleted');
    redirect(303, '/kitchen');
  },
};
