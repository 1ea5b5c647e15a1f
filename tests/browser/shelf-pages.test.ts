/* The shelf and the settings under use: search while typing, bad input, doubts, two windows at once, and all of it without scripts. */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { atRest, checkPage, newDemoTrip, startApp, visit } from './harness.ts';

const app = startApp();
beforeAll(async () => {
  await newDemoTrip(app);
});

const field = (page: Page, name: string) => page.locator(`[name="${name}"]`);
const said = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text }).waitFor();
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const lots = (page: Page) => page.locator('tbody tr').count();
const eventually = <T>(read: () => Promise<T>) => expect.poll(read, { timeout: 20_000 });
const REFUSED = /status of (422|409|404)/;

async function fill(page: Page, values: Record<string, string>): Promise<void> {
  for (const [name, value] of Object.entries(values)) await field(page, name).fill(value);
}
const GOOD_LOT = {
  recipe: 'Test stew',
  bestBefore: '2031-01-31',
  dryWeightG: '100',
  energyKcal: '400',
  waterMl: '250',
};

test('the shelf filters while one types, and the address keeps what was asked for', async () => {
  const page = await app.open('/shelf');
  const all = await lots(page);
  await field(page, 'search').pressSequentially('rice b0');
  await eventually(() => lots(page)).toBe(1);
  expect(await page.locator('tbody').innerText()).toMatch(/B05\s+Rice pudding/);
  expect(await field(page, 'search').inputValue()).toBe('rice b0');
  await eventually(async () => new URL(page.url()).searchParams.get('search')).toBe('rice b0');

  await page.reload();
  await atRest(page);
  expect(await lots(page)).toBe(1);
  await field(page, 'search').fill('');
  await eventually(() => lots(page)).toBe(all);

  await page.getByText('Exclude allergens').click();
  await page.getByLabel('milk', { exact: true }).check();
  await eventually(() => lots(page)).toBeLessThan(all);
  const without = await lots(page);
  await page.getByRole('link', { name: 'Energy per pouch' }).click();
  await page.waitForURL(/sort=pouchKcal/);
  expect(page.url()).toContain('without=milk');
  expect(await lots(page)).toBe(without);
  const figures = await page.locator('tbody tr td:nth-child(9)').allInnerTexts();
  const kcal = figures.map((text) => Number(text.replace(/[^\d.]/g, '')));
  expect(kcal).toEqual([...kcal].sort((a, b) => a - b));
});

