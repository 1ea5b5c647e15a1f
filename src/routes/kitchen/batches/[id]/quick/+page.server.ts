import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { batchFields, readQuick } from '$lib/kitchen-forms/batch-form.ts';
import { wordedSheet } from '$lib/presentation/batch-words.ts';
import { UserError } from '$lib/server/errors.ts';
import { quickBatchReasons } from '$lib/reasons/kitchen.ts';
import type { Actions, PageServerLoad } from './$types';
import { batchOf, sheetOf, whyNotSealed } from '../sheet-of.ts';

type Refusal = RefusedForm & { readonly blocks: readonly string[]; readonly holds: readonly string[] };

export const load: PageServerLoad = async ({ locals: { app }, params, parent }) => {
  const [stored, { shown }, kitchen] = await Promise.all([
    batchOf(app, params.id),
    parent(),
    app.settings.getKitchen(),
  ]);
  if (stored.value.sealed) redirect(303, `/kitchen/batches/${stored.id}#sealed`);
  const { checks, notices } = wordedSheet(await sheetOf(app, stored, kitchen), shown.unitSystem);
  return {
    id: stored.id,
    version: stored.version,
    batch: stored.value,
    checks,
    notices: notices.filter(({ severity }) => severity === 'warning'),
    fields: batchFields(stored.value, [], shown),
    kitchen,
    reasons: quickBatchReasons(kitchen),
  };
};

export const actions: Actions = {
  default: async ({ request, locals: { app }, cookies, params }) => {
    const [{ unitSystem }, kitchen, stored] = await Promise.all([
      app.settings.get(),
      app.settings.getKitchen(),
      batchOf(app, params.id),
    ]);
    const read = new FormReader(await request.formData(), unitSystem);
    const refused = (status: number, found: Pick<Refusal, 'blocks' | 'holds'> = { blocks: [], holds: [] }) =>
      fail<Refusal>(status, { ...read.refused(), ...found });
    const batch = readQuick(read, stored.value, kitchen, app.today());
    if (!batch) return refused(422);
    const candidate = { ...stored, value: batch, version: read.number('version') ?? 0 };
    const sheet = await sheetOf(app, candidate, kitchen);
    read.add(whyNotSealed(sheet, batch, unitSystem));
    if (read.problems.length > 0) return refused(422, wordedSheet(sheet, unitSystem));
    try {
      await app.kitchen.sealBatch(candidate, sheet.lots, app.today());
    } catch (caught) {
      return refused(
        addUserError(read, caught, caught instanceof UserError && caught.code === 'Conflict' ? 'code' : ''),
      );
    }
    sayDone(cookies, 'batch-sealed');
    redirect(303, `/kitchen/batches/${stored.id}#sealed`);
  },
};
