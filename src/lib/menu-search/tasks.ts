import type { MenuProblem } from '../planning/menu/menu-problem.ts';
import { boundByTree, boundMenu } from '../planning/optimiser/bound-menu.ts';
import {
  relaxedRules,
  whyHere,
  worthOneMore,
  type OneMore,
  type Relaxed,
  type WhyHere,
} from '../planning/optimiser/explain-menu.ts';
import { buildMenuModel, type MenuModel, type OpenedAt } from '../planning/optimiser/menu-model.ts';
import { mergeMenus } from '../planning/optimiser/merge-menus.ts';
import { otherMenus, type OtherMenu } from '../planning/optimiser/other-menus.ts';
import { scoreMenu } from '../planning/optimiser/score-menu.ts';
import { searchMenu, workFor, type Effort, type SearchOptions } from '../planning/optimiser/search-menu.ts';
import { highsSolver } from './highs-solver.ts';

/** What a worker can be asked. A problem is plain data, so each worker builds the model for itself. */
export type Task =
  | {
      readonly kind: 'search';
      readonly problem: MenuProblem;
      readonly effort: Effort;
      readonly start: readonly OpenedAt[];
    }
  | {
      readonly kind: 'bound';
      readonly problem: MenuProblem;
      readonly effort: Effort;
      readonly start: readonly OpenedAt[];
    }
  | { readonly kind: 'explain'; readonly problem: MenuProblem; readonly opened: readonly OpenedAt[] }
  | { readonly kind: 'weigh'; readonly problem: MenuProblem; readonly opened: readonly OpenedAt[] };

/** What it tells while it works: the best menu so far, or a bound that no menu is under. */
export type Report =
  | {
      readonly kind: 'menu';
      readonly done: number;
      readonly points: number;
      readonly opened: readonly OpenedAt[];
    }
  | { readonly kind: 'bound'; readonly points: number; readonly opened?: readonly OpenedAt[] };

export type Explained = { readonly why: readonly WhyHere[]; readonly oneMore: readonly OneMore[] };
export type Weighed = { readonly relaxed: readonly Relaxed[]; readonly others: readonly OtherMenu[] };
export type Outcome<T extends Task['kind']> = T extends 'explain'
  ? Explained
  : T extends 'weigh'
    ? Weighed
    : undefined;

/** Up to this many meals, a quick search looks from two seeds at once. */
const SMALL_TRIP = 24;
/** A thorough search starts so often afresh, and then merges what it found. */
const THOROUGH_SEEDS = [1, 2, 3, 4];
const MERGE_NODES = 100;
/** Nodes of the tree that a thorough bound looks at; the root, with its cuts, gives most of it (measured). */
const BOUND_NODES = 40;
/** Part of the quick search's work for each rule relaxed and each other menu. */
const WEIGH_SHARE = 0.35;

/** Does a task, reporting as it goes. */
export async function doTask(
  task: Task,
  report: (report: Report) => void,
): Promise<Explained | Weighed | undefined> {
  const model = buildMenuModel(task.problem);
  switch (task.kind) {
    case 'search':
      if (task.effort === 'quick') search(model, task, 1, report);
      else {
        const menus = THOROUGH_SEEDS.map((seed) => search(model, task, seed, report));
        const merged = mergeMenus(model, menus, await highsSolver(), MERGE_NODES);
        if (merged)
          report({ kind: 'menu', done: 1, points: scoreMenu(model, merged).points, opened: merged });
      }
      return undefined;
    case 'bound': {
      const solver = await highsSolver();
      const bound = boundMenu(model, solver);
      report({ kind: 'bound', ...bound });
      if (task.effort === 'quick') {
        // the relaxation of a small trip is soon solved, and the thread would idle while the other searches
        if (model.slots.length <= SMALL_TRIP) {
          const opened = search(model, { effort: 'quick', start: task.start }, 2, () => undefined);
          report({ kind: 'bound', points: bound.points, opened });
        }
        return undefined;
      }
      const better = boundByTree(model, solver, BOUND_NODES);
      if (better) report({ kind: 'bound', ...better });
      else {
        // too large for the tree, and large models gain most by a search from the relaxation (measured)
        const from = { effort: task.effort, start: bound.opened, fresh: 1 };
        const opened = search(model, from, 1, () => undefined);
        report({ kind: 'bound', points: bound.points, opened });
      }
      return undefined;
    }
    case 'explain':
      return { why: whyHere(model, task.opened), oneMore: worthOneMore(model, task.opened) };
    case 'weigh': {
      const work = workFor(model, 'quick') * WEIGH_SHARE;
      return {
        relaxed: ended(relaxedRules(model, task.opened, work)),
        others: ended(otherMenus(model, task.opened, work)),
      };
    }
  }
}

/** One search from the task's start; with several seeds, each has its part of the work. */
function search(
  model: MenuModel,
  { effort, start, fresh }: Pick<SearchOptions, 'start' | 'fresh'> & { readonly effort: Effort },
  seed: number,
  report: (report: Report) => void,
): readonly OpenedAt[] {
  const parts = effort === 'quick' ? 1 : THOROUGH_SEEDS.length;
  const steps = searchMenu(model, {
    seed,
    work: workFor(model, effort) / parts,
    start,
    ...(fresh === undefined ? {} : { fresh }),
  });
  for (;;) {
    const next = steps.next();
    report({
      kind: 'menu',
      ...next.value,
      done: parts === 1 ? next.value.done : (seed - 1 + next.value.done) / parts,
    });
    if (next.done) return next.value.opened;
  }
}

function ended<T>(steps: Generator<void, T>): T {
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
  }
}
