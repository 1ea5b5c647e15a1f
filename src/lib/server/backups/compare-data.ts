import { createHash } from 'node:crypto';
import type { Transaction } from 'kysely';
import { reading, type Database } from '../database/open-database.ts';
import type { RecordKind, Tables } from '../database/tables.ts';
import { held } from '../ledger.ts';

export const COUNTED = ['lots', 'trips', 'recipes', 'batches', 'foods', 'notes', 'entries'] as const;
export type CountedKind = (typeof COUNTED)[number];

/** Some of many, by name. */
export type Named = { readonly count: number; readonly names: readonly string[] };

/** What two states of the data have of one kind. Entries of the ledger never change, and have no names. */
export type ComparedKind = {
  readonly kind: CountedKind;
  readonly now: number;
  readonly then: number;
  readonly onlyNow: Named;
  readonly onlyThen: Named;
  readonly changed: Named;
};

export type Comparison = {
  readonly kinds: readonly ComparedKind[];
  /** Pouches at home, set aside or not, and in packs. */
  readonly pouches: { readonly now: Pouches; readonly then: Pouches };
  /** Whether the settings, or the equipment, or what was learned from trips differ. */
  readonly settingsDiffer: boolean;
};
export type Pouches = { readonly atHome: number; readonly packed: number };

const MOST_NAMED = 20;
const KIND_OF_RECORDS: Readonly<Record<RecordKind, CountedKind>> = {
  recipe: 'recipes',
  batch: 'batches',
  food: 'foods',
};

/** What tells one thing from another, with its name and a digest of what it says. */
type Things = Map<string, { readonly name: string; readonly digest: string }>;
type State = {
  readonly things: Readonly<Record<CountedKind, Things>>;
  readonly pouches: Pouches;
  readonly settings: string;
};

/** What would change if the data were as they were then. */
export async function compareData(now: Database, then: Database): Promise<Comparison> {
  const [present, past] = (await Promise.all([now, then].map((db) => reading(db, stateOf)))) as [
    State,
    State,
  ];
  return {
    kinds: COUNTED.map((kind) => compareKind(kind, present.things[kind], past.things[kind])),
    pouches: { now: present.pouches, then: past.pouches },
    settingsDiffer: present.settings !== past.settings,
  };
}

function compareKind(kind: CountedKind, now: Things, then: Things): ComparedKind {
  const without = (one: Things, other: Things) => [...one].filter(([key]) => !other.has(key));
  return {
    kind,
    now: now.size,
    then: then.size,
    onlyNow: named(without(now, then)),
    onlyThen: named(without(then, now)),
    changed: named([...now].filter(([key, { digest }]) => (then.get(key)?.digest ?? digest) !== digest)),
  };
}

const named = (things: readonly (readonly [string, { readonly name: string }])[]): Named => ({
  count: things.length,
  names: things
    .map(([, { name }]) => name)
    .filter(Boolean)
    .sort()
    .slice(0, MOST_NAMED),
});

async function stateOf(trx: Transaction<Tables>): Promise<State> {
  const things = Object.fromEntries(COUNTED.map((kind) => [kind, new Map()])) as unknown as State['things'];
  const add = (kind: CountedKind, key: string, name: string, ...says: unknown[]) =>
    things[kind].set(key, { name, digest: digestOf(says) });

  const lots = await trx
    .selectFrom('lots')
    .leftJoin('ledger', 'ledger.lotId', 'lots.id')
    .selectAll('lots')
    .select([held('shelf').as('onShelf'), held('set-aside').as('setAside'), held('packed').as('packed')])
    .groupBy('lots.id')
    .execute();
  for (const { id: _id, version: _version, ...lot } of lots) add('lots', lot.code, lot.code, sorted(lot));

  const trips = await trx.selectFrom('trips').selectAll().where('trip', 'is not', null).execute();
  for (const { id, name, trip, finishedAt, afterwards } of trips)
    add('trips', id, name, trip, finishedAt, afterwards);

  const records = await trx.selectFrom('records').selectAll().execute();
  for (const { id, kind, name, body } of records) add(KIND_OF_RECORDS[kind], id, name, body);

  const notes = await trx.selectFrom('trailNotes').selectAll().execute();
  for (const { seq: _seq, ...note } of notes)
    add('notes', note.id, `${note.code}, ${note.at.slice(0, 10)}`, sorted(note));

  const entries = await trx.selectFrom('ledger').selectAll().execute();
  for (const entry of entries) add('entries', digestOf(sorted(entry)), '');

  const settings = await trx.selectFrom('settings').selectAll().orderBy('id').execute();
  return {
    things,
    pouches: {
      atHome: lots.reduce((sum, { onShelf, setAside }) => sum + onShelf + setAside, 0),
      packed: lots.reduce((sum, { packed }) => sum + packed, 0),
    },
    settings: digestOf(settings.map(sorted)),
  };
}

/** The columns of a row stand in the order in which they came to the database. */
const sorted = (row: object) => Object.entries(row).sort(([one], [other]) => (one < other ? -1 : 1));

const digestOf = (value: unknown): string =>
  createHash('sha256').update(JSON.stringify(value)).digest('base64');
