/* The main job in one go, each test building on the one before: import a shelf, enter a trip, read the loads, change the menu, print. */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Readable } from 'node:stream';
import Papa from 'papaparse';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import type { WordedPlan } from '../../src/lib/presentation/worded-plan.ts';
import type { TripInput } from '../../src/lib/planning/model/trip.ts';
import { fieldValue, show, shownNumber } from '../../src/lib/presentation/show.ts';
import { planCommand } from '../../src/tooling/plan-command.ts';
import { temporaryFolder } from '../../src/lib/server/test-data.ts';
import { projectFile, startApp, unfold, visit } from './harness.ts';
import { readPdf } from './pdf-text.ts';

const app = startApp();
const trip: TripInput = JSON.parse(readFileSync(projectFile('demo-data/trip.json'), 'utf8'));
/** What the headless command makes of the trip, with the menu that was found for it. */
let headless: WordedPlan;
let tripAddress = '';

async function plan(args: readonly string[], stdin = ''): Promise<WordedPlan> {
  const { output, errors } = await planCommand(args, Readable.from([Buffer.from(stdin)]));
  expect(errors).toBe('');
  return JSON.parse(output);
}

/** Opens a page of the trip. */
const openTrip = (slug: string): Promise<Page> => app.open(`${tripAddress}/${slug}`);

/** Waits until a page says that something is done. */
const saidOn = (page: Page, text: string): Promise<void> =>
  page.getByRole('status').filter({ hasText: text }).waitFor();

/** The cells of the row of a table that begins with a text. */
async function rowOf(page: Page, table: string, first: string): Promise<string[]> {
  const row = page
    .getByRole('table', { name: table })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: first, exact: true }) });
  return (await row.locator('th, td').allInnerTexts()).map((text) => text.trim());
}

/** What a pack weighs when leaving camp, as the page of the loads shows it: kg by day. */
async function packWeights(eater: string): Promise<string[]> {
  const page = await openTrip(`loads?who=${encodeURIComponent(eater)}`);
  const shown: string[] = [];
  for (const { day } of headless.demand)
    shown.push((await rowOf(page, `Pack of ${eater}`, `${day}`)).at(-2) ?? '');
  return shown;
}

/** What the headless command makes of the trip and the shelf as they are stored now. */
async function storedPlan(): Promise<WordedPlan> {
  const textAt = async (address: string) => (await fetch(app.origin + address)).text();
  const stock = path.join(await temporaryFolder(), 'shelf.csv');
  writeFileSync(stock, await textAt('/shelf/export.csv'));
  return plan(['--trip', '-', '--stock', stock], await textAt(`${tripAddress}/trip.json`));
}

const eatenIn = (meal: string): string | undefined => /([\d,]+ kcal) eaten/.exec(meal)?.[1];

const planned = ({ carry }: WordedPlan, eater: string): string[] =>
  carry.loads
    .filter((load) => load.eater === eater)
    .map(({ totalG }) => shownNumber(totalG, 'pack', 'metric'));

