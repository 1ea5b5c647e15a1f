import { once } from 'node:events';
import { createReadStream, createWriteStream } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { z } from 'zod';
import type { CsvFile, CsvRecord } from '../shelf-csv/csv-records.ts';

/*
 * An upload is parsed once, when it comes in: its rows are kept as lines of JSON below one that says what they are. What follows, the columns, the
 * preview and the import, reads those, whatever kind of file it was.
 */

const ROWS_AT_ONCE = 1000;
/** The first line begins with it; a file that was kept by an earlier version is still what was uploaded. */
const MARK = '{"staged":1,';

const Row = z.strictObject({ row: z.number(), cells: z.array(z.string()), fault: z.string().optional() });
const Head = z.strictObject({
  staged: z.literal(1),
  form: z.strictObject({
    encoding: z.enum(['utf-8', 'utf-16le', 'utf-16be', 'windows-1252']),
    damaged: z.boolean(),
  }),
  delimiter: z.enum([',', ';', '\t']),
  forms: z.strictObject({ decimalComma: z.boolean().optional(), decimalPoint: z.boolean().optional() }),
  otherSheets: z.array(z.string()).optional(),
  header: z.array(z.string()),
  titleRows: z.array(z.number()),
  title: z.string(),
  sample: z.array(Row),
});

/** Keeps the rows of a table in the place of the file that it was read from. */
export async function stage(path: string, file: CsvFile): Promise<void> {
  const { records, ...head } = file;
  const unfinished = `${path}.unfinished`;
  const output = createWriteStream(unfinished);
  const write = async (text: string): Promise<void> => {
    if (!output.write(text)) await once(output, 'drain');
  };
  try {
    await write(`${JSON.stringify({ staged: 1, ...head })}\n`);
    for await (const batch of records())
      await write(batch.map((record) => `${JSON.stringify(record)}\n`).join(''));
    output.end();
    await once(output, 'finish');
    await rename(unfinished, path);
  } catch (error) {
    output.destroy();
    await rm(unfinished, { force: true });
    throw error;
  }
}

/**
 * Opens staged rows.
 *
 * @param readBytes is told how much was read of the file since its rows were last asked for
 * @returns `undefined` where the file is not staged
 */
export async function openStaged(
  path: string,
  readBytes: (bytes: number) => void,
): Promise<CsvFile | undefined> {
  let first: string | undefined;
  for await (const line of lines(path, () => undefined)) {
    first = line;
    break;
  }
  if (!first?.startsWith(MARK)) return undefined;
  const { staged: _, ...head } = Head.parse(JSON.parse(first));
  return {
    ...(head as Omit<CsvFile, 'records'>),
    async *records() {
      let isHead = true;
      let batch: CsvRecord[] = [];
      for await (const line of lines(path, readBytes)) {
        // What is kept here was written by the program itself, and every row is looked at by its reader.
        if (!isHead) batch.push(JSON.parse(line) as CsvRecord);
        isHead = false;
        if (batch.length === ROWS_AT_ONCE) {
          yield batch;
          batch = [];
        }
      }
      if (batch.length > 0) yield batch;
    },
  };
}

async function* lines(path: string, readBytes: (bytes: number) => void): AsyncGenerator<string> {
  const input = createReadStream(path);
  const reader = createInterface({ input, crlfDelay: Infinity });
  try {
    for await (const line of reader) {
      readBytes(input.bytesRead);
      yield line;
    }
  } finally {
    reader.close();
    input.destroy();
  }
}
