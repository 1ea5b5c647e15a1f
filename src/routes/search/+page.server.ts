import { searchEverything } from '$lib/server/search-everything.ts';
import type { PageServerLoad } from './$types';

const LONGEST = 200;

export const load: PageServerLoad = async ({ locals: { app }, url }) => {
  const words = (url.searchParams.get('q') ?? '').trim().slice(0, LONGEST);
  return { words, found: await searchEverything(app, words, app.today()) };
};
