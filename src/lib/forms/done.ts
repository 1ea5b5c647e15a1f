import { say, text } from '$lib/texts/say.ts';
import type { Cookies } from '@sveltejs/kit';

/** What a page can say once, after an action that led there. The cookie holds the keys only, so no text can be slipped in. */
const DONE = {
  'lot-added': text('The lot is on the shelf.'),
  'lots-added': text('Pouches added to the shelf.'),
  'lot-saved': text('The lot is saved.'),
  'lot-counted': text('The count is entered in the history.'),
  'photo-saved': text('The photo is saved.'),
  'pouches-eaten': text('Pouches entered as eaten.'),
  'pouches-discarded': text('The pouches are taken off the shelf.'),
  'lot-withdrawn': text('Lot withdrawn.'),
  'lot-reinstated': text('Lot back on the shelf. Plan trips again to use it.'),
  'shelf-imported': text('Import finished. Every accepted row is on the shelf.'),
  'prices-saved': text('Prices saved. They apply to every trip.'),
  'settings-saved': text('The settings are saved.'),
  'equipment-saved': text('The equipment is saved.'),
  'food-deleted': text('The food is deleted from your own table.'),
  'copy-made': text('Backup made.'),
  'indexes-rebuilt': text('Indexes rebuilt. The data was checked again and is sound.'),
  'counts-recalculated': text('Counts recalculated from the stock history.'),
  'copy-restored': text(
    'Backup restored. Your previous data is the newest backup in the list, so you can go back.',
  ),
  'settings-reset': text('Defaults restored.'),
  'trip-planned': text('Trip planned. You can change people, days and stove under Group.'),
  'trip-opened': text('Trip opened from the file, with everything in it.'),
  'trip-saved': text('Trip saved. The menu has not changed; to update it, choose Plan again under Menu.'),
  'trip-replanned': text('Trip saved and planned again. Locked meals did not change.'),
  'trip-copied': text('This is your copy. Its menu uses what is free on the shelf now.'),
  'template-made': text('This is a template now. It is under Templates in the list of trips.'),
  'template-unmade': text('This is a trip now, no longer a template.'),
  'trip-deleted': text('The trip is deleted.'),
  'water-saved': text('Water treatment and pot saved. Fuel and packs are updated.'),
  'container-added': text('Container added.'),
  'container-removed': text('Container removed.'),
  'run-added': text('Boil test saved. It applies to every trip with this fuel.'),
  'run-removed': text('Boil test removed.'),
  'pouches-set-aside': text('The pouches of the menu are set aside for this trip.'),
  'pouches-released': text('The pouches are back on the shelf.'),
  'food-planned': text('The plan counts on this food now. It is marked until it is there.'),
  'food-unplanned': text('The food is out of the plan.'),
  'plan-filled': text('The plan is filled as far as one would eat of each food.'),
  'place-saved': text('The place is saved. Packs, boxes and fuel follow.'),
  'place-removed': text('The place is removed.'),
  'food-bought': text('The food is on the shelf.'),
  'pouches-packed': text('The pouches are packed.'),
  'trip-finished': text(
    'Trip finished. Unopened pouches are back on the shelf and the rest are recorded as eaten. See what was learned under Settings, Learned values.',
  ),
  'trip-called-off': text('Every pouch came home unopened, so the trip is open again.'),
  'trip-reopened': text('The trip is open again. Record once more what came back.'),
  'notes-settled': text('Notes resolved. They stay on record.'),
  'figure-forgotten': text('Learned value cleared. The default applies again.'),
  'search-failed': text(
    'The menu search could not run, so this menu uses the oldest pouches first. To try again, choose Plan again under Menu.',
  ),
  'recipe-added': text('Recipe created. Now add the ingredients.'),
  'recipe-saved': text('The recipe is saved.'),
  'recipe-deleted': text('Recipe deleted. Batches made from it keep their own copy.'),
  'ingredient-saved': text('Ingredient added.'),
  'ingredient-removed': text('Ingredient removed.'),
  'water-noted': text('Note saved. The next batch uses the adjusted water.'),
  'water-forgotten': text('Notes deleted. The water goes back to the default.'),
  'batch-begun': text('Batch started. Use this sheet from the stove to the shelf.'),
  'batch-saved': text('Saved.'),
  'weighing-removed': text('Last weighing removed.'),
  'batch-deleted': text('Batch deleted. None of it was on the shelf.'),
  'batch-sealed': text('The pouches are on the shelf. Print their labels now.'),
  'put-back': text('Restored.'),
  'change-undone': text('The change is undone.'),
  'demo-filled': text('Demo loaded: a made-up shelf and a trip planned from it.'),
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
