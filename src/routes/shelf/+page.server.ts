import { MOST_IN_BROWSER, readShelfQuery } from '$lib/shelf-view.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, url }) => {
  const query = readShelfQuery(url.searchParams);
  const today = locals.app.today();
  const { view, allCount } = await locals.app.shelf.look(query, today);
  const isHidden = locals.readsOnly && !(await locals.app.settings.get()).photosForReaders;
  const photographed = isHidden ? { lots: {}, recipes: {} } : await locals.app.photos.photographed();
  return {
    photographed,
    query,
    view,
    today,
    isEmpty: allCount === 0,
    filtersHere: allCount <= MOST_IN_BROWSER,
  };
};
