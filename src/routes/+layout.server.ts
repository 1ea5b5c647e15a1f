import { takeDone } from '$lib/forms/done.ts';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = async ({ locals, cookies, url }) => {
  const { unitSystem, currency } = await locals.app.settings.get();
  // Reading the address makes this run again on the next page, where there is nothing left to say.
  return {
    shown: { unitSystem, currency },
    done: { text: takeDone(cookies), at: url.pathname },
    readsOnly: locals.readsOnly,
  };
};
