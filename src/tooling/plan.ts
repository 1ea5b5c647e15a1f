/* `npm run --silent plan`: plans a trip from files and writes the plan to standard output. */
import path from 'node:path';
import { parseArgs } from 'node:util';
import { defaultSettings, Settings } from '../lib/planning/model/settings.ts';
import type { TripPlan } from '../lib/planning/model/trip-plan.ts';
import { Trip } from '../lib/planning/model/trip.ts';
import { planTrip } from '../lib/planning/plan-trip.ts';
import { cardText } from './card-text.ts';
import { planText } from './plan-text.ts';
import { BadInput, readJson, readStock, STDIN } from './read-inputs.ts';
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

const FORMATS: Readonly<Record<string, (plan: TripPlan, settings: Settings) => string>> = {
  json: (plan) => `${JSON.stringify(plan, null, 2)}\n`,
  text: (plan, { unitSystem }) => planText(plan, unitSystem),
  card: (plan, { unitSystem }) => cardText(plan, unitSystem),
};

function readOptions() {
  try {
    return parseArgs({
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

async function main(): Promise<string> {
  const options = readOptions();
  if (options.help) return HELP;
  const format = FORMATS[options.format];
  if (!format)
    throw new BadInput(
      `--format "${options.format}" is not known; it is one of: ${Object.keys(FORMATS).join(', ')}`,
    );
  if ([options.stock, options.trip, options.settings].filter((file) => file === STDIN).length > 1)
    throw new BadInput('Only one of the files can come from standard input.');

  const settings =
    options.settings === undefined ? defaultSettings() : await readJson(options.settings, Settings);
  const trip = await readJson(options.trip, Trip);
  const { stock, remarks } = await readStock(options.stock, settings.currency, options['skip-refused']);
  for (const remark of remarks) console.error(remark);
  return format(planTrip(trip, stock, settings), settings);
}

try {
  process.stdout.write(await main());
} catch (error) {
  if (!(error instanceof BadInput)) throw error;
  console.error(error.message);
  process.exitCode = 2;
}
