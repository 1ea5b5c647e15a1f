import { json } from '@sveltejs/kit';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { shownProgress } from '$lib/trip-views/weighing.ts';
import type { RequestHandler } from './$types';

/** How far the search for this trip's menu is; `null` where none runs. */
export const GET: RequestHandler = async ({ locals: { app }, params }) => {
  const running = await app.menus.running(params.id).catch(toHttpError);
  return json(running ? shownProgress(running) : null, { headers: { 'cache-control': 'no-store' } });
};
