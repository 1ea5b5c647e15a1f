import { chromium, type Browser, type Page } from 'playwright';
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

/** Goes to an address and waits until the page can be used: its scripts have taken over from the server's HTML. */
export async function visit(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForLoadState('networkidle');
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
  await page.waitForLoadState('networkidle');
}
