/*
 * How good the menu search is, and how fast: `npm run bench:menu`. For each of 32 seeded instances, our points and proven gap with the quick and the thorough search, the time to within 1 % of the
 * final points and in all, and what CBC and HiGHS reach on the exported model; then how time and memory grow. Written as Markdown.
 *
 *   --runs N        quick searches of each instance, of which the median time is given (5)
 *   --solvers FILE  what `tests/bench/menu-solvers.ts --out FILE` wrote; left out, it is run now, which takes about 45 minutes
 *   --thorough-up-to N  thorough searches only of instances of up to N lots (200)
 *   --only TEXT     instances whose name holds TEXT
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { gapShare, MenuFinder, type FoundMenu } from '../../src/lib/menu-search/find-menu.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import type { Effort } from '../../src/lib/planning/optimiser/search-menu.ts';
import { caseName, MENU_CASES, menuInstance, type MenuCase } from './menu-instances.ts';
import type { SolverResults } from './menu-solvers.ts';

const { values: options } = parseArgs({
  options: {
    runs: { type: 'string', default: '5' },
    solvers: { type: 'string' },
    'thorough-up-to': { type: 'string', default: '200' },
    only: { type: 'string', default: '' },
    point: { type: 'string' },
  },
});
const settings = defaultSettings();
const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;
const sizeOf = ({ eaters, days, lots }: MenuCase): string => `${eaters}×${days}×${lots}`;
/** Points that differ by no more than this share are the same: solvers stop within as much. */
const SAME = 1e-4;

type Timed = { readonly found: FoundMenu; readonly nearMs: number };

async function timed(finder: MenuFinder, menuCase: MenuCase, effort: Effort): Promise<Timed> {
  const { trip, stock } = menuInstance(menuCase);
  const seen: { points: number; elapsedMs: number }[] = [];
  const found = await finder.find(trip, stock, settings, { effort, progress: (at) => seen.push(at) });
  const nearMs = seen.find(({ points }) => points <= found.score.points * 1.01)?.elapsedMs ?? found.elapsedMs;
  return { found, nearMs };
}

if (options.point) await measurePoint(JSON.parse(options.point) as MenuCase);
else await measureAll();

/** One point of the scaling, in a process of its own, so that its memory is its own. */
async function measurePoint(menuCase: MenuCase): Promise<void> {
  const finder = new MenuFinder();
  const times: number[] = [];
  for (let run = 0; run < 3; run++) times.push((await timed(finder, menuCase, 'quick')).found.elapsedMs);
  await finder.close();
  console.log(JSON.stringify({ ms: median(times), mb: process.resourceUsage().maxRSS / 1024 }));
}

