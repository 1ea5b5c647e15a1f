import { readFileSync, writeFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';

/** Flips one bit of a text where it stands in an index of a SQLite file that nobody has open, as a disk may do. The table keeps it as it was. */
export function flipInIndex(path: string, index: string, text: string): void {
  const database = new DatabaseSync(path);
  database.exec('pragma wal_checkpoint(truncate)');
  const root = Number(
    database.prepare('select rootpage from sqlite_master where name = ?').get(index)?.['rootpage'],
  );
  const pageSize = Number(database.prepare('pragma page_size').get()?.['page_size']);
  database.close();
  const bytes = readFileSync(path);
  const at = bytes.indexOf(text, (root - 1) * pageSize);
  if (at < 0 || at >= root * pageSize)
    throw new Error(`"${text}" does not stand on the first page of ${index}`);
  bytes[at]! ^= 1;
  writeFileSync(path, bytes);
}

/** The index that SQLite makes for the codes of lots, which are unique. */
export const INDEX_OF_CODES = 'sqlite_autoindex_lots_1';
