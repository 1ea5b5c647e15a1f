import type { Selectable, Transaction } from 'kysely';
import { rowsOf } from '../database/copy-database.ts';
import { reading, type Database } from '../database/open-database.ts';
import type { KeptTable, RecordKind, Tables } from '../database/tables.ts';
import { digestOf } from '../digest.ts';
import { ledgerBalances } from '../ledger.ts';

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

  const places = await ledgerBalances(trx).execute();
  const byLot = new Map(places.map(({ lotId, ...place }) => [lotId, place]));
  for await (const lot of eachOf(trx, 'lots'))
    add('lots', lot.code, lot.code, told(lot, 'id', 'version'), byLot.get(lot.id));
  for await (const { id, name, trip, finishedAt, afterwards } of eachOf(trx, 'trips'))
    if (trip !== null) add('trips', id, name, trip, finishedAt, afterwards);
  for await (const { id, kind, name, body } of eachOf(trx, 'records'))
    add(KIND_OF_RECORDS[kind], id, name, body);
  for await (const note of eachOf(trx, 'trailNotes'))
    add('notes', note.id, `${note.code}, ${note.at.slice(0, 10)}`, told(note, 'seq'));
  for await (const entry of eachOf(trx, 'ledger')) add('entries', digestOf(told(entry)), '');
  const settings: unknown[] = [];
  for await (const part of eachOf(trx, 'settings')) settings.push(told(part));

  const sum = (of: (place: (typeof places)[number]) => number) =>
    places.reduce((all, place) => all + of(place), 0);
  return {
    things,
    pouches: {
      atHome: sum(({ onShelf, setAside }) => onShelf + setAside),
      packed: sum(({ packed }) => packed),
    },
    settings: digestOf(settings),
  };
}

async function* eachOf<Name extends KeptTable>(
  trx: Transaction<Tables>,
  name: Name,
): AsyncGenerator<Selectable<Tables[Name]>> {
  for await (const part of rowsOf(trx, name)) yield* part as unknown as Selectable<Tables[Name]>[];
}

/** What a row says, but for some columns. They stand in the order in which they came to the database, which differs, so they are sorted by name. */
function told<Row extends object>(row: Row, ...except: (keyof Row)[]): unknown[] {
  return Object.keys(row)
    .sort()
    .filter((column) => !except.includes(column as keyof Row))
    .map((column) => row[column as keyof Row]);
}
