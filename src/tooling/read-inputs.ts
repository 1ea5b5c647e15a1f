import { createReadStream } from 'node:fs';
import path from 'node:path';
import type { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import type { z } from 'zod';
import type { Stock } from '../lib/planning/model/pouch-lot.ts';
import { readJsonFile } from '../lib/read-json-file.ts';
import { readShelfCsv, type ShelfCsv } from '../lib/shelf-csv/read-shelf-csv.ts';
import { UnreadableFile } from '../lib/shelf-csv/text-encoding.ts';

/** An input that cannot be used. The message is for the user: which file, where in it, and what is wrong. */
export class BadInput extends Error {
  override name = 'BadInput';
}

/** Something to read, by the name the user gave it. */
export type Source = { readonly name: string; open(): Readable };

/** npm runs its scripts in the project's folder; the user means the folder they are in. */
export const fileSource = (file: string): Source => ({
  name: file,
  open: () => createReadStream(path.resolve(process.env['INIT_CWD'] ?? '.', file)),
});

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'this is a folder, not a file',
  EACCES: 'it may not be read; check its permissions',
};

function unreadable({ name }: Source, error: unknown): BadInput {
  const { code = '' } = error as NodeJS.ErrnoException;
  return new BadInput(`${name}: ${REASONS[code] ?? String(error)}`);
}

/** @throws BadInput where there is nothing to read */
export async function readBytes(source: Source): Promise<Uint8Array> {
  return buffer(source.open()).catch((error: unknown) => {
    throw unreadable(source, error);
  });
}

/**
 * Reads a JSON file and checks it against its schema.
 *
 * @throws BadInput naming the line of a fault in the JSON, or every field that is wrong
 */
export async function readJson<Schema extends z.ZodType>(
  source: Source,
  schema: Schema,
): Promise<z.infer<Schema>> {
  const bytes = await readBytes(source);
  const read = readJsonFile(bytes, schema);
  if ('value' in read) return read.value;
  if ('fault' in read) throw new BadInput(`${source.name}: ${read.fault}`);
  const lines = read.problems.map(({ field, message }) => `  ${field}: ${message}`);
  throw new BadInput([`${source.name}:`, ...lines].join('\n'));
}

/**
 * Reads a shelf from a CSV file.
 *
 * @param currency ISO 4217 code in which costs are counted
 * @param skipRefused leave out rows that cannot be taken in, instead of failing
 * @returns the lots, and what the user has to know about rows that were left out or look odd
 * @throws BadInput when the file is no shelf, or naming each refused row with its column, value and reason
 */
export async function readStock(
  source: Source,
  currency: string,
  skipRefused: boolean,
): Promise<{ readonly stock: Stock; readonly remarks: readonly string[] }> {
  let shelf: ShelfCsv;
  try {
    shelf = await readShelfCsv(source.open(), { currency });
  } catch (error) {
    throw error instanceof UnreadableFile
      ? new BadInput(`${source.name}: ${error.message}`)
      : unreadable(source, error);
  }
  const { lots, refused, warnings, taken } = shelf;
  const refusals = refused.flatMap(({ row, problems }) => problems.map((problem) => rowRemark(row, problem)));
  if (refused.length > 0 && !skipRefused)
    throw new BadInput(
      [
        `${source.name}: ${refused.length} of ${refused.length + lots.length} rows cannot be taken in:`,
        ...refusals,
        'Mend them, or plan without them with --skip-refused.',
      ].join('\n'),
    );
  const remarks = [
    ...heading(`${source.name}: left out:`, refusals),
    ...heading(
      `${source.name}: worth a second look:`,
      warnings.map((warning) => rowRemark(warning.row, warning)),
    ),
    ...heading(
      `${source.name}: taken for every row, as the file has no column for it:`,
      taken.map((text) => `  ${text}`),
    ),
  ];
  return { stock: lots, remarks };
}

const heading = (title: string, lines: readonly string[]): string[] =>
  lines.length > 0 ? [title, ...lines] : [];

function rowRemark(
  row: number,
  { column, field, value, reason }: ShelfCsv['refused'][number]['problems'][number],
): string {
  const cell = [column || field, value && `"${value}"`].filter(Boolean).join(' ');
  return `  row ${row}${cell && `, ${cell}`}: ${reason}`;
}
