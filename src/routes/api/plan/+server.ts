import { error, json } from '@sveltejs/kit';
import { z } from 'zod';
import { parseJson } from '$lib/parse-json';
import { doubtsOf } from '$lib/planning/model/plausibility';
import { Stock } from '$lib/planning/model/pouch-lot';
import { fieldPath, problemsOf, type Problem } from '$lib/planning/model/problems';
import { Settings } from '$lib/planning/model/settings';
import { Trip } from '$lib/planning/model/trip';
import type { TripPlan } from '$lib/planning/model/trip-plan';
import { EFFORTS } from '$lib/planning/optimiser/search-menu';
import { planTrip } from '$lib/planning/plan-trip';
import { wordedPlan } from '$lib/presentation/worded-plan';
import { UserError } from '$lib/server/errors';
import { InTurns } from '$lib/server/in-turns';
import { readText } from '$lib/server/limit-body';
import { toHttpError } from '$lib/server/to-http-error';
import { say } from '$lib/texts/say';
import type { RequestEvent, RequestHandler } from './$types';

/** A stock of 10,000 lots with notes takes some 8 MB. */
const LARGEST_BODY_BYTES = 16_000_000;

const PlanRequest = z.strictObject({
  trip: Trip,
  stock: Stock.optional(),
  settings: Settings.optional(),
  search: z.enum(['none', ...EFFORTS]).default('none'),
});

const refusal = (problems: readonly Problem[]) =>
  json({ problems: problems.map(({ field, message }) => ({ field, message })) }, { status: 400 });

/**
 * `POST /api/plan` with JSON `{ trip, stock?, settings?, search? }`, as docs/schema describes them, answers with the TripPlan, its notices with their text.
 * Without `stock` or `settings` those of this app are taken. `search`: "none", the usual, lets the listed meals stand and plans the others first
 * expired, first out; "quick" or "thorough" looks for the best menu, in which the locked meals alone stand. 400: `{ problems: [{ field, message }] }`; 413: too large; 503: too many plans wait, or no search can be run.
 */
export const POST: RequestHandler = (event) => plans.enter((turn) => answer(event, turn)).catch(toHttpError);

/** A plan is made while others wait; so many, with 16 MB each, are held at most. */
const plans = new InTurns(24, () =>
  say('Many plans are being made at the moment, and no more can wait. Send this again in a moment.'),
);

async function answer(
  { request, locals }: RequestEvent,
  turn: <Made>(work: () => Made) => Promise<Made>,
): Promise<Response> {
  const parsed = parseJson(await readText(request, LARGEST_BODY_BYTES));
  if ('fault' in parsed)
    return refusal([
      { field: fieldPath([]), message: say('is no valid JSON: {fault}', { fault: parsed.fault }) },
    ]);
  const checked = PlanRequest.safeParse(parsed.value, { reportInput: true });
  if (!checked.success) return refusal(problemsOf(checked.error));

  const { trip, stock, settings, search } = checked.data;
  const impossible = (stock ?? []).flatMap((lot, index) =>
    doubtsOf(lot)
      .filter(({ severity }) => severity === 'refuse')
      .map(({ field, reason }) => ({ field: fieldPath(['stock', index, field]), message: reason })),
  );
  if (impossible.length > 0) return refusal(impossible);

  const { app } = locals;
  const given = {
    trip,
    stock: stock ?? (await app.shelf.stockFor(undefined).catch(toHttpError)),
    settings: settings ?? (await app.settings.get().catch(toHttpError)),
  };
  const worded = (plan: TripPlan) => json(wordedPlan(plan, given.settings.unitSystem));
  if (search === 'none') return worded(await turn(() => planTrip(given.trip, given.stock, given.settings)));
  const { plan } = await app.menus.search(undefined, given, search).catch((caught: unknown) => {
    if (caught instanceof UserError) return toHttpError(caught);
    console.error(`${new Date().toISOString()} the search for a menu could not be run:`, caught);
    return error(
      503,
      say('The search for a menu could not be run on this machine. Send "search": "none" instead.'),
    );
  });
  return worded(plan);
}
