import { error, json } from '@sveltejs/kit';
import { wordedFault } from '$lib/presentation/problems.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import type { RequestHandler } from './$types';

/** 500 notes with their longest texts in four-byte characters take some 1.5 MB. */
const LARGEST_BODY_BYTES = 2_000_000;

/** The notes of the trip in the order of arrival: `{ notes }`, with what became of each. */
export const GET: RequestHandler = async ({ locals, params }) =>
  json({ notes: await locals.app.trailNotes.list(params.id).catch(toHttpError) });

/**
 * Takes `{ notes }` in, at most 500, and answers `{ results: [{ id, outcome, message? }] }` in their order. A note may be sent again:
 * it is `known` then and changes nothing. 400: `{ problems: [{ field, code, params, message }] }`, nothing was kept; 403: sent by a page of another
 * address; 404: there never was such a trip; 413: too large.
 */
export const POST: RequestHandler = async ({ request, url, locals, params }) => {
  // SvelteKit looks at the origin of forms only; a browser states it with every POST, other programs need not.
  const origin = request.headers.get('origin');
  if (origin !== null && origin !== url.origin)
    error(
      403,
      say('Notes are taken only from pages of this program. Open the trip here and enter them there.'),
    );
  const { apart, incoming } = locals.app;
  const read = await incoming
    .body(request, LARGEST_BODY_BYTES, (source) => apart.do({ kind: 'trail notes', source }))
    .catch(toHttpError);
  if ('faults' in read) return json({ problems: read.faults.map(wordedFault) }, { status: 400 });
  if (locals.readsOnly && read.notes.some(({ kind }) => kind.startsWith('bought')))
    error(403, say('Only someone who is signed in can enter food as bought.'));
  return json({ results: await locals.app.trailNotes.enter(params.id, read.notes).catch(toHttpError) });
};
