/* The equipment and the foods of the kitchen under use: parts saved and brought back, slips named and kept, tables brought in. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { barriers, checkPage, DESK_PX, PHONE_PX, startApp, tooWide, visit } from './harness.ts';

const app = startApp();

const REFUSED = /status of (422|413)/;
const field = (page: Page, name: string) => page.locator(`[name="${name}"]`);
const said = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text }).waitFor();
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

test.each(['/kitchen/equipment', '/kitchen/foods', '/kitchen/foods?q=lentil'])(
  '%s has no barrier and fits',
  (address) => checkPage(app, address),
);

test('a dryer is changed, a slip is named and kept, and the usual ones come back', async () => {
  const page = await app.open('/kitchen/equipment', { expected: REFUSED });
  await page.getByText('freeze dryer (freeze-dried)', { exact: true }).click();
  await field(page, 'dryers[0].trayCount').fill('5');
  await press(page, 'Save Dryers');
  await said(page, 'The equipment is saved.');
  expect(await field(page, 'dryers[0].trayCount').inputValue()).toBe('5');

  await page.getByText('freeze dryer (freeze-dried)', { exact: true }).click();
  await field(page, 'dryers[0].name').fill('the old one');
  await field(page, 'dryers[0].trayCount').fill('0');
  await press(page, 'Save Dryers');
  await page.getByRole('link', { name: 'Dryer 1, Trays' }).waitFor();
  const trays = field(page, 'dryers[0].trayCount');
  expect(await trays.inputValue()).toBe('0');
  expect(await trays.getAttribute('aria-invalid')).toBe('true');
  expect(await trays.isVisible()).toBe(true);
  expect(await page.locator('#field-dryers-0-trayCount-error').innerText()).toBe('Must be at least 1.');
  expect(await field(page, 'dryers[0].name').inputValue()).toBe('the old one');
  expect(await barriers(page)).toEqual([]);

  await trays.fill('6');
  await field(page, 'dryers[0].name').fill('dehydrator');
  await press(page, 'Save Dryers');
  await page.getByRole('link', { name: 'Dryer 2, Name' }).waitFor();
  expect(await page.locator('#field-dryers-1-name-error').innerText()).toBe(
    '"dehydrator" is listed twice; tell them apart.',
  );
  expect(await trays.inputValue()).toBe('6');

  await visit(page, '/kitchen/equipment');
  expect(await field(page, 'dryers[0].name').inputValue()).toBe('freeze dryer');
  await page.locator('#dryers').getByText('Reset to defaults', { exact: true }).click();
  await press(page, 'Reset to defaults : Dryers');
  await said(page, 'Defaults restored.');
  expect(await field(page, 'dryers[0].trayCount').inputValue()).toBe('4');
});

test('without scripts: keeping, days and a run are saved part by part', async () => {
  const page = await app.open('/kitchen/equipment', { scripts: false, expected: REFUSED });
  const months = page.getByLabel('Months, dehydrated, jar or can, without absorber, high-fat');
  await months.fill('-3');
  await press(page, 'Save Shelf life');
  expect(await months.inputValue()).toBe('-3');
  expect(await months.getAttribute('aria-invalid')).toBe('true');
  await months.fill('3');
  await press(page, 'Save Shelf life');
  expect(await months.inputValue()).toBe('3');
  expect(await page.locator('#keeping td', { has: months }).innerText()).toContain('default 2');

  for (const day of ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'])
    await page.getByLabel(day, { exact: true }).uncheck();
  await press(page, 'Save Calendar');
  expect(await page.getByLabel('Mon', { exact: true }).isChecked()).toBe(false);
  expect(await page.getByLabel('Sat', { exact: true }).isChecked()).toBe(true);

  await page.getByText('Add a run').click();
  await field(page, 'runs[0].date').fill('2026-05-02');
  await field(page, 'runs[0].waterRemovedG').fill('2700');
  await field(page, 'runs[0].hours').fill('21,5');
  await press(page, 'Save Runs');
  await page.getByText('2026-05-02, freeze dryer, 21.5 h', { exact: true }).waitFor();
});

const TABLE = `name;water g;protein g;fat g;carbohydrate g;fibre g;energy kcal
Leek, from the garden;88,2;1,8;0,3;6;2,2;38
Bread without figures;;8;3;50;4;270
Odd paste;60;5;10;15;0;900
`;

test('an own table is brought in: the row without water is refused with its reason, the doubtful one taken and named', async () => {
  const page = await app.open('/kitchen/foods', { expected: REFUSED });
  const choose = (content: string) =>
    page.getByLabel('CSV file').setInputFiles({
      name: 'mine.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(content),
    });
  const bringIn = () => press(page, 'Bring in');

  await bringIn();
  await page.getByText('No file was chosen.').waitFor();
  await choose('a;b\n1;2\n');
  await bringIn();
  await page.getByText('This table has no column for name, protein, fat, carbohydrate').waitFor();
  await choose('x'.repeat(2_500_000));
  await bringIn();
  await page.getByText('The file is larger than 2 MB').waitFor();

  await choose(TABLE);
  await bringIn();
  await said(page, '2 foods added, 0 replaced, 1 row refused.');
  expect(await page.getByRole('listitem').filter({ hasText: 'Row 3' }).innerText()).toContain(
    'Water: missing. Without it the dry weight cannot be worked out',
  );
  expect(await page.getByRole('listitem').filter({ hasText: 'Row 4' }).innerText()).toContain('900 kcal');
  for (const width of [PHONE_PX, DESK_PX]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await barriers(page)).toEqual([]);
    expect(await tooWide(page)).toBe(0);
  }

  const csv = await (await page.request.get('/kitchen/foods/export.csv')).text();
  expect(csv).toContain('"Leek, from the garden",88.2,1.8,0.3,6,2.2');

  await page.getByRole('main').getByRole('searchbox').fill('leek garden');
  await press(page, 'Search');
  const found = page.getByRole('region', { name: 'Foods that were found' });
  await found.locator('summary').click();
  await found.getByRole('button', { name: 'Delete "Leek, from the garden"', exact: true }).click();
  await said(page, 'The food is deleted from your own table.');
  expect(new URL(page.url()).searchParams.get('q')).toBe('leek garden');
  await page.getByText('No food matches.').waitFor();
  const near = page.getByRole('region', { name: 'Nearest foods' });
  expect(await near.locator('tbody th').allInnerTexts()).toEqual([expect.stringMatching(/^Leeks/)]);
  expect(await page.getByRole('region', { name: 'Your own foods' }).locator('tbody th').count()).toBe(1);
});
