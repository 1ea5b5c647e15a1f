/*
 * `npm run bench -- load`: many at once. 200 requests a second for a minute, nineteen readings to one plan; then as many requests as an hour of that brings, as fast as
 * they are answered, with the heap after a collection at the beginning, in the middle and at the end; then a crowd that asks for plans only. All on this machine, over loopback.
 * `node --expose-gc tests/bench/load.ts --seconds 60 --hour 720000` says how much of it.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import autocannon, { type Options, type Result } from 'autocannon';
import { ensureBuilt } from '../../src/tooling/build.ts';
import { fillDemo } from '../../src/tooling/built-app.ts';
import { ROOT } from '../../src/tooling/run.ts';
import { serve } from '../../src/tooling/serve.ts';

const { values } = parseArgs({
  options: { seconds: { type: 'string', default: '60' }, hour: { type: 'string', default: '720000' } },
});
const RATE = 200;
const CONNECTIONS = 20;

if (!ensureBuilt()) throw new Error('The build failed.');
const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-load-'));
process.env['RIDGELARDER_DATA'] = folder;
const app = await serve({ port: 0, names: [], hasPassphrase: false });
const trip = (await fillDemo(app.origin)).replace(/\/\w+$/, '');

const READ = [
  '/',
  '/shelf',
  '/shelf/B01',
  '/shelf/lots.json',
  '/trips',
  '/kitchen',
  '/settings',
  '/method',
  '/healthz',
  '/shelf/export.csv',
].concat(
  ['menu', 'card', 'packing', 'loads', 'water', 'shopping', 'missing', 'trip.json', 'notes.json'].map(
    (page) => `${trip}/${page}`,
  ),
);
const plan = {
  method: 'POST' as const,
  path: '/api/plan',
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify({
    trip: JSON.parse(readFileSync(path.join(ROOT, 'demo-data/trip.json'), 'utf8')) as unknown,
  }),
};
const mix = [...READ.map((read) => ({ method: 'GET' as const, path: read })), plan];

/** In a thread of its own, so that the heap measured here is the server's. */
const load = (options: Omit<Options, 'url'>): Promise<Result> =>
  autocannon({
    url: app.origin,
    connections: CONNECTIONS,
    workers: 1,
    timeout: 30,
    requests: mix,
    ...options,
  });
const row = (name: string, { latency, requests, non2xx, errors, duration }: Result) =>
  console.log(
    `${name}: ${requests.total} answers in ${duration} s (${Math.round(requests.total / duration)}/s), p50 ${latency.p50} ms, p99 ${latency.p99} ms, longest ${latency.max} ms, ${non2xx} refused, ${errors} errors`,
  );
const heapMb = () => {
  globalThis.gc?.();
  globalThis.gc?.();
  return Math.round(process.memoryUsage().heapUsed / 1e5) / 10;
};

await load({ amount: 400 });
row(`${RATE} a second`, await load({ overallRate: RATE, duration: Number(values.seconds) }));
const heaps = [heapMb()];
for (const half of ['first', 'second']) {
  row(`${half} half of an hour's requests`, await load({ amount: Number(values.hour) / 2 }));
  heaps.push(heapMb());
}
console.log(`heap after a collection, MB: ${heaps.join(', ')}`);
row('a crowd that asks for plans', await load({ connections: 100, duration: 10, requests: [plan] }));
await app.stop();
rmSync(folder, { recursive: true, force: true });
process.exit(0);
