import { json } from '@sveltejs/kit';
import { app } from '$lib/server/app';
import type { RequestHandler } from './$types';
import { version } from '../../../package.json';

/** For whoever watches the program, without signing in: 200 `{ status: "ok", version, schema }` where its store answers, 503 `{ status: "no store", version }` where not. */
export const GET: RequestHandler = async () => {
  const schema = await app()
    .then((open) => open.schema())
    .catch(() => undefined);
  return json(schema === undefined ? { status: 'no store', version } : { status: 'ok', version, schema }, {
    status: schema === undefined ? 503 : 200,
    headers: { 'cache-control': 'no-store' },
  });
};
