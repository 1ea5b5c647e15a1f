import { error, fail, redirect } from '@sveltejs/kit';
import { differences } from '$lib/forms/differences.ts';
import { sayDone } from '$lib/forms/done.ts';
import type { Difference } from '$lib/forms/fields.ts';
import {
  LOT_LABELS,
  LOT_WORDS,
  POUCH_BOX_WORDS,
  lotFields,
  pouchBoxes,
  readLot,
  unconfirmed,
  type Odd,
} from '$lib/forms/lot-form.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { codeInAddress, lotHref } from '$lib/lot-href.ts';
import { lotPhoto, type ShownPhoto } from '$lib/photo-href.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { canBePlate } from '$lib/planning/menu/lot-rules.ts';
import { blankFields, shownEstimates } from '$lib/presentation/lot-estimates.ts';
import { knownToHousehold } from '$lib/server/known-to-household.ts';
import { eatenReasons } from '$lib/reasons/lot.ts';
import { shelfRow } from '$lib/shelf-view.ts';
import { say } from '$lib/texts/say.ts';
import { DAYS_IN_BIN } from '$lib/server/bin.ts';
import { withdrawSuspectLot } from '$lib/server/withdraw-suspect-lot.ts';
import { hasLeft } from '$lib/ledger-kinds.ts';
import { ShortText } from '$lib/planning/model/kinds.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { dishName } from '$lib/planning/model/complete-lot.ts';
import type { PortionNote, Recipe, WaterNote } from '$lib/planning/model/recipe.ts';
import { eatersLearned, tastersLearned } from '$lib/planning/learning/learned-figures.ts';
import { APPETITES, LIKINGS, WATER_FINDINGS } from '$lib/planning/model/words.ts';
import { APPETITE_WORDS, VERDICT_WORDS, WATER_FINDING_WORDS } from '$lib/presentation/code-words.ts';
import type { App } from '$lib/server/app.ts';
import { UserError } from '$lib/server/errors.ts';
import type { Stored } from '$lib/server/records.ts';
import type { Actions, PageServerLoad } from './$types';

/** What an action hands back: of which form of the page, what is odd, and what was saved meanwhile. */
type Refusal = RefusedForm & {
  readonly of: 'save' | 'count' | 'eaten' | 'discard' | 'withdraw' | 'reinstate';
  readonly odd?: Odd;
  readonly newer?: { readonly version: number; readonly changes: readonly Difference[] };
};

