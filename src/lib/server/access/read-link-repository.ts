import { randomUUID } from 'node:crypto';
import { z } from 'zod';
import { wrong } from '../../planning/model/faults.ts';
import { writing, type Database } from '../database/open-database.ts';
import type { ReadScope } from './read-scope.ts';
import { hashOf, newToken } from './token.ts';

const DAY_MS = 86_400_000;
/** So long an expired link stays in the list. */
const SHOWN_AFTER_DAYS = 30;

const FROM_A_DAY_TO_A_YEAR = wrong('not-whole-within', { least: 1, most: 365 });

/** What is asked for when a link is given out. */
export const ReadLinkOrder = z.strictObject({
  forWhom: z
    .string(wrong('not-filled-in'))
    .trim()
    .min(1, wrong('not-filled-in'))
    .max(100, wrong('too-long', { most: 100 })),
  tripId: z.string().optional(),
  mayNote: z.boolean(),
  days: z
    .number(FROM_A_DAY_TO_A_YEAR)
    .int(FROM_A_DAY_TO_A_YEAR)
    .min(1, FROM_A_DAY_TO_A_YEAR)
    .max(365, FROM_A_DAY_TO_A_YEAR),
});
export type ReadLinkOrder = z.output<typeof ReadLinkOrder>;

/** A link that was given out. */
export type ReadLink = ReadScope & {
  readonly id: string;
  readonly forWhom: string;
  /** Of its trip, a deleted one too. */
  readonly tripName: string | undefined;
  /** Instants, ISO 8601. */
  readonly givenAt: string;
  readonly expiresAt: string;
};

/** Links that open one trip, or the shelf, for reading until they expire. Of each token only the hash is stored. */
export class ReadLinkRepository {
  readonly #db: Database;
  readonly #now: () => string;

  constructor(db: Database, now: () => string) {
    this.#db = db;
    this.#now = now;
  }

  /** @returns the token of the new link; it is stored nowhere */
  async give({ forWhom, tripId, mayNote, days }: ReadLinkOrder): Promise<string> {
    const token = newToken();
    const givenAt = this.#now();
    await writing(this.#db, async (trx) => {
      await trx.deleteFrom('readLinks').where('expiresAt', '<', this.#in(-SHOWN_AFTER_DAYS)).execute();
      await trx
        .insertInto('readLinks')
        .values({
          id: randomUUID(),
          tokenHash: hashOf(token),
          forWhom,
          tripId: tripId ?? null,
          mayNote: mayNote && tripId !== undefined ? 1 : 0,
          givenAt,
          expiresAt: this.#in(days),
        })
        .execute();
    });
    return token;
  }

  /** @returns the link that a token belongs to, until it expires or is revoked */
  async find(token: string): Promise<ReadLink | undefined> {
    const row = await this.#rows()
      .where('tokenHash', '=', hashOf(token))
      .where('expiresAt', '>', this.#now())
      .executeTakeFirst();
    return row && readLink(row);
  }

  /** Those that work, and those that expired lately; the last given comes first. */
  async list(): Promise<ReadLink[]> {
    const rows = await this.#rows()
      .where('expiresAt', '>=', this.#in(-SHOWN_AFTER_DAYS))
      .orderBy('givenAt', 'desc')
      .orderBy('readLinks.id')
      .execute();
    return rows.map(readLink);
  }

  /** From now on it opens nothing. */
  async revoke(id: string): Promise<void> {
    await this.#db.deleteFrom('readLinks').where('id', '=', id).execute();
  }

  #rows() {
    return this.#db
      .selectFrom('readLinks')
      .leftJoin('trips', 'trips.id', 'readLinks.tripId')
      .select(['readLinks.id', 'forWhom', 'tripId', 'trips.name', 'mayNote', 'givenAt', 'expiresAt']);
  }

  #in(days: number): string {
    return new Date(Date.parse(this.#now()) + days * DAY_MS).toISOString();
  }
}

type Row = {
  id: string;
  forWhom: string;
  tripId: string | null;
  name: string | null;
  mayNote: number;
  givenAt: string;
  expiresAt: string;
};

const readLink = ({ name, tripId, mayNote, ...row }: Row): ReadLink => ({
  ...row,
  tripId: tripId ?? undefined,
  tripName: name ?? undefined,
  mayNote: mayNote === 1,
});
