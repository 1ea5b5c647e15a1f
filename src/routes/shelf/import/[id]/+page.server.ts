import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { columnTroubles, headerSignature, mappingProblems, sameForAllRows } from '$lib/shelf-csv/mapping.ts';
import {
  judgeRows,
  PREVIEW_FILTERS,
  previewImport,
  type ImportPreview,
  type PreviewFilter,
} from '$lib/shelf-csv/preview-import.ts';
import { UnreadableFile } from '$lib/shelf-csv/text-encoding.ts';
import { UserError } from '$lib/server/errors.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import type { Actions, PageServerLoad } from './$types';
import { importContext, openUpload } from '../uploads.ts';
import { mappingFields, readMapping } from './mapping-form.ts';
import { previewRow } from './preview-rows.ts';

const PAGE_SIZE = 50;
const SAMPLES_SHOWN = 4;

export const load: PageServerLoad = async ({ params, url, locals: { app } }) => {
  const { upload, file, mapping, settled } = await openUpload(app, params.id).catch(toHttpError);
  const shown = await app.settings.get().catch(toHttpError);
  const about = {
    fileName: upload.fileName,
    encoding: file.form.encoding,
    damaged: file.form.damaged,
    delimiter: file.delimiter,
  };

  if (!settled || url.searchParams.get('step') === 'columns') {
    const troubles = columnTroubles(file, mapping, shown.currency);
    const columns = file.header.map((header, index) => {
      const cells = new Set(
        file.sample.map(({ cells }) => cells[index]?.trim() ?? '').filter((cell) => cell !== ''),
      );
      return { header, samples: [...cells].slice(0, SAMPLES_SHOWN), trouble: troubles[index] };
    });
    return {
      ...about,
      step: 'columns' as const,
      columns,
      fields: mappingFields(mapping),
      sampleRows: file.sample.length,
    };
  }

  const filter = PREVIEW_FILTERS.find((known) => known === url.searchParams.get('show')) ?? 'all';
  const page = Math.max(1, Math.floor(Number(url.searchParams.get('page'))) || 1);
  const context = await importContext(app, mapping).catch(toHttpError);
  const window = { show: filter, from: (page - 1) * PAGE_SIZE, size: PAGE_SIZE };
  try {
    const { counts, rows } = await previewImport(judgeRows(file, context), window);
    return {
      ...about,
      step: 'preview' as const,
      counts,
      seen: seenCounts(counts),
      filter,
      page,
      pageCount: Math.max(1, Math.ceil(counts[filter] / PAGE_SIZE)),
      rows: rows.map((row) => previewRow(row, mapping, shown)),
      leftOut: mapping.columns
        .filter(({ field, header }) => field === null && header !== '')
        .map(({ header }) => header),
      sameForAll: sameForAllRows(mapping),
    };
  } catch (caught) {
    if (!(caught instanceof UnreadableFile)) throw caught;
    return { ...about, step: 'broken' as const, message: caught.message };
  }
};

/** What was seen before the button was pressed; when the shelf has changed since, the person looks again. */
const seenCounts = (counts: ImportPreview['counts']): string =>
  (['new', 'changed', 'unchanged', 'refused'] satisfies PreviewFilter[])
    .map((fate) => counts[fate])
    .join('/');

const refuse = (status: number, message: string) =>
  fail<Partial<RefusedForm>>(status, { problems: [{ field: '', message }] });

export const actions: Actions = {
  map: async ({ request, params, locals: { app } }) => {
    const { file } = await openUpload(app, params.id).catch(toHttpError);
    const read = new FormReader(await request.formData(), 'metric');
    const mapping = readMapping(read, file.header);
    if (mapping) read.add(mappingProblems(mapping));
    if (!mapping || read.problems.length > 0) return fail<Partial<RefusedForm>>(422, read.refused());
    await app.imports.rememberMapping(headerSignature(file.header), mapping).catch(toHttpError);
    redirect(303, `/shelf/import/${params.id}`);
  },

  import: async ({ request, params, cookies, locals: { app } }) => {
    const { upload, file, mapping } = await openUpload(app, params.id).catch(toHttpError);
    const seen = (await request.formData()).get('seen');
    try {
      const lots: PouchLot[] = [];
      const { counts } = await previewImport(
        (async function* () {
          for await (const rows of judgeRows(file, await importContext(app, mapping))) {
            for (const row of rows) if (row.fate === 'new' || row.fate === 'changed') lots.push(row.lot);
            yield rows;
          }
        })(),
        { show: 'all', from: 0, size: 0 },
      );
      if (seen !== seenCounts(counts))
        return refuse(
          409,
          'Nothing was imported yet: the shelf has changed since this page was opened. Look at the rows again, then import.',
        );
      await app.shelf.importLots(lots, `from "${upload.fileName}"`);
    } catch (caught) {
      if (caught instanceof UserError) return refuse(caught.status, caught.message);
      if (caught instanceof UnreadableFile) return refuse(422, caught.message);
      throw caught;
    }
    await app.imports.rememberMapping(headerSignature(file.header), mapping).catch(toHttpError);
    await app.imports.removeUpload(upload.id).catch(toHttpError);
    sayDone(cookies, 'shelf-imported');
    redirect(303, '/shelf');
  },

  cancel: async ({ params, locals: { app } }) => {
    await app.imports.removeUpload(params.id).catch(toHttpError);
    redirect(303, '/shelf/import');
  },
};
