import { completeLot, type KnownToHousehold } from '../planning/model/complete-lot.ts';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { openCsv } from './csv-records.ts';
import { guessMapping } from './guess-mapping.ts';
import { mappingProblems, sameForAllRows, type Mapping } from './mapping.ts';
import { RowReader, type ReadRow, type RowProblem } from './read-row.ts';
import { findHead } from './table-head.ts';
import { UnreadableFile, type ByteSource } from './text-encoding.ts';
import { say } from '../texts/say.ts';

export type ShelfCsv = {
  readonly lots: PouchLot[];
  /** Rows that are not lots as they stand: what they say cannot be true, or something is missing. */
  readonly refused: readonly Extract<ReadRow, { problems: unknown }>[];
  readonly warnings: readonly (RowProblem & { readonly row: number })[];
  readonly mapping: Mapping;
  /** What was taken for every row because the file has no column for it: "Steep time: 15 min". */
  readonly taken: readonly string[];
};

/**
 * Reads a whole shelf from a CSV file into memory.
 *
 * @param input its bytes, or a stream of them
 * @param settings `currency` is that of the shelf; `known` is what is estimated from where the file says nothing; without a `mapping`, one is guessed from the header and the first rows
 * @throws UnreadableFile when it is no CSV file, or when columns are missing that no guess can fill
 */
export async function readShelfCsv(
  input: Uint8Array | AsyncIterable<Uint8Array>,
  {
    currency,
    mapping,
    known,
  }: { readonly currency: string; readonly mapping?: Mapping; readonly known: KnownToHousehold },
): Promise<ShelfCsv> {
  const source = await rewindable(input);
  const file = await openCsv(source, findHead);
  const used = mapping ?? guessMapping(file);
  const problems = mappingProblems(used);
  if (problems.length > 0)
    throw new UnreadableFile(
      say('The columns of this file do not make a shelf: {problems}. Its columns are: {columns}.', {
        problems: problems.map(({ message }) => message).join('; '),
        columns: file.header.join(', '),
      }),
    );

  const reader = new RowReader({
    mapping: used,
    currency,
    damaged: file.form.damaged,
    title: file.title,
    shelf: new Map(),
  });
  const lots: PouchLot[] = [];
  const refused: Extract<ReadRow, { problems: unknown }>[] = [];
  const warnings: (RowProblem & { row: number })[] = [];
  for await (const batch of file.records())
    for (const record of batch) {
      const read = reader.read(record);
      if (read.status === 'skipped') continue;
      if (read.status === 'lot') lots.push(completeLot(read.lot, known));
      else refused.push(read);
      for (const warning of read.warnings) warnings.push({ row: read.row, ...warning });
    }
  return { lots, refused, warnings, mapping: used, taken: sameForAllRows(used) };
}

async function rewindable(input: Uint8Array | AsyncIterable<Uint8Array>): Promise<ByteSource> {
  const pieces: Uint8Array[] = [];
  if (input instanceof Uint8Array) pieces.push(input);
  else for await (const piece of input) pieces.push(piece);
  return async function* () {
    yield* pieces;
  };
}
