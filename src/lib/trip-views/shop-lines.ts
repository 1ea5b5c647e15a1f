import { packetsOf, pouchesFrom, type PlannedLot } from '../planning/model/planned-lot.ts';
import type { ComingLot } from '../planning/model/trip-plan.ts';
import { say } from '../texts/say.ts';
import { comingBy } from './coming.ts';

/** Food that is ticked in the shop, with how much of it may have been bought. */
export type ShopLine = {
  readonly lot: ComingLot;
  readonly choices: readonly { readonly pouches: number; readonly label: string }[];
};

/** More packets than planned that can be ticked, for a shop that sells others. */
const MORE_PACKETS = 2;

/** What the plan wants from a shop, to be ticked there. */
export const shopLines = (coming: readonly ComingLot[], planned: readonly PlannedLot[]): ShopLine[] =>
  comingBy(coming, 'buy').flatMap((lot): ShopLine[] => {
    const own = planned.find((other) => other.lot.code === lot.code);
    if (!own) return [];
    const { packetG } = own;
    if (packetG === undefined)
      return [
        {
          lot,
          choices: Array.from({ length: lot.pouches }, (_, index) => ({
            pouches: lot.pouches - index,
            label: say('{pouches, plural, one {# bag} other {# bags}}', { pouches: lot.pouches - index }),
          })),
        },
      ];
    const most = packetsOf(own) + MORE_PACKETS;
    const choices = Array.from({ length: most }, (_, index) => {
      const packets = most - index;
      // the planned number of packets is the planned number of bags, whatever was left over by the cut
      const pouches = packets === lot.packets ? lot.pouches : pouchesFrom(packets, packetG, own.lot);
      return { pouches, label: say('{packets, plural, one {# package} other {# packages}}', { packets }) };
    }).filter(({ pouches }) => pouches > 0);
    return [{ lot, choices }];
  });
