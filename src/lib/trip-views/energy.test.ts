import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../planning/model/settings.ts';
import { Trip } from '../planning/model/trip.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { energyByDay, needByEater } from './energy.ts';

const planFor = (point: 'low' | 'middle' | 'high' | undefined, deficitShare = 0) => {
  const trip = Trip.parse({
    name: 'Ridge walk',
    startDate: '2026-07-04',
    dayCount: 3,
    ...(point && { planFor: point }),
    deficitShare,
    party: [
      { name: 'Ada', body: { sex: 'female', ageY: 34, heightM: 1.68, massG: 62_000 } },
      { name: 'Ben', energyKcal: 3300 },
    ],
  });
  return planTrip(trip, [], defaultSettings());
};

describe('energyByDay', () => {
  it('holds the target at the point of the range that is planned for', () => {
    const [low] = energyByDay(planFor('low'), 'low');
    const [high] = energyByDay(planFor('high'), 'high');
    const [middle] = energyByDay(planFor(undefined), undefined);
    expect(low?.targetKcal).toBeCloseTo(low?.needLowKcal ?? NaN, 0);
    expect(high?.targetKcal).toBeCloseTo(high?.needHighKcal ?? NaN, 0);
    expect(middle?.needLowKcal).toBeLessThan(middle?.targetKcal ?? NaN);
    expect(middle?.needHighKcal).toBeGreaterThan(middle?.targetKcal ?? NaN);
  });

  it('keeps the range of the need when a deficit is planned', () => {
    const [plain] = energyByDay(planFor('middle'), 'middle');
    const [lean] = energyByDay(planFor('middle', 0.2), 'middle');
    // The lighter packs of a deficit change the need itself a little.
    expect(Math.abs((lean?.needLowKcal ?? NaN) - (plain?.needLowKcal ?? NaN))).toBeLessThan(50);
    expect(lean?.targetKcal).toBeLessThan((plain?.targetKcal ?? NaN) - 200);
  });
});

describe('needByEater', () => {
  it('tells an entered figure from an estimate', () => {
    const [ada, ben] = needByEater(planFor('middle').demand);
    expect([ada?.entered, ben?.entered]).toEqual([false, true]);
    expect(ada?.days.map(({ day }) => day)).toEqual([1, 2, 3]);
    expect(ben?.days[0]?.need.value).toBe(3300);
  });
});
