import { json } from '@sveltejs/kit';
import type { RequestHandler } from './$types';
import { shownProgress } from '../../import-work.ts';

/** How far the import of this upload is, or the reading that `of` names; `null` where none runs. */
export const GET: RequestHandler = ({ locals: { app }, params, url }) => {
  const running = app.imports.work.running(url.searchParams.get('of') ?? params.id);
  return json(running ? shownProgress(running) : null, { headers: { 'cache-control': 'no-store' } });
};
