import { randomUUID } from 'node:crypto';
import type { Transaction } from 'kysely';
import type { z } from 'zod';
import { reading, writing, type Database } from './database/open-database.ts';
import type { RecordKind, Tables } from './database/tables.ts';
import { throwIntoBin } from './bin.ts';
import { UserError } from './errors.ts';
import { parseStored } from './stored-json.ts';
import { say } from '../texts/say.ts';

export type Stored<Value> = {
  readonly id: string;
  readonly version: number;
  readonly value: Value;
  /** Instant, ISO 8601. */
  readonly updatedAt: string;
};

/** What tells one kind of record from another: its schema, its unique name, and the word for it. */
export type Kind<Schema extends z.ZodType> = {
  readonly kind: RecordKind;
  readonly schema: Schema;
  nameOf(value: z.output<Schema>): string;
};

/** Records of one kind, each checked by its schema, with a version that every change asks for and raises. */
export class Records<Schema extends z.ZodType> {
  readonly #db: Database;
  readonly #now: () => string;
  readonly #kind: Kind<Schema>;

  constructor(db: Database, now: () => string, kind: Kind<Schema>) {
    this.#db = db;
    this.#now = now;
    this.#kind = kind;
  }

  /** All of them by name. */
  async list(): Promise<Stored<z.output<Schema>>[]> {
    const rows = await reading(this.#db, (trx) => this.#rows(trx).orderBy('name').execute());
    return rows.map((row) => this.#stored(row));
  }

  async get(id: string): Promise<Stored<z.output<Schema>> | undefined> {
    const row = await reading(this.#db, (trx) => this.#rows(trx).where('id', '=', id).executeTakeFirst());
    return row && this.#stored(row);
  }

  /** @throws UserError `Conflict` where the name is taken */
  create(value: z.output<Schema>): Promise<Stored<z.output<Schema>>> {
    const id = randomUUID();
    return writing(this.#db, async (trx) => {
      await this.#refuseTakenName(trx, value, id);
      await trx
        .insertInto('records')
        .values({ id, kind: this.#kind.kind, version: 1, ...this.#fields(value) })
        .execute();
      return this.#take(trx, id);
    });
  }

  /**
   * @param version the version that the change was made on
   * @param also what has to happen in the same change; it is given the record as it was
   * @throws UserError `NotFound`, `StaleVersion`, `Conflict` where the name is taken
   */
  update(
    id: string,
    value: z.output<Schema>,
    version: number,
    also: (
      trx: Transaction<Tables>,
      at: string,
      before: Stored<z.output<Schema>>,
    ) => Promise<void> = async () => {},
  ): Promise<Stored<z.output<Schema>>> {
    return writing(this.#db, async (trx) => {
      const before = await this.#take(trx, id, version);
      await this.#refuseTakenName(trx, value, id);
      const fields = this.#fields(value);
      await trx
        .updateTable('records')
        .set({ version: version + 1, ...fields })
        .where('id', '=', id)
        .execute();
      await also(trx, fields.updatedAt, before);
      return this.#take(trx, id);
    });
  }

  /**
   * The same, and what it was before goes into the bin, so that the change can be undone.
   *
   * @returns the id in the bin
   * @throws as `update`
   */
  async updateUndoably(id: string, value: z.output<Schema>, version: number): Promise<string> {
    let binId = '';
    await this.update(id, value, version, async (trx, at, before) => {
      binId = await throwIntoBin(trx, at, this.#thrown(before, version + 1));
    });
    return binId;
  }

  /**
   * Deletes into the bin.
   *
   * @returns the id in the bin
   * @throws UserError `NotFound`, `StaleVersion`
   */
  delete(id: string, version: number): Promise<string> {
    return writing(this.#db, async (trx) => {
      const stored = await this.#take(trx, id, version);
      await trx.deleteFrom('records').where('id', '=', id).execute();
      return throwIntoBin(trx, this.#now(), this.#thrown(stored, version));
    });
  }

  /** Takes all in at once, all or none; what has the name of one that is there replaces it. */
  async putAll(values: readonly z.output<Schema>[]): Promise<{ added: number; replaced: number }> {
    return writing(this.#db, async (trx) => {
      const known = new Map((await this.#rows(trx).execute()).map((row) => [row.name, row]));
      let added = 0;
      for (const value of values) {
        const fields = this.#fields(value);
        const stored = known.get(fields.name);
        if (stored) {
          await trx
            .updateTable('records')
            .set((eb) => ({ ...fields, version: eb('version', '+', 1) }))
            .where('id', '=', stored.id)
            .execute();
          continue;
        }
        const row = { id: randomUUID(), kind: this.#kind.kind, version: 1, ...fields };
        await trx.insertInto('records').values(row).execute();
        known.set(fields.name, row);
        added += 1;
      }
      return { added, replaced: values.length - added };
    });
  }

  #rows(trx: Transaction<Tables>) {
    return trx.selectFrom('records').selectAll().where('kind', '=', this.#kind.kind);
  }

  async #take(trx: Transaction<Tables>, id: string, version?: number): Promise<Stored<z.output<Schema>>> {
    const row = await this.#rows(trx).where('id', '=', id).executeTakeFirst();
    const { kind } = this.#kind;
    if (!row)
      throw new UserError(
        'NotFound',
        say(
          'There is no such {kind, select, recipe {recipe} batch {batch} other {food}} any more. Was it deleted elsewhere?',
          { kind },
        ),
      );
    if (version !== undefined && row.version !== version)
      throw new UserError(
        'StaleVersion',
        say(
          'The {kind, select, recipe {recipe} batch {batch} other {food}} "{name}" was changed elsewhere while this page was open, so nothing was saved. Open it in another window, compare, and make your change again.',
          { kind, name: row.name },
        ),
      );
    return this.#stored(row);
  }

  #fields(value: z.output<Schema>) {
    const checked = this.#kind.schema.parse(value);
    return { name: this.#kind.nameOf(checked), body: JSON.stringify(checked), updatedAt: this.#now() };
  }

  #thrown({ id, value }: Stored<z.output<Schema>>, version: number) {
    const { name, body } = this.#fields(value);
    return { kind: this.#kind.kind, recordId: id, name, body, version };
  }

  #stored(row: Tables['records']): Stored<z.output<Schema>> {
    const { kind, schema } = this.#kind;
    return {
      id: row.id,
      version: row.version,
      updatedAt: row.updatedAt,
      value: parseStored(schema, row.body, () =>
        say('The {kind, select, recipe {recipe} batch {batch} other {food}} "{name}"', {
          kind,
          name: row.name,
        }),
      ),
    };
  }

  async #refuseTakenName(trx: Transaction<Tables>, value: z.output<Schema>, id: string): Promise<void> {
    const name = this.#kind.nameOf(value);
    const other = await this.#rows(trx).where('name', '=', name).where('id', '<>', id).executeTakeFirst();
    if (other)
      throw new UserError(
        'Conflict',
        say(
          'There is another {kind, select, recipe {recipe} batch {batch} other {food}} called "{name}". Choose another name, or open that one and change it.',
          { kind: this.#kind.kind, name },
        ),
      );
  }
}
