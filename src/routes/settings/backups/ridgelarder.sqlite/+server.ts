import { toHttpError } from '$lib/server/to-http-error.ts';
import { everything } from '../download.ts';
import type { RequestHandler } from './$types';

/** Everything as it is now, as a database in one file. */
export const GET: RequestHandler = ({ locals: { app } }) => everything(app, 'sqlite').catch(toHttpError);
