/* The main job with a keyboard and no pointer: each page after the first is reached by Tab, Enter, Space, arrows and letters. */
import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright';
import { expect, test } from 'vitest';
import { DESK_PX, PHONE_PX, projectFile, startApp } from './harness.ts';
import { atKeyboard } from './by-keyboard.ts';

const app = startApp();

/** Opens the first page, and no other. */
async function sitDown(widthPx: number, colorScheme: 'light' | 'dark') {
  const page = await app.open('/', { widthPx });
  await page.emulateMedia({ colorScheme });
  const named = (role: 'button' | 'link' | 'textbox' | 'combobox' | 'checkbox') => {
    return (name: string | RegExp, within: Locator | Page = page): Locator =>
      within.getByRole(role, { name, exact: typeof name === 'string' });
  };
  return {
    page,
    ...atKeyboard(page),
    button: named('button'),
    link: named('link'),
    field: named('textbox'),
    list: named('combobox'),
    box: named('checkbox'),
    main: page.getByRole('navigation', { name: 'Main' }),
    part: (name: string) => page.getByRole('region', { name }),
    said: (text: string | RegExp) => page.getByRole('status').filter({ hasText: text }).waitFor(),
    heading: (name: string) => page.getByRole('heading', { name, exact: true }).waitFor(),
  };
}

test('from a file to the printed card', async () => {
  const { page, to, press, type, choose, isAt, ...at } = await sitDown(PHONE_PX, 'dark');
  await page.evaluate(() => (window.print = () => document.body.setAttribute('data-printed', '')));

  // a heading that no guess can place makes the mapping ask
  const csv = readFileSync(projectFile('demo-data/shelf.csv'), 'utf8').replace('dry weight g', 'X1');
  await press(at.link('Import a CSV'));
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    to(page.getByLabel('CSV file')).then(() => page.keyboard.press('Enter')),
  ]);
  await chooser.setFiles({ name: 'shelf.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
  await press(at.button('Look at the file'));
  await choose(at.list('Contains', page.getByRole('group', { name: 'X1' })), 'Dry weight');
  await press(at.button('Preview import'));
  await choose(at.list('X1: In which unit is dry weight?'), 'g');
  await choose(at.list('X1: Is dry weight for one serving or for a whole pouch?'), 'one serving');
  await press(at.button('Apply answers'));
  await page.getByText('25 rows: 25 new').waitFor();
  await press(at.button('Import 25 pouch lots'));
  await at.said('Import finished');

  await press(at.link('Trips', at.main));
  await press(at.link('New trip'));
  await type(at.field('People'), 2);
  await type(at.field('Days'), 3);
  await type(at.field('Name of the trip'), 'Over the moor');
  await press(at.button('Plan the trip'));
  const trip = page.getByRole('navigation', { name: 'Trip' });
  await trip.waitFor();
  await press(at.link('Who and where', trip));
  const second = page.getByRole('group', { name: 'Person 2' });
  await type(at.field('Name', second), 'Ada');
  await press(second.locator('summary', { hasText: 'Avoids' }));
  await to(at.box(/nuts/, second));
  await page.keyboard.press('Space');
  await press(second.locator('summary', { hasText: 'More' }));
  await type(at.field('Carry limit', second), 12);
  await press(page.locator('summary', { hasText: /^\s*Stove/ }));
  await choose(at.list('Fuel'), 'white gas');
  await press(at.button('Save and plan again'));
  await at.said('Trip saved and planned again.');

  await press(at.link('Overview', trip));
  await press(at.link('All meals', page.getByRole('navigation', { name: 'Overview' })));
  const meal = page.locator('#meal-2-dinner');
  const codes = () => meal.locator('.pouches a').allInnerTexts();
  await press(at.link('Change dinner of day 2', meal));
  const [before = ''] = await codes();
  await to(at.list(`Swap ${before} for`, meal));
  await page.keyboard.press('ArrowDown');
  await press(at.button(`Swap ${before}`, meal));
  await meal.getByText('by hand', { exact: true }).waitFor();
  const [swapped = ''] = await codes();
  expect(swapped).not.toBe(before);
  expect(await meal.evaluate((section) => section.contains(document.activeElement))).toBe(true);
  await choose(at.list(`Move one pouch of ${swapped} to`, meal), 'day 3, breakfast');
  await press(at.button(`Move ${swapped}`, meal));
  await at.said(`1 × ${swapped} moved from day 2, dinner to day 3, breakfast.`);
  const target = page.locator('#meal-3-breakfast');
  await press(at.link('Change breakfast of day 3', target));
  await press(at.button('Lock breakfast of day 3', target));
  await target.getByText('locked', { exact: true }).waitFor();
  await expect.poll(() => isAt(at.button('Unlock breakfast of day 3', target))).toBe(true);

  await press(at.link('Packs', trip));
  await at.heading('Heaviest pack of each day');
  await choose(at.list('Pack of'), 'Ada');
  await page.getByRole('table', { name: 'Pack of Ada' }).waitFor();
  await press(at.link('Water and fuel', trip));
  await at.heading('Water and fuel');
  await press(at.link('To get', trip));
  await at.heading('Shortfall');

  await press(at.link('On paper', trip));
  await press(at.button('Print the card'));
  expect(await page.locator('body').getAttribute('data-printed')).toBe('');
});

test('from a recipe to sealed pouches', async () => {
  const { page, press, submit, type, choose, tick, ...at } = await sitDown(DESK_PX, 'light');
  await press(at.link('Kitchen', at.main));
  await press(at.link('Add a recipe'));
  await type(at.field('Name'), 'Lentil pot');
  await type(at.field('Servings per batch'), 4);
  await submit(at.button('Continue to ingredients'));
  await type(page.locator('[name="food.name"]'), 'Barley, pearled, raw');
  await page.keyboard.press('Escape');
  await type(at.field('Amount'), 500);
  await submit(at.button('Add ingredient'));
  await at.said('Ingredient added.');

  await press(at.link('Start a batch'));
  await type(at.field('Lot code'), 'L1');
  await submit(at.button('Start'));
  await at.said('Batch started.');

  const cook = at.part('1. Cook');
  await type(at.field('Cooked weight', cook), 1000);
  for (const box of await cook.getByRole('checkbox').all()) await tick(box);
  await submit(at.button('Save', cook));
  const load = at.part('2. Load');
  const tray = load.getByRole('group', { name: 'Tray 1' });
  await type(at.field('With wet food', tray), 1000);
  for (const box of await load.getByRole('checkbox').all()) await tick(box);
  await submit(at.button('Save', load));

  const dryG = Number(/Target dry weight\s*([\d,]+) g/.exec(await load.innerText())?.[1]?.replace(',', ''));
  const dry = at.part('3. Dry');
  for (const { afterH, grossG } of [
    { afterH: 20, grossG: dryG + 2 },
    { afterH: 24, grossG: dryG },
  ]) {
    await type(at.field('Hours of drying', dry), afterH);
    await type(at.field('Now', dry), grossG);
    await choose(at.list('Feel in the middle', dry), 'dry all the way through');
    await submit(at.button('Save weights', dry));
  }
  await submit(at.button('Save and suggest pouches'));
  const seal = at.part('5. Seal');
  for (const box of await seal.locator('.check').getByRole('checkbox').all()) await tick(box);
  await submit(at.button('Seal and add to shelf', seal));
  await at.said('The pouches are on the shelf.');
  await press(at.link('Print the labels'));
  await at.heading('Labels');
});
