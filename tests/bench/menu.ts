/*
 * `npm run bench:menu`: how near the best possible the search for menus comes, on seeded instances, and what people get. `-- --short` a few of them within two minutes;
 * `--effort thorough`; `--results FILE` keeps the outcomes there, and takes those that it has; `--solvers` runs the open-source solvers on models that they have not
 * seen, a minute each; words choose the instances whose name holds one of them. Each instance is searched in a process of its own, whose memory is read at its end.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { highsPrograms } from '../../src/lib/menu-search/highs-program.ts';
import { layByExpiry } from '../../src/lib/planning/menu/lay-by-expiry.ts';
import { buildMenuModel } from '../../src/lib/planning/menu/menu-model.ts';
import { brokenRules, scoreMenu } from '../../src/lib/planning/menu/score-menu.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { EFFORTS, searchMenu, type Effort } from '../../src/lib/planning/optimiser/search-menu.ts';
import { buildMenuProblem } from '../../src/lib/planning/plan-trip.ts';
import { caseName, MENU_CASES, menuInstance, sizeName, type MenuCase } from './menu-instances.ts';
import { peopleFigures, type PeopleFigures } from './menu/people-figures.ts';
import { unavoidableShortage } from './menu/shortage.ts';
import { solverPoints } from './menu/solvers.ts';

/** Menus of the model before tables were laid, on the same instances: what people got of them. */
const FORMER = JSON.parse(readFileSync(new URL('menu/former-menus.json', import.meta.url), 'utf8')) as Record<
  string,
  Pick<PeopleFigures, 'portions' | 'oddPortions' | 'crumbs' | 'grams' | 'eatenKcal' | 'leftOverKcal'>
>;

/** What a search of one instance came to. */
type Outcome = {
  readonly points: number;
  /** None where the search ended before it had one. */
  readonly bound: number | null;
  readonly firstExpired: number;
  /** Points that no menu avoids, however food could be shared. */
  readonly shortage: number;
  /** Of the processor, the start of the program included. */
  readonly seconds: number;
  readonly memoryMb: number;
  readonly figures: PeopleFigures;
};

async function searchOne(of: MenuCase, effort: Effort): Promise<Outcome> {
  const { trip, stock } = menuInstance(of);
  const model = buildMenuModel(buildMenuProblem(trip, stock, defaultSettings()));
  const open = await highsPrograms();
  const steps = searchMenu(model, open, { effort });
  let next = steps.next();
  while (!next.done) next = steps.next();
  const used = process.cpuUsage();
  const seconds = (used.user + used.system) / 1e6;
  const memoryMb = process.resourceUsage().maxRSS / 1000;
  const { menu, bound } = next.value;
  const broken = brokenRules(model, menu);
  if (broken.length > 0) throw new Error(`${caseName(of)}: breaks ${JSON.stringify(broken[0])}`);
  return {
    points: scoreMenu(model, menu).points,
    bound: Number.isFinite(bound) ? bound : null,
    firstExpired: scoreMenu(model, layByExpiry(model)).points,
    shortage: unavoidableShortage(model, open),
    seconds,
    memoryMb,
    figures: peopleFigures(model, menu),
  };
}

const SHORT = [
  '2×3×30 #1 ',
  '2×3×30 #4 ',
  '2×3×30 #7 ',
  '4×5×60 #1 ',
  '4×5×60 #4 ',
  '4×5×60 #6 ',
  '6×10×200 #2 ',
  '6×10×200 #8 ',
];
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    short: { type: 'boolean', default: false },
    effort: { type: 'string', default: 'quick' },
    one: { type: 'string' },
    results: { type: 'string' },
    solvers: { type: 'boolean', default: false },
  },
});
const effort = EFFORTS.find((own) => own === values.effort);
if (!effort) throw new Error(`--effort is one of ${EFFORTS.join(', ')}`);

const known: Record<string, Outcome> =
  values.results !== undefined && existsSync(values.results)
    ? (JSON.parse(readFileSync(values.results, 'utf8')) as Record<string, Outcome>)
    : {};

function outcomeOf(of: MenuCase, effort: Effort): Outcome {
  const key = `${effort} ${caseName(of)}`;
  const script = [import.meta.filename, '--one', String(MENU_CASES.indexOf(of)), '--effort', effort];
  const outcome =
    known[key] ?? (JSON.parse(execFileSync(process.execPath, script, { encoding: 'utf8' })) as Outcome);
  known[key] = outcome;
  if (values.results !== undefined) writeFileSync(values.results, JSON.stringify(known));
  return outcome;
}

const median = (of: readonly number[]) =>
  of.toSorted((a, b) => a - b)[Math.floor((of.length - 1) / 2)] ?? NaN;
