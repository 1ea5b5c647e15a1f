import { say, sayPercent } from '$lib/texts/say.ts';
import { createHash } from 'node:crypto';
import { completeLot, type KnownToHousehold } from '$lib/planning/model/complete-lot.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { headerSignature } from '$lib/shelf-csv/mapping.ts';
import {
  judgeRows,
  previewImport,
  type ImportContext,
  type ImportPreview,
  type JudgedRow,
} from '$lib/shelf-csv/preview-import.ts';
import type { App } from '$lib/server/app.ts';
import { UserError } from '$lib/server/errors.ts';
import type { ImportProgress } from '$lib/server/import-repository.ts';
import type { Piece } from '$lib/server/running-work.ts';
import { importContext, openUpload, type OpenUpload } from './uploads.ts';

const BEGUN: ImportProgress = { phase: 'read', rows: 0, share: 0 };

/** A page of the preview, with a fingerprint of all that the import would do, and what its estimates rest on. */
export type SeenPreview = ImportPreview & { readonly seen: string; readonly known: KnownToHousehold };

/**
 * Reads an upload for a page of its preview.
 *
 * @param key of its own, under which its progress is asked for and it can be stopped
 * @returns `stopped` where it was
 * @throws UnreadableFile
 */
export const readUpload = (
  app: App,
  opened: OpenUpload,
  window: Parameters<typeof previewImport>[1],
  key: string,
): Promise<SeenPreview | 'stopped'> =>
  app.imports.work.run(key, BEGUN, (piece) =>
    unlessStopped(piece, async () => {
      const context = await importContext(app, opened.mapping);
      const fingerprint = new Fingerprint();
      const preview = await previewImport(fingerprint.of(judgedRows(context, opened, piece)), window);
      return { ...preview, seen: fingerprint.digest(), known: context.known };
    }),
  );

/**
 * Imports an upload, all of it or nothing; once, however often it is asked for at the same time.
 *
 * @param seen fingerprint of what the person saw that the import would do
 * @returns `stopped` where it was; the upload and its mapping are then kept
 * @throws UserError `NotFound` where it is gone, `StaleVersion` where the shelf has changed since; UnreadableFile
 */
export const importUpload = (app: App, id: string, seen: unknown): Promise<'done' | 'stopped'> =>
  app.imports.work.run(id, BEGUN, (piece) =>
    unlessStopped(piece, async () => {
      const opened = await openUpload(app, id);
      const { upload, file, mapping } = opened;
      const lots: PouchLot[] = [];
      const context = await importContext(app, mapping);
      const fingerprint = new Fingerprint();
      for await (const rows of fingerprint.of(judgedRows(context, opened, piece)))
        for (const row of rows)
          if (row.fate === 'new' || row.fate === 'changed')
            lots.push(completeLot(row.lot, context.known, context.shelf.get(row.lot.code)));
      if (seen !== fingerprint.digest())
        throw new UserError(
          'StaleVersion',
          say(
            'Nothing was imported: the shelf changed while this page was open. Check the rows again, then import.',
          ),
        );
      await app.imports.rememberMapping(headerSignature(file.header), mapping);
      const progress = (rows: number) => (piece.told = { phase: 'write', rows, of: lots.length });
      progress(0);
      await app.imports.importUpload(upload, lots, { signal: piece.stop.signal, progress });
      return 'done' as const;
    }),
  );

/** Tells whether an import would do what was seen before: every row, what becomes of it, and what it is compared with. */
class Fingerprint {
  readonly #hash = createHash('sha256');

  async *of(judged: AsyncIterable<readonly JudgedRow[]>): AsyncGenerator<readonly JudgedRow[]> {
    for await (const rows of judged) {
      for (const row of rows) {
        const { fate } = row;
        const does = fate === 'changed' ? [row.lot, row.before] : fate === 'new' ? [row.lot] : [];
        this.#hash.update(JSON.stringify([row.row, fate, ...does]));
      }
      yield rows;
    }
  }

  digest(): string {
    return this.#hash.digest('base64url');
  }
}

async function* judgedRows(
  context: ImportContext,
  { file, readShare }: OpenUpload,
  piece: Piece<ImportProgress>,
): AsyncGenerator<readonly JudgedRow[]> {
  let count = 0;
  for await (const rows of judgeRows(file, context)) {
    piece.stop.signal.throwIfAborted();
    yield rows;
    count += rows.length;
    piece.told = { phase: 'read', rows: count, share: readShare() };
  }
  piece.stop.signal.throwIfAborted();
}

async function unlessStopped<T>(
  { stop: { signal } }: Piece<ImportProgress>,
  work: () => Promise<T>,
): Promise<T | 'stopped'> {
  try {
    return await work();
  } catch (caught) {
    if (!signal.aborted || caught !== signal.reason) throw caught;
    return 'stopped';
  }
}

/** @returns how far it is, in words and as a share */
export function shownProgress(told: ImportProgress): { readonly words: string; readonly done: number } {
  return told.phase === 'read'
    ? {
        words: say('Reading: {rows, plural, one {# row} other {# rows}} so far, {percent} of the file.', {
          rows: told.rows,
          percent: sayPercent(Math.floor(told.share * 100) / 100),
        }),
        done: told.share,
      }
    : {
        words: say('Writing: {rows, number} of {of, plural, one {# pouch lot} other {# pouch lots}}.', {
          rows: told.rows,
          of: told.of,
        }),
        done: told.rows / told.of,
      };
}
