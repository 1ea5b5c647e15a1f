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
import { isBusy, stillWriting, storageError } from '../storage-error.ts';
import { Turns } from './turns.ts';

/**
 * How long SQLite itself waits for a lock. It waits with the whole thread, which may be the one that has to finish the
 * other transaction, so it waits briefly, and the connection tries again after letting others run.
 */
const BUSY_TIMEOUT_MS = 10;
const LONGEST_PAUSE_MS = 10;
/** Preparing takes a quarter of the time of a large import, where the same statement comes hundreds of times. */
const MOST_STATEMENTS_KEPT = 100;
/** Connections kept open for the next transactions. */
const MOST_IDLE = 4;

/** Kysely on `node:sqlite`, one file. Each transaction has a connection of its own, so that reading never waits for a change. */
export function sqliteDialect(path: string, patienceMs: number): Dialect {
  return {
    createDriver: () => new SqliteFileDriver(path, patienceMs),
    createQueryCompiler: () => new SqliteQueryCompiler(),
    createAdapter: () => new FileAdapter(),
    createIntrospector: (db) => new SqliteIntrospector(db),
  };
}

class FileAdapter extends SqliteAdapter {
  /** SQLite rolls back schema changes too, so a migration that fails in its middle leaves nothing behind. */
  override get supportsTransactionalDdl(): boolean {
    return true;
  }

  override get supportsMultipleConnections(): boolean {
    return true;
  }
}

class SqliteFileDriver implements Driver {
  readonly #path: string;
  readonly #patienceMs: number;
  readonly #idle: SqliteFileConnection[] = [];
  #isClosed = false;
  /** Those of this program that write wait here: waiting for SQLite's lock would stop the thread of the one that holds it. */
  readonly #turns: Turns;

  constructor(path: string, patienceMs: number) {
    this.#path = path;
    this.#patienceMs = patienceMs;
    this.#turns = new Turns(patienceMs, () => stillWriting(`"${path}"`));
  }

  async init(): Promise<void> {
    this.#idle.push(await this.#open());
  }

  async acquireConnection(): Promise<SqliteFileConnection> {
    return this.#idle.pop() ?? this.#open();
  }

  /** A transaction that writes takes the write lock at once, so what it read cannot change before it writes. */
  async beginTransaction(connection: SqliteFileConnection, settings: TransactionSettings): Promise<void> {
    const isReading = settings.accessMode === 'read only';
    if (!isReading) connection.endTurn = await this.#turns.take();
    await connection.executeQuery(CompiledQuery.raw(isReading ? 'begin' : 'begin immediate'));
  }

  async commitTransaction(connection: SqliteFileConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('commit'));
  }

  /** After some errors, such as a full disk, SQLite has rolled back by itself. */
  async rollbackTransaction(connection: SqliteFileConnection): Promise<void> {
    if (connection.inTransaction) await connection.executeQuery(CompiledQuery.raw('rollback'));
  }

  async releaseConnection(connection: SqliteFileConnection): Promise<void> {
    connection.endTurn?.();
    connection.endTurn = undefined;
    if (this.#isClosed || this.#idle.length >= MOST_IDLE) connection.close();
    else this.#idle.push(connection);
  }

  async destroy(): Promise<void> {
    this.#isClosed = true;
    for (const connection of this.#idle.splice(0)) connection.close();
  }

  async #open(): Promise<SqliteFileConnection> {
    const connection = new SqliteFileConnection(this.#path, this.#patienceMs);
    try {
      for (const pragma of ['journal_mode = wal', 'synchronous = full', 'foreign_keys = on'])
        await connection.executeQuery(CompiledQuery.raw(`pragma ${pragma}`));
    } catch (error) {
      connection.close();
      throw error;
    }
    return connection;
  }
}

class SqliteFileConnection implements DatabaseConnection {
  readonly #path: string;
  readonly #patienceMs: number;
  readonly #database: DatabaseSync;
  readonly #statements = new Map<string, StatementSync>();
  /** There while a transaction on it has its turn to write. */
  endTurn: (() => void) | undefined;

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
