/* A trip that comes home: notes from the trail, what was said of it, what it taught, and a figure forgotten. */
import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { checkPage, newDemoTrip, startApp, unfold, visit } from './harness.ts';

const app = startApp();
const REFUSED = /status of 422/;
let trip: string;
let code: string;
let packed: number;

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const said = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text }).waitFor();
const send = async (notes: object[], origin = app.origin) =>
  fetch(`${app.origin}${trip}/notes.json`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin },
    body: JSON.stringify({ notes }),
  });
const note = (kind: string, of: string, pouches: number, more: object = {}) => ({
  ...{ id: randomUUID(), at: '2027-07-06T18:30:00Z', kind, code: of, pouches },
  ...more,
});

beforeAll(async () => {
  trip = (await newDemoTrip(app)).replace(/(\/trips\/[^/]+).*/, '$1');
}, 120_000);

test('before it is packed, the page says what to do first', async () => {
  const page = await app.open(`${trip}/afterwards`);
  await page.getByText('First mark the pouches as packed').waitFor();
  await checkPage(app, `${trip}/afterwards`);
});

test('the trip is packed, with an eater, the stove and the pace left to the usual figures', async () => {
  const page = await app.open(`${trip}/party`);
  await unfold(page);
  await page.locator('[name="party[0].energyKcal"]').fill('');
  for (const day of [0, 1]) {
    await page.locator(`[name="days[${day}].walkingH"]`).fill('');
    await page.locator(`[name="days[${day}].distanceM"]`).fill('20');
  }
  await press(page, 'Save, keep the menu');
  await said(page, 'Trip saved.');
  await visit(page, `${trip}/pouches`);
  await press(page, /^Set aside \d+ pouches$/);
  await said(page, 'set aside for this trip');
  await press(page, 'Pack');
  await said(page, 'The pouches are packed.');
  const rows = page.getByRole('region', { name: 'Pouches, lot by lot' }).locator('tbody tr');
  const lots = await rows.evaluateAll((all) =>
    all.map((row) => [...row.children].map((cell) => (cell as HTMLElement).innerText.trim())),
  );
  [code, packed] = lots
    .map(([lot = '', , , count]) => [lot, Number(count)] as const)
    .find(([, count]) => count >= 2) ?? ['', 0];
  expect(packed).toBeGreaterThanOrEqual(2);
});

test('notes from the trail move pouches once; a foreign page is refused; what does not fit is listed and settled', async () => {
  const notes = [
    note('eaten', code, 1),
    note('left over', code, 0, { servings: 0.5 }),
    note('liked', code, 0),
    note('too wet', code, 0),
    note('eaten', 'NO-LOT', 1),
  ];
  for (const outcome of ['entered', 'known']) {
    const { results } = await (await send(notes)).json();
    expect(results[0].outcome).toBe(outcome);
  }
  expect((await send(notes, 'http://elsewhere.example')).status).toBe(403);

  const page = await app.open(`${trip}/afterwards`);
  const row = page
    .getByRole('region', { name: 'Pouches, lot by lot' })
    .locator('tbody tr', { hasText: code });
  const cells = await row.locator('td').allInnerTexts();
  expect(cells.slice(1, 4).map(Number)).toEqual([packed, 1, 0]);
  expect(await page.getByLabel(`Servings of ${code} left over`).inputValue()).toBe('0.5');
  await page.getByText('No pouch of "NO-LOT"').waitFor();
  // how the dish was, as noted, for all who were to eat of it
  const dish = page.locator('details[open]', { has: page.getByText('Liked by', { exact: true }) });
  const liked = dish.getByRole('group', { name: 'Liked by', exact: true }).getByRole('checkbox');
  expect(await liked.evaluateAll((boxes) => boxes.every((box) => (box as HTMLInputElement).checked))).toBe(
    true,
  );
  expect(await dish.getByLabel('some liquid left').isChecked()).toBe(true);
  await checkPage(app, `${trip}/afterwards`);
  await page.getByLabel('Remark').fill('a neighbour’s');
  await press(page, 'Mark the ticked notes as resolved');
  await said(page, 'Notes resolved.');
  expect(await page.getByText('No pouch of "NO-LOT"').count()).toBe(0);
});

