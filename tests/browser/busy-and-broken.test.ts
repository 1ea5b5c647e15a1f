/* What is asked at the wrong moment or breaks off: it is said so with its status, and nothing typed is lost. */
import { DatabaseSync } from 'node:sqlite';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { request } from 'node:http';
import path from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { fillDemo, startBuiltApp, type BuiltApp } from '../../src/tooling/built-app.ts';

let app: BuiltApp;
let trip: string;
beforeAll(async () => {
  app = await startBuiltApp({ RIDGELARDER_READERS: '127.0.0.2' });
  trip = (await fillDemo(app.origin)).replace(/\/\w+$/, '');
});
afterAll(async () => {
  expect(await app.stop()).toBe(0);
});

const FORM = 'application/x-www-form-urlencoded';
const post = (address: string, fields: Record<string, string>, more: Record<string, string> = {}) =>
  fetch(app.origin + address, {
    method: 'POST',
    headers: { origin: app.origin, accept: 'text/html', 'content-type': FORM, ...more },
    body: new URLSearchParams(fields),
    redirect: 'manual',
  });
const read = async (address: string, origin = app.origin) => (await fetch(origin + address)).text();
const field = (html: string, name: string) =>
  new RegExp(`name="${name}" value="([^"]*)"`).exec(html)?.[1]?.replaceAll('&quot;', '"') ?? '';

test('busy is 503 with when to come again, wherever it arises', async () => {
  const other = new DatabaseSync(path.join(app.dataFolder, 'ridgelarder.sqlite'));
  other.exec('begin immediate');
  try {
    for (const [address, fields] of [
      [`${trip}/party?/duplicate`, { copyStart: '2027-07-05' }],
      ['/bin?/putBack', { id: 'what I typed' }],
    ] as const) {
      const response = await post(address, fields);
      const answer = await response.text();
      expect(response.status, address).toBe(503);
      expect(response.headers.get('retry-after'), address).toMatch(/^\d+$/);
      expect(answer, address).toMatch(/is writing|still being written/);
    }
  } finally {
    other.exec('rollback');
    other.close();
  }
});

/** Processes that the program has started to read and plan in. */
const workers = (): string[] =>
  readFileSync(`/proc/${app.pid}/task/${app.pid}/children`, 'utf8')
    .split(' ')
    .filter((pid) => pid !== '' && readCommand(pid).includes('apart/worker'));
const readCommand = (pid: string): string => {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return '';
  }
};

test.skipIf(process.platform !== 'linux')(
  'a plan that nobody waits for any more is ended, and the owner comes before what waits',
  async () => {
    const stock = Array.from({ length: 10_000 }, (_, index) => ({
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
    }));
    const party = Array.from({ length: 40 }, (_, index) => ({ name: `Eater ${index}` }));
    const trip = { name: 'Walk', startDate: '2027-07-01', dayCount: 1, party: party.slice(0, 1) };
    const long = { trip: { ...trip, dayCount: 90, party }, stock, settings: {} };
    // Large enough to wait its turn.
    const short = { trip, stock: stock.slice(0, 300), settings: {} };
    const order: string[] = [];
    const plan = (name: string, body: object, headers: Record<string, string> = {}) => {
      const sent = request(`${app.origin}/api/plan`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', ...headers },
      });
      const answered = new Promise<number>((resolve, reject) => {
        sent.on('error', reject).on('response', (response) => {
          text(response).then(() => {
            order.push(name);
            resolve(response.statusCode ?? 0);
          }, reject);
        });
      });
      sent.end(JSON.stringify(body));
      return { sent, answered };
    };
    const others = { 'x-forwarded-for': '192.0.2.7' };

    const left = plan('left', long, others);
    const broke = left.answered.catch((error: unknown) => error);
    const [worker] = await vi.waitUntil(() => (workers().length > 0 ? workers() : undefined), 20_000);
    const waiting = ['one', 'two', 'three'].map((name) => plan(name, short, others).answered);
    expect(await plan('owner', short).answered).toBe(200);
    expect(order).toEqual(['owner']);
    expect((await fetch(`${app.origin}/healthz`)).status).toBe(200);

    left.sent.destroy();
    expect(await broke).toMatchObject({ code: 'ECONNRESET' });
    expect(await Promise.all(waiting)).toEqual([200, 200, 200]);
    expect(order).toEqual(['owner', 'one', 'two', 'three']);
    expect(workers()).not.toContain(worker);
  },
);

