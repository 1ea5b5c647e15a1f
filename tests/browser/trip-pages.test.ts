/* The pages of one trip under use: bad input, second thoughts, two windows at once, the keyboard. */
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { newDemoTrip, PHONE_PX, startApp, unfold, visit } from './harness.ts';

const app = startApp();
let trip = '';

beforeAll(async () => {
  trip = await newDemoTrip(app);
});

const field = (page: Page, name: string) => page.locator(`[name="${name}"]`);
const saidOn = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text }).waitFor();
/** On a machine with other work to do an answer may take its time. */
const eventually = <T>(read: () => Promise<T>) => expect.poll(read, { timeout: 20_000 });
const UNPROCESSABLE = /status of (422|409)/;

/** How many days the trip has, and how many pouches its menu opens, as it is stored. */
async function stored(): Promise<{ days: number; pouches: number }> {
  const { dayCount, menu } = (await (await fetch(`${app.origin}${trip}/trip.json`)).json()) as {
    dayCount: number;
    menu: { opened: { pouches: number }[] }[];
  };
  const lots = menu.flatMap(({ opened }) => opened);
  return { days: dayCount, pouches: lots.reduce((sum, lot) => sum + lot.pouches, 0) };
}

test('a new trip names each field that is wrong and keeps what was typed', async () => {
  const page = await app.open('/trips/new', { expected: UNPROCESSABLE });
  await field(page, 'partySize').fill('0');
  await field(page, 'dayCount').fill('400');
  await field(page, 'energyKcal').fill('-2500');
  await field(page, 'name').fill('Far too far');
  await page.getByRole('button', { name: 'Plan the trip' }).click();

  const problems = page.getByRole('region', { name: 'Not planned.' });
  await problems.waitFor();
  expect(await problems.getByRole('link').allInnerTexts()).toEqual(['People', 'Days', 'Energy']);
  expect(await problems.innerText()).toMatch(/from 1 to 40[^]*at most 90 days[^]*at least 500 kcal/);
  expect(await field(page, 'dayCount').inputValue()).toBe('400');
  expect(await field(page, 'name').inputValue()).toBe('Far too far');
});

