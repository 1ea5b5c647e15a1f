/* The five questions of somebody who sees a trip for the first time, answered from the first screen at a desk and within one tap on a phone. */
import type { Locator, Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import type { TripPlan } from '../../src/lib/planning/model/trip-plan.ts';
import { show } from '../../src/lib/presentation/show.ts';
import { checkPage, newDemoTrip, startApp } from './harness.ts';

const app = startApp();
let trip = '';
let plan: TripPlan;

beforeAll(async () => {
  trip = (await newDemoTrip(app)).replace(/\/\w+$/, '');
  const stored = await (await fetch(`${app.origin}${trip}/trip.json`)).json();
  const answer = await fetch(`${app.origin}/api/plan`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ trip: stored }),
  });
  plan = (await answer.json()) as TripPlan;
});

/** Whether something is seen without scrolling. */
async function isInView(page: Page, what: Locator): Promise<boolean> {
  const box = await what.boundingBox();
  const { height } = page.viewportSize() ?? { height: 0 };
  return box !== null && box.y >= 0 && box.y + box.height <= height;
}

const heaviestOn = (day: number) =>
  show(
    Math.max(...plan.carry.loads.filter((load) => load.day === day).map(({ peakG }) => peakG)),
    'pack',
    'metric',
  );
const dinnerOn = (day: number) =>
  plan.menu.meals.find((meal) => meal.day === day && meal.meal === 'dinner')?.opened[0]?.recipe ?? '';

const answers = (page: Page) => page.getByRole('region', { name: 'Plan summary' });
const dayOf = (page: Page, day: number) =>
  page
    .getByRole('listitem')
    .filter({ has: page.getByRole('heading', { name: new RegExp(`^Day ${day}\\b`) }) });
/** The dinner of a day on the board. */
const dishOn = (page: Page, day: number) =>
  page.locator(`[popovertarget="meal-${day}-dinner"]`).getByText(dinnerOn(day));

test('a desk answers the five questions on the first screen', async () => {
  const page = await app.open(trip);
  await page.setViewportSize({ width: 1280, height: 800 });
  const weight = dayOf(page, 3).getByText(heaviestOn(3));
  expect(await isInView(page, weight)).toBe(true);
  const dinner = dishOn(page, 2);
  expect(await isInView(page, dinner)).toBe(true);
  for (const question of ['What fuel and water?', 'What is short?', 'What next?'])
    expect(await isInView(page, answers(page).getByText(question))).toBe(true);
  const text = await answers(page).innerText();
  for (const { label, count } of plan.fuel.containers) expect(text).toContain(`${count} × ${label}`);
  expect(text).toMatch(
    plan.shortfall.missingKcal > 0
      ? /What next\?\s+Dry or buy what is short/
      : /What next\?\s+Set aside \d+ pouches/,
  );
});

test('a phone answers them within one tap, and the head takes a fifth of its screen at most', async () => {
  const page = await app.open(trip, { widthPx: 390 });
  await page.setViewportSize({ width: 390, height: 844 });
  const places = page.getByRole('navigation', { name: 'Trip' });
  const head = await places.boundingBox();
  expect((head?.y ?? 0) + (head?.height ?? 0)).toBeLessThanOrEqual(844 / 5);
  for (const question of ['What fuel and water?', 'What is short?', 'What next?'])
    expect(await isInView(page, answers(page).getByText(question))).toBe(true);
  for (const day of [2, 3]) {
    await page.goto(app.origin + trip);
    await page
      .getByRole('navigation', { name: 'Days' })
      .getByRole('link', { name: `Day ${day}` })
      .click();
    await expect.poll(() => isInView(page, dayOf(page, day).getByText(heaviestOn(day)))).toBe(true);
    await expect.poll(() => isInView(page, dishOn(page, day))).toBe(true);
  }
});

test('a meal opens in place, with who gets how much of what, and leads to changing it', async () => {
  const page = await app.open(trip, { scripts: false });
  await page.getByRole('button', { name: /^dinner of day 2/i }).click();
  const sheet = page.locator('#meal-2-dinner');
  const text = await sheet.innerText();
  const dinner = plan.menu.meals.find((meal) => meal.day === 2 && meal.meal === 'dinner');
  for (const { eater } of dinner?.portions ?? []) expect(text).toContain(`${eater}:`);
  for (const { code, recipe } of dinner?.opened ?? []) {
    expect(text).toContain(code);
    expect(text).toContain(recipe);
  }
  await sheet.getByText('Why this?').first().click();
  await page.keyboard.press('Escape');
  expect(await sheet.isVisible()).toBe(false);
  await page.getByRole('button', { name: /^dinner of day 2/i }).click();
  await sheet.getByRole('link', { name: 'Change this meal' }).click();
  await page.waitForURL(/\/menu\?change=2-dinner/);
});

test('an open meal is locked, moved and eaten elsewhere in place, without scripts, and each is undone', async () => {
  const page = await app.open(trip, { scripts: false });
  const file = async () => (await fetch(`${app.origin}${trip}/trip.json`)).json();
  const before = await file();
  const sheet = page.locator('#meal-2-dinner');
  const open = () => page.getByRole('button', { name: /^dinner of day 2/i }).click();
  const undo = async (changes: RegExp) => {
    expect(await page.getByRole('status').first().innerText()).toMatch(changes);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('The change is undone.').waitFor();
    expect(await file()).toEqual(before);
  };
  await open();
  await sheet.getByRole('button', { name: 'Lock' }).click();
  await undo(/Changed: day 2, dinner\./);

  await open();
  await sheet.getByLabel('To day').selectOption('4');
  await sheet.getByRole('button', { name: 'Move' }).click();
  await expect
    .poll(() => page.locator('[popovertarget="meal-4-dinner"]').first().innerText())
    .toContain(dinnerOn(2));
  await undo(/Changed: day 2, dinner; day 4, dinner\./);

  await open();
  await sheet.getByRole('button', { name: 'Eat it elsewhere' }).click();
  await page.getByRole('button', { name: /^dinner of day 2.*eaten elsewhere/i }).waitFor();
  await undo(/day 2, dinner/);
});

test('the overview is open to everybody, wide and narrow, light and dark', async () => {
  await checkPage(app, trip);
});