test('imports a CSV with a broken row and a doubtful one through the mapping and the preview', async () => {
  // As another program may write it: semicolons between the cells, and a heading that no guess can place.
  const { data } = Papa.parse<string[]>(
    readFileSync(projectFile('demo-data/shelf-with-errors.csv'), 'utf8'),
    {
      skipEmptyLines: true,
    },
  );
  const [header = [], ...records] = data;
  const headings = header.map((heading) => ({ recipe: 'Dish', 'dry weight g': 'X1' })[heading] ?? heading);
  const csv = Papa.unparse([headings, ...records], { delimiter: ';' });
  const page = await app.open('/shelf/import');
  await page
    .getByLabel('CSV file')
    .setInputFiles({ name: 'shelf.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
  await page.getByRole('button', { name: 'Look at the file' }).click();

  const unknown = page.getByRole('group', { name: 'X1' });
  await unknown.getByLabel('Contains').selectOption({ label: 'Dry weight' });
  expect(await page.getByRole('group', { name: 'Dish' }).getByLabel('Contains').inputValue()).toBe('recipe');
  await page.getByRole('button', { name: 'Preview import' }).click();
  // Such a heading says no unit either: it is asked once for the whole column.
  const answer = (question: RegExp, label: string) => page.getByLabel(question).selectOption({ label });
  await answer(/In which unit is dry weight/, 'g');
  await answer(/Is dry weight for one serving/, 'one serving');
  await page.getByRole('button', { name: 'Apply answers' }).click();

  const rows = page.getByRole('region', { name: 'Rows of the file' });
  await page.getByText('27 rows:').filter({ hasText: '26 new' }).waitFor();
  expect(await page.getByText('27 rows:').innerText()).toMatch(
    /26 new, 0 changed, 0 unchanged, 1 refused; 1 with a warning/,
  );
  expect(await rows.innerText()).toMatch(/D07[^]*-130[^]*must not be negative/);
  // What else may be in it stays open, so nobody who avoids anything is served it.
  expect(await rows.innerText()).toMatch(
    /S06[^]*contains soy, others not declared[^]*Warning: .*"krill" is not a known allergen/,
  );

  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: /^download (it|them)$/ }).click(),
  ]);
  const refused = readFileSync(await download.path(), 'utf8');
  expect(refused.trimEnd().split('\n')).toHaveLength(2);
  expect(refused).toMatch(/D07.*negative/);

  await page.getByRole('button', { name: 'Import 26 pouch lots' }).click();
  await page.waitForURL('**/shelf');
  await saidOn(page, 'Import finished');
  expect(await page.getByRole('link', { name: 'D01' }).count()).toBe(1);
  expect(await page.getByRole('link', { name: 'D07' }).count()).toBe(0);
});

test('importing the same shelf a second time changes nothing', async () => {
  const page = await app.open('/shelf/import');
  await page.getByLabel('CSV file').setInputFiles(projectFile('demo-data/shelf.csv'));
  await page.getByRole('button', { name: 'Look at the file' }).click();
  await page.getByText('25 rows').waitFor();
  expect(await page.getByText('25 rows').innerText()).toMatch(/0 new, 0 changed, 25 unchanged, 0 refused/);
});

test('plans a trip that is entered by hand', async () => {
  const page = await app.open('/trips/new');
  const fill = (name: string, value: string | number | undefined) =>
    page.locator(`[name="${name}"]`).fill(String(value ?? ''));
  await fill('partySize', trip.party.length);
  await fill('dayCount', trip.dayCount);
  await fill('startDate', trip.startDate);
  await fill('name', trip.name);
  await page.getByRole('button', { name: 'Plan the trip' }).click();
  await page.waitForURL(/\/trips\/[^/]+\/\w+$/);
  tripAddress = new URL(page.url()).pathname.replace(/\/\w+$/, '');

  await visit(page, `${tripAddress}/party`);
  await unfold(page);
  for (const [index, eater] of trip.party.entries()) {
    const at = `party[${index}].`;
    await fill(`${at}name`, eater.name);
    await fill(`${at}energyKcal`, eater.energyKcal);
    await fill(`${at}maxLoadG`, fieldValue(eater.maxLoadG ?? 0, 'pack', 'metric'));
    await fill(`${at}baseLoadG`, fieldValue(eater.baseLoadG ?? 0, 'pack', 'metric'));
    const group = page.getByRole('group', { name: `Person ${index + 1}` });
    for (const code of eater.allergens ?? [])
      await group.locator(`[name="${at}allergens"][value="${code}"]`).check();
    for (const code of eater.diets ?? []) await group.locator(`[name="${at}diets"][value="${code}"]`).check();
  }
  for (const [index, { campWater, ...figures }] of (trip.days ?? []).entries()) {
    for (const [name, value] of Object.entries(figures)) await fill(`days[${index}].${name}`, value);
    if (campWater) await page.locator(`[name="days[${index}].campWater"]`).selectOption(campWater);
  }
  await page.locator('[name="firstMeal"]').selectOption(trip.firstMeal ?? '');
  await page.locator('[name="lastMeal"]').selectOption(trip.lastMeal ?? '');
  await page.locator('[name="stove.fuel"]').selectOption(trip.stove?.fuel ?? '');
  await page.getByRole('button', { name: 'Save and plan again' }).click();
  await saidOn(page, 'Trip saved and planned again.');
  headless = await storedPlan();
  // Planned without a search, from the same files, the party would go hungrier.
  const byExpiry = await plan([]);
  expect(headless.totals.targetKcal).toBe(byExpiry.totals.targetKcal);
  expect(headless.totals.missingKcal).toBeLessThan(byExpiry.totals.missingKcal);
});

