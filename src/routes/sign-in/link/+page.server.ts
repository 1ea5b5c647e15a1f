import { fail, redirect } from '@sveltejs/kit';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { letIn } from '$lib/server/access/admit.ts';
import { homeOf } from '$lib/server/access/read-scope.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions } from './$types';

export const actions: Actions = {
  /** Takes the code of a link, or the whole link, and lets this browser read what it opens; one that is signed in stays so. */
  default: async ({ request, locals, cookies, url }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const token = (read.text('code') ?? '').replace(/^.*#/, '');
    const link = await locals.app.access.links.find(token).catch(toHttpError);
    if (!link)
      return fail<RefusedForm>(403, {
        ...read.refused(),
        problems: [
          {
            field: 'code',
            message: say('this link does not work: it is incomplete, expired or revoked; ask for a new one'),
          },
        ],
      });
    const secondsLeft = Math.floor((Date.parse(link.expiresAt) - Date.now()) / 1000);
    if (locals.readsOnly) letIn(cookies, url, token, secondsLeft);
    redirect(303, homeOf(link));
  },
};
