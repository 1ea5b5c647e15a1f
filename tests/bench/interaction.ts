/*
 * How soon a page answers in Chromium with the processor slowed four times: from a key or a click to the next paint (Event Timing, in
 * steps of 8 ms), and the longest task of the page meanwhile. Typing into the search of a shelf of 10,000 lots; on the menu of 12 eaters for
 * 14 days, opening meals to be changed, putting a pouch on one, locking it and closing it.
 */
import type { Browser, Page } from 'playwright';
import { openApp, type App } from '../../src/lib/server/app.ts';
import { createPlannedTrip } from '../../src/lib/server/plan-meals.ts';
import { startBrowser, visit } from '../../src/tooling/browse.ts';
import { ensureBuilt } from '../../src/tooling/build.ts';
import { startBuiltApp } from '../../src/tooling/built-app.ts';
import { instance } from './instances.ts';

const SLOWED = 4;
const TYPED = 'recipe 1234';
const MEALS_OPENED = ['#meal-2-lunch', '#meal-7-dinner', '#meal-12-breakfast'];

type Timing = { readonly waitsMs: readonly number[]; readonly longestTaskMs: number };

/** Starts to note what events and tasks take, in the page. */
const note = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const waitsMs: number[] = [];
    const tasksMs: number[] = [0];
    const collect = (into: number[]) => (list: PerformanceObserverEntryList) =>
      into.push(...list.getEntries().map(({ duration }) => duration));
    const options = { type: 'event', durationThreshold: 16 } as PerformanceObserverInit;
    new PerformanceObserver(collect(waitsMs)).observe(options);
    new PerformanceObserver(collect(tasksMs)).observe({ type: 'longtask' });
    Object.assign(window, {
      noted: () => ({ waitsMs, longestTaskMs: Math.max(...tasksMs) }),
    });
  });
const noted = (page: Page): Promise<Timing> =>
  page.evaluate(() => (window as unknown as { noted: () => Timing }).noted());

function say(what: string, { waitsMs, longestTaskMs }: Timing): void {
  const worst = Math.max(...waitsMs, 0);
  console.log(
    `${what}: slowest ${worst > 0 ? `${worst} ms` : 'under 16 ms'} to the next paint, longest task ${Math.round(longestTaskMs)} ms`,
  );
}

/** Opens a page of an app with invented data, slowed, and tries it. */
async function tryOut(
  browser: Browser,
  fill: (app: App) => Promise<string>,
  act: (page: Page) => Promise<void>,
): Promise<Timing> {
  const empty = await startBuiltApp();
  await empty.stop(true);
  const data = await openApp(empty.dataFolder);
  const address = await fill(data);
  await data.close();
  const app = await startBuiltApp({}, empty);
  const context = await browser.newContext({
    baseURL: app.origin,
    viewport: { width: 1280, height: 900 },
    serviceWorkers: 'block',
  });
  try {
    const page = await context.newPage();
    await visit(page, address);
    const devTools = await context.newCDPSession(page);
    await devTools.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    await note(page);
    await act(page);
    await page.waitForTimeout(1000);
    return await noted(page);
  } finally {
    await context.close();
    await app.stop();
  }
}

if (!ensureBuilt()) process.exit(1);
const browser = await startBrowser();
try {
  say(
    `Typing "${TYPED}" into the search of 10,000 lots`,
    await tryOut(
      browser,
      async (app) => {
        await app.shelf.importLots(instance({ eaters: 1, days: 1, lots: 10_000 }, 1).stock, 'benchmark');
        return '/shelf';
      },
      async (page) => {
        await page.getByLabel('Search').click();
        await page.waitForLoadState('networkidle'); // the lots come when the field is entered
        await page.getByLabel('Search').pressSequentially(TYPED, { delay: 250 });
      },
    ),
  );
  const bigMenu = async (app: App) => {
    const { trip, stock } = instance({ eaters: 12, days: 14, lots: 500 }, 1);
    await app.shelf.importLots(stock, 'benchmark');
    return `/trips/${(await createPlannedTrip(app, trip)).stored.id}/menu`;
  };
  // Found by selectors: finding by role walks through the whole page in the page, and would be measured with it.
  const open = async (page: Page, meal: string) => {
    await page.locator(`${meal} a.button`).click();
    await page.locator(`${meal} .change`).waitFor();
  };
  say(
    'Opening a meal of 12 eaters and 14 days to change it',
    await tryOut(browser, bigMenu, async (page) => {
      for (const meal of MEALS_OPENED) await open(page, meal);
    }),
  );
  say(
    'Adding a pouch to that meal, locking and closing it',
    await tryOut(browser, bigMenu, async (page) => {
      const [meal = ''] = MEALS_OPENED;
      await open(page, meal);
      await page.locator(`${meal} select[name=code]`).selectOption({ index: 1 });
      await page.locator(`${meal} .change > form[action*=add] button`).click();
      await page.locator('.said', { hasText: /./ }).waitFor();
      await page.locator(`${meal} form[action$=lock] button`).click();
      await page.locator(`${meal} .tag`, { hasText: 'locked' }).waitFor();
      await page.locator(`${meal} a.button`).click();
      await page.locator(`${meal} .change`).waitFor({ state: 'detached' });
    }),
  );
} finally {
  await browser.close();
}
