import { error, fail, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { RETRY_AFTER_S, UserError } from './errors.ts';

/**
 * For routes: `await locals.app.trips.pack(id, version).catch(toHttpError)`. That what is busy (503) says when to ask again, `src/tooling/serve.ts` sees to.
 *
 * @throws a UserError as the HTTP error of its status with its message; anything else as it is
 */
export function toHttpError(caught: unknown): never {
  if (!(caught instanceof UserError)) throw caught;
  log(caught);
  error(caught.status, caught.message);
}

/**
 * For actions whose page says it beside the form: a UserError as a failure of its status.
 *
 * @param data what the page is given, with the message
 * @throws anything else as it is
 */
export function toFailure<Data extends Record<string, unknown>>(
  { setHeaders }: Pick<RequestEvent, 'setHeaders'>,
  caught: unknown,
  data: (message: string) => Data,
): ActionFailure<Data> {
  if (!(caught instanceof UserError)) throw caught;
  log(caught);
  // A script that posts a form is answered 200 with the failure in it, and so is told here.
  if (caught.code === 'Busy') setHeaders({ 'retry-after': String(RETRY_AFTER_S) });
  return fail(caught.status, data(caught.message));
}

/** That many asked at once is no failure. */
function log(caught: UserError): void {
  if (caught.status >= 500 && caught.code !== 'Busy') console.error(new Date().toISOString(), caught);
}
