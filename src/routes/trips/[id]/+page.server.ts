import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { answersOf, boardOf } from '$lib/trip-views/overview.ts';
import { hasLeft } from '$lib/ledger-kinds.ts';
import type { Outcome, Table } from '$lib/planning/menu/by-hand.ts';
import { moveDishByHand } from '$lib/planning/menu/by-hand.ts';
import { eatElsewhere, lockMeal, type MealPlace } from '$lib/planning/menu/edit-menu.ts';
import type { FormReader } from '$lib/forms/read-form.ts';
import { MEAL_KINDS } from '$lib/planning/model/words.ts';
import { say } from '$lib/texts/say.ts';
import { placeKey, readPlace } from '$lib/trip-views/meal-place.ts';
import { changeMeal } from './change-meal.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';
import { redirect } from '@sveltejs/kit';

export const load: PageServerLoad = async ({ locals, params, parent }) => {
  // Readers are shown the card and the packing lists; what the group needs is not for them.
  if (locals.readsOnly) redirect(307, `/trips/${params.id}/card`);
  const { stored, plan } = await plannedForPage(locals, params.id);
  const { stage, matches, isOver } = await parent();
  return {
    answers: answersOf(plan, { stage, matches, isOver, isTemplate: stored.trip.template === true }),
    board: boardOf(plan),
    photographed: await locals.app.photos.photographed(),
    groups: plan.menu.groups.map(({ name }) => name),
    mayChange: !hasLeft(stored.stage),
  };
};

/** Changes a meal of the board; the overview then says what changed. */
async function change(
  event: RequestEvent,
  byHand: (table: Table, at: MealPlace, code: string, read: FormReader) => Outcome,
) {
  const answer = await changeMeal(event, byHand);
  if (!('said' in answer)) return answer;
  redirect(303, `/trips/${event.params.id}`);
}

export const actions: Actions = {
  lock: (event) =>
    change(event, ({ trip }, at, _code, read) => ({
      trip: lockMeal(trip, at, read.text('locked') === 'yes'),
      said: '',
    })),
  elsewhere: (event) =>
    change(event, ({ trip }, at, _code, read) => ({
      trip: eatElsewhere(trip, at, read.text('elsewhere') === 'yes'),
      said: '',
    })),
  move: (event) =>
    change(event, (table, at, _code, read) => {
      const meal = MEAL_KINDS.find((kind) => kind === read.text('toMeal'));
      const day = read.number('toDay');
      const to =
        meal && day !== undefined
          ? readPlace(placeKey({ day, meal, group: at.group }, table.plan.menu.groups), table.plan)
          : undefined;
      const recipe = read.text('recipe') ?? '';
      const opened = table.plan.menu.meals
        .find((other) => other.day === at.day && other.meal === at.meal && other.group === at.group)
        ?.opened.filter((lot) => lot.recipe === recipe);
      return to && opened
        ? moveDishByHand(table, at, { recipe, codes: [...new Set(opened.map(({ code }) => code))] }, to)
        : { refused: say('Choose the meal that it is to be moved to.') };
    }),
};
