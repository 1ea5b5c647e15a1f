import { readShelfQuery, shelfView } from '$lib/shelf-view.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, url }) => {
  const query = readShelfQuery(url.searchParams);
  const lots = await locals.app.shelf.listLots();
  const today = locals.app.today();
  return { query, view: shelfView(lots, query, today), today, isEmpty: lots.length === 0 };
};
