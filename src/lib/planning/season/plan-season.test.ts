import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Kitchen } from '../model/kitchen.ts';
import type { PouchLot } from '../model/pouch-lot.ts';
import { Recipe } from '../model/recipe.ts';
import { defaultSettings } from '../model/settings.ts';
import { Trip } from '../model/trip.ts';
import { planTrip } from '../plan-trip.ts';
import type { DryingMeans } from '../shortfall/plan-drying.ts';
import { planSeason, type SeasonTrip } from './plan-season.ts';

const lot = (code: string, pouches: number): PouchLot => ({
  code,
  recipe: `Stew ${code}`,
  mealKinds: ['breakfast', 'lunch', 'dinner'],
  sealedOn: '2027-01-10',
  bestBefore: '2029-07-10',
  pouches,
  servingsPerPouch: 1,
  dryWeightG: 150,
  energyKcal: 700,
  waterMl: 300,
  waterKind: 'boiling',
  steepMin: 10,
  tareG: 12,
  diets: [],
  note: '',
});
const trip = (
  name: string,
  startDate: string,
  reserved: SeasonTrip['reserved'] = [],
  days = 2,
): SeasonTrip => ({
  id: name,
  trip: Trip.parse({ name, startDate, dayCount: days, party: [{ name: 'Ada' }] }),
  reserved,
});

/** Four trays; by common practice a run of it takes up to 34 h, so two days. */
const KITCHEN = Kitchen.parse({
  dryers: [
    {
      name: 'cellar',
      process: 'freeze-dried',
      trayCount: 4,
      trayAreaCm2: 1000,
      trayLimitG: 1000,
      depthLimitMm: 20,
      meanPowerW: 900,
    },
  ],
});
const RICE = Recipe.parse({
  name: 'rice',
  mealKinds: ['breakfast', 'lunch', 'dinner'],
  servings: 4,
  cookingYield: 4,
  ingredients: [
    {
      food: {
        name: 'rice',
        source: 'test',
        allergens: [],
        composition: { waterG: 20, proteinG: 0, fatG: 0, carbohydrateG: 80 },
      },
      quantity: { amount: 500, unit: 'g' },
    },
  ],
});
const MEANS: DryingMeans = {
  recipes: [{ id: 'rice', recipe: RICE }],
  kitchen: KITCHEN,
  runs: [],
  underWay: [],
  today: '2027-06-07',
};
const season = (trips: readonly SeasonTrip[], shelf: readonly PouchLot[], means: DryingMeans = MEANS) =>
  planSeason(trips, [...shelf], means, async (each, stock) => planTrip(each, stock, defaultSettings()));
const sum = (rows: readonly { pouches: number }[]) => rows.reduce((all, { pouches }) => all + pouches, 0);

describe('planSeason', () => {
  it('lets the earlier trip take first, whatever the order they are given in', async () => {
    const [early, late] = [trip('Early', '2027-07-01'), trip('Late', '2027-08-01')];
    const alone = planTrip(early.trip, [lot('A', 7)], defaultSettings());
    const { legs, left } = await season([late, early], [lot('A', 7)]);
    expect(legs.map(({ id }) => id)).toEqual(['Early', 'Late']);
    expect(legs[0]?.plan).toEqual(alone);
    expect(sum(legs.flatMap(({ takes }) => takes)) + sum(left)).toBe(7);
    expect(legs[0]?.plan.shortfall.missingKcal).toBeLessThan(legs[1]?.plan.shortfall.missingKcal ?? 0);
  });

  it('leaves a later trip what is set aside for it', async () => {
    const late = trip('Late', '2027-08-01', [{ code: 'A', pouches: 3 }]);
    const { legs, left } = await season([trip('Early', '2027-07-01'), late], [lot('A', 0)]);
    expect(legs.map(({ takes }) => sum(takes))).toEqual([0, 3]);
    expect(sum(left)).toBe(0);
  });

  it('names pouches that two menus list', async () => {
    const dinner = { day: 1, meal: 'dinner' as const, opened: [{ code: 'A', pouches: 1 }] };
    const listed = (name: string, startDate: string): SeasonTrip => ({
      id: name,
      trip: Trip.parse({
        name,
        startDate,
        dayCount: 1,
        firstMeal: 'dinner',
        party: [{ name: 'Ada' }],
        menu: [dinner],
      }),
      reserved: [],
    });
    const { legs } = await season(
      [listed('Early', '2027-07-01'), listed('Late', '2027-08-01')],
      [lot('A', 1)],
    );
    expect(legs.map(({ lacks }) => lacks)).toEqual([[], [{ code: 'A', recipe: 'Stew A', pouches: 1 }]]);
  });

  it('lets no run of one trip into the dryer of another, and a batch under way feeds once', async () => {
    const trips = [trip('Early', '2027-06-14'), trip('Late', '2027-06-20')];
    const { runs, legs } = await season(trips, []);
    expect(legs.map(({ drying }) => drying.runs.length).every((count) => count > 0)).toBe(true);
    runs.forEach(({ run }, index) => {
      const next = runs[index + 1]?.run;
      if (next) expect(next.cookOn >= run.readyOn).toBe(true);
    });

    const batch = {
      id: 'b1',
      code: 'R1',
      recipe: 'rice',
      dryer: 'cellar',
      cookedOn: '2027-06-07',
      loaded: true,
      trays: 4,
      waterG: 2000,
      hours: { value: 24, low: 20, high: 30, terms: [] },
      food: { mealKinds: ['breakfast', 'lunch', 'dinner'] as const, allergens: [], diets: [] },
      energyKcal: 1600,
    } as unknown as DryingMeans['underWay'][number];
    const shared = await season(trips, [], { ...MEANS, underWay: [batch] });
    const credited = shared.legs.flatMap(({ drying }) => drying.underWay.flatMap(({ shares }) => shares));
    expect(credited.reduce((all, { energyKcal }) => all + energyKcal, 0)).toBeLessThanOrEqual(1600 + 1e-6);
  });

  it('gives every pouch to one trip at most, and adds up what all are short of', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.record({ start: fc.integer({ min: 10, max: 28 }), reserved: fc.integer({ min: 0, max: 3 }) }),
          {
            minLength: 1,
            maxLength: 3,
          },
        ),
        fc.integer({ min: 0, max: 20 }),
        async (given, pouches) => {
          const trips = given.map(({ start, reserved }, index) =>
            trip(`T${index}`, `2027-07-${start}`, [{ code: 'A', pouches: reserved }]),
          );
          const { legs, left, short } = await season(trips, [lot('A', pouches)]);
          const unused = legs.map(({ id, takes }) => {
            const own = sum(trips.find((other) => other.id === id)?.reserved ?? []);
            return Math.max(0, own - sum(takes));
          });
          const promised = given.reduce((all, { reserved }) => all + reserved, 0);
          expect(
            sum(legs.flatMap(({ takes }) => takes)) + sum(left) + unused.reduce((a, b) => a + b, 0),
          ).toBe(pouches + promised);
          const missing = legs.reduce((all, { plan }) => all + plan.shortfall.missingKcal, 0);
          expect(short.reduce((all, row) => all + row.missingKcal, 0)).toBeCloseTo(missing, 3);
        },
      ),
      { numRuns: 15 },
    );
  });
});
