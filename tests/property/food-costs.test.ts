/* What the food costs: rows by person and day are all that was paid for what is opened, no more and no less. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { stocks, trips } from '../support/arbitraries.ts';

const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

it('adds up to the opened pouches, home-made and bought apart, whoever eats of them', () => {
  fc.assert(
    fc.property(
      trips,
      stocks,
      fc.integer({ min: 0, max: 3 }),
      fc.integer({ min: 0, max: 900 }),
      (trip, stock, every, shopMinor) => {
        const shelf = stock.map((lot, index) => ({ ...lot, bought: every > 0 && index % every === 0 }));
        const shopPrices = stock.slice(0, 1).map(({ recipe }) => ({ recipe, servingMinor: shopMinor }));
        const { costs, totals, menu } = planTrip(trip, shelf, { ...defaultSettings(), shopPrices });
        const rows = sum(costs.rows.map(({ homeMinor, boughtMinor }) => homeMinor + boughtMinor));
        expect(Math.abs(rows - (totals.costMinor ?? 0))).toBeLessThan(1);
        expect(sum(costs.rows.map(({ homeMinor }) => homeMinor))).toBeCloseTo(costs.home.minor, 0);
        expect(sum(costs.rows.map(({ boughtMinor }) => boughtMinor))).toBeCloseTo(costs.bought.minor, 0);
        const servings = sum(menu.meals.flatMap(({ opened }) => opened.map((row) => row.servings)));
        expect(costs.home.servings + costs.bought.servings).toBeCloseTo(servings, 2);
        expect(costs.home.pricedServings + costs.bought.pricedServings).toBeCloseTo(
          servings * totals.costKnownShare,
          1,
        );
        if (costs.compared) {
          expect(costs.compared.shopMinor).toBeCloseTo(costs.compared.servings * shopMinor, 0);
          expect(costs.compared.ownMinor).toBeLessThanOrEqual(costs.home.minor + 0.01);
        }
      },
    ),
    { numRuns: 60 },
  );
});
