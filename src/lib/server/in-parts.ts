import { setImmediate } from 'node:timers/promises';

/** For whoever waits for something long: hears how many rows are done, and can stop it. */
export type Watch = { readonly signal: AbortSignal; progress(rows: number): void };

/** SQLite takes at most 32766 values in one statement (sqlite.org/limits.html); a lot has 23 columns. */
const ROWS_PER_STATEMENT = 200;

/**
 * Cuts rows into parts that fit into one statement each. Between parts, other requests are answered.
 *
 * @throws the signal's reason once it is aborted, at the latest after the last part
 */
export async function* inParts<Row>(rows: readonly Row[], watch?: Watch): AsyncGenerator<Row[]> {
  for (let start = 0; start < rows.length; start += ROWS_PER_STATEMENT) {
    if (start > 0) await setImmediate();
    watch?.signal.throwIfAborted();
    const part = rows.slice(start, start + ROWS_PER_STATEMENT);
    yield part;
    watch?.progress(start + part.length);
  }
  watch?.signal.throwIfAborted();
}
