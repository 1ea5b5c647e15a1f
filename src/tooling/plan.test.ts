import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { TripPlan } from '../lib/planning/model/trip-plan.ts';
import { ROOT } from './run.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-plan-'));
afterAll(() => rmSync(folder, { recursive: true }));

const demoTrip = JSON.parse(readFileSync(path.join(ROOT, 'demo-data/trip.json'), 'utf8'));
const demoShelf = readFileSync(path.join(ROOT, 'demo-data/shelf.csv'), 'utf8');

function plan(args: readonly string[], input: string | Buffer = '') {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [path.join(ROOT, 'src/tooling/plan.ts'), ...args],
    {
      cwd: folder,
      input,
      encoding: 'utf8',
      env: { ...process.env, INIT_CWD: folder },
    },
  );
  return { status, stdout, stderr };
}

function file(name: string, content: string | Uint8Array): string {
  writeFileSync(path.join(folder, name), content);
  return name;
}

const tripFile = (change: object) => file('trip.json', JSON.stringify({ ...demoTrip, ...change }));

test('without arguments it plans the demo, the same to the byte each time', () => {
  const first = plan([]);
  expect(first).toMatchObject({ status: 0, stderr: '' });
  expect(first.stdout.endsWith('}\n')).toBe(true);
  const parsed = TripPlan.parse(JSON.parse(first.stdout));
  expect(parsed.tripName).toBe(demoTrip.name);
  expect(parsed.carry.packs.map(({ eater }) => eater)).toEqual(['Ilse', 'Tarek', 'Oona', 'Pavel']);
  expect(parsed.totals.pouches).toBeGreaterThan(50);
  expect(parsed.shortfall.missingKcal).toBeGreaterThan(0);
  expect(plan([]).stdout).toBe(first.stdout);
});

test('a file or standard input give the same plan as the demo they hold', () => {
  const demo = plan([]).stdout;
  expect(plan(['--stock', '-'], demoShelf).stdout).toBe(demo);
  expect(plan(['--trip', '-'], JSON.stringify(demoTrip)).stdout).toBe(demo);
  expect(plan(['--stock', file('shelf.csv', demoShelf), '--trip', tripFile({})]).stdout).toBe(demo);
});

test('the text shows the figures of the plan', () => {
  const { carry }: TripPlan = JSON.parse(plan([]).stdout);
  const { status, stdout } = plan(['--format', 'text']);
  expect(status).toBe(0);
  for (const heading of ['To know', 'Menu', 'Pack weight', 'Water', 'Fuel', 'Missing', 'Assumed'])
    expect(stdout).toContain(`── ${heading}`);
  const tarek = carry.loads
    .filter(({ eater }) => eater === 'Tarek')
    .map(({ totalG }) => `${(totalG / 1000).toFixed(1)} kg`);
  const line = stdout.split('\n').find((row) => row.startsWith('Tarek ')) ?? '';
  expect(
    line
      .replaceAll(/ \([^)]*\)/g, '')
      .split(/ {2,}/)
      .slice(1),
  ).toEqual(tarek);
});

test('the card says for every pouch what to pour and how long to wait', () => {
  const { card }: TripPlan = JSON.parse(plan([]).stdout);
  const { status, stdout } = plan(['--format', 'card']);
  expect(status).toBe(0);
  for (const caution of card.cautions) expect(stdout).toContain(caution);
  for (const lot of card.days.flatMap((day) => day.meals).flatMap((meal) => meal.pouches)) {
    expect(stdout).toContain(`${lot.pouches} × ${lot.code}  ${lot.recipe}`);
    if (lot.steepMin > 0) expect(stdout).toContain(`wait ${lot.steepMin} min`);
  }
});

test('settings change the units that are shown', () => {
  const { stdout } = plan(['--format', 'text', '--settings', file('settings.json', '{"unitSystem": "us"}')]);
  expect(stdout).toMatch(/\d lb/);
  expect(stdout).not.toMatch(/\d kg/);
});

