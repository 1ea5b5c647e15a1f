import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillShortfall } from '../../src/lib/planning/filling/fill-shortfall.ts';
import { keepMenu } from '../../src/lib/planning/menu/edit-menu.ts';
import { mayEat } from '../../src/lib/planning/menu/exclusions.ts';
import { pouchesNeeded } from '../../src/lib/planning/menu/plan-menu.ts';
import { packetsOf, withPlanned } from '../../src/lib/planning/model/planned-lot.ts';
import type { Stock } from '../../src/lib/planning/model/pouch-lot.ts';
import { pouchFoodG } from '../../src/lib/planning/model/pouch-totals.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import type { TripPlan } from '../../src/lib/planning/model/trip-plan.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { FILL_PREFERENCES } from '../../src/lib/planning/model/words.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { putInPlace, takeIn, takeOut } from '../../src/lib/planning/shortfall/take-in.ts';
import { stocks, trips } from '../support/arbitraries.ts';

const settings = defaultSettings();

type Filled = { trip: Trip; stock: Stock; before: TripPlan; filled: Trip; after: TripPlan };

function holds(property: (filled: Filled) => void, numRuns = 12): void {
  fc.assert(
    fc.property(trips, stocks, fc.constantFrom(...FILL_PREFERENCES), (trip, stock, preference) => {
      const filled = fillShortfall(trip, stock, settings, preference);
      property({
        trip,
        stock,
        filled,
        before: planTrip(trip, stock, settings),
        after: planTrip(filled, stock, settings),
      });
    }),
    { numRuns, seed: 20_270_701 },
  );
}

describe('a plan that is filled', () => {
  it('is a valid trip that misses no more than before', () =>
    holds(({ filled, before, after }) => {
      expect(Trip.safeParse(filled).error).toBeUndefined();
      expect(after.shortfall.missingKcal).toBeLessThanOrEqual(before.shortfall.missingKcal + 1);
    }));

  it('has every planned lot in its plan as still to come, and uses no more than comes', () =>
    holds(({ filled, after }) => {
      const planned = filled.planned ?? [];
      expect(after.coming.map(({ code }) => code)).toEqual(planned.map(({ lot }) => lot.code));
      for (const { needed, pouches } of after.coming) expect(needed).toBeLessThanOrEqual(pouches);
    }));

  it('marks as not there what is planned, and nothing else, in menu, packs and card', () =>
    holds(({ filled, after }) => {
      const ways = new Map((filled.planned ?? []).map(({ lot, way }) => [lot.code, way]));
      const rows = [
        ...after.menu.meals.flatMap(({ opened, fromOpen }) => [...opened, ...fromOpen]),
        ...after.menu.reserve,
        ...after.carry.packs.flatMap(({ pouches, reserve }) => [...pouches, ...reserve]),
        ...after.card.days.flatMap(({ meals }) => meals.flatMap(({ pouches }) => pouches)),
      ];
      for (const { code, toCome } of rows) expect(toCome).toBe(ways.get(code));
    }));

  it('packs planned food like any other: packs hold what the menu opens', () =>
    holds(({ filled, stock, after }) => {
      const lots = new Map(withPlanned(stock, filled.planned).map((lot) => [lot.code, lot]));
      const foodG = pouchesNeeded(after.menu).reduce((sum, { code, pouches }) => {
        const lot = lots.get(code);
        if (!lot) throw new Error(`the plan names ${code}, which is neither there nor planned`);
        return sum + pouches * pouchFoodG(lot);
      }, 0);
      expect(after.totals.foodG).toBeCloseTo(foodG, 0);
      const packedG = after.carry.packs.reduce((sum, pack) => sum + pack.foodG, 0);
      expect(Math.abs(packedG - foodG)).toBeLessThan(0.5);
    }));

  it('serves planned food to nobody who must not have it, undeclared allergens included', () =>
    holds(({ filled, after }) => {
      const planned = new Map((filled.planned ?? []).map(({ lot }) => [lot.code, lot]));
      for (const { portions } of after.menu.meals)
        for (const { code, eater: name } of portions) {
          const lot = planned.get(code);
          const eater = filled.party.find((other) => other.name === name);
          if (lot && eater) expect(mayEat(lot, eater)).toBe(true);
        }
    }));

  it('buys whole packets, and hardly one that is not opened', () =>
    holds(({ filled, after }) => {
      for (const own of filled.planned ?? []) {
        if (own.packetG === undefined) continue;
        const packets = packetsOf(own);
        const needed = after.coming.find(({ code }) => code === own.lot.code)?.needed ?? 0;
        const neededG = needed * pouchFoodG(own.lot);
        expect(packets * own.packetG).toBeGreaterThanOrEqual(neededG - 1e-6);
        expect((packets - 2) * own.packetG).toBeLessThan(Math.max(neededG, 1));
      }
    }));

  it('gives nobody more of one bought extra in a day than two handfuls', () =>
    holds(({ filled, after }) => {
      for (const { lot } of (filled.planned ?? []).filter(({ way }) => way === 'buy'))
        for (const { name: eater } of filled.party)
          for (const { day } of after.demand) {
            const servings = after.menu.meals
              .filter((meal) => meal.day === day)
              .flatMap(({ portions }) => portions)
              .filter((portion) => portion.eater === eater && portion.code === lot.code)
              .reduce((sum, portion) => sum + portion.servings, 0);
            if (lot.kind === 'extra') expect(servings * lot.dryWeightG).toBeLessThanOrEqual(100 + 1e-6);
          }
    }));

  it('is the same for the same input, and leaves its input alone', () =>
    holds(({ trip, stock, filled }) => {
      const copy = structuredClone(trip);
      const again = FILL_PREFERENCES.map((preference) => fillShortfall(trip, stock, settings, preference));
      expect(trip).toEqual(copy);
      expect(again.some((other) => JSON.stringify(other) === JSON.stringify(filled))).toBe(true);
    }, 10));
});

