import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Readable } from 'node:stream';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { TripPlan } from '../lib/planning/model/trip-plan.ts';
import { WordedPlan } from '../lib/presentation/worded-plan.ts';
import { planCommand } from './plan-command.ts';
import { ROOT } from './run.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-plan-'));
beforeAll(() => vi.stubEnv('INIT_CWD', folder));
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

const demoTrip = JSON.parse(readFileSync(path.join(ROOT, 'demo-data/trip.json'), 'utf8'));
const demoShelf = readFileSync(path.join(ROOT, 'demo-data/shelf.csv'), 'utf8');

function plan(args: readonly string[], input = '') {
  return planCommand(args, Readable.from([Buffer.from(input)]));
}

function file(name: string, content: string | Uint8Array): string {
  writeFileSync(path.join(folder, name), content);
  return name;
}

const tripFile = (change: object) => file('trip.json', JSON.stringify({ ...demoTrip, ...change }));

test('without arguments it plans the demo, the same to the byte each time', async () => {
  const first = await plan([]);
  expect(first).toMatchObject({ exitCode: 0, errors: '' });
  expect(first.output.endsWith('}\n')).toBe(true);
  const parsed = WordedPlan.parse(JSON.parse(first.output));
  expect(parsed.tripName).toBe(demoTrip.name);
  expect(parsed.carry.packs.map(({ eater }) => eater)).toEqual(['Ilse', 'Tarek', 'Oona', 'Pavel']);
  expect(parsed.totals.pouches).toBeGreaterThan(50);
  expect(parsed.shortfall.missingKcal).toBeGreaterThan(0);
  expect((await plan([])).output).toBe(first.output);
});

test('a file or standard input give the same plan as the demo they hold', async () => {
  const demo = (await plan([])).output;
  expect((await plan(['--stock', '-'], demoShelf)).output).toBe(demo);
  expect((await plan(['--trip', '-'], JSON.stringify(demoTrip))).output).toBe(demo);
  expect((await plan(['--stock', file('shelf.csv', demoShelf), '--trip', tripFile({})])).output).toBe(demo);
});

test('a withdrawn lot is in no meal, and a trip before takes its pouches first', async () => {
  const codesOf = ({ output }: { output: string }) => {
    const { menu }: TripPlan = JSON.parse(output);
    return menu.meals.flatMap(({ opened }) => opened.map(({ code }) => code));
  };
  const code = codesOf(await plan([]))[0]!;
  const [head = '', ...rows] = demoShelf.trimEnd().split(/\r?\n/);
  const withdrawn = [
    `${head},withdrawn`,
    ...rows.map((row) => (row.startsWith(`${code},`) ? `${row},mould` : `${row},`)),
  ];
  const without = await plan(['--stock', file('withdrawn.csv', `${withdrawn.join('\r\n')}\r\n`)]);
  expect(without).toMatchObject({ exitCode: 0, errors: '' });
  expect(codesOf(without)).not.toContain(code);

  const alone: TripPlan = JSON.parse((await plan([])).output);
  const second: TripPlan = JSON.parse(
    (await plan(['--before', tripFile({ startDate: '2027-05-01' })])).output,
  );
  expect(second.shortfall.missingKcal).toBeGreaterThan(2 * alone.shortfall.missingKcal);
});

test('the text shows the figures of the plan', async () => {
  const { carry }: TripPlan = JSON.parse((await plan([])).output);
  const { exitCode, output } = await plan(['--format', 'text']);
  expect(exitCode).toBe(0);
  for (const heading of [
    'Notices',
    'Menu',
    'Pack weight',
    'Room that the food takes',
    'Water',
    'Fuel',
    'Shortfall',
    'Assumed',
  ])
    expect(output).toContain(`── ${heading}`);
  const tarek = carry.loads
    .filter(({ eater }) => eater === 'Tarek')
    .map(({ totalG }) => `${(totalG / 1000).toFixed(1)} kg`);
  const line = output.split('\n').find((row) => row.startsWith('Tarek ')) ?? '';
  expect(
    line
      .replaceAll(/ \([^)]*\)/g, '')
      .split(/ {2,}/)
      .slice(1),
  ).toEqual(tarek);
});

