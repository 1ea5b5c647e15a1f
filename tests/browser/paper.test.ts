/* A trip on paper and in files: card, packing lists and shopping list whole on every paper, a card that needs no app, a trip that is handed on. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { allergensText } from '../../src/lib/presentation/card-words.ts';
import type { Trip } from '../../src/lib/planning/model/trip.ts';
import { waitText } from '../../src/lib/presentation/wait-words.ts';
import type { WordedPlan } from '../../src/lib/presentation/worded-plan.ts';
import { sharesText } from '../../src/lib/presentation/portion-words.ts';
import { show } from '../../src/lib/presentation/show.ts';
import { cardDishes, type CardDish } from '../../src/lib/trip-views/card.ts';
import { barriers, newDemoTrip, PHONE_PX, startApp, tooWide, visit } from './harness.ts';
import { readPdf, type PdfPage } from './pdf-text.ts';

const app = startApp();

const PT_PER_MM = 72 / 25.4;
const PX_PER_MM = 96 / 25.4;
/** A5 and A4: ISO 216. Letter and half letter: 8.5 × 11 in and half of it (ANSI/ASME Y14.1, not rechecked). `blankMm`: left blank at each edge. */
const PAPERS = [
  { paper: 'a5', widthMm: 148, heightMm: 210, blankMm: 9, large: false },
  { paper: 'a4', widthMm: 210, heightMm: 297, blankMm: 12, large: true },
  { paper: 'half-letter', widthMm: 139.7, heightMm: 215.9, blankMm: 9, large: false },
  { paper: 'letter', widthMm: 215.9, heightMm: 279.4, blankMm: 12, large: true },
] as const;
type Paper = (typeof PAPERS)[number];

const LONG_NAME = `Maximiliane-${'Wanderlust'.repeat(6)}`;
const ELSEWHERE = 'LOT-OF-ANOTHER-SHELF';
const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-paper-'));
afterAll(() => rmSync(folder, { recursive: true }));

let demo = '';
let trip = '';
let file: Trip;
let plan: WordedPlan;

const jsonOf = async (address: string, init?: RequestInit) =>
  (await fetch(app.origin + address, init)).json();

/** Opens a trip from a file as a person does. */
async function openFile(page: Page, content: string): Promise<void> {
  const at = path.join(folder, 'trip.json');
  writeFileSync(at, content);
  await visit(page, '/trips/new');
  await page.getByLabel('Trip file').setInputFiles(at);
  await page.getByRole('button', { name: 'Open the trip' }).click();
}

beforeAll(async () => {
  demo = (await newDemoTrip(app)).replace(/\/\w+$/, '');
  const planned: Trip = await jsonOf(`${demo}/trip.json`);
  // Hungrier than the menu, so that something is missing, and with a name as long as nobody's.
  file = {
    ...planned,
    name: 'The demo, hungrier',
    party: planned.party.map((eater, index) => ({
      ...eater,
      ...(index === 0 && { name: LONG_NAME }),
      energyKcal: (eater.energyKcal ?? 0) + 1200,
    })),
  };
  const page = await app.open('/trips/new');
  await openFile(page, JSON.stringify(file));
  await page.waitForURL(/\/trips\/[^/]+\/menu$/);
  trip = new URL(page.url()).pathname.replace(/\/menu$/, '');
  plan = await jsonOf('/api/plan', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ trip: file }),
  });
});

/** Without blanks, as lines end where they will. */
const plain = (text: string): string => text.replaceAll(/\s+/g, '');

/** Fails unless the parts stand in the text in this order. */
function expectInOrder(text: string, parts: readonly string[]): void {
  const whole = plain(text);
  let from = 0;
  for (const part of parts) {
    const at = whole.indexOf(plain(part), from);
    expect(at, `"${part}" is not on the paper after what comes before it`).toBeGreaterThanOrEqual(0);
    from = at + plain(part).length;
  }
}

/** Opens a page in print at the width that the paper leaves it, and names what is cut off or sticks out. */
async function misfits(page: Page, { widthMm, blankMm }: Paper): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: Math.floor((widthMm - 2 * blankMm) * PX_PER_MM), height: 900 });
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const all = [...document.querySelectorAll<HTMLElement>('main *')].filter(
      (element) => element.getClientRects().length > 0 && !element.closest('.visually-hidden'),
    );
    return all
      .filter((element) => {
        const { left, right } = element.getBoundingClientRect();
        const isCut =
          getComputedStyle(element).overflow !== 'visible' &&
          (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1);
        return left < -0.5 || right > width + 0.5 || isCut;
      })
      .map((element) => element.outerHTML.slice(0, 200));
  });
}

