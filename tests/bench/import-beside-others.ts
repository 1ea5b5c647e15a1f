/* How long others wait for the shelf page, and for a change of their own, while 100,000 pouch lots are imported. */
import { startBuiltApp } from '../../src/tooling/built-app.ts';
import { shelfCsv } from '../../src/lib/shelf-csv/write-shelf-csv.ts';
import { exampleLot } from '../support/examples.ts';

const LOTS = 100_000;
const IDLE_GETS = 100;

const app = await startBuiltApp();
const lots = Array.from({ length: LOTS }, (_, n) => exampleLot({ code: `L${n}` }));
const form = (fields: Record<string, string | Blob>) => {
  const body = new FormData();
  for (const [name, value] of Object.entries(fields)) body.append(name, value);
  return body;
};
const post = (path: string, fields: Record<string, string | Blob>) =>
  fetch(`${app.origin}${path}`, {
    method: 'POST',
    body: form(fields),
    headers: { origin: app.origin, accept: 'text/html' },
    redirect: 'manual',
  });
const get = async (path: string) => (await fetch(`${app.origin}${path}`)).text();
async function timed<T>(work: Promise<T>): Promise<[ms: number, result: T]> {
  const start = performance.now();
  const result = await work;
  return [performance.now() - start, result];
}
const told = (what: string, times: readonly number[]) => {
  const inOrder = times.toSorted((a, b) => a - b);
  const at = (share: number) => inOrder[Math.floor((inOrder.length - 1) * share)]?.toFixed(0) ?? '–';
  console.log(
    `${what}: ${times.length} times, median ${at(0.5)} ms, 95 % ${at(0.95)} ms, slowest ${at(1)} ms`,
  );
};

await get('/shelf'); // once, so that the compiler has seen the code
const idle: number[] = [];
for (let n = 0; n < IDLE_GETS; n++) idle.push((await timed(get('/shelf')))[0]);
told('GET /shelf, nothing else to do', idle);

const uploaded = await post('/shelf/import?/file', { file: new Blob([...shelfCsv(lots, 'EUR')]) });
const upload = uploaded.headers.get('location') ?? '';
const [readMs, preview] = await timed(get(upload));
console.log(`the preview: ${readMs.toFixed(0)} ms`);
const seen = /name="seen" value="([^"]+)"/.exec(preview)?.[1] ?? '';

const times: Record<string, number[]> = { read: [], write: [] };
let isDone = false;
const imported = timed(post(`${upload}?/import`, { seen })).finally(() => (isDone = true));
let change: Promise<[number, Response]> | undefined;
for (;;) {
  const phase = /Reading|Writing/.exec(await get(`${upload}/progress.json`))?.[0];
  if (phase === 'Writing') change ??= timed(post('/shelf/import?/paste', { text: 'code,recipe\nA,stew' }));
  const [ms, page] = await timed(get('/shelf'));
  if (isDone || /\/shelf\/L\d/.test(page)) break; // this page had all the lots to list
  times[phase === 'Writing' ? 'write' : 'read']!.push(ms);
}
const [importMs, { status }] = await imported;
if (status !== 303) throw new Error(`the import ended with ${status}`);
console.log(`the import: ${importMs.toFixed(0)} ms`);
told('GET /shelf while the file is read', times['read']!);
told('GET /shelf while the lots are written', times['write']!);
const [changeMs, answer] = (await change) ?? [];
console.log(
  `a change of somebody else, asked for meanwhile: ${changeMs?.toFixed(0)} ms, answered ${answer?.status}`,
);
await app.stop();
