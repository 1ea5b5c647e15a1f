/*
 * Second part of `npm run test:fuzz`: sends the largest and worst bodies that each reader lets through to the program in a process of its own, one after the other, while
 * somebody else asks for a page all the time. It prints how long that one waited at most and how much memory the process took, and fails where that is more than
 * 250 ms or 400 MB. On a machine that does other things meanwhile, the first says more of the machine than of the program.
 */
import { once } from 'node:events';
import { setTimeout as sleep } from 'node:timers/promises';
import { copyFileSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import path, { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { Worker } from 'node:worker_threads';
import { ensureBuilt } from '../../src/tooling/build.ts';
import { fillDemo, startBuiltApp } from '../../src/tooling/built-app.ts';
import { ROOT } from '../../src/tooling/run.ts';

const MOST_WAIT_MS = 250;
const MOST_MB = 400;

if (!ensureBuilt()) throw new Error('The build failed.');
const app = await startBuiltApp();
const trip = (await fillDemo(app.origin)).replace(/\/\w+$/, '');
await fetch(`${app.origin}/settings/backups?/make`, {
  method: 'POST',
  headers: { origin: app.origin, 'content-type': 'application/x-www-form-urlencoded' },
  redirect: 'manual',
});
const copy = readdirSync(join(app.dataFolder, 'backups')).find((name) => name.includes('by-hand')) ?? '';

const file = (content: string | Uint8Array<ArrayBuffer>, name: string) => {
  const body = new FormData();
  body.append('file', new File([content], name));
  return body;
};
/** As much of a piece as fits. */
const filled = (piece: string, bytes: number, before = '', after = '') =>
  before + piece.repeat(Math.floor((bytes - before.length - after.length) / piece.length)) + after;

const TRIP = JSON.parse(readFileSync(path.join(ROOT, 'demo-data/trip.json'), 'utf8')) as object;
const point = '<trkpt lat="46.12345" lon="9.12345"><ele>1234.5</ele></trkpt>';
const track = (bytes: number) => {
  let points = '';
  for (let i = 0; points.length < bytes; i++)
    points += `<trkpt lat="${(46 + (i % 1000) / 1e5).toFixed(5)}" lon="${(9 + i / 1e6).toFixed(6)}"><ele>1234.5</ele></trkpt>`;
  return `<gpx><trk><trkseg>${points}</trkseg></trk></gpx>`;
};
/** A copy of the demo with something more in it. */
function changedCopy(sql: string): Uint8Array<ArrayBuffer> {
  const path = join(app.dataFolder, 'changed.sqlite');
  copyFileSync(join(app.dataFolder, 'backups', copy), path);
  const database = new DatabaseSync(path);
  database.exec(`pragma synchronous = off; begin; ${sql}; commit`);
  database.close();
  const bytes = readFileSync(path);
  rmSync(path);
  return new Uint8Array(bytes);
}
const COUNTING = 'with recursive n(i) as (select 1 union all select i + 1 from n limit';
const foreignCopy = () =>
  changedCopy(
    `create table odd (x); insert into odd select i from (${COUNTING} 3000000) select i from n);
     create view endless as with recursive n(i) as (select 1 union all select i + 1 from n) select i from n`,
  );
const crowdedCopy = () =>
  changedCopy(
    `insert into mappings ("headerSignature", mapping) select i, '{}' from (${COUNTING} 1500000) select i from n)`,
  );
const CSV_HEAD = 'code,recipe,meal_kinds,sealed_on,best_before,pouches\n';
const FORM = 'application/x-www-form-urlencoded';

type Case = readonly [name: string, address: string, body: () => string | FormData, type?: string];
const JSON_TYPE = 'application/json';
const CASES: readonly Case[] = [
  [
    'plan: lots with every field wrong',
    '/api/plan',
    () => filled('{"zz":1},', 16e6, '{"trip":{},"stock":[', '{}]}'),
    JSON_TYPE,
  ],
  [
    'plan: 99,999 lots with every field wrong',
    '/api/plan',
    () => `{"trip":{},"stock":[${'{"zz":1},'.repeat(99_998)}{}]}`,
    JSON_TYPE,
  ],
  ['plan: empty lists', '/api/plan', () => filled('[],', 16e6, '[', '[]]'), JSON_TYPE],
  ['plan: a million values', '/api/plan', () => `[${'{},'.repeat(499_000)}{}]`, JSON_TYPE],
  ['plan: brackets', '/api/plan', () => '['.repeat(16e6), JSON_TYPE],
  ['plan: one text', '/api/plan', () => `{"trip":"${'x'.repeat(15.9e6)}"}`, JSON_TYPE],
  [
    'plan: fields',
    '/api/plan',
    () => `{${Array.from({ length: 990_000 }, (_, index) => `"k${index}":1`).join(',')}}`,
    JSON_TYPE,
  ],
  ['plan: no JSON', '/api/plan', () => 'x'.repeat(16e6), JSON_TYPE],
  [
    'plan: forty people, ninety days, a long stock',
    '/api/plan',
    () =>
      JSON.stringify({
        trip: {
          ...TRIP,
          dayCount: 90,
          days: [],
          menu: [],
          party: Array.from({ length: 40 }, (_, index) => ({ name: `E${index}` })),
        },
        stock: Array.from({ length: 10_000 }, (_, index) => ({
          code: `L${index}`,
          recipe: `Recipe ${index % 500}`,
          mealKinds: ['dinner', 'lunch', 'breakfast', 'snack'],
          sealedOn: '2026-06-01',
          bestBefore: '2029-06-01',
          pouches: 9,
          servingsPerPouch: 2,
          dryWeightG: 120,
          energyKcal: 500,
          waterMl: 300,
          waterKind: 'boiling',
          steepMin: 12,
          tareG: 14,
        })),
      }),
    JSON_TYPE,
  ],
  ['notes: empty lists', `${trip}/notes.json`, () => filled('[],', 2e6, '{"notes":[', '[]]}'), JSON_TYPE],
  ['notes: wrong', `${trip}/notes.json`, () => filled('{"zz":1},', 2e6, '{"notes":[', '{}]}'), JSON_TYPE],
  ['a track', `${trip}/route?/import`, () => file(track(19.9e6), 'x.gpx')],
  ['GPX: nested tags', `${trip}/route?/import`, () => file(filled('<a>', 19.9e6, '<gpx>'), 'x.gpx')],
  [
    'GPX: points without end',
    `${trip}/route?/import`,
    () => file(filled(point, 19.9e6, '<gpx><trk><trkseg>'), 'x.gpx'),
  ],
  [
    'GPX: attributes',
    `${trip}/route?/import`,
    () =>
      file(`<gpx ${Array.from({ length: 2_000_000 }, (_, index) => `a${index}="1"`).join(' ')}/>`, 'x.gpx'),
  ],
  [
    'GPX: text',
    `${trip}/route?/import`,
    () => file(filled('x', 19.9e6, '<gpx><trk><name>', '</name></trk></gpx>'), 'x.gpx'),
  ],
  [
    'GPX: empty tracks',
    `${trip}/route?/import`,
    () => file(filled('<trk/>', 19.9e6, '<gpx>', '</gpx>'), 'x.gpx'),
  ],
  [
    'foods: odd rows',
    '/kitchen/foods?/import',
    () => file(filled('a,b,c,d\n', 1.99e6, 'name,protein,fat,carbohydrate\n'), 'x.csv'),
  ],
  ['foods: columns', '/kitchen/foods?/import', () => file(filled('name,', 0.99e6) + '\n1,2\n', 'x.csv')],
  [
    'foods: quotation marks',
    '/kitchen/foods?/import',
    () => file(filled('"a""', 1.99e6, 'name,protein,fat,carbohydrate\n'), 'x.csv'),
  ],
  ['trip file: empty lists', '/trips/new?/open', () => file(filled('[],', 0.99e6, '[', '[]]'), 'x.json')],
  [
    'trip file: meals',
    '/trips/new?/open',
    () => file(filled('{"zz":1},', 0.99e6, '{"menu":[', '{}]}'), 'x.json'),
  ],
  [
    'shelf: a long table',
    '/shelf/import?/file',
    () => file(filled('L1,soup,dinner,2026-01-01,2028-01-01,3\n', 63.9e6, CSV_HEAD), 'x.csv'),
  ],
  ['shelf: quotation marks', '/shelf/import?/file', () => file(filled('"a""', 63.9e6, CSV_HEAD), 'x.csv')],
  ['shelf: empty lines', '/shelf/import?/file', () => file(filled(',\n', 63.9e6, CSV_HEAD), 'x.csv')],
  [
    'shelf, pasted',
    '/shelf/import?/paste',
    () => `text=${encodeURIComponent(filled('L1,soup,dinner,2026-01-01,2028-01-01,3\n', 2.2e6, CSV_HEAD))}`,
    FORM,
  ],
  [
    'copy: rows',
    '/settings/backups?/upload',
    () => file(filled('{},', 63.9e6, '{"format":"ridgelarder-data","tables":"x","lots":[', '{}]}'), 'x.json'),
  ],
  ['copy: brackets', '/settings/backups?/upload', () => file(filled('{"a":', 63.9e6), 'x.json')],
  ['copy: one row', '/settings/backups?/upload', () => file(`{"a":["${'x'.repeat(63.8e6)}"]}`, 'x.json')],
  ['copy: SQLite with tables of its own', '/settings/backups?/upload', () => file(foreignCopy(), 'x.sqlite')],
  ['copy: SQLite with very many rows', '/settings/backups?/upload', () => file(crowdedCopy(), 'x.sqlite')],
  [
    'recipe: lines',
    '/kitchen/recipes/paste?/paste',
    () => `text=${encodeURIComponent(filled('200 g rice\n', 2.2e6))}`,
    FORM,
  ],
  [
    'recipe: a saved page',
    '/kitchen/recipes/paste?/paste',
    () => file(filled('<a>', 3.9e6, '<script type="application/ld+json">{', '}</script>'), 'x.html'),
  ],
  ['form: fields', '/shelf/new?/add', () => filled('a&', 0.99e6), FORM],
  ['form: just as many fields as are taken', '/shelf/new?/add', () => 'a&'.repeat(20_000), FORM],
  ['form: lines of a recipe', '/kitchen/recipes/new', () => filled('ingredients=x&', 0.99e6), FORM],
  [
    'form: people',
    '/trips/new?/plan',
    () => Array.from({ length: 40_000 }, (_, index) => `party[${index}].name=x`).join('&'),
    FORM,
  ],
  [
    'form: settings',
    '/settings?/save',
    () => Array.from({ length: 40_000 }, (_, index) => `staples[${index}].name=x`).join('&'),
    FORM,
  ],
];

/**
 * Somebody else, in a thread of its own, so that it does not wait for the one who sends. Memory is that of the program with the processes
 * that it started.
 */
const OTHERS = String.raw`
  const { readFileSync, readdirSync } = require('node:fs');
  const { parentPort, workerData: { address, pid } } = require('node:worker_threads');
  const status = (id, what) => {
    try {
      return new RegExp(what + ':\\s+(\\d+)').exec(readFileSync('/proc/' + id + '/status', 'utf8'))?.[1];
    } catch {
      return undefined;
    }
  };
  const family = () =>
    [String(pid), ...readdirSync('/proc').filter((id) => /^\d+$/.test(id) && status(id, 'PPid') === String(pid))];
  /** Pages that several processes share are counted once: each has its part of them. */
  const proportional = (id) => {
    try {
      return Number(/^Pss:\s+(\d+)/m.exec(readFileSync('/proc/' + id + '/smaps_rollup', 'utf8'))?.[1] ?? 0);
    } catch {
      return 0;
    }
  };
  const megabytes = () => family().map((id) => proportional(id) / 1024);
  let [longestMs, mostMB, parts, isDone] = [0, 0, [], false];
  parentPort.on('message', () => (isDone = true));
  (async () => {
    await (await fetch(address)).text();
    parentPort.postMessage('begun');
    while (!isDone) {
      const began = performance.now();
      await (await fetch(address)).text();
      longestMs = Math.max(longestMs, performance.now() - began);
      const now = megabytes();
      const sum = now.reduce((one, other) => one + other, 0);
      if (sum > mostMB) [mostMB, parts] = [sum, now];
      await new Promise((wake) => setTimeout(wake, 10));
    }
    parentPort.postMessage({ longestMs, mostMB, parts });
  })();`;

// The demo's menu was looked for in processes that rest for a while, and are no part of what is measured here.
const children = () => readFileSync(`/proc/${app.pid}/task/${app.pid}/children`, 'utf8').trim();
while (children() !== '') await sleep(500);
let failures = 0;
console.log(`Others wait at most ${MOST_WAIT_MS} ms, memory is at most ${MOST_MB} MB:`);
const only = process.argv[2];
for (const [name, address, body, type] of CASES.filter(
  ([called]) => only === undefined || called.match(only),
)) {
  const sent = body();
  const others = new Worker(OTHERS, {
    eval: true,
    workerData: { address: `${app.origin}/healthz`, pid: app.pid },
  });
  await once(others, 'message');
  const headers = {
    origin: app.origin,
    accept: 'application/json',
    ...(type !== undefined && { 'content-type': type }),
  };
  const began = performance.now();
  const answer = await fetch(app.origin + address, {
    method: 'POST',
    headers,
    body: sent,
    redirect: 'manual',
  })
    .then(async (response) => `${response.status}, ${(await response.text()).length} characters`)
    .catch((error: unknown) => `broke off: ${String(error)}`);
  const tookMs = performance.now() - began;
  others.postMessage('end');
  const [{ longestMs, mostMB, parts }] = (await once(others, 'message')) as [
    { longestMs: number; mostMB: number; parts: readonly number[] },
  ];
  await others.terminate();
  const isBad = longestMs > MOST_WAIT_MS || mostMB > MOST_MB || /^5|broke/.test(answer);
  if (isBad) failures += 1;
  console.log(
    `${isBad ? '✗' : '✓'} ${name}: waited ${longestMs.toFixed(0)} ms, ${mostMB.toFixed(0)} MB (${parts.map((part) => part.toFixed(0)).join(' + ')}); answered after ${(tookMs / 1000).toFixed(1)} s: ${answer}`,
  );
}
await app.stop();
console.log(failures === 0 ? 'All is well.' : `${failures} of ${CASES.length} went beyond.`);
process.exit(failures === 0 ? 0 : 1);
