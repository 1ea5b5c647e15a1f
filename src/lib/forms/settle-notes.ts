import type { Cookies } from '@sveltejs/kit';
import type { App } from '$lib/server/app.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { sayDone } from './done.ts';
import { FormReader } from './read-form.ts';

const LONGEST_REMARK = 500;

/** Settles the ticked notes of a form of conflicts. @param tripId left out: the form says of which trip they are */
export async function settleNotes(
  app: App,
  cookies: Cookies,
  form: FormData,
  tripId?: string,
): Promise<void> {
  const read = new FormReader(form, 'metric');
  const remark = (read.text('remark') ?? '').slice(0, LONGEST_REMARK);
  await app.trailNotes
    .settle(tripId ?? read.text('tripId') ?? '', read.choices('note'), remark)
    .catch(toHttpError);
  sayDone(cookies, 'notes-settled');
}
