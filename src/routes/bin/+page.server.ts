import { fail, redirect } from '@sveltejs/kit';
import { offerUndo, sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { lotHref } from '$lib/lot-href.ts';
import { DAYS_IN_BIN } from '$lib/server/bin.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app } }) => ({
  thrown: await app.bin.list(),
  days: DAYS_IN_BIN,
});

const PAGE = {
  recipe: (id: string) => `/kitchen/recipes/${id}`,
  batch: (id: string) => `/kitchen/batches/${id}`,
  food: () => '/kitchen/foods',
  lot: lotHref,
  trip: (id: string) => `/trips/${id}/party`,
  'trip change': (id: string) => `/trips/${id}`,
} as const;

export const actions: Actions = {
  putBack: async ({ request, locals: { app }, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    let to: string;
    try {
      const { kind, recordId, undo } = await app.bin.putBack(read.text('id') ?? '');
      const [page, asked] = [PAGE[kind](recordId), read.text('to')];
      const isChange = kind === 'trip change';
      to = isChange && asked?.startsWith(`${page}/`) ? asked : page;
      sayDone(cookies, isChange ? 'change-undone' : 'put-back');
      if (undo !== undefined) offerUndo(cookies, undo);
    } catch (caught) {
      return fail<RefusedForm>(addUserError(read, caught), read.refused());
    }
    redirect(303, to);
  },
};
