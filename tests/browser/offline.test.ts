/*
 * On the trail: what was opened once is there without a network, and notes taken there reach the ledger once, in order. Each test
 * builds on the one before.
 */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { keptAddresses, tripOf } from '../../src/lib/offline/kept-trips.ts';
import { atRest, barriers, checkPage, newDemoTrip, PHONE_PX, startApp, tooWide, visit } from './harness.ts';

const app = startApp();
/** What the browser says of requests that find no server, and the harness of pages that the service worker answers for. */
const NO_SERVER = /ERR_INTERNET_DISCONNECTED|ERR_CONNECTION|ERR_FAILED|ERR_EMPTY|Failed to fetch|503/;
/** The browser takes its time to keep what it needs; a loaded machine more. */
const KEEPING = { timeout: 60_000 };
/** A thumb's target; WCAG 2.2, 2.5.5 (AAA) asks for 44 px. */
const THUMB_PX = 48;

let trip = '';
/** A line of the first day whose lot is packed at least three times, and one of another lot. */
let much: Line;
let other: Line;
type Line = { readonly name: string; readonly code: string; readonly packed: number };

type Kept = {
  readonly kind: string;
  readonly code: string;
  readonly outcome: string;
  readonly pouches: number;
};
async function ledgerOf(code?: string): Promise<string[]> {
  const response = await fetch(`${app.origin}${trip}/notes.json`);
  const { notes } = (await response.json()) as { notes: Kept[] };
  return notes
    .filter((note) => code === undefined || note.code === code)
    .map(({ kind, outcome }) => `${kind}: ${outcome}`);
}

/** A phone on which the trip is kept. */
async function phone(at: string): Promise<Page> {
  const page = await app.open(at, { widthPx: PHONE_PX, keeps: true, expected: NO_SERVER });
  await expect
    .poll(
      () =>
        page.evaluate(
          async (addresses) =>
            (await Promise.all(addresses.map((address) => caches.match(address)))).every(Boolean) &&
            navigator.serviceWorker.controller !== null,
          keptAddresses(tripOf(trip) ?? ''),
        ),
      KEEPING,
    )
    .toBe(true);
  return page;
}

const textOf = (page: Page) => page.locator('main').innerText();
const groupOf = (page: Page, { name }: Line) => page.getByRole('group', { name, exact: true });
const tap = (page: Page, line: Line, button: string) =>
  groupOf(page, line).getByRole('button', { name: button, exact: true }).click();
async function halfLeftOver(page: Page, line: Line): Promise<void> {
  await tap(page, line, 'Left over');
  const choices = page.getByRole('group', { name: `Servings left over of ${line.name}` });
  await choices.getByRole('button', { name: '1/2', exact: true }).click();
}
const notedFor = (page: Page, { name }: Line) =>
  page.getByRole('list', { name: `Noted for ${name}` }).getByRole('listitem');
const unsent = (page: Page, count: number) =>
  page.getByText(`${count} trail ${count === 1 ? 'note' : 'notes'} not sent yet.`).waitFor();
const allSent = (page: Page) => page.getByText('not sent yet.').waitFor({ state: 'detached' });
/** What the browser says when the network came back; with devtools in between, as here, it may stay silent. */
const networkIsBack = (page: Page) => page.evaluate(() => void dispatchEvent(new Event('online')));
async function reconnect(page: Page): Promise<void> {
  await page.context().setOffline(false);
  await networkIsBack(page);
}

async function openDay(page: Page): Promise<void> {
  const day = page.locator('details', { has: page.locator('summary', { hasText: /^Day 1 / }) });
  if ((await day.getAttribute('open')) === null) await day.locator('summary').click();
}

beforeAll(async () => {
  trip = (await newDemoTrip(app)).replace(/\/\w+$/, '');
  const page = await app.open(`${trip}/pouches`);
  await page.getByRole('button', { name: /^Set aside \d+ pouches$/ }).click();
  await page.getByRole('button', { name: 'Pack', exact: true }).click();
  await page.getByText('The pouches are packed.').first().waitFor();
  await visit(page, `${trip}/card`);
  await openDay(page);
  const lines = await page.getByRole('group', { name: /of day \d+$/ }).evaluateAll((groups) =>
    groups.map((group) => ({
      name: group.ariaLabel ?? '',
      text: group.querySelector('p')?.textContent ?? '',
    })),
  );
  const read = lines.map(({ name, text }) => ({ name, code: /\d+ × (\S+)/.exec(text)?.[1] ?? '' }));
  const { menu } = (await (await fetch(`${app.origin}${trip}/trip.json`)).json()) as {
    menu: { opened: { code: string; pouches: number }[] }[];
  };
  const onFirstDay = read
    .filter(({ name }) => name.endsWith(' of day 1'))
    .map(({ name, code }) => ({
      name,
      code,
      packed: menu
        .flatMap(({ opened }) => opened)
        .filter((lot) => lot.code === code)
        .reduce((sum, { pouches }) => sum + pouches, 0),
    }))
    .sort((a, b) => b.packed - a.packed);
  const [most, ...rest] = onFirstDay;
  const second = rest.findLast(({ code }) => code !== most?.code);
  if (!most || most.packed < 3 || !second)
    throw new Error(`The demo's first day is ${JSON.stringify(read)}.`);
  [much, other] = [most, second];
});

