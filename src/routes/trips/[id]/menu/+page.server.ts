import {
  addByHand,
  eatersAt,
  moveByHand,
  removeByHand,
  swapByHand,
  takeByHand,
} from '$lib/planning/menu/by-hand.ts';
import { keepMenu, listedMeal, lockMeal } from '$lib/planning/menu/edit-menu.ts';
import { mealOptions } from '$lib/planning/menu/meal-options.ts';
import { offerUndo } from '$lib/forms/done.ts';
import { FormReader } from '$lib/forms/read-form.ts';
import {
  lockDishByHand,
  lockPlateByHand,
  portionsByHand,
  styleByHand,
  tastesByHand,
} from '$lib/planning/menu/plates-by-hand.ts';
import { TRIP_DEFAULTS } from '$lib/planning/model/trip-defaults.ts';
import { SERVING_STYLES, TASTES } from '$lib/planning/model/words.ts';
import { MEAL_WORDS } from '$lib/presentation/code-words.ts';
import { planStoredMeals } from '$lib/server/plan-meals.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { toFailure } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import { narrowed, placeKey, readPlace } from '$lib/trip-views/meal-place.ts';
import { plateChoices } from '$lib/trip-views/plate-choices.ts';
import { lotsLacking } from '$lib/trip-views/menu.ts';
import { hasLeft } from '$lib/ledger-kinds.ts';
import { menuAssumptions } from '$lib/reasons/plan.ts';
import { changeMeal, refusal } from '../change-meal.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, url }) => {
  const { stored, lots, settings, plan } = await plannedForPage(locals, params.id);
  const { readsOnly } = locals;
  const key = url.searchParams.get('change') ?? undefined;
  const find = url.searchParams.get('find') ?? '';
  const changing = readsOnly || hasLeft(stored.stage) ? undefined : readPlace(key, plan);
  const options = changing
    ? mealOptions(eatersAt(stored.trip, plan, changing), lots, plan.menu, changing, changing.date)
    : [];
  const free = new Set(options.map(({ code }) => code));
  const listed = changing && listedMeal(keepMenu(stored.trip, plan.menu), changing);
  const { menu, totals, demand, coupling, notices } = plan;
  const meal = changing && menu.meals.find((other) => placeKey(other, menu.groups) === key);
  return {
    plan: {
      menu,
      totals,
      demand,
      coupling,
      notices: notices.filter(({ code }) => code === 'portions-beyond-pouches'),
    },
    tripStyle: stored.trip.servingStyle ?? TRIP_DEFAULTS.servingStyle.value,
    plates: meal
      ? plateChoices(
          [...meal.opened, ...meal.fromOpen.map((row) => ({ ...row, style: 'own pouch' as const }))],
          eatersAt(stored.trip, plan, meal),
          lots,
        )
      : [],
    changing: changing && key,
    find,
    noneFree: (listed?.opened ?? []).map(({ code }) => code).filter((code) => !free.has(code)),
    reasons: readsOnly ? undefined : { menu: menuAssumptions(settings) },
    lacking: readsOnly ? [] : lotsLacking(stored.trip, lots),
    ...narrowed(options, find),
  };
};

export const actions: Actions = {
  swap: (event) =>
    changeMeal(event, (table, at, code, read) => swapByHand(table, at, code, read.text('to') ?? '')),
  add: (event) => changeMeal(event, addByHand),
  fewer: (event) => changeMeal(event, takeByHand),
  remove: (event) => changeMeal(event, removeByHand),
  move: (event) =>
    changeMeal(event, (table, at, code, read) => {
      const to = readPlace(read.text('toPlace') ?? undefined, table.plan);
      return to
        ? moveByHand(table, at, code, to)
        : { refused: say('Choose the meal that it is to be moved to.') };
    }),
  portions: (event) =>
    changeMeal(event, (table, at, code, read) => {
      const servings = valuesOf(read, 'servings').map(([eater, value]) => [eater, Number(value)] as const);
      return servings.every(([, value]) => value >= 0 && value <= 1000)
        ? portionsByHand(table, at, { code, style: styleIn(read) }, new Map(servings))
        : { refused: say('Choose portions from the lists.') };
    }),
  lockDish: (event) =>
    changeMeal(event, (table, at, code, read) =>
      lockDishByHand(table, at, { code, style: styleIn(read) }, read.text('locked') === 'yes'),
    ),
  lockPlate: (event) =>
    changeMeal(event, (table, at, _code, read) =>
      lockPlateByHand(table, at, read.text('eater') ?? '', read.text('locked') === 'yes'),
    ),
  style: (event) =>
    changeMeal(event, (table, at, _code, read) =>
      styleByHand(
        table,
        at,
        SERVING_STYLES.find((style) => style === read.text('style')),
      ),
    ),
  tastes: (event) =>
    changeMeal(event, ({ trip, stock }, _at, code, read) => {
      const recipe = stock.find((lot) => lot.code === code)?.recipe;
      if (recipe === undefined) return { refused: say('Lot {code} is not on the shelf any more.', { code }) };
      const tastes = valuesOf(read, 'taste').map(
        ([eater, value]) => [eater, TASTES.find((taste) => taste === value)] as const,
      );
      return tastesByHand(trip, recipe, new Map(tastes));
    }),
  lock: (event) =>
    changeMeal(event, ({ trip }, at, _code, read) => {
      const locked = read.text('locked') === 'yes';
      return {
        trip: lockMeal(trip, at, locked),
        said: say('Day {day}, {meal}: {locked, select, yes {locked} other {unlocked}}.', {
          day: at.day,
          meal: say(MEAL_WORDS[at.meal]),
          locked: locked ? 'yes' : 'no',
        }),
      };
    }),
  planAgain: async (event) => {
    const { app } = event.locals;
    try {
      const { searchFailed, undo } = await planStoredMeals(app, event.params.id);
      offerUndo(event.cookies, undo);
      return {
        said: searchFailed
          ? say(
              'Planned again using the oldest pouches first, because the menu search could not run. Locked meals did not change.',
            )
          : say('Planned again. Locked meals did not change.'),
      };
    } catch (caught) {
      return toFailure(event, caught, refusal);
    }
  },
};

/** @returns what a form says by person: `servings[Ada]` is of Ada */
const valuesOf = ({ entered }: FormReader, name: string): [eater: string, value: string][] =>
  Object.entries(entered).flatMap(([field, [value = '']]) =>
    field.startsWith(`${name}[`) && field.endsWith(']')
      ? [[field.slice(name.length + 1, -1), value] as [string, string]]
      : [],
  );
const styleIn = (read: FormReader) => (read.text('style') === 'shared pot' ? 'shared pot' : 'own pouch');