test('a lot with a slip is refused field by field, a doubtful one wants a yes, and nothing typed is lost', async () => {
  const page = await app.open('/shelf/new/details', { expected: REFUSED });
  await fill(page, { ...GOOD_LOT, code: 'T 1', dryWeightG: 'plenty', energyKcal: '-4' });
  await press(page, 'Add to shelf');
  const problems = page.getByRole('region', { name: 'Not saved.' });
  await problems.waitFor();
  expect(await problems.getByRole('link').allInnerTexts()).toEqual(['Dry weight', 'Energy']);
  expect(await field(page, 'dryWeightG').inputValue()).toBe('plenty');
  expect(await field(page, 'recipe').inputValue()).toBe('Test stew');
  await problems.getByRole('link', { name: 'Dry weight' }).click();
  await eventually(() => page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe(
    'dryWeightG',
  );

  await fill(page, { dryWeightG: '100', energyKcal: '400', waterMl: '2000' });
  await press(page, 'Add to shelf');
  const doubt = page.getByRole('region', { name: 'This looks unusual' });
  await doubt.waitFor();
  expect(await doubt.innerText()).toContain('more than ten times its weight');
  await page.getByLabel('Yes, save it').check();
  await press(page, 'Add to shelf');
  await said(page, 'The lot is on the shelf');
  expect(new URL(page.url()).pathname).toBe('/shelf/T%201');

  await visit(page, '/shelf/new/details');
  await fill(page, { ...GOOD_LOT, code: 'T 1' });
  await press(page, 'Add to shelf');
  await problems.waitFor();
  expect(await problems.innerText()).toContain('"T 1" is taken');
});

test('counting and discarding go into the history, and more than there is cannot go', async () => {
  const page = await app.open('/shelf/new/details', { expected: REFUSED });
  await fill(page, { ...GOOD_LOT, code: 'T 2', pouches: '3' });
  await press(page, 'Add to shelf');
  await said(page, 'The lot is on the shelf');
  await fill(page, { counted: '5', countNote: 'two behind the jars' });
  await press(page, 'Save count');
  await said(page, 'The count is entered');
  await fill(page, { discarded: '6', discardReason: 'torn' });
  await press(page, 'Remove from shelf');
  const problems = page.getByRole('region', { name: 'Not removed:' });
  await problems.waitFor();
  expect(await problems.innerText()).toContain('has only 5 on the shelf');
  expect(await field(page, 'discardReason').inputValue()).toBe('torn');
  await fill(page, { discarded: '1' });
  await press(page, 'Remove from shelf');
  await said(page, 'taken off the shelf');
  const history = await page.locator('tbody tr').allInnerTexts();
  expect(history.map((row) => row.split('\t').slice(1).join(' ').replace(/\s+/g, ' ').trim())).toEqual([
    'discarded 1 shelf → outside – torn',
    'counted 2 outside → shelf – two behind the jars',
    'sealed 3 outside → shelf – –',
  ]);
});

test('the second of two who change a lot is told what the first one saved, and keeps what they typed', async () => {
  const mine = await app.open('/shelf/S01', { expected: REFUSED });
  const theirs = await app.open('/shelf/S01');
  await fill(theirs, { recipe: 'Mango leather', steepMin: '1' });
  await press(theirs, 'Save');
  await said(theirs, 'The lot is saved');

  await fill(mine, { recipe: 'Mango strips' });
  await press(mine, 'Save');
  const newer = mine.getByRole('region', { name: 'Someone else saved this lot' });
  await newer.waitFor();
  expect(await newer.locator('tbody tr').allInnerTexts()).toEqual([
    expect.stringMatching(/Recipe\s+Mango strips\s+Mango leather/),
    expect.stringMatching(/Rehydration time\s+0\s+1/),
  ]);
  expect(await field(mine, 'recipe').inputValue()).toBe('Mango strips');
  await press(mine, 'Save');
  await said(mine, 'The lot is saved');
  expect(await mine.getByRole('heading', { level: 1 }).innerText()).toBe('S01 Mango strips');
});

test('a lot may be called like a page of the shelf', async () => {
  const page = await app.open('/shelf/S02');
  await fill(page, { code: 'new' });
  await press(page, 'Save');
  await said(page, 'The lot is saved');
  await visit(page, '/shelf');
  await page.getByRole('link', { name: 'new', exact: true }).click();
  await eventually(() => page.getByRole('heading', { level: 1 }).innerText()).toBe(
    'new Beef strips with pepper',
  );
});

test('saving a lot in US units without a change leaves its grams as they are', async () => {
  const page = await app.open('/settings');
  await page.getByLabel('US customary').check();
  await press(page, 'Save Units and money');
  await said(page, 'The settings are saved');
  await visit(page, '/shelf/D01');
  expect(await page.locator('main').innerText()).toContain('oz');
  await press(page, 'Save');
  await said(page, 'The lot is saved');

  await visit(page, '/settings');
  await page.locator('#units summary', { hasText: 'Reset to defaults' }).click();
  await press(page, 'Reset to defaults : Units and money');
  await said(page, 'Defaults restored.');
  await visit(page, '/shelf/D01');
  expect(await field(page, 'dryWeightG').inputValue()).toBe('150');
});

test('settings that do not add up are refused in their part, and lists can be added to and cut', async () => {
  const page = await app.open('/settings', { expected: REFUSED });
  await fill(page, { 'mealShares.dinner': '45' });
  await press(page, 'Save Energy split by meal');
  const problems = page.getByRole('region', { name: 'Not saved.' });
  await problems.waitFor();
  expect(await problems.innerText()).toContain('must add up to 100%');
  expect(await field(page, 'mealShares.dinner').inputValue()).toBe('45');

  await visit(page, '/settings');
  const fuel = page.locator('#fuel');
  const containers = fuel.locator('[name^="fuelContainers["][name$=".label"]'); // the last one is to be filled in
  const before = await containers.count();
  await fuel.getByText('Add a container').click();
  const at = `fuelContainers[${before - 1}]`;
  await fill(page, { [`${at}.label`]: 'my tin', [`${at}.netG`]: '60', [`${at}.tareG`]: '12' });
  await press(page, 'Save Fuel containers');
  await said(page, 'The settings are saved');
  await fuel.getByText('my tin (canister gas)').click();
  await page.getByLabel('Remove my tin').check();
  await press(page, 'Save Fuel containers');
  await said(page, 'The settings are saved');
  expect(await containers.count()).toBe(before);
});

test('a suspect lot is withdrawn without scripts: readers are warned, trips go without, and it can be put back', async () => {
  const reader = await app.open('/shelf/D01');
  expect(await reader.getByText('Do not eat it').count()).toBe(0);
  const page = await app.open('/shelf/D01', { scripts: false, expected: REFUSED });
  await press(page, 'Withdraw lot');
  await page.getByText('Not withdrawn:').waitFor();
  await fill(page, { withdrawReason: 'one pouch smelled sour' });
  await press(page, 'Withdraw lot');
  await said(page, 'Lot withdrawn.');
  const warning = page.locator('.notice.wrong', { hasText: 'Do not eat it' });
  const text = await warning.innerText();
  expect(text).toMatch(/^Warning: this lot is withdrawn\./);
  expect(text).toMatch(/Reason: one pouch smelled sour/);
  const trip = page.locator('main li', { hasText: 'its meals are planned again' });
  expect(await page.locator('dl').first().innerText()).toMatch(/At home\s+0 pouches/);
  await checkPage(app, '/shelf/D01');

  await trip.getByRole('link').click();
  await page
    .getByText(/Do not eat lot D01 \(.*\): it was withdrawn\./)
    .first()
    .waitFor();
  expect(await page.locator('main').innerText()).not.toMatch(/\d × D01/);
  await visit(page, '/shelf?search=D01');
  expect(await page.locator('tbody').innerText()).toMatch(/withdrawn/);
  await reader.reload();
  await reader.getByText('Do not eat it, and do not taste it.').waitFor();

  await visit(page, '/shelf/D01');
  await press(page, 'Put back on the shelf');
  await said(page, 'Lot back on the shelf.');
  expect(await page.locator('.notice.wrong').count()).toBe(0);
  expect(await page.locator('tbody tr').first().innerText()).toMatch(/put back on the shelf/);
});

test('the shelf works without scripts', async () => {
  const page = await app.open('/shelf', { expected: REFUSED, scripts: false });
  const all = await lots(page);
  await fill(page, { search: 'rice' });
  await press(page, 'Show');
  await page.waitForURL(/search=rice/);
  expect(await lots(page)).toBeLessThan(all);

  await visit(page, '/shelf/new/details');
  await fill(page, { ...GOOD_LOT, code: 'T 3', dryWeightG: '' });
  await press(page, 'Add to shelf');
  await page.getByText('Not saved.').waitFor();
  expect(await field(page, 'recipe').inputValue()).toBe('Test stew');
  await fill(page, { dryWeightG: '100' });
  await press(page, 'Add to shelf');
  await said(page, 'The lot is on the shelf');
});
