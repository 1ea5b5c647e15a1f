import { csvResponse } from '$lib/shelf-csv/csv-response.ts';
import { shelfCsv } from '$lib/shelf-csv/write-shelf-csv.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import type { RequestHandler } from './$types';

/** The whole shelf, as the import reads it back. */
export const GET: RequestHandler = async ({ locals: { app } }) => {
  const [lots, { currency }] = await Promise.all([app.shelf.listLots(), app.settings.get()]).catch(
    toHttpError,
  );
  return csvResponse(shelfCsv(lots, currency), `shelf-${app.today()}.csv`);
};
