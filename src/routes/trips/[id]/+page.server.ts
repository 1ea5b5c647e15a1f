import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { answersOf, boardOf } from '$lib/trip-views/overview.ts';
import { hasLeft } from '$lib/ledger-kinds.ts';
import type { PageServerLoad } from './$types';
import { redirect } from '@sveltejs/kit';

export const load: PageServerLoad = async ({ locals, params, parent }) => {
  // Readers are shown the card and the packing lists; what the group needs is not for them.
  if (locals.readsOnly) redirect(307, `/trips/${params.id}/card`);
  const { stored, plan } = await plannedForPage(locals, params.id);
  const { stage, matches, isOver } = await parent();
  return {
    answers: answersOf(plan, { stage, matches, isOver, isTemplate: stored.trip.template === true }),
    board: boardOf(plan),
    groups: plan.menu.groups.map(({ name }) => name),
    mayChange: !hasLeft(stored.stage),
  };
};
