import { redirect } from '@sveltejs/kit';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { nutritionView } from '$lib/trip-views/nutrition.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params }) => {
  // What people weigh is not for readers.
  if (locals.readsOnly) redirect(307, `/trips/${params.id}/card`);
  const { plan } = await plannedForPage(locals, params.id);
  return nutritionView(plan.nutrition);
};
