import type { ComingLot, Suggestion } from '../planning/model/trip-plan.ts';
import type { PlannedWay } from '../planning/model/words.ts';
import { PLANNED_WAY_WORDS } from '../presentation/code-words.ts';
import { show, type UnitSystem } from '../presentation/show.ts';
import { say } from '../texts/say.ts';

/** @returns what tells a lot on the page: its code, or that it is still to be bought or dried */
export const lotMark = ({
  code,
  toCome,
}: {
  readonly code: string;
  readonly toCome?: PlannedWay | undefined;
}): string => (toCome ? say(PLANNED_WAY_WORDS[toCome]) : code);

type Amount = { readonly pouches: number; readonly packets?: number | undefined; readonly weightG: number };

/** @returns so much of a food, as a shop sells it or as it is sealed: "3 packets of 500 g", "4 pouches, 560 g" */
export function comingAmount(
  { pouches, packets, weightG }: Amount,
  packetG: number | undefined,
  system: UnitSystem,
): string {
  if (packets !== undefined && packetG !== undefined)
    return say('{packets, plural, one {# package} other {# packages}} of {weight}', {
      packets,
      weight: show(packetG, 'food', system),
    });
  return say('{pouches, plural, one {# pouch} other {# pouches}}, {weight}', {
    pouches,
    weight: show(weightG, 'food', system),
  });
}

/** @returns a suggestion in words: "Buy 3 packets of 500 g couscous", "Dry 4 pouches of dal, 560 g" */
export function suggestionText({ way, what, planned, ...amount }: Suggestion, system: UnitSystem): string {
  const { pouches = planned.lot.pouches, packets, weightG } = amount;
  const text = comingAmount({ pouches, packets, weightG }, planned.packetG, system);
  return way === 'dry'
    ? say('Dry {food}: {amount}', { food: what, amount: text })
    : say('Buy {food}: {amount}', { food: what, amount: text });
}

/** Planned food of one sort, the most urgent first. */
export const comingBy = (coming: readonly ComingLot[], way: PlannedWay): ComingLot[] =>
  coming
    .filter((lot) => lot.way === way)
    .sort((a, b) => ((a.by ?? '9999') < (b.by ?? '9999') ? -1 : (a.by ?? '9999') > (b.by ?? '9999') ? 1 : 0));
