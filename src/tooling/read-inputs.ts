import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { buffer } from 'node:stream/consumers';
import type { z } from 'zod';
import { parseJson } from '../lib/parse-json.ts';
import type { Stock } from '../lib/planning/model/pouch-lot.ts';
import { problemsOf } from '../lib/planning/model/problems.ts';
import { readShelfCsv, type ShelfCsv } from '../lib/shelf-csv/read-shelf-csv.ts';
import { UnreadableFile } from '../lib/shelf-csv/text-encoding.ts';

export const STDIN = '-';

/** An input that cannot be used. The message is for the user: which file, where in it, and what is wrong. */
export class BadInput extends Error {
  override name = 'BadInput';
}

/** npm runs its scripts in the project's folder; the user means the folder they are in. */
const resolved = (file: string): string => path.resolve(process.env['INIT_CWD'] ?? '.', file);
const nameOf = (file: string): string => (file === STDIN ? 'standard input' : file);

function unreadable(file: string, error: unknown): BadInput {
  const code = (error as NodeJS.ErrnoException).code;
  const reason =
    code === 'ENOENT'
      ? 'there is no such file'
      : code === 'EISDIR'
        ? 'this is a folder, not a file'
        : code === 'EACCES'
          ? 'it may not be read; check its permissions'
          : String(error);
  return new BadInput(`${nameOf(file)}: ${reason}`);
}

async function readText(file: string): Promise<string> {
  const bytes = await (file === STDIN ? buffer(process.stdin) : readFile(resolved(file))).catch(
    (error: unknown) => {
      throw unreadable(file, error);
    },
  );
  if (bytes.length === 0) throw new BadInput(`${nameOf(file)}: the file is empty; a JSON object is needed`);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new BadInput(`${nameOf(file)}: this is no text in UTF-8, so it cannot be JSON`);
  }
}

/**
 * Reads a JSON file and checks it against its schema.
 *
 * @param file its path, or `-` for standard input
 * @throws BadInput naming the line of a fault in the JSON, or every field that is wrong
 */
export async function readJson<Schema extends z.ZodType>(
  file: string,
  schema: Schema,
): Promise<z.infer<Schema>> {
  const json = parseJson(await readText(file));
  if ('fault' in json) throw new BadInput(`${nameOf(file)}: this is no valid JSON: ${json.fault}`);
  const checked = schema.safeParse(json.value, { reportInput: true });
  if (checked.success) return checked.data;
  const lines = problemsOf(checked.error).map(({ field, message }) => `  ${field}: ${message}`);
  throw new BadInput([`${nameOf(file)}:`, ...lines].join('\n'));
}

/**
 * Reads a shelf from a CSV file.
 *
 * @param file its path, or `-` for standard input
 * @param currency ISO 4217 code in which costs are counted
 * @param skipRefused leave out rows that cannot be taken in, instead of failing
 * @returns the lots, and what the user has to know about rows that were left out or look odd
 * @throws BadInput when the file is no shelf, or naming each refused row with its column, value and reason
 */
export async function readStock(
  file: string,
  currency: string,
  skipRefused: boolean,
): Promise<{ readonly stock: Stock; readonly remarks: readonly string[] }> {
  let shelf: ShelfCsv;
  try {
    shelf = await readShelfCsv(file === STDIN ? process.stdin : createReadStream(resolved(file)), {
      currency,
    });
  } catch (error) {
    throw error instanceof UnreadableFile
      ? new BadInput(`${nameOf(file)}: ${error.message}`)
      : unreadable(file, error);
  }
  const { lots, refused, warnings, taken } = shelf;
  const refusals = refused.flatMap(({ row, problems }) => problems.map((problem) => rowRemark(row, problem)));
  if (refused.length > 0 && !skipRefused)
    throw new BadInput(
      [
        `${nameOf(file)}: ${refused.length} of ${refused.length + lots.length} rows cannot be taken in:`,
        ...refusals,
        'Mend them, or plan without them with --skip-refused.',
      ].join('\n'),
    );
  const remarks = [
    ...heading(`${nameOf(file)}: left out:`, refusals),
    ...heading(
      `${nameOf(file)}: worth a second look:`,
      warnings.map((warning) => rowRemark(warning.row, warning)),
    ),
    ...heading(
      `${nameOf(file)}: taken for every row, as the file has no column for it:`,
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
