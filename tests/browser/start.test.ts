import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { expect, test } from 'vitest';
import { newDemoTrip, projectFile, startApp } from './harness.ts';
import { readFileSync } from 'node:fs';
import { readQr } from './read-qr.ts';

/** Another address of this machine, in place of one in the network. */
const READERS_AT = '127.0.0.2';
const app = startApp({ RIDGELARDER_READERS: READERS_AT });

test('the address answers, under its own name only', async () => {
  const page = await app.open('/');
  expect(await page.title()).toBe('Ridgelarder');

  const { port } = new URL(app.origin);
  const other = await fetch(`http://localhost:${port}/shelf`, { redirect: 'manual' });
  expect(other.status).toBe(307);
  expect(other.headers.get('location')).toBe(`${app.origin}/shelf`);
});

test('a form posted from another site is refused', async () => {
  const response = await fetch(`${app.origin}/demo`, {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded', origin: 'http://elsewhere.example' },
  });
  expect(response.status).toBe(403);
});

test('plans over HTTP', async () => {
  const trip = JSON.parse(readFileSync(projectFile('demo-data/trip.json'), 'utf8'));
  const post = (body: unknown) =>
    fetch(`${app.origin}/api/plan`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  const good = await post({ trip });
  expect(good.status).toBe(200);
  expect(await good.json()).toMatchObject({ tripName: trip.name, totals: { pouches: 0 } });

  const bad = await post({ trip: { ...trip, dayCount: 400 } });
  expect(bad.status).toBe(400);
  expect(await bad.json()).toMatchObject({ problems: [{ field: 'trip.dayCount' }] });

  expect((await post({ trip, stock: 'x'.repeat(17_000_000) })).status).toBe(413);
});

test('at the address for readers, lots and trail cards are read, and nothing else', async () => {
  const trip = (await newDemoTrip(app)).replace(/\/\w+$/, '');
  const readers = app.readersOrigin;
  expect(new URL(readers).hostname).toBe(READERS_AT);

  const lot = await app.open(`${readers}/shelf/D02`);
  const text = await lot.locator('main').innerText();
  expect(text).toMatch(/Bean chilli with beef[^]*At home[^]*Water for a serving[^]*Allergens/);
  expect(await lot.locator('form, header nav').count()).toBe(0);
  const card = await app.open(`${readers}${trip}/card`);
  expect(await card.locator('main').innerText()).toContain('Day 1');
  expect(await card.locator('main').innerText()).not.toContain('RIDGELARDER_READERS');
  await card.getByRole('link', { name: 'Packing lists' }).click();
  await card.getByRole('heading', { name: 'Tarek packs' }).waitFor();
  await card.getByRole('link', { name: 'trail card' }).click();
  await card.getByRole('heading', { name: 'Day 1' }).waitFor();
  const ofTrip = await app.open(`${trip}/card`);
  const code = ofTrip.getByRole('img', { name: 'QR code' });
  expect(await readQr(code)).toBe(`${readers}${trip}/card`);
  await ofTrip.emulateMedia({ media: 'print' });
  expect(await code.isVisible()).toBe(false);
  const file = await fetch(`${readers}${trip}/card.html`);
  expect(await file.text()).toMatch(/Day 1/);

  for (const path of [
    '/',
    '/shelf',
    '/shelf/new',
    '/shelf/new/details',
    '/settings',
    '/kitchen',
    `${trip}/party`,
    `${trip}/trip.json`,
    `${trip}/cardXhtml`,
    `${trip}/packing/all`,
    `${trip}/loads`,
    `${trip}/shopping`,
  ])
    expect((await fetch(readers + path)).status, path).toBe(403);
  const post = await fetch(`${readers}/shelf/D02?/discard`, {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded', origin: readers },
    body: 'discarded=1&discardReason=x',
  });
  expect(post.status).toBe(403);

  // the QR codes of the labels lead there
  const labels = await app.open('/shelf/labels?code=D02');
  expect(await labels.locator('[name="address"]').getAttribute('placeholder')).toContain(readers);
});

test('who reads there is not told what anybody weighs', async () => {
  const trip = {
    ...JSON.parse(readFileSync(projectFile('demo-data/trip.json'), 'utf8')),
    name: 'What Ada weighs',
    party: [{ name: 'Ada', body: { sex: 'female', ageY: 41, heightM: 1.7, massG: 61_234 } }],
  };
  const body = new FormData();
  body.append('file', new Blob([JSON.stringify(trip)]), 'trip.json');
  const opened = await fetch(`${app.origin}/trips/new?/open`, {
    method: 'POST',
    headers: { origin: app.origin, accept: 'text/html' },
    body,
    redirect: 'manual',
  });
  const card = (opened.headers.get('location') ?? '').replace(/menu$/, 'card');
  const read = async (origin: string, path: string) => (await fetch(origin + path)).text();
  expect(await read(app.origin, card)).toContain('61234');
  for (const path of [card, `${card}/__data.json`, `${card}.html`, card.replace(/card$/, 'packing')]) {
    const text = await read(app.readersOrigin, path);
    expect(text, path).toContain('Ada');
    expect(text, path).not.toContain('61234');
  }
});

test('an address that this machine does not have is named before anything starts', async () => {
  const program = spawn(process.execPath, [projectFile('src/tooling/start.ts')], {
    env: { ...process.env, PORT: '0', RIDGELARDER_READERS: '203.0.113.7' },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  program.stderr.on('data', (piece) => (said += piece));
  const [code] = await once(program, 'exit');
  expect(code).toBe(1);
  expect(said).toMatch(/RIDGELARDER_READERS is "203\.0\.113\.7", which is no IPv4 address of this machine/);
});
