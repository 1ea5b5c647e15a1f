import { actAndSay } from '$lib/forms/act-and-say.ts';
import type { FormReader } from '$lib/forms/read-form.ts';
import { z } from 'zod';
import { parseJson } from '$lib/parse-json.ts';
import { pouchesThere } from '$lib/planning/menu/plan-menu.ts';
import type { MenuPlan } from '$lib/planning/model/trip-plan.ts';
import { UserError } from '$lib/server/errors.ts';
import { changeMenu, plannedForPage, planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { setAsideLines } from '$lib/trip-views/set-aside.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';

const MOST_NAMED = 10;

export const load: PageServerLoad = async ({ locals, params }) => {
  const { stored, stock, plan } = await plannedForPage(locals, params.id);
  const recipes = new Map(stock.map(({ code, recipe }) => [code, recipe]));
  const places = new Map(stock.flatMap(({ code, place }) => (place === undefined ? [] : [[code, place]])));
  const need = pouchesThere(plan.menu);
  return { lines: setAsideLines(need, stored.reserved, recipes, places), need: JSON.stringify(need) };
};

export const actions: Actions = {
  // The menu is stored as it stands, so that what is set aside is what stays on it.
  setAside: ({ request, locals: { app }, params, cookies }) =>
    actAndSay(request, cookies, `/trips/${params.id}/pouches`, 'pouches-set-aside', async (read) => {
      const shown = neededAsShown(read);
      if (shown) refuseUnlessAsShown(shown, (await planStoredTrip(app, params.id)).plan.menu);
      const { id, version } = await changeMenu(app, params.id, (trip) => trip);
      const { plan } = await planStoredTrip(app, id);
      if (shown) refuseUnlessAsShown(shown, plan.menu);
      await app.trips.setAside(id, version, pouchesThere(plan.menu));
    }),
  release: ({ request, locals: { app }, params, cookies }) =>
    actAndSay(request, cookies, `/trips/${params.id}/pouches`, 'pouches-released', (read) =>
      app.trips.release(params.id, read.number('version') ?? 0),
    ),
  pack: ({ request, locals: { app }, params, cookies }) =>
    actAndSay(request, cookies, `/trips/${params.id}/pouches`, 'pouches-packed', (read) =>
      app.trips.pack(params.id, read.number('version') ?? 0),
    ),
};

const Shown = z.array(z.strictObject({ code: z.string(), pouches: z.int() })).max(5000);

/** What the page named that the menu opens; `undefined` where it named nothing. */
function neededAsShown(read: FormReader): z.infer<typeof Shown> | undefined {
  const told = read.text('need');
  const parsed = told === undefined ? undefined : parseJson(told);
  return parsed && 'value' in parsed ? Shown.safeParse(parsed.value).data : undefined;
}

/**
 * The menu of meals that are not chosen yet follows the shelf. Where others took pouches meanwhile, it opens others now, or fewer, and nobody has seen that.
 *
 * @throws UserError `StaleVersion` naming what differs
 */
function refuseUnlessAsShown(shown: z.infer<typeof Shown>, menu: MenuPlan): void {
  const now = new Map(pouchesThere(menu).map(({ code, pouches }) => [code, pouches]));
  const before = new Map(shown.map(({ code, pouches }) => [code, pouches]));
  const changed = [...new Set([...before.keys(), ...now.keys()])].filter(
    (code) => before.get(code) !== now.get(code),
  );
  if (changed.length === 0) return;
  const named = changed.slice(0, MOST_NAMED).map((code) =>
    say('"{code}": {before} then, {now} now', {
      code,
      before: String(before.get(code) ?? 0),
      now: String(now.get(code) ?? 0),
    }),
  );
  throw new UserError(
    'StaleVersion',
    say(
      'The shelf changed since this page was opened, so nothing was set aside. Pouches for this trip: {changes}. Check the menu, then set aside again.',
      { changes: [...named, ...(changed.length > MOST_NAMED ? ['…'] : [])].join('; ') },
    ),
  );
}