test('can be installed: a manifest, icons of our own, a service worker, nothing that the browser finds lacking', async () => {
  const page = await phone(`${trip}/card`);
  const devtools = await page.context().newCDPSession(page);
  const { errors, url, data } = await devtools.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  expect(url).toBe(`${app.origin}/manifest.webmanifest`);
  const { icons } = JSON.parse(data ?? '') as { icons: { src: string; sizes: string; type: string }[] };
  for (const { src, sizes, type } of icons) {
    const response = await fetch(app.origin + src);
    expect(response.headers.get('content-type')).toBe(type);
    if (type !== 'image/png') continue;
    // Width and height stand at bytes 16 and 20 of a PNG file (ISO/IEC 15948, 11.2.2 IHDR).
    const png = Buffer.from(await response.arrayBuffer());
    expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
  }
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // Windows of a test are private ones, where nothing is installed.
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual(
    [],
  );
});

test('a trip opened once shows its card, menu and packing lists without a network, and says as of when', async () => {
  const page = await phone(`${trip}/water`);
  await page.context().setOffline(true);
  for (const [path, heading] of [
    ['card', 'Trail card'],
    ['menu', 'Menu'],
    ['loads', 'Pack weights'],
    ['packing', 'Packing lists'],
  ] as const) {
    await visit(page, `${trip}/${path}`);
    await page.reload();
    await page.getByText(/Offline: as of \w{3},? .*\d:\d\d/).waitFor();
    expect(await page.getByRole('heading', { name: heading, exact: true }).count()).toBe(1);
    expect(await barriers(page)).toEqual([]);
    expect(await tooWide(page)).toBe(0);
  }

  const tabs = page.getByRole('navigation', { name: 'Trip' });
  await tabs.getByRole('link', { name: 'Overview', exact: true }).click();
  await page.getByText('What next?').waitFor();
  await page.getByText('Offline: as of').waitFor();

  await reconnect(page);
  await page.getByText('Offline').waitFor({ state: 'detached' });
});

test('what is not kept says so and leads to what is', async () => {
  const page = await phone(`${trip}/card`);
  await page.context().setOffline(true);
  await page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('heading', { name: 'Offline' }).waitFor();
  expect(new URL(page.url()).pathname).toBe('/shelf');
  expect(await barriers(page)).toEqual([]);
  await page.getByRole('link', { name: /Trail card/ }).click();
  await page.getByRole('heading', { name: 'Trail card', exact: true }).waitFor();
});

test('in another language, what is kept follows, and what is not kept says so in that language', async () => {
  const page = await phone(`${trip}/card`);
  await page.getByRole('link', { name: 'Deutsch' }).click();
  await page.waitForFunction(() => document.documentElement.lang === 'de');
  const devtools = await page.context().newCDPSession(page);
  const { data } = await devtools.send('Page.getAppManifest');
  expect(JSON.parse(data ?? '')).toMatchObject({ lang: 'de' });
  const menuIsGerman = async (menu: string) =>
    (await (await caches.match(menu))?.text())?.includes('<html lang="de">');
  await expect.poll(() => page.evaluate(menuIsGerman, `${trip}/menu`), KEEPING).toBe(true);

  await page.context().setOffline(true);
  await visit(page, `${trip}/menu`);
  await page.getByText('Ohne Netz: Stand').waitFor();
  await page.goto(`${app.origin}/shelf`);
  await page.getByRole('heading', { name: 'Ohne Netz' }).waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  expect(await barriers(page)).toEqual([]);
});

test('an older version goes when the new one has what it had; only good answers are kept', async () => {
  const page = await phone(`${trip}/card`);
  await page.evaluate(async (card) => {
    for (const name of await caches.keys()) await caches.delete(name);
    await (await caches.open('trips-before')).put(card, new Response('old'));
    await caches.open('shell-before');
    for (const worker of await navigator.serviceWorker.getRegistrations()) await worker.unregister();
  }, `${trip}/card`);
  // A page that belongs to no trip: what the old version kept of it is asked for again.
  await visit(page, '/trips');
  await expect
    .poll(
      () => page.evaluate(async () => (await caches.keys()).map((name) => name.replace(/\d+$/, ''))),
      KEEPING,
    )
    .toEqual(['shell-', 'trips-']);
  const kept = await page.evaluate(async () => {
    const [name = ''] = (await caches.keys()).filter((each) => each.startsWith('trips-'));
    const cache = await caches.open(name);
    const requests = await cache.keys();
    return Promise.all(
      requests.map(async (request) => ({
        path: new URL(request.url).pathname,
        method: request.method,
        status: (await cache.match(request))?.status,
        isOld: (await (await cache.match(request))?.text()) === 'old',
      })),
    );
  });
  expect(kept).toEqual(
    keptAddresses(tripOf(trip) ?? '').map((path) => ({ path, method: 'GET', status: 200, isOld: false })),
  );
});

