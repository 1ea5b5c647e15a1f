import { takeDone, takeUndo } from '$lib/forms/done.ts';
import { findKeyOf } from '$lib/forms/find-key.ts';
import { homeOf } from '$lib/server/access/read-scope.ts';
import { changesInWords } from '$lib/trip-forms/trip-changes.ts';
import { KEEPING_HEADER } from '$lib/offline/kept-trips.ts';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = async ({ locals, cookies, request, url }) => {
  const { unitSystem, currency } = await locals.app.settings.get();
  // Reading the address makes this run again on the next page, where there is nothing left to say.
  const isKept = request.headers.has(KEEPING_HEADER);
  const undo = isKept || locals.readsOnly ? undefined : takeUndo(cookies);
  const changed = undo === undefined ? undefined : await locals.app.bin.changedTrip(undo);
  return {
    shown: { unitSystem, currency },
    findKey: findKeyOf(cookies),
    done: isKept
      ? { text: undefined, undo: undefined, changes: '', at: url.pathname }
      : {
          text: takeDone(cookies),
          undo,
          /** What a trip was changed in, where that is what can be undone. */
          changes: changed ? changesInWords(changed.before, changed.now, unitSystem) : '',
          at: url.pathname,
        },
    readsOnly: locals.readsOnly,
    sent: url.pathname.startsWith('/sign-in') ? [] : sentBy(locals.sent),
    isDamaged: !locals.readsOnly && locals.app.backups.damage !== undefined,
    /** A page that is kept for use without a connection could not. */
    canSignOut: locals.session !== undefined && !isKept,
    /** Where a link leads that whoever reads came by. */
    home: locals.link && homeOf(locals.link),
  };
};

/** What a page of an error lets be sent again, so that nothing typed is lost where scripts do not run: texts, as no file can be filled in. */
const sentBy = (form: FormData | undefined): (readonly [string, string])[] =>
  [...(form ?? [])].flatMap(([name, value]) => (typeof value === 'string' ? [[name, value] as const] : []));
