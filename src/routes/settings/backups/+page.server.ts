import { createReadStream } from 'node:fs';
import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { say, sayNumber } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';

/** The most that is taken by a page; the command line takes any. */
const MOST_BYTES = 64_000_000;

export const load: PageServerLoad = async ({ locals: { app } }) => ({
  copies: (await app.backups.list().catch(toHttpError)).map(({ bytes, ...copy }) => ({
    ...copy,
    sizeMB: sayNumber(bytes / 1_000_000, { maximumSignificantDigits: 2 }),
  })),
  folder: app.backups.folder,
  failure: app.backups.failure,
  damage: app.backups.damage,
});

export const actions: Actions = {
  make: async ({ locals: { app }, cookies }) => {
    await app.backups.make('by-hand').catch(toHttpError);
    await app.backups.thin().catch(toHttpError);
    sayDone(cookies, 'copy-made');
    redirect(303, '/settings/backups');
  },

  reindex: async ({ locals: { app }, cookies }) => {
    await app.backups.rebuildIndexes().catch(toHttpError);
    sayDone(cookies, 'indexes-rebuilt');
    redirect(303, '/settings/backups');
  },

  recount: async ({ locals: { app }, cookies }) => {
    await app.shelf.mendCounts().catch(toHttpError);
    await app.backups.look();
    sayDone(cookies, 'counts-recalculated');
    redirect(303, '/settings/backups');
  },

  upload: async ({ request, locals: { app } }) => {
    const refuse = (status: number, message: string) =>
      fail<RefusedForm>(status, { entered: {}, problems: [{ field: 'file', message }] });
    return app.incoming
      .form(request, MOST_BYTES, async ({ file }) => {
        if (!file) return refuse(422, say('no file was chosen; choose one first'));
        if (file.bytes > MOST_BYTES)
          return refuse(
            413,
            say('the file is larger than {most} MB, the most that a page takes; use "npm run restore"', {
              most: MOST_BYTES / 1_000_000,
            }),
          );
        let name: string;
        try {
          ({ name } = await app.backups.takeIn(file.name, createReadStream(file.path), MOST_BYTES));
        } catch (caught) {
          const read = new FormReader(new FormData(), 'metric');
          return fail<RefusedForm>(addUserError(read, caught, 'file'), read.refused());
        }
        redirect(303, `/settings/backups/${name}`);
      })
      .catch(toHttpError);
  },
};
