import type { PlateChoice } from './plate-choices.ts';

/** A list of portions is no longer than this. */
const MOST_PORTIONS = 40;

/** @returns portions to choose from, servings: none, then step by step up to all that is there, and what stands now */
export function portionsToChoose(
  { step, there }: Pick<PlateChoice, 'step' | 'there'>,
  now: number,
): number[] {
  const steps = Math.min(MOST_PORTIONS, Math.floor(there / step + 1e-6));
  const all = Array.from({ length: steps + 1 }, (_, index) => index * step);
  const isListed = all.some((servings) => Math.abs(servings - now) < 1e-6);
  return isListed ? all : [...all, now].sort((a, b) => a - b);
}
