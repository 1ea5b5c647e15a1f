import { json } from '@sveltejs/kit';
import { shownProgress } from '$lib/trip-views/weighing.ts';
import type { RequestHandler } from './$types';

/** How far the search for this trip's menu is; `null` where none runs. */
export const GET: RequestHandler = ({ locals: { app }, params }) => {
  const running = app.menus.running(params.id);
  return json(running ? shownProgress(running) : null, { headers: { 'cache-control': 'no-store' } });
};
