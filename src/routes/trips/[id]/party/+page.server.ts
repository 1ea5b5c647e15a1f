import { fail, redirect } from '@sveltejs/kit';
import { differences } from '$lib/forms/differences.ts';
import type { Difference } from '$lib/forms/fields.ts';
import { offerUndo, sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { learnedDefaults } from '$lib/planning/learning/learned-figures.ts';
import { dropMeals } from '$lib/planning/menu/edit-menu.ts';
import { nextStart } from '$lib/planning/model/copy-trip.ts';
import { TRIP_DEFAULTS } from '$lib/planning/model/trip-defaults.ts';
import { copyStoredTrip } from '$lib/server/copy-stored-trip.ts';
import { DAYS_IN_BIN } from '$lib/server/bin.ts';
import { planMeals, type PlannedMeals } from '$lib/server/plan-meals.ts';
import { plannedForPage, planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { readStart } from '$lib/trip-forms/new-trip.ts';
import { dropped, type Dropped } from '$lib/trip-forms/dropped.ts';
import {
  readTrip,
  rowCount,
  TRIP_WORDS,
  tripFields,
  withEater,
  withFirstDayEverywhere,
  withoutEater,
} from '$lib/trip-forms/trip-fields.ts';
import { usualAppetites, usualByDay, usualLoadsOf, usualValues } from '$lib/trip-forms/usual-values.ts';
import { hasLeft } from '$lib/ledger-kinds.ts';
import { partyReasons } from '$lib/reasons/trip.ts';
import type { Actions, PageServerLoad } from './$types';

/** What an action hands back: what was saved meanwhile, what saving would drop, and the field to go to. */
type Answer = RefusedForm & {
  readonly of: 'save' | 'duplicate' | 'template' | 'delete';
  readonly newer?: { readonly version: number; readonly changes: readonly Difference[] };
  readonly drops?: Dropped;
  readonly focus?: string;
};

/** A list to choose a dish from is no longer than this; others are typed. */
const MOST_DISHES = 300;

export const load: PageServerLoad = async ({ parent, locals, params }) => {
  const { trip, shown } = await parent();
  const { settings, stock } = await plannedForPage(locals, params.id);
  const learned = learnedDefaults(settings.learned);
  const dishes = [...new Set(stock.map(({ recipe }) => recipe))].sort().slice(0, MOST_DISHES);
  const usual = usualValues(shown.unitSystem, trip.stove.fuel ?? TRIP_DEFAULTS.fuel.value, settings);
  return {
    fields: tripFields(trip, shown.unitSystem),
    daysInBin: DAYS_IN_BIN,
    nextStart: nextStart(trip.startDate, locals.app.today()),
    usual,
    reasons: partyReasons(usual),
    byWay: usualByDay(trip, shown.unitSystem, learned),
    appetites: usualAppetites(trip, learned),
    loads: usualLoadsOf(trip, shown.unitSystem),
    dishes,
  };
};

export const actions: Actions = {
  save: async ({ request, locals: { app }, params, cookies }) => {
    const { stored, stock, settings } = await planStoredTrip(app, params.id).catch(toHttpError);
    const read = new FormReader(await request.formData(), settings.unitSystem);
    const refuse = (status: number, more: Partial<Answer> = {}) =>
      fail<Answer>(status, { ...read.refused(), of: 'save', ...more });

    // Whoever saves on an older version sees what the other one changed, and may then save on the newer one.
    if (read.number('version') !== stored.version)
      return refuse(409, {
        newer: {
          version: stored.version,
          changes: differences(read.entered, tripFields(stored.trip, read.system), TRIP_WORDS),
        },
      });
    const result = readTrip(read, stored.trip);
    if (!result) return refuse(422);
    const drops = dropped(result, stored.trip.menu, settings);
    if (drops.words.length > 0 && read.text('drop') !== drops.words.join('\n')) return refuse(422, { drops });

    const trip = dropMeals({ ...result.trip, menu: stored.trip.menu }, drops.meals);
    const replan = read.text('replan') === 'yes' && !hasLeft(stored.stage);
    let planned: PlannedMeals | undefined;
    try {
      planned = replan ? await planMeals(app, stored.id, { trip, stock, settings }) : undefined;
      const { undo } = await app.trips.updateTrip(stored.id, planned?.trip ?? trip, stored.version);
      offerUndo(cookies, undo);
    } catch (caught) {
      return refuse(addUserError(read, caught));
    }
    sayDone(
      cookies,
      replan ? 'trip-replanned' : 'trip-saved',
      planned?.searchFailed === true && 'search-failed',
    );
    redirect(303, `/trips/${stored.id}/party`);
  },

  addEater: async ({ request }) => {
    const { entered } = new FormReader(await request.formData(), 'metric');
    const focus = `party[${rowCount(entered, 'party')}].name`;
    return { entered: withEater(entered), problems: [], of: 'save', focus } satisfies Answer;
  },

  removeEater: async ({ request, url }) => {
    const { entered } = new FormReader(await request.formData(), 'metric');
    const index = Number(url.searchParams.get('eater'));
    return {
      entered: withoutEater(entered, index),
      problems: [],
      of: 'save',
      focus: `party[${Math.max(0, index - 1)}].name`,
    } satisfies Answer;
  },

  sameDays: async ({ request }) => {
    const { entered } = new FormReader(await request.formData(), 'metric');
    return {
      entered: withFirstDayEverywhere(entered),
      problems: [],
      of: 'save',
      focus: 'days[0].walkingH',
    } satisfies Answer;
  },

  duplicate: async ({ request, locals: { app }, params, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const startDate = readStart(read);
    if (!startDate) return fail<Answer>(422, { ...read.refused(), of: 'duplicate' });
    const copy = await copyStoredTrip(app, params.id, startDate).catch(toHttpError);
    sayDone(cookies, 'trip-copied', copy.searchFailed && 'search-failed');
    redirect(303, `/trips/${copy.stored.id}/party`);
  },

  /** Makes the trip a template, or a template a trip. */
  template: async ({ request, locals: { app }, params, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const isTemplate = read.text('template') === 'yes';
    try {
      await app.trips.markTemplate(params.id, isTemplate, read.number('version') ?? 0);
    } catch (caught) {
      const status = addUserError(read, caught);
      return fail<Answer>(status, { ...read.refused(), of: 'template' });
    }
    sayDone(cookies, isTemplate ? 'template-made' : 'template-unmade');
    redirect(303, `/trips/${params.id}/party`);
  },

  delete: async ({ request, locals: { app }, params, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    try {
      offerUndo(cookies, await app.trips.deleteTrip(params.id, read.number('version') ?? 0));
    } catch (caught) {
      const status = addUserError(read, caught);
      return fail<Answer>(status, { ...read.refused(), of: 'delete' });
    }
    sayDone(cookies, 'trip-deleted');
    redirect(303, '/trips');
  },
};
