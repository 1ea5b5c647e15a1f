import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright';
import { fillIn, press, visit } from './browse.ts';
import { ROOT } from './run.ts';

const TRAYS = [0, 1, 2, 3];
const TRAY_G = 600;
const LOADED_G = 1500;

/**
 * Cooks, loads and weighs a batch of the demo's chilli, as a person does in the pages.
 *
 * @param recipe the path of its recipe
 * @param until `drying`: weighed once, not dry yet; `sealed`: its pouches are on the shelf
 * @returns the path of its page
 */
export async function cookDemoBatch(
  page: Page,
  recipe: string,
  code: string,
  until: 'drying' | 'sealed',
): Promise<string> {
  await visit(page, recipe);
  await page.getByRole('link', { name: 'Start a batch' }).click();
  await page.waitForURL('**/batches/new?*');
  await fillIn(page, { code });
  await press(page, 'Start');
  await page.waitForURL(/\/kitchen\/batches\/(?!new)/);
  const address = new URL(page.url()).pathname;

  const cook = page.locator('#cook');
  await fillIn(page, { cookedG: 3900 });
  for (const box of await cook.getByRole('checkbox').all()) await box.check();
  for (const reading of await cook.locator('[name^="reading."]').all()) await reading.fill('76');
  await press(page, 'Save', '#cook');
  for (const tray of TRAYS)
    await fillIn(page, { [`trays[${tray}].tareG`]: TRAY_G, [`trays[${tray}].loadedG`]: LOADED_G });
  await page
    .locator('#load')
    .getByRole('checkbox', { name: /2 hours/ })
    .check();
  await press(page, 'Save', '#load');

  const weigh = async (afterH: number, grossG: (tray: number) => number, feel: string) => {
    await fillIn(page, { afterH });
    for (const tray of TRAYS)
      await fillIn(page, {
        [`weighed[${tray}].grossG`]: grossG(tray),
        [`weighed[${tray}].feel`]: feel,
      });
    await press(page, 'Save weights');
  };
  await weigh(18, (tray) => (tray === 0 ? 880 : 830), 'cold spot');
  if (until === 'drying') return address;

  const loadText = await page.locator('#load').innerText();
  const expectedG = Number(/Target dry weight\s*([\d,]+) g/.exec(loadText)?.[1]?.replace(',', ''));
  if (!(expectedG > 0)) throw new Error('The page of the batch does not say its target dry weight.');
  const dryG = Math.round(TRAY_G + expectedG / TRAYS.length);
  await weigh(24, () => dryG + 1, 'dry through');
  await weigh(27, () => dryG, 'dry through');
  await fillIn(page, { 'cup.volumeMl': 500, 'cup.netG': 200, servings: 9 });
  await press(page, 'Save and suggest pouches');
  for (const box of await page.locator('#seal .check').getByRole('checkbox').all()) await box.check();
  await press(page, 'Seal and add to shelf');
  await page.locator('#sealed').waitFor();
  return address;
}

/** Hands in the demo's shelf with errors for import. @returns the path of its preview */
export async function beginDemoImport(origin: string): Promise<string> {
  const response = await fetch(`${origin}/shelf/import/upload`, {
    method: 'POST',
    headers: {
      origin,
      'content-type': 'application/octet-stream',
      'x-file-name': 'shelf-with-errors.csv',
    },
    body: readFileSync(path.join(ROOT, 'demo-data/shelf-with-errors.csv')),
  });
  const { location }: { location: string } = await response.json();
  return location;
}