test('without scripts: a slip is named and kept, then the trip is finished', async () => {
  const page = await app.open(`${trip}/afterwards`, { scripts: false, expected: REFUSED });
  await page.getByLabel(`Pouches of ${code} brought home`).fill('999');
  await page.getByRole('combobox', { name: 'Ilse' }).selectOption('too little');
  await page.getByRole('combobox', { name: 'Tarek' }).selectOption('too much');
  await page
    .getByLabel(/, after$/)
    .first()
    .waitFor();
  const after = page.getByLabel(/, after$/);
  for (let index = 0; index < (await after.count()); index += 1) {
    const before = await page
      .getByLabel(/, before$/)
      .nth(index)
      .inputValue();
    await after.nth(index).fill(String(Number(before) - (index === 0 ? 60 : 0)));
  }
  const dish = page.locator('details[open]', { has: page.getByText('Liked by', { exact: true }) }).first();
  const notLiked = dish.getByRole('group', { name: 'Not liked by' });
  await notLiked.getByRole('checkbox', { name: 'Ilse' }).check();
  await dish.getByLabel('too little').check();
  await page.locator('[name="walkedH[0]"]').fill('9');
  await page.locator('[name="walkedH[1]"]').fill('11');
  await press(page, 'Finish the trip');
  await page.getByText('Not finished.').waitFor();
  const back = page.getByLabel(`Pouches of ${code} brought home`);
  expect(await back.inputValue()).toBe('999');
  expect(await back.getAttribute('aria-invalid')).toBe('true');
  expect(await page.getByRole('combobox', { name: 'Ilse' }).inputValue()).toBe('too little');

  await page.getByText('Ilse: tick one of the two only').first().waitFor();
  await dish
    .getByRole('group', { name: 'Liked by', exact: true })
    .getByRole('checkbox', { name: 'Ilse' })
    .uncheck();

  await back.fill('1');
  await press(page, 'Finish the trip');
  await said(page, 'Trip finished');
  await checkPage(app, `${trip}/afterwards`);
});

test('a finished trip says so in the lists, and misses no lot that it ate', async () => {
  const page = await app.open('/trips');
  await page.getByText('finished', { exact: true }).waitFor();
  await visit(page, `${trip}/menu`);
  const text = await page.locator('main').innerText();
  expect(text).not.toMatch(/lacks? \d+|only \d+ (?:are|is) left|is on no pouch/i);
  await visit(page, `/shelf/${code}`);
  expect(await page.locator('main').innerText()).toMatch(/brought back/i);
});

test('what it taught is shown, planned with where nothing is entered, and forgotten on request', async () => {
  const page = await app.open('/settings/learned');
  const ilse = page.getByRole('region', { name: 'Appetite of Ilse', exact: true });
  await ilse.getByText('105% of the usual need').first().waitFor();
  await page
    .getByRole('region', { name: 'Appetite of Tarek', exact: true })
    .getByText('so nothing changes')
    .waitFor();
  await page
    .getByRole('region', { name: /^Efficiency of the stove/ })
    .first()
    .waitFor();
  await page.getByRole('region', { name: 'Group pace', exact: true }).waitFor();
  await checkPage(app, '/settings/learned');

  // the trip itself is not measured by what came of it; one more like it is planned with that
  await visit(page, `${trip}/water`);
  await page.getByText('usual for this fuel').first().waitFor();
  await visit(page, `${trip}/party`);
  expect(await page.getByText('Planned with').count()).toBe(0);
  await unfold(page);
  await press(page, 'Duplicate');
  await page.waitForURL((url) => !url.pathname.startsWith(trip));
  const again = new URL(page.url()).pathname.replace(/(\/trips\/[^/]+).*/, '$1');
  await visit(page, `${again}/party`);
  await unfold(page);
  await page.getByText('Planned with 105% of the usual need').waitFor();
  await checkPage(app, `${again}/party`);
  await visit(page, `${again}/water`);
  await page.getByText('learned from the fuel weighed').first().waitFor();

  await visit(page, '/settings/learned');
  await press(page, 'Clear Appetite of Ilse');
  await said(page, 'Learned value cleared.');
  expect(await page.getByRole('region', { name: 'Appetite of Ilse', exact: true }).count()).toBe(0);
  await visit(page, `${again}/party`);
  expect(await page.getByText('Planned with').count()).toBe(0);
});

test('opened again, it gives its answers back and takes back what it taught', async () => {
  const page = await app.open(`${trip}/afterwards`);
  await press(page, 'Reopen trip');
  await said(page, 'The trip is open again.');
  expect(await page.getByRole('combobox', { name: 'Ilse' }).inputValue()).toBe('too little');
  expect(await page.locator('[name="walkedH[0]"]').inputValue()).toBe('9');
  await visit(page, '/settings/learned');
  expect(await page.getByRole('region', { name: 'Group pace', exact: true }).count()).toBe(0);
});

test('a note that arrives for a deleted trip is shown in the list of trips, and settled there', async () => {
  const page = await app.open(`${trip}/afterwards`);
  await press(page, 'Finish the trip');
  await said(page, 'Trip finished');
  await visit(page, `${trip}/party`);
  await page.getByText('Duplicate, template').click();
  await press(page, /^Delete/);
  await said(page, 'deleted');
  await send([note('eaten', code, 1)]);
  await visit(page, '/trips');
  await page.getByText('was deleted, so this note did not change the stock').waitFor();
  await checkPage(app, '/trips');
  await press(page, 'Mark the ticked notes as resolved');
  await said(page, 'Notes resolved.');
  expect(await page.getByText('did not change the stock').count()).toBe(0);
});
