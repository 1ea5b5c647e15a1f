import { createReadStream } from 'node:fs';
import { openCsv, type CsvFile } from '$lib/shelf-csv/csv-records.ts';
import {
  guessMapping,
  headerSignature,
  isExportHeader,
  mappingProblems,
  rememberedMapping,
  type Mapping,
} from '$lib/shelf-csv/mapping.ts';
import type { ImportContext } from '$lib/shelf-csv/preview-import.ts';
import { UnreadableFile } from '$lib/shelf-csv/text-encoding.ts';
import type { App } from '$lib/server/app.ts';
import { UserError } from '$lib/server/errors.ts';
import { say } from '$lib/texts/say.ts';
import { uploadIsGone, type Upload } from '$lib/server/import-repository.ts';

/** The largest file that is taken. */
export const MAX_UPLOAD_BYTES = 64_000_000;
export const tooLarge = (): string =>
  say(
    'The file is larger than {most} MB, the most that is taken at once. Is it the right file? A longer list can be imported in parts.',
    { most: MAX_UPLOAD_BYTES / 1_000_000 },
  );
/** Uploads that nobody imported are kept for so long. */
const KEPT_DAYS = 7;

/**
 * Keeps an upload for its import, as it comes in.
 *
 * @returns the address where the import goes on
 * @throws UserError where it is too large or no CSV file; nothing is kept then
 */
export async function takeUpload(
  { imports }: App,
  fileName: string,
  stream: AsyncIterable<Uint8Array>,
): Promise<string> {
  await imports.removeOldUploads(KEPT_DAYS);
  const { id } = await imports.keepUpload(fileName, stream, MAX_UPLOAD_BYTES);
  try {
    const upload = await imports.upload(id);
    if (upload) await open(upload);
  } catch (caught) {
    await imports.removeUpload(id);
    throw caught instanceof UnreadableFile ? new UserError('Refused', caught.message) : caught;
  }
  return `/shelf/import/${id}`;
}

export type OpenUpload = {
  readonly upload: Upload;
  readonly file: CsvFile;
  readonly mapping: Mapping;
  /** @returns how much of the file has been read since its rows were last asked for, 0 to 1 */
  readShare(): number;
  /** The columns need no second look: they are those of an export, or were looked at before. */
  readonly settled: boolean;
};

/**
 * Opens an upload with the mapping of its columns: as it was chosen before for this header, else as guessed.
 *
 * @throws UserError `NotFound` where it is gone
 */
export async function openUpload({ imports }: App, id: string): Promise<OpenUpload> {
  const upload = await imports.upload(id);
  if (!upload) throw uploadIsGone();
  const { file, readShare } = await open(upload);
  const remembered = rememberedMapping(file.header, await imports.mappingFor(headerSignature(file.header)));
  const mapping = remembered ?? guessMapping(file);
  const settled =
    (remembered !== undefined || isExportHeader(file.header)) && mappingProblems(mapping).length === 0;
  return { upload, file, mapping, readShare, settled };
}

/** What the rows of an upload are judged against. */
export async function importContext({ shelf, settings }: App, mapping: Mapping): Promise<ImportContext> {
  const [lots, { currency }] = await Promise.all([shelf.lotsByCode(), settings.get()]);
  return { mapping, currency, shelf: lots };
}

async function open({ path, bytes }: Upload): Promise<Pick<OpenUpload, 'file' | 'readShare'>> {
  let bytesRead = 0;
  const file = await openCsv(async function* () {
    bytesRead = 0;
    for await (const piece of createReadStream(path)) {
      bytesRead += (piece as Buffer).byteLength;
      yield piece as Buffer;
    }
  });
  return { file, readShare: () => bytesRead / bytes };
}
