import { randomUUID } from 'node:crypto';
import { setTimeout as sleep } from 'node:timers/promises';
import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { columnTroubles, headerSignature, mappingProblems, sameForAllRows } from '$lib/shelf-csv/mapping.ts';
import { PREVIEW_FILTERS } from '$lib/shelf-csv/preview-import.ts';
import { UnreadableFile } from '$lib/shelf-csv/text-encoding.ts';
import { UserError } from '$lib/server/errors.ts';
import { toFailure, toHttpError } from '$lib/server/to-http-error.ts';
import type { Actions, PageServerLoad } from './$types';
import { importUpload, readUpload, shownProgress } from '../import-work.ts';
import { questionsOf, readAnswers, readRepairs } from './repair-forms.ts';
import { openUpload } from '../uploads.ts';
import { mappingFields, readMapping } from './mapping-form.ts';
import { previewRow } from './preview-rows.ts';
import { importReasons } from '$lib/reasons/lot.ts';

const PAGE_SIZE = 50;
const SAMPLES_SHOWN = 4;
/** What is read within this time is shown at once. */
const SHORT_MS = 300;

export const load: PageServerLoad = async ({ params, url, isDataRequest, locals: { app } }) => {
  const opened = await openUpload(app, params.id).catch(toHttpError);
  const { upload, file, mapping, settled } = opened;
  const shown = await app.settings.get().catch(toHttpError);
  const about = {
    fileName: upload.fileName,
    encoding: file.form.encoding,
    damaged: file.form.damaged,
    delimiter: file.delimiter,
  };

  const importing = app.imports.work.running(params.id);
  if (importing) return { ...about, step: 'importing' as const, progress: shownProgress(importing) };

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
      reasons: importReasons(),
      sampleRows: file.sample.length,
    };
  }

  const filter = PREVIEW_FILTERS.find((known) => known === url.searchParams.get('show')) ?? 'all';
  const page = Math.max(1, Math.floor(Number(url.searchParams.get('page'))) || 1);
  const window = { show: filter, from: (page - 1) * PAGE_SIZE, size: PAGE_SIZE };
  const reading = randomUUID();
  const preview = readUpload(app, opened, window, reading).then(
    (read) => {
      if (read === 'stopped') return { outcome: 'stopped' as const };
      const { counts, rows, seen, known } = read;
      return {
        outcome: 'read' as const,
        counts,
        seen,
        questions: questionsOf(file, mapping),
        otherSheets: file.otherSheets ?? [],
        filter,
        page,
        pageCount: Math.max(1, Math.ceil(counts[filter] / PAGE_SIZE)),
        rows: rows.map((row) => previewRow(row, mapping, shown, known)),
        leftOut: mapping.columns
          .filter(({ field, header }) => field === null && header !== '')
          .map(({ header }) => header),
        sameForAll: sameForAllRows(mapping),
      };
    },
    (caught: unknown) => {
      if (!(caught instanceof UnreadableFile)) return toHttpError(caught);
      return { outcome: 'broken' as const, message: caught.message };
    },
  );
  // Only a page that runs scripts asks for its data alone; it shows how far the reading is. A short file needs no such thing.
  const shownLater =
    isDataRequest && !(await Promise.race([preview.then(() => true), sleep(SHORT_MS, false)]));
  return { ...about, step: 'preview' as const, reading, preview: shownLater ? preview : await preview };
};

const refusal = (message: string): Partial<RefusedForm> => ({ problems: [{ field: '', message }] });

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

  import: async ({ request, params, cookies, locals: { app }, setHeaders }) => {
    const seen = (await request.formData()).get('seen');
    try {
      if ((await importUpload(app, params.id, seen)) === 'stopped') return { stopped: true };
    } catch (caught) {
      if (caught instanceof UserError && caught.code !== 'NotFound')
        return toFailure({ setHeaders }, caught, refusal);
      if (caught instanceof UnreadableFile) return fail(422, refusal(caught.message));
      return toHttpError(caught);
    }
    sayDone(cookies, 'shelf-imported');
    redirect(303, '/shelf');
  },

  /** Answers what concerns whole columns. */
  answer: async ({ request, params, locals: { app } }) => {
    const { file, mapping } = await openUpload(app, params.id).catch(toHttpError);
    const read = new FormReader(await request.formData(), 'metric');
    const answered = readAnswers(read, mapping);
    if (!answered || read.problems.length > 0) return fail<Partial<RefusedForm>>(422, read.refused());
    await app.imports.rememberMapping(headerSignature(file.header), answered).catch(toHttpError);
    redirect(303, `/shelf/import/${params.id}`);
  },

  /** Puts cells right, alone or wherever their column says the same. */
  repair: async ({ request, params, url, locals: { app } }) => {
    const { file, mapping } = await openUpload(app, params.id).catch(toHttpError);
    const form = await request.formData();
    // The way the columns are read now belongs to what is put right.
    await app.imports.rememberMapping(headerSignature(file.header), mapping).catch(toHttpError);
    await app.imports.repair(params.id, readRepairs(form)).catch(toHttpError);
    const { searchParams } = url;
    const query = new URLSearchParams([...searchParams].filter(([name]) => !name.startsWith('/')));
    redirect(303, `/shelf/import/${params.id}${query.size > 0 ? `?${query}` : ''}`);
  },

  stop: async ({ request, params, locals: { app } }) => {
    const of = (await request.formData()).get('of');
    app.imports.work.stop(typeof of === 'string' ? of : params.id);
  },

  cancel: async ({ params, locals: { app } }) => {
    // What still reads or writes the file has to end before it goes.
    await app.imports.work.end(params.id);
    await app.imports.removeUpload(params.id).catch(toHttpError);
    redirect(303, '/shelf/import');
  },
};
