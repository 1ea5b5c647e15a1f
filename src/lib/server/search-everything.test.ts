import { expect, it } from 'vitest';
import { exampleRecipe } from '../../../tests/support/kitchen-examples.ts';
import { searchEverything } from './search-everything.ts';
import { madeUpLot, madeUpTrip, onEachDatabase } from './test-data.ts';

onEachDatabase(({ openTestApp }) => {
  it('finds lots, dishes, trips, recipes and foods by their names, accents and case aside', async () => {
    const app = await openTestApp();
    await app.shelf.addLot(madeUpLot({ code: 'CR-1', recipe: 'Crème of leek' }));
    await app.shelf.addLot(madeUpLot({ code: 'LN-1', recipe: 'Lentils' }));
    const recipe = await app.kitchen.recipes.create(exampleRecipe({ name: 'Leek pot' }));
    const trip = await app.trips.createTrip({ ...madeUpTrip(), name: 'Leek valley' });
    const found = await searchEverything(app, 'LEEK', '2026-06-01');
    expect(found.lots.things.map(({ name }) => name)).toEqual(['CR-1']);
    expect(found.dishes.things).toEqual([
      { name: 'Crème of leek', href: expect.stringContaining('/shelf?search='), more: '' },
    ]);
    expect(found.trips.things).toMatchObject([{ name: 'Leek valley', href: `/trips/${trip.id}` }]);
    expect(found.recipes.things).toMatchObject([{ href: `/kitchen/recipes/${recipe.id}` }]);
    expect(found.foods.things.length).toBeGreaterThan(0);
    const both = await searchEverything(app, 'leek creme', '2026-06-01');
    expect([both.lots, both.trips].map(({ things }) => things.length)).toEqual([1, 0]);
  });

  it('finds nothing for no words', async () => {
    const app = await openTestApp();
    await app.shelf.addLot(madeUpLot());
    const found = await searchEverything(app, '  ', '2026-06-01');
    expect(Object.values(found).flatMap(({ things }) => things)).toEqual([]);
  });
});
