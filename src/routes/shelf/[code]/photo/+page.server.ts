import { error, fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { codeInAddress, lotHref } from '$lib/lot-href.ts';
import { lotPhoto } from '$lib/photo-href.ts';
import { takePhoto } from '$lib/server/take-photo.ts';
import { toFailure } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, params }) => {
  const code = codeInAddress(params.code);
  const lot = await app.shelf.getLot(code);
  if (!lot) error(404, say('There is no lot with the code "{code}".', { code }));
  return {
    name: `${code} ${lot.recipe}`,
    back: lotHref(code),
    photo: lotPhoto(lot, { ...(await app.photos.photographed()), recipes: {} }),
  };
};

export const actions: Actions = {
  default: async ({ request, locals: { app }, params, cookies, setHeaders }) => {
    const code = codeInAddress(params.code);
    try {
      const problem = await takePhoto(app, request, { kind: 'lot', code });
      if (problem !== undefined) return fail(422, { problem });
    } catch (caught) {
      return toFailure({ setHeaders }, caught, (problem) => ({ problem }));
    }
    sayDone(cookies, 'photo-saved');
    redirect(303, lotHref(code));
  },
};
