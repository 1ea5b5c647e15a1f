import { fail, redirect, type Cookies } from '@sveltejs/kit';
import { offerUndo, sayDone, type Done } from '$lib/forms/done.ts';
import { bareField, FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { fieldValue, type UnitSystem } from '$lib/presentation/show.ts';
import { Resupply, Trip } from '$lib/planning/model/trip.ts';
import type { App } from '$lib/server/app.ts';
import { changeTrip, packedWords, plannedForPage, refuseWhilePacked } from '$lib/server/plan-stored-trip.ts';
import { sheetPaper } from '$lib/trip-views/sheet-papers.ts';
import type { Actions, PageServerLoad } from './$types';

/** What the form of a place is filled with; `was` is its name until now, and empty for another one. */
const fieldsOf = (place: Resupply | undefined, system: UnitSystem) => ({
  was: place?.place ?? '',
  place: place?.place ?? '',
  kind: place?.kind ?? 'box',
  day: bareField(place?.day)[0] ?? '',
  from: place?.from ?? 'dinner',
  postBy: place?.postBy ?? '',
  boxG: place?.boxG ? fieldValue(place.boxG, 'food', system) : '',
  label: place?.label ?? '',
});

export const load: PageServerLoad = async ({ locals, params, parent, url }) => {
  const { stored, plan } = await plannedForPage(locals, params.id);
  const { shown } = await parent();
  const edited = stored.trip.resupplies?.find(({ place }) => place === url.searchParams.get('edit'));
  return {
    pickUps: plan.carry.pickUps,
    coming: plan.coming.filter(({ at }) => at !== undefined),
    mayChange: !locals.readsOnly && packedWords(stored) === undefined,
    places: plan.carry.pickUps.map(({ place }) => place),
    fields: fieldsOf(edited, shown.unitSystem),
    paper: sheetPaper(url, shown.unitSystem),
  };
};

export const actions: Actions = {
  save: ({ request, locals: { app }, params, cookies }) =>
    change(app, request, cookies, params.id, 'place-saved', (read, trip) => {
      const was = read.text('was');
      const place = read.accept(
        Resupply.safeParse({
          place: read.text('place') ?? '',
          kind: read.text('kind'),
          day: read.number('day'),
          from: read.text('from'),
          postBy: read.text('postBy'),
          boxG: read.number('boxG', { quantity: 'food' }),
          label: read.text('label') ?? '',
        }),
      );
      if (!place) return undefined;
      const before = trip.resupplies ?? [];
      const resupplies = before.some((other) => other.place === was)
        ? before.map((other) => (other.place === was ? place : other))
        : [...before, place];
      const planned = trip.planned?.map((own) => (own.at === was && was ? { ...own, at: place.place } : own));
      const changed = Trip.safeParse({ ...trip, resupplies, ...(planned && { planned }) });
      return read.accept(changed, (problems) =>
        problems.map((problem) => ({ ...problem, field: problem.field.replace(/^resupplies\[\d+\]\./, '') })),
      );
    }),
  remove: ({ request, locals: { app }, params, cookies }) =>
    change(app, request, cookies, params.id, 'place-removed', (read, trip) => {
      const was = read.text('was');
      const { planned, ...rest } = trip;
      return {
        ...rest,
        resupplies: (trip.resupplies ?? []).filter(({ place }) => place !== was),
        ...(planned && {
          planned: planned.map(({ at, ...own }) =>
            at === was ? own : { ...own, ...(at !== undefined && { at }) },
          ),
        }),
      };
    }),
};

/** What a form of a place makes of the trip; nothing is saved where it has problems. */
async function change(
  app: App,
  request: Request,
  cookies: Cookies,
  id: string,
  done: Done,
  edit: (read: FormReader, trip: Trip) => Trip | undefined,
) {
  const { unitSystem } = await app.settings.get();
  const read = new FormReader(await request.formData(), unitSystem);
  let undo: string;
  try {
    ({ undo } = await changeTrip(app, id, ({ stored }) => {
      refuseWhilePacked(stored);
      return edit(read, stored.trip) ?? stored.trip;
    }));
  } catch (caught) {
    return fail<RefusedForm>(addUserError(read, caught), read.refused());
  }
  if (read.problems.length > 0) return fail<RefusedForm>(422, read.refused());
  sayDone(cookies, done);
  offerUndo(cookies, undo);
  redirect(303, `/trips/${id}/resupply`);
}
