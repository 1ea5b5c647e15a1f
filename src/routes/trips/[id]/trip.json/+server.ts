import { json } from '@sveltejs/kit';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import type { RequestHandler } from './$types';

/** The trip as it is stored: the headless command and the API plan from the same JSON. */
export const GET: RequestHandler = async ({ locals, params }) => {
  const { stored } = await planStoredTrip(locals.app, params.id).catch(toHttpError);
  const fileName = encodeURIComponent(`${stored.trip.name}.json`);
  return json(stored.trip, {
    headers: { 'content-disposition': `attachment; filename="trip.json"; filename*=UTF-8''${fileName}` },
  });
};
