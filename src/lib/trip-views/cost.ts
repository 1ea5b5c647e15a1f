import type { TripPlan } from '../planning/model/trip-plan.ts';
import { showMoney } from '../presentation/money.ts';
import { show } from '../presentation/show.ts';
import { say } from '../texts/say.ts';

/** @returns what the opened pouches cost, and of how much of them that is known; `undefined` where no lot states a cost. */
export function shownMoney(
  { costMinor, costKnownShare }: TripPlan['totals'],
  currency: string,
): string | undefined {
  if (costMinor === undefined) return undefined;
  const money = showMoney(costMinor, currency);
  return costKnownShare < 0.995
    ? say('These pouches cost {money} (prices known for {share} of the servings).', {
        money,
        share: show(costKnownShare, 'share', 'metric'),
      })
    : say('The opened pouches cost {money}.', { money });
}