const MOST_POUCHES = 100_000;
/** The most notes that a recipe keeps; the oldest make room. */
const MOST_NOTES = 200;

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
  const isWithdrawn = lot.withdrawn !== undefined;
  const [{ shown }, history, trips, without, binId] = await Promise.all([
    parent(),
    readsOnly ? [] : app.shelf.history(code),
    // To which trips, and so where to whom, is for nobody who only reads.
    readsOnly ? [] : app.trips.tripsWith(code),
    readsOnly || !isWithdrawn ? [] : app.trips.tripsWithout(code),
    readsOnly || !isWithdrawn ? undefined : app.bin.ofLot(code),
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
    pouch: pouchText(lot),
    photo: await photoFor(app, lot, readsOnly),
    eaters: readsOnly ? [] : await eatersKnown(app),
    hasRecipe: !readsOnly && (await recipeCalled(app, lot.recipe)) !== undefined,
    history,
    lastEntry: history[0]?.id ?? 0,
    reasons: eatenReasons(),
    promised,
    takenOut: without.map(({ id, trip, stage }) => ({ id, name: trip.name, hasLeft: hasLeft(stage) })),
    canReinstate: binId !== undefined,
    daysInBin: DAYS_IN_BIN,
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

  eaten: async ({ request, locals: { app }, cookies, params }) => {
    const code = codeInAddress(params.code);
    const read = new FormReader(await request.formData(), 'metric');
    const pouches = wholePouches(read, 'eaten', 1);
    const finding = WATER_FINDINGS.find((each) => each === read.text('finding'));
    if (pouches === undefined) return fail<Refusal>(422, { ...read.refused(), of: 'eaten' });
    const answer = APPETITES.find((each) => each === read.text('portion'));
    const liking = LIKINGS.find((each) => each === read.text('liking'));
    const who = ShortText.safeParse(read.text('who')).data;
    const note = read.text('eatenNote') ?? '';
    const said = [
      finding && say(WATER_FINDING_WORDS[finding]),
      answer && say('portion {answer}', { answer: say(APPETITE_WORDS[answer]) }),
      liking && [who, say(VERDICT_WORDS[liking])].filter(Boolean).join(': '),
      note,
    ];
    const date = app.today();
    try {
      const { recipe } = await app.shelf.eatAtHome(
        code,
        pouches,
        said.filter(Boolean).join('; '),
        read.number('lastEntry'),
      );
      await noteDish(app, recipe, {
        ...(finding && { waterNotes: { date, finding, note } }),
        ...(answer && { portionNotes: { date, finding: answer, note } }),
      });
      if (liking && who !== undefined)
        await app.settings.learn({
          ...{ kind: 'taste', trip: say('at home'), date, eater: who, dish: recipe, answer: liking },
        });
    } catch (caught) {
      const status = addUserError(read, caught, 'eaten');
      return fail<Refusal>(status, { ...read.refused(), of: 'eaten' });
    }
    sayDone(cookies, 'pouches-eaten');
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

  withdraw: async ({ request, locals: { app }, cookies, params }) => {
    const code = codeInAddress(params.code);
    const read = new FormReader(await request.formData(), 'metric');
    const reason = ShortText.safeParse(read.text('withdrawReason') ?? '', { reportInput: true });
    if (!reason.success)
      read.add(problemsOf(reason.error).map(({ message }) => ({ field: 'withdrawReason', message })));
    if (!reason.success) return fail<Refusal>(422, { ...read.refused(), of: 'withdraw' });
    try {
      await withdrawSuspectLot(app, code, reason.data);
    } catch (caught) {
      return fail<Refusal>(addUserError(read, caught), { ...read.refused(), of: 'withdraw' });
    }
    sayDone(cookies, 'lot-withdrawn');
    redirect(303, lotHref(code));
  },

  reinstate: async ({ request, locals: { app }, cookies, params }) => {
    const code = codeInAddress(params.code);
    const read = new FormReader(await request.formData(), 'metric');
    try {
      await app.bin.putBack((await app.bin.ofLot(code)) ?? '');
    } catch (caught) {
      return fail<Refusal>(addUserError(read, caught), { ...read.refused(), of: 'reinstate' });
    }
    sayDone(cookies, 'lot-reinstated');
    redirect(303, lotHref(code));
  },
};

/** The recipe that a lot is named after, which learns from how its water turned out. */
async function recipeCalled(app: App, name: string): Promise<Stored<Recipe> | undefined> {
  const wanted = dishName(name);
  return (await app.kitchen.recipes.list()).find(({ value }) => dishName(value.name) === wanted);
}

type NewNotes = { readonly waterNotes?: WaterNote; readonly portionNotes?: PortionNote };

/** A note that does not reach its recipe is in the history of the lot all the same. */
async function noteDish(
  app: App,
  name: string,
  { waterNotes: water, portionNotes: portion }: NewNotes,
): Promise<void> {
  const stored = water || portion ? await recipeCalled(app, name) : undefined;
  if (!stored) return;
  const { value } = stored;
  const changed = {
    ...value,
    ...(water && { waterNotes: [...value.waterNotes, water].slice(-MOST_NOTES) }),
    ...(portion && { portionNotes: [...(value.portionNotes ?? []), portion].slice(-MOST_NOTES) }),
  };
  await app.kitchen.recipes.update(stored.id, changed, stored.version).catch((caught: unknown) => {
    if (!(caught instanceof UserError)) throw caught;
  });
}

/** What is to be known of the pouch of a lot before water goes into it. */
const pouchText = (lot: PouchLot): string[] => [
  ...pouchBoxes(lot).map((box) => say(POUCH_BOX_WORDS[box])),
  ...(canBePlate(lot) ? [] : [say('pour into a bowl')]),
];

/** The picture of a lot; to those who only read, where the settings let them. */
async function photoFor(app: App, lot: PouchLot, readsOnly: boolean): Promise<ShownPhoto | undefined> {
  if (readsOnly && !(await app.settings.get()).photosForReaders) return undefined;
  return lotPhoto(lot, await app.photos.photographed());
}

/** Whose taste or appetite is known, to be named again. */
async function eatersKnown(app: App): Promise<string[]> {
  const { learned } = await app.settings.get();
  return [...new Set([...eatersLearned(learned), ...tastersLearned(learned)])].sort();
}

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
