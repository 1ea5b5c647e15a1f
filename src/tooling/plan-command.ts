import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Readable } from 'node:stream';
import { parseArgs } from 'node:util';
import { defaultSettings, Settings } from '../lib/planning/model/settings.ts';
import type { TripPlan } from '../lib/planning/model/trip-plan.ts';
import { Trip } from '../lib/planning/model/trip.ts';
import { gapShare, MenuFinder } from '../lib/menu-search/find-menu.ts';
import type { Stock } from '../lib/planning/model/pouch-lot.ts';
import { buildMenuModel } from '../lib/planning/menu/menu-model.ts';
import { menuProgram } from '../lib/planning/optimiser/menu-program.ts';
import { EFFORTS } from '../lib/planning/optimiser/search-menu.ts';
import { writeLp } from '../lib/planning/optimiser/write-lp.ts';
import { buildMenuProblem, planTrip } from '../lib/planning/plan-trip.ts';
import { leftByAll } from '../lib/planning/season/plan-season.ts';
import { wordedPlan } from '../lib/presentation/worded-plan.ts';
import { speaking } from '../lib/server/language-of-request.ts';
import { isLanguage, LANGUAGES } from '../lib/texts/say.ts';
import { cardText } from './card-text.ts';
import { planText } from './plan-text.ts';
import { BadInput, fileSource, readJson, readStock, type Source } from './read-inputs.ts';
import { ROOT } from './run.ts';

const HELP = `Plans a trip from a shelf of pouches.

  npm run --silent plan -- [--stock FILE.csv] [--trip FILE.json] [--settings FILE.json]
                           [--before FILE.json]... [--format json|text|card] [--skip-refused]
                           [--search none|quick|thorough] [--export-model FILE.lp] [--language en|en-US|de|fr]

  --stock         the shelf, a CSV file; left out: the demo shelf
  --trip          the trip, as docs/schema/trip.json describes; left out: the demo trip
  --before        a trip that takes its pouches from the shelf first; may be given several times
  --settings      as docs/schema/settings.json describes; what is left out takes its usual value
  --format        json: the whole plan, as docs/schema/trip-plan.json describes (this is the usual one)
                  text: to read;  card: the trail card
  --search        none: first expired, first out (this is the usual one);  quick or thorough: the menu of least cost
                  that is found, seconds or a minute; how good it is goes to standard error
  --export-model  write the menu as an integer program in LP format, which most solvers read; its objective is
                  the points of the menu
  --skip-refused  plan without the rows of the shelf that cannot be taken in
  --language      of text and card, of the sentences of the plan, and of what is wrong with an input: en (this is the
                  usual one), en-US, de or fr; names of fields stay English
  --help          this text

One of the files may be - for standard input. Exit code 0: planned; 2: an input cannot be used, and standard error says why.
`;

const STDIN = '-';

const FORMATS: Readonly<Record<string, (plan: TripPlan, settings: Settings) => string>> = {
  json: (plan, { unitSystem }) => `${JSON.stringify(wordedPlan(plan, unitSystem), null, 2)}\n`,
  text: (plan, { unitSystem }) => planText(plan, unitSystem),
  card: (plan, { unitSystem }) => cardText(plan, unitSystem),
};

function readOptions(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        stock: { type: 'string', default: path.join(ROOT, 'demo-data/shelf.csv') },
        trip: { type: 'string', default: path.join(ROOT, 'demo-data/trip.json') },
        before: { type: 'string', multiple: true, default: [] },
        settings: { type: 'string' },
        format: { type: 'string', default: 'json' },
        search: { type: 'string', default: 'none' },
        'export-model': { type: 'string' },
        'skip-refused': { type: 'boolean', default: false },
        language: { type: 'string', default: 'en' },
        help: { type: 'boolean', default: false },
      },
    }).values;
  } catch (error) {
    throw new BadInput(`${error instanceof Error ? error.message : String(error)} See --help.`);
  }
}

const SEARCHES: readonly string[] = ['none', ...EFFORTS];