const percent = (value: number) => `${(100 * value).toFixed(1)} %`;
/** A search that was ended before it had a bound is bounded by what no menu avoids. */
const boundOf = ({ bound, shortage }: Outcome) => Math.max(bound ?? -Infinity, shortage);
const gapOf = (of: Outcome) =>
  of.points - boundOf(of) <= 1e-6 ? 0 : (of.points - boundOf(of)) / (of.points - of.shortage);
const perDay = (of: Outcome) => (of.points - boundOf(of)) / of.figures.personDays;

const SUMMARY = ['size', 'median gap', 'worst', 'worst day', 'median time', 'longest', 'memory at most'];
const HEADINGS = [
  'instance',
  ...['points', 'bound', 'shortage', 'gap', 'a day', 'time', 'MB', 'solvers'],
  ...[
    'dishes',
    'off plan',
    'without',
    'short days',
    'kinds',
    'repeats',
    'kg',
    'left, kcal',
    'before: kg',
    'left',
    'odd, crumbs',
  ],
];
const tableRow = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;

/** What is printed of an instance. No portion is odd, none a crumb, and no plate has two main dishes, or it is said. */
async function rowOf(of: MenuCase, outcome: Outcome): Promise<string[]> {
  const { figures, points, shortage, seconds, memoryMb } = outcome;
  const { trip, stock } = menuInstance(of);
  const model = buildMenuModel(buildMenuProblem(trip, stock, defaultSettings()));
  const theirs = await solverPoints(model, caseName(of), values.solvers);
  const best = theirs && Math.min(theirs.cbc ?? Infinity, theirs.highs ?? Infinity);
  const former = FORMER[caseName(of)];
  const isOdd = figures.oddPortions + figures.crumbs + figures.fullPlates > 0;
  return [
    caseName(of) +
      (isOdd ? ` **${figures.oddPortions} odd, ${figures.crumbs} crumbs, ${figures.fullPlates} full**` : ''),
    points.toFixed(2),
    boundOf(outcome).toFixed(2),
    shortage.toFixed(0),
    percent(gapOf(outcome)),
    perDay(outcome).toFixed(2),
    seconds.toFixed(1),
    memoryMb.toFixed(0),
    best === undefined ? '' : Number.isFinite(best) ? best.toFixed(2) : 'none',
    (figures.dishes / Math.max(1, figures.tables)).toFixed(2),
    percent(figures.offPlan / Math.max(1, figures.plates)),
    String(figures.without),
    `${figures.shortDays} of ${figures.personDays}`,
    `${figures.mostExtras} + ${figures.mostDrinks}`,
    String(figures.repeats),
    (figures.grams / 1000).toFixed(1),
    figures.leftOverKcal.toFixed(0),
    former ? (former.grams / 1000).toFixed(1) : '',
    former ? former.leftOverKcal.toFixed(0) : '',
    former ? `${former.oddPortions}, ${former.crumbs}` : '',
  ];
}

if (values.one !== undefined) {
  const of = MENU_CASES[Number(values.one)];
  if (!of) throw new Error(`there is no instance ${values.one}`);
  console.log(JSON.stringify(await searchOne(of, effort)));
} else {
  const chosen = MENU_CASES.filter((of) => {
    const name = `${caseName(of)} `;
    const words = positionals.length > 0 ? positionals : values.short ? SHORT : [''];
    return words.some((word) => name.includes(word));
  });
  console.log(tableRow(HEADINGS));
  console.log(tableRow(HEADINGS.map((_, at) => (at === 0 ? '---' : '---:'))));
  const outcomes: { of: MenuCase; outcome: Outcome }[] = [];
  for (const of of chosen) {
    const outcome = outcomeOf(of, effort);
    outcomes.push({ of, outcome });
    console.log(tableRow(await rowOf(of, outcome)));
  }
  console.log('');
  console.log(tableRow(SUMMARY));
  console.log(tableRow(SUMMARY.map((_, at) => (at === 0 ? '---' : '---:'))));
  for (const [size, own] of Map.groupBy(outcomes, ({ of }) => sizeName(of))) {
    const sorted = (value: (outcome: Outcome) => number) => own.map(({ outcome }) => value(outcome));
    const [gaps, days, seconds] = [sorted(gapOf), sorted(perDay), sorted(({ seconds }) => seconds)];
    console.log(
      tableRow([
        size,
        percent(median(gaps)),
        percent(Math.max(...gaps)),
        Math.max(...days).toFixed(2),
        `${median(seconds).toFixed(1)} s`,
        `${Math.max(...seconds).toFixed(1)} s`,
        `${Math.max(...sorted(({ memoryMb }) => memoryMb)).toFixed(0)} MB`,
      ]),
    );
  }
}
