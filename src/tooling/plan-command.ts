import path from 'node:path';
import type { Readable } from 'node:stream';
import { parseArgs } from 'node:util';
import { defaultSettings, Settings } from '../lib/planning/model/settings.ts';
import type { TripPlan } from '../lib/planning/model/trip-plan.ts';
import { Trip } from '../lib/planning/model/trip.ts';
import { planTrip } from '../lib/planning/plan-trip.ts';
import { cardText } from './card-text.ts';
import { planText } from './plan-text.ts';
import { BadInput, fileSource, readJson, readStock, type Source } from './read-inputs.ts';
import { ROOT } from './run.ts';

const HELP = `Plans a trip from a shelf of pouches.

  npm run --silent plan -- [--stock FILE.csv] [--trip FILE.json] [--settings FILE.json]
                           [--format json|text|card] [--skip-refused]

  --stock         the shelf, a CSV file; left out: the demo shelf
  --trip          the trip, as docs/schema/trip.json describes; left out: the demo trip
  --settings      as docs/schema/settings.json describes; what is left out takes its usual value
  --format        json: the whole plan, as docs/schema/trip-plan.json describes (this is the usual one)
                  text: to read;  card: the trail card
  --skip-refused  plan without the rows of the shelf that cannot be taken in
  --help          this text

One of the files may be - for standard input. Exit code 0: planned; 2: an input cannot be used, and standard error says why.
`;

const STDIN = '-';

const FORMATS: Readonly<Record<string, (plan: TripPlan, settings: Settings) => string>> = {
  json: (plan) => `${JSON.stringify(plan, null, 2)}\n`,
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
        settings: { type: 'string' },
        format: { type: 'string', default: 'json' },
        'skip-refused': { type: 'boolean', default: false },
        help: { type: 'boolean', default: false },
      },
    }).values;
  } catch (error) {
    throw new BadInput(`${error instanceof Error ? error.message : String(error)} See --help.`);
  }
}

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
  const format = FORMATS[options.format];
  if (!format)
    throw new BadInput(
      `--format "${options.format}" is not known; it is one of: ${Object.keys(FORMATS).join(', ')}`,
    );
  if ([options.stock, options.trip, options.settings].filter((file) => file === STDIN).length > 1)
    throw new BadInput('Only one of the files can come from standard input.');

  const source = (file: string): Source =>
    file === STDIN ? { name: 'standard input', open: () => stdin } : fileSource(file);
  const settings =
    options.settings === undefined ? defaultSettings() : await readJson(source(options.settings), Settings);
  const trip = await readJson(source(options.trip), Trip);
  const { stock, remarks } = await readStock(
    source(options.stock),
    settings.currency,
    options['skip-refused'],
  );
  return {
    output: format(planTrip(trip, stock, settings), settings),
    errors: remarks.map((remark) => `${remark}\n`).join(''),
  };
}
