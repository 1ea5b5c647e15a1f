import { redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { toFailure } from '$lib/server/to-http-error.ts';
import type { Actions } from './$types';
import { fillDemo } from './fill-demo.ts';

export const actions: Actions = {
  default: async ({ locals, cookies, setHeaders }) => {
    let filled: Awaited<ReturnType<typeof fillDemo>>;
    try {
      filled = await fillDemo(locals.app);
    } catch (caught) {
      return toFailure({ setHeaders }, caught, (message) => ({ message }));
    }
    sayDone(cookies, 'demo-filled', filled.searchFailed && 'search-failed');
    redirect(303, `/trips/${filled.stored.id}`);
  },
};
