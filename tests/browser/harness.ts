import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { AxeBuilder } from '@axe-core/playwright';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { findChromium } from '../../src/tooling/chromium.ts';
import { ROOT } from '../../src/tooling/run.ts';

const CHROMIUM_ARGS = ['--no-sandbox', '--disable-background-networking', '--disable-quic'];
export const PHONE_PX = 360;
export const DESK_PX = 1280;
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** A file of the project, for uploads and reading. */
export const projectFile = (...parts: string[]): string => path.join(ROOT, ...parts);

export type Session = {
  /** Address of the app, without a slash at the end. */
  readonly origin: string;
  /** Where pages can only be read, if the environment asks for it. */
  readonly readersOrigin: string;
  /**
   * Opens a window of its own on the app. What its console reports as an error fails the test.
   *
   * @param expected errors that the test provokes, such as the browser's own line about a 404
   * @param scripts whether the browser runs scripts
   */
  open(
    address: string,
    options?: { readonly widthPx?: number; readonly expected?: RegExp; readonly scripts?: boolean },
  ): Promise<Page>;
};

/**
 * For the head of a test file: starts the built app as `npm start` does, on a free port with an empty data folder, and a
 * browser; ends both after the last test. After each test it closes the windows and fails on any console error.
 *
 * @param environment variables that the app is started with
 */
export function startApp(environment: Readonly<Record<string, string>> = {}): Session {
  const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-browser-'));
  let server: ChildProcess;
  let browser: Browser;
  let origin = '';
  let readersOrigin = '';
  let contexts: BrowserContext[] = [];
  let errors: string[] = [];

  beforeAll(async () => {
    [{ server, origin, readersOrigin }, browser] = await Promise.all([
      startServer(folder, environment),
      startBrowser(),
    ]);
  }, 240_000);

  afterEach(async () => {
    await Promise.all(contexts.map((context) => context.close()));
    const found = errors;
    [contexts, errors] = [[], []];
    expect(found).toEqual([]);
  });

  afterAll(async () => {
    await browser.close();
    const ended = once(server, 'exit');
    server.kill('SIGTERM');
    const [code] = await ended;
    rmSync(folder, { recursive: true });
    expect(code).toBe(0);
  });

  return {
    get origin() {
      return origin;
    },
    get readersOrigin() {
      return readersOrigin;
    },
    async open(address, { widthPx = DESK_PX, expected, scripts = true } = {}) {
      const context = await browser.newContext({
        viewport: { width: widthPx, height: 900 },
        javaScriptEnabled: scripts,
        baseURL: origin,
      });
      contexts.push(context);
      const page = await context.newPage();
      const note = (text: string) => {
        if (!expected?.test(text)) errors.push(`${page.url()}: ${text}`);
      };
      page.on('console', (message) => {
        if (message.type() === 'error') note(message.text());
      });
      page.on('pageerror', (error) => note(String(error)));
      page.on('response', (response) => {
        if (response.status() >= 500) note(`${response.status()} from ${response.url()}`);
      });
      await visit(page, address);
      return page;
    },
  };
}

/** Goes to an address and waits until the page can be used: its scripts have taken over from the server's HTML. */
export async function visit(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForLoadState('networkidle');
}

async function startBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('There is no Chromium on this machine; "npm test" installs one.');
  return chromium.launch({ executablePath, args: CHROMIUM_ARGS });
}

async function startServer(
  dataFolder: string,
  environment: Readonly<Record<string, string>>,
): Promise<{ server: ChildProcess; origin: string; readersOrigin: string }> {
  const server = spawn(process.execPath, [projectFile('src/tooling/start.ts')], {
    cwd: ROOT,
    env: { ...process.env, ...environment, PORT: '0', RIDGELARDER_DATA: dataFolder },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let origin = '';
  for await (const line of createInterface({ input: server.stdout })) {
    origin ||= /Ridgelarder is at (\S+)/.exec(line)?.[1] ?? '';
    const readersOrigin = /Phones .* at (\S+),/.exec(line)?.[1] ?? '';
    if (origin && (readersOrigin || !environment['RIDGELARDER_READERS']))
      return { server, origin, readersOrigin };
  }
  throw new Error('The app ended before it said where it is.');
}

/** A new trip of the demo, planned. @returns its path */
export async function newDemoTrip({ origin }: Session): Promise<string> {
  const response = await fetch(`${origin}/demo`, {
    method: 'POST',
    headers: { origin, accept: 'text/html', 'content-type': 'application/x-www-form-urlencoded' },
    redirect: 'manual',
  });
  return new URL(response.headers.get('location') ?? '', origin).pathname;
}

/** What axe finds wrong: the rule, and where. */
export async function barriers(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} ${target.join(' ')}: ${failureSummary}`),
  );
}

/** By how much the page is wider than the window, px. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Opens a page on a phone and on a desk: no barrier, nothing wider than the window, one first heading, a title. */
export async function checkPage(app: Session, address: string): Promise<void> {
  const page = await app.open(address, { widthPx: PHONE_PX });
  for (const width of [PHONE_PX, DESK_PX]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await barriers(page), `${address} at ${width} px`).toEqual([]);
    expect(await tooWide(page), `${address} at ${width} px is wider than the window, by px`).toBe(0);
  }
  expect(await page.getByRole('heading', { level: 1 }).count(), `${address}: first headings`).toBe(1);
  expect(await page.title()).toContain('Ridgelarder');
}