test('refused rows are listed and fail, or are listed and left out', () => {
  const shelf = path.join(ROOT, 'demo-data/shelf-with-errors.csv');
  const strict = plan(['--stock', shelf]);
  expect(strict).toMatchObject({ status: 2, stdout: '' });
  expect(strict.stderr).toMatch(/2 of 27 rows/);
  expect(strict.stderr).toMatch(/row 5, dry weight g "-130": .*negative/);
  expect(strict.stderr).toMatch(/row 22, allergens "soy; krill": "krill" is not a known allergen/);
  const lenient = plan(['--stock', shelf, '--skip-refused']);
  expect(lenient.status).toBe(0);
  expect(lenient.stderr).toMatch(/left out:\n {2}row 5,/);
  expect(lenient.stdout).toBe(plan([]).stdout);
});

const photo = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0]);

test.each<[string, () => string[], RegExp]>([
  ['a missing shelf', () => ['--stock', 'nowhere.csv'], /^nowhere\.csv: there is no such file/],
  ['a missing trip', () => ['--trip', 'nowhere.json'], /^nowhere\.json: there is no such file/],
  ['a folder', () => ['--trip', '.'], /^\.: this is a folder/],
  ['an empty shelf file', () => ['--stock', file('empty.csv', '')], /^empty\.csv: The file is empty/],
  ['an empty trip file', () => ['--trip', file('empty.json', '')], /^empty\.json: the file is empty/],
  ['a photo for a shelf', () => ['--stock', file('photo.csv', photo)], /^photo\.csv: This is a photo/],
  ['a photo for a trip', () => ['--trip', file('photo.json', photo)], /^photo\.json: this is no text/],
  [
    'a shelf without the columns',
    () => ['--stock', file('other.csv', 'a,b\n1,2\n')],
    /no column holds the recipe/,
  ],
  ['broken JSON', () => ['--trip', file('broken.json', '{\n  "name": "x",\n}')], /line 3 column 1/],
  [
    'an unknown field',
    () => ['--trip', tripFile({ dayCont: 5 })],
    /\(input\): has the unknown field "dayCont"/,
  ],
  ['no days', () => ['--trip', tripFile({ dayCount: 0, days: [] })], /dayCount: must be at least 1 day/],
  ['400 days', () => ['--trip', tripFile({ dayCount: 400 })], /dayCount: must be at most 90 days/],
  ['nobody', () => ['--trip', tripFile({ party: [] })], /party: must have at least one eater/],
  [
    'negative calories',
    () => ['--trip', tripFile({ energyKcal: -100 })],
    /energyKcal: must be at least 500 kcal/,
  ],
  [
    'an unknown allergen',
    () => ['--trip', tripFile({ party: [{ name: 'Ilse', allergens: ['krill'] }] })],
    /party\[0\]\.allergens\[0\]: must be one of: milk, .*; found "krill"/,
  ],
  [
    'settings out of range',
    () => ['--settings', file('s.json', '{"hotWaterC": 20}')],
    /hotWaterC: must be at least 40/,
  ],
  ['an unknown option', () => ['--stok', 'x.csv'], /--stok.*See --help/],
  [
    'an unknown format',
    () => ['--format', 'pdf'],
    /--format "pdf" is not known; it is one of: json, text, card/,
  ],
  ['standard input for two', () => ['--stock', '-', '--trip', '-'], /Only one of the files/],
])('%s is told, with exit code 2 and nothing on standard output', (_, args, message) => {
  const result = plan(args());
  expect(result).toMatchObject({ status: 2, stdout: '' });
  expect(result.stderr).toMatch(message);
  expect(result.stderr).not.toMatch(/\bat .*:\d+:\d+/);
});

test('a lot that is on a locked meal and gone from the shelf is told in the plan', () => {
  const trip = tripFile({
    menu: [{ day: 1, meal: 'dinner', locked: true, opened: [{ code: 'GONE', pouches: 1 }] }],
  });
  const { status, stdout } = plan(['--trip', trip]);
  expect(status).toBe(0);
  const { notices }: TripPlan = JSON.parse(stdout);
  expect(notices).toContainEqual(
    expect.objectContaining({ level: 'wrong', code: 'GONE', day: 1, meal: 'dinner' }),
  );
});

test('--help names every option', () => {
  const { status, stdout } = plan(['--help']);
  expect(status).toBe(0);
  for (const option of ['--stock', '--trip', '--settings', '--format', '--skip-refused'])
    expect(stdout).toContain(option);
});