describe('what comes of planned food', () => {
  it('taken out again it is in no meal, and the shelf can be planned with as before', () =>
    holds(({ filled, stock, before }) => {
      const emptied = (filled.planned ?? []).reduce(
        (trip, { lot }) => takeOut(trip, lot.code, stock),
        filled,
      );
      expect(emptied.planned).toBeUndefined();
      const plan = planTrip(emptied, stock, settings);
      expect(plan.coming).toEqual([]);
      expect(plan.notices.filter(({ code }) => code === 'lot-gone')).toEqual([]);
      expect(plan.shortfall.missingKcal).toBeGreaterThanOrEqual(0);
      expect(before.coming).toEqual([]);
    }));

  it('got in full it is real, and the plan eats the same; what did not come is missing again', () =>
    holds(({ filled, stock, after }) => {
      const planned = filled.planned ?? [];
      const listed = planned.reduce(
        (trip, { lot }, index) => putInPlace(trip, lot.code, { code: `R${index}`, pouches: lot.pouches }),
        keepMenu(filled, after.menu),
      );
      expect(listed.planned).toBeUndefined();
      const shelf = [...stock, ...planned.map(({ lot }, index) => ({ ...lot, code: `R${index}` }))];
      const plan = planTrip(listed, shelf, settings);
      expect(plan.coming).toEqual([]);
      expect(plan.totals.eatenKcal).toBeCloseTo(after.totals.eatenKcal, 0);
    }));

  it('a part that came is real and the rest still to come: no pouch is made or lost', () =>
    holds(({ filled }) => {
      const [own] = filled.planned ?? [];
      if (!own || own.lot.pouches < 2) return;
      const half = Math.floor(own.lot.pouches / 2);
      const listed = putInPlace(filled, own.lot.code, { code: 'R', pouches: half });
      const left = listed.planned?.find(({ lot }) => lot.code === own.lot.code)?.lot.pouches ?? 0;
      expect(left + half).toBe(own.lot.pouches);
    }));

  it('more of the same food is one lot, under the code that it has', () =>
    holds(({ filled, stock, after }) => {
      const [own] = filled.planned ?? [];
      if (!own) return;
      const more = takeIn(filled, after, [own], stock);
      expect(more.planned).toHaveLength(filled.planned?.length ?? 0);
      expect(more.planned?.[0]?.lot.pouches).toBe(2 * own.lot.pouches);
    }));
});
