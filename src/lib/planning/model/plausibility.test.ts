import { describe, expect, it } from 'vitest';
import { exampleLot } from '../../../../tests/support/examples.ts';
import { doubtsOf } from './plausibility.ts';

const doubts = (changes: Parameters<typeof exampleLot>[0]) =>
  doubtsOf(exampleLot(changes)).map(({ field, severity }) => `${severity} ${field}`);

describe('doubtsOf', () => {
  it('has none about a plausible lot', () => {
    expect(doubts({})).toEqual([]);
    expect(doubts({ proteinG: 30, fatG: 16, carbohydrateG: 85 })).toEqual([]);
    expect(doubts({ dryWeightG: 100, energyKcal: 900, fatG: 99 })).toEqual([]);
  });

  it('refuses more energy than fat has, and best-before before sealing', () => {
    expect(doubts({ dryWeightG: 100, energyKcal: 931 })).toEqual(['refuse energyKcal']);
    expect(doubts({ bestBefore: '2026-04-30' })).toEqual(['refuse bestBefore']);
    expect(doubts({ proteinG: 60, fatG: 8, carbohydrateG: 90 })).toEqual(['refuse dryWeightG']);
    expect(doubts({ waterKind: 'none' })).toEqual(['refuse waterKind']);
    expect(doubts({ steepMin: 10, stirAfterMin: 9 })).toEqual([]);
    expect(doubts({ steepMin: 10, stirAfterMin: 10 })).toEqual(['refuse stirAfterMin']);
  });

  it('doubts energy far from 4-4-9, much water, no energy, no water', () => {
    expect(doubts({ proteinG: 10, fatG: 5, carbohydrateG: 50 })).toEqual(['warn energyKcal']);
    expect(doubts({ waterMl: 1501 })).toEqual(['warn waterMl']);
    expect(doubts({ waterMl: 1500 })).toEqual([]);
    expect(doubts({ energyKcal: 0 })).toEqual(['warn energyKcal']);
    expect(doubts({ energyKcal: 100 })).toEqual(['warn energyKcal']);
    expect(doubts({ waterMl: 0 })).toEqual(['warn waterMl']);
    expect(doubts({ waterMl: 0, waterKind: 'none' })).toEqual([]);
  });
});
