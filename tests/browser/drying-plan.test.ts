/* What is missing becomes runs of the dryers, groceries and a batch: from a recipe that a person enters. */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { addDays } from '../../src/lib/planning/model/calendar.ts';
import { checkPage, startApp, visit } from './harness.ts';

const app = startApp();
let trip = '';

const inDays = (days: number) => addDays(new Date().toISOString().slice(0, 10), days);
const drying = (page: Page) => page.getByRole('region', { name: 'Drying plan', exact: true });

/** A trip for which the empty shelf has nothing. @returns its path */
async function newTrip(startDate: string): Promise<string> {
  const page = await app.open('/trips/new');
  for (const [name, value] of Object.entries({ partySize: '3', dayCount: '3', startDate }))
    await page.locator(`[name="${name}"]`).first().fill(value);
  await page.getByRole('button', { name: 'Plan the trip' }).click();
  await page.waitForURL(/\/trips\/[^/]+\/\w+$/);
  return new URL(page.url()).pathname.replace(/\/\w+$/, '');
}

beforeAll(async () => {
  trip = await newTrip(inDays(40));
});

test('without a recipe it says so and leads to the form of one', async () => {
  const page = await app.open(`${trip}/missing`);
  await drying(page).getByRole('link', { name: 'Add a recipe' }).click();
  await page.waitForURL('**/kitchen/recipes/new');

  await page.locator('[name="name"]').fill('Barley pot');
  await page.locator('[name="servings"]').fill('8');
  await page.getByRole('button', { name: 'Continue to ingredients' }).click();
  await page.waitForURL(/\/kitchen\/recipes\/(?!new)/);
  for (const [food, amount] of [
    ['Barley, pearled, dry', '900'],
    ['Water', '2000'],
  ] as const) {
    await page.locator('[name="food.name"]').fill(food);
    await page.locator('[name="quantity.amount"]').fill(amount);
    await page.getByRole('button', { name: 'Add ingredient', exact: true }).click();
    await page.getByRole('status').filter({ hasText: 'Ingredient added.' }).waitFor();
  }
});

test('dinners are dried in runs before departure, the other meals are to be bought, also without scripts', async () => {
  const page = await app.open(`${trip}/missing`, { scripts: false });
  const text = await drying(page).innerText();
  expect(text).toMatch(/\d+ runs?, work on \d+ days/);
  expect(text).toMatch(/Unload, test and seal on/);
  expect(text).toMatch(/Barley pot: .*servings? of [\d,]+ kcal together, on \d trays? of about/);
  expect(text).toMatch(/kcal of breakfast for .*No recipe of the kitchen is for breakfast/);
  expect(text).not.toMatch(/kcal of dinner for/);
  const groceries = page.getByRole('region', { name: 'Groceries, food by food' });
  expect(await groceries.getByRole('row').filter({ hasText: 'Barley' }).innerText()).toMatch(/[\d,]+ g/);
  await checkPage(app, `${trip}/missing`);
});

test('a batch is begun from the plan as it is planned, and then counted on', async () => {
  const page = await app.open(`${trip}/missing`);
  const brought = async () =>
    (await drying(page).getByRole('link', { name: 'Begin this batch' }).all()).length;
  const planned = await brought();
  await drying(page).getByRole('link', { name: 'Begin this batch' }).first().click();
  await page.waitForURL('**/kitchen/batches/new?*');
  const { searchParams } = new URL(page.url());
  for (const [name, param] of Object.entries({ recipe: 'recipe', timesCooked: 'times', dryer: 'dryer' }))
    expect(await page.locator(`[name="${name}"]`).inputValue()).toBe(searchParams.get(param));
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.waitForURL(/\/kitchen\/batches\/(?!new)/);

  await visit(page, `${trip}/missing`);
  expect(await drying(page).innerText()).toMatch(/Batch \S+, Barley pot, is in progress and counted from/);
  expect(await brought()).toBe(planned - 1);
});

test('a trip that leaves tomorrow has no time to dry', async () => {
  const page = await app.open(`${await newTrip(inDays(1))}/missing`);
  expect(await drying(page).innerText()).toMatch(/kcal of dinner for .*No further run can be sealed by/);
  expect(await page.getByRole('heading', { name: 'Groceries for the drying plan' }).count()).toBe(0);
});

test('the season lists all trips ahead, and no run of one is in the dryer during another', async () => {
  await newTrip(inDays(60));
  const page = await app.open('/trips', { scripts: false });
  await page.getByRole('link', { name: 'Season', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: 'Season' }).waitFor();
  const table = page.getByRole('region', { name: 'Table of the trips' });
  const rows = await table.locator('tbody tr').allInnerTexts();
  expect(rows).toHaveLength(3);
  const kcal = (text: string) => Number(/([\d,]+) kcal/.exec(text)?.[1]?.replaceAll(',', ''));
  const total = kcal(await table.locator('tfoot tr').innerText());
  expect(Math.abs(total - rows.reduce((sum, row) => sum + kcal(row), 0))).toBeLessThan(30);
  const runs = await page.locator('ol.runs > li').allInnerTexts();
  expect(runs.length).toBeGreaterThan(0);
  for (const run of runs) expect(run).toMatch(/Barley pot for .*\n.*trays?.*Unload, test and seal on/);
  await checkPage(app, '/trips/season');
});
