import type { TripPlan } from '../planning/model/trip-plan.ts';
import { showMoney } from '../planning/units/money.ts';
import { show } from '../planning/units/show.ts';

/** @returns what the opened pouches cost, and of how much of them that is known; `undefined` where no lot states a cost. */
export function shownMoney(
  { costMinor, costKnownShare }: TripPlan['totals'],
  currency: string,
): string | undefined {
  if (costMinor === undefined) return undefined;
  const known =
    costKnownShare < 0.995
      ? `, as far as it is known: for ${show(costKnownShare, 'share', 'metric')} of the servings`
      : '';
  return `The opened pouches cost ${showMoney(costMinor, currency)}${known}.`;
}
