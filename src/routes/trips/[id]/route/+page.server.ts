import { fail } from '@sveltejs/kit';
import { offerUndo } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { RouteError } from '$lib/planning/route/route-error.ts';
import { routeErrorText, routeRemarkText } from '$lib/presentation/route-words.ts';
import type { LineChoice, RouteFromGpx } from '$lib/planning/route/route-from-gpx.ts';
import { UserError } from '$lib/server/errors.ts';
import { beginOf } from '$lib/server/incoming.ts';
import { plannedForPage, planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { otherFile } from '$lib/shelf-csv/text-encoding.ts';
import { say } from '$lib/texts/say.ts';
import {
  readWaypoints,
  waypointCount,
  waypointFields,
  withoutWaypoint,
  withRoute,
  withWaypoint,
} from '$lib/trip-forms/route-fields.ts';
import { legRows } from '$lib/trip-views/legs.ts';
import { drawProfile, loadStretches } from '$lib/trip-views/profile.ts';
import { routeReasons } from '$lib/reasons/trip.ts';
import type { Actions, PageServerLoad } from './$types';

const MAX_GPX_BYTES = 20_000_000;

type Answer = RefusedForm & {
  readonly of: 'import' | 'waypoints' | 'remove';
  readonly said?: string;
  /** Of the file: what can be taken, what was, and what was left out. */
  readonly choices?: readonly LineChoice[];
  readonly picked?: number;
  readonly left?: readonly string[];
  /** The version to save on after somebody else has saved. */
  readonly newerVersion?: number;
  readonly focus?: string;
};

export const load: PageServerLoad = async ({ locals, params, parent, url }) => {
  const { stored, plan } = await plannedForPage(locals, params.id);
  const { trip } = stored;
  const { shown } = await parent();
  const system = shown.unitSystem;
  const asked = url.searchParams.get('who');
  const who = plan.carry.packs.find(({ eater }) => eater === asked)?.eater;
  const stretches = loadStretches(plan, who);
  return {
    who,
    stretches,
    maxBytes: MAX_GPX_BYTES,
    fields: waypointFields(trip, system),
    legs: legRows(plan.legs, trip.route, system),
    reasons: routeReasons(system),
    drawing: drawProfile(plan, trip.route, stretches, system),
  };
};

export const actions: Actions = {
  import: async ({ request, locals, params, cookies }) => {
    const { app } = locals;
    const refuse = (status: number, message: string, read?: FormReader) =>
      fail<Answer>(status, {
        entered: read?.entered ?? {},
        problems: [{ field: 'file', message }],
        of: 'import',
      });
    const tooLarge = say(
      'the file is larger than {size, number} MB, the most that is taken. Is it the right file? Thin out the track, or cut it in parts',
      { size: MAX_GPX_BYTES / 1_000_000 },
    );
    return app.incoming
      .form(request, MAX_GPX_BYTES, async ({ form, file }) => {
        const read = new FormReader(form, 'metric');
        if (!file) return refuse(422, say('no file was chosen. Choose a GPX file first'), read);
        if (file.bytes > MAX_GPX_BYTES) return refuse(413, tooLarge, read);

        const other = otherFile(await beginOf(file.path));
        if (other !== undefined)
          return refuse(
            422,
            say('this is {what}, not a GPX file; unpack it, or choose another', { what: other }),
            read,
          );
        let found: RouteFromGpx;
        try {
          found = await app.apart.do({ kind: 'GPX', source: file, pick: read.number('pick') });
        } catch (caught) {
          if (caught instanceof UserError)
            return fail<Answer>(addUserError(read, caught, 'file'), { ...read.refused(), of: 'import' });
          if (!(caught instanceof RouteError)) throw caught;
          return refuse(
            422,
            say('"{file}": {problem}', { file: file.name, problem: routeErrorText(caught) }),
            read,
          );
        }

        const { stored } = await planStoredTrip(app, params.id).catch(toHttpError);
        const { trip, openedDays } = withRoute(stored.trip, found.route);
        try {
          offerUndo(cookies, (await app.trips.updateTrip(stored.id, trip, stored.version)).undo);
        } catch (caught) {
          return fail<Answer>(addUserError(read, caught, 'file'), { ...read.refused(), of: 'import' });
        }
        return {
          entered: { pick: [String(found.picked)] },
          problems: [],
          of: 'import',
          said: [
            say('"{route}" is the route of this trip now.', { route: found.route.name }),
            ...saidOfDays(openedDays),
          ].join(' '),
          choices: found.choices,
          picked: found.picked,
          left: found.left.map(routeRemarkText),
        } satisfies Answer;
      })
      .catch(toHttpError);
  },

  save: async ({ request, locals: { app }, params, cookies }) => {
    const { stored, settings } = await planStoredTrip(app, params.id).catch(toHttpError);
    const read = new FormReader(await request.formData(), settings.unitSystem);
    const refuse = (status: number, more: Partial<Answer> = {}) =>
      fail<Answer>(status, { ...read.refused(), of: 'waypoints', ...more });
    const tell = (message: string) => read.add([{ field: '', message }]);

    if (!stored.trip.route) {
      tell(
        say('the route was removed meanwhile, so there is nothing to save the waypoints to; import it again'),
      );
      return refuse(409);
    }
    if (read.number('version') !== stored.version) {
      tell(
        say(
          'this trip was changed elsewhere since you opened it. What you typed is still here; saving now puts it in the place of the waypoints stored meanwhile',
        ),
      );
      return refuse(409, { newerVersion: stored.version });
    }
    const trip = readWaypoints(read, stored.trip);
    if (!trip) return refuse(422);
    try {
      offerUndo(cookies, (await app.trips.updateTrip(stored.id, trip, stored.version)).undo);
    } catch (caught) {
      return refuse(addUserError(read, caught));
    }
    return {
      entered: waypointFields(trip, settings.unitSystem),
      problems: [],
      of: 'waypoints',
      said: say(
        'Waypoints saved. Water, pack weights and energy needs are updated; the menu has not changed.',
      ),
    } satisfies Answer;
  },

  addWaypoint: async ({ request }) => {
    const { entered } = new FormReader(await request.formData(), 'metric');
    const focus = `route.waypoints[${waypointCount(entered)}].name`;
    return { entered: withWaypoint(entered), problems: [], of: 'waypoints', focus } satisfies Answer;
  },

  removeWaypoint: async ({ request, url }) => {
    const { entered } = new FormReader(await request.formData(), 'metric');
    const index = Number(url.searchParams.get('waypoint'));
    return {
      entered: withoutWaypoint(entered, index),
      problems: [],
      of: 'waypoints',
      focus: `route.waypoints[${Math.max(0, index - 1)}].name`,
    } satisfies Answer;
  },

  remove: async ({ request, locals: { app }, params, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const { stored } = await planStoredTrip(app, params.id).catch(toHttpError);
    const { trip, openedDays } = withRoute(stored.trip, undefined);
    try {
      offerUndo(cookies, (await app.trips.updateTrip(stored.id, trip, read.number('version') ?? 0)).undo);
    } catch (caught) {
      return fail<Answer>(addUserError(read, caught), { ...read.refused(), of: 'remove' });
    }
    return {
      entered: {},
      problems: [],
      of: 'remove',
      said: [say('The route is removed.'), ...saidOfDays(openedDays)].join(' '),
    } satisfies Answer;
  },
};

function saidOfDays(openedDays: readonly number[]): string[] {
  if (openedDays.length === 0) return [];
  return [
    say(
      '{count, plural, one {Day {days} has} other {Days {days} have}} no chosen end now: the place is no longer on the route, or out of order.',
      { count: openedDays.length, days: openedDays.join(', ') },
    ),
  ];
}
