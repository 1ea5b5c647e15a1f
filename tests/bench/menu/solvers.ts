/* Open-source solvers of integer programs on the exported model, each for a minute; what they found is kept by the digest of the model. */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import loadHighs from 'highs';
import type { MenuModel } from '../../../src/lib/planning/menu/menu-model.ts';
import { scoreMenu } from '../../../src/lib/planning/menu/score-menu.ts';
import { menuOf, menuProgram, type MenuProgram } from '../../../src/lib/planning/optimiser/menu-program.ts';
import { writeLp } from '../../../src/lib/planning/optimiser/write-lp.ts';

const SECONDS = 60;
const KEPT = join(import.meta.dirname, 'solver-results.json');

/** Points of the menus that the solvers found, by our scoring; null where they found none. */
export type SolverPoints = { readonly cbc: number | null; readonly highs: number | null };
type Kept = Record<string, SolverPoints>;

const readKept = (): Kept => JSON.parse(readFileSync(KEPT, 'utf8')) as Kept;

/** What is known of a model, or what is found now if it is asked for. */
export async function solverPoints(
  model: MenuModel,
  name: string,
  runs: boolean,
): Promise<SolverPoints | undefined> {
  const program = menuProgram(model);
  const lp = writeLp(program, name);
  const digest = createHash('sha256').update(lp).digest('hex');
  const known = readKept()[digest];
  if (known || !runs) return known;
  const points = (values: readonly number[] | undefined) =>
    values ? scoreMenu(model, menuOf(model, program, values)).points : null;
  const found = { cbc: points(byCbc(program, lp)), highs: points(await byHighs(program, lp)) };
  writeFileSync(KEPT, `${JSON.stringify({ ...readKept(), [digest]: found }, null, 2)}\n`);
  return found;
}

async function byHighs(program: MenuProgram, lp: string): Promise<number[] | undefined> {
  const highs = await loadHighs();
  const { Columns } = highs.solve(lp, { output_flag: false, time_limit: SECONDS, threads: 1 });
  const values = program.columns.map(({ name }) => {
    const column = Columns[name];
    return column && 'Primal' in column ? column.Primal : 0;
  });
  return values.some((value) => value !== 0) ? values : undefined;
}

function byCbc(program: MenuProgram, lp: string): number[] | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'menu-model-'));
  try {
    writeFileSync(join(folder, 'model.lp'), lp);
    const options = [
      'model.lp',
      'sec',
      String(SECONDS),
      'timeMode',
      'elapsed',
      'solve',
      'solution',
      'found.txt',
    ];
    execFileSync('cbc', options, { cwd: folder, stdio: 'ignore' });
    const lines = readFileSync(join(folder, 'found.txt'), 'utf8').split('\n');
    if (/infeasible|no feasible|no integer/i.test(lines[0] ?? '')) return undefined;
    // a line is a number, a name, a value and a price
    const values = new Map(
      lines.slice(1).flatMap((line) => {
        const [, name = '', value = ''] = line.replace('**', '').trim().split(/\s+/);
        return name === '' ? [] : [[name, Number(value)] as const];
      }),
    );
    return program.columns.map(({ name }) => values.get(name) ?? 0);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
