import { error, fail, redirect } from '@sveltejs/kit';
import { differences } from '$lib/forms/differences.ts';
import { sayDone } from '$lib/forms/done.ts';
import type { Difference } from '$lib/forms/fields.ts';
import { LOT_LABELS, LOT_WORDS, lotFields, readLot, unconfirmed, type Odd } from '$lib/forms/lot-form.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { codeInAddress, lotHref } from '$lib/lot-href.ts';
import { blankFields, shownEstimates } from '$lib/presentation/lot-estimates.ts';
import { knownToHousehold } from '$lib/server/known-to-household.ts';
import { shelfRow } from '$lib/shelf-view.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';

/** What an action hands back: of which form of the page, what is odd, and what was saved meanwhile. */
type Refusal = RefusedForm & {
  readonly of: 'save' | 'count' | 'discard';
  readonly odd?: Odd;
  readonly newer?: { readonly version: number; readonly changes: readonly Difference[] };
};

const MOST_POUCHES = 100_000;

const noSuchLot = (code: string): never =>
  error(
    404,
    say(
      'There is no lot with the code "{code}". Its code may have been changed: search the shelf. Your browser\'s Back button brings back what you typed.',
      { code },
    ),
  );

export const load: PageServerLoad = async ({ locals: { app, readsOnly }, params, parent }) => {
  const code = codeInAddress(params.code);
  const lot = (await app.shelf.getLot(code)) ?? noSuchLot(code);
  const [{ shown }, history, trips] = await Promise.all([
    parent(),
    readsOnly ? [] : app.shelf.history(code),
    // To which trips, and so where to whom, is for nobody who only reads.
    readsOnly ? [] : app.trips.tripsWith(code),
  ]);
  const promised = trips.flatMap(({ id, trip, stage, reserved }) => {
    const here = reserved.find((entry) => entry.code === code);
    return here ? [{ id, name: trip.name, stage, pouches: here.pouches }] : [];
  });
  return {
    lot,
    row: shelfRow(lot, app.today()),
    fields: lotFields(lot, shown),
    blank: blankFields(lot, shown.unitSystem),
    estimates: shownEstimates(lot, shown.unitSystem).map(({ field, whole }) => ({
      field,
      label: say(LOT_LABELS[field]!),
      whole,
    })),
    history,
    lastEntry: history[0]?.id ?? 0,
    promised,
  };
};

export const actions: Actions = {
  save: async ({ request, locals: { app }, cookies, params }) => {
    const code = codeInAddress(params.code);
    const shown = await app.settings.get();
    const read = new FormReader(await request.formData(), shown.unitSystem);
    const { version, onShelf, setAside, packed, ...stored } =
      (await app.shelf.getLot(code)) ?? noSuchLot(code);

    // Whoever saves on an older version sees what the other one changed, and may then save on the newer one.
    if (read.number('version') !== version)
      return fail<Refusal>(409, {
        ...read.refused(),
        of: 'save',
        newer: { version, changes: differences(read.entered, lotFields(stored, shown), LOT_WORDS) },
      });
    const alike = await app.shelf.lotsCalled([read.text('recipe') ?? '']);
    const result = readLot(read, shown, await knownToHousehold(app, alike), stored);
    if (!result) return fail<Refusal>(422, { ...read.refused(), of: 'save' });
    const odd = unconfirmed(read, result.warnings);
    if (odd) return fail<Refusal>(422, { ...read.refused(), of: 'save', odd });
    try {
      await app.shelf.updateLot(code, result.lot, version);
    } catch (caught) {
      const status = addUserError(read, caught, 'code');
      return fail<Refusal>(status, { ...read.refused(), of: 'save' });
    }
    sayDone(cookies, 'lot-saved');
    redirect(303, lotHref(result.lot.code));
  },

  count: async ({ request, locals: { app }, cookies, params }) => {
    const code = codeInAddress(params.code);
    const read = new FormReader(await request.formData(), 'metric');
    const pouches = wholePouches(read, 'counted', 0);
    if (pouches === undefined) return fail<Refusal>(422, { ...read.refused(), of: 'count' });
    try {
      await app.shelf.countLot(code, pouches, read.text('countNote') ?? '');
    } catch (caught) {
      const status = addUserError(read, caught, 'counted');
      return fail<Refusal>(status, { ...read.refused(), of: 'count' });
    }
    sayDone(cookies, 'lot-counted');
    redirect(303, lotHref(code));
  },

  discard: async ({ request, locals: { app }, cookies, params }) => {
    const code = codeInAddress(params.code);
    const read = new FormReader(await request.formData(), 'metric');
    const pouches = wholePouches(read, 'discarded', 1);
    const reason = read.text('discardReason');
    if (reason === undefined)
      read.add([{ field: 'discardReason', message: say('give a reason for the history') }]);
    if (pouches === undefined || reason === undefined)
      return fail<Refusal>(422, { ...read.refused(), of: 'discard' });
    try {
      await app.shelf.discardPouches(code, pouches, reason, read.number('lastEntry'));
    } catch (caught) {
      const status = addUserError(read, caught, 'discarded');
      return fail<Refusal>(status, { ...read.refused(), of: 'discard' });
    }
    sayDone(cookies, 'pouches-discarded');
    redirect(303, lotHref(code));
  },
};

function wholePouches(read: FormReader, name: string, least: number): number | undefined {
  const pouches = read.number(name);
  if (pouches !== undefined && Number.isInteger(pouches) && pouches >= least && pouches <= MOST_POUCHES)
    return pouches;
  read.add([
    {
      field: name,
      message: say('must be a whole number of pouches from {least} to {most}', {
        least,
        most: String(MOST_POUCHES),
      }),
    },
  ]);
  return undefined;
}
