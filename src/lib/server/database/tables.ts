import type { Generated } from 'kysely';
import type { LotKeys } from '../../lot-keys.ts';
import type { LotDetails, PouchLot } from '../../planning/model/pouch-lot.ts';
import type { TrailNote } from '../../planning/model/trail-note.ts';
import type { MediaType } from '../../photos/strip-picture.ts';
import type { EntryKind, Place } from '../../ledger-kinds.ts';

export type RecordKind = 'recipe' | 'batch' | 'food';

type StoredAsJson = 'mealKinds' | 'allergens' | 'diets';
/** Each field of a lot in a column of its name: lists as JSON, what is left out as null, its details as one JSON object; and what it is found and sorted by. The count is in the ledger. */
export type LotFields = {
  [
    Field in Exclude<keyof PouchLot, 'pouches' | StoredAsJson | keyof LotDetails>
  ]-?: undefined extends PouchLot[Field] ? Exclude<PouchLot[Field], undefined> | null : PouchLot[Field];
} & { mealKinds: string; allergens: string | null; diets: string; details: string | null } & LotKeys;

export type Tables = {
  /** `batchId`: the batch that the lot was sealed from, where it is known. */
  lots: LotFields & { id: Generated<number>; version: number; batchId: string | null };
  ledger: {
    id: Generated<number>;
    at: string;
    kind: EntryKind;
    lotId: number;
    tripId: string | null;
    fromPlace: Place;
    toPlace: Place;
    pouches: number;
    note: string;
  };
  /**
   * What the entries of the ledger have left of each lot in each place. A trigger of the database adds every entry that is written to it; a lot
   * without entries has no row.
   */
  balances: { lotId: number; onShelf: number; setAside: number; packed: number };
  /**
   * A deleted trip keeps its row for the ledger, with its name and nothing else. `finishedAt`: the instant at which it was
   * declared over; `afterwards`: what was said then, as JSON.
   */
  trips: {
    id: string;
    name: string;
    trip: string | null;
    version: number;
    updatedAt: string;
    finishedAt: string | null;
    afterwards: string | null;
  };
  /** What was noted on the trail, in the order of arrival. A conflict stays one; `settledAt` and `remark` say that somebody dealt with it. */
  trailNotes: {
    seq: Generated<number>;
    id: string;
    tripId: string;
    at: string;
    kind: TrailNote['kind'];
    code: string;
    pouches: number;
    servings: number | null;
    paidMinor: number | null;
    text: string;
    outcome: 'entered' | 'conflict';
    message: string;
    settledAt: string | null;
    remark: string;
  };
  settings: { id: string; settings: string };
  /** Recipes, batches and foods of the kitchen, each as JSON; the name is the one that is unique among its kind. */
  records: { id: string; kind: RecordKind; name: string; body: string; version: number; updatedAt: string };
  /** What was deleted, lots that were withdrawn, and what trips were before a change, for a while. `version`: the one that the deletion or change left behind. */
  bin: {
    id: string;
    kind: RecordKind | 'trip' | 'trip change' | 'lot';
    recordId: string;
    name: string;
    body: string;
    version: number;
    at: string;
  };
  /** One picture each of recipes and lots; `id`: "recipe" and the id of its record, or "lot" and the id of its row. Text, so that every kind of copy takes it. */
  photos: {
    id: string;
    mediaType: MediaType;
    width: number;
    height: number;
    base64: string;
    keptAt: string;
  };
  /**
   * Searches for menus that wait or run. `id` begins with the mark of the process that asked; `tripId` is null for a trip that is not stored yet; `waitedAt` and `beatAt`: the last sign of life of who asked, and of
   * who claimed it; `isStopped`: 1 where it shall end with the best so far; `asked`, `progress` and `outcome` as JSON.
   */
  planJobs: {
    id: string;
    kind: 'search' | 'compare';
    tripId: string | null;
    asked: string;
    askedAt: string;
    waitedAt: string;
    state: 'waiting' | 'running' | 'done';
    claimedBy: string | null;
    beatAt: string | null;
    progress: string | null;
    isStopped: number;
    outcome: string | null;
  };
  /** `repairs`: what was corrected in its rows, as JSON. */
  uploads: { id: string; fileName: string; bytes: number; keptAt: string; repairs: string | null };
  mappings: { headerSignature: string; mapping: string };
  /** Devices that are signed in, each with the passphrase that it was signed in with. Of a token only the hash is stored, here and below. */
  sessions: { tokenHash: string; passphraseId: string; startedAt: string; lastSeenAt: string };
  /** Links given out for reading one trip, or the shelf where there is no `tripId`. `mayNote`: 1 where they take notes of the trail. */
  readLinks: {
    id: string;
    tokenHash: string;
    forWhom: string;
    tripId: string | null;
    mayNote: number;
    givenAt: string;
    expiresAt: string;
  };
};

/** Every table of what is kept, with its primary key, each table after those that it refers to. Balances come of themselves with the ledger. */
export const TABLE_KEYS = {
  lots: 'id',
  trips: 'id',
  ledger: 'id',
  trailNotes: 'seq',
  settings: 'id',
  records: 'id',
  bin: 'id',
  photos: 'id',
  uploads: 'id',
  mappings: 'headerSignature',
  sessions: 'tokenHash',
  readLinks: 'id',
} as const satisfies Record<Exclude<keyof Tables, 'planJobs' | 'balances'>, string>;
export type KeptTable = keyof typeof TABLE_KEYS;
