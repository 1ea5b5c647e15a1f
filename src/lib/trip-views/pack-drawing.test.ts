import { describe, expect, it } from 'vitest';
import type { CarryPlan, DayLoad } from '../planning/model/trip-plan.ts';
import { LOAD_PARTS, shownParts } from './loads.ts';
import { drawPacks, packsTitle, packTitle } from './pack-drawing.ts';

const load = (eater: string, day: number, parts: Partial<DayLoad>, limitG: number): DayLoad => {
  const own = { baseG: 8000, packagingG: 0, foodG: 0, fuelG: 0, waterG: 0, ...parts };
  const totalG = LOAD_PARTS.reduce((sum, { key }) => sum + own[key], 0);
  const peakG = parts.peakG ?? totalG;
  return { ...own, eater, day, totalG, peakG, limitG, overG: Math.max(0, peakG - limitG) } as DayLoad;
};
const carryOf = (loads: readonly DayLoad[]): CarryPlan =>
  ({ packs: [...new Set(loads.map(({ eater }) => eater))].map((eater) => ({ eater })), loads }) as never;
const SIZE = { width: 200, height: 100 };

const ADA = [
  load('Ada', 1, { foodG: 4000, waterG: 1000 }, 15_000),
  load('Ada', 2, { foodG: 2000, peakG: 16_000 }, 15_000),
];
const BEN = [load('Ben', 1, { foodG: 3000 }, 20_000), load('Ben', 2, {}, 20_000)];

describe('drawPacks', () => {
  const [ada, ben] = drawPacks(carryOf([...ADA, ...BEN]), 'metric', SIZE);

  it('draws all packs to one scale, with the heaviest mark or limit inside', () => {
    expect(ada && ben && ada.limitY).toBeGreaterThan(ben?.limitY ?? NaN);
    expect(ben?.limitY).toBeGreaterThan(0);
    const metreOf = (g: number) => (g / 20_000) * (SIZE.height - (ben?.limitY ?? NaN));
    expect(SIZE.height - (ada?.limitY ?? NaN)).toBeCloseTo(metreOf(15_000));
    expect(SIZE.height - (ada?.bars[1]?.peakY ?? NaN)).toBeCloseTo(metreOf(16_000));
  });

  it('stacks what a pack is made of without gaps, and leaves out what is not in it', () => {
    const parts = ada?.bars[0]?.parts ?? [];
    expect(parts.map(({ key }) => key)).toEqual(['baseG', 'foodG', 'waterG']);
    parts.forEach((part, index) =>
      expect(part.y + part.height).toBeCloseTo(parts[index - 1]?.y ?? SIZE.height),
    );
  });

  it('gives each day its own room, in order, and marks what is over the limit', () => {
    const [first, second] = ada?.bars ?? [];
    expect((first?.x ?? NaN) + (first?.width ?? NaN)).toBeLessThan(second?.x ?? NaN);
    expect([first?.isOver, second?.isOver]).toEqual([false, true]);
  });
});

describe('titles', () => {
  it('say the point of one pack: by how much it is over, or how far it goes', () => {
    const [, heavy] = ADA;
    const [light] = BEN;
    expect(heavy && packTitle(heavy, 'metric')).toBe(
      'Ada: 16.0 kg on day 2, 1.0 kg over the limit of 15.0 kg',
    );
    expect(light && packTitle(light, 'metric')).toBe('Ben: 11.0 kg at most, on day 1; limit 20.0 kg');
  });

  it('say the point of all: who is over, else the heaviest', () => {
    expect(packsTitle(carryOf([...ADA, ...BEN]), 'metric')).toBe('Over the carry limit: Ada');
    expect(packsTitle(carryOf(BEN), 'metric')).toContain("Ben's: 11.0 kg on day 1");
    expect(packsTitle(carryOf([]), 'metric')).toBe('');
  });
});

it('shownParts leaves out what would be shown as 0.0 on every day', () => {
  const days = [load('Ada', 1, { fuelG: 40, foodG: 60 }, 1), load('Ada', 2, { fuelG: 49 }, 1)];
  expect(shownParts(days, 'metric').map(({ key }) => key)).toEqual(['baseG', 'foodG']);
});
