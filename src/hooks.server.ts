import { isHttpError, isRedirect, type Handle, type HandleServerError } from '@sveltejs/kit';
import { admit, isFromHere } from '$lib/server/access/admit';
import { app, closeApp } from '$lib/server/app';
import { askedBy } from '$lib/server/asker';
import { UserError } from '$lib/server/errors';
import { LANGUAGE_COOKIE, languageOf, speaking } from '$lib/server/language-of-request';
import { limitBody, rememberForm, takeRest, tooLarge } from '$lib/server/limit-body';
import { logged } from '$lib/server/log';
import { toHttpError } from '$lib/server/to-http-error';
import { say } from '$lib/texts/say';

/** Answers even where the data cannot be opened, and whoever asks. */
const ALWAYS_ANSWERS = '/healthz';

export const handle: Handle = (input) => {
  const { request, route } = input.event;
  return logged(
    { method: request.method, route: route.id },
    () => answer(input).finally(() => takeRest(input.event.request)),
    statusOf,
  );
};

const statusOf = (thrown: unknown): number =>
  isRedirect(thrown) || isHttpError(thrown) ? thrown.status : 500;

async function answer({ event, resolve }: Parameters<Handle>[0]): Promise<Response> {
  if (event.route.id === ALWAYS_ANSWERS) return resolve(event);
  const language = languageOf(event.request, event.cookies.get(LANGUAGE_COOKIE));
  return speaking(language, async () => {
    event.locals.app = await app().catch(toHttpError);
    await admit(event).catch(toHttpError);
    const isOwnerHere = !event.locals.readsOnly && isFromHere(event);
    event.request = rememberForm(limitBody(event.request, event.route.id, event.url.search), event.locals);
    const response = await askedBy(event.platform?.req.socket, isOwnerHere, async () =>
      resolve(event, {
        transformPageChunk: ({ html }) => html.replace('<html lang="en">', `<html lang="${language}">`),
      }),
    );
    return withStatus(response, event.locals.failed);
  });
}

/** What was thrown for the user has a status of its own, wherever it was thrown: busy is no failure of the server. */
function withStatus(response: Response, failed: UserError | undefined): Response {
  if (response.status !== 500 || !failed) return response;
  const { headers, body } = response;
  return new Response(body, { headers, status: failed.status });
}

/** What went wrong is for the log alone; the user reads what they can do about it. */
export const handleError: HandleServerError = (failure) =>
  speaking(languageOf(failure.event.request, failure.event.cookies.get(LANGUAGE_COOKIE)), () =>
    inWords(failure),
  );

function inWords({ error, event, status, message }: Parameters<HandleServerError>[0]): App.Error {
  if (status === 404) return { message: say('There is no page at {path}.', { path: event.url.pathname }) };
  if (status === 413)
    return { message: tooLarge(Number.parseInt(process.env['BODY_SIZE_LIMIT'] ?? '', 10) * 1e6) };
  if (status < 500) return { message };
  if (error instanceof UserError) {
    event.locals.failed = error;
    if (error.code !== 'Busy')
      console.error(`${new Date().toISOString()} ${event.request.method} ${event.route.id}`, error);
    return { message: error.message };
  }
  console.error(`${new Date().toISOString()} ${event.request.method} ${event.route.id}`, error);
  return { message: say('The server ran into a problem. Your saved data is not affected.') };
}

// Closing folds the write-ahead log into the one file of the shelf.
if (!import.meta.env.DEV) process.once('sveltekit:shutdown', () => void closeApp());
