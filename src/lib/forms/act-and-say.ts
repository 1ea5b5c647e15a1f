import { fail, redirect, type Cookies } from '@sveltejs/kit';
import { offerUndo, sayDone, type Done } from './done.ts';
import { FormReader, type RefusedForm } from './read-form.ts';
import { addUserError } from './user-error.ts';

/**
 * Does what a form asks for, and leads to a page that says so. What is wrong with it comes back with what was entered.
 *
 * @param to address of the page
 * @param work what is done, with the id to undo it, if it can be; it throws a UserError, or adds problems to the reader, where it is refused
 * @throws Redirect where it is done; what `work` throws that is no UserError
 * @example
 * actAndSay(request, cookies, `/trips/${params.id}/pouches`, 'pouches-packed', () => app.trips.pack(params.id, version));
 */
export async function actAndSay(
  request: Request,
  cookies: Cookies,
  to: string,
  done: Done,
  work: (read: FormReader) => Promise<unknown>,
) {
  const read = new FormReader(await request.formData(), 'metric');
  let result: unknown;
  try {
    result = await work(read);
  } catch (caught) {
    return fail<RefusedForm>(addUserError(read, caught), read.refused());
  }
  if (read.problems.length > 0) return fail<RefusedForm>(422, read.refused());
  sayDone(cookies, done);
  if (canBeUndone(result)) offerUndo(cookies, result.undo);
  redirect(303, to);
}

const canBeUndone = (result: unknown): result is { readonly undo: string } =>
  typeof result === 'object' && result !== null && 'undo' in result && typeof result.undo === 'string';
