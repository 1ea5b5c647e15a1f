import { isCalled, searchFoods } from '../foods/find-food.ts';
import { lotHref } from '../lot-href.ts';
import { hasWords, searchWords } from '../lot-keys.ts';
import { ALL_LOTS, shelfHref } from '../shelf-view.ts';
import type { App } from './app.ts';
import { foodTables } from './food-tables.ts';

/** What can be found. */
export type FoundKind = 'lots' | 'dishes' | 'trips' | 'recipes' | 'foods';

/** A thing that was found, where it is, and what tells it apart from others of its name. */
export type FoundThing = { readonly name: string; readonly href: string; readonly more: string };
/** The first ones of a kind, and how many there are. */
export type Found = { readonly things: readonly FoundThing[]; readonly isCut: boolean };

/** So many of each kind are listed; more words find fewer. */
const MOST_OF_A_KIND = 12;

const firstOf = (things: readonly FoundThing[]): Found => ({
  things: things.slice(0, MOST_OF_A_KIND),
  isCut: things.length > MOST_OF_A_KIND,
});

/**
 * Looks for words in the names of all that a household has: lots with their notes, dishes on the shelf, trips with their people,
 * recipes with their ingredients, and foods. Accents and case aside; each word has to be in what is found.
 *
 * @param today ISO date
 * @example
 * (await searchEverything(app, 'lentil', '2027-06-14')).recipes.things[0]?.name; // "Lentil stew"
 */
export async function searchEverything(
  app: Pick<App, 'shelf' | 'trips' | 'kitchen'>,
  search: string,
  today: string,
): Promise<Readonly<Record<FoundKind, Found>>> {
  const words = searchWords(search);
  if (words.length === 0) return { lots: NONE, dishes: NONE, trips: NONE, recipes: NONE, foods: NONE };
  const [{ view }, trips, recipes, { all }] = await Promise.all([
    app.shelf.look({ ...ALL_LOTS, search }, today),
    app.trips.listTrips(),
    app.kitchen.recipes.list(),
    foodTables(app),
  ]);
  const lots = view.rows.map(({ code, recipe }) => ({ name: code, href: lotHref(code), more: recipe }));
  const dishes = [...new Set(view.rows.map(({ recipe }) => recipe))].filter((name) => hasWords(name, words));
  return {
    lots: firstOf(lots),
    dishes: firstOf(
      dishes.map((name) => ({ name, href: shelfHref({ ...ALL_LOTS, search: name }), more: '' })),
    ),
    trips: firstOf(
      trips
        .filter(({ trip }) => hasWords([trip.name, ...trip.party.map(({ name }) => name)].join(' '), words))
        .map(({ id, trip }) => ({ name: trip.name, href: `/trips/${id}`, more: trip.startDate })),
    ),
    recipes: firstOf(
      recipes
        .filter(({ value }) =>
          hasWords([value.name, ...value.ingredients.map(({ food }) => food.name)].join(' '), words),
        )
        .map(({ id, value }) => ({ name: value.name, href: `/kitchen/recipes/${id}`, more: '' })),
    ),
    foods: firstOf(
      searchFoods(all, search, MOST_OF_A_KIND + 1)
        .filter((food) => isCalled(food, search))
        .map(({ name }) => ({
          name,
          href: `/kitchen/foods?${new URLSearchParams({ q: name })}`,
          more: '',
        })),
    ),
  };
}

const NONE: Found = { things: [], isCut: false };
