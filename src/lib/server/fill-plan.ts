import { keepMenu } from '../planning/menu/edit-menu.ts';
import { packetsOf, pouchesFrom, type PlannedLot } from '../planning/model/planned-lot.ts';
import { resolveTrip } from '../planning/model/resolve-trip.ts';
import type { MealKind, FillPreference, PlannedWay } from '../planning/model/words.ts';
import type { ShoppingLine } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { knownOffers, lacksOf, shoppingLine } from '../planning/shortfall/find-shortfall.ts';
import { isSameFood, type Offer } from '../planning/shortfall/offers.ts';
import { recipeOffers } from '../planning/shortfall/recipe-offers.ts';
import { takeIn, takeOut } from '../planning/shortfall/take-in.ts';
import type { App } from './app.ts';
import { UserError } from './errors.ts';
import { knownRuns } from './kitchen-repository.ts';
import type { ChangedTrip } from './trip-repository.ts';
import { changeTrip, planKept, refuseWhilePacked, type PlannedTrip } from './plan-stored-trip.ts';
import { say } from '../texts/say.ts';

/** What recipes of the kitchen could give a trip. */
async function kitchenOffers(app: App, departure: string): Promise<Offer[]> {
  const [recipes, batches, kitchen] = await Promise.all([
    app.kitchen.recipes.list(),
    app.kitchen.batches.list(),
    app.settings.getKitchen(),
  ]);
  const today = app.today();
  return recipeOffers(
    recipes.map(({ id, value }) => ({ id, recipe: value })),
    kitchen,
    knownRuns(kitchen, batches, today),
    today,
    departure,
  );
}

/** The lines of a trip's shopping list, with what recipes of the kitchen could give among the suggestions. */
export async function linesToFill(
  app: App,
  { stored, stock, settings, plan }: Pick<PlannedTrip, 'stored' | 'stock' | 'settings' | 'plan'>,
): Promise<ShoppingLine[]> {
  if (plan.shortfall.shopping.length === 0) return [];
  const recipes = await kitchenOffers(app, plan.startDate);
  const resolved = resolveTrip(stored.trip);
  const known = knownOffers(resolved, stock, settings);
  const offers = [...recipes, ...known.filter((offer) => !recipes.some((own) => isSameFood(own, offer)))];
  return lacksOf(resolved, plan.demand, plan.menu, plan.shortfall.meals).map((lack) =>
    shoppingLine(lack, offers),
  );
}

/** A suggestion of the page that somebody took, maybe with another amount or size of packet. */
export type Taken = {
  readonly meal: MealKind;
  readonly forEaters: readonly string[];
  readonly way: PlannedWay;
  readonly what: string;
  readonly pouches?: number | undefined;
  readonly packets?: number | undefined;
  readonly packetG?: number | undefined;
  /** The shop on the way where it is bought; empty: before departure. */
  readonly at?: string | undefined;
};

/**
 * Takes a suggestion into the plan of a trip.
 *
 * @throws UserError `NotFound`; `Refused` while the trip is packed; `StaleVersion` where the plan does not suggest it any more
 */
export async function takeSuggestion(app: App, id: string, taken: Taken): Promise<ChangedTrip> {
  return changePlanned(app, id, async (planned) => {
    const lines = await linesToFill(app, planned);
    const suggestion = lines
      .find(({ meal, forEaters }) => meal === taken.meal && forEaters.join() === taken.forEaters.join())
      ?.suggestions.find(({ way, what }) => way === taken.way && what === taken.what);
    if (!suggestion)
      throw new UserError(
        'StaleVersion',
        say(
          'What this trip is short of has changed since this page was opened, and "{food}" is not suggested for it any more. Look at the list below.',
          { food: taken.what },
        ),
      );
    return takeIn(planned.stored.trip, planned.plan, [withAmount(suggestion.planned, taken)], planned.stock);
  });
}

/** @param amount left out: as suggested */
function withAmount(
  planned: PlannedLot,
  { pouches, packets, packetG = planned.packetG }: Pick<Taken, 'pouches' | 'packets' | 'packetG'>,
): PlannedLot {
  const { lot } = planned;
  if (packetG === undefined) return { ...planned, lot: { ...lot, pouches: pouches ?? lot.pouches } };
  const count = packets ?? packetsOf({ lot, packetG });
  return { ...planned, packetG, lot: { ...lot, pouches: Math.max(1, pouchesFrom(count, packetG, lot)) } };
}

/**
 * Fills all that is missing to a trip by a preference.
 *
 * @throws UserError `NotFound`; `Refused` while the trip is packed
 */
export async function fillPlan(app: App, id: string, preference: FillPreference): Promise<ChangedTrip> {
  return changePlanned(app, id, async ({ stored: { trip }, stock, settings, plan }) => {
    const recipes = preference === 'buy only' ? [] : await kitchenOffers(app, plan.startDate);
    return app.apart.do({ kind: 'fill', trip, stock, settings, preference, recipes });
  });
}

/**
 * Takes planned food out of the plan again, or all but a part of it.
 *
 * @param amount what stays planned; left out: nothing
 * @throws UserError `NotFound`; `Refused` while the trip is packed
 */
export async function changePlannedAmount(
  app: App,
  id: string,
  code: string,
  amount?: Pick<Taken, 'pouches' | 'packets' | 'packetG' | 'at'>,
): Promise<ChangedTrip> {
  return changePlanned(app, id, ({ stored: { trip }, stock }) => {
    const own = trip.planned?.find(({ lot }) => lot.code === code);
    if (!own || !amount) return takeOut(trip, code, stock);
    const { at: before, ...sized } = withAmount(own, amount);
    const at = amount.at === undefined ? before : amount.at;
    const changed: PlannedLot = { ...sized, ...(at && { at }) };
    const resized = {
      ...trip,
      planned: (trip.planned ?? []).map((other) => (other === own ? changed : other)),
    };
    return takeOut(resized, code, stock, changed.lot.pouches);
  });
}

/** Changes what a trip plans to buy and to dry, and lists the menu that follows from it. */
function changePlanned(
  app: App,
  id: string,
  change: (planned: PlannedTrip) => Trip | Promise<Trip>,
): Promise<ChangedTrip> {
  return changeTrip(app, id, async (planned) => {
    refuseWhilePacked(planned.stored);
    const trip = await change(planned);
    const plan = await planKept(app, trip, planned.stock, planned.settings);
    return plan.totals.pouches > 0 ? keepMenu(trip, plan.menu) : { ...trip, menu: [] };
  });
}
