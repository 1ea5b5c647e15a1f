import type { RequestEvent } from '@sveltejs/kit';
import { offerUndo } from '$lib/forms/done.ts';
import { FormReader } from '$lib/forms/read-form.ts';
import type { Outcome, Table } from '$lib/planning/menu/by-hand.ts';
import type { MealPlace } from '$lib/planning/menu/edit-menu.ts';
import { UserError } from '$lib/server/errors.ts';
import { changeMenu } from '$lib/server/plan-stored-trip.ts';
import { toFailure } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import { readPlace } from '$lib/trip-views/meal-place.ts';

type Event = RequestEvent<{ id: string }>;

/**
 * Changes the meal that a form names, by hand, and offers to undo it.
 *
 * @returns what was done in words, or why nothing was
 */
export async function changeMeal(
  event: Event,
  byHand: (table: Table, at: MealPlace, code: string, read: FormReader) => Outcome,
) {
  const { request, locals, params } = event;
  const read = new FormReader(await request.formData(), 'metric');
  let said = '';
  try {
    const { undo } = await changeMenu(locals.app, params.id, (trip, { plan, lots }) => {
      const at = readPlace(read.text('place') ?? undefined, plan);
      if (!at)
        throw new UserError(
          'Refused',
          say('The trip does not have this meal any more. Look at the menu again.'),
        );
      const outcome = byHand({ trip, plan, stock: lots }, at, read.text('code') ?? '', read);
      if ('refused' in outcome) throw new UserError('Refused', outcome.refused);
      said = outcome.said;
      return outcome.trip;
    });
    offerUndo(event.cookies, undo);
  } catch (caught) {
    return toFailure(event, caught, refusal);
  }
  return { said };
}

export const refusal = (refused: string) => ({ refused });
