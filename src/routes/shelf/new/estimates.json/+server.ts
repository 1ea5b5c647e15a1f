import { json } from '@sveltejs/kit';
import { FormReader } from '$lib/forms/read-form.ts';
import { estimatesOf, readRows } from '../quick-entry.ts';
import type { RequestHandler } from './$types';

/** What the rows that are filled in come to so far. */
export const POST: RequestHandler = async ({ request, locals: { app } }) => {
  const shown = await app.settings.get();
  const read = new FormReader(await request.formData(), shown.unitSystem);
  return json(estimatesOf(await readRows(app, read, shown), read.system));
};
