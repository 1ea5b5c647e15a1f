import { say, text } from '$lib/texts/say.ts';
import type { Cookies } from '@sveltejs/kit';

/** What a page can say once, after an action that led there. The cookie holds the keys only, so no text can be slipped in. */
const DONE = {
  'lot-added': text('The lot is on the shelf.'),
  'lots-added': text('Pouches added to the shelf.'),
  'lot-saved': text('The lot is saved.'),
  'lot-counted': text('The count is entered in the history.'),
  'pouches-discarded': text('The pouches are taken off the shelf.'),
  'shelf-imported': text('The import is done: every row that was not refused is on the shelf.'),
  'settings-saved': text('The settings are saved.'),
  'equipment-saved': text('The equipment is saved.'),
  'food-deleted': text('The food is deleted from your own table.'),
  'copy-made': text('The copy is made.'),
  'indexes-rebuilt': text('Indexes rebuilt. The data was checked again and is sound.'),
  'counts-recalculated': text('Counts recalculated from the stock history.'),
  'copy-restored': text(
    'The copy is put back. What was there before is in the list as the newest copy, so you can go back.',
  ),
  'settings-reset': text('The usual values are back.'),
  'trip-planned': text(
    'The trip is planned. Everything about the party, the days and the stove can be changed under Party.',
  ),
  'trip-opened': text('The trip is opened from the file, with all that was in it.'),
  'trip-saved': text(
    'The trip is saved. The menu is as it was; Plan again, under Menu, fits it to what has changed.',
  ),
  'trip-replanned': text('The trip is saved and planned again. Locked meals are as they were.'),
  'trip-copied': text('This is the copy. Its menu is planned from what is free on the shelf now.'),
  'trip-deleted': text('The trip is deleted.'),
  'water-saved': text('Water treatment and pot are saved; fuel and packs follow.'),
  'container-added': text('The container from home is on the list.'),
  'container-removed': text('The container is off the list.'),
  'run-added': text('The measured boil is entered. It holds for every trip with this fuel.'),
  'run-removed': text('The measured boil is removed.'),
  'pouches-set-aside': text('The pouches of the menu are set aside for this trip.'),
  'pouches-released': text('The pouches are back on the shelf.'),
  'food-planned': text('The plan counts on this food now. It is marked until it is there.'),
  'food-unplanned': text('The food is out of the plan.'),
  'plan-filled': text('The plan is filled as far as one would eat of each food.'),
  'food-bought': text('The food is on the shelf.'),
  'pouches-packed': text('The pouches are packed.'),
  'trip-finished': text(
    'The trip is finished: what came home is on the shelf, the rest is entered as eaten. What it taught stands under Settings, Learned figures.',
  ),
  'trip-called-off': text('Everything came home unopened, so the trip is open again.'),
  'trip-reopened': text('The trip is open again. Account for what is in the packs once more.'),
  'notes-settled': text('The notes are settled. They stay on record.'),
  'figure-forgotten': text('The learned figure is forgotten; the usual one is back.'),
  'search-failed': text(
    'The search for the best menu could not be run, so this one is first expired, first out. Plan again, under Menu, tries once more.',
  ),
  'recipe-added': text('The recipe is there. Now add what goes in.'),
  'recipe-saved': text('The recipe is saved.'),
  'recipe-deleted': text('The recipe is deleted. Batches made from it keep their copy.'),
  'ingredient-saved': text('The ingredient is in.'),
  'ingredient-removed': text('The ingredient is out.'),
  'water-noted': text('The note is entered; water for the next batch follows it.'),
  'water-forgotten': text('The notes are forgotten; water starts again from the usual share.'),
  'batch-begun': text('The batch is begun. This sheet goes with it from the stove to the shelf.'),
  'batch-saved': text('Noted.'),
  'weighing-removed': text('The last weighing is taken out.'),
  'batch-deleted': text('The batch is deleted. Nothing of it was on the shelf.'),
  'batch-sealed': text('The pouches are on the shelf. Print their labels now.'),
  'put-back': text('It is back as it was.'),
  'demo-filled': text('The demo is in: an invented shelf and a trip to plan from it.'),
} as const;
export type Done = keyof typeof DONE;

const COOKIE = 'done';

/** @param done what to say, in this order; what is `false` is left out */
export function sayDone(cookies: Cookies, ...done: (Done | false)[]): void {
  cookies.set(COOKIE, done.filter(Boolean).join(' '), {
    path: '/',
    maxAge: 60,
    httpOnly: true,
    sameSite: 'lax',
    secure: false,
  });
}

const UNDO_COOKIE = 'undo';

/** Lets the next page offer to undo, beside what it says is done. @param binId what to put back */
export function offerUndo(cookies: Cookies, binId: string): void {
  cookies.set(UNDO_COOKIE, binId, { path: '/', maxAge: 60, httpOnly: true, sameSite: 'lax', secure: false });
}

/** @returns what can be put back, once. */
export function takeUndo(cookies: Cookies): string | undefined {
  const binId = cookies.get(UNDO_COOKIE);
  if (binId !== undefined) cookies.delete(UNDO_COOKIE, { path: '/', secure: false });
  return binId;
}

/** @returns what there is to say, once. */
export function takeDone(cookies: Cookies): string | undefined {
  const done = cookies.get(COOKIE);
  if (done === undefined) return undefined;
  cookies.delete(COOKIE, { path: '/', secure: false });
  const known = done.split(' ').filter((key) => Object.hasOwn(DONE, key));
  return known.map((key) => say(DONE[key as Done])).join(' ') || undefined;
}
