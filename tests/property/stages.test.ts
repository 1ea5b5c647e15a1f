import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allPacks } from '../../src/lib/planning/carry/all-packs.ts';
import type { Stock } from '../../src/lib/planning/model/pouch-lot.ts';
import { pouchFoodG, pouchGrossG } from '../../src/lib/planning/model/pouch-totals.ts';
import { inOrder, stageAt } from '../../src/lib/planning/model/resupply.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { TripPlan } from '../../src/lib/planning/model/trip-plan.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { stageOfBoil } from '../../src/lib/planning/stove/plan-fuel.ts';
import { stocks, trips } from '../support/arbitraries.ts';

const settings = defaultSettings();
const DUST = 0.5;

/** Trips with places on the way, up to three. */
const journeys = trips.chain((trip) =>
  fc
    .uniqueArray(
      fc.record({
        day: fc.integer({ min: 1, max: trip.dayCount }),
        from: fc.constantFrom('breakfast' as const, 'lunch' as const, 'dinner' as const),
        kind: fc.constantFrom('box' as const, 'cache' as const),
        boxG: fc.integer({ min: 0, max: 500 }),
      }),
      { minLength: 1, maxLength: 3, selector: ({ day }) => day },
    )
    .map((places) =>
      Trip.parse({
        ...trip,
        resupplies: places.map((place, index) => ({ ...place, place: `place ${index + 1}` })),
      }),
    ),
);

function holds(property: (plan: TripPlan, trip: Trip, stock: Stock) => void): void {
  fc.assert(
    fc.property(journeys, stocks, (trip, stock) => property(planTrip(trip, stock, settings), trip, stock)),
    { numRuns: 40, seed: 20_270_701 },
  );
}

describe('a journey in stages', () => {
  it('is what the schema of a plan says', () =>
    holds((plan) => {
      expect(TripPlan.safeParse(plan).error).toBeUndefined();
    }));

  it('packs exactly what is opened before the next place, each pouch once', () =>
    holds((plan, trip) => {
      const places = inOrder(trip.resupplies);
      const stages = [plan.carry.packs, ...plan.carry.pickUps.map(({ packs }) => packs)];
      expect(stages).toHaveLength(places.length + 1);
      for (const [stage, packs] of stages.entries()) {
        const packed = packs.flatMap(({ pouches }) => pouches).reduce((sum, row) => sum + row.pouches, 0);
        const opened = plan.menu.meals
          .filter((meal) => stageAt(places, meal) === stage)
          .flatMap((meal) => meal.opened)
          .reduce((sum, row) => sum + row.pouches, 0);
        expect(packed).toBe(opened);
        for (const row of packs.flatMap(({ pouches }) => pouches)) expect(stageAt(places, row)).toBe(stage);
      }
    }));

  it('weighs in boxes and packs what its pouches and containers weigh', () =>
    holds((plan, _, stock) => {
      const lots = new Map(stock.map((lot) => [lot.code, lot]));
      for (const { pouches, fuelContainers, packs, foodG, packagingG, ...box } of plan.carry.pickUps) {
        const foodPouchesG = pouches.reduce((sum, { code, pouches: count }) => {
          const lot = lots.get(code);
          return sum + (lot ? count * pouchGrossG(lot) : 0);
        }, 0);
        expect(Math.abs(foodPouchesG - foodG - packagingG)).toBeLessThan(DUST);
        const fuelG = fuelContainers.reduce((sum, { grossG }) => sum + grossG, 0);
        expect(Math.abs(fuelG - box.fuelGrossG)).toBeLessThan(DUST);
        expect(Math.abs(foodG + packagingG + fuelG + box.boxG - box.totalG)).toBeLessThan(DUST);
        const inPacksG = packs.reduce((sum, pack) => sum + pack.foodG + pack.packagingG + pack.fuelGrossG, 0);
        expect(Math.abs(inPacksG + box.boxG - box.totalG)).toBeLessThan(DUST);
      }
      const allG = allPacks(plan.carry).reduce((sum, pack) => sum + pack.foodG, 0);
      const menuG = [...plan.menu.meals.flatMap(({ opened }) => opened), ...plan.menu.reserve].reduce(
        (sum, { code, pouches }) => sum + pouches * pouchFoodG(lots.get(code)!),
        0,
      );
      expect(Math.abs(allG - menuG)).toBeLessThan(DUST);
      expect(Math.abs(plan.totals.foodG - menuG)).toBeLessThan(DUST);
    }));

  it('carries on no morning more food than is eaten before the next place, and the reserve', () =>
    holds((plan, trip, stock) => {
      const lots = new Map(stock.map((lot) => [lot.code, lot]));
      const places = inOrder(trip.resupplies);
      const reserveG = plan.menu.reserve.reduce(
        (sum, { code, pouches }) => sum + pouches * pouchFoodG(lots.get(code)!),
        0,
      );
      for (const { day } of plan.demand) {
        const carriedG = plan.carry.loads
          .filter((load) => load.day === day)
          .reduce((sum, { foodG }) => sum + foodG, 0);
        const stage = stageAt(places, { day, meal: 'breakfast' });
        const openedG = plan.menu.meals
          .filter((meal) => stageAt(places, meal) === stage)
          .flatMap(({ opened }) => opened)
          .reduce((sum, { code, pouches }) => sum + pouches * pouchFoodG(lots.get(code)!), 0);
        const openG = plan.menu.meals
          .filter((meal) => stageAt(places, meal) < stage)
          .flatMap(({ staysOpen }) => staysOpen)
          .reduce((sum, { code, servings }) => sum + servings * (lots.get(code)?.dryWeightG ?? 0), 0);
        expect(carriedG).toBeLessThanOrEqual(openedG + openG + reserveG + DUST);
      }
    }));

  it('has fuel on each stage for all that is boiled on it, with the reserve', () =>
    holds((plan, trip) => {
      const resupplies = inOrder(trip.resupplies);
      for (let stage = 0; stage <= resupplies.length; stage++) {
        const burntG = plan.fuel.boils
          .filter((boil) => stageOfBoil({ resupplies }, boil) === stage)
          .reduce((sum, { fuelG }) => sum + fuelG, 0);
        const takenG = plan.fuel.containers
          .filter((container) => (container.stage ?? 0) === stage)
          .reduce((sum, { netG, count }) => sum + netG * count, 0);
        expect(takenG).toBeGreaterThanOrEqual(burntG * (1 + (trip.stove.reserve ?? 0)) - DUST);
      }
    }));
});
