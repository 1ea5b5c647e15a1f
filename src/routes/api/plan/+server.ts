import { error, json } from '@sveltejs/kit';
import { wordedFault } from '$lib/presentation/problems';
import { wordedPlan } from '$lib/presentation/worded-plan';
import type { PlanAnswer, Source } from '$lib/server/apart/tasks';
import { asker } from '$lib/server/asker';
import { UserError } from '$lib/server/errors';
import { InTurns } from '$lib/server/in-turns';
import { toHttpError } from '$lib/server/to-http-error';
import { say } from '$lib/texts/say';
import type { RequestHandler } from './$types';

/** A stock of 10,000 lots with notes takes some 8 MB. */
const LARGEST_BODY_BYTES = 16_000_000;

/**
 * `POST /api/plan` with JSON `{ trip, before?, stock?, settings?, search? }`, as docs/schema describes them, answers with the TripPlan, its notices with their text.
 * Without `stock` or `settings` those of this app are taken. `before`: trips that take theirs from the stock first. `search`: "none", the usual, lets the listed meals stand and plans the others first
 * expired, first out; "quick" or "thorough" looks for the best menu, in which the locked meals alone stand. 400: `{ problems: [{ field, code, params, message }] }`, at most 100;
 * 413: too large; 422: takes too long; 503: too many plans wait, or no search can be run.
 */
export const POST: RequestHandler = ({ request, locals }) =>
  locals.app.incoming
    .body(request, LARGEST_BODY_BYTES, (source) => answer(source, locals))
    .catch(toHttpError);

/** So few searches of other programs wait at a time, so that those of the house soon have their turn. */
const searches = new InTurns(4, () =>
  say('Many menus are being looked for at the moment, and no more can wait. Send this again in a minute.'),
);

async function answer(source: Source, { app }: App.Locals): Promise<Response> {
  let made: PlanAnswer = await app.apart.do({ kind: 'plan request', source });
  if ('lacks' in made) {
    const [stock, settings] = await Promise.all([app.shelf.stockFor(undefined), app.settings.get()]);
    made = await app.apart.do({ kind: 'plan request', source, own: { stock, settings } });
  }
  if ('faults' in made) return json({ problems: made.faults.map(wordedFault) }, { status: 400 });
  if ('json' in made) return new Response(made.json, { headers: { 'content-type': 'application/json' } });
  if ('lacks' in made) throw new Error('what it lacked was given');
  const { given, search } = made;
  const { plan } = await searches
    .enter(() => app.menus.search(undefined, given, search, asker().signal))
    .catch((caught: unknown) => {
      if (caught instanceof UserError) return toHttpError(caught);
      console.error(`${new Date().toISOString()} the search for a menu could not be run:`, caught);
      return error(
        503,
        say('The search for a menu could not be run on this machine. Send "search": "none" instead.'),
      );
    });
  return json(wordedPlan(plan, given.settings.unitSystem));
}
