import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, params: { name } }) => {
  const comparison = await app.backups.compare(name).catch(toHttpError);
  return { copy: await app.backups.get(name).catch(toHttpError), comparison };
};

export const actions: Actions = {
  restore: async ({ locals: { app }, params: { name }, cookies }) => {
    try {
      await app.backups.restore(name);
    } catch (caught) {
      const read = new FormReader(new FormData(), 'metric');
      return fail<RefusedForm>(addUserError(read, caught), read.refused());
    }
    sayDone(cookies, 'copy-restored');
    redirect(303, '/settings/backups');
  },
};
