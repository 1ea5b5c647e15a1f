/** SQLite takes at most 32766 values in one statement (sqlite.org/limits.html); a lot has 23 columns. */
const ROWS_PER_STATEMENT = 200;

/** Cuts rows into parts that fit into one statement each. */
export function* inParts<Row>(rows: readonly Row[]): Generator<Row[]> {
  for (let start = 0; start < rows.length; start += ROWS_PER_STATEMENT)
    yield rows.slice(start, start + ROWS_PER_STATEMENT);
}
