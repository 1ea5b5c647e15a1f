import { csvResponse } from '$lib/shelf-csv/csv-response.ts';
import { judgeRows } from '$lib/shelf-csv/preview-import.ts';
import { refusedHeaderCsv, refusedRowsCsv } from '$lib/shelf-csv/write-shelf-csv.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import type { RequestHandler } from './$types';
import { importContext, openUpload } from '../../uploads.ts';

/** The refused rows of an upload with their reasons, to be mended and imported again. */
export const GET: RequestHandler = async ({ params, locals: { app } }) => {
  const { upload, file, mapping } = await openUpload(app, params.id).catch(toHttpError);
  const context = await importContext(app, mapping).catch(toHttpError);
  async function* pieces() {
    yield refusedHeaderCsv(file.header);
    for await (const rows of judgeRows(file, context)) {
      const refused = rows.filter((row) => row.fate === 'refused' || row.fate === 'question');
      if (refused.length > 0) yield refusedRowsCsv(file.header, refused);
    }
  }
  const name = upload.fileName.replace(/\.[a-z]+$/i, '').replace(/[^\p{L}\p{N}._-]+/gu, '-');
  return csvResponse(pieces(), `${name}-refused.csv`);
};
