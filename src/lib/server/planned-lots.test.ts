import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { exampleBatch, exampleRecipe } from '../../../tests/support/kitchen-examples.ts';
import type { TrailNote } from '../planning/model/trail-note.ts';
import type { App } from './app.ts';
import { changePlannedAmount, fillPlan, linesToFill, takeSuggestion } from './fill-plan.ts';
import { planStoredTrip } from './plan-stored-trip.ts';
import { createPlannedTrip } from './plan-meals.ts';
import { expectUserError, madeUpLot, madeUpTrip, onEachDatabase } from './test-data.ts';
import { pouchesThere } from '../planning/menu/plan-menu.ts';

const TRIP = madeUpTrip({
  dayCount: 3,
  party: [
    { name: 'Ada', energyKcal: 2400, allergens: ['milk'] },
    { name: 'Ben', energyKcal: 2600 },
  ],
  menu: [],
});
const note = (kind: TrailNote['kind'], code: string, pouches: number): TrailNote => ({
  id: randomUUID(),
  at: '2027-06-01T10:00:00Z',
  kind,
  code,
  pouches,
  text: '',
});

onEachDatabase(({ openTestApp }) => {
  const open = async () => {
    const app = await openTestApp(undefined, () => new Date('2026-05-01T12:00:00Z'));
    const { stored } = await createPlannedTrip(app, TRIP);
    return { app, id: stored.id };
  };
  const planOf = async (app: App, id: string) => (await planStoredTrip(app, id)).plan;

  it('an empty shelf is filled from a shop, and what is bought becomes stock that the menu goes on with', async () => {
    const { app, id } = await open();
    const before = await planOf(app, id);
    await fillPlan(app, id, 'buy only');
    const filled = await planOf(app, id);
    expect(filled.shortfall.missingKcal).toBeLessThan(before.shortfall.missingKcal / 4);
    expect(filled.coming.every(({ way }) => way === 'buy')).toBe(true);
    expect(pouchesThere(filled.menu)).toEqual([]);

    for (const { code, pouches } of filled.coming)
      await app.planned.bought(id, { code, pouches, labelRead: true });
    const bought = await planOf(app, id);
    expect(bought.coming).toEqual([]);
    expect(bought.totals.eatenKcal).toBeCloseTo(filled.totals.eatenKcal, 0);
    expect(await app.shelf.listLots()).toHaveLength(filled.coming.length);

    const stored = (await app.trips.getTrip(id))!;
    const aside = await app.trips.setAside(id, stored.version, pouchesThere(bought.menu));
    expect((await app.trips.pack(id, aside.version)).stage).toBe('packed');
  });

  it('a price that is paid becomes the cost of a serving, from the form and from a note alike', async () => {
    const { app, id } = await open();
    await fillPlan(app, id, 'buy only');
    const [first, second] = (await planOf(app, id)).coming;
    if (!first || !second) return expect.fail('too little is planned');
    await app.planned.bought(id, {
      code: first.code,
      pouches: first.pouches,
      labelRead: true,
      paidMinor: 100 * first.pouches,
    });
    const paid = { ...note('bought', second.code, second.pouches), paidMinor: 50 * second.pouches };
    await app.trailNotes.enter(id, [paid]);
    const lots = await app.shelf.listLots();
    const costs = new Map(lots.map(({ recipe, costMinor, bought }) => [recipe, { costMinor, bought }]));
    expect(costs.get(first.recipe)).toEqual({ costMinor: 100, bought: true });
    expect(costs.get(second.recipe)).toEqual({ costMinor: 50, bought: true });
    const { costs: food } = await planOf(app, id);
    expect(food.home.servings).toBe(0);
    expect(food.bought.pricedServings).toBeGreaterThan(0);
  });

  it('until its label is read, bought food is for nobody who avoids an allergen', async () => {
    const { app, id } = await open();
    await fillPlan(app, id, 'buy only');
    const [first] = (await planOf(app, id)).coming.filter(({ eaters }) => eaters.includes('Ada'));
    if (!first) return expect.fail('nothing is planned for her');
    await app.planned.bought(id, { code: first.code, pouches: first.pouches, labelRead: false });
    const [lot] = await app.shelf.listLots();
    expect(lot).toMatchObject({ recipe: first.recipe, pouches: first.pouches });
    expect(lot?.allergens).toBeUndefined();
    expect(lot?.contains ?? []).toEqual(first.allergens);
    const plan = await planOf(app, id);
    const eaters = plan.menu.meals.flatMap(({ portions }) =>
      portions.filter(({ code }) => code === lot?.code).map(({ eater }) => eater),
    );
    expect(eaters).not.toContain('Ada');
  });

  it('ticks of a phone are entered once, and what did not come is missing again', async () => {
    const { app, id } = await open();
    await fillPlan(app, id, 'buy only');
    const [first, second] = (await planOf(app, id)).coming;
    if (!first || !second) return expect.fail('two foods are planned');
    const tick = note('bought, label read', first.code, first.pouches);
    expect(await app.trailNotes.enter(id, [tick])).toEqual([{ id: tick.id, outcome: 'entered' }]);
    expect(await app.trailNotes.enter(id, [tick])).toEqual([{ id: tick.id, outcome: 'known' }]);
    const again = await app.trailNotes.enter(id, [note('bought', first.code, 1)]);
    expect(again[0]?.outcome).toBe('conflict');
    expect(await app.shelf.listLots()).toHaveLength(1);

    const before = await planOf(app, id);
    await changePlannedAmount(app, id, second.code);
    const after = await planOf(app, id);
    expect(after.coming.map(({ code }) => code)).not.toContain(second.code);
    expect(after.shortfall.missingKcal).toBeGreaterThan(before.shortfall.missingKcal);
  });

  it('a part that is bought is stock, the rest is still to come', async () => {
    const { app, id } = await open();
    await fillPlan(app, id, 'buy only');
    const [first] = (await planOf(app, id)).coming.filter(({ pouches }) => pouches > 2);
    if (!first) return expect.fail('no food of several bags is planned');
    await app.planned.bought(id, { code: first.code, pouches: 2, labelRead: true });
    const plan = await planOf(app, id);
    expect(plan.coming.find(({ code }) => code === first.code)?.pouches).toBe(first.pouches - 2);
    expect((await app.shelf.listLots())[0]?.pouches).toBe(2);
  });

  it('a suggestion is taken with the packets that the shop has, and packing waits for it', async () => {
    const { app, id } = await open();
    const planned = await planStoredTrip(app, id);
    const [line] = await linesToFill(app, planned);
    const suggestion = line?.suggestions.find(({ way }) => way === 'buy');
    if (!line || !suggestion) return expect.fail('nothing is suggested');
    const taken = { meal: line.meal, forEaters: line.forEaters, way: suggestion.way, what: suggestion.what };
    await takeSuggestion(app, id, { ...taken, packetG: 1000 });
    const plan = await planOf(app, id);
    expect(plan.coming).toMatchObject([{ recipe: suggestion.what, packetG: 1000 }]);
    expect(plan.shortfall.missingKcal).toBeLessThan(planned.plan.shortfall.missingKcal);
    await expectUserError(
      takeSuggestion(app, id, { ...taken, what: 'thin air' }),
      'StaleVersion',
      'thin air',
    );

    await app.shelf.addLot(madeUpLot({ code: 'OWN' }));
    const stored = (await app.trips.getTrip(id))!;
    const aside = await app.trips.setAside(id, stored.version, [{ code: 'OWN', pouches: 1 }]);
    await expectUserError(app.trips.pack(id, aside.version), 'Refused', 'not there yet');
  });

  it('a sealed batch takes the place of what was to be dried of its recipe', async () => {
    const { app, id } = await open();
    const recipe = exampleRecipe({ mealKinds: ['dinner'] });
    await app.kitchen.recipes.create(recipe);
    const lines = await linesToFill(app, await planStoredTrip(app, id));
    const line = lines.find(({ suggestions }) => suggestions.some(({ what }) => what === recipe.name));
    const suggestion = line?.suggestions.find(({ what }) => what === recipe.name);
    if (!line || !suggestion) return expect.fail('the recipe is not suggested');
    expect(suggestion.planned.by).toBeDefined();
    const { meal, forEaters } = line;
    await takeSuggestion(app, id, { meal, forEaters, way: 'dry', what: recipe.name, pouches: 4 });
    expect((await planOf(app, id)).coming).toMatchObject([{ way: 'dry', recipe: recipe.name, pouches: 4 }]);

    const batch = await app.kitchen.batches.create(exampleBatch({ recipe }));
    const lot = { ...suggestion.planned.lot, code: 'DRIED', pouches: 3, bestBefore: '2028-01-01' };
    await app.kitchen.sealBatch(batch, [lot], '2026-06-20');
    const plan = await planOf(app, id);
    expect(plan.coming).toMatchObject([{ recipe: recipe.name, pouches: 1 }]);
    const opened = plan.menu.meals.flatMap((menuMeal) => menuMeal.opened);
    expect(opened.filter(({ code }) => code === 'DRIED').every(({ toCome }) => toCome === undefined)).toBe(
      true,
    );
    expect(opened.some(({ code }) => code === 'DRIED')).toBe(true);
  });
});
