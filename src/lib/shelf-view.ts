import { searchKey, searchWords, sortKey } from './lot-keys.ts';
import { ALLERGENS, avoided, type Allergen } from './planning/model/allergens.ts';
import type { PouchLot } from './planning/model/pouch-lot.ts';
import { pouchEnergyKcal } from './planning/model/pouch-totals.ts';
import { addDays } from './planning/model/calendar.ts';
import { MEAL_KINDS, type MealKind } from './planning/model/words.ts';
import type { EntryKind } from './ledger-kinds.ts';
import { text, type Text } from './texts/say.ts';

/** What the shelf page needs of a lot. */
const SHOWN_FIELDS = [
  'code',
  'recipe',
  'mealKinds',
  'bestBefore',
  'pouches',
  'servingsPerPouch',
  'energyKcal',
  'dryWeightG',
  'allergens',
  'note',
  'estimated',
  'withdrawn',
] as const satisfies readonly (keyof PouchLot)[];

/** A lot as the shelf page needs it: `pouches` are at home, `setAside` of them are promised to a trip. */
export type LotOnShelf = Pick<PouchLot, (typeof SHOWN_FIELDS)[number]> & { readonly setAside: number };

/** @returns the lot without what the shelf page does not need, to be sent to the browser. */
export function lotOnShelf(lot: LotOnShelf): LotOnShelf {
  const kept = new Set<string>([...SHOWN_FIELDS, 'setAside']);
  return Object.fromEntries(Object.entries(lot).filter(([name]) => kept.has(name))) as LotOnShelf;
}

/** One row of the shelf table. */
export type ShelfRow = {
  readonly code: string;
  readonly recipe: string;
  readonly mealKinds: readonly MealKind[];
  readonly bestBefore: string;
  readonly state: 'withdrawn' | 'past' | 'soon' | 'good';
  readonly pouches: number;
  readonly setAside: number;
  /** Servings in all pouches at home. */
  readonly servings: number;
  readonly servingKcal: number;
  readonly pouchKcal: number;
  readonly servingDryG: number;
  readonly kcalPer100G: number;
  /** Which of its figures nobody stated. */
  readonly estimated?: PouchLot['estimated'];
};

/** The columns of the table, in their order; each can be sorted by. */
export const SHELF_COLUMNS = [
  { key: 'code', label: text('Lot code') },
  { key: 'recipe', label: text('Recipe') },
  { key: 'mealKinds', label: text('Meals') },
  { key: 'bestBefore', label: text('Best before') },
  { key: 'pouches', label: text('Pouches at home') },
  { key: 'setAside', label: text('Set aside') },
  { key: 'servings', label: text('Servings') },
  { key: 'servingKcal', label: text('Energy per serving') },
  { key: 'pouchKcal', label: text('Energy per pouch') },
  { key: 'servingDryG', label: text('Dry weight per serving') },
  { key: 'kcalPer100G', label: text('Energy per weight') },
] as const satisfies readonly { key: keyof ShelfRow; label: Text }[];
export type ShelfColumn = (typeof SHELF_COLUMNS)[number]['key'];

/** What each kind of entry of the history is called. */
export const ENTRY_WORDS: Readonly<Record<EntryKind, Text>> = {
  sealed: text('sealed'),
  imported: text('imported'),
  'set aside': text('set aside'),
  released: text('released'),
  packed: text('packed'),
  eaten: text('eaten'),
  'brought back': text('brought back'),
  unpacked: text('unpacked'),
  reopened: text('reopened'),
  'eaten at home': text('eaten at home'),
  discarded: text('discarded'),
  withdrawn: text('withdrawn'),
  reinstated: text('put back on the shelf'),
  counted: text('counted'),
};

/** What the state of a lot is called. */
export const STATE_WORDS: Readonly<Record<ShelfRow['state'], Text>> = {
  withdrawn: text('withdrawn'),
  past: text('past'),
  soon: text('soon'),
  good: text('good'),
};

/** Best-before within so many days is near. */
export const SOON_DAYS = 60;
export const PAGE_SIZE = 100;
/** A shelf of so many lots at most is sent to the browser, which then finds by itself with each letter; of a larger one the server is asked. */
export const MOST_IN_BROWSER = 10_000;
const MAX_WITHIN_DAYS = 3650;