test('the card says for every pouch what to pour and how long to wait', async () => {
  const { card }: WordedPlan = JSON.parse((await plan([])).output);
  const { exitCode, output } = await plan(['--format', 'card']);
  expect(exitCode).toBe(0);
  for (const caution of card.cautions) expect(output).toContain(caution);
  for (const lot of card.days.flatMap((day) => day.meals).flatMap((meal) => meal.pouches)) {
    expect(output).toContain(
      lot.pouches > 0
        ? `${lot.pouches} × ${lot.code} ${lot.recipe}`
        : `${lot.code} ${lot.recipe}, open since day ${lot.openSinceDay}`,
    );
    if (lot.steepMin > 0) expect(output).toContain(`Wait ${lot.stirAfterMin ?? lot.steepMin} min`);
  }
});

test('text and card are in the language asked for, headings included', async () => {
  const inGerman = (format: string) => plan(['--format', format, '--language', 'de']);
  const { output } = await inGerman('text');
  for (const heading of ['Hinweise', 'Speiseplan', 'Wasser der Gruppe', 'Brennstoff', 'Angenommen'])
    expect(output).toContain(`── ${heading}`);
  expect(output).toMatch(/^Tag 1, .*5\. Juli/m);
  expect((await inGerman('card')).output).toMatch(/^Kochkarte: .*\n(?:.*\n)*── Tag 1, /);
});

test('settings change the units that are shown', async () => {
  const { output } = await plan([
    '--format',
    'text',
    '--settings',
    file('settings.json', '{"unitSystem": "us"}'),
  ]);
  expect(output).toMatch(/\d lb/);
  expect(output).not.toMatch(/\d kg/);
});

test('the sentences of the plan are in the language asked for; its data is the same', async () => {
  const english: TripPlan = JSON.parse((await plan([])).output);
  const german: WordedPlan = JSON.parse((await plan(['--language', 'de'])).output);
  expect(german.card.cautions[0]).toMatch(/^Nimm den Sauerstoffabsorber heraus/);
  expect(
    german.assumptions.every(({ text }) => /allgemeine Praxis|Erfahrungswert|DIN 33466/.test(text)),
  ).toBe(true);
  expect(german.menu).toEqual(english.menu);
  expect(german.totals).toEqual(english.totals);
  const trip = tripFile({ dayCount: 400 });
  expect((await plan(['--trip', trip, '--language', 'de'])).errors).toMatch(
    /dayCount: darf höchstens 90 Tage/,
  );
  expect((await plan([])).output).toBe(JSON.stringify(english, null, 2) + '\n');
});

test('refused rows are listed and fail, or are listed and left out', async () => {
  const shelf = path.join(ROOT, 'demo-data/shelf-with-errors.csv');
  const strict = await plan(['--stock', shelf]);
  expect(strict).toMatchObject({ exitCode: 2, output: '' });
  expect(strict.errors).toMatch(/1 of 27 rows/);
  expect(strict.errors).toMatch(/row 5, dry weight g "-130": .*negative/);
  const lenient = await plan(['--stock', shelf, '--skip-refused']);
  expect(lenient.exitCode).toBe(0);
  expect(lenient.errors).toMatch(/left out:\n {2}row 5,/);
  // "soy; krill" is taken in with a list that stays open, so it is served to nobody who avoids anything
  expect(JSON.parse(lenient.output).menu.meals.length).toBeGreaterThan(0);
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
    /no column contains the recipe/,
  ],
  ['broken JSON', () => ['--trip', file('broken.json', '{\n  "name": "x",\n}')], /line 3 column 1/],
  [
    'an unknown field',
    () => ['--trip', tripFile({ dayCont: 5 })],
    /\(input\): has the unknown field "dayCont"/,
  ],
  ['no days', () => ['--trip', tripFile({ dayCount: 0, days: [] })], /dayCount: must be at least 1 day/],
  ['400 days', () => ['--trip', tripFile({ dayCount: 400 })], /dayCount: must be at most 90 days/],
  ['nobody', () => ['--trip', tripFile({ party: [] })], /party: must have at least one person/],
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
  [
    'an unknown language',
    () => ['--language', 'eo'],
    /--language "eo" is not known; it is one of: en, en-US, de, fr/,
  ],
  ['standard input for two', () => ['--stock', '-', '--trip', '-'], /Only one of the files/],
])('%s is told, with exit code 2 and nothing on standard output', async (_, args, message) => {
  const result = await plan(args());
  expect(result).toMatchObject({ exitCode: 2, output: '' });
  expect(result.errors).toMatch(message);
  expect(result.errors).not.toMatch(/\bat .*:\d+:\d+/);
});

