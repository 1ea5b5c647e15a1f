/* How the people of a trip eat: said in its form, and kept. */
import { beforeAll, expect, test } from 'vitest';
import { atRest, newDemoTrip, startApp, visit } from './harness.ts';

const app = startApp();
let trip = '';

beforeAll(async () => {
  trip = await newDemoTrip(app);
});

test('portion, tastes, cook groups and meals that differ are saved without scripts, and nothing of the menu is lost', async () => {
  const page = await app.open(`${trip}/party`, { scripts: false });
  const open = async (words: string | RegExp, nth = 0) =>
    page.locator('summary', { hasText: words }).nth(nth).click();
  for (const index of [0, 1, 2, 3]) {
    await open(/^\s*More: carries/, index);
    await page.locator(`[name="party[${index}].cookGroup"]`).fill(index < 2 ? 'North' : 'South');
  }
  await page.locator('[name="party[0].portion"]').selectOption('small');
  await page.locator('[name="party[0].tastes.never"]').fill('mushroom\nliver');
  await open(/^\s*Meals:/);
  await page.locator('[name="servingStyle"]').selectOption('shared pot');
  await page.locator('[name="reserveMeals"]').fill('1');
  await open('Add a line');
  await page.locator('[name="mealRules[0].days"]').fill('2-3');
  await page.locator('[name="mealRules[0].meals"][value="dinner"]').check();
  await page.locator('[name="mealRules[0].elsewhere"][value="everyone"]').check();
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();

  await page.getByText('Meals: shared pot, reserve 1, days 2-3, dinner: everyone eats elsewhere').waitFor();
  await page.getByText(/carries 14 kg, .*portion small, 2 tastes, cooks with North/).waitFor();
  expect(await page.locator('[name="servingStyle"]').inputValue()).toBe('shared pot');
  const stored = (await (await page.request.get(`${app.origin}${trip}/trip.json`)).json()) as {
    cookGroups: unknown;
    party: { tastes?: unknown }[];
    menu: unknown[];
  };
  expect(stored.cookGroups).toMatchObject([{ name: 'North' }, { name: 'South' }]);
  expect(stored.party[0]?.tastes).toEqual([
    { food: 'mushroom', taste: 'never' },
    { food: 'liver', taste: 'never' },
  ]);
  expect(stored.menu.length).toBeGreaterThan(0);
});

test('what is wrong is said at its field, which is open, and nothing typed is lost', async () => {
  const page = await app.open(`${trip}/party`);
  await page.locator('summary', { hasText: 'Meals:' }).click();
  await page.locator('summary', { hasText: 'Add a line' }).click();
  await page.locator('[name="mealRules[1].days"]').fill('friday');
  await page.locator('[name="mealRules[1].dish"]').fill('Pancakes');
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();
  await page.getByText('"friday" is not a day of the trip').first().waitFor();
  expect(await page.locator('[name="mealRules[1].dish"]').isVisible()).toBe(true);
  expect(await page.locator('[name="mealRules[1].dish"]').inputValue()).toBe('Pancakes');
});

test('each cook group has a pot of its own', async () => {
  const page = await app.open(`${trip}/water`);
  await page.locator('#water summary', { hasText: 'Change' }).click();
  await page.locator('[name="cookGroups[1].potMl"]').fill('0.9');
  await page.locator('form[action="?/water"]').getByRole('button', { name: 'Save' }).click();
  await atRest(page);
  await visit(page, `${app.origin}${trip}/water`);
  expect(await page.locator('[name="cookGroups[1].potMl"]').inputValue()).toBe('0.9');
  expect(await page.locator('[name="cookGroups[0].potMl"]').inputValue()).toBe('');
});

test('a hut night is one choice on its day: its dinner and the next breakfast are eaten there, and packs and fuel follow', async () => {
  const figures = async () => {
    const file = await (await page.request.get(`${app.origin}${trip}/trip.json`)).json();
    const answer = await page.request.post(`${app.origin}/api/plan`, {
      data: { trip: { ...file, menu: [] } },
      headers: { origin: app.origin },
    });
    return (await answer.json()) as {
      totals: { foodG: number; fuelGrossG: number };
      fuel: { need: { value: number } };
    };
  };
  const page = await app.open(`${trip}/party`, { scripts: false });
  const before = await figures();
  const fourth = page.locator('summary', { hasText: 'Day 4' });
  await fourth.click();
  const kind = page.getByLabel('Kind of day, day 4');
  expect(await kind.inputValue()).toBe('');
  await kind.selectOption({ label: 'hut night' });
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();
  expect(await fourth.innerText()).toContain('hut night');
  await fourth.click();
  expect(await page.getByLabel('Kind of day, day 4').inputValue()).toBe('hut night');
  await page.getByText('dinner and next breakfast served', { exact: true }).waitFor();

  const after = await figures();
  expect(after.totals.foodG).toBeLessThan(before.totals.foodG);
  expect(after.fuel.need.value).toBeLessThan(before.fuel.need.value);
  await visit(page, `${app.origin}${trip}`);
  for (const meal of ['dinner of day 4', 'breakfast of day 5'])
    await page
      .getByRole('button', { name: new RegExp(`${meal}.*eaten elsewhere`) })
      .first()
      .waitFor();
  const day = page.locator('#day-4');
  expect(await day.textContent()).toContain('hut night');
  expect(
    await page
      .getByRole('button', { name: /dinner of day 1/ })
      .first()
      .textContent(),
  ).not.toContain('elsewhere');
});
