import { json } from '@sveltejs/kit';
import { app } from '$lib/server/app';
import type { RequestHandler } from './$types';
import { version } from '../../../package.json';

/**
 * For whoever watches the program, without signing in: 200 `{ status: "ok", version, schema }` where its store answers, 503 `{ status: "damaged", version, schema }`
 * where it does and something was found wrong with what is in it, 503 `{ status: "no store", version }` where not.
 */
export const GET: RequestHandler = async () => {
  const open = await app().catch(() => undefined);
  const schema = await open?.schema().catch(() => undefined);
  const status = schema === undefined ? 'no store' : open?.backups.damage ? 'damaged' : 'ok';
  return json(
    { status, version, ...(schema !== undefined && { schema }) },
    { status: status === 'ok' ? 200 : 503, headers: { 'cache-control': 'no-store' } },
  );
};
