import { z } from 'zod';
import { wrong } from './faults.ts';
import { CalendarDate, ShortText } from './kinds.ts';
import { PouchLot, withoutWithdrawn, type Stock } from './pouch-lot.ts';
import { pouchFoodG } from './pouch-totals.ts';
import { PLANNED_WAYS } from './words.ts';

export const PlannedWay = z.enum(PLANNED_WAYS);

/**
 * Food that a trip plans with and that is not there yet: to buy, or to dry. Of bought food a pouch is a bag of it, filled at home from the packets that a shop sells.
 * Its code is of the trip alone until it is on the shelf.
 */
export const PlannedLot = z.strictObject({
  way: PlannedWay.describe('Bought from a shop, or dried before departure'),
  lot: PouchLot.describe('What it will be; `pouches` is how many are to come'),
  packetG: z
    .number(wrong('not-a-weight'))
    .min(1, wrong('under', { least: 1, unit: 'g' }))
    .max(50_000, wrong('over', { most: 50, unit: 'kg' }))
    .optional()
    .describe('Food in one packet as it is bought, g; left out: bought by weight'),
  at: ShortText.optional().describe('The shop on the way where it is bought; left out: before departure'),
  by: CalendarDate.optional().describe(
    'Last day to begin: to cook what is dried, or to buy; left out: in time for departure',
  ),
});
export type PlannedLot = z.infer<typeof PlannedLot>;

/** Packets that the pouches of a planned lot are filled from; 0 where it is not bought in packets. */
export const packetsOf = ({ lot, packetG }: Pick<PlannedLot, 'lot' | 'packetG'>): number =>
  packetG === undefined ? 0 : Math.ceil((lot.pouches * pouchFoodG(lot)) / packetG - 1e-9);

/** Pouches that so many packets fill. */
export const pouchesFrom = (packets: number, packetG: number, lot: PouchLot): number =>
  Math.floor((packets * packetG) / pouchFoodG(lot) + 1e-9);

/** What a trip can be planned with: the stock but for what is withdrawn, and what it plans to buy or to dry. A code that is in the stock already counts once. */
export function withPlanned(stock: Stock, planned: readonly PlannedLot[] | undefined): Stock {
  const fit = withoutWithdrawn(stock);
  if (!planned || planned.length === 0) return fit;
  const there = new Set(stock.map(({ code }) => code));
  return [...fit, ...planned.map(({ lot }) => lot).filter(({ code }) => !there.has(code))];
}

/** A code for another planned lot of a trip. */
export function freePlannedCode(planned: readonly PlannedLot[]): string {
  const taken = new Set(planned.map(({ lot }) => lot.code));
  let number = planned.length + 1;
  while (taken.has(`+${number}`)) number += 1;
  return `+${number}`;
}
