import { UserError } from '$lib/server/errors.ts';
import type { FormReader } from './read-form.ts';

/**
 * For actions: an error that is written for the user becomes a problem of the form, so that what was typed stays.
 *
 * @param field where the message belongs; empty: it stands for itself
 * @returns the HTTP status to fail with
 * @throws anything that is not a UserError
 */
export function addUserError(read: FormReader, caught: unknown, field = ''): number {
  if (!(caught instanceof UserError)) throw caught;
  read.add([{ field, message: caught.message }]);
  return caught.status;
}
