import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { newLotFields, readLot, unconfirmed, type Odd } from '$lib/forms/lot-form.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { lotHref } from '$lib/lot-href.ts';
import { knownToHousehold } from '$lib/server/known-to-household.ts';
import { newLotReasons } from '$lib/reasons/lot.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, parent }) => {
  const { shown } = await parent();
  const today = locals.app.today();
  return { fields: newLotFields(today, shown), reasons: newLotReasons(shown) };
};

type Refusal = RefusedForm & { readonly odd?: Odd };

export const actions: Actions = {
  default: async ({ request, locals: { app }, cookies }) => {
    const shown = await app.settings.get();
    const read = new FormReader(await request.formData(), shown.unitSystem);
    const alike = await app.shelf.lotsCalled([read.text('recipe') ?? '']);
    const result = readLot(read, shown, await knownToHousehold(app, alike));
    if (!result) return fail<Refusal>(422, read.refused());
    const odd = unconfirmed(read, result.warnings);
    if (odd) return fail<Refusal>(422, { ...read.refused(), odd });
    try {
      await app.shelf.addLot(result.lot);
    } catch (caught) {
      const status = addUserError(read, caught, 'code');
      return fail<Refusal>(status, read.refused());
    }
    sayDone(cookies, 'lot-added');
    redirect(303, lotHref(result.lot.code));
  },
};