/** What the person is looking for. Everything in it can be read from and written to the address of the page. */
export type ShelfQuery = {
  readonly search: string;
  readonly meal: MealKind | undefined;
  /** Only lots that are stated to hold none of these. */
  readonly without: readonly Allergen[];
  readonly best: 'any' | 'past' | 'within';
  readonly withinDays: number;
  readonly sort: ShelfColumn;
  readonly descending: boolean;
  readonly page: number;
};

export const ALL_LOTS: ShelfQuery = {
  search: '',
  meal: undefined,
  without: [],
  best: 'any',
  withinDays: SOON_DAYS,
  sort: 'bestBefore',
  descending: false,
  page: 1,
};

/**
 * Reads the address of the shelf page, or its filter form. What makes no sense there counts as left out: an address is
 * typed by nobody who waits for a message.
 */
export function readShelfQuery(params: {
  get(name: string): unknown;
  getAll(name: string): readonly unknown[];
}): ShelfQuery {
  const oneOf = <T extends string>(list: readonly T[], name: string) =>
    list.find((entry) => entry === params.get(name));
  const wholeNumber = (name: string, fallback: number, max: number) => {
    const value = Number(params.get(name) ?? '');
    return Number.isInteger(value) && value >= 1 && value <= max ? value : fallback;
  };
  return {
    search: String(params.get('search') ?? '').slice(0, 200),
    meal: oneOf(MEAL_KINDS, 'meal'),
    without: ALLERGENS.filter((allergen) => params.getAll('without').includes(allergen)),
    best: oneOf(['any', 'past', 'within'], 'best') ?? ALL_LOTS.best,
    withinDays: wholeNumber('days', ALL_LOTS.withinDays, MAX_WITHIN_DAYS),
    sort:
      oneOf(
        SHELF_COLUMNS.map(({ key }) => key),
        'sort',
      ) ?? ALL_LOTS.sort,
    descending: params.get('order') === 'down',
    page: wholeNumber('page', 1, 1_000_000),
  };
}

/** @returns the address of the shelf page for a query, with no more in it than differs from `ALL_LOTS`. */
export function shelfHref(query: ShelfQuery): string {
  const params = new URLSearchParams();
  const search = query.search.trim();
  if (search) params.set('search', search);
  if (query.meal) params.set('meal', query.meal);
  for (const allergen of query.without) params.append('without', allergen);
  if (query.best !== ALL_LOTS.best) params.set('best', query.best);
  if (query.best === 'within' && query.withinDays !== ALL_LOTS.withinDays)
    params.set('days', String(query.withinDays));
  if (query.sort !== ALL_LOTS.sort) params.set('sort', query.sort);
  if (query.descending) params.set('order', 'down');
  if (query.page !== 1) params.set('page', String(query.page));
  const text = params.toString();
  return text ? `/shelf?${text}` : '/shelf';
}

export type ShelfView = {
  /** The rows of this page. */
  readonly rows: readonly ShelfRow[];
  readonly page: number;
  readonly pageCount: number;
  /** Lots that match, on all pages, with what they hold. */
  readonly lotCount: number;
  readonly pouches: number;
  readonly servings: number;
  /** Lots left out for no other reason than that nobody has stated their allergens. */
  readonly unstatedCount: number;
};

/**
 * Filters, sorts and pages the shelf, as the server does it for a shelf too large to be sent (`server/look-on-shelf.ts`).
 *
 * A lot whose allergens nobody has stated never counts as free of one.
 *
 * @param today ISO date, from which best-before is judged
 */
export function shelfView(lots: readonly LotOnShelf[], query: ShelfQuery, today: string): ShelfView {
  const words = searchWords(query.search);
  const untilDate = addDays(today, query.withinDays);
  const excluded = avoided(query.without);

  let unstatedCount = 0;
  const found = lots.filter((lot) => {
    if (query.meal && !lot.mealKinds.includes(query.meal)) return false;
    if (query.best === 'past' && lot.bestBefore >= today) return false;
    if (query.best === 'within' && (lot.bestBefore < today || lot.bestBefore > untilDate)) return false;
    if (words.length > 0) {
      const text = searchKeyOf(lot);
      if (!words.every((word) => text.includes(word))) return false;
    }
    if (excluded.size > 0) {
      if (lot.allergens === undefined) {
        unstatedCount += 1;
        return false;
      }
      if (lot.allergens.some((allergen) => excluded.has(allergen))) return false;
    }
    return true;
  });

  const soonUntil = addDays(today, SOON_DAYS); // once, not for each of ten thousand
  const rows = found
    .map((lot) => ({ ...shelfRow(lot, today, soonUntil), lot }))
    .sort(byColumn(query.sort, query.descending));
  const { page, pageCount } = pageOf(rows.length, query.page);
  return {
    rows: rows.slice((page - 1) * PAGE_SIZE, page * PAGE_SIZE).map(({ lot: _, ...row }) => row),
    page,
    pageCount,
    lotCount: rows.length,
    pouches: rows.reduce((sum, row) => sum + row.pouches, 0),
    servings: rows.reduce((sum, row) => sum + row.servings, 0),
    unstatedCount,
  };
}

