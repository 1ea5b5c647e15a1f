/* Every value that a form holds before anybody entered one has its reason one click away. */
import { spawnSync } from 'node:child_process';
import type { Page } from 'playwright';
import { beforeAll, expect, test } from 'vitest';
import { newDemoTrip, projectFile, startApp, visit } from './harness.ts';

const app = startApp();
let trip = '';

beforeAll(async () => {
  trip = await newDemoTrip(app);
});

/** Controls that need no reason, by name, and why not. */
const EXCEPTIONS: readonly (readonly [name: RegExp, why: string])[] = [
  [/^(?:name|startDate|dayCount)$/, 'of a trip or recipe that is there: entered when it was made'],
  [/^party\[\]\.(?:name|allergens|diets)$/, 'entered; eaters without a name have a number'],
  [/^(?:servings|note)$/, 'of a recipe or batch that is there: entered'],
  [/^(?:timesCooked|cookedOn|dryer|trays\[\]\.loadedG)$/, 'of a batch that is there: entered'],
  [/^body\.|\.body\./, '"not entered" is the first choice'],
  [/^days\[\]\.(?:distanceM|climbM|descentM)$/, 'entered'],
  [/^counted$/, 'what the ledger says now, to be corrected by a count'],
  [/^(?:who|a|b|language|paperSize)$/, 'chooses what is shown and changes nothing'],
  [/^(?:best|meal|show|process)$/, 'filters and sorts a list'],
  [/^(?:to|toPlace|code)$/, 'a list to choose from that begins with a question'],
  [/^preference$/, 'chooses what one press does, and is not kept'],
  [/^packetG$/, 'the packet of the suggestion beside it, from the staples of the settings'],
  [/^(?:style$|taste\[)/, 'its first choice is that nothing is said'],
  [/^servings\[/, 'what the plan deals out, to be changed'],
  [/^(?:appetite|water|portion)\[\]$|^(?:portion|liking)$/, '"not said" is the first choice'],
  [/^food\.cookingClass$/, 'its first choice says what the table says'],
  [/^food\.composition\./, 'shows what the table says, with its source above'],
];

/** Controls that hold a value or show one as their default, and neither have a reason in a list that one click opens nor are an exception. */
async function unexplained(page: Page, exceptions = EXCEPTIONS): Promise<string[]> {
  const found = await page.evaluate(() => {
    const holds = (control: HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement) => {
      if (control instanceof HTMLSelectElement) return true;
      if (/^(?:checkbox|radio)$/.test(control.type)) return (control as HTMLInputElement).checked;
      return (
        !/^(?:hidden|file|submit|search|password)$/.test(control.type) &&
        control.value + control.placeholder !== ''
      );
    };
    const controls = [
      ...document.querySelectorAll<HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement>(
        'main input, main select, main textarea',
      ),
    ];
    return controls.filter(holds).flatMap((control) => {
      const id =
        control.getAttribute('aria-details') ??
        control.closest('fieldset[aria-details]')?.getAttribute('aria-details');
      const reason = id ? document.getElementById(id) : null;
      const opens = reason?.closest('details')?.querySelector('summary');
      return opens && (reason?.textContent ?? '').trim().length > 3 ? [] : [control.name];
    });
  });
  const names = new Set(found.map((name) => name.replaceAll(/\[\d+\]/g, '[]')));
  return [...names].filter((name) => !exceptions.some(([pattern]) => pattern.test(name)));
}

/** What is new is entered by nobody: there only choices without a value are let through. */
const ON_NEW = EXCEPTIONS.filter(([, why]) => !why.includes('entered when') && !why.includes('is there'));

test.each([
  '/shelf/new',
  '/shelf/new/details',
  '/kitchen/recipes/new',
  '/kitchen/batches/new',
  '/trips/new',
  '/shelf/labels',
])('on %s', async (address) => {
  expect(await unexplained(await app.open(address), ON_NEW)).toEqual([]);
});

test.each([
  '/settings',
  '/kitchen/equipment',
  '/kitchen/foods',
  '/shelf/labels?code=D01',
  '/shelf',
  '/trips/compare',
])('on %s', async (address) => {
  expect(await unexplained(await app.open(address))).toEqual([]);
});

test.each([
  'party',
  'route',
  'menu',
  'menu?change=2-dinner',
  'loads',
  'water',
  'weighing',
  'missing',
  'card',
  'pouches',
])('on the page %s of a trip', async (part) => {
  expect(await unexplained(await app.open(`${trip}/${part}`))).toEqual([]);
});

test('on the page of a recipe, and on that of a batch from its beginning to its pouches', async () => {
  const page = await app.open('/kitchen');
  await page.getByRole('region', { name: 'Recipes and their figures' }).getByRole('link').first().click();
  await page.getByRole('heading', { name: 'Add an ingredient' }).waitFor();
  expect(await unexplained(page)).toEqual([]);

  await page.getByRole('link', { name: 'Start a batch' }).click();
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.waitForURL(/\/kitchen\/batches\/(?!new)/);
  expect(await unexplained(page)).toEqual([]);
  await page.locator('[name="trays[0].loadedG"]').fill('900');
  await page.locator('#load').getByRole('button', { name: 'Save' }).click();
  await page.locator('[name="weighed[0].feel"]').waitFor();
  expect(await unexplained(page)).toEqual([]);
});

test('where a file is imported whose columns have to be guessed', async () => {
  const page = await app.open('/shelf/import');
  await page.locator('input[type="file"]').setInputFiles({
    name: 'own.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('Dish;Calories;Weight;Pouches\nDal;500;120;3\n'),
  });
  await page.getByRole('button', { name: 'Look at the file' }).first().click();
  await page.getByRole('heading', { name: 'Column contents' }).waitFor();
  expect(await unexplained(page)).toEqual([]);
});

test('a reason is read by keyboard and without scripts, leads into the method, and is not printed', async () => {
  const page = await app.open(`${trip}/water`, { scripts: false });
  await page.locator('#water summary', { hasText: 'Change' }).click();
  const summary = page.locator('#water summary', { hasText: 'Defaults and why' });
  await summary.focus();
  await page.keyboard.press('Enter');
  await page.getByText('the most common method on the trail (rule of thumb)').waitFor({ state: 'visible' });
  await page.emulateMedia({ media: 'print' });
  expect(await summary.isVisible()).toBe(false);
});

test('every link into the method leads to a part of it', async () => {
  const page = await app.open('/method');
  const parts = await page.locator('main [id]').evaluateAll((all) => all.map(({ id }) => id));
  const wanted = new Set<string>();
  for (const address of [
    '/shelf/new',
    '/shelf/labels',
    '/settings',
    '/kitchen/equipment',
    `${trip}/party`,
    `${trip}/water`,
    `${trip}/card`,
    `${trip}/missing`,
    `${trip}/route`,
    `${trip}/loads`,
  ]) {
    await visit(page, address);
    for (const href of await page
      .locator('a[href^="/method#"]')
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).hash)))
      wanted.add(href.slice(1));
  }
  expect(wanted.size).toBeGreaterThan(5);
  expect([...wanted].filter((part) => !parts.includes(part))).toEqual([]);
});

test('where a link is given out', async () => {
  const words = 'seven dried lentils on a cold ridge';
  const { status, stderr } = spawnSync(process.execPath, [projectFile('src/tooling/passphrase.ts')], {
    input: `${words}\n`,
    env: { ...process.env, RIDGELARDER_DATA: app.dataFolder },
    encoding: 'utf8',
  });
  expect(stderr + String(status)).toBe('0');
  const page = await app.open('/settings/access');
  await page.getByLabel('Passphrase').fill(words);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.locator('[name="days"]').waitFor();
  expect(await unexplained(page)).toEqual([]);
});
