import { sql, type RawBuilder, type SqlBool, type Transaction } from 'kysely';
import { searchWords } from '../lot-keys.ts';
import { avoided } from '../planning/model/allergens.ts';
import { addDays } from '../planning/model/calendar.ts';
import {
  MEAL_WEIGHTS,
  PAGE_SIZE,
  pageOf,
  SOON_DAYS,
  type ShelfColumn,
  type ShelfQuery,
  type ShelfView,
} from '../shelf-view.ts';
import type { Tables } from './database/tables.ts';

/* What the database can say of the shelf without handing out its lots. It finds, sorts and counts as `shelfView` does. */

/** The place of a page: ids of its lots in their order, to be read. */
export type Looked = Omit<ShelfView, 'rows'> & { readonly ids: readonly number[] };

const lots = (trx: Transaction<Tables>) =>
  trx.selectFrom('lots').leftJoin('balances', 'balances.lotId', 'lots.id');

const column = (name: keyof Tables['lots']) => sql.ref(`lots.${name}`);
const setAside = sql<number>`coalesce(${sql.ref('balances.setAside')}, 0)`;
const pouches = sql<number>`(coalesce(${sql.ref('balances.onShelf')}, 0) + ${setAside})`;
const servings = sql<number>`(${pouches} * ${column('servingsPerPouch')})`;
/** Lists are stored as JSON, so each word of them stands in quotes. */
const holds = (list: 'mealKinds' | 'allergens', word: string) =>
  sql<SqlBool>`${column(list)} like ${sql.lit(`%"${word}"%`)}`;
const some = (conditions: readonly RawBuilder<SqlBool>[]) =>
  sql<SqlBool>`(${sql.join(conditions, sql` or `)})`;
const sumWhere = (condition: RawBuilder<SqlBool>, amount: RawBuilder<unknown> = sql`1`) =>
  sql<number>`coalesce(sum(case when ${condition} then ${amount} else 0 end), 0)`;

const SORTED_BY: Readonly<Record<ShelfColumn, RawBuilder<unknown>>> = {
  code: column('codeKey'),
  recipe: column('recipeKey'),
  mealKinds: sql.join(
    MEAL_WEIGHTS.map(
      ([meal, weight]) => sql`case when ${holds('mealKinds', meal)} then 0 else ${sql.lit(weight)} end`,
    ),
    sql` + `,
  ),
  bestBefore: column('bestBefore'),
  pouches,
  setAside,
  servings,
  servingKcal: column('energyKcal'),
  pouchKcal: sql`${column('energyKcal')} * ${column('servingsPerPouch')}`,
  servingDryG: column('dryWeightG'),
  kcalPer100G: sql`100.0 * ${column('energyKcal')} / ${column('dryWeightG')}`,
};

/** Within a read: which lots are on the page that is asked for, and what all come to that match. @param today ISO date */
export async function lookOnShelf(
  trx: Transaction<Tables>,
  query: ShelfQuery,
  today: string,
): Promise<Looked> {
  const { meal, best, search } = query;
  let matching = lots(trx);
  if (meal) matching = matching.where(holds('mealKinds', meal));
  if (best === 'past') matching = matching.where('lots.bestBefore', '<', today);
  if (best === 'within')
    matching = matching
      .where('lots.bestBefore', '>=', today)
      .where('lots.bestBefore', '<=', addDays(today, query.withinDays));
  for (const word of searchWords(search))
    matching = matching.where(
      sql<SqlBool>`${column('searchKey')} like ${`%${word.replace(/[\\%_]/g, String.raw`\$&`)}%`} escape '\\'`,
    );

  const excluded = [...avoided(query.without)];
  const isUnstated = sql<SqlBool>`${column('allergens')} is null`;
  const isFree =
    excluded.length === 0
      ? sql<SqlBool>`true`
      : sql<SqlBool>`not ${isUnstated} and not ${some(excluded.map((allergen) => holds('allergens', allergen)))}`;

  const totals = await matching
    .select([
      sumWhere(isFree).as('lotCount'),
      sumWhere(isFree, pouches).as('pouches'),
      sumWhere(isFree, servings).as('servings'),
      (excluded.length === 0 ? sql<number>`0` : sumWhere(isUnstated)).as('unstatedCount'),
    ])
    .executeTakeFirstOrThrow();
  const place = pageOf(totals.lotCount, query.page);
  const found = await matching
    .select('lots.id')
    .where(isFree)
    .orderBy(SORTED_BY[query.sort], query.descending ? 'desc' : 'asc')
    .orderBy('lots.bestBefore')
    .orderBy('lots.codeKey')
    .orderBy('lots.code')
    .limit(PAGE_SIZE)
    .offset((place.page - 1) * PAGE_SIZE)
    .execute();
  return { ...totals, ...place, ids: found.map(({ id }) => id) };
}

/** What there is at home, and what of it has to be eaten. */
export type Glance = {
  readonly lotCount: number;
  readonly pouches: number;
  readonly servings: number;
  readonly pastCount: number;
  readonly soonCount: number;
};

/** Within a read: what all lots with pouches at home come to, and the first of those to be eaten soon. @param today ISO date */
export async function glanceAtShelf(
  trx: Transaction<Tables>,
  today: string,
  most: number,
): Promise<Glance & { readonly soonIds: readonly number[] }> {
  const atHome = lots(trx).where(sql<SqlBool>`${pouches} > 0`);
  const isPast = sql<SqlBool>`${column('bestBefore')} < ${today}`;
  const isSoon = sql<SqlBool>`${column('bestBefore')} between ${today} and ${addDays(today, SOON_DAYS)}`;
  const glance = await atHome
    .select([
      sumWhere(sql`true`).as('lotCount'),
      sumWhere(sql`true`, pouches).as('pouches'),
      sumWhere(sql`true`, servings).as('servings'),
      sumWhere(isPast).as('pastCount'),
      sumWhere(isSoon).as('soonCount'),
    ])
    .executeTakeFirstOrThrow();
  const soon = await atHome
    .select('lots.id')
    .where(isSoon)
    .orderBy('lots.bestBefore')
    .orderBy('lots.code')
    .limit(most)
    .execute();
  return { ...glance, soonIds: soon.map(({ id }) => id) };
}
