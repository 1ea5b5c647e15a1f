/* Every page, filled and empty: no barrier that axe finds, nothing wider than the window, no link that leads nowhere. */
import { describe, expect, test } from 'vitest';
import { barriers, checkPage, PHONE_PX, startApp } from './harness.ts';

const app = startApp();

const EMPTY = [
  '/',
  '/shelf',
  '/shelf/new',
  '/shelf/new/details',
  '/shelf/import',
  '/shelf/labels',
  '/trips',
  '/trips/new',
  '/settings',
  '/method',
];
const OF_A_TRIP = [
  'party',
  'route',
  'menu',
  'menu?change=2-dinner',
  'loads',
  'packing',
  'water',
  'missing',
  'shopping',
  'nutrition',
  'what-moves-it',
  'weighing',
  'card',
  'pouches',
];

describe('before anything is entered', () => {
  test.each(EMPTY)('%s', (address) => checkPage(app, address));
});

describe('with the demo', () => {
  let trip = '';

  test('one click fills it in', async () => {
    const page = await app.open('/');
    await page.getByRole('button', { name: 'Load the demo' }).click();
    await page.waitForURL(/\/trips\/[\w-]{36}$/);
    trip = new URL(page.url()).pathname;
    expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe('Five days over the ridge');
  });

  test.each([
    '/',
    '/shelf',
    '/shelf/D01',
    '/shelf/pictures',
    '/shelf/labels?code=D01&code=D02',
    '/shelf/labels?code=X',
    '/trips',
    '/trips/compare',
    '/bin',
    '/settings',
  ])('%s', (address) => checkPage(app, address));
  test.each(OF_A_TRIP)('%s of a trip', (page) => checkPage(app, `${trip}/${page}`));

  test('every link leads somewhere', async () => {
    const page = await app.open('/');
    const seen = new Set<string>(['/']);
    const waiting = ['/'];
    const dead: string[] = [];
    for (let address = waiting.pop(); address !== undefined; address = waiting.pop()) {
      const response = await page.request.get(address);
      if (!response.ok()) dead.push(`${response.status()} ${address}`);
      if (!response.headers()['content-type']?.startsWith('text/html')) continue;
      for (const [, href = ''] of (await response.text()).matchAll(/<a [^>]*href="([^"]+)"/g)) {
        const { pathname, search, origin } = new URL(
          href.replaceAll('&amp;', '&'),
          new URL(address, app.origin),
        );
        // Of the many filters and choices of one page, the first one met stands for all.
        if (origin !== app.origin || seen.has(pathname)) continue;
        seen.add(pathname);
        waiting.push(pathname + search);
      }
    }
    expect(seen.size).toBeGreaterThan(30);
    expect(dead).toEqual([]);
  });

  test('a page that is not there says so', async () => {
    const page = await app.open('/nowhere', { expected: /404/ });
    expect(await page.locator('main').innerText()).toContain('There is no page at /nowhere.');
    expect(await barriers(page)).toEqual([]);
  });
});

test('one field finds lots, recipes and foods from any page without scripts, and its key can be switched off', async () => {
  const page = await app.open('/kitchen', { scripts: false });
  const field = page.getByRole('searchbox', { name: 'Find anything' });
  expect(await field.getAttribute('accesskey')).toBe('k');
  await field.fill('lentil');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Find anything', level: 1 }).waitFor();
  const lots = page.getByRole('region', { name: 'Lots' });
  const [first] = await lots.getByRole('link').allInnerTexts();
  await page.getByRole('region', { name: 'Foods' }).getByRole('link').first().waitFor();
  await lots.getByRole('link').first().click();
  expect(await page.getByRole('heading', { level: 1 }).innerText()).toContain(first ?? '?');

  await page.goto(`${app.origin}/search?q=no-such-thing-anywhere`);
  await page.getByText('Nothing found for "no-such-thing-anywhere".').waitFor();
  await page.goto(`${app.origin}/settings`);
  await page.getByRole('button', { name: 'Switch the key off' }).click();
  await page.getByText('No key goes to the search field').waitFor();
  expect(await field.getAttribute('accesskey')).toBeNull();
});

test('a phone reaches the search by one button', async () => {
  const page = await app.open('/shelf', { widthPx: PHONE_PX });
  await page.getByRole('banner').getByRole('button', { name: 'Find' }).click();
  await page.waitForURL('**/search**');
  await checkPage(app, '/search?q=lentil');
});
