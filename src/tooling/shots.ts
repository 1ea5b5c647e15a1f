/*
 * `npm run shots`: takes the pictures of docs/guide from the built app with the demo. `npm run shots -- --all FOLDER` takes every page
 * in three widths, light and dark, for looking at. The clocks of the app and of the browser stand in June 2027, so that pictures change
 * only where the pages do (or the fonts of the machine).
 */
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'playwright';
import { fillIn, press, startBrowser, visit } from './browse.ts';
import { ensureBuilt } from './build.ts';
import { clockFrom, fillDemo, startBuiltApp } from './built-app.ts';
import { everyAddress, LABELS, type Things } from './every-address.ts';
import { beginDemoImport, cookDemoBatch } from './demo-batches.ts';
import { ROOT } from './run.ts';

/** Three weeks before the demo's trip: time to dry what is missing. */
const NOW = '2027-06-14T09:00:00Z';
const DESK_PX = 1280;
const PHONE_PX = 360;

type Shot = {
  readonly file: string;
  readonly address: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** What stands at the upper edge; the head of the page where none is given. */
  readonly from?: string;
};

const START: Shot = { file: 'start', address: '/', widthPx: DESK_PX, heightPx: 700 };
const guideShots = ({ trip, hungryTrip, recipe, drying }: Things): readonly Shot[] => [
  { file: 'recipe', address: recipe, widthPx: DESK_PX, heightPx: 900 },
  { file: 'batch', address: drying, widthPx: DESK_PX, heightPx: 900, from: '#dry' },
  { file: 'labels', address: LABELS, widthPx: 860, heightPx: 620, from: '.sheet' },
  { file: 'shelf', address: '/shelf', widthPx: DESK_PX, heightPx: 800 },
  { file: 'lot', address: '/shelf/D01', widthPx: PHONE_PX, heightPx: 720 },
  { file: 'menu', address: `${trip}/menu`, widthPx: DESK_PX, heightPx: 900 },
  { file: 'loads', address: `${trip}/loads`, widthPx: DESK_PX, heightPx: 800, from: 'main h2' },
  { file: 'packing', address: `${trip}/packing`, widthPx: PHONE_PX, heightPx: 720, from: 'main h2' },
  { file: 'card', address: `${trip}/card`, widthPx: 640, heightPx: 900, from: 'main h2' },
  { file: 'missing', address: `${hungryTrip}/missing`, widthPx: DESK_PX, heightPx: 900, from: 'main h2' },
];

async function openPage(browser: Browser, origin: string): Promise<Page> {
  const context = await browser.newContext({ baseURL: origin, reducedMotion: 'reduce', locale: 'en-GB' });
  await context.clock.setFixedTime(NOW);
  return context.newPage();
}

async function takeForGuide(page: Page, shots: readonly Shot[]): Promise<void> {
  for (const { file, address, widthPx, heightPx, from } of shots) {
    await page.setViewportSize({ width: widthPx, height: heightPx });
    await visit(page, address);
    await page
      .locator(from ?? 'body')
      .first()
      .evaluate((element) => scrollTo(0, element.getBoundingClientRect().top + scrollY - 16));
    await page.screenshot({ path: path.join(ROOT, 'docs/guide', `${file}.png`), animations: 'disabled' });
    console.log(`docs/guide/${file}.png`);
  }
}

async function takeAll(page: Page, things: Things, folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  for (const address of everyAddress(things)) {
    const name = address
      .replaceAll(
        /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/g,
        address === things.sealed ? 'sealed' : 'one',
      )
      .replaceAll(/[^\w-]+/g, '_');
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await visit(page, address);
      for (const width of [PHONE_PX, 768, DESK_PX]) {
        await page.setViewportSize({ width, height: 900 });
        const file = path.join(folder, `${name}-${width}-${colorScheme}.png`);
        await page.screenshot({ path: file, fullPage: true, animations: 'disabled' });
      }
    }
    console.log(address);
  }
}

/** @returns the path of the newest copy of all data */
async function makeBackup(page: Page): Promise<string> {
  await visit(page, '/settings/backups');
  await press(page, 'Back up now');
  const path = await page
    .locator(
      'main ul a[href^="/settings/backups/"]:not([download]), main td a[href^="/settings/backups/"]:not([download])',
    )
    .first()
    .getAttribute('href');
  if (path === null) throw new Error('The copy is not on the list.');
  return path;
}

async function planHungryTrip(page: Page): Promise<string> {
  await visit(page, '/trips/new');
  await fillIn(page, { name: 'Six at the lakes', partySize: 6, dayCount: 7, startDate: '2027-08-21' });
  await press(page, 'Plan the trip');
  await page.waitForURL(/\/trips\/[^/]+\/\w+$/);
  return path.posix.dirname(new URL(page.url()).pathname);
}

const [flag, folder, ...more] = process.argv.slice(2);
if ((flag !== undefined && flag !== '--all') || (flag === '--all' && !folder) || more.length > 0) {
  console.error(
    'Use "npm run shots" for the pictures of the guide, or "npm run shots -- --all FOLDER" for every page.',
  );
  process.exit(2);
}
if (!ensureBuilt()) process.exit(1);
const [app, browser] = await Promise.all([startBuiltApp(clockFrom(NOW)), startBrowser()]);
try {
  const page = await openPage(browser, app.origin);
  if (!folder) await takeForGuide(page, [START]);
  const trip = await fillDemo(app.origin);
  await visit(page, '/kitchen');
  await page.getByRole('link', { name: 'Bean chilli with beef', exact: true }).click();
  await page.waitForURL('**/kitchen/recipes/*');
  const recipe = new URL(page.url()).pathname;
  const things: Things = {
    trip,
    hungryTrip: await planHungryTrip(page),
    recipe,
    drying: await cookDemoBatch(page, recipe, 'C1', 'drying'),
    sealed: await cookDemoBatch(page, recipe, 'C2', 'sealed'),
    upload: await beginDemoImport(app.origin),
    backup: await makeBackup(page),
  };
  await (folder ? takeAll(page, things, path.resolve(folder)) : takeForGuide(page, guideShots(things)));
} finally {
  await browser.close();
  await app.stop();
}
