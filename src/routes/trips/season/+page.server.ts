import { planStoredSeason } from '$lib/server/plan-season.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { seasonView } from '$lib/trip-views/season.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app } }) => {
  const { season, leftOut, recipeCount } = await planStoredSeason(app).catch(toHttpError);
  return { season: seasonView(season), leftOut, recipeCount };
};
