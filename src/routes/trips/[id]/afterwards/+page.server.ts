import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { settleNotes } from '$lib/forms/settle-notes.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import type { App } from '$lib/server/app.ts';
import { finishStoredTrip } from '$lib/server/finish-stored-trip.ts';
import { planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { afterwardsFields, readAfterwards } from '$lib/trip-forms/afterwards.ts';
import { afterwardsSubjects } from '$lib/trip-views/afterwards.ts';
import { afterwardsReasons } from '$lib/reasons/trip.ts';
import type { Actions, PageServerLoad } from './$types';

/** The forms of the page. */
type Answer = RefusedForm & { readonly of: 'finish' | 'reopen' };

export const load: PageServerLoad = async ({ locals: { app }, params }) => {
  const { subjects, notes, settings } = await opened(app, params.id);
  const said = await app.afterwards.get(params.id);
  return {
    subjects,
    said,
    fields: afterwardsFields(subjects, said, settings.unitSystem),
    reasons: afterwardsReasons(),
    conflicts: notes.filter(({ outcome, settledAt }) => outcome === 'conflict' && settledAt === undefined),
    notes,
  };
};

export const actions: Actions = {
  finish: async ({ request, locals: { app }, params, cookies }) => {
    const { subjects, settings } = await opened(app, params.id);
    const read = new FormReader(await request.formData(), settings.unitSystem);
    const refuse = (status: number) => fail<Answer>(status, { ...read.refused(), of: 'finish' });
    const entered = readAfterwards(read, subjects);
    if (!entered) return refuse(422);
    try {
      const { back, said } = entered;
      const { stage } = await finishStoredTrip(app, params.id, read.number('version') ?? 0, back, said);
      sayDone(cookies, stage === 'finished' ? 'trip-finished' : 'trip-called-off');
    } catch (caught) {
      return refuse(addUserError(read, caught));
    }
    redirect(303, `/trips/${params.id}/afterwards`);
  },

  reopen: async ({ request, locals: { app }, params, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    try {
      await app.afterwards.reopen(params.id, read.number('version') ?? 0);
    } catch (caught) {
      const status = addUserError(read, caught);
      return fail<Answer>(status, { ...read.refused(), of: 'reopen' });
    }
    sayDone(cookies, 'trip-reopened');
    redirect(303, `/trips/${params.id}/afterwards`);
  },

  settle: async ({ request, locals: { app }, params, cookies }) => {
    await settleNotes(app, cookies, await request.formData(), params.id);
    redirect(303, `/trips/${params.id}/afterwards`);
  },
};

async function opened(app: App, id: string) {
  const { stored, lots, settings, plan } = await planStoredTrip(app, id).catch(toHttpError);
  const [notes, recipes] = await Promise.all([app.trailNotes.list(id), app.kitchen.recipes.list()]);
  const entered = notes.filter(({ outcome }) => outcome === 'entered');
  const names = new Set(recipes.map(({ value }) => value.name));
  return { subjects: afterwardsSubjects(stored, plan, lots, entered, names), notes, settings };
}