test("a person's pack weighs on day 3 what the headless plan says", async () => {
  const shown = await packWeights('Tarek');
  expect(shown[2]).toBe(planned(headless, 'Tarek')[2]);
  expect(shown).toEqual(planned(headless, 'Tarek'));
  expect(await packWeights('Oona')).toEqual(planned(headless, 'Oona'));
});

test('the pages show fuel, water and what is missing as the headless plan has them', async () => {
  const water = await openTrip('water');
  const text = await water.locator('main').innerText();
  for (const { count, label } of headless.fuel.containers)
    expect(text).toMatch(new RegExp(`${count} × ${label}`));
  expect(text).toContain(show(headless.fuel.withReserveG, 'food', 'metric'));

  const missing = await (await openTrip('missing')).locator('main').innerText();
  const { missingKcal } = headless.shortfall;
  expect(missing).toContain(missingKcal > 0 ? show(missingKcal, 'energy', 'metric') : 'Enough: on every day');
  for (const { suggestions } of headless.shortfall.shopping)
    for (const { what } of suggestions) expect(missing).toContain(what);
});

test('swapping a meal changes every figure, as the headless plan of the changed trip says', async () => {
  const page = await openTrip('menu');
  const section = page.locator('#meal-3-breakfast');
  const before = eatenIn(await section.innerText());
  await section.getByRole('link', { name: 'Change breakfast of day 3' }).click();
  const swap = section.getByLabel(/^Swap .* for$/).first();
  await swap.waitFor(); // reading the options does not wait for them
  const other = (
    await swap
      .locator('option')
      .evaluateAll((all) => all.map((option) => (option as HTMLOptionElement).value))
  ).find(Boolean);
  expect(other).toBeDefined();
  await swap.selectOption(other ?? '');
  await section.getByRole('button', { name: /^Swap/ }).first().click();
  await section.getByRole('link', { name: other ?? '' }).waitFor();
  await section.getByText('by hand', { exact: true }).waitFor();
  const after = eatenIn(await section.innerText());
  expect(after).not.toBe(before);
  await section.getByRole('button', { name: 'Lock breakfast of day 3' }).click();
  await section.getByText('locked', { exact: true }).waitFor();

  const changed = await storedPlan();
  const breakfast = changed.menu.meals.find(({ day, meal }) => day === 3 && meal === 'breakfast');
  expect(after).toBe(show(breakfast?.eatenKcal ?? 0, 'energy', 'metric'));
  expect(changed.carry.loads).not.toEqual(headless.carry.loads);
  for (const { name } of trip.party) expect(await packWeights(name)).toEqual(planned(changed, name));
});

test('planning again keeps what is locked', async () => {
  const before = await storedPlan();
  const page = await openTrip('menu');
  await page.getByRole('button', { name: 'Plan again' }).click();
  await saidOn(page, 'Planned again. Locked meals did not change.');
  const locked = ({ menu }: WordedPlan) =>
    menu.meals.filter((meal) => meal.locked).map(({ opened }) => opened);
  expect(locked(before)).toHaveLength(1);
  expect(locked(await storedPlan())).toEqual(locked(before));
});

