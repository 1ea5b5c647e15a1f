import { createReadStream } from 'node:fs';
import { fail, redirect } from '@sveltejs/kit';
import { toFailure, toHttpError } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';
import { MAX_UPLOAD_BYTES, takeUpload, tooLarge } from './uploads.ts';

export const load: PageServerLoad = () => ({ maxBytes: MAX_UPLOAD_BYTES, tooLarge: tooLarge() });

const refusal = (message: string, text = '') => ({ message, text });

export const actions: Actions = {
  /** For browsers without script; with script the file is streamed to `upload`. */
  file: ({ request, locals: { app }, setHeaders }) =>
    app.incoming
      .form(request, MAX_UPLOAD_BYTES, async ({ file }) => {
        if (!file) return fail(422, refusal(say('No file was chosen. Choose a CSV file first.')));
        if (file.bytes > MAX_UPLOAD_BYTES) return fail(413, refusal(tooLarge()));
        let address: string;
        try {
          address = await takeUpload(app, file.name, createReadStream(file.path));
        } catch (caught) {
          return toFailure({ setHeaders }, caught, (message) => refusal(message));
        }
        redirect(303, address);
      })
      .catch(toHttpError),

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
