import { setTimeout as sleep } from 'node:timers/promises';
import { chromium, type Browser, type Page, type Request } from 'playwright';
import { findChromium } from './chromium.ts';

const CHROMIUM_FLAGS = ['--no-sandbox', '--disable-background-networking', '--disable-quic'];

/**
 * @param flags of Chromium, besides those that it always gets
 * @throws where there is no Chromium on this machine
 */
export async function startBrowser(flags: readonly string[] = []): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('There is no Chromium on this machine; "npm test" installs one.');
  return chromium.launch({ executablePath, args: [...CHROMIUM_FLAGS, ...flags] });
}

/** What windows have asked for and not got yet. */
const underWay = new WeakMap<Page, Set<Request>>();
const PATIENCE_MS = 60_000;

function requestsOf(page: Page): Set<Request> {
  const known = underWay.get(page);
  if (known) return known;
  const asked = new Set<Request>();
  underWay.set(page, asked);
  page.on('request', (request) => {
    // What the page before asked for may never be heard of again.
    if (request.isNavigationRequest()) asked.clear();
    asked.add(request);
  });
  page.on('requestfinished', (request) => asked.delete(request));
  page.on('requestfailed', (request) => asked.delete(request));
  return asked;
}

/** Run in the page: whether its scripts, if it has any that run, have taken over from the server's HTML and have nothing more to do. */
async function isTakenOver(): Promise<boolean> {
  if (matchMedia('(scripting: none)').matches) return true;
  const isScripted = [...document.scripts].some((script) => script.text.includes('kit.start('));
  // The framework's router numbers the pages in the history when it begins, and takes scrolling into its hands once all is in place. It gives that
  // back when a page is left, also where the browser then stays; hence the end to the patience.
  const isBegun = Boolean(history.state?.['sveltekit:history']);
  const isInPlace = history.scrollRestoration === 'manual' || (isBegun && performance.now() > 20_000);
  if (isScripted && !isInPlace) return false;
  await new Promise((resolve) => requestIdleCallback(resolve, { timeout: 5000 }));
  return true;
}

/**
 * Waits until a page can be used: it has all that it asked for, and its scripts have taken over from the server's HTML. Other than Playwright's
 * "networkidle" it does not hang on half a second of silence, and knows of what a page asks for later.
 *
 * @throws where it still waits for something after a minute
 */
export async function atRest(page: Page): Promise<void> {
  const asked = requestsOf(page);
  const end = Date.now() + PATIENCE_MS;
  await page.waitForLoadState();
  do {
    while (asked.size > 0) {
      if (Date.now() > end)
        throw new Error(
          `${page.url()} still waits for ${[...asked].map((request) => request.url()).join()}.`,
        );
      await sleep(5);
    }
    await page.waitForFunction(isTakenOver, undefined, { timeout: PATIENCE_MS });
  } while (asked.size > 0);
}

/** Goes to an address and waits until the page can be used. */
export async function visit(page: Page, address: string): Promise<void> {
  requestsOf(page);
  await page.goto(address);
  await atRest(page);
}

/** Fills in fields of a form by their names. */
export async function fillIn(page: Page, fields: Readonly<Record<string, string | number>>): Promise<void> {
  for (const [name, value] of Object.entries(fields)) {
    const field = page.locator(`main form [name="${name}"]`);
    if ((await field.evaluate((element) => element.tagName)) === 'SELECT')
      await field.selectOption(String(value));
    else await field.fill(String(value));
  }
}

/** Presses a button and waits for what comes of it. */
export async function press(page: Page, name: string | RegExp, within = 'main'): Promise<void> {
  await page
    .locator(within)
    .getByRole('button', { name, exact: typeof name === 'string' })
    .click();
  await atRest(page);
}