/** Prints a page, and checks that every sheet has the size of the paper and something on it. */
async function print(address: string, paper: Paper): Promise<PdfPage[]> {
  const page = await app.open(`${address}?paper=${paper.paper}`);
  const pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
  for (const { widthPt, heightPt, text } of pages) {
    // Chromium rounds to whole pixels of 0.75 pt.
    expect(Math.abs(widthPt - paper.widthMm * PT_PER_MM)).toBeLessThan(0.76);
    expect(Math.abs(heightPt - paper.heightMm * PT_PER_MM)).toBeLessThan(0.76);
    expect(text.trim()).not.toBe('');
  }
  expect(await misfits(page, paper)).toEqual([]);
  const text = pages.map((sheet) => sheet.text).join('\n');
  for (const control of ['Print the', 'Settings', 'Half letter', 'RIDGELARDER_READERS'])
    expect(text).not.toContain(control);
  return pages;
}

const textOf = (pages: readonly PdfPage[]) => pages.map(({ text }) => text).join('\n');
const energy = (kcal: number) => show(kcal, 'energy', 'metric');

/** What the card says of a dish, in its order. */
function cardLines(dish: CardDish): string[] {
  return [
    ...dish.lines.flatMap((lot) => [
      lot.pouches > 0 ? `${lot.pouches} × ${lot.code} ${lot.recipe}` : `${lot.code} ${lot.recipe}`,
      ...(lot.steepMin > 0 ? [waitText(lot).slice(1)] : []),
    ]),
    ...sharesText(dish.shares),
    ...dish.lines.flatMap((lot) => [allergensText(lot), ...lot.carriedBy.map(({ eater }) => eater)]),
  ];
}

describe.each(PAPERS)('on $paper', (paper) => {
  test('the trail card holds the whole plan, on sheets of that size', async () => {
    const pages = await print(`${trip}/card`, paper);
    expectInOrder(textOf(pages), [
      plan.card.title,
      'take the oxygen absorber out',
      ...plan.card.days.flatMap(({ day, meals }) => [
        `Day ${day} ·`,
        ...meals.flatMap((meal) => [meal.meal.slice(1), ...cardDishes(meal).flatMap(cardLines)]),
      ]),
      ...plan.card.cautions,
    ]);
    const lots = plan.card.days.flatMap(({ meals }) => meals.flatMap(({ pouches }) => pouches));
    expect(lots.length).toBeGreaterThan(20);
    // A small side holds most of a day, a large one two columns.
    expect(pages.length).toBeLessThanOrEqual((paper.large ? 1 : 2) * plan.card.days.length + 1);
  });

  test('each person has packing sheets of their own, with all that they carry', async () => {
    const pages = await print(`${trip}/packing`, paper);
    const { packs, loads } = plan.carry;
    const owners = pages.map(({ text }) =>
      packs.filter(({ eater }) => plain(text).includes(plain(`In the pack of ${eater}`))),
    );
    expect(owners.every((found) => found.length === 1)).toBe(true);
    for (const pack of packs) {
      const own = pages.filter((_, index) => owners[index]?.[0] === pack);
      expect(own.length).toBeGreaterThanOrEqual(1);
      // A5 and half letter may take the back of the sheet as well.
      expect(own.length).toBeLessThanOrEqual(paper.large ? 1 : 2);
      const dayOne = loads.find(({ eater, day }) => eater === pack.eater && day === 1) ?? expect.fail();
      expectInOrder(textOf(own), [
        `${pack.eater} packs`,
        ...plan.card.days.flatMap(({ day }) => {
          const bag = pack.pouches.filter((item) => item.day === day);
          const lines = bag.map(
            ({ pouches, code, recipe, meal }) => `${pouches} × ${code} ${recipe}, ${meal}`,
          );
          return bag.length > 0 ? [`Bag for day ${day}`, ...lines] : [];
        }),
        ...pack.fuelContainers.map(({ count, label }) => `${count} × ${label}`),
        'Bottles and bags for 3.0 L of water',
        show(dayOne.totalG, 'pack', 'metric'),
      ]);
    }
    expect(packs.flatMap(({ fuelContainers }) => fuelContainers).length).toBeGreaterThan(0);
  });

  test('the shopping list holds what is missing, the groceries of the drying plan and fuel', async () => {
    const missing = await app.open(`${trip}/missing`);
    const groceries = await missing
      .getByRole('region', { name: 'Groceries, food by food' })
      .locator('tbody tr')
      .evaluateAll((rows) => rows.map((row) => row.textContent ?? ''));
    expect(groceries.length).toBeGreaterThan(3);
    const pages = await print(`${trip}/shopping`, paper);
    const { shopping } = plan.shortfall;
    expect(shopping.length).toBeGreaterThan(1);
    expectInOrder(textOf(pages), [
      'To buy for The demo, hungrier',
      ...groceries,
      ...shopping.flatMap(({ meal, missingKcal }) => [`${meal.slice(1)} for`, energy(missingKcal)]),
      ...plan.fuel.containers.map(({ count, label }) => `${count} × ${label}, full`),
    ]);
    expect(pages.length).toBeLessThanOrEqual(paper.large ? 2 : 4);
  });
});

