import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { createPlannedTrip } from '$lib/server/plan-meals.ts';
import { readNewTrip } from '$lib/trip-forms/new-trip.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => ({ today: locals.app.today() });

export const actions: Actions = {
  default: async ({ request, locals: { app }, cookies }) => {
    const { unitSystem } = await app.settings.get();
    const read = new FormReader(await request.formData(), unitSystem);
    const trip = readNewTrip(read);
    if (!trip) return fail<RefusedForm>(422, read.refused());
    const { stored, searchFailed } = await createPlannedTrip(app, trip);
    sayDone(cookies, 'trip-planned', searchFailed && 'search-failed');
    redirect(303, `/trips/${stored.id}/menu`);
  },
};