test('notes taken without a network, one of them undone, are entered once and in order when it is back', async () => {
  const page = await phone(`${trip}/card`);
  await page.context().setOffline(true);
  await page.reload();
  await openDay(page);
  for (const button of await groupOf(page, much).getByRole('button').all())
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(THUMB_PX);

  await tap(page, much, 'Eaten');
  await tap(page, much, 'Eaten');
  await tap(page, much, 'Brought home');
  await unsent(page, 3);
  await notedFor(page, much).nth(1).getByRole('button', { name: 'Undo' }).click();
  await unsent(page, 2);
  await halfLeftOver(page, other);
  await unsent(page, 3);
  expect(await barriers(page)).toEqual([]);
  expect(await tooWide(page)).toBe(0);

  await page.reload();
  await unsent(page, 3);
  await openDay(page);
  expect(await notedFor(page, much).allInnerTexts()).toEqual([
    expect.stringMatching(/1 pouch eaten.*not sent yet/),
    expect.stringMatching(/1 pouch brought home.*not sent yet/),
  ]);
  await visit(page, `${trip}/loads`);
  await unsent(page, 3);
  expect(await ledgerOf()).toEqual([]);

  await reconnect(page);
  await allSent(page);
  expect(await ledgerOf()).toEqual(['eaten: entered', 'brought home: entered', 'left over: entered']);
  await visit(page, `${trip}/card`);
  await openDay(page);
  expect(await notedFor(page, much).allInnerTexts()).toEqual([
    expect.stringMatching(/1 pouch eaten.*: entered/),
    expect.stringMatching(/1 pouch brought home.*: entered/),
  ]);
  expect(await ledgerOf()).toHaveLength(3);
  const lot = await app.open(`/shelf/${much.code}`);
  expect((await textOf(lot)).match(/noted on the trail/g)).toHaveLength(2);
});

test('a server that ends before it answers has entered the note once, however often it is sent', async () => {
  const page = await phone(`${trip}/card`);
  await openDay(page);
  await app.stop();
  await tap(page, much, 'Eaten');
  await page.getByText('There is no connection.').waitFor();
  await unsent(page, 1);
  expect(await notedFor(page, much).last().getByRole('button', { name: 'Undo' }).count()).toBe(1);

  const { promise: answerIsLost, resolve } = Promise.withResolvers<void>();
  await page.route('**/notes.json', async (route) => {
    await route.fetch();
    await app.stop();
    await route.abort();
    resolve();
  });
  await app.restart();
  await networkIsBack(page);
  await answerIsLost;
  await page.getByText(/1 pouch eaten.*being sent/).waitFor();
  await unsent(page, 1);
  expect(await notedFor(page, much).last().getByRole('button').count()).toBe(0);

  await page.unroute('**/notes.json');
  await app.restart();
  expect(await ledgerOf()).toHaveLength(4);
  await page.reload();
  await allSent(page);
  expect(await ledgerOf(much.code)).toEqual(['eaten: entered', 'brought home: entered', 'eaten: entered']);
});

test('more eaten than was packed is shown in words and kept until it is put away; what comes after it is entered', async () => {
  const page = await phone(`${trip}/card`);
  await page.context().setOffline(true);
  await openDay(page);
  const before = await ledgerOf();
  for (let pouch = 0; pouch <= other.packed; pouch += 1) await tap(page, other, 'Eaten');
  await halfLeftOver(page, other);
  await unsent(page, other.packed + 2);
  await reconnect(page);
  await allSent(page);
  expect((await ledgerOf()).slice(before.length)).toEqual([
    ...Array.from({ length: other.packed }, () => 'eaten: entered'),
    'eaten: conflict',
    'left over: entered',
  ]);

  const words = new RegExp(`1 pouch eaten, ${other.code}: .*only 0 are left in the packs`);
  await page.getByText(words).waitFor();
  expect(await barriers(page)).toEqual([]);
  expect(await tooWide(page)).toBe(0);
  await visit(page, '/trips');
  await page.getByText(words).waitFor();
  await page.getByRole('button', { name: /^Dismiss/ }).click();
  await page.getByText(words).waitFor({ state: 'detached' });
  await page.reload();
  await atRest(page);
  expect(await textOf(page)).not.toContain('do not fit');
});

test('notes are taken without a service worker too', async () => {
  const page = await app.open(`${trip}/card`, { widthPx: PHONE_PX });
  await openDay(page);
  const before = await ledgerOf();
  await halfLeftOver(page, other);
  await notedFor(page, other)
    .getByText(/: entered/)
    .waitFor();
  expect(await ledgerOf()).toEqual([...before, 'left over: entered']);
});

test('the card of a packed trip', () => checkPage(app, `${trip}/card`));

test('pages that take no notes load nothing for them', async () => {
  const page = await app.open('/trips');
  const scripts: Promise<string>[] = [];
  page.on('response', (response) => {
    if (response.url().endsWith('.js')) scripts.push(response.text());
  });
  await visit(page, '/');
  const texts = await Promise.all(scripts);
  expect(texts.length).toBeGreaterThan(0);
  expect(texts.filter((text) => text.includes('createObjectStore'))).toEqual([]);
});
