/* Files that are no shelf, and a shelf that changes under a plan: a message that says what and what to do, and nothing lost. */
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { startApp, visit } from './harness.ts';

const app = startApp();
const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-files-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** What the browser itself writes to the console when an input is refused. */
const REFUSED = /status of 4\d\d/;

const HUGE_BYTES = 200_000_000;
const PHOTO = Buffer.from([
  0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 1, 0, 0, 72, 0, 72, 0, 0,
]);

function file(name: string, content: string | Uint8Array, bytes?: number): string {
  const place = path.join(folder, name);
  writeFileSync(place, content);
  if (bytes !== undefined) truncateSync(place, bytes);
  return place;
}

test.each([
  { what: 'an empty file', make: () => file('empty.csv', ''), told: /empty.*Choose a CSV file/ },
  { what: 'a photo', make: () => file('photo.csv', PHOTO), told: /photo.*not a CSV file/ },
  {
    what: 'a file of 200 MB',
    make: () => file('huge.csv', 'code,recipe\n', HUGE_BYTES),
    told: /larger than 64 MB/,
  },
])('the import refuses $what and says what to do', async ({ make, told }) => {
  const page = await app.open('/shelf/import', { expected: REFUSED });
  await page.getByLabel('CSV file').setInputFiles(make());
  await page.getByRole('button', { name: 'Look at the file' }).click();
  const message = page.getByRole('alert');
  await message.waitFor();
  expect(await message.innerText()).toMatch(told);
  expect(new URL(page.url()).pathname).toBe('/shelf/import');
  await visit(page, '/shelf');
  expect(await page.getByRole('table').count()).toBe(0);
});

test('the server itself refuses a file of 200 MB', async () => {
  const response = await fetch(`${app.origin}/shelf/import/upload`, {
    method: 'POST',
    headers: { 'content-type': 'application/octet-stream', accept: 'application/json', origin: app.origin },
    body: new Uint8Array(HUGE_BYTES),
  });
  expect(response.status).toBe(413);
});

test('a pouch that is locked on a meal and gone from the shelf is told, and its meal is kept', async () => {
  const page = await app.open('/', { expected: REFUSED });
  await page.getByRole('button', { name: 'Load the demo' }).click();
  await page.waitForURL(/\/trips\/[\w-]{36}$/);
  const trip = new URL(page.url()).pathname;

  await visit(page, `${trip}/menu?change=1-dinner`);
  const dinner = page.locator('#meal-1-dinner');
  const code = await dinner
    .getByRole('link', { name: /^D\d\d$/ })
    .first()
    .innerText();
  await dinner.getByRole('button', { name: 'Lock dinner of day 1' }).click();
  await dinner.getByText('locked', { exact: true }).waitFor();

  await visit(page, `/shelf/${code}`);
  await page.getByLabel('Pouches at home').fill('-3');
  await page.getByRole('button', { name: 'Save count' }).click();
  await page.getByText('Not saved:').waitFor();
  expect(await page.getByLabel('Pouches at home').inputValue()).toBe('-3');
  await page.getByLabel('Pouches at home').fill('0');
  await page.getByRole('button', { name: 'Save count' }).click();
  await page.getByRole('status').filter({ hasText: 'The count is entered' }).waitFor();

  await visit(page, `${trip}/menu`);
  expect(await dinner.innerText()).toMatch(new RegExp(`${code}[^]*none can be served: \\d+ wanted`));
  expect(await page.getByRole('region', { name: 'Plan summary' }).innerText()).toContain(code);
});
