/* Requests that no browser sends: addresses and names of files that would lead out of the program, and bodies without end. */
import { readdirSync } from 'node:fs';
import { request } from 'node:http';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { fillDemo, startBuiltApp, type BuiltApp } from '../../src/tooling/built-app.ts';

let app: BuiltApp;
let trip: string;
beforeAll(async () => {
  app = await startBuiltApp();
  trip = (await fillDemo(app.origin)).replace(/\/\w+$/, '');
});
afterAll(async () => {
  expect(await app.stop()).toBe(0);
});

/** Asks for a path just as it is written, which `fetch` would tidy. */
const ask = (path: string) =>
  new Promise<{ status: number; body: string }>((resolve, reject) => {
    const { hostname, port } = new URL(app.origin);
    const sent = request({ hostname, port, path, headers: { accept: 'text/html' } }, (response) => {
      text(response).then((body) => resolve({ status: response.statusCode ?? 0, body }), reject);
    });
    sent.on('error', reject).end();
  });

const OUTSIDE = ['package.json', 'ridgelarder.sqlite', 'etc/passwd', 'src/hooks.server.ts'];
const UPWARDS = ['../', '..%2f', '%2e%2e/', '..%5c', '....//', '..;/', '%252e%252e%252f', '/', '%00../'];
const IN = [
  '',
  '_app/',
  '_app/immutable/',
  'shelf/',
  'shelf/import/',
  'trips/',
  'kitchen/recipes/',
  'settings/backups/',
  'shelf/labels/',
];
test('no address leads out of the program', async () => {
  for (const place of IN)
    for (const up of UPWARDS)
      for (const file of OUTSIDE)
        for (const times of [1, 4]) {
          const path = `/${place}${up.repeat(times)}${file.replaceAll('/', up.includes('%2f') ? '%2f' : '/')}`;
          const { status, body } = await ask(path);
          expect(status, path).toBeLessThan(500);
          expect(
            /SQLite format|root:x:0|"devDependencies"|HandleServerError/.exec(body)?.[0],
            path,
          ).toBeUndefined();
        }
});

test.each(['../../evil.csv', '/etc/evil', '..\\evil', 'x\u0000y', 'a'.repeat(5000)])(
  'an upload named %j lands in its folder',
  async (name) => {
    const body = 'code,recipe\nX1,soup\n';
    const headers = {
      origin: app.origin,
      'content-type': 'text/csv',
      'x-file-name': encodeURIComponent(name),
    };
    const response = await fetch(`${app.origin}/shelf/import/upload`, { method: 'POST', headers, body });
    expect(response.status).toBe(201);
    const found = readdirSync(app.dataFolder, { recursive: true }).map(String);
    expect(found.filter((file) => /evil|^x|aaa/.test(file))).toEqual([]);
    expect(readdirSync(`${app.dataFolder}/imports`).every((file) => /^[0-9a-f-]{36}$/.test(file))).toBe(true);
  },
);

const FORM = 'application/x-www-form-urlencoded';
const JSON_TYPE = 'application/json';
test.each([
  ['/settings?/save', FORM, 1_000_001],
  ['/shelf/new?/add', FORM, 1_000_001],
  ['/shelf/new/details', FORM, 1_000_001],
  ['/kitchen/foods?/import', 'multipart/form-data; boundary=x', 3_000_000],
  ['TRIP/notes.json', JSON_TYPE, 2_000_001],
  ['/api/plan', JSON_TYPE, 16_000_001],
  ['/shelf/import/upload', 'text/csv', 64_000_001],
  ['/shelf/import/upload', 'text/csv', 79_000_000],
  ['/shelf/import?/paste', FORM, 90_000_000],
])('%s takes no more than it says, and answers with words', async (path, type, bytes) => {
  const response = await fetch(app.origin + path.replace('TRIP', trip), {
    method: 'POST',
    headers: { origin: app.origin, accept: 'application/json', 'content-type': type },
    body: Buffer.alloc(bytes, 'a'),
  });
  const answer = await response.text();
  // The answer of an action is 200 for scripts and has its status inside.
  expect(
    response.status === 200 ? /"status":413/.test(answer) : response.status === 413,
    answer.slice(0, 200),
  ).toBe(true);
  expect(answer).toMatch(/larger than [\d,]+ MB/);
});

test.each([
  [
    'a stock of which every field is wrong',
    `{"trip":{},"stock":[${'{"zz":1},'.repeat(110_000).slice(0, -1)}]}`,
  ],
  ['a stock of more values than are taken', `{"trip":{},"stock":[${'{},'.repeat(5_000_000)}{}]}`],
  ['brackets without end', '['.repeat(5_000_000)],
  ['a million fields', `{${Array.from({ length: 900_000 }, (_, index) => `"k${index}":1`).join(',')}}`],
])('%s is answered with at most a hundred problems', async (_, body) => {
  const response = await fetch(`${app.origin}/api/plan`, {
    method: 'POST',
    headers: { origin: app.origin, 'content-type': JSON_TYPE },
    body,
  });
  const answer = await response.text();
  expect(response.status, answer.slice(0, 200)).toBe(400);
  expect(answer.length).toBeLessThan(50_000);
  const { problems } = JSON.parse(answer) as { problems: unknown[] };
  expect(problems.length).toBeGreaterThan(0);
  expect(problems.length).toBeLessThanOrEqual(100);
});

test('a compressed body is refused, not unpacked', async () => {
  const response = await fetch(`${app.origin}/api/plan`, {
    method: 'POST',
    headers: {
      origin: app.origin,
      accept: 'application/json',
      'content-type': JSON_TYPE,
      'content-encoding': 'gzip',
    },
    body: new Uint8Array([0x1f, 0x8b, 8]),
  });
  expect([response.status, await response.text()]).toEqual([
    415,
    expect.stringMatching(/compressed \(gzip\)/),
  ]);
});
