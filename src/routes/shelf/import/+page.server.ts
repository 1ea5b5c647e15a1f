import { fail, redirect } from '@sveltejs/kit';
import { toFailure } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';
import { MAX_UPLOAD_BYTES, takeUpload, tooLarge } from './uploads.ts';

/** What a form adds around the file in it. */
const FORM_BYTES = 1_000_000;

export const load: PageServerLoad = () => ({ maxBytes: MAX_UPLOAD_BYTES, tooLarge: tooLarge() });

const refusal = (message: string, text = '') => ({ message, text });

export const actions: Actions = {
  /** For browsers without script; with script the file is streamed to `upload`. */
  file: async ({ request, locals: { app }, setHeaders }) => {
    // Looked at before the body is read, so that a huge file is never held in memory.
    if (Number(request.headers.get('content-length')) > MAX_UPLOAD_BYTES + FORM_BYTES)
      return fail(413, refusal(tooLarge()));
    const file = (await request.formData()).get('file');
    if (!(file instanceof File) || file.name === '')
      return fail(422, refusal(say('No file was chosen. Choose a CSV file first.')));
    let address: string;
    try {
      address = await takeUpload(app, file.name, file.stream());
    } catch (caught) {
      return toFailure({ setHeaders }, caught, (message) => refusal(message));
    }
    redirect(303, address);
  },

  paste: async ({ request, locals: { app }, setHeaders }) => {
    const text = (await request.formData()).get('text');
    if (typeof text !== 'string' || text.trim() === '')
      return fail(422, refusal(say('Nothing was pasted. Paste a table with its header row first.')));
    let address: string;
    try {
      address = await takeUpload(app, 'pasted table', new Blob([text]).stream());
    } catch (caught) {
      return toFailure({ setHeaders }, caught, (message) => refusal(message, text));
    }
    redirect(303, address);
  },
};
