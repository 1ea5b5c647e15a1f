/*
 * What general solvers make of the exported model: CBC (Debian's coinor-cbc) and HiGHS (npm), each so many seconds of an instance, one after the other. Their menus are scored by
 * our own scoring, and must break no rule. `node tests/bench/menu-solvers.ts [--seconds 60] [--out FILE] [--only TEXT]`
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { buildMenuModel } from '../../src/lib/planning/optimiser/menu-model.ts';
import { menuProgram, openedBy } from '../../src/lib/planning/optimiser/menu-program.ts';
import { brokenRules, scoreMenu } from '../../src/lib/planning/optimiser/score-menu.ts';
import { writeLp } from '../../src/lib/planning/optimiser/write-lp.ts';
import { poseMenuProblem } from '../../src/lib/planning/pose-menu-problem.ts';
import { caseName, MENU_CASES, menuInstance } from './menu-instances.ts';

/** What a solver reached; no points where it found no menu in time. */
export type Reached = {
  readonly points: number | null;
  readonly bound: number | null;
  readonly seconds: number;
  readonly status: string;
};
export type SolverResults = Record<string, { readonly cbc: Reached | null; readonly highs: Reached | null }>;

const { values: options } = parseArgs({
  options: {
    seconds: { type: 'string', default: '60' },
    out: { type: 'string' },
    only: { type: 'string', default: '' },
  },
});
const seconds = Number(options.seconds);
const folder = mkdtempSync(join(tmpdir(), 'menu-solvers-'));
const results: SolverResults = {};
const hasCbc = spawnSync('cbc', ['-quit']).error === undefined;
if (!hasCbc) console.log('CBC is not installed (apt-get install coinor-cbc), so it is left out.');

for (const menuCase of MENU_CASES) {
  const name = caseName(menuCase);
  if (!name.includes(options.only)) continue;
  const { trip, stock } = menuInstance(menuCase);
  const model = buildMenuModel(poseMenuProblem(trip, stock, defaultSettings()));
  const program = menuProgram(model);
  const file = join(folder, 'model.lp');
  writeFileSync(file, writeLp(program, name));
  const columnOf = new Map(program.columns.map((column, index) => [column.name, index]));
  const scored = (byName: ReadonlyMap<string, number>): number => {
    const values = new Float64Array(program.columns.length);
    for (const [column, value] of byName) {
      const index = columnOf.get(column);
      if (index !== undefined) values[index] = value;
    }
    const opened = openedBy(program, values);
    const broken = brokenRules(model, opened);
    if (broken.length > 0) throw new Error(`${name}: a solver's menu breaks rules: ${broken.join('; ')}`);
    return scoreMenu(model, opened).points;
  };
  const cbc = hasCbc ? byCbc(file, scored) : null;
  const highs = byHighs(file, scored);
  results[name] = { cbc, highs };
  console.log(`${name}: CBC ${words(cbc)}; HiGHS ${words(highs)}`);
  if (options.out) writeFileSync(options.out, `${JSON.stringify(results, null, 1)}\n`);
}
rmSync(folder, { recursive: true });

function words(reached: Reached | null): string {
  return reached
    ? `${reached.points?.toFixed(2) ?? 'none'} (${reached.status}, bound ${reached.bound?.toFixed(2) ?? 'none'}, ${reached.seconds.toFixed(1)} s)`
    : 'left out';
}

function byCbc(file: string, scored: (values: ReadonlyMap<string, number>) => number): Reached {
  const solution = join(folder, 'cbc.txt');
  rmSync(solution, { force: true });
  const startedAt = performance.now();
  const run = spawnSync(
    'cbc',
    [file, 'timeMode', 'elapsed', 'sec', String(seconds), 'solve', 'solu', solution],
    {
      encoding: 'utf8',
      maxBuffer: 1 << 28,
    },
  );
  const took = (performance.now() - startedAt) / 1000;
  const bound = /Lower bound:\s+([-\d.e+]+)/.exec(run.stdout)?.[1];
  const lines = readFileSync(solution, 'utf8').split('\n');
  const status = (lines[0] ?? '').split(' - ')[0] ?? '';
  const values = new Map(
    lines.slice(1).flatMap((line): [string, number][] => {
      const [, column, value] = line.replace('**', '').trim().split(/\s+/);
      return column && value ? [[column, Number(value)]] : [];
    }),
  );
  const hasMenu = !/no integer solution|infeasible/i.test(lines[0] ?? '') && values.size > 0;
  const points = hasMenu ? scored(values) : null;
  const isOptimal = status.startsWith('Optimal');
  return {
    points,
    bound: isOptimal ? points : bound === undefined ? null : Number(bound),
    seconds: took,
    status,
  };
}

/** In a process of its own, since a call to HiGHS cannot be broken off. */
function byHighs(file: string, scored: (values: ReadonlyMap<string, number>) => number): Reached {
  const code = `
    import { readFileSync } from 'node:fs';
    import load from 'highs';
    const highs = await load();
    const model = highs.createModel({ format: 'lp', data: readFileSync(${JSON.stringify(file)}, 'utf8') });
    model.options.set({ output_flag: false, time_limit: ${seconds} });
    model.run();
    const status = model.getModelStatus();
    const has = model.info.get('primal_solution_status') === 2;
    const columns = has ? [...model.getSolution().colValue].flatMap((value, index) => value === 0 ? [] : [[model.getColName(index), value]]) : [];
    console.log(JSON.stringify({ status: status === 7 ? 'Optimal' : 'Stopped on time', bound: Number(model.info.get('mip_dual_bound')), columns, has }));`;
  const startedAt = performance.now();
  const run = spawnSync(process.execPath, ['--input-type=module', '-e', code], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    timeout: (seconds + 120) * 1000,
  });
  const took = (performance.now() - startedAt) / 1000;
  if (run.status !== 0) return { points: null, bound: null, seconds: took, status: 'Failed' };
  const { status, bound, columns, has } = JSON.parse(run.stdout) as {
    status: string;
    bound: number;
    columns: [string, number][];
    has: boolean;
  };
  return {
    points: has ? scored(new Map(columns)) : null,
    bound: Number.isFinite(bound) ? bound : null,
    seconds: took,
    status,
  };
}
