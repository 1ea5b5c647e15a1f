/* Labels for sealed pouches: on every paper whole, in their places and readable, on the screen and in print. */
import { beforeAll, expect, test } from 'vitest';
import { fitLabel } from '../../src/lib/label-sheets/fit-label.ts';
import { labelLines } from '../../src/lib/label-sheets/label-lines.ts';
import { PAPERS, perSheet, placeLabels, type Paper } from '../../src/lib/label-sheets/papers.ts';
import { makeLabel } from '../../src/lib/presentation/make-label.ts';
import type { PouchLot } from '../../src/lib/planning/model/pouch-lot.ts';
import { MM_PER_INCH } from '../../src/lib/planning/units/print.ts';
import { exampleLot, longestLot } from '../support/examples.ts';
import { newDemoTrip, PHONE_PX, startApp } from './harness.ts';
import { readPdf } from './pdf-text.ts';
import { readQr } from './read-qr.ts';

const app = startApp();

const PHONE_ADDRESS = 'http://192.168.1.20:4810';
const { allergens: _, ...unstated } = exampleLot({ code: 'BAR 1', waterKind: 'none', waterMl: 0 });
const LOTS: readonly PouchLot[] = [longestLot, exampleLot({ code: 'STEW 2', allergens: ['milk'] }), unstated];
const CODES = LOTS.map(({ code }) => `code=${encodeURIComponent(code)}`).join('&');
const MM_PER_PX = MM_PER_INCH / 96;
const LEAST_TYPE_PX = (5.5 / 72) * 96;

beforeAll(async () => {
  await newDemoTrip(app);
  for (const lot of LOTS) await addLot(lot);
});

/** Puts a lot on the shelf as the form does. */
async function addLot({ allergens, ...lot }: PouchLot): Promise<void> {
  const body = new URLSearchParams({ allergensStated: allergens ? 'yes' : 'no' });
  for (const [field, value] of Object.entries({ ...lot, allergens: allergens ?? [] }))
    for (const each of [value].flat()) body.append(field, String(each));
  const response = await fetch(`${app.origin}/shelf/new/details`, {
    method: 'POST',
    headers: { origin: app.origin, accept: 'text/html' },
    body,
    redirect: 'manual',
  });
  expect(response.status, await response.text()).toBe(303);
}

/** The lines that a label is set in, without its name, which may be cut. */
const linesOn = (paper: Paper, lot: PouchLot): string[] =>
  (fitLabel(labelLines(makeLabel(lot, 'metric'), paper.sizeClass), paper)?.lines ?? [])
    .filter(({ kind }) => kind !== 'name')
    .map(({ text }) => plain(text));

/** Without blanks, as rows end where they will, after a hyphen as well. */
const plain = (text: string): string => text.replaceAll(/\s+/g, '');
const occurrences = (text: string, part: string): number => text.split(part).length - 1;

test.each(PAPERS)('$name: labels whole and in their places, on the screen and in print', async (paper) => {
  const places = perSheet(paper);
  const from = Math.min(2, places);
  const sheets = placeLabels(paper, LOTS.length * places, from);
  const page = await app.open(
    `/shelf/labels?${CODES}&paper=${paper.id}&from=${from}&copies=${places}&address=${PHONE_ADDRESS}`,
  );

  const onScreen = await page.evaluate(() => {
    const box = (element: Element) => element.getBoundingClientRect();
    return [...document.querySelectorAll('.sheet')].map((sheet) =>
      [...sheet.querySelectorAll('.label')].map((label) => {
        const room = label.querySelector<HTMLElement>('.room')!;
        const [outer, inner, end] = [box(label), box(room), box(room.lastElementChild!)];
        return {
          xPx: outer.left - box(sheet).left,
          yPx: outer.top - box(sheet).top,
          isCut: room.scrollHeight > room.clientHeight || room.scrollWidth > room.clientWidth,
          restPx: Math.min(inner.bottom - end.bottom, outer.bottom - inner.bottom),
          typePx: Math.min(
            ...[...room.querySelectorAll('p')].map((p) => Number.parseFloat(getComputedStyle(p).fontSize)),
          ),
          asReckoned: getComputedStyle(room).getPropertyValue('--type') === `${room.dataset['typePt']}pt`,
        };
      }),
    );
  });
  expect(onScreen.map((labels) => labels.length)).toEqual(sheets.map((labels) => labels.length));
  for (const [sheet, labels] of onScreen.entries())
    for (const [place, label] of labels.entries()) {
      const wanted = sheets[sheet]?.[place] ?? expect.fail();
      expect(Math.abs(label.xPx * MM_PER_PX - wanted.xMm)).toBeLessThan(0.1);
      expect(Math.abs(label.yPx * MM_PER_PX - wanted.yMm)).toBeLessThan(0.1);
      expect(label).toMatchObject({ isCut: false, asReckoned: true });
      expect(label.restPx).toBeGreaterThanOrEqual(0);
      expect(label.typePx).toBeGreaterThanOrEqual(LEAST_TYPE_PX - 0.01);
    }

  for (const [index, { code }] of LOTS.entries())
    expect(await readQr(page.locator('svg.qr').nth(index * places))).toBe(
      `${PHONE_ADDRESS}/shelf/${encodeURIComponent(code)}`,
    );

  const pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
  expect(pages).toHaveLength(sheets.length);
  for (const { widthPt, heightPt } of pages) {
    expect(Math.abs(widthPt - (paper.pageWidthMm / MM_PER_INCH) * 72)).toBeLessThan(1);
    expect(Math.abs(heightPt - (paper.pageHeightMm / MM_PER_INCH) * 72)).toBeLessThan(1);
  }
  const printed = plain(pages.map(({ text }) => text).join('\n'));
  const lines = LOTS.map((lot) => linesOn(paper, lot));
  const onEach = lines.map((ofLot) => ofLot.join('')).join('');
  for (const line of lines.flat())
    expect(occurrences(printed, line), line).toBe(places * occurrences(onEach, line));
  for (const ofLot of lines) expect(ofLot.length).toBeGreaterThanOrEqual(4);
  for (const control of ['Print the labels', 'Address in the QR code', 'Settings'])
    expect(printed).not.toContain(plain(control));
});