test('eaters come and go without losing what was typed', async () => {
  const page = await app.open(`${trip}/party`);
  const names = () =>
    page
      .locator('input[name^="party["][name$="].name"]')
      .evaluateAll((all) => all.map((input) => (input as HTMLInputElement).value));
  const before = await names();
  await field(page, 'party[0].name').fill('Somebody else');
  await page.getByRole('button', { name: 'Add a person' }).click();
  await eventually(() => page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe(
    `party[${before.length}].name`,
  );
  await page.keyboard.type('One more');
  await unfold(page);
  await page.getByRole('button', { name: 'Remove person 2' }).click();
  await eventually(names).toEqual(['Somebody else', ...before.slice(2), 'One more']);

  await unfold(page);
  await field(page, 'days[0].walkingH').fill('');
  await field(page, 'days[1].walkingH').fill('9');
  await field(page, 'days[0].airTemperatureC').fill('21');
  await page.getByRole('button', { name: 'Every day like day 1' }).click();
  await eventually(() => field(page, 'days[4].airTemperatureC').inputValue()).toBe('21');
  expect(await field(page, 'days[1].walkingH').inputValue()).toBe('');

  await visit(page, `${trip}/party`);
  expect(await names()).toEqual(before);
});

test('bad input is named by eater and field, and the party cannot be nobody', async () => {
  const page = await app.open(`${trip}/party`, { expected: UNPROCESSABLE });
  await unfold(page);
  await field(page, 'party[1].maxLoadG').fill('a lot');
  await field(page, 'days[2].walkingH').fill('25');
  await field(page, 'stove.efficiency').fill('120');
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();
  const problems = page.getByRole('region', { name: 'Not saved.' });
  await problems.waitFor();
  expect(await problems.getByRole('link').allInnerTexts()).toEqual([
    'Person 2, carry limit',
    'Day 3, walking',
    'Efficiency',
  ]);
  await problems.getByRole('link', { name: 'Person 2, carry limit' }).click();
  expect(await field(page, 'party[1].maxLoadG').inputValue()).toBe('a lot');

  await visit(page, `${trip}/party`);
  const remove = page.getByRole('button', { name: /^Remove person/ });
  const people = page.locator('input[name^="party["][name$="].name"]');
  for (let left = await people.count(); left > 0; left -= 1) {
    await unfold(page);
    await remove.first().click();
    await eventually(() => people.count()).toBe(left - 1);
  }
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();
  await problems.waitFor();
  expect(await problems.innerText()).toContain('must have at least one person');
});

test('the whole form of four people and five days fits three screens of a phone, closed, with what is in it said', async () => {
  const page = await app.open(`${trip}/party`, { widthPx: 390, touch: true });
  const high = await page.evaluate(() => document.documentElement.scrollHeight);
  expect(high).toBeLessThanOrEqual(3 * 844);
  const second = page.getByRole('group', { name: 'Person 2' });
  expect(await second.innerText()).toMatch(
    /Avoids: tree nuts\s+More: carries 19 kg, .* · default: bottles 3\.0 L/,
  );
  const closed = await page.locator('summary', { hasText: 'Day 3' }).innerText();
  expect(closed).toMatch(/7 h walking, camp at 2300 m, 15 °C, dry camp/);
});

test('a fold opens where something in it is wrong, and only there, without scripts too', async () => {
  const page = await app.open(`${trip}/party`, { scripts: false, expected: UNPROCESSABLE });
  const more = page.getByRole('group', { name: 'Person 2' }).locator('summary', { hasText: 'More' });
  await more.click();
  await field(page, 'party[1].maxLoadG').fill('a lot');
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();
  await page.getByRole('region', { name: 'Not saved.' }).waitFor();
  expect(await field(page, 'party[1].maxLoadG').isVisible()).toBe(true);
  expect(await field(page, 'party[0].maxLoadG').isVisible()).toBe(false);
  expect(await field(page, 'days[0].walkingH').isVisible()).toBe(false);
});

test('all packs stand beside each other without scripts, each says its point and opens, with the limit in view of a phone', async () => {
  const page = await app.open(`${trip}/loads`, { widthPx: 390, scripts: false });
  const packs = page.getByRole('region', { name: 'Heaviest pack of each day' });
  const drawings = packs.getByRole('img');
  expect(await drawings.count()).toBe(4);
  const tops = await Promise.all([0, 1].map(async (nth) => (await drawings.nth(nth).boundingBox())?.y));
  expect(Math.abs((tops[0] ?? NaN) - (tops[1] ?? NaN))).toBeLessThan(60);
  expect(await drawings.nth(1).getAttribute('aria-label')).toMatch(
    /^Tarek: [\d.]+ kg at most, on day 3; limit 19\.0 kg\. Heaviest of each day\. Day 1: [\d.]+ kg\./,
  );
  const limit = await packs.getByRole('columnheader', { name: 'Carry limit' }).boundingBox();
  expect((limit?.x ?? NaN) + (limit?.width ?? NaN)).toBeLessThanOrEqual(390);
  await packs.getByRole('link', { name: /^Tarek/ }).click();
  const table = page.getByRole('table', { name: 'Pack of Tarek' });
  await table.waitFor();
});

test('fewer days drop their meals only after saying so', async () => {
  const page = await app.open(`${trip}/party`, { expected: UNPROCESSABLE });
  await field(page, 'dayCount').fill('4');
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();
  const drops = page.getByRole('region', { name: 'Will be removed' });
  await drops.waitFor();
  expect(await drops.innerText()).toMatch(/day 5, breakfast: \d+ pouch/);
  expect((await stored()).days).toBe(5);

  await drops.getByRole('button', { name: 'Save and remove them' }).click();
  await saidOn(page, 'Trip saved.');
  expect((await stored()).days).toBe(4);
  await field(page, 'dayCount').fill('5');
  await page.getByRole('button', { name: 'Save and plan again' }).click();
  await saidOn(page, 'saved and planned again');
});

test('whoever saves second is told, keeps what they typed, and may then save', async () => {
  const [first, second] = [
    await app.open(`${trip}/party`),
    await app.open(`${trip}/party`, { expected: UNPROCESSABLE }),
  ];
  await unfold(first);
  await field(first, 'days[0].walkingH').fill('4');
  await first.getByRole('button', { name: 'Save, keep the menu' }).click();
  await saidOn(first, 'Trip saved.');

  await unfold(second);
  await field(second, 'days[0].walkingH').fill('5');
  await second.getByRole('button', { name: 'Save, keep the menu' }).click();
  const conflict = second.getByRole('region', { name: 'Changed elsewhere' });
  await conflict.waitFor();
  expect(await conflict.getByRole('row').nth(1).innerText()).toMatch(/Day 1, walking\s+5\s+4/);
  await second.getByRole('button', { name: 'Save, keep the menu' }).click();
  await saidOn(second, 'Trip saved.');
  expect(await field(second, 'days[0].walkingH').inputValue()).toBe('5');
});

test('the menu is changed by keyboard, keeps its place, and every figure follows', async () => {
  const page = await app.open(`${trip}/menu`, { widthPx: PHONE_PX });
  const meal = page.locator('#meal-2-dinner');
  await meal.getByRole('link', { name: 'Change' }).focus();
  await page.keyboard.press('Enter');
  const add = meal.getByRole('button', { name: 'Add', exact: true });
  await add.waitFor();
  await meal.getByLabel('Add to dinner of day 2').selectOption({ index: 1 });
  await add.focus();
  const { pouches } = await stored();
  const shown = async () =>
    (await meal.locator('output').allInnerTexts()).reduce((sum, text) => sum + Number(text), 0);
  const shownBefore = await shown();
  await page.keyboard.press('Enter');
  await eventually(async () => (await stored()).pouches).toBe(pouches + 1);
  await eventually(shown).toBe(shownBefore + 1);
  await eventually(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Add');
  const place = await add.boundingBox();
  expect(place?.y).toBeGreaterThan(0);
  expect(place?.y).toBeLessThan(900);

  // Emptied by hand, a meal stays empty; the focus stays with the meal.
  const remove = meal.getByRole('button', { name: /^Remove/ });
  for (let left = await remove.count(); left > 0; left -= 1) {
    await remove.first().focus();
    await page.keyboard.press('Enter');
    await eventually(() => remove.count()).toBe(left - 1);
  }
  await eventually(() => page.evaluate(() => document.activeElement?.id)).toBe('meal-2-dinner');
  expect(await meal.innerText()).toContain('No pouches planned.');
  await page.reload();
  expect(await meal.innerText()).toContain('No pouches planned.');
});

test('a lot that does not suit an eater is marked with the reason', async () => {
  const page = await app.open(`${trip}/menu?change=2-dinner`);
  const select = page.getByLabel('Add to dinner of day 2');
  const marked = select.locator('optgroup[label^="Not suitable for everyone"] option');
  expect(await marked.count()).toBeGreaterThan(0);
  for (const option of await marked.allInnerTexts()) expect(option).toMatch(/^(not for .+: |meant for )/);
});

test('a template is apart from the trips, and trips are planned from it without scripts', async () => {
  const page = await app.open(`${trip}/party`, { scripts: false });
  await unfold(page);
  await page.getByRole('button', { name: 'Duplicate' }).click();
  await saidOn(page, 'This is your copy.');
  await page.locator('[name="name"]').fill('Ridge, any year');
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();
  await unfold(page);
  await page.getByRole('button', { name: 'Make it a template' }).click();
  await saidOn(page, 'This is a template now.');
  const template = new URL(page.url()).pathname.replace(/\/party$/, '');
  await visit(page, `${template}/pouches`);
  expect(await page.getByRole('button', { name: /Set aside/ }).count()).toBe(0);

  await visit(page, '/trips');
  expect(await page.getByRole('heading', { level: 2, name: 'Ridge, any year' }).count()).toBe(0);
  const templates = page.getByRole('region', { name: 'Templates' });
  await templates.getByRole('link', { name: 'Plan a trip from it' }).click();
  expect(await page.getByLabel('Trip', { exact: true }).inputValue()).toBe(template.split('/').at(-1));
  await page.locator('form[action="?/copy"] [name="copyStart"]').fill('2028-07-03');
  await page.getByRole('button', { name: 'Plan it from this date' }).click();
  await saidOn(page, 'This is your copy.');
  await page.getByRole('heading', { level: 1, name: 'Ridge, any year' }).waitFor();
  const made = new URL(page.url()).pathname.replace(/\/party$/, '');
  expect(made).not.toBe(template);
  expect(await (await page.request.get(`${app.origin}${made}/trip.json`)).json()).toMatchObject({
    startDate: '2028-07-03',
    party: [{ name: 'Ilse' }, { name: 'Tarek' }, { name: 'Oona' }, { name: 'Pavel' }],
  });
});

test('a group of before goes on a new trip with all that is known of it', async () => {
  const page = await app.open('/trips/new');
  await page.getByLabel('Group', { exact: true }).selectOption({ index: 1 });
  await page.getByRole('button', { name: 'Plan the trip' }).click();
  await saidOn(page, 'Trip planned.');
  const made = new URL(page.url()).pathname.replace(/\/menu$/, '');
  const party = async (address: string) =>
    ((await (await page.request.get(`${app.origin}${address}/trip.json`)).json()) as { party: unknown })
      .party;
  expect(await party(made)).toEqual(await party(trip));
});

test('a change of the trip, of a meal and of the whole menu says what changed and is undone, without scripts', async () => {
  const page = await app.open(`${trip}/party`, { scripts: false });
  const file = async () => (await fetch(`${app.origin}${trip}/trip.json`)).json();
  const before = await file();
  const undo = async () => {
    const address = page.url().replace(/\?.*/, '');
    await page.getByRole('button', { name: 'Undo' }).click();
    await saidOn(page, 'The change is undone.');
    expect(page.url().replace(/\?.*/, '')).toBe(address);
    expect(await file()).toEqual(before);
  };
  await field(page, 'name').fill('Another name');
  await page.getByRole('button', { name: 'Save, keep the menu' }).click();
  await saidOn(page, 'Changed: Name.');
  expect((await file()).name).toBe('Another name');
  await undo();

  await visit(page, `${trip}/menu?change=1-dinner`);
  await page.getByRole('button', { name: 'Lock dinner of day 1' }).click();
  await saidOn(page, 'Changed: day 1, dinner.');
  await undo();

  await visit(page, `${trip}/menu`);
  await page.getByRole('button', { name: 'Plan again' }).click();
  await page.getByText('Planned again').waitFor();
  await undo();
});

test('two trips are never promised the same pouch', async () => {
  const page = await app.open(`${trip}/party`);
  await unfold(page);
  await page.getByRole('button', { name: 'Duplicate' }).click();
  await page.waitForURL((url) => !url.pathname.startsWith(trip));
  await saidOn(page, 'This is your copy.');
  const copy = new URL(page.url()).pathname.replace(/\/party$/, '');

  const original = await app.open(`${trip}/pouches`);
  await original.getByRole('button', { name: /^Set aside \d+ pouches$/ }).click();
  await saidOn(original, 'set aside for this trip');

  await visit(page, `${copy}/menu`);
  const stands = page.getByRole('region', { name: 'Plan summary' });
  expect(await stands.innerText()).toMatch(
    /needs \d+ of lot \w+ .* but only \d+ (is|are) free for this trip/,
  );
  expect(await page.locator('.pouches').first().innerText()).toMatch(/wanted/);
  await page.getByRole('button', { name: 'Plan again' }).click();
  await saidOn(page, 'Planned again');
  expect(await page.locator('main').innerText()).not.toMatch(/needs \d+ of lot/);

  await visit(page, `${copy}/party`);
  await page.getByText('Duplicate, template').click();
  await page.getByRole('button', { name: /^Delete "/ }).click();
  await saidOn(page, 'The trip is deleted.');
  expect(await page.getByRole('link', { name: /\(copy\)/ }).count()).toBe(0);
});

test('a changed menu no longer matches what is set aside, and can be set aside anew', async () => {
  const page = await app.open(`${trip}/menu?change=2-dinner`);
  const select = page.getByLabel('Add to dinner of day 2');
  const code = (await select.locator('option').nth(1).getAttribute('value')) ?? '';
  await select.selectOption(code);
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await page.getByText('set aside, but the menu has changed').click();

  await page.getByText('no longer matches').waitFor();
  expect(await page.getByRole('row').filter({ hasText: code }).innerText()).toContain('1 lacking');
  await page.getByRole('button', { name: 'Update what is set aside' }).click();
  await saidOn(page, 'set aside for this trip');
  expect(await page.getByText('exactly what the menu needs').count()).toBe(1);
});
