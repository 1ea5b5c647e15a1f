import { friendlyAmount } from './fractions.ts';
import { say, sayList } from '../texts/say.ts';

/** What somebody has of a lot: in servings, and in pieces or pouches where it is counted so. */
export type Amount = {
  readonly servings: number;
  readonly pieces?: number | undefined;
  readonly pouches?: number | undefined;
};

/** @returns an amount as it is dealt out: `amountText({ servings: 1, pouches: 1 })` is "1 whole pouch" */
export function amountText({ servings, pieces, pouches }: Amount): string {
  const counted = (value: number) => ({ amount: friendlyAmount(value), one: value <= 1 ? 'yes' : 'no' });
  if (pieces !== undefined) return say('{amount} {one, select, yes {piece} other {pieces}}', counted(pieces));
  if (pouches === undefined)
    return say('{amount} {one, select, yes {serving} other {servings}}', counted(servings));
  if (pouches === 1) return say('1 whole pouch');
  if (pouches === 1 / 2) return say('half a pouch');
  return pouches < 1
    ? say('{amount} of a pouch', { amount: friendlyAmount(pouches) })
    : say('{amount} pouches', { amount: friendlyAmount(pouches) });
}

/** @returns who has how much, those with the same together: "Ada and Ben: 1 1/2 servings each", "Cas: 1 serving" */
export function sharesText(shares: readonly (Amount & { readonly eater: string })[]): string[] {
  return [...Map.groupBy(shares, amountText)].map(([amount, same]) =>
    same.length > 1
      ? say('{eaters}: {amount} each', { eaters: sayList(same.map(({ eater }) => eater)), amount })
      : say('{eaters}: {amount}', { eaters: same[0]?.eater ?? '', amount }),
  );
}
