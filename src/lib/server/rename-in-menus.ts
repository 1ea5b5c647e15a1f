import type { Transaction } from 'kysely';
import { Trip } from '../planning/model/trip.ts';
import type { Tables } from './database/tables.ts';
import { UserError } from './errors.ts';
import { parseStored } from './stored-json.ts';
import { say } from '../texts/say.ts';

type OpenedLots = Trip['menu'][number]['opened'];

/**
 * Gives a lot its new code in the menus of all trips. Their versions rise, so that a page opened before does not bring
 * the old code back.
 *
 * @throws UserError `Refused` where a menu could not hold the result
 */
export async function renameInMenus(
  trx: Transaction<Tables>,
  from: string,
  to: string,
  at: string,
): Promise<void> {
  const rows = await trx
    .selectFrom('trips')
    .select(['id', 'name', 'trip', 'version'])
    .where('trip', 'is not', null)
    .$narrowType<{ trip: string }>()
    .execute();
  for (const { id, name, trip: json, version } of rows) {
    const trip = parseStored(Trip, json, () => say('The trip "{name}"', { name }));
    if (!trip.menu.some(({ opened }) => opened.some(({ code }) => code === from))) continue;
    const menu = trip.menu.map((meal) => ({ ...meal, opened: renamed(meal.opened, from, to) }));
    const changed = Trip.safeParse({ ...trip, menu });
    if (!changed.success)
      throw new UserError(
        'Refused',
        say(
          '"{from}" cannot become "{to}": a meal of the trip "{name}" names both and would open too many pouches. Change that menu first.',
          { from, to, name },
        ),
      );
    await trx
      .updateTable('trips')
      .set({ trip: JSON.stringify(changed.data), version: version + 1, updatedAt: at })
      .where('id', '=', id)
      .execute();
  }
}

/** A menu may name a code that no lot has, so the new one may stand there already: the two are then one. */
function renamed(opened: OpenedLots, from: string, to: string): OpenedLots {
  const byCode = new Map<string, OpenedLots[number]>();
  for (const lot of opened) {
    const code = lot.code === from ? to : lot.code;
    byCode.set(code, { ...lot, code, pouches: lot.pouches + (byCode.get(code)?.pouches ?? 0) });
  }
  return [...byCode.values()];
}
