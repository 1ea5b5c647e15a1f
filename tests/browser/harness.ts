import path from 'node:path';
import axe from 'axe-core';
import type { Browser, BrowserContext, Page } from 'playwright';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { atRest, startBrowser, visit } from '../../src/tooling/browse.ts';
import { fillDemo, startBuiltApp, type BuiltApp } from '../../src/tooling/built-app.ts';
import { ROOT } from '../../src/tooling/run.ts';

export { atRest, visit };
export const PHONE_PX = 360;
const TABLET_PX = 768;
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
   * Opens a window on the app. What its console reports as an error, or its content security policy does not allow, fails the test.
   *
   * @param expected errors that the test provokes, such as the browser's own line about a 404
   * @param scripts whether the browser runs scripts
   * @param keeps whether the browser lets the app keep pages for use without a network
   * @param touch whether it is a phone, with fingers for a pointer
   * @param apart whether it is the browser of another person or device, which shares no cookies with the other windows of the test
   */
  open(
    address: string,
    options?: {
      readonly widthPx?: number;
      readonly expected?: RegExp;
      readonly scripts?: boolean;
      readonly keeps?: boolean;
      readonly touch?: boolean;
      readonly apart?: boolean;
    },
  ): Promise<Page>;
  /** Goes to an address in a window that is only ever looked at, and stays from test to test: a new one costs more than the look. */
  lookAt(address: string, widthPx: number): Promise<Page>;
  /** Ends the server, as when the computer at home is switched off; `restart` starts it at the same address with the same data, and variables that are others than before. */
  stop(): Promise<void>;
  restart(changed?: Readonly<Record<string, string>>): Promise<void>;
  /** Where it keeps its data. */
  readonly dataFolder: string;
};

/**
 * For the head of a test file: starts the built app as `npm start` does, on a free port with an empty data folder, and a
 * browser; ends both after the last test. After each test it closes the windows and fails on any console error.
 *
 * @param environment variables that the app is started with
 */
export function startApp(environment: Readonly<Record<string, string>> = {}): Session {
  let app: BuiltApp;
  let browser: Browser;
  let shared: BrowserContext;
  let onlooker: Page;
  let apart: BrowserContext[] = [];
  let errors: string[] = [];

  async function newContext(scripts: boolean, keeps: boolean, touch = false): Promise<BrowserContext> {
    const context = await browser.newContext({
      javaScriptEnabled: scripts,
      hasTouch: touch,
      isMobile: touch,
      serviceWorkers: keeps ? 'allow' : 'block',
      baseURL: app.origin,
      locale: 'en-GB',
    });
    await context.addInitScript(() =>
      addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sourceFile }) =>
        console.error(`not allowed by ${violatedDirective}: ${blockedURI} in ${sourceFile}`),
      ),
    );
    return context;
  }

  async function newPage(context: BrowserContext, expected?: RegExp): Promise<Page> {
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
    return page;
  }

  async function goTo(page: Page, address: string, widthPx: number): Promise<Page> {
    await page.setViewportSize({ width: widthPx, height: 900 });
    await visit(page, address);
    return page;
  }

  beforeAll(async () => {
    [app, browser] = await Promise.all([startBuiltApp(environment), startBrowser()]);
    shared = await newContext(true, false);
    onlooker = await newPage(shared);
  }, 240_000);

  afterEach(async () => {
    await onlooker.goto('about:blank');
    const windows = shared.pages().filter((page) => page !== onlooker);
    await Promise.all([...apart, ...windows].map((each) => each.close()));
    await shared.clearCookies();
    const found = errors;
    [apart, errors] = [[], []];
    expect(found).toEqual([]);
  });

  afterAll(async () => {
    await browser.close();
    expect(await app.stop()).toBe(0);
  });

  return {
    get origin() {
      return app.origin;
    },
    get readersOrigin() {
      return app.readersOrigin;
    },
    async open(address, { widthPx = DESK_PX, expected, scripts = true, keeps = false, ...of } = {}) {
      const isApart = of.apart || of.touch || !scripts || keeps;
      const context = isApart ? await newContext(scripts, keeps, of.touch) : shared;
      if (isApart) apart.push(context);
      return goTo(await newPage(context, expected), address, widthPx);
    },
    lookAt: (address, widthPx) => goTo(onlooker, address, widthPx),
    async stop() {
      expect(await app.stop(true)).toBe(0);
    },
    get dataFolder() {
      return app.dataFolder;
    },
    async restart(changed = {}) {
      app = await startBuiltApp({ ...environment, ...changed }, app);
    },
  };
}

