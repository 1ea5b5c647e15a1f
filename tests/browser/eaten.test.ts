/* What is eaten: at home without a trip, and on the trail a whole meal at one tap. */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { checkPage, newDemoTrip, startApp, visit } from './harness.ts';

const app = startApp();
let trip = '';
const said = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text }).waitFor();

beforeAll(async () => {
  trip = (await newDemoTrip(app)).replace(/\/\w+$/, '');
});

test.each([true, false])(
  'one is eaten at home, and its water moves the recipe; scripts: %s',
  async (scripts) => {
    const page = await app.open('/kitchen', { scripts, expected: /422/ });
    await page.getByRole('link', { name: 'Bean chilli with beef', exact: true }).click();
    const share = async () =>
      Number(/Add back (\d+)\s?%/.exec(await page.locator('#water').innerText())?.[1]);
    await page.locator('#water').waitFor();
    const recipe = page.url();
    const before = await share();

    await visit(page, '/shelf/D02');
    const count = async () =>
      Number(/At home\s+(\d+) pouch/.exec(await page.locator('main').innerText())?.[1]);
    const there = await count();
    await page.locator('[name="eaten"]').fill('999');
    await page.getByRole('button', { name: 'Enter as eaten' }).click();
    await page.getByText('cannot have been eaten').first().waitFor();
    await page.locator('[name="eaten"]').fill('1');
    await page.getByLabel('How the water turned out').selectOption('too dry');
    await page.locator('[name="liking"][value="not liked"]').check();
    await page.locator('[name="portion"][value="too little"]').check();
    await page.locator('[name="who"]').fill(scripts ? 'Ilse' : 'Tarek');
    await page.locator('[name="eatenNote"]').fill('enough for two');
    await page.getByRole('button', { name: 'Enter as eaten' }).click();
    await said(page, 'Pouches entered as eaten');
    expect(await count()).toBe(there - 1);
    expect(await page.locator('tbody tr').first().innerText()).toMatch(
      /eaten at home\s+1\s+shelf → outside\s+–\s+too dry; portion too little; (?:Ilse|Tarek): not liked; enough for two/,
    );
    await checkPage(app, '/shelf/D02');
    await visit(page, recipe);
    expect(await share()).toBeGreaterThan(before);
    expect(await page.locator('#portion').innerText()).toMatch(/a serving is 1[12]\d\s?% of/);
    await visit(page, '/settings/learned');
    const learned = await page.locator('main').innerText();
    expect(learned).toMatch(/Tastes of (?:Ilse|Tarek)\s+[^]*rather not/);
    expect(learned).toMatch(/Portion of Bean chilli with beef/);
    await checkPage(app, '/settings/learned');
  },
);

test('a meal that is eaten as planned is one tap for the whole table', async () => {
  const page = await app.open(`${trip}/pouches`);
  await page.getByRole('button', { name: /^Set aside \d+ pouches$/ }).click();
  await page.getByRole('button', { name: 'Pack', exact: true }).click();
  await page.getByText('The pouches are packed.').first().waitFor();
  await visit(page, `${trip}/card`);
  const day = page.locator('details', { has: page.locator('summary', { hasText: /^Day 1 / }) });
  if ((await day.getAttribute('open')) === null) await day.locator('summary').click();
  const tap = day.getByRole('button', { name: 'Dinner of day 1: eaten as planned' });
  const lines = day.getByRole('group', { name: /dinner of day 1$/ });
  const planned = await lines.evaluateAll((all) =>
    all.map((line) => Number(/(\d+) ×/.exec(line.querySelector('p')?.textContent ?? '')?.[1])),
  );
  expect(planned.length).toBeGreaterThan(0);
  await tap.click();
  await page.getByText('not sent yet.').waitFor({ state: 'detached' });
  await tap.waitFor({ state: 'detached' });
  await day
    .getByText(/: entered/)
    .nth(planned.filter((pouches) => pouches > 0).length - 1)
    .waitFor();
  // how it was, a tap besides
  await lines.first().getByText('How was it?').click();
  await lines.first().getByRole('button', { name: 'Not enough' }).click();
  await lines
    .first()
    .getByText(/not enough.*: entered/)
    .waitFor();
  await visit(page, `${trip}/afterwards`);
  const eaten = await page
    .getByRole('region', { name: 'Pouches, lot by lot' })
    .locator('tbody tr td:nth-child(4)')
    .allInnerTexts();
  expect(eaten.reduce((sum, count) => sum + Number(count), 0)).toBe(
    planned.reduce((sum, pouches) => sum + pouches, 0),
  );
});
