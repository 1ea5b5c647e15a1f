import { error, type Handle, type HandleServerError } from '@sveltejs/kit';
import { app, closeApp } from '$lib/server/app';
import { UserError } from '$lib/server/errors';
import { READING_HEADER } from '$lib/server/reading';
import { toHttpError } from '$lib/server/to-http-error';

export const handle: Handle = async ({ event, resolve }) => {
  event.locals.readsOnly = event.request.headers.has(READING_HEADER);
  if (event.locals.readsOnly && !['GET', 'HEAD'].includes(event.request.method))
    error(403, 'From this address, pages can be read and nothing else.');
  event.locals.app = await app().catch(toHttpError);
  return resolve(event);
};

/** What went wrong is for the log alone; the user reads what they can do about it. */
export const handleError: HandleServerError = ({ error, event, status, message }) => {
  if (status === 404) return { message: `There is no page at ${event.url.pathname}.` };
  if (status < 500) return { message };
  console.error(`${new Date().toISOString()} ${event.request.method} ${event.url.pathname}`, error);
  if (error instanceof UserError) return { message: error.message };
  return { message: 'The server failed at this request. What was stored before is untouched.' };
};

// Closing folds the write-ahead log into the one file of the shelf.
if (!import.meta.env.DEV) process.once('sveltekit:shutdown', () => void closeApp());
