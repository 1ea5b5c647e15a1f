/*
 * `npm run bench:menu`: how near the best possible the search for menus comes, on seeded instances, and what people get. `-- --short` a few of them within two minutes;
 * `--effort thorough`; `--results FILE` keeps the outcomes there, and takes those that it has; words choose the instances whose name holds one of them. Each instance is searched in a process of its own, whose memory is read at its end.
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
import { caseName, MENU_CASES, menuInstance, type MenuCase } from './menu-instances.ts';
import { peopleFigures, type PeopleFigures } from './menu/people-figures.ts';
import { unavoidableShortage } from './menu/shortage.ts';

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
  const outcomes = chosen.map((of) => {
    const outcome = outcomeOf(of, effort);
    const { figures, points, shortage, seconds, memoryMb } = outcome;
    const bound = boundOf(outcome);
    console.log(
      [
        caseName(of).padEnd(78),
        points.toFixed(2).padStart(10),
        bound.toFixed(2).padStart(10),
        shortage.toFixed(0).padStart(8),
        percent(gapOf(outcome)).padStart(8),
        perDay(outcome).toFixed(2).padStart(6),
        `${seconds.toFixed(1)} s`.padStart(8),
        `${memoryMb.toFixed(0)} MB`.padStart(8),
        `odd ${figures.oddPortions} crumbs ${figures.crumbs} full ${figures.fullPlates}`,
        `dishes ${(figures.dishes / Math.max(1, figures.tables)).toFixed(2)}`,
        `off ${percent(figures.offPlan / Math.max(1, figures.plates))} without ${figures.without}`,
        `short ${figures.shortDays}/${figures.personDays}`,
        `kinds ${figures.mostExtras}+${figures.mostDrinks} repeats ${figures.repeats}`,
        `${(figures.grams / 1000).toFixed(1)} kg left ${figures.leftOverKcal.toFixed(0)} kcal`,
      ].join(' '),
    );
    return { of, outcome };
  });
  for (const [size, own] of Map.groupBy(outcomes, ({ of }) => `${of.eaters}×${of.days}×${of.lots}`)) {
    const gaps = own.map(({ outcome }) => gapOf(outcome));
    const days = own.map(({ outcome }) => perDay(outcome));
    const seconds = own.map(({ outcome }) => outcome.seconds);
    console.log(
      `${size}: gap median ${percent(median(gaps))}, worst ${percent(Math.max(...gaps))}; a person and day ${Math.max(...days).toFixed(2)}; seconds median ${median(seconds).toFixed(1)}, most ${Math.max(...seconds).toFixed(1)}; most MB ${Math.max(...own.map(({ outcome }) => outcome.memoryMb)).toFixed(0)}`,
    );
  }
}
