import { fail, redirect, type Cookies } from '@sveltejs/kit';
import { offerUndo, sayDone, type Done } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { TRIP_DEFAULTS } from '$lib/planning/model/trip-defaults.ts';
import { changeTrip, planKept, plannedForPage, planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { usualValues } from '$lib/trip-forms/usual-values.ts';
import {
  readStarted,
  readStoveRun,
  readWater,
  waterFields,
  withWater,
} from '$lib/trip-forms/water-and-fuel.ts';
import { measuredFuels, measuredRuns } from '$lib/trip-views/stove-runs.ts';
import { boilingSafeG, busiestTreatment } from '$lib/trip-views/treatment.ts';
import { fuelAssumptions, waterAssumptions } from '$lib/reasons/plan.ts';
import { waterFormReasons } from '$lib/reasons/trip.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

/** The forms of the page; each is saved by itself. */
type Part = 'water' | 'started' | 'run';
type Refusal = RefusedForm & { readonly of: Part };

export const load: PageServerLoad = async ({ locals, params }) => {
  const { stored, stock, settings, plan } = await plannedForPage(locals, params.id);
  const { trip } = stored;
  const ifBoiled =
    trip.treatment === 'boil'
      ? plan
      : await planKept(locals.app, { ...trip, treatment: 'boil' }, stock, settings);
  const usual = usualValues(settings.unitSystem, trip.stove.fuel ?? TRIP_DEFAULTS.fuel.value, settings);
  return {
    water: plan.water,
    fuel: plan.fuel,
    busiest: busiestTreatment(plan),
    waterFields: waterFields(trip, settings.unitSystem),
    usual,
    reasons: {
      water: waterAssumptions(settings.unitSystem, settings),
      fuel: fuelAssumptions(settings.unitSystem),
      ...waterFormReasons(usual),
    },
    boilingSafeG: boilingSafeG(ifBoiled),
    runs: measuredRuns(settings),
    measured: measuredFuels(settings),
    today: locals.app.today(),
  };
};

export const actions: Actions = {
  water: async (event) => {
    const { read, planned } = await opened(event);
    const trip = readWater(read, planned.stored.trip);
    if (!trip) return refuse(read, 'water');
    return save(event, read, 'water', 'water-saved', (now) => withWater(now, trip));
  },

  addStarted: async (event) => {
    const { read, planned } = await opened(event);
    const container = readStarted(read, planned.stored.trip);
    if (!container) return refuse(read, 'started');
    return save(event, read, 'started', 'container-added', (now) => ({
      ...now,
      stove: { ...now.stove, started: [...now.stove.started, container] },
    }));
  },

  removeStarted: async (event) => {
    const { read } = await opened(event);
    const label = read.text('label');
    return save(event, read, 'started', 'container-removed', (now) => ({
      ...now,
      stove: { ...now.stove, started: now.stove.started.filter((container) => container.label !== label) },
    }));
  },

  addRun: async (event) => {
    const { read, planned } = await opened(event);
    const run = readStoveRun(read, planned.settings);
    if (!run) return refuse(read, 'run');
    const { app } = event.locals;
    await app.settings.save({ ...planned.settings, stoveRuns: [...planned.settings.stoveRuns, run] });
    return done(event.cookies, event.params.id, 'run-added', 'run');
  },

  removeRun: async (event) => {
    const { read, planned } = await opened(event);
    const { app } = event.locals;
    const [place, date] = [read.number('place'), read.text('date')];
    const stoveRuns = planned.settings.stoveRuns.filter((run, index) => index !== place || run.date !== date);
    await app.settings.save({ ...planned.settings, stoveRuns });
    return done(event.cookies, event.params.id, 'run-removed', 'run');
  },
};

type Event = RequestEvent;
type Planned = Awaited<ReturnType<typeof planStoredTrip>>;

async function opened({ request, locals: { app }, params }: Event) {
  const planned = await planStoredTrip(app, params.id).catch(toHttpError);
  return { planned, read: new FormReader(await request.formData(), planned.settings.unitSystem) };
}

const refuse = (read: FormReader, of: Part, status = 422) => fail<Refusal>(status, { ...read.refused(), of });

async function save(
  { locals: { app }, params, cookies }: Event,
  read: FormReader,
  of: Part,
  said: Done,
  change: (trip: Planned['stored']['trip']) => Planned['stored']['trip'],
) {
  try {
    const { undo } = await changeTrip(app, params.id, ({ stored }) => change(stored.trip));
    offerUndo(cookies, undo);
  } catch (caught) {
    return refuse(read, of, addUserError(read, caught));
  }
  return done(cookies, params.id, said, of);
}

function done(cookies: Cookies, id: string, said: Done, of: Part): never {
  sayDone(cookies, said);
  redirect(303, `/trips/${id}/water#${of}`);
}