/** @returns the page that is asked for, or the last one where there are fewer, of so many */
export function pageOf(lotCount: number, asked: number): { page: number; pageCount: number } {
  const pageCount = Math.max(1, Math.ceil(lotCount / PAGE_SIZE));
  return { page: Math.min(asked, pageCount), pageCount };
}

/** Makes a key of a lot once, as each letter that is typed asks for those of the same lots again. */
function once(make: (lot: LotOnShelf) => string): (lot: LotOnShelf) => string {
  const made = new WeakMap<LotOnShelf, string>();
  return (lot) => {
    const known = made.get(lot);
    if (known !== undefined) return known;
    const key = make(lot);
    made.set(lot, key);
    return key;
  };
}
const searchKeyOf = once(searchKey);
const SORT_KEYS = { code: once(({ code }) => sortKey(code)), recipe: once(({ recipe }) => sortKey(recipe)) };

/**
 * @param soonUntil up to when its best-before counts as soon
 * @returns the figures of one lot as the shelf shows them
 */
export function shelfRow(lot: LotOnShelf, today: string, soonUntil = addDays(today, SOON_DAYS)): ShelfRow {
  return {
    code: lot.code,
    recipe: lot.recipe,
    mealKinds: lot.mealKinds,
    bestBefore: lot.bestBefore,
    state: stateOf(lot, today, soonUntil),
    pouches: lot.pouches,
    setAside: lot.setAside,
    servings: lot.pouches * lot.servingsPerPouch,
    servingKcal: lot.energyKcal,
    pouchKcal: pouchEnergyKcal(lot),
    servingDryG: lot.dryWeightG,
    kcalPer100G: (100 * lot.energyKcal) / lot.dryWeightG,
    ...(lot.estimated && { estimated: lot.estimated }),
  };
}

function stateOf({ bestBefore, withdrawn }: LotOnShelf, today: string, soonUntil: string): ShelfRow['state'] {
  if (withdrawn !== undefined) return 'withdrawn';
  if (bestBefore < today) return 'past';
  return bestBefore <= soonUntil ? 'soon' : 'good';
}

type Found = ShelfRow & { readonly lot: LotOnShelf };

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const byDate = (a: ShelfRow, b: ShelfRow): number => compare(a.bestBefore, b.bestBefore);

function byColumn(column: ShelfColumn, descending: boolean): (a: Found, b: Found) => number {
  const byIt = ((): ((a: Found, b: Found) => number) => {
    switch (column) {
      case 'code':
      case 'recipe':
        return (a, b) => compare(SORT_KEYS[column](a.lot), SORT_KEYS[column](b.lot));
      case 'mealKinds':
        return (a, b) => mealOrder(a) - mealOrder(b);
      case 'bestBefore':
        return byDate;
      default:
        return (a, b) => a[column] - b[column];
    }
  })();
  const sign = descending ? -1 : 1;
  // Where the column ties, the pouch to eat first comes first, whichever way the column is sorted.
  return (a, b) =>
    sign * byIt(a, b) ||
    byDate(a, b) ||
    compare(SORT_KEYS.code(a.lot), SORT_KEYS.code(b.lot)) ||
    compare(a.code, b.code);
}

/** Breakfast before lunch, lunch only before lunch and dinner: of a lot that suits a meal nothing is added, else this. */
export const MEAL_WEIGHTS: readonly (readonly [meal: MealKind, weight: number])[] = MEAL_KINDS.map(
  (meal, place) => [meal, 2 ** (MEAL_KINDS.length - place)],
);

const mealOrder = (row: ShelfRow): number =>
  MEAL_WEIGHTS.reduce((order, [meal, weight]) => order + (row.mealKinds.includes(meal) ? 0 : weight), 0);
