/* How good a menu is, and a better one: searched for, stopped, compared, taken, with scripts and without. */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { barriers, DESK_PX, newDemoTrip, PHONE_PX, startApp, visit } from './harness.ts';

const app = startApp();
let trip = '';

beforeAll(async () => {
  trip = await newDemoTrip(app);
});

const saidOn = (page: Page, text: RegExp) =>
  page.getByRole('status').filter({ hasText: text }).waitFor({ timeout: 60_000 });
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const pointsOn = async (page: Page) =>
  Number((await page.getByRole('heading', { name: /\d points$/ }).innerText()).replace(/[^\d.]/g, ''));
const menuOf = async (page: Page) => {
  await visit(page, `${trip}/menu`);
  return page.locator('.pouches').allInnerTexts();
};

test('a menu made worse by hand is weighed, searched for anew, compared, and another one taken', async () => {
  const page = await app.open(`${trip}/menu?change=2-dinner`);
  await page.getByLabel('Add to dinner of day 2').selectOption({ index: 1 });
  await button(page, /^Add$/).click();
  await saidOn(page, /dinner: \d+ ×/);
  await page.getByRole('link', { name: 'How good is this menu?' }).first().click();
  const points = page.getByRole('region', { name: /\d points$/ });
  await points.waitFor();
  const before = await pointsOn(page);
  expect(await points.innerText()).toMatch(/Using the oldest pouches first would score [\d,]+\.\d points/);

  await button(page, 'Search quickly').click();
  await page.getByRole('progressbar').waitFor();
  await saidOn(page, /^Done after \d+ s\. The menu now has [\d,.]+ points instead of/);
  expect(await page.getByRole('progressbar').count()).toBe(0);
  await expect.poll(() => pointsOn(page)).toBeLessThan(before);
  expect(await points.innerText()).toMatch(/at most [\d.]+% could still be saved|the best possible/);
  expect(
    await page.getByRole('region', { name: 'Table of menus' }).locator('thead th').allInnerTexts(),
  ).toEqual([
    'Figure',
    'as it is now',
    'best found',
    'lightest',
    'most varied',
    'oldest first',
    'simplest at the stove',
    'one dish for all',
    'own pouches',
  ]);
  expect(await page.getByRole('heading', { name: 'What would help' }).count()).toBe(1);

  for (const [width, colorScheme] of [
    [DESK_PX, 'light'],
    [PHONE_PX, 'dark'],
  ] as const) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 900 });
    expect(await barriers(page), `${width} px, ${colorScheme}`).toEqual([]);
  }

  const searched = await menuOf(page);
  await visit(page, `${trip}/weighing`);
  await button(page, /^Use this menu/)
    .first()
    .click();
  await saidOn(page, /^Now using the menu ".+"/);
  expect(await page.getByText('the same as now').count()).toBeGreaterThan(0);
  expect(await menuOf(page)).not.toEqual(searched);
});

test('a search is refused while another runs, and stops with the best so far', async () => {
  const page = await app.open(`${trip}/weighing`);
  await button(page, 'Search thoroughly').click();
  await page.getByText(/Searching: best so far/).waitFor();

  const other = await app.open(`${trip}/menu`, { expected: /status of 422/ });
  await button(other, /^Plan again/).click();
  await other.getByRole('alert').filter({ hasText: 'has been running' }).waitFor();
  // The page asks how far the search is again and again, so its network is never idle.
  await other.goto(`${trip}/weighing`);
  await button(other, 'Stop').click();
  await saidOn(page, /^Stopped after \d+ s/);
  await other.getByRole('progressbar').waitFor({ state: 'detached' });
});

test('it works without scripts', async () => {
  const page = await app.open(`${trip}/weighing`, { scripts: false, widthPx: PHONE_PX });
  // The page that answers comes when all is weighed.
  page.setDefaultTimeout(90_000);
  await button(page, 'Search quickly').click();
  await saidOn(page, /^Done after/);
  expect(await page.getByRole('region', { name: 'Table of menus' }).count()).toBe(1);
});
