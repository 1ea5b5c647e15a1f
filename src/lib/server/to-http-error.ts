import { error } from '@sveltejs/kit';
import { UserError } from './errors.ts';

/** What was busy is worth asking again after so long, s. */
const RETRY_AFTER_S = 10;

/** @returns the response; where it says that something was busy, it says too when to ask again. */
export function sayingWhen(response: Response): Response {
  if (response.status === 503) response.headers.set('retry-after', String(RETRY_AFTER_S));
  return response;
}

/**
 * For routes: `await locals.app.trips.pack(id, version).catch(toHttpError)`.
 *
 * @throws a UserError as the HTTP error of its status with its message; anything else as it is
 */
export function toHttpError(caught: unknown): never {
  if (caught instanceof UserError) {
    // That many asked at once is no failure.
    if (caught.status >= 500 && caught.code !== 'Busy') console.error(new Date().toISOString(), caught);
    error(caught.status, caught.message);
  }
  throw caught;
}
