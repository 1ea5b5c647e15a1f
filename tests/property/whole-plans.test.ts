/**
 * Whole plans with bounds that a physiologist would accept, and why. The parties and the food are invented; the bounds come from outside: resting and walking rates (Mifflin & St Jeor 1990, Looney et al.
 * 2022), doubly labelled water of people who work hard outdoors (some 3000 to 5000 kcal a day), water intakes of IOM 2005 and the limits of TB MED 507, loads by body mass, and the Wilderness Medical Society.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import type { TripPlan } from '../../src/lib/planning/model/trip-plan.ts';
import { Trip, type TripInput } from '../../src/lib/planning/model/trip.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { exampleLot } from '../support/examples.ts';

const settings = defaultSettings();
const MEALS = ['breakfast', 'lunch', 'snack', 'dinner'] as const;
const shelf = [
  ...MEALS.map((meal) =>
    exampleLot({
      code: `X-${meal}`,
      mealKinds: [meal],
      pouches: 200,
      servingsPerPouch: 1,
      energyKcal: 520,
      dryWeightG: 120,
    }),
  ),
  exampleLot({
    code: 'X-drink',
    mealKinds: ['drink'],
    pouches: 200,
    servingsPerPouch: 1,
    energyKcal: 150,
    dryWeightG: 40,
    waterMl: 250,
  }),
];
const planned = (trip: TripInput): TripPlan => planTrip(Trip.parse(trip), shelf, settings);
const codes = (plan: TripPlan) => new Set(plan.notices.map(({ code }) => code));
const needs = (plan: TripPlan, eater: string) =>
  plan.demand.map(({ eaters }) => eaters.find((row) => row.eater === eater)?.need.value ?? NaN);
const litres = (plan: TripPlan, eater: string) =>
  plan.water.days.map(({ drink }) => (drink.find((row) => row.eater === eater)?.ml.value ?? NaN) / 1000);
const between = (values: readonly number[], low: number, high: number) => {
  for (const value of values) {
    expect(value).toBeGreaterThanOrEqual(low);
    expect(value).toBeLessThanOrEqual(high);
  }
};

const WOMAN = { sex: 'female', ageY: 34, heightM: 1.68, massG: 62_000 } as const;
const MAN = { sex: 'male', ageY: 41, heightM: 1.8, massG: 78_000 } as const;

it('the demo: five mild days of four adults who drink 3 to 5 l and are warned of nothing but their own figures', () => {
  const trip = Trip.parse(
    JSON.parse(readFileSync(new URL('../../demo-data/trip.json', import.meta.url), 'utf8')),
  );
  const plan = planTrip(trip, shelf, settings);
  // needs are entered; 1 to 2.5 l at rest, and some 0.4 l an hour of walking in mild air (Nolte et al. 2010), less the water in the food
  for (const { name } of trip.party) between(litres(plan, name), 1.5, 5.5);
  expect(codes(plan)).not.toContain('heat-danger');
  expect(codes(plan)).not.toContain('load-harmful');
  expect(codes(plan)).not.toContain('ascent-too-fast');
  // to boil a litre takes some 12 to 27 g of gas with an efficiency of 70 to 30 %
  const heatedL = plan.fuel.boils.reduce((sum, { waterMl }) => sum + waterMl / 1000, 0);
  between([plan.fuel.need.value / heatedL], 10, 27);
});

describe('the desert: four days at 43 °C and 15 % humidity in sand, two people not used to the heat, a day of rest', () => {
  const plan = planned({
    name: 'sand',
    startDate: '2027-08-01',
    dayCount: 4,
    firstMeal: 'breakfast',
    lastMeal: 'dinner',
    party: [
      { name: 'Ona', body: WOMAN, waterCapacityMl: 15_000 },
      { name: 'Ari', body: MAN, waterCapacityMl: 15_000 },
    ],
    days: [{ walkingH: 4 }, { walkingH: 4 }, { walkingH: 0 }, { walkingH: 4 }].map((day) => ({
      ...day,
      airTemperatureC: 43,
      humidityShare: 0.15,
      terrain: 'loose-sand' as const,
      sun: 'sun' as const,
      campAltitudeM: 300,
      waterTemperatureC: 25,
    })),
  });

  it('warns of heat stroke, and plans rests that make the walk longer than it was meant to be', () => {
    expect(codes(plan)).toContain('heat-danger');
    expect(plan.water.days[0]?.heat.restMin).toBeGreaterThanOrEqual(30);
    expect(plan.legs[0]?.walkingH).toBeGreaterThan(4);
  });

  it('drinks 8 to 11.4 l on the way, and 4.5 to 8 l on the day of rest (it had been 2.25 l): two to three times the temperate need (IOM 2005)', () => {
    for (const eater of ['Ona', 'Ari']) {
      const [first, second, rest, last] = litres(plan, eater);
      between([first ?? 0, second ?? 0, last ?? 0], 6.5, 11.4);
      between([rest ?? 0], 4.5, 8);
    }
  });

  it('eats what four hours in sand cost: more than the same hours on a path, less than a hard day', () => {
    between(
      needs(plan, 'Ari').filter((_, index) => index !== 2),
      2800,
      6000,
    );
    between([needs(plan, 'Ari')[2] ?? 0], 2200, 3000);
  });
});

describe('the snow: three days at -12 °C in soft snow, water from snow, a filter and gas of butane', () => {
  const trip = (terrain: 'soft-snow' | 'dirt-road'): TripInput => ({
    name: 'snow',
    startDate: '2027-02-01',
    dayCount: 3,
    firstMeal: 'breakfast',
    lastMeal: 'dinner',
    party: [
      { name: 'Ona', body: WOMAN },
      { name: 'Ari', body: MAN },
    ],
    treatment: 'filter',
    stove: { gas: 'butane' },
    days: [1, 2, 3].map(() => ({
      distanceM: 9000,
      climbM: 300,
      descentM: 300,
      airTemperatureC: -12,
      terrain,
      campAltitudeM: 1400,
      campWater: 'snow' as const,
      waterTemperatureC: -8,
    })),
  });
  const plan = planned(trip('soft-snow'));
  const onPath = planned(trip('dirt-road'));

  it('takes longer and more energy than the same way on a path: 1.3 to 2 times the hours', () => {
    between([(plan.legs[0]?.movingH ?? 0) / (onPath.legs[0]?.movingH ?? 1)], 1.3, 2);
    expect(needs(plan, 'Ari')[0]).toBeGreaterThan((needs(onPath, 'Ari')[0] ?? 0) * 1.05);
    // hard days in the snow: 3000 to 5500 kcal
    between(needs(plan, 'Ari'), 3000, 5500);
    between(needs(plan, 'Ona'), 2400, 4500);
  });

  it('says that the canister and the filter fail in such cold', () => {
    expect(codes(plan)).toContain('cold-for-canister-gas');
    expect(codes(plan)).toContain('filter-may-freeze');
  });

  it('burns several times what mild weather takes, as every litre is melted: 15 to 60 g a litre', () => {
    const heatedL = plan.fuel.boils.reduce((sum, { waterMl }) => sum + waterMl / 1000, 0);
    between([plan.fuel.need.value / heatedL], 12, 60);
  });

  it('drinks no less than 2 l a day', () => {
    for (const eater of ['Ona', 'Ari']) between(litres(plan, eater), 1.5, 5);
  });
});

describe('5000 m: seven days that rise too fast', () => {
  const NIGHTS_M = [2900, 3600, 4200, 4800, 5000, 5000];
  const plan = planned({
    name: 'high',
    startDate: '2027-05-01',
    dayCount: 7,
    firstMeal: 'breakfast',
    lastMeal: 'lunch',
    treatment: 'boil',
    party: [{ name: 'Ari', body: MAN }],
    days: NIGHTS_M.map((campAltitudeM) => ({
      distanceM: 8000,
      climbM: 600,
      descentM: 0,
      campAltitudeM,
      airTemperatureC: -2,
    })),
  });
  const low = planned({
    name: 'low',
    startDate: '2027-05-01',
    dayCount: 7,
    firstMeal: 'breakfast',
    lastMeal: 'lunch',
    party: [{ name: 'Ari', body: MAN }],
    days: NIGHTS_M.map(() => ({
      distanceM: 8000,
      climbM: 600,
      descentM: 0,
      campAltitudeM: 500,
      airTemperatureC: -2,
    })),
  });

  it('is cautioned of for its first night, its rises and its want of rest (Wilderness Medical Society 2024)', () => {
    for (const code of [
      'ascent-first-night-high',
      'ascent-too-fast',
      'ascent-without-rest',
      'pouches-swell',
    ] as const)
      expect(codes(plan)).toContain(code);
  });

  it('walks a fifth to a half longer than lower down, since half of the oxygen is gone', () => {
    between([(plan.legs[4]?.movingH ?? 0) / (low.legs[4]?.movingH ?? 1)], 1.2, 1.5);
  });

  it('steeps a third longer at 5000 m, not three times as long', () => {
    const pouch = plan.card.days[4]?.meals.find(({ meal }) => meal === 'dinner')?.pouches[0];
    between([(pouch?.steepMin ?? 0) / (pouch?.steepSeaLevelMin ?? 1)], 1.2, 1.5);
  });

  it('boils all its water and holds the boil, above 80 °C, which is enough (WHO)', () => {
    for (const boil of plan.fuel.boils) expect(boil.toC).toBeGreaterThan(80);
  });
});

describe('the family: two adults, an eight-year-old of 26 kg, and a five-year-old whose mass nobody entered', () => {
  const plan = planned({
    name: 'family',
    startDate: '2027-07-01',
    dayCount: 3,
    firstMeal: 'lunch',
    lastMeal: 'lunch',
    party: [
      { name: 'Ona', body: WOMAN },
      { name: 'Ari', body: MAN },
      { name: 'Kim', body: { sex: 'female', ageY: 8, heightM: 1.28, massG: 26_000 } },
      { name: 'Lou', body: { ageY: 5 }, energyKcal: 1500 },
    ],
    days: [{ walkingH: 3 }, { walkingH: 3 }, { walkingH: 2 }],
  });
  const peak = (eater: string) =>
    Math.max(...plan.carry.loads.filter((load) => load.eater === eater).map(({ peakG }) => peakG));

  it('the eight-year-old carries no more than 15 % of her mass, water and all; she had been given 10.9 kg', () =>
    expect(peak('Kim')).toBeLessThanOrEqual(0.15 * 26_000 + 200));

  it('the five-year-old carries a small bag', () => expect(peak('Lou')).toBeLessThanOrEqual(1010));

  it('children drink 1 to 2.5 l, less than the adults', () => {
    for (const child of ['Kim', 'Lou']) {
      between(litres(plan, child), 0.6, 2.5);
      litres(plan, child).forEach((value, day) => expect(value).toBeLessThan(litres(plan, 'Ari')[day] ?? 0));
    }
  });

  it('the eight-year-old is fed 1500 to 2300 kcal, the adults 2200 to 4000', () => {
    between(needs(plan, 'Kim'), 1500, 2300);
    between([...needs(plan, 'Ona'), ...needs(plan, 'Ari')], 2000, 4000);
    expect(codes(plan)).toContain('minor-in-party');
    expect(codes(plan)).toContain('gear-of-minors');
    expect(codes(plan)).not.toContain('load-harmful');
  });
});