test('a lot that is on a locked meal and gone from the shelf is told in the plan', async () => {
  const trip = tripFile({
    menu: [{ day: 1, meal: 'dinner', locked: true, opened: [{ code: 'GONE', pouches: 1 }] }],
  });
  const { exitCode, output } = await plan(['--trip', trip]);
  expect(exitCode).toBe(0);
  const { notices }: WordedPlan = JSON.parse(output);
  expect(notices).toContainEqual(
    expect.objectContaining({
      code: 'lot-gone',
      severity: 'attention',
      lot: 'GONE',
      day: 1,
      meal: 'dinner',
      text: 'The dinner on day 1 uses lot GONE, which is no longer on the shelf. Choose another pouch.',
    }),
  );
});

test('--help names every option', async () => {
  const { exitCode, output } = await plan(['--help']);
  expect(exitCode).toBe(0);
  for (const option of [
    '--stock',
    '--trip',
    '--before',
    '--settings',
    '--format',
    '--skip-refused',
    '--language',
  ])
    expect(output).toContain(option);
});

/** Runs the real command in a process of its own. */
function run(args: readonly string[]) {
  return spawnSync(process.execPath, [path.join(ROOT, 'src/tooling/plan.ts'), ...args], { encoding: 'utf8' });
}

test('the command writes the plan to standard output and ends with 0', async () => {
  expect(run([])).toMatchObject({ status: 0, stdout: (await plan([])).output, stderr: '' });
});

test('the command writes what is wrong to standard error and ends with 2', () => {
  const { status, stdout, stderr } = run(['--trip', 'nowhere.json']);
  expect({ status, stdout, stderr }).toEqual({
    status: 2,
    stdout: '',
    stderr: 'nowhere.json: there is no such file\n',
  });
});

test('a search finds a menu of less cost and says how good it is; the exported model is written', async () => {
  const model = path.join(folder, 'model.lp');
  const { exitCode, errors, output } = await plan(['--search', 'quick', '--export-model', model]);
  expect(exitCode).toBe(0);
  const [, points = 0, firstExpired = 0, bound = 0] = (
    /costs ([\d.]+) points; first expired, first out costs ([\d.]+), and none can cost less than ([\d.]+)/.exec(
      errors,
    ) ?? []
  ).map(Number);
  expect(bound).toBeGreaterThan(0);
  expect(bound).toBeLessThanOrEqual(points);
  expect(points).toBeLessThan(firstExpired);
  expect(WordedPlan.parse(JSON.parse(output)).menu.planner).toBe('least cost in all');
  expect(readFileSync(model, 'utf8')).toMatch(
    /^\\ .*\nMinimize\n points: [\s\S]*Subject To[\s\S]*Generals[\s\S]*End\n$/,
  );
});

test('an unknown search and a model file that cannot be written are named', async () => {
  expect(await plan(['--search', 'best'])).toMatchObject({
    exitCode: 2,
    errors: expect.stringContaining('--search "best" is not known; it is one of: none, quick, thorough'),
  });
  expect(await plan(['--export-model', path.join(folder, 'no', 'model.lp')])).toMatchObject({
    exitCode: 2,
    errors: expect.stringContaining('cannot be written'),
  });
});
