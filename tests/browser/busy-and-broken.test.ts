/* What is asked at the wrong moment or breaks off: it is said so with its status, and nothing typed is lost. */
import { DatabaseSync } from 'node:sqlite';
import { readdirSync, statSync } from 'node:fs';
import { request } from 'node:http';
import path from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, expect, test } from 'vitest';
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
      [`${trip}/party?/duplicate`, { startDate: '2027-07-05' }],
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
