import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PouchLot } from './planning/model/pouch-lot.ts';
import {
  ALL_LOTS,
  lotOnShelf,
  PAGE_SIZE,
  readShelfQuery,
  SHELF_COLUMNS,
  shelfHref,
  shelfRow,
  shelfView,
  type LotOnShelf,
  type ShelfQuery,
} from './shelf-view.ts';

const TODAY = '2026-06-15';

function lot(fields: Partial<LotOnShelf> = {}): LotOnShelf {
  const { setAside = 0, ...rest } = fields;
  const parsed = PouchLot.parse({
    code: 'A-1',
    recipe: 'Lentil stew',
    mealKinds: ['dinner'],
    sealedOn: '2026-01-10',
    bestBefore: '2027-01-10',
    pouches: 4,
    servingsPerPouch: 2,
    dryWeightG: 120,
    energyKcal: 480,
    waterMl: 300,
    waterKind: 'boiling',
    steepMin: 12,
    tareG: 14,
    ...rest,
  });
  return { ...parsed, setAside };
}

const codes = (lots: readonly LotOnShelf[], query: Partial<ShelfQuery>) =>
  shelfView(lots, { ...ALL_LOTS, ...query }, TODAY).rows.map(({ code }) => code);

describe('shelfRow', () => {
  it('gives energy per pouch and by weight, and the servings at home', () => {
    expect(shelfRow(lot({ setAside: 1 }), TODAY)).toMatchObject({
      servings: 8,
      servingKcal: 480,
      pouchKcal: 960,
      kcalPer100G: 400,
      pouches: 4,
      setAside: 1,
    });
  });

  it('tells past from near from good; the last day itself still counts', () => {
    const state = (bestBefore: string) => shelfRow(lot({ bestBefore }), TODAY).state;
    expect(state('2026-06-14')).toBe('past');
    expect(state('2026-06-15')).toBe('soon');
    expect(state('2026-08-14')).toBe('soon');
    expect(state('2026-08-15')).toBe('good');
  });
});

it('sends the browser no more of a lot than the page needs, and the page shows the same from it', () => {
  const whole = { ...lot({ allergens: ['milk'], setAside: 2 }), version: 3, onShelf: 2, packed: 0 };
  expect(lotOnShelf(whole)).not.toHaveProperty('waterMl');
  expect(lotOnShelf(whole)).not.toHaveProperty('version');
  expect(shelfView([lotOnShelf(whole)], ALL_LOTS, TODAY)).toEqual(shelfView([whole], ALL_LOTS, TODAY));
  expect('allergens' in lotOnShelf(lot())).toBe(false);
});

