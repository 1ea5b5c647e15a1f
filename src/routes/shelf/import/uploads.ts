import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { CsvFile } from '$lib/shelf-csv/csv-records.ts';
import { guessMapping } from '$lib/shelf-csv/guess-mapping.ts';
import {
  headerSignature,
  isExportHeader,
  mappingProblems,
  rememberedMapping,
  type Mapping,
} from '$lib/shelf-csv/mapping.ts';
import type { ImportContext } from '$lib/shelf-csv/preview-import.ts';
import { repaired } from '$lib/shelf-csv/repairs.ts';
import { UnreadableFile } from '$lib/shelf-csv/text-encoding.ts';
import { knownToHousehold } from '$lib/server/known-to-household.ts';
import { openTable } from '$lib/workbook/open-table.ts';
import type { KnownToHousehold } from '$lib/planning/model/complete-lot.ts';
import type { App } from '$lib/server/app.ts';
import { UserError } from '$lib/server/errors.ts';
import { say } from '$lib/texts/say.ts';
import { uploadIsGone, type Upload } from '$lib/server/import-repository.ts';
import { openStaged } from '$lib/server/staged.ts';

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
 * Keeps an upload for its import, as it comes in, and then its rows instead of it.
 *
 * @returns the address where the import goes on
 * @throws UserError where it is too large or no table; nothing is kept then
 */
export async function takeUpload(
  { imports, apart }: App,
  fileName: string,
  stream: AsyncIterable<Uint8Array>,
): Promise<string> {
  await imports.removeOldUploads(KEPT_DAYS);
  const { id } = await imports.keepUpload(fileName, stream, MAX_UPLOAD_BYTES);
  try {
    const upload = await imports.upload(id);
    if (upload) await apart.do({ kind: 'table', source: upload });
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
  const { file: read, readShare } = await open(upload);
  const file = repaired(read, upload.repairs);
  const remembered = rememberedMapping(file.header, await imports.mappingFor(headerSignature(file.header)));
  const mapping = remembered ?? guessMapping(file);
  const settled =
    (remembered !== undefined || isExportHeader(file.header)) && mappingProblems(mapping).length === 0;
  return { upload, file, mapping, readShare, settled };
}

/** What the rows of an upload are judged against, and estimated from. */
export async function importContext(
  app: App,
  mapping: Mapping,
): Promise<ImportContext & { readonly known: KnownToHousehold }> {
  const [lots, { currency }] = await Promise.all([app.shelf.lotsByCode(), app.settings.get()]);
  return { mapping, currency, shelf: lots, known: await knownToHousehold(app, lots.values()) };
}

async function open({ path }: Upload): Promise<Pick<OpenUpload, 'file' | 'readShare'>> {
  const { size } = await stat(path).catch(() => {
    throw uploadIsGone();
  });
  let bytesRead = 0;
  // A file that an earlier version kept is still what was uploaded.
  const file =
    (await openStaged(path, (bytes) => (bytesRead = bytes))) ??
    (await openTable(() => createReadStream(path)));
  return { file, readShare: () => Math.min(1, bytesRead / Math.max(1, size)) };
}
