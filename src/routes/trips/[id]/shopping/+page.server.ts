import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { changePlannedAmount } from '$lib/server/fill-plan.ts';
import { planDryingIfUseful } from '$lib/server/plan-drying-for-trip.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { shopLines } from '$lib/trip-views/shop-lines.ts';
import { sheetPaper } from '$lib/trip-views/sheet-papers.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, parent, url }) => {
  const planned = await plannedForPage(locals, params.id);
  const toDry = await planDryingIfUseful(locals.app, planned);
  const { tripName, startDate, shortfall, fuel, coming } = planned.plan;
  const { shown } = await parent();
  return {
    plan: { tripName, startDate, shortfall, fuel, coming },
    ticks: shopLines(coming, planned.stored.trip.planned ?? []).filter(
      // once the packs are packed, only what is bought on the way
      ({ lot }) => planned.stored.stage !== 'packed' || lot.at !== undefined,
    ),
    mayTick: !locals.readsOnly && planned.stored.stage !== 'finished',
    paper: sheetPaper(url, shown.unitSystem),
    drying: toDry,
  };
};

export const actions: Actions = {
  /** A tick without scripts; with them it goes the way of trail notes, and can wait for a connection. */
  bought: async ({ request, locals: { app }, params, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const { currency } = await app.settings.get();
    const paidMinor = read.money('paid', currency);
    if (read.problems.length > 0) return fail<RefusedForm>(422, read.refused());
    try {
      await app.planned.bought(params.id, {
        code: read.text('code') ?? '',
        pouches: read.number('pouches') ?? 0,
        paidMinor,
        labelRead: read.text('kind') === 'bought, label read',
      });
    } catch (caught) {
      return fail<RefusedForm>(addUserError(read, caught), read.refused());
    }
    sayDone(cookies, 'food-bought');
    redirect(303, `/trips/${params.id}/shopping`);
  },
  /** What is not to be had leaves the plan, and is missing again. */
  remove: async ({ request, locals: { app }, params, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    try {
      await changePlannedAmount(app, params.id, read.text('code') ?? '');
    } catch (caught) {
      return fail<RefusedForm>(addUserError(read, caught), read.refused());
    }
    sayDone(cookies, 'food-unplanned');
    redirect(303, `/trips/${params.id}/shopping`);
  },
};
