/* A shelf that is too short: the plan is filled, food is bought with a phone in the shop, and the trip is packed. */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { addDays } from '../../src/lib/planning/model/calendar.ts';
import { checkPage, PHONE_PX, startApp } from './harness.ts';

const app = startApp();
let trip = '';

const inDays = (days: number) => addDays(new Date().toISOString().slice(0, 10), days);
const planned = (page: Page) => page.getByRole('region', { name: 'Planned, not there yet' });
const shop = (page: Page) => page.getByRole('region', { name: 'In the shop' });
const done = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text }).waitFor();

beforeAll(async () => {
  const page = await app.open('/trips/new');
  for (const [name, value] of Object.entries({ partySize: '2', dayCount: '2', startDate: inDays(30) }))
    await page.locator(`[name="${name}"]`).fill(value);
  await page.getByRole('button', { name: 'Plan the trip' }).click();
  await page.waitForURL(/\/trips\/[^/]+\/\w+$/);
  trip = new URL(page.url()).pathname.replace(/\/\w+$/, '');
});

test('one suggestion is taken into the plan with the packet that the shop has, and out again, without scripts', async () => {
  const page = await app.open(`${trip}/missing`, { scripts: false });
  const first = page.getByRole('listitem').filter({ hasText: 'Buy certified gluten-free oats' }).last();
  await first.getByLabel('Grams per package').fill('1000');
  await first.getByRole('button', { name: 'Take into plan' }).click();
  await done(page, 'The plan counts on this food now');
  expect(await planned(page).innerText()).toMatch(
    /certified gluten-free oats: \d pack(?:et|age)s? of 1,000 g/,
  );
  await planned(page).getByRole('button', { name: 'Remove from plan' }).click();
  await done(page, 'The food is out of the plan');
  expect(await planned(page).count()).toBe(0);
});

test('all that is missing is filled, and marked as not there on menu, card and packing lists', async () => {
  const page = await app.open(`${trip}/missing`);
  await page.getByLabel('Fill it for me').selectOption('buy only');
  await page.getByRole('button', { name: 'Fill the plan' }).click();
  await done(page, 'The plan is filled');
  expect(await planned(page).getByRole('listitem').count()).toBeGreaterThan(2);
  for (const leaf of ['menu', 'card', 'packing']) {
    await page.goto(`${app.origin}${trip}/${leaf}`);
    await page
      .getByText(/^(\d+ × )?to buy$/)
      .first()
      .waitFor();
  }
  await checkPage(app, `${trip}/missing`);
  await checkPage(app, `${trip}/shopping`);
});

test('ticks in the shop wait without a connection, and make stock of the food that can be packed', async () => {
  const page = await app.open(`${trip}/shopping`, {
    widthPx: PHONE_PX,
    keeps: true,
    expected: /ERR_INTERNET_DISCONNECTED|preload CSS/,
  });
  const rows = shop(page).getByRole('listitem');
  const before = await rows.count();
  const food = await rows.first().locator('strong').innerText();
  await page.context().setOffline(true);
  await rows.first().getByLabel(/^Paid/).fill('4.5');
  await rows.first().getByRole('button', { name: 'Bought, label agrees' }).click();
  await rows.first().getByText('not sent yet').waitFor();
  await page.context().setOffline(false);
  await expect.poll(() => rows.count(), { timeout: 30_000 }).toBe(before - 1);

  await page.goto(`${app.origin}${trip}/costs`);
  const bought = page.locator('dl div', { hasText: 'Bought' });
  expect(await bought.innerText()).toMatch(/[\d.]+ for .*servings?|no price known/);
  await checkPage(app, `${trip}/costs`);
  await page.goto(`${app.origin}/shelf?search=${encodeURIComponent(food)}`);
  await page
    .getByRole('link', { name: /^B\d{3}/ })
    .first()
    .click();
  await page.waitForURL(/\/shelf\/B\d{3}/);
  expect(Number(await page.locator('[name="costMinor"]').inputValue())).toBeGreaterThan(0);

  await page.goto(`${app.origin}${trip}/pouches`);
  await page.getByRole('button', { name: /^Set aside/ }).click();
  await done(page, 'The pouches of the menu are set aside');
  await page.getByRole('button', { name: 'Pack', exact: true }).click();
  await page.getByText('not there yet.').or(page.getByText('are not there yet')).first().waitFor();
});

test('without scripts too; what is not to be had is missing again, and the rest can be packed', async () => {
  const page = await app.open(`${trip}/shopping`, { scripts: false });
  const rows = shop(page).getByRole('listitem');
  await rows.first().getByRole('button', { name: 'Not available' }).click();
  await done(page, 'The food is out of the plan');
  for (let left = await rows.count(); left > 0; left = await rows.count()) {
    await rows.first().getByRole('button', { name: 'Bought, label agrees' }).click();
    await done(page, 'The food is on the shelf');
  }
  // what was bought for a trip that has its pouches set aside is set aside with them
  await page.goto(`${app.origin}${trip}/pouches`);
  const anew = page.getByRole('button', { name: /^Set aside/ });
  if ((await anew.count()) > 0) await anew.click();
  await page.getByRole('button', { name: 'Pack', exact: true }).click();
  await done(page, 'The pouches are packed');
  await page.goto(`${app.origin}${trip}/missing`);
  expect(await planned(page).count()).toBe(0);
});
