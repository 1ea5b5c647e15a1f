/* A list so long that its import takes a while: how far it is, stopped, started again; with scripts and without. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';

import { shelfCsv } from '../../src/lib/shelf-csv/write-shelf-csv.ts';
import { exampleLot } from '../support/examples.ts';
import { barriers, PHONE_PX, startApp, tooWide, visit } from './harness.ts';

const LOTS = 100_000;
const app = startApp();
const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-files-'));
const file = path.join(folder, 'long.csv');
beforeAll(() => {
  const lots = Array.from({ length: LOTS }, (_, n) => exampleLot({ code: `L${n}` }));
  writeFileSync(file, [...shelfCsv(lots, 'EUR')].join(''));
});
afterAll(() => rmSync(folder, { recursive: true }));

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const told = (page: Page, text: RegExp) => page.getByText(text).waitFor({ timeout: 60_000 });
const chooseFile = async (page: Page) => {
  await page.getByLabel('CSV file').setInputFiles(file);
  await button(page, 'Look at the file').click();
};
const lotsOnShelf = async () =>
  ((await (await fetch(`${app.origin}/shelf/lots.json`)).json()) as unknown[]).length;

test('sending is stopped, reading is stopped and begun again, the import is stopped and begun again', async () => {
  const page = await app.open('/shelf/import', { widthPx: PHONE_PX });
  const network = await page.context().newCDPSession(page);
  const slow = { offline: false, latency: 0, downloadThroughput: -1 };
  await network.send('Network.emulateNetworkConditions', { ...slow, uploadThroughput: 200_000 });
  await chooseFile(page);
  await told(page, /^Sending: [\d.]+ of [\d.]+ MB\.$/);
  expect(await barriers(page)).toEqual([]);
  await button(page, 'Stop').click();
  await page.getByRole('alert').filter({ hasText: 'Sending was stopped' }).waitFor();
  expect(new URL(page.url()).pathname).toBe('/shelf/import');
  await network.send('Network.emulateNetworkConditions', { ...slow, uploadThroughput: -1 });

  await chooseFile(page);
  await told(page, /^Reading: [\d,]+ rows so far, \d+% of the file\.$/);
  await button(page, 'Stop').click();
  await told(page, /^The reading was stopped\. The file is kept\.$/);
  await button(page, 'Read it again').click();
  await told(page, /^100,000 rows: 100,000 new,/);

  await button(page, 'Import 100,000 pouch lots').click();
  await told(page, /^Writing: [\d,]+ of 100,000 pouch lots\.$/);
  expect(Number(await page.getByRole('progressbar').getAttribute('value'))).toBeGreaterThan(0);
  expect(await lotsOnShelf()).toBe(0);
  expect(await tooWide(page)).toBe(0);
  await button(page, 'Stop').click();
  await told(page, /^Import stopped; nothing was saved\./);
  expect(await lotsOnShelf()).toBe(0);

  const address = page.url();
  await button(page, 'Import 100,000 pouch lots').click();
  await told(page, /^(Reading|Writing): /);
  // Whoever opens the same file meanwhile sees the import that runs, and is offered no second one.
  const other = await (await fetch(address)).text();
  expect(other).toMatch(/(Reading|Writing): /);
  expect(other).not.toContain('Import 100,000 pouch lots');
  await page.waitForURL(/\/shelf$/, { timeout: 60_000 });
  await told(page, /^Import finished/);
  expect(await lotsOnShelf()).toBe(LOTS);
});

test('so large a shelf is not sent: the server finds while one types, and its pages follow each other by the keyboard', async () => {
  const page = await app.open('/shelf', { widthPx: PHONE_PX });
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await told(page, /^100,000 lots: /);
  const search = page.getByLabel('Search');
  await search.pressSequentially('l1234');
  await told(page, /^11 lots: /);
  expect(await search.inputValue()).toBe('l1234');
  expect(await search.evaluate((field) => field === document.activeElement)).toBe(true);
  expect(await page.locator('tbody tr').count()).toBe(11);
  expect(asked).not.toContain('/shelf/lots.json');

  const plain = await app.open('/shelf', { scripts: false, widthPx: PHONE_PX });
  await plain.getByLabel('Search').fill('l99');
  await plain.keyboard.press('Enter');
  await told(plain, /^1,\d\d\d lots: /);
  await plain.getByRole('link', { name: 'Next' }).focus();
  await plain.keyboard.press('Enter');
  await told(plain, /^Page 2 of 1\d$/);
  expect(new URL(plain.url()).searchParams.get('search')).toBe('l99');
  expect(await plain.locator('tbody tr').count()).toBe(100);
  expect(await tooWide(plain)).toBe(0);
});

test('without scripts the form waits until all is written', async () => {
  const page = await app.open('/shelf/import', { scripts: false });
  await chooseFile(page);
  await told(page, /^100,000 rows: 0 new, 0 changed,\s+100,000 unchanged/);
  await button(page, 'Discard this file and choose another').click();
  await page.getByLabel('CSV file').setInputFiles({
    name: 'short.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from([...shelfCsv([exampleLot({ code: 'NEW' })], 'EUR')].join('')),
  });
  await button(page, 'Look at the file').click();
  await button(page, 'Import 1 pouch lot').click();
  await told(page, /^Import finished/);
  await visit(page, '/shelf/NEW');
});