test('what is not dried is to be bought, food by food', async () => {
  const soon = new Date(Date.now() + 24 * 3600 * 1000).toISOString().slice(0, 10);
  const page = await app.open('/trips/new');
  await openFile(page, JSON.stringify({ ...file, name: 'Tomorrow', startDate: soon, menu: [] }));
  await page.waitForURL(/\/trips\/[^/]+\/menu$/);
  const address = new URL(page.url()).pathname.replace(/\/menu$/, '');
  const ofTomorrow: WordedPlan = await jsonOf('/api/plan', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ trip: await jsonOf(`${address}/trip.json`) }),
  });
  const bought = ofTomorrow.shortfall.shopping.flatMap(({ suggestions }) =>
    suggestions.filter(({ way }) => way === 'buy').map(({ what }) => `${what}:`),
  );
  expect(bought.length).toBeGreaterThan(2);
  for (const paper of PAPERS) expectInOrder(textOf(await print(`${address}/shopping`, paper)), bought);
});

test('the card as a file needs nothing but itself, in the light, in the dark and on paper', async () => {
  const html = await (await fetch(`${app.origin}${trip}/card.html?paper=a4`)).text();
  expect(html).not.toMatch(/<script|<link|<img|<iframe|\bsrc=|\bhref=|https?:|url\(|@import/i);
  const at = path.join(folder, 'card.html');
  writeFileSync(at, html);

  const page = await app.open('/', { widthPx: PHONE_PX });
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(pathToFileURL(at).href);
  expect(asked).toEqual([pathToFileURL(at).href]);
  const grounds = new Set<string>();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await tooWide(page)).toBe(0);
    expect(await barriers(page)).toEqual([]);
    grounds.add(await page.evaluate(() => getComputedStyle(document.body).backgroundColor));
  }
  expect(grounds.size).toBe(2);

  const card = await app.open(`${trip}/card`, { widthPx: PHONE_PX });
  const text = await page.locator('article').innerText();
  expect(plain(text)).toBe(plain(await card.locator('article').innerText()));
  const [sheet] = await readPdf(await page.pdf({ preferCSSPageSize: true }));
  expect(Math.abs((sheet?.widthPt ?? 0) - 210 * PT_PER_MM)).toBeLessThan(0.76);
});

test('the card says how phones can be let in', async () => {
  const page = await app.open(`${trip}/card`);
  const share = page.getByRole('region', { name: 'For the group' });
  expect(await share.innerText()).toMatch(/RIDGELARDER_READERS set to this computer's network address/);
  expect(await share.getByRole('img').count()).toBe(0);
});

describe('a file of a trip', () => {
  const tripsListed = async () =>
    (await (await fetch(`${app.origin}/trips`)).text()).match(/href="\/trips\/[^"]+\/menu"/g);

  test('is opened with all that was in it', async () => {
    expect(await jsonOf(`${trip}/trip.json`)).toEqual(file);
  });

  test('keeps a menu of lots that this shelf lacks, and names them; also without scripts', async () => {
    const menu = file.menu.map((meal, index) =>
      index === 0 ? { ...meal, locked: true, opened: [{ code: ELSEWHERE, pouches: 2 }] } : meal,
    );
    const page = await app.open('/trips/new', { scripts: false });
    await openFile(page, JSON.stringify({ ...file, name: `${file.name}, elsewhere`, menu }));
    const text = await page.locator('main').innerText();
    expect(text).toContain('Trip opened from the file, with everything in it');
    expect(text).toMatch(new RegExp(`1 lot of this menu cannot be found on the shelf: ${ELSEWHERE}`));
    const address = new URL(page.url()).pathname.replace(/\/menu$/, '');
    expect((await jsonOf(`${address}/trip.json`)).menu).toEqual(menu);
  });

  test.each([
    [
      'with fields that are wrong',
      JSON.stringify({
        name: 'x',
        startDate: '2027-07-05',
        dayCount: 400,
        party: [{ name: 'A', energyKcal: 1 }],
      }),
      ['dayCount must be at most 90 days', 'party[0].energyKcal must be at least 500 kcal'],
    ],
    ['that is no JSON', '{"name": ', ['this is no valid JSON', 'line 1']],
    ['that is too large', `{"x": "${'y'.repeat(1_000_000)}"}`, ['larger than 1 MB']],
  ])('%s is refused with the reason', async (_, content, reasons) => {
    const trips = await tripsListed();
    const page = await app.open('/trips/new', { expected: /422|413/ });
    await openFile(page, content);
    const problems = page.getByRole('region', { name: 'Not opened' });
    await problems.waitFor();
    for (const reason of reasons) expect(await problems.innerText()).toContain(reason);
    expect(await barriers(page)).toEqual([]);
    expect(await tripsListed()).toEqual(trips);
  });
});
