import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { UserError } from '$lib/server/errors.ts';
import { LARGEST_TRIP_FILE_BYTES, openTripFile } from '$lib/server/open-trip-file.ts';
import { copyStoredTrip } from '$lib/server/copy-stored-trip.ts';
import { createPlannedTrip } from '$lib/server/plan-meals.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import { groupsOf, readNewTrip, readStart } from '$lib/trip-forms/new-trip.ts';
import { nextStart } from '$lib/planning/model/copy-trip.ts';
import { TRIP_DEFAULTS } from '$lib/planning/model/trip-defaults.ts';
import { newTripReasons } from '$lib/reasons/trip.ts';
import { usualValues } from '$lib/trip-forms/usual-values.ts';
import type { Actions, PageServerLoad } from './$types';

type Refused = RefusedForm & { readonly of: 'plan' | 'copy' | 'open'; readonly isThere?: boolean };

/** So many problems of a file are named; who mends them sees the others then. */
const PROBLEMS_NAMED = 20;

/** A list to choose a trip or a group from is no longer than this. */
const MOST_LISTED = 200;

export const load: PageServerLoad = async ({ locals: { app }, url }) => {
  const [settings, all] = await Promise.all([app.settings.get(), app.trips.listTrips()]);
  const trips = all.slice(0, MOST_LISTED);
  // ?from=<trip>
  const from = trips.find(({ id }) => id === url.searchParams.get('from'));
  const usual = usualValues(settings.unitSystem, TRIP_DEFAULTS.fuel.value, settings);
  return {
    today: app.today(),
    groups: groupsOf(trips).map(({ tripId, tripName, party }) => ({
      tripId,
      tripName,
      names: party.map(({ name }) => name),
    })),
    trips: trips.map(({ id, trip }) => ({
      id,
      name: trip.name,
      startDate: trip.startDate,
      isTemplate: trip.template === true,
    })),
    from: from && { id: from.id, startDate: nextStart(from.trip.startDate, app.today()) },
    largestFileMb: LARGEST_TRIP_FILE_BYTES / 1_000_000,
    usualEnergy: usual.energyKcal.text,
    reasons: newTripReasons(usual),
  };
};

export const actions: Actions = {
  plan: async ({ request, locals: { app }, cookies }) => {
    const { unitSystem } = await app.settings.get();
    const read = new FormReader(await request.formData(), unitSystem);
    const trip = readNewTrip(read, read.text('group') ? groupsOf(await app.trips.listTrips()) : []);
    if (!trip) return fail<Refused>(422, { of: 'plan', ...read.refused() });
    let created: Awaited<ReturnType<typeof createPlannedTrip>>;
    try {
      created = await createPlannedTrip(app, trip);
    } catch (caught) {
      return fail<Refused>(addUserError(read, caught), { of: 'plan', ...read.refused() });
    }
    sayDone(cookies, 'trip-planned', created.searchFailed && 'search-failed');
    redirect(303, `/trips/${created.stored.id}/menu`);
  },
  copy: async ({ request, locals: { app }, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const startDate = readStart(read);
    if (!startDate) return fail<Refused>(422, { of: 'copy', ...read.refused() });
    let copy: Awaited<ReturnType<typeof copyStoredTrip>>;
    try {
      copy = await copyStoredTrip(app, read.text('trip') ?? '', startDate);
    } catch (caught) {
      return fail<Refused>(addUserError(read, caught, 'trip'), { of: 'copy', ...read.refused() });
    }
    sayDone(cookies, 'trip-copied', copy.searchFailed && 'search-failed');
    redirect(303, `/trips/${copy.stored.id}/party`);
  },
  open: ({ request, locals: { app }, cookies }) =>
    app.incoming
      .form(request, LARGEST_TRIP_FILE_BYTES, async ({ form, file }) => {
        const read = new FormReader(form, 'metric');
        const refuse = (status: number) => fail<Refused>(status, { of: 'open', ...read.refused() });
        if (!file) {
          read.problems.push({ field: 'file', message: say('choose the file of a trip first') });
          return refuse(422);
        }
        try {
          const opened = await openTripFile(app, file, form.has('again'));
          if ('value' in opened) {
            sayDone(cookies, 'trip-opened', opened.value.searchFailed && 'search-failed');
            redirect(303, `/trips/${opened.value.stored.id}/menu`);
          }
          if ('fault' in opened) read.problems.push({ field: 'file', message: opened.fault });
          else read.problems.push(...inFile(opened.problems));
          return refuse(422);
        } catch (caught) {
          const isThere = caught instanceof UserError && caught.code === 'Conflict';
          const status = addUserError(read, caught, 'file');
          return fail<Refused>(status, { of: 'open', ...read.refused(), isThere });
        }
      })
      .catch(toHttpError),
};

/** A field of the file has no place on the page: each problem is one of the file, and names its field. */
function inFile(problems: RefusedForm['problems']): RefusedForm['problems'] {
  const more = problems.length - PROBLEMS_NAMED;
  return [
    ...problems
      .slice(0, PROBLEMS_NAMED)
      .map(({ field, message }) =>
        field === '(input)' ? say('it {problem}', { problem: message }) : `${field} ${message}`,
      ),
    ...(more > 0 ? [say('and {more} more', { more })] : []),
  ].map((message) => ({ field: 'file', message }));
}