/** A new trip of the demo, planned. @returns its path */
export const newDemoTrip = ({ origin }: Session): Promise<string> => fillDemo(origin);

/** What axe finds wrong: the rule, and where. */
export async function barriers(page: Page): Promise<string[]> {
  // Once in a page, for all its looks; to bring it in costs as much as to run it.
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source);
  return page.evaluate(async (tags) => {
    const { axe: inPage } = globalThis as unknown as { axe: typeof axe };
    // Of violations only, axe finds the same in less time.
    const { violations } = await inPage.run(document, { runOnly: tags, resultTypes: ['violations'] });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} ${target.join(' ')}: ${failureSummary}`),
    );
  }, WCAG);
}

/** Opens all that is folded on a page. */
export const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) fold.open = true;
  });

/** By how much the page is wider than the window, px. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** What still moves or scrolls smoothly for somebody who asked for less motion. */
const moving = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const isLong = (times: string) => times.split(',').some((time) => parseFloat(time) > 0.01);
    const styled = [...document.querySelectorAll('*')].filter((element) => {
      const { animationDuration, transitionDuration, scrollBehavior } = getComputedStyle(element);
      return isLong(animationDuration) || isLong(transitionDuration) || scrollBehavior !== 'auto';
    });
    const running = document
      .getAnimations()
      .filter(({ playState }) => playState === 'running')
      .map(({ effect }) => (effect as KeyframeEffect | null)?.target);
    return [...styled, ...running].map((element) => element?.outerHTML.slice(0, 120) ?? '');
  });

/** On a phone by day, on a tablet, on a desk by night. */
const LOOKS: readonly { readonly width: number; readonly colorScheme?: 'light' | 'dark' }[] = [
  { width: PHONE_PX, colorScheme: 'light' },
  { width: TABLET_PX },
  { width: DESK_PX, colorScheme: 'dark' },
];

/** Forms with figures in units that do not say which units they were opened in, so that a change of the settings in another window would turn the figures. */
const unguarded = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.forms]
      .filter(
        (form) =>
          form.method === 'post' &&
          form.querySelector('.field .unit') &&
          !form.querySelector('[name="shownIn"]'),
      )
      .map((form) => form.action),
  );

/** Opens a page on all of these: no barrier in light and dark, nothing wider than the window, one first heading, a title; nothing moves for who wants it so. */
export async function checkPage(app: Session, address: string): Promise<void> {
  const page = await app.lookAt(address, PHONE_PX);
  for (const { width, colorScheme } of LOOKS) {
    await page.setViewportSize({ width, height: 900 });
    if (colorScheme) {
      await page.emulateMedia({ colorScheme });
      expect(await barriers(page), `${address} at ${width} px, ${colorScheme}`).toEqual([]);
    }
    expect(await tooWide(page), `${address} at ${width} px is wider than the window, by px`).toBe(0);
  }
  expect(await unguarded(page), `${address}: forms that do not say their units`).toEqual([]);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  expect(await moving(page), `${address}: moving`).toEqual([]);
  expect(await page.getByRole('heading', { level: 1 }).count(), `${address}: first headings`).toBe(1);
  expect(await page.title()).toContain('Ridgelarder');
  await page.emulateMedia({ reducedMotion: 'no-preference' });
}