export type Outcome = { readonly exitCode: 0 | 2; readonly output: string; readonly errors: string };

/**
 * The command as a function.
 *
 * @param args as `--help` lists them
 * @param stdin what `-` stands for
 * @returns what goes to standard output and standard error, and the exit code: 2 where an input cannot be used
 */
export async function planCommand(args: readonly string[], stdin: Readable): Promise<Outcome> {
  try {
    return { exitCode: 0, ...(await planFrom(args, stdin)) };
  } catch (error) {
    if (error instanceof BadInput) return { exitCode: 2, output: '', errors: `${error.message}\n` };
    throw error;
  }
}

async function planFrom(args: readonly string[], stdin: Readable): Promise<Omit<Outcome, 'exitCode'>> {
  const options = readOptions(args);
  if (options.help) return { output: HELP, errors: '' };
  const { language } = options;
  if (!isLanguage(language))
    throw new BadInput(
      `--language "${language}" is not known; it is one of: ${Object.keys(LANGUAGES).join(', ')}`,
    );
  return speaking(language, () => planFor(options, stdin));
}

async function planFor(
  options: ReturnType<typeof readOptions>,
  stdin: Readable,
): Promise<Omit<Outcome, 'exitCode'>> {
  const format = FORMATS[options.format];
  if (!format)
    throw new BadInput(
      `--format "${options.format}" is not known; it is one of: ${Object.keys(FORMATS).join(', ')}`,
    );
  if (
    [options.stock, options.trip, options.settings, ...options.before].filter((file) => file === STDIN)
      .length > 1
  )
    throw new BadInput('Only one of the files can come from standard input.');

  const source = (file: string): Source =>
    file === STDIN ? { name: 'standard input', open: () => stdin } : fileSource(file);
  const settings =
    options.settings === undefined ? defaultSettings() : await readJson(source(options.settings), Settings);
  const trip = await readJson(source(options.trip), Trip);
  const before = await Promise.all(options.before.map((file) => readJson(source(file), Trip)));
  const { stock: shelf, remarks } = await readStock(
    source(options.stock),
    settings.currency,
    trip.startDate,
    options['skip-refused'],
  );
  const stock = leftByAll(before, shelf, (other, left) => planTrip(other, left, settings));
  if (!SEARCHES.includes(options.search))
    throw new BadInput(`--search "${options.search}" is not known; it is one of: ${SEARCHES.join(', ')}`);
  if (options['export-model'] !== undefined) {
    const model = buildMenuModel(buildMenuProblem(trip, stock, settings));
    await writeModel(options['export-model'], writeLp(menuProgram(model), trip.name));
  }
  const { plan, said } = await planned(trip, stock, settings, options.search);
  return {
    output: format(plan, settings),
    errors: [...remarks, ...said].map((remark) => `${remark}\n`).join(''),
  };
}

async function planned(
  trip: Trip,
  stock: Stock,
  settings: Settings,
  search: string,
): Promise<{ plan: TripPlan; said: string[] }> {
  const effort = EFFORTS.find((known) => known === search);
  if (effort === undefined) return { plan: planTrip(trip, stock, settings), said: [] };
  const finder = new MenuFinder(ROOT);
  try {
    const { plan, score, bound, firstExpiredPoints } = await finder.find(trip, stock, settings, { effort });
    const gap = gapShare(score.points, bound);
    const said = `The menu costs ${score.points.toFixed(1)} points; first expired, first out costs ${firstExpiredPoints.toFixed(1)}, and none can cost less than ${bound?.toFixed(1) ?? '?'}${gap === undefined ? '' : ` (${(100 * gap).toFixed(1)} % under it)`}.`;
    return { plan, said: [said] };
  } finally {
    await finder.close();
  }
}

async function writeModel(file: string, text: string): Promise<void> {
  try {
    await writeFile(file, text);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new BadInput(
      `--export-model: "${file}" cannot be written (${reason}); name a file in a folder that is there.`,
    );
  }
}
