import { buildMenuModel } from '../planning/menu/menu-model.ts';
import type { MenuProblem } from '../planning/menu/menu-problem.ts';
import type { ModelMenu } from '../planning/menu/menu-state.ts';
import {
  reasonsOf,
  relaxedRules,
  worthOneMore,
  type DishReason,
  type OneMore,
  type RelaxedRule,
} from '../planning/optimiser/explain-menu.ts';
import { otherMenus, type OtherMenu } from '../planning/optimiser/other-menus.ts';
import { searchMenu, workOf, type Effort } from '../planning/optimiser/search-menu.ts';
import { highsPrograms } from './highs-program.ts';

/** What a worker can be asked. A problem is plain data, so each worker builds the model for itself. */
export type Task =
  | {
      readonly kind: 'search';
      readonly problem: MenuProblem;
      readonly effort: Effort;
      readonly seed: number;
      readonly starts: readonly ModelMenu[];
    }
  | { readonly kind: 'explain' | 'weigh'; readonly problem: MenuProblem; readonly menu: ModelMenu };

/** What it tells while it works: the best menu so far, and what no menu is under, points. */
export type Report = {
  readonly done: number;
  readonly points: number;
  readonly bound: number;
  readonly menu: ModelMenu;
};

/** What could be better than a menu, and others to choose from. */
export type Weighed = {
  readonly oneMore: readonly OneMore[];
  readonly relaxed: readonly RelaxedRule[];
  readonly others: readonly OtherMenu[];
};
export type Outcome<T extends Task['kind']> = T extends 'explain'
  ? readonly DishReason[]
  : T extends 'weigh'
    ? Weighed
    : undefined;

/** Part of the quick search's work for each rule relaxed and each other menu. */
const WEIGH_SHARE = 0.12;

/** Does a task, reporting as it goes. */
export async function doTask(task: Task, report: (report: Report) => void): Promise<Outcome<Task['kind']>> {
  const model = buildMenuModel(task.problem);
  switch (task.kind) {
    case 'search': {
      const { effort, seed, starts } = task;
      const steps = searchMenu(model, await highsPrograms(), { effort, seed, starts });
      for (;;) {
        const next = steps.next();
        report(next.value);
        if (next.done) return undefined;
      }
    }
    case 'explain':
      return reasonsOf(model, task.menu);
    case 'weigh': {
      const open = await highsPrograms();
      const work = workOf(model, 'quick') * WEIGH_SHARE;
      return {
        oneMore: worthOneMore(model, task.menu),
        relaxed: relaxedRules(task.problem, model, task.menu, open, work),
        others: otherMenus(task.problem, model, task.menu, open, work),
      };
    }
  }
}