describe('shelfView', () => {
  it('finds all words in code, recipe and note, without regard to case and accents', () => {
    const lots = [
      lot({ code: 'L-7', recipe: 'Crème of leek' }),
      lot({ code: 'L-8', note: 'less salt than L-7' }),
      lot({ code: 'M-1' }),
    ];
    expect(codes(lots, { search: 'creme L-7' })).toEqual(['L-7']);
    expect(codes(lots, { search: ' l-7 ' })).toEqual(['L-7', 'L-8']);
    expect(codes(lots, { search: 'SALT lentil' })).toEqual(['L-8']);
    expect(codes(lots, { search: '' })).toHaveLength(3);
  });

  it('filters by meal', () => {
    const lots = [
      lot({ code: 'A', mealKinds: ['lunch', 'dinner'] }),
      lot({ code: 'B', mealKinds: ['breakfast'] }),
    ];
    expect(codes(lots, { meal: 'lunch' })).toEqual(['A']);
  });

  it('never takes a lot with unstated allergens for free of one, and says how many it left out for that', () => {
    const lots = [
      lot({ code: 'free', allergens: [] }),
      lot({ code: 'milk', allergens: ['milk'] }),
      lot({ code: 'unstated' }),
    ];
    const view = shelfView(lots, { ...ALL_LOTS, without: ['egg', 'milk'] }, TODAY);
    expect(view.rows.map(({ code }) => code)).toEqual(['free']);
    expect(view.unstatedCount).toBe(1);
    expect(shelfView(lots, ALL_LOTS, TODAY).unstatedCount).toBe(0);
  });

  it('leaves out cereals with gluten where wheat is avoided, and the other way round', () => {
    const lots = [
      lot({ code: 'gluten', allergens: ['gluten'] }),
      lot({ code: 'wheat', allergens: ['wheat'] }),
    ];
    expect(codes(lots, { without: ['wheat'] })).toEqual([]);
    expect(codes(lots, { without: ['gluten'] })).toEqual([]);
  });

  it('filters by best-before', () => {
    const lots = ['2026-06-14', '2026-06-15', '2026-07-15', '2026-07-16'].map((bestBefore) =>
      lot({ code: bestBefore, bestBefore }),
    );
    expect(codes(lots, { best: 'past' })).toEqual(['2026-06-14']);
    expect(codes(lots, { best: 'within', withinDays: 30 })).toEqual(['2026-06-15', '2026-07-15']);
  });

  it('sorts codes as people count', () => {
    const lots = ['B-10', 'B-9', 'a-1'].map((code) => lot({ code }));
    expect(codes(lots, { sort: 'code' })).toEqual(['a-1', 'B-9', 'B-10']);
    expect(codes(lots, { sort: 'code', descending: true })).toEqual(['B-10', 'B-9', 'a-1']);
  });

  it('sorts by every column, both ways, and where a column ties puts first what is to be eaten first', () => {
    const lots = [
      lot({
        code: 'a',
        recipe: 'z',
        mealKinds: ['breakfast'],
        bestBefore: '2027-03-01',
        pouches: 9,
        setAside: 2,
        energyKcal: 100,
        dryWeightG: 90,
      }),
      lot({
        code: 'b',
        recipe: 'y',
        mealKinds: ['dinner'],
        bestBefore: '2027-02-01',
        pouches: 2,
        setAside: 1,
        energyKcal: 300,
        dryWeightG: 70,
      }),
      lot({
        code: 'c',
        recipe: 'y',
        mealKinds: ['dinner'],
        bestBefore: '2027-01-01',
        pouches: 2,
        setAside: 1,
        energyKcal: 300,
        dryWeightG: 70,
      }),
    ];
    const up = Object.fromEntries(SHELF_COLUMNS.map(({ key }) => [key, codes(lots, { sort: key }).join('')]));
    const down = Object.fromEntries(
      SHELF_COLUMNS.map(({ key }) => [key, codes(lots, { sort: key, descending: true }).join('')]),
    );
    expect(up).toEqual({
      code: 'abc',
      recipe: 'cba',
      mealKinds: 'acb',
      bestBefore: 'cba',
      pouches: 'cba',
      setAside: 'cba',
      servings: 'cba',
      servingKcal: 'acb',
      pouchKcal: 'acb',
      servingDryG: 'cba',
      kcalPer100G: 'acb',
    });
    expect(down).toEqual({
      code: 'cba',
      recipe: 'acb',
      mealKinds: 'cba',
      bestBefore: 'abc',
      pouches: 'acb',
      setAside: 'acb',
      servings: 'acb',
      servingKcal: 'cba',
      pouchKcal: 'cba',
      servingDryG: 'acb',
      kcalPer100G: 'cba',
    });
  });

  it('pages, sums over all pages, and stays on the last page where the address asks for one beyond', () => {
    const lots = Array.from({ length: PAGE_SIZE + 1 }, (_, index) => lot({ code: `A-${index}` }));
    const view = shelfView(lots, { ...ALL_LOTS, page: 99 }, TODAY);
    expect(view).toMatchObject({
      page: 2,
      pageCount: 2,
      lotCount: PAGE_SIZE + 1,
      pouches: 4 * lots.length,
      servings: 8 * lots.length,
    });
    expect(view.rows).toHaveLength(1);
    expect(shelfView([], ALL_LOTS, TODAY)).toMatchObject({ page: 1, pageCount: 1, lotCount: 0, rows: [] });
  });

  it('leaves the list it was given as it is', () => {
    const lots = [lot({ code: 'b' }), lot({ code: 'a' })];
    shelfView(lots, { ...ALL_LOTS, sort: 'code' }, TODAY);
    expect(lots.map(({ code }) => code)).toEqual(['b', 'a']);
  });
});

describe('the address', () => {
  it('brings any query back', () => {
    const query: fc.Arbitrary<ShelfQuery> = fc.record({
      search: fc.string({ maxLength: 40 }).map((text) => text.trim()),
      meal: fc.constantFrom(undefined, 'breakfast' as const, 'drink' as const),
      without: fc.subarray(['milk', 'egg', 'gluten'] as const),
      best: fc.constantFrom('any' as const, 'past' as const),
      withinDays: fc.constant(ALL_LOTS.withinDays),
      sort: fc.constantFrom(...SHELF_COLUMNS.map(({ key }) => key)),
      descending: fc.boolean(),
      page: fc.integer({ min: 1, max: 200 }),
    });
    fc.assert(
      fc.property(query, (query) => {
        expect(readShelfQuery(new URL(shelfHref(query), 'http://localhost').searchParams)).toEqual(query);
      }),
    );
    const within: ShelfQuery = { ...ALL_LOTS, best: 'within', withinDays: 14 };
    expect(readShelfQuery(new URL(shelfHref(within), 'http://localhost').searchParams)).toEqual(within);
  });

  it('counts nonsense as left out', () => {
    expect(
      readShelfQuery(
        new URLSearchParams('meal=brunch&without=gold&best=never&days=-3&sort=colour&order=up&page=0'),
      ),
    ).toEqual(ALL_LOTS);
    expect(readShelfQuery(new URLSearchParams('days=1e9&page=1.5'))).toEqual(ALL_LOTS);
  });
});
