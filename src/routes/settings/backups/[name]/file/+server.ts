import { toHttpError } from '$lib/server/to-http-error.ts';
import { fileResponse } from '../../download.ts';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = async ({ locals: { app }, params: { name } }) => {
  const path = await app.backups.pathOf(name).catch(toHttpError);
  const { response } = await fileResponse(path, `ridgelarder-${name}`, 'sqlite');
  return response;
};
