import { setTimeout as sleep } from 'node:timers/promises';
import { DatabaseSync, type SQLInputValue, type StatementSync } from 'node:sqlite';
import {
  CompiledQuery,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
  type DatabaseConnection,
  type Dialect,
  type Driver,
  type QueryResult,
  type TransactionSettings,
} from 'kysely';
import { isBusy, storageError } from '../storage-error.ts';

/**
 * How long SQLite itself waits for a lock. It waits with the whole thread, which may be the one that has to finish the
 * other transaction, so it waits briefly, and the connection tries again after letting others run.
 */
const BUSY_TIMEOUT_MS = 10;
const LONGEST_PAUSE_MS = 10;
/** Preparing takes a quarter of the time of a large import, where the same statement comes hundreds of times. */
const MOST_STATEMENTS_KEPT = 100;

/** Kysely on `node:sqlite`, one file, one connection. */
export function sqliteDialect(path: string, patienceMs: number): Dialect {
  return {
    createDriver: () => new SqliteFileDriver(path, patienceMs),
    createQueryCompiler: () => new SqliteQueryCompiler(),
    createAdapter: () => new TransactionalDdlAdapter(),
    createIntrospector: (db) => new SqliteIntrospector(db),
  };
}

/** SQLite rolls back schema changes too, so a migration that fails in its middle leaves nothing behind. */
class TransactionalDdlAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

class SqliteFileDriver implements Driver {
  readonly #path: string;
  readonly #patienceMs: number;
  #connection: SqliteFileConnection | undefined;

  constructor(path: string, patienceMs: number) {
    this.#path = path;
    this.#patienceMs = patienceMs;
  }

  async init(): Promise<void> {
    const connection = new SqliteFileConnection(this.#path, this.#patienceMs);
    try {
      for (const pragma of ['journal_mode = wal', 'synchronous = full', 'foreign_keys = on'])
        await connection.executeQuery(CompiledQuery.raw(`pragma ${pragma}`));
    } catch (error) {
      connection.close();
      throw error;
    }
    this.#connection = connection;
  }

  async acquireConnection(): Promise<DatabaseConnection> {
    if (!this.#connection) throw new Error('the driver has not been initialised');
    return this.#connection;
  }

  /** A transaction that writes takes the write lock at once, so what it read cannot change before it writes. */
  async beginTransaction(connection: DatabaseConnection, { accessMode }: TransactionSettings): Promise<void> {
    await connection.executeQuery(
      CompiledQuery.raw(accessMode === 'read only' ? 'begin' : 'begin immediate'),
    );
  }

  async commitTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('commit'));
  }

  /** After some errors, such as a full disk, SQLite has rolled back by itself. */
  async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#connection?.inTransaction) await connection.executeQuery(CompiledQuery.raw('rollback'));
  }

  async releaseConnection(): Promise<void> {}

  async destroy(): Promise<void> {
    this.#connection?.close();
  }
}

class SqliteFileConnection implements DatabaseConnection {
  readonly #path: string;
  readonly #patienceMs: number;
  readonly #database: DatabaseSync;
  readonly #statements = new Map<string, StatementSync>();

  constructor(path: string, patienceMs: number) {
    this.#path = path;
    this.#patienceMs = patienceMs;
    try {
      this.#database = new DatabaseSync(path, { timeout: BUSY_TIMEOUT_MS });
    } catch (error) {
      throw storageError(error, path);
    }
  }

  get inTransaction(): boolean {
    return this.#database.isTransaction;
  }

  async executeQuery<Row>(query: CompiledQuery): Promise<QueryResult<Row>> {
    const giveUpAt = performance.now() + this.#patienceMs;
    for (;;) {
      try {
        return this.#run<Row>(query);
      } catch (error) {
        if (!isBusy(error) || performance.now() >= giveUpAt) throw storageError(error, this.#path);
        await sleep(1 + Math.random() * LONGEST_PAUSE_MS);
      }
    }
  }

  #run<Row>({ sql, parameters }: CompiledQuery): QueryResult<Row> {
    const statement = this.#prepared(sql);
    const values = parameters as readonly SQLInputValue[];
    if (statement.columns().length > 0) return { rows: statement.all(...values) as Row[] };
    const { changes, lastInsertRowid } = statement.run(...values);
    return { rows: [], numAffectedRows: BigInt(changes), insertId: BigInt(lastInsertRowid) };
  }

  #prepared(sql: string): StatementSync {
    const known = this.#statements.get(sql);
    if (known) return known;
    if (this.#statements.size >= MOST_STATEMENTS_KEPT) this.#statements.clear();
    const statement = this.#database.prepare(sql);
    this.#statements.set(sql, statement);
    return statement;
  }

  async *streamQuery<Row>({ sql, parameters }: CompiledQuery): AsyncIterableIterator<QueryResult<Row>> {
    const rows = this.#database.prepare(sql).iterate(...(parameters as readonly SQLInputValue[]));
    for (const row of rows) yield { rows: [row as Row] };
  }

  close(): void {
    this.#database.close();
  }
}
