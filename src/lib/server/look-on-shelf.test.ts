import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALLERGENS } from '../planning/model/allergens.ts';
import { addDays } from '../planning/model/calendar.ts';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { MEAL_KINDS } from '../planning/model/words.ts';
import { ALL_LOTS, PAGE_SIZE, SHELF_COLUMNS, shelfRow, shelfView, type ShelfQuery } from '../shelf-view.ts';
import { madeUpLot, madeUpTrip, onEachDatabase } from './test-data.ts';

const TODAY = '2026-06-15';

/** Few of each, so that they tie and match; with what SQL could take for something else. */
const WORDS = ['Crème', 'creme', '100 %', "it's", 'a_b', 'B-10', 'b-9', 'B-09', 'Ä', 'z', '\\', '"', 'ß'];
const someWords = (most: number) =>
  fc.array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: most }).map((words) => words.join(' '));

const lot: fc.Arbitrary<Partial<PouchLot>> = fc.record(
  {
    recipe: someWords(2),
    note: someWords(2),
    mealKinds: fc.subarray([...MEAL_KINDS], { minLength: 1 }),
    bestBefore: fc.integer({ min: -3, max: 90 }).map((days) => addDays(TODAY, days)),
    pouches: fc.integer({ min: 0, max: 4 }),
    servingsPerPouch: fc.constantFrom(0.5, 1, 1.1, 3),
    dryWeightG: fc.constantFrom(50, 110.5, 333),
    energyKcal: fc.constantFrom(200, 480.1, 1000),
    allergens: fc.subarray(['milk', 'egg', 'wheat', 'gluten']),
  },
  { requiredKeys: ['recipe', 'mealKinds', 'bestBefore', 'pouches'] },
);

const query: fc.Arbitrary<ShelfQuery> = fc.record({
  search: fc.oneof(fc.constant(''), someWords(2), fc.constantFrom('%', '_', '\0', 'CRE', '10')),
  meal: fc.constantFrom(undefined, ...MEAL_KINDS),
  without: fc.oneof(fc.constant([]), fc.subarray([...ALLERGENS], { maxLength: 2 })),
  best: fc.constantFrom('any' as const, 'past' as const, 'within' as const),
  withinDays: fc.integer({ min: 1, max: 70 }),
  sort: fc.constantFrom(...SHELF_COLUMNS.map(({ key }) => key)),
  descending: fc.boolean(),
  page: fc.integer({ min: 1, max: 3 }),
});

onEachDatabase(({ openTestApp, runs }) => {
  test('what the database finds, sorts and counts is what is found among all lots', async () => {
    const lots = fc.array(lot, { minLength: 0, maxLength: 150, size: 'max' });
    await fc.assert(
      fc.asyncProperty(lots, fc.array(query, { minLength: 8, maxLength: 8 }), async (fields, queries) => {
        const app = await openTestApp();
        const names = fields.map((_, n) => `${WORDS[n % 8]} ${n}`);
        const stock = fields.map((one, n) => madeUpLot({ ...one, code: names[n]! }));
        await app.shelf.importLots(stock, '');
        const { id } = await app.trips.createTrip(madeUpTrip());
        const promised = stock.slice(0, 2).map(({ code, pouches }) => ({ code, pouches }));
        await app.trips.setAside(id, 1, promised);
        const all = await app.shelf.listLots();

        for (const asked of queries) {
          const { view, allCount } = await app.shelf.look(asked, TODAY);
          const expected = shelfView(all, asked, TODAY);
          expect(allCount).toBe(stock.length);
          expect(view).toEqual({ ...expected, servings: expect.closeTo(expected.servings, 6) });
        }

        const rows = all.filter(({ pouches }) => pouches > 0).map((one) => shelfRow(one, TODAY));
        const soon = rows.filter(({ state }) => state === 'soon');
        const glance = await app.shelf.glance(TODAY, 5);
        expect(glance).toMatchObject({
          isEmpty: stock.length === 0,
          lotCount: rows.length,
          pouches: rows.reduce((sum, { pouches }) => sum + pouches, 0),
          pastCount: rows.filter(({ state }) => state === 'past').length,
          soonCount: soon.length,
        });
        expect(glance.soon.map(({ code }) => code)).toEqual(soon.slice(0, 5).map(({ code }) => code));
      }),
      { numRuns: runs(30) },
    );
  }, 120_000);

  describe('a lot that is renamed', () => {
    test('is found and sorted by its new name', async () => {
      const app = await openTestApp();
      for (const code of ['B-9', 'B-10']) await app.shelf.addLot(madeUpLot({ code }));
      const found = async (asked: Partial<ShelfQuery>) =>
        (await app.shelf.look({ ...ALL_LOTS, ...asked }, TODAY)).view.rows.map(({ code }) => code);
      expect(await found({ sort: 'code' })).toEqual(['B-9', 'B-10']);
      await app.shelf.updateLot('B-9', madeUpLot({ code: 'C-1', recipe: 'Crème' }), 1);
      expect(await found({ sort: 'code' })).toEqual(['B-10', 'C-1']);
      expect(await found({ search: 'creme' })).toEqual(['C-1']);
      expect(await found({ search: 'b-9' })).toEqual([]);
    });
  });

  test('a shelf of many pages is shown page by page, and its sums are of all', async () => {
    const app = await openTestApp();
    const lots = Array.from({ length: 2 * PAGE_SIZE + 1 }, (_, n) => madeUpLot({ code: `L-${n}` }));
    await app.shelf.importLots(lots, '');
    const pages = await Promise.all([1, 2, 3].map((page) => app.shelf.look({ ...ALL_LOTS, page }, TODAY)));
    expect(pages.flatMap(({ view }) => view.rows.map(({ code }) => code))).toEqual(
      lots.map(({ code }) => code),
    );
    for (const { view } of pages)
      expect(view).toMatchObject({ lotCount: lots.length, pouches: 6 * lots.length, pageCount: 3 });
  });
});
