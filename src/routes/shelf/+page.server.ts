import { readShelfQuery, shelfView } from '$lib/shelf-view.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, url }) => {
  const query = readShelfQuery(url.searchParams);
  const lots = await locals.app.shelf.listLots();
  return { query, view: shelfView(lots, query, locals.app.today()), isEmpty: lots.length === 0 };
};
