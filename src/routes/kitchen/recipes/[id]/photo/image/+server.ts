import { photoAnswer } from '$lib/server/take-photo.ts';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = async ({ locals: { app }, params }) =>
  photoAnswer(await app.photos.get({ kind: 'recipe', id: params.id }));
