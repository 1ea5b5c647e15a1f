import { describe, expect, it } from 'vitest';
import { Trip } from '../planning/model/trip.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { boilingSafeG, busiestTreatment } from './treatment.ts';
import { bottlesHoldMl, drinkSpan, hardestStretch, heatInWords, spanOf } from './water.ts';

const trip = (more: object = {}) =>
  Trip.parse({
    name: 'Ridge walk',
    startDate: '2026-07-04',
    dayCount: 2,
    party: [{ name: 'Ada', waterCapacityMl: 2000 }, { name: 'Ben' }],
    ...more,
  });
const planOf = (more: object = {}) => planTrip(trip(more), [], defaultSettings());

describe('spanOf', () => {
  it('is the least and the most', () => {
    expect(spanOf([{ ml: 900 }, { ml: 400 }, { ml: 700 }])).toEqual({ leastMl: 400, mostMl: 900 });
    expect(spanOf([])).toEqual({ leastMl: 0, mostMl: 0 });
  });
});

it('bottlesHoldMl counts the usual bottles for who entered none', () => {
  expect(bottlesHoldMl(trip())).toBe(5000);
});

it('heatInWords rises through the categories of the table', () => {
  const words = [10, 26, 28, 30, 31.5, 34].map((wbgtC) => heatInWords(wbgtC));
  expect(words[0]).toContain('below');
  expect(words.slice(1).map((text) => /category (\d)/.exec(text)?.[1])).toEqual(['1', '2', '3', '4', '5']);
});

describe('treatment', () => {
  it('finds the day with the most water, and boils longer above 2000 m', () => {
    const plan = planOf({ days: [{ airTemperatureC: 10 }, { airTemperatureC: 38, campAltitudeM: 2500 }] });
    const most = Math.max(...plan.water.days.map(({ treatMl }) => treatMl));
    const busiest = busiestTreatment(plan);
    expect(busiest.treatMl).toBe(most);
    expect(busiest.filterMin).toBe(Math.ceil(most / 1000));
    const low = busiestTreatment(planOf());
    expect(low.boilMin).toBe(1);
    const high = busiestTreatment(planOf({ days: [{ campAltitudeM: 2500 }, { campAltitudeM: 2500 }] }));
    expect(high.boilMin).toBe(3);
  });

  it('counts the fuel of boiling, and none for a filter', () => {
    expect(boilingSafeG(planOf({ treatment: 'filter' }))).toBe(0);
    expect(boilingSafeG(planOf({ treatment: 'boil' }))).toBeGreaterThan(50);
  });
});

it('drinkSpan holds every eater with the range of their figure', () => {
  const [day] = planOf().water.days;
  if (!day) throw new Error('the plan has no day');
  const { leastMl, mostMl, lowMl, highMl } = drinkSpan(day);
  for (const { ml } of day.drink) {
    expect(ml.value).toBeGreaterThanOrEqual(leastMl);
    expect(ml.value).toBeLessThanOrEqual(mostMl);
  }
  expect(lowMl).toBeLessThan(leastMl);
  expect(highMl).toBeGreaterThan(mostMl);
});

it('hardestStretch is where the group carries most, on the day that the plan names', () => {
  const { water } = planOf({ days: [{ walkingH: 3 }, { walkingH: 6 }] });
  const hardest = hardestStretch(water);
  expect(hardest?.day).toBe(water.peakDay);
  expect(hardest?.start.totalMl).toBe(
    Math.max(...water.days.flatMap(({ stretches }) => stretches.map(({ start }) => start.totalMl))),
  );
  expect(hardestStretch({ days: [] })).toBeUndefined();
});