test.each([
  { paper: 'a5', widthPt: (148 / 25.4) * 72, heightPt: (210 / 25.4) * 72 },
  { paper: 'half-letter', widthPt: 5.5 * 72, heightPt: 8.5 * 72 },
])('prints the trail card on $paper', async ({ paper, widthPt, heightPt }) => {
  const { card } = await storedPlan();
  const page = await openTrip(`card?paper=${paper}`);
  const pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
  for (const sheet of pages) {
    expect(Math.abs(sheet.widthPt - widthPt)).toBeLessThan(1);
    expect(Math.abs(sheet.heightPt - heightPt)).toBeLessThan(1);
    expect(sheet.text.trim()).not.toBe('');
  }
  // A side for each day at most, none torn over two, and one for what holds all trip.
  expect(pages.length).toBeLessThanOrEqual(trip.dayCount + 1);
  for (const { day } of card.days)
    expect(pages.filter((sheet) => sheet.text.includes(`Day ${day} ·`))).toHaveLength(1);
  for (const sheet of pages.slice(1))
    expect(sheet.text.trim()).toMatch(/^(\d+ min\s+)*(Day \d+ ·|Take care)/);
  const text = pages
    .map((sheet) => sheet.text)
    .join('\n')
    .replaceAll(/\s+/g, ' ');
  expect(text).toContain(trip.name);
  for (const caution of card.cautions) expect(text).toContain(caution);
  for (const { day, meals } of card.days) {
    expect(text).toContain(`Day ${day}`);
    for (const lot of meals.flatMap((meal) => meal.pouches)) {
      expect(text).toContain(
        lot.pouches > 0
          ? `${lot.pouches} × ${lot.code} ${lot.recipe}`
          : `${lot.code} ${lot.recipe}, open since day ${lot.openSinceDay}`,
      );
      if (lot.steepMin > 0) expect(text).toContain(`Wait ${lot.stirAfterMin ?? lot.steepMin} min`);
      if (lot.waterMl > 0) expect(text).toContain(`${lot.waterKind}`);
    }
  }
  expect(text).toMatch(/oxygen absorber/);
  for (const control of ['Print the card', 'Settings', 'Shelf']) expect(text).not.toContain(control);
});

test('sets the pouches aside, releases them, packs them and takes back what was not eaten', async () => {
  const page = await openTrip('pouches');
  const press = async (name: string | RegExp, said: string) => {
    await page.getByRole('button', { name }).click();
    await saidOn(page, said);
  };
  await press(/^Set aside \d+ pouches$/, 'The pouches of the menu are set aside for this trip.');
  await press('Release all', 'The pouches are back on the shelf.');
  await press(/^Set aside \d+ pouches$/, 'The pouches of the menu are set aside for this trip.');

  const other = await app.open('/shelf/D02');
  expect(await other.locator('main').innerText()).toMatch(/set aside/i);

  await press('Pack', 'The pouches are packed.');
  await page
    .getByRole('link', { name: /^(Afterwards|After the trip)$/ })
    .last()
    .click();
  const back = page.getByLabel(/^Pouches of D02 brought home/);
  await back.fill('99');
  await page.getByRole('button', { name: 'Finish the trip' }).click();
  await page.getByText('Not finished.').waitFor();
  expect(await back.inputValue()).toBe('99');
  await back.fill('1');
  await press('Finish the trip', 'Trip finished');
  const history = await app.open('/shelf/D02');
  const text = await history.locator('main').innerText();
  for (const kind of ['set aside', 'released', 'packed', 'eaten', 'brought back'])
    expect(text.toLowerCase()).toContain(kind);
});

test('shows everything in US units on request', async () => {
  const settings = await app.open('/settings');
  await settings.getByRole('radio', { name: /US customary/ }).check();
  await settings.getByRole('button', { name: 'Save Units and money' }).click();
  await saidOn(settings, 'The settings are saved.');

  const loads = await openTrip('loads');
  const text = await loads.locator('main').innerText();
  expect(text).toMatch(/\d lb\b/);
  expect(text).not.toMatch(/\d kg\b/);
  const card = await (await openTrip('card')).locator('main').innerText();
  expect(card).toMatch(/\d °F/);
  expect(card).toMatch(/cup|fl oz/);
  expect(card).not.toMatch(/\d (ml|°C)\b/);

  await settings.getByRole('radio', { name: /metric/ }).check();
  await settings.getByRole('button', { name: 'Save Units and money' }).click();
  await saidOn(settings, 'The settings are saved.');
});
