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
      readonly kind: 'search' | 'bound';
      readonly problem: MenuProblem;
      readonly effort: Effort;
      readonly start: readonly OpenedAt[];
    }
  | {
      readonly kind: 'explain' | 'weigh';
      readonly problem: MenuProblem;
      readonly opened: readonly OpenedAt[];
    };

/** What it tells while it works: the best menu so far, or a bound that no menu is under. */
export type Report =
  | {
      readonly kind: 'menu';
      readonly done: number;
      readonly points: number;
      readonly opened: readonly OpenedAt[];
    }
  | { readonly kind: 'bound'; readonly points: number; readonly opened?: readonly OpenedAt[] };

/** What could be better than a menu, and others to choose from. */
export type Weighed = {
  readonly oneMore: readonly OneMore[];
  readonly relaxed: readonly Relaxed[];
  readonly others: readonly OtherMenu[];
};
export type Outcome<T extends Task['kind']> = T extends 'explain'
  ? readonly WhyHere[]
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
/** A quick search of more than so many openings (lots at meals) goes without a bound: its relaxation would take many times what the search does (measured). */
const MOST_OPENINGS_TO_BOUND = 40_000;
/** Part of the quick search's work for each rule relaxed and each other menu. */
const WEIGH_SHARE = 0.35;

/** Does a task, reporting as it goes. */
export async function doTask(task: Task, report: (report: Report) => void): Promise<Outcome<Task['kind']>> {
  const model = buildMenuModel(task.problem);
  switch (task.kind) {
    case 'search':
      if (task.effort === 'quick') search(model, task.effort, { seed: 1, start: task.start }, report);
      else {
        const menus = THOROUGH_SEEDS.map((seed) =>
          search(model, task.effort, { seed, start: task.start }, report),
        );
        const merged = mergeMenus(model, menus, await highsSolver(), MERGE_NODES);
        if (merged)
          report({ kind: 'menu', done: 1, points: scoreMenu(model, merged).points, opened: merged });
      }
      return undefined;
    case 'bound': {
      if (task.effort === 'quick' && openingsOf(model) > MOST_OPENINGS_TO_BOUND) return undefined;
      const solver = await highsSolver();
      const bound = boundMenu(model, solver);
      report({ kind: 'bound', ...bound });
      if (task.effort === 'quick') {
        // the relaxation of a small trip is soon solved, and the thread would idle while the other searches
        if (model.slots.length <= SMALL_TRIP) {
          const from = { seed: 2, start: task.start };
          const opened = search(model, task.effort, from, () => undefined);
          report({ kind: 'bound', points: bound.points, opened });
        }
        return undefined;
      }
      const better = boundByTree(model, solver, BOUND_NODES);
      if (better) report({ kind: 'bound', ...better });
      else {
        // too large for the tree, and large models gain most by a search from the relaxation (measured)
        const from = { seed: 1, start: bound.opened, fresh: 1 };
        const opened = search(model, task.effort, from, () => undefined);
        report({ kind: 'bound', points: bound.points, opened });
      }
      return undefined;
    }
    case 'explain':
      return whyHere(model, task.opened);
    case 'weigh': {
      const work = workFor(model, 'quick') * WEIGH_SHARE;
      return {
        oneMore: worthOneMore(model, task.opened),
        relaxed: relaxedRules(model, task.opened, work),
        others: otherMenus(model, task.opened, work),
      };
    }
  }
}

/** At how many meals each lot may be opened, added up. */
const openingsOf = ({ lots }: MenuModel): number =>
  lots.reduce((sum, { most }) => sum + most.filter((pouches) => pouches > 0).length, 0);

/** One search, with its part of the work where an effort has several seeds. */
function search(
  model: MenuModel,
  effort: Effort,
  options: Omit<SearchOptions, 'work'>,
  report: (report: Report) => void,
): readonly OpenedAt[] {
  const parts = effort === 'quick' ? 1 : THOROUGH_SEEDS.length;
  const steps = searchMenu(model, { ...options, work: workFor(model, effort) / parts });
  for (;;) {
    const next = steps.next();
    report({ kind: 'menu', ...next.value, done: (options.seed - 1 + next.value.done) / parts });
    if (next.done) return next.value.opened;
  }
}
