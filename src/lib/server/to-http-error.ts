import { error } from '@sveltejs/kit';
import { UserError } from './errors.ts';

/**
 * For routes: `await locals.app.trips.pack(id, version).catch(toHttpError)`.
 *
 * @throws a UserError as the HTTP error of its status with its message; anything else as it is
 */
export function toHttpError(caught: unknown): never {
  if (caught instanceof UserError) {
    if (caught.status >= 500) console.error(new Date().toISOString(), caught);
    error(caught.status, caught.message);
  }
  throw caught;
}
