import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { checkPage, newDemoTrip, startApp, visit } from './harness.ts';

const app = startApp();
const PAGE = '/settings/backups';

/** Clicks on a link to a file. @returns where it was saved */
async function saved(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name }).first().click(),
  ]);
  const file = path.join(app.dataFolder, download.suggestedFilename());
  await download.saveAs(file);
  return file;
}

async function countOfLots(page: Page): Promise<number> {
  const rows = await (await page.request.get('/shelf/export.csv')).text();
  return rows.trim().split('\n').length - 1;
}

/** Puts a lot on the shelf. */
async function addLot(page: Page, code: string): Promise<void> {
  await visit(page, '/shelf/new/details');
  const lot = {
    code,
    recipe: 'Test stew',
    bestBefore: '2031-01-31',
    dryWeightG: '100',
    energyKcal: '400',
    waterMl: '250',
  };
  for (const [name, value] of Object.entries(lot)) await page.locator(`[name="${name}"]`).fill(value);
  await page.getByRole('button', { name: 'Add to shelf', exact: true }).click();
  await page.getByRole('status').filter({ hasText: 'The lot is on the shelf' }).waitFor();
}

test('a copy is made, downloaded, taken in, compared and put back, without scripts too', async () => {
  await newDemoTrip(app);
  for (const scripts of [true, false]) {
    const page = await app.open(PAGE, { scripts });
    const before = await countOfLots(page);
    await page.getByRole('button', { name: 'Back up now' }).click();
    await page.getByText('Backup made.').waitFor();
    const files = [
      await saved(page, 'Download everything as one file'),
      await saved(page, 'Export everything as JSON'),
      await saved(page, 'Download the copy of'),
    ];
    expect((await readFile(files[0]!)).subarray(0, 15).toString()).toBe('SQLite format 3');
    expect(JSON.parse(await readFile(files[1]!, 'utf8'))).toMatchObject({ format: 'ridgelarder-data' });

    await addLot(page, `EXTRA-${scripts}`);
    expect(await countOfLots(page)).toBe(before + 1);
    for (const file of files) {
      await visit(page, PAGE);
      await page.getByLabel('File').setInputFiles(file);
      await page.getByRole('button', { name: 'Look at it' }).click();
      await page.getByRole('heading', { name: 'What it would change' }).waitFor();
      expect(await page.getByRole('row', { name: /^Lots/ }).innerText()).toMatch(
        new RegExp(`${before + 1}\\s+${before}\\s+1\\s+0\\s+0`),
      );
      expect(await page.getByText(`EXTRA-${scripts}`, { exact: true }).count()).toBe(1);
    }
    await page.getByRole('button', { name: 'Restore this backup' }).click();
    await page.getByText('Backup restored.').waitFor();
    expect(await countOfLots(page)).toBe(before);
    expect(await page.getByText('before another backup was restored').count()).toBeGreaterThan(0);
  }
});

test('a file that is no copy is refused with the reason, and nothing is changed', async () => {
  const page = await app.open(PAGE, { expected: /422/ });
  const file = path.join(app.dataFolder, 'diary.txt');
  await writeFile(file, 'dear diary');
  const before = await readdir(path.join(app.dataFolder, 'backups'));
  await page.getByLabel('File').setInputFiles(file);
  await page.getByRole('button', { name: 'Look at it' }).click();
  await page.getByText('"diary.txt" is not a Ridgelarder backup').waitFor();
  expect(await readdir(path.join(app.dataFolder, 'backups'))).toEqual(before);
});

test('the pages can be used by everybody', async () => {
  await checkPage(app, PAGE);
  const page = await app.open(PAGE);
  const address = await page.getByRole('link', { name: 'Compare the copy of' }).first().getAttribute('href');
  await checkPage(app, address!);
});
