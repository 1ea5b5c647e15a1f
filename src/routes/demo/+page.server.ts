import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { UserError } from '$lib/server/errors.ts';
import type { Actions } from './$types';
import { fillDemo } from './fill-demo.ts';

export const actions: Actions = {
  default: async ({ locals, cookies }) => {
    let filled: Awaited<ReturnType<typeof fillDemo>>;
    try {
      filled = await fillDemo(locals.app);
    } catch (caught) {
      if (caught instanceof UserError) return fail(caught.status, { message: caught.message });
      throw caught;
    }
    sayDone(cookies, 'demo-filled', filled.searchFailed && 'search-failed');
    redirect(303, `/trips/${filled.stored.id}`);
  },
};
