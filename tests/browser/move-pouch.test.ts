/* A pouch goes from one meal to another: dragged with a pointer, or by the list for fingers and keys; every figure follows. */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { newDemoTrip, startApp } from './harness.ts';

const app = startApp();
let trip = '';
beforeAll(async () => {
  trip = (await newDemoTrip(app)).replace(/\/\w+$/, '');
});

const codesOf = (page: Page, meal: string): Promise<string[]> =>
  page.locator(`#meal-${meal} .pouches a.tag`).allInnerTexts();
const said = (page: Page): Promise<string> => page.locator('.said').innerText();

test('dragged with a pointer', async () => {
  const page = await app.open(`${trip}/menu`);
  await page.setViewportSize({ width: 1280, height: 4000 }); // both meals in view, as there is no hand that scrolls while it drags
  const [code = ''] = await codesOf(page, '2-dinner');
  const before = await codesOf(page, '3-dinner');
  await page.locator('#meal-2-dinner .pouches li').first().dragTo(page.locator('#meal-3-dinner h3'));
  await expect.poll(() => said(page)).toBe(`1 × ${code} moved from day 2, dinner to day 3, dinner.`);
  expect(new Set(await codesOf(page, '3-dinner'))).toEqual(new Set([...before, code]));
});

test('moved by the list, with the keyboard alone', async () => {
  const page = await app.open(`${trip}/menu?change=3-dinner`);
  const [code = ''] = await codesOf(page, '3-dinner');
  const list = page.getByLabel(`Move one pouch of ${code} to`);
  await list.focus();
  await list.selectOption('4-dinner');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect.poll(() => said(page)).toBe(`1 × ${code} moved from day 3, dinner to day 4, dinner.`);
  expect(await codesOf(page, '4-dinner')).toContain(code);
});

test('without scripts the list works too, and says why where it does not', async () => {
  const page = await app.open(`${trip}/menu?change=4-dinner`, { scripts: false });
  const [code = ''] = await codesOf(page, '4-dinner');
  await page.getByLabel(`Move one pouch of ${code} to`).selectOption('2-dinner');
  await page.getByRole('button', { name: new RegExp(`^Move\\s+${code}$`) }).click();
  expect(await page.locator('main').innerText()).toContain(
    `1 × ${code} moved from day 4, dinner to day 2, dinner.`,
  );
});

test('planning again says that it is at work', async () => {
  const page = await app.open(`${trip}/menu`);
  await page.getByRole('button', { name: 'Plan again' }).click();
  await page.getByRole('button', { name: 'Looking for the best menu' }).waitFor();
  await page.getByRole('button', { name: 'Plan again' }).waitFor();
  expect(await said(page)).toContain('Planned again.');
});
