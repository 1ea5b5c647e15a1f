import { fail, redirect, type Cookies } from '@sveltejs/kit';
import { sayDone, type Done } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { pouchesNeeded } from '$lib/planning/menu/plan-menu.ts';
import { changeMenu, plannedForPage, planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { setAsideLines } from '$lib/trip-views/set-aside.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params }) => {
  const { stored, stock, plan } = await plannedForPage(locals, params.id);
  const recipes = new Map(stock.map(({ code, recipe }) => [code, recipe]));
  return { lines: setAsideLines(pouchesNeeded(plan.menu), stored.reserved, recipes) };
};

export const actions: Actions = {
  // The menu is stored as it stands, so that what is set aside is what stays on it.
  setAside: ({ request, locals: { app }, params, cookies }) =>
    act(request, cookies, params.id, 'pouches-set-aside', async () => {
      const { id, version } = await changeMenu(app, params.id, (trip) => trip);
      const { plan } = await planStoredTrip(app, id);
      await app.trips.setAside(id, version, pouchesNeeded(plan.menu));
    }),
  release: ({ request, locals: { app }, params, cookies }) =>
    act(request, cookies, params.id, 'pouches-released', (read) =>
      app.trips.release(params.id, read.number('version') ?? 0),
    ),
  pack: ({ request, locals: { app }, params, cookies }) =>
    act(request, cookies, params.id, 'pouches-packed', (read) =>
      app.trips.pack(params.id, read.number('version') ?? 0),
    ),
};

async function act(
  request: Request,
  cookies: Cookies,
  id: string,
  done: Done,
  work: (read: FormReader) => Promise<unknown>,
) {
  const read = new FormReader(await request.formData(), 'metric');
  try {
    await work(read);
  } catch (caught) {
    const status = addUserError(read, caught);
    return fail<RefusedForm>(status, read.refused());
  }
  sayDone(cookies, done);
  redirect(303, `/trips/${id}/pouches`);
}
