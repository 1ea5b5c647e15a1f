import { json } from '@sveltejs/kit';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { lotOnShelf } from '$lib/shelf-view.ts';
import type { RequestHandler } from './$types';

/** All lots, as far as the shelf page shows them, so that it can filter in the browser. */
export const GET: RequestHandler = async ({ locals }) =>
  json((await locals.app.shelf.listLots().catch(toHttpError)).map(lotOnShelf));
