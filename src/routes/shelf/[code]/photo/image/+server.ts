import { error } from '@sveltejs/kit';
import { codeInAddress } from '$lib/lot-href.ts';
import { photoAnswer } from '$lib/server/take-photo.ts';
import { say } from '$lib/texts/say.ts';
import type { RequestHandler } from './$types';

/** The picture of a lot, or of the recipe that it is named after; to those who only read, where the settings let them. */
export const GET: RequestHandler = async ({ locals: { app, readsOnly }, params }) => {
  if (readsOnly && !(await app.settings.get()).photosForReaders) error(404, say('There is no photo here.'));
  return photoAnswer(await app.photos.ofLot(codeInAddress(params.code)));
};