async function measureAll(): Promise<void> {
  const solvers = solverResults();
  const cases = MENU_CASES.filter((menuCase) => caseName(menuCase).includes(options.only));
  const finder = new MenuFinder();
  const warm = cases[0];
  if (warm) await timed(finder, warm, 'quick');

  const rows: string[] = [];
  const bySize = new Map<
    string,
    { ms: number[]; quickGap: number[]; gap: number[]; won: number; of: number; wonQuick: number }
  >();
  for (const menuCase of cases) {
    const name = caseName(menuCase);
    const runs: Timed[] = [];
    for (let run = 0; run < Number(options.runs); run++) runs.push(await timed(finder, menuCase, 'quick'));
    const quick = runs[0]?.found;
    if (!quick) continue;
    const thorough =
      menuCase.lots <= Number(options['thorough-up-to'])
        ? (await timed(finder, menuCase, 'thorough')).found
        : undefined;
    const ours = Math.min(quick.score.points, thorough?.score.points ?? Infinity);
    const bound = Math.max(quick.bound ?? 0, thorough?.bound ?? 0);
    const { cbc, highs } = solvers[name] ?? { cbc: null, highs: null };
    const theirs = Math.min(cbc?.points ?? Infinity, highs?.points ?? Infinity);
    const quickMs = median(runs.map(({ found }) => found.elapsedMs));
    const share = (gap: number | undefined) => (gap === undefined ? '' : `${(100 * gap).toFixed(1)} %`);
    const ratio = theirs === Infinity ? 'no menu of theirs' : (ours / theirs).toFixed(4);
    rows.push(
      `| ${name} | ${quick.firstExpiredPoints.toFixed(1)} | ${quick.score.points.toFixed(2)} | ${share(gapShare(quick.score.points, quick.bound))} | ${(median(runs.map(({ nearMs }) => nearMs)) / 1000).toFixed(2)} | ${(quickMs / 1000).toFixed(2)} | ${thorough ? thorough.score.points.toFixed(2) : ''} | ${thorough ? share(gapShare(ours, bound)) : ''} | ${thorough ? (thorough.elapsedMs / 1000).toFixed(1) : ''} | ${cbc?.points?.toFixed(2) ?? 'none'} | ${highs?.points?.toFixed(2) ?? 'none'} | ${ratio}${ours <= theirs * (1 + SAME) ? '' : ' **missed**'} |`,
    );
    console.error(rows.at(-1));
    const size = bySize.get(sizeOf(menuCase)) ?? {
      ms: [],
      quickGap: [],
      gap: [],
      won: 0,
      wonQuick: 0,
      of: 0,
    };
    bySize.set(sizeOf(menuCase), size);
    size.ms.push(quickMs);
    size.quickGap.push(gapShare(quick.score.points, quick.bound) ?? 1);
    size.gap.push(gapShare(ours, bound) ?? 1);
    size.of += 1;
    if (ours <= theirs * (1 + SAME)) size.won += 1;
    if (quick.score.points <= theirs * (1 + SAME)) size.wonQuick += 1;
  }
  await finder.close();

  const all = [...bySize.values()];
  const gaps = (key: 'gap' | 'quickGap') => median(all.flatMap((size) => size[key]));
  console.log(
    [
      `${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown processor'}, Node ${process.versions.node}; most memory ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB.`,
      '',
      '| instance | first expired | quick | gap | s to 1 % | s | thorough | gap | s | CBC | HiGHS | ours / theirs |',
      '|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|',
      ...rows,
      '',
      '| size | slowest median of a quick search, s | median gap, quick | median gap, best of both | no worse than CBC and HiGHS: quick | best of both |',
      '|---|--:|--:|--:|--:|--:|',
      ...[...bySize].map(
        ([size, { ms, quickGap, gap, won, wonQuick, of }]) =>
          `| ${size} | ${(Math.max(...ms) / 1000).toFixed(2)} | ${(100 * median(quickGap)).toFixed(1)} % | ${(100 * median(gap)).toFixed(1)} % | ${wonQuick} of ${of} | ${won} of ${of} |`,
      ),
      '',
      `Median proven gap of all: quick ${(100 * gaps('quickGap')).toFixed(1)} %, best of both ${(100 * gaps('gap')).toFixed(1)} %.`,
      '',
      ...(options.only ? [] : scaling()),
    ].join('\n'),
  );
}

function solverResults(): SolverResults {
  let file = options.solvers;
  if (file === undefined) {
    file = join(mkdtempSync(join(tmpdir(), 'bench-menu-')), 'solvers.json');
    spawnSync(
      process.execPath,
      [join(import.meta.dirname, 'menu-solvers.ts'), '--out', file, '--only', options.only],
      {
        stdio: ['ignore', 'inherit', 'inherit'],
      },
    );
  }
  return JSON.parse(readFileSync(file, 'utf8')) as SolverResults;
}

/** Time and memory against one measure at a time, the others at 6 eaters, 7 days, 120 lots; and the exponent of the power law through them, by least squares of the logarithms. */
function scaling(): string[] {
  const middle = {
    eaters: 6,
    days: 7,
    lots: 120,
    seed: 1,
    shelf: 'mixed',
    exclusions: true,
    dryCamps: true,
  } as const;
  const lines = [
    '| measure | values | s of a quick search | exponent | MB | exponent |',
    '|---|---|---|--:|---|--:|',
  ];
  const along = { eaters: [2, 4, 8, 16], days: [3, 6, 12, 24], lots: [40, 80, 160, 320, 640] } as const;
  for (const [measure, values] of Object.entries(along)) {
    const points = values.map((value) => {
      const run = spawnSync(
        process.execPath,
        [import.meta.filename, '--point', JSON.stringify({ ...middle, [measure]: value })],
        {
          encoding: 'utf8',
        },
      );
      return { value, ...(JSON.parse(run.stdout) as { ms: number; mb: number }) };
    });
    const list = (of: (point: (typeof points)[number]) => string) => points.map(of).join(', ');
    lines.push(
      `| ${measure} | ${list(({ value }) => String(value))} | ${list(({ ms }) => (ms / 1000).toFixed(2))} | ${exponent(points.map(({ value, ms }) => [value, ms])).toFixed(2)} | ${list(({ mb }) => mb.toFixed(0))} | ${exponent(points.map(({ value, mb }) => [value, mb])).toFixed(2)} |`,
    );
  }
  return lines;
}

function exponent(points: readonly (readonly [number, number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (at: 0 | 1) => logs.reduce((sum, log) => sum + log[at], 0) / logs.length;
  const [meanX, meanY] = [mean(0), mean(1)];
  const over = logs.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  return over / logs.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
}
