/* The room that food takes: what is in the packs is what is still to be eaten, no more and no less. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pouchVolumeMl, USUAL_ML_PER_G } from '../../src/lib/planning/carry/food-volume.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { stocks, trips } from '../support/arbitraries.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';

const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

it('adds up to the pouches that are not opened yet, at the start and in the night of every day', () => {
  fc.assert(
    fc.property(
      trips,
      stocks,
      fc.option(fc.integer({ min: 500, max: 20_000 }), { nil: undefined }),
      (trip, stock, roomMl) => {
        const given = { ...trip, ...(roomMl !== undefined && { animalContainerMl: roomMl }) };
        const plan = planTrip(given, stock, defaultSettings());
        const lots = new Map(stock.map((lot) => [lot.code, lot]));
        const volumeOf = (rows: readonly { code: string; pouches: number }[]) =>
          sum(rows.map(({ code, pouches }) => pouches * pouchVolumeMl(lots.get(code)!).value));
        const { packs, volumes } = plan.carry;
        if ((given.resupplies ?? []).length > 0) return;
        const inPacks = sum(packs.map((pack) => volumeOf([...pack.pouches, ...pack.reserve])));
        for (const { day } of plan.demand) {
          const rows = volumes.filter((row) => row.day === day);
          expect(rows.map(({ eater }) => eater)).toEqual(packs.map(({ eater }) => eater));
          const leaving = sum(rows.map(({ leavingMl }) => leavingMl.value));
          const night = sum(rows.map(({ nightMl }) => nightMl?.value ?? 0));
          const later = plan.menu.meals.filter((meal) => meal.day > day);
          const unopened = volumeOf([...later.flatMap(({ opened }) => opened), ...plan.menu.reserve]);
          expect(leaving).toBeLessThanOrEqual(inPacks + 0.01);
          expect(night).toBeLessThanOrEqual(leaving + 0.01);
          // What is open and not eaten up is there too, in its pouch.
          const stillOpen = plan.menu.meals.some((meal) => meal.day > day && meal.fromOpen.length > 0);
          if (day < plan.demand.length && !stillOpen) expect(night).toBeCloseTo(unopened, 0);
          for (const {
            leavingMl: { low, value, high },
            nightMl,
            overMl,
          } of rows) {
            expect(low).toBeLessThanOrEqual(value);
            expect(value).toBeLessThanOrEqual(high);
            expect(overMl).toBeCloseTo(
              roomMl === undefined ? 0 : Math.max(0, (nightMl?.value ?? 0) - roomMl),
              2,
            );
          }
        }
        const said = plan.notices.filter(({ code }) => code === 'food-beyond-container');
        const over = new Set(volumes.filter(({ overMl }) => overMl > 0.5).map(({ eater }) => eater));
        expect(new Set(said.map(({ eater }) => eater))).toEqual(over);
      },
    ),
    { numRuns: 60 },
  );
});

it('believes what is stated, and gives the rule of thumb a range', () => {
  fc.assert(
    fc.property(stocks, (stock) => {
      for (const lot of stock) {
        const { low, value, high } = pouchVolumeMl(lot);
        const foodG = lot.servingsPerPouch * lot.dryWeightG;
        if (lot.volumeMl === undefined) expect(low).toBeLessThan(high);
        else expect([low, value, high]).toEqual([lot.volumeMl, lot.volumeMl, lot.volumeMl]);
        if (lot.volumeMl === undefined)
          expect(value / foodG).toBeLessThanOrEqual(USUAL_ML_PER_G.main.value + 1e-9);
      }
    }),
  );
});
