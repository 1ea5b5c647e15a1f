/* Portions, locks, styles and tastes of a meal, changed where it stands in the menu. */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { newDemoTrip, startApp } from './harness.ts';

const app = startApp();
let trip = '';
beforeAll(async () => {
  trip = (await newDemoTrip(app)).replace(/\/\w+$/, '');
});

const said = (page: Page): Promise<string> => page.locator('.said').innerText();
const openPlates = (page: Page) =>
  page.locator('#meal-2-breakfast summary', { hasText: 'Portions, locks and tastes of' }).first().click();

test('one gets more, another none, and the meal says what the pouches no longer hold', async () => {
  const page = await app.open(`${trip}/menu?change=2-breakfast`, { scripts: false });
  await openPlates(page);
  const selects = page.locator('#meal-2-breakfast form[action^="?/portions"]').first().locator('select');
  const most = await selects.first().locator('option').last().getAttribute('value');
  await selects.first().selectOption(most ?? '');
  await selects.nth(1).selectOption(most ?? '');
  await page
    .getByRole('button', { name: /^Save portions/ })
    .first()
    .click();
  expect(await page.locator('main').innerText()).toMatch(/come to .* servings, its pouches hold/);
  expect(await page.locator('#meal-2-breakfast').innerText()).toMatch(/the largest are cut/);
  await openPlates(page);
  const smallest = await selects.first().locator('option').nth(1).getAttribute('value');
  for (let index = 0; index < (await selects.count()); index += 1)
    await selects.nth(index).selectOption(index === 0 ? (smallest ?? '') : '0');
  await page
    .getByRole('button', { name: /^Save portions/ })
    .first()
    .click();
  const meal = await page.locator('#meal-2-breakfast').innerText();
  expect(meal).toMatch(/Left over: /);
  expect(meal).not.toMatch(/are cut/);
});

test('a locked dish outlives planning again', async () => {
  const page = await app.open(`${trip}/menu?change=3-dinner`);
  const meal = page.locator('#meal-3-dinner');
  await meal.locator('summary', { hasText: 'Portions, locks and tastes of' }).first().click();
  await meal.getByRole('button', { name: 'Lock this dish' }).first().click();
  await expect.poll(() => said(page)).toMatch(/^Day 3, dinner: .* locked\.$/);
  const dish = await meal.locator('.dish').first().innerText();
  await page.getByRole('button', { name: 'Plan again' }).click();
  await expect.poll(() => said(page)).toContain('Planned again.');
  expect(await meal.locator('.dish', { hasText: 'locked' }).innerText()).toBe(dish);
});

test('one meal is served in a style of its own, and says so', async () => {
  const page = await app.open(`${trip}/menu?change=4-dinner`);
  const meal = page.locator('#meal-4-dinner');
  await meal.getByLabel('Serving style of this meal').selectOption('own pouch');
  await meal.getByRole('button', { name: 'Lay this meal again' }).click();
  await expect.poll(() => said(page)).toBe('Day 4, dinner: own pouch.');
  expect(await meal.locator('.head').innerText()).toContain('own pouch');
});

test('what somebody says to a dish is kept with them', async () => {
  const page = await app.open(`${trip}/menu?change=2-lunch`);
  const meal = page.locator('#meal-2-lunch');
  await meal.locator('summary', { hasText: 'Portions, locks and tastes of' }).first().click();
  await meal.locator('form[action^="?/tastes"]').first().locator('select').first().selectOption('gladly');
  await meal
    .getByRole('button', { name: /^Save tastes/ })
    .first()
    .click();
  await expect.poll(() => said(page)).toBe('Tastes saved. Plan again to follow them.');
  await page.goto(`${app.origin}${trip}/party`);
  await page
    .getByText(/1 taste\b/)
    .first()
    .waitFor();
});

test('reasons are given when asked for only', async () => {
  const page = await app.open(`${trip}/menu`, { scripts: false });
  const why = page.locator('#meal-2-dinner summary', { hasText: 'Why this?' });
  const reasons = page.locator('#meal-2-dinner details li');
  if ((await why.count()) === 0) throw new Error('no reason');
  expect(await reasons.first().isVisible()).toBe(false);
  await why.click();
  expect(await reasons.first().isVisible()).toBe(true);
});
