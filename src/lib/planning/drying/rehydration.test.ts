import { describe, expect, it } from 'vitest';
import { defaultKitchen } from '../model/kitchen.ts';
import type { WaterFinding } from '../model/recipe.ts';
import { waterShareOf, waterToAddMl } from './rehydration.ts';

const figures = defaultKitchen().processes['freeze-dried'];
const shareAfter = (findings: readonly WaterFinding[], waterShare?: number) =>
  waterShareOf(
    { waterShare, waterNotes: findings.map((finding) => ({ date: '2026-09-01', finding, note: '' })) },
    figures,
  );

describe('the water share', () => {
  it('starts at the usual one of the way of drying, or at that of the recipe', () => {
    expect(shareAfter([])).toEqual({ share: 0.9, startShare: 0.9, history: [] });
    expect(shareAfter([], 0.8).share).toBe(0.8);
  });

  it('moves against what was found, and keeps each step', () => {
    const { share, history } = shareAfter(['much liquid left', 'just right', 'a little dry'], 1);
    expect(history.map((note) => note.shareAfter)).toEqual([0.85, 0.85, share]);
    expect(share).toBeCloseTo(0.85 * 1.07, 9);
  });

  it('stays within bounds however often one note is made', () => {
    const often = (finding: WaterFinding) => shareAfter(Array.from({ length: 60 }, () => finding)).share;
    expect(often('too dry')).toBe(2);
    expect(often('much liquid left')).toBe(0.1);
  });
});

describe('water to add', () => {
  it('is its share of the water removed, never less than none', () => {
    expect(waterToAddMl(250, 0.9)).toBe(225);
    expect(waterToAddMl(-5, 0.9)).toBe(0);
  });
});
