import { writeFoodsCsv } from '$lib/foods/write-foods-csv.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { csvResponse } from '$lib/shelf-csv/csv-response.ts';
import type { RequestHandler } from './$types';

/** The user's own table, as the import reads it back. */
export const GET: RequestHandler = async ({ locals: { app } }) => {
  const foods = await app.kitchen.foods.list().catch(toHttpError);
  return csvResponse([writeFoodsCsv(foods.map(({ value }) => value))], `foods-${app.today()}.csv`);
};