test.each([
  '/shelf/new?/add',
  '/shelf/new/details',
  '/settings?/save',
  '/shelf/import?/file',
  '/trips/new?/open',
])('a broken form to %s is 400', async (address) => {
  const response = await fetch(app.origin + address, {
    method: 'POST',
    headers: { origin: app.origin, accept: 'text/html', 'content-type': 'multipart/form-data; boundary=x' },
    body: '--x\r\ncontent-disposition: form-data; name="code"\r\n\r\nbroken',
  });
  expect(response.status).toBe(400);
  expect(await response.text()).toMatch(/broke off/);
});

test('pouches are discarded once, however often two people send it', async () => {
  const code = /href="\/shelf\/(B\d+)"/.exec(await read('/shelf'))?.[1] ?? 'D02';
  const lastEntry = field(await read(`/shelf/${code}`), 'lastEntry');
  const discard = () => post(`/shelf/${code}?/discard`, { discarded: '1', discardReason: 'torn', lastEntry });
  expect((await discard()).status).toBe(303);
  const again = await discard();
  expect(again.status).toBe(409);
  expect(await again.text()).toMatch(/changed elsewhere[^]*none was discarded/);
});

test('what is set aside is what the page showed, or nothing', async () => {
  const page = await read(`${trip}/pouches`);
  const need = JSON.parse(field(page, 'need')) as { code: string; pouches: number }[];
  expect(need.length).toBeGreaterThan(0);
  const seen = need.map((line, index) => (index === 0 ? { ...line, pouches: line.pouches + 1 } : line));
  const refused = await post(`${trip}/pouches?/setAside`, {
    version: field(page, 'version'),
    need: JSON.stringify(seen),
  });
  expect(refused.status).toBe(409);
  expect(await refused.text()).toMatch(
    new RegExp(
      `nothing was set aside[^]*${need[0]!.code}[^]*${seen[0]!.pouches} then, ${need[0]!.pouches} now`,
    ),
  );
  const done = await post(`${trip}/pouches?/setAside`, {
    version: field(page, 'version'),
    need: JSON.stringify(need),
  });
  expect(done.status).toBe(303);

  // Who reads a lot is not told to which trips it is promised.
  const code = need[0]!.code;
  const id = trip.replace('/trips/', '');
  expect(await read(`/shelf/${code}`)).toContain(id);
  for (const address of [`/shelf/${code}`, `/shelf/${code}/__data.json`]) {
    const told = await read(address, app.readersOrigin);
    expect(told).toContain(code);
    expect(told).not.toContain(id);
  }
});

test('a trip file that is opened twice asks first', async () => {
  const file = await read(`${trip}/trip.json`);
  const open = (again: boolean) => {
    const body = new FormData();
    body.append('file', new File([file], 'trip.json'));
    if (again) body.append('again', 'yes');
    return fetch(`${app.origin}/trips/new?/open`, {
      method: 'POST',
      headers: { origin: app.origin, accept: 'text/html' },
      body,
      redirect: 'manual',
    });
  };
  const asked = await open(false);
  expect(asked.status).toBe(409);
  expect(await asked.text()).toMatch(/there is a trip [^]*name="again"/);
  expect((await open(true)).status).toBe(303);
});

test('the data folder is kept to its owner', () => {
  const modeOf = (file: string) => (statSync(file).mode & 0o777).toString(8);
  expect(modeOf(app.dataFolder)).toBe('700');
  for (const entry of readdirSync(app.dataFolder, { recursive: true, withFileTypes: true }))
    expect(modeOf(path.join(entry.parentPath, entry.name)), entry.name).toBe(entry.isFile() ? '600' : '700');
});

test('what another site asks for gets nothing, unless somebody is led here by a link', async () => {
  // `fetch` writes these headers by itself.
  const from = (headers: Record<string, string>) =>
    new Promise<{ status: number | undefined; body: string }>((resolve, reject) => {
      request(`${app.origin}/shelf`, { headers }, (response) => {
        text(response).then((body) => resolve({ status: response.statusCode, body }), reject);
      })
        .on('error', reject)
        .end();
    });
  const link = { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate', 'sec-fetch-dest': 'document' };
  expect((await from(link)).status).toBe(200);
  for (const odd of [
    { ...link, 'sec-fetch-dest': 'iframe' },
    { ...link, 'sec-fetch-mode': 'no-cors', 'sec-fetch-dest': 'image' },
    { ...link, 'sec-fetch-site': 'same-site', 'sec-fetch-mode': 'cors', 'sec-fetch-dest': 'empty' },
  ]) {
    expect(await from(odd)).toEqual({ status: 403, body: '' });
  }
});
