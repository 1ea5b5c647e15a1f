/* Pouches onto the shelf with as little as a cook knows of them: name, count and weight. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { atRest } from '../../src/tooling/browse.ts';
import { barriers, checkPage, startApp, tooWide, visit } from './harness.ts';

const app = startApp();
const REFUSED = /422/;
const cell = (page: Page, row: number, name: string) => page.locator(`[name="lots[${row}].${name}"]`);
const press = async (page: Page, name: string) => {
  await page.getByRole('button', { name, exact: true }).click();
  await atRest(page);
};
const said = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text }).waitFor();

test('three fields and Enter are a lot; what nobody said of it is marked', async () => {
  const page = await app.open('/shelf/new');
  await cell(page, 0, 'recipe').focus();
  await page.keyboard.type('Bean chili');
  await page.keyboard.press('Tab');
  await page.keyboard.type('12');
  await page.keyboard.press('Tab');
  await page.keyboard.type('140');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('lots[1].recipe');
  const known = page.getByText(/12 pouches of 1 serving; a serving: 140 g dry, about \d+ kcal/);
  await known.waitFor();
  expect(await known.innerText()).toContain('Allergens NOT DECLARED');
  await page.getByText('Enter what you know of row 1').click();
  expect(await cell(page, 0, 'energyKcal').getAttribute('placeholder')).toMatch(
    /about \d+ kcal \(\d+ to \d+ kcal\), by the kind of dish/,
  );
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await barriers(page)).toEqual([]);
    expect(await tooWide(page)).toBe(0);
  }
  await cell(page, 1, 'recipe').focus();
  await page.keyboard.press('Enter'); // a blank row: done
  await said(page, 'The lot is on the shelf');
  expect(new URL(page.url()).pathname).toMatch(/^\/shelf\/BC-\w{4}$/);
  expect(await page.locator('main').innerText()).toContain('12 pouches');
});

test('rows of a spreadsheet are pasted into the first field, and added together', async () => {
  const page = await app.open('/shelf/new');
  await cell(page, 0, 'recipe').evaluate((field: HTMLInputElement) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData(
      'text/plain',
      'Red lentil dal\t6\t240\t2\nPotato soup\t4\t95\t\nOat porridge\t10\t110\t1\nApple rings\t3\t60 g\t2\n',
    );
    field.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  });
  await page.getByText(/6 pouches of 2 servings; a serving: 120 g dry/).waitFor();
  await page.getByText(/3 pouches of 2 servings; a serving: 30 g dry, about \d+ kcal, no water/).waitFor();
  expect(await cell(page, 4, 'recipe').inputValue()).toBe('');
  await press(page, 'Add to shelf');
  await said(page, 'Pouches added to the shelf');
  const shelf = page.getByRole('region', { name: 'Table of lots' });
  for (const recipe of ['Red lentil dal', 'Potato soup', 'Oat porridge', 'Apple rings'])
    await shelf.getByRole('row').filter({ hasText: recipe }).waitFor();
});

test('what is on the shelf already is asked about, and a slip is named in its row', async () => {
  const page = await app.open('/shelf/new', { expected: REFUSED });
  await cell(page, 0, 'recipe').fill('Potato soup');
  await cell(page, 0, 'pouches').fill('4');
  await cell(page, 0, 'pouchG').fill('95');
  await cell(page, 1, 'recipe').fill('Rice pudding');
  await cell(page, 1, 'pouches').fill('some');
  await cell(page, 1, 'pouchG').fill('600');
  await press(page, 'Add to shelf');
  const problems = page.getByRole('region', { name: 'Not saved.' });
  expect(await problems.getByRole('link').allInnerTexts()).toEqual([
    'Row 2, Pouches',
    'Row 2, Servings in a pouch',
  ]);
  expect(await cell(page, 1, 'pouches').inputValue()).toBe('some');
  await cell(page, 1, 'pouches').fill('5');
  await cell(page, 1, 'servingsPerPouch').fill('4');
  await press(page, 'Add to shelf');
  const odd = page.getByRole('region', { name: 'This looks unusual' });
  expect(await odd.innerText()).toMatch(/Potato soup: lot PS-\w{4} on the shelf has the same name/);
  await page.getByLabel('Yes, save it').check();
  await press(page, 'Add to shelf');
  await said(page, 'Pouches added to the shelf');
  expect(await page.getByRole('row').filter({ hasText: 'Potato soup' }).count()).toBe(2);
});

test('without scripts rows are pasted, estimated, put right and added', async () => {
  const page = await app.open('/shelf/new', { scripts: false });
  await page.getByText('Paste rows from a spreadsheet').click();
  await page.getByLabel('Rows').fill('Leek stew\t8\t154\t2\nBean mash\t2\t88\t1');
  await press(page, 'Put into rows');
  expect(await cell(page, 1, 'recipe').inputValue()).toBe('Bean mash');
  await page.getByLabel('with the pouch and its absorber').check();
  await press(page, 'Show estimates');
  await page.getByText(/8 pouches of 2 servings; a serving: 70 g dry/).waitFor();
  await page.getByText('Enter what you know of row 1').click();
  await cell(page, 0, 'energyKcal').fill('301');
  await cell(page, 0, 'allergens').fill('celery');
  await checkPage(app, '/shelf/new');
  await press(page, 'Add to shelf');
  await said(page, 'Pouches added to the shelf');
  await page.getByRole('row').filter({ hasText: 'Leek stew' }).getByRole('link').click();
  const lot = await page.locator('main').innerText();
  expect(lot).toMatch(/Allergens\s+celery/);
  expect(lot).toMatch(/Energy of a pouch\s+602 kcal/);
});

test('an estimate says so wherever it is shown, until the cook states the figure', async () => {
  const page = await app.open('/shelf');
  await page.getByRole('row').filter({ hasText: 'Red lentil dal' }).getByRole('link').click();
  await page.getByText('7 values are estimated').click();
  expect(await page.locator('main').innerText()).toMatch(/Energy of a pouch\s+about [\d,]+ kcal/);
  await page
    .getByText(/about \d+ kcal \(\d+ to \d+ kcal\), by the kind of dish/)
    .first()
    .waitFor();
  const lot = new URL(page.url()).pathname;
  await checkPage(app, lot);

  await visit(page, '/trips/new');
  await page.locator('[name="partySize"]').fill('2');
  await page.locator('[name="dayCount"]').fill('2');
  await press(page, 'Plan the trip');
  await page.waitForURL(/\/trips\/[^/]+\/\w+$/);
  const trip = new URL(page.url()).pathname.replace(/\/\w+$/, '');
  await visit(page, `${trip}/menu`);
  const menu = await page.locator('main').innerText();
  expect(await page.locator('body').textContent()).toMatch(
    /Energy or water is an estimate for \d+ lots? on this menu/,
  );
  expect(menu).toMatch(/estimated/);
  expect(menu).toMatch(/about \d+ kcal/);
  await checkPage(app, `${trip}/menu`);
  await visit(page, `${trip}/card`);
  expect(await page.locator('main').innerText()).toMatch(/about \d+ ml boiling water/);
  await visit(page, '/shelf/labels?code=' + lot.replace('/shelf/', ''));
  await page.locator('.label').first().waitFor();
  expect(await page.locator('.label').first().innerText()).toMatch(/Pour in about\s\d+\sml/);

  await visit(page, lot);
  const energy = page.locator('[name="energyKcal"]');
  expect(await energy.inputValue()).toBe('');
  await energy.fill('431');
  await press(page, 'Save');
  await said(page, 'The lot is saved');
  await page.getByText('6 values are estimated').waitFor();
  expect(await page.locator('main').innerText()).toMatch(/Energy of a pouch\s+862 kcal/);
});
