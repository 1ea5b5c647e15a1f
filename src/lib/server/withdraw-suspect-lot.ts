import { keepMenu } from '../planning/menu/edit-menu.ts';
import { hasLeft } from '../ledger-kinds.ts';
import type { App } from './app.ts';
import { changeTrip } from './plan-stored-trip.ts';

/**
 * Withdraws a suspect lot from the shelf and from all trips, and plans anew the meals that it was for, from the oldest pouches that are free. Menus of trips that have left
 * are not filled: what is in the packs is decided on the way.
 *
 * @throws UserError `NotFound`, or `Refused` where it is withdrawn already
 */
export async function withdrawSuspectLot(app: App, code: string, reason: string): Promise<void> {
  for (const id of await app.shelf.withdraw(code, reason))
    await changeTrip(app, id, ({ stored: { trip, stage }, plan }) =>
      hasLeft(stage) || plan.totals.pouches === 0 ? trip : keepMenu(trip, plan.menu),
    );
}
