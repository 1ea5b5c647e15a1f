import { takeDone, takeUndo } from '$lib/forms/done.ts';
import { homeOf } from '$lib/server/access/read-scope.ts';
import { KEEPING_HEADER } from '$lib/offline/kept-trips.ts';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = async ({ locals, cookies, request, url }) => {
  const { unitSystem, currency } = await locals.app.settings.get();
  // Reading the address makes this run again on the next page, where there is nothing left to say.
  const isKept = request.headers.has(KEEPING_HEADER);
  return {
    shown: { unitSystem, currency },
    done: isKept
      ? { text: undefined, undo: undefined, at: url.pathname }
      : { text: takeDone(cookies), undo: takeUndo(cookies), at: url.pathname },
    readsOnly: locals.readsOnly,
    isDamaged: !locals.readsOnly && locals.app.backups.damage !== undefined,
    /** A page that is kept for use without a connection could not. */
    canSignOut: locals.session !== undefined && !isKept,
    /** Where a link leads that whoever reads came by. */
    home: locals.link && homeOf(locals.link),
  };
};