test('a lot leads to its labels: one for each pouch at home', async () => {
  const page = await app.open('/shelf/D02');
  const atHome = Number(/(\d+) pouches? \(/.exec(await page.locator('main').innerText())?.[1]);
  await page.getByRole('link', { name: 'Labels' }).click();
  await page.getByRole('heading', { name: 'Labels', level: 1 }).waitFor();
  expect(await page.locator('.label').count()).toBe(atHome);
  expect(await page.getByRole('img', { name: 'QR code of D02' }).count()).toBe(atHome);
  expect(await page.locator('main').innerText()).toContain(`${app.origin} only works on this computer`);
  expect(await readQr(page.locator('svg.qr').first())).toBe(`${app.origin}/shelf/D02`);
});

test('lots, paper and copies are chosen without scripts, from the shelf', async () => {
  const page = await app.open('/shelf', { scripts: false, widthPx: PHONE_PX });
  await page.getByRole('link', { name: 'Labels' }).click();
  await page.getByRole('checkbox', { name: /^D02 / }).check();
  await page.getByRole('checkbox', { name: /^STEW 2 / }).check();
  await page.getByLabel('Paper').selectOption({ label: 'A4, 3 × 8 of 70 × 37 mm' });
  await page.getByLabel('First free place on the sheet').fill('23');
  await page.getByLabel('Labels of each lot').fill('3');
  await page.getByLabel('Address in the QR code').fill('192.168.1.20:4810');
  await page.getByRole('button', { name: 'Show the labels' }).click();
  await page.getByText('6 labels on 2 sheets: A4, 3 × 8 of 70 × 37 mm.').waitFor();
  expect(await page.getByRole('img', { name: 'QR code of STEW 2' }).count()).toBe(3);
  expect(await page.locator('main').innerText()).not.toContain('only works on this computer');
});

test.each([
  [`code=NOSUCH&code=D02`, 'there is no lot "NOSUCH" on the shelf'],
  [`code=D02&paper=papyrus`, '"papyrus" is none of the papers'],
  [`code=D02&paper=a4-2x6&from=13`, 'must be a whole number from 1 to 12'],
  [`code=D02&copies=501`, 'must be a whole number from 1 to 500'],
  [`code=D02&address=http%3A%2F%2F`, 'must be an address such as'],
])('%s is named on the page, and no label is made', async (query, said) => {
  const page = await app.open(`/shelf/labels?${query}`);
  expect(await page.locator('.notice.wrong').innerText()).toContain(said);
  expect(await page.locator('.label').count()).toBe(0);
});

test('a label that cannot be set whole is left out and named', async () => {
  const code = '湯'.repeat(40);
  await addLot(exampleLot({ ...longestLot, code }));
  const page = await app.open(`/shelf/labels?code=${code}&code=D02&copies=1&paper=letter-3x8`);
  expect(await page.locator('.notice.wrong').innerText()).toContain(`Left out: ${code}.`);
  expect(await page.locator('.label').count()).toBe(1);
});
