import { keepMenu, forgetUnlocked } from '../planning/menu/edit-menu.ts';
import { firstExpired } from '../planning/menu/first-expired.ts';
import { writtenWhy } from '../planning/menu/why.ts';
import type { MenuPlanner, MenuProblem } from '../planning/menu/menu-problem.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import type { WhyHere } from '../planning/optimiser/explain-menu.ts';
import { buildMenuModel, type MenuModel, type OpenedAt } from '../planning/optimiser/menu-model.ts';
import { chosenMenu, fromModel, toModel } from '../planning/optimiser/place-menu.ts';
import { brokenRules, scoreMenu, type MenuScore } from '../planning/optimiser/score-menu.ts';
import type { Effort } from '../planning/optimiser/search-menu.ts';
import { whyText } from '../planning/optimiser/why-text.ts';
import { planTrip, SETTLED_KCAL, targetChangeKcal } from '../planning/plan-trip.ts';
import { poseMenuProblem } from '../planning/pose-menu-problem.ts';
import { TaskRunner, usualRoot } from './task-runner.ts';
import type { Report, Weighed } from './tasks.ts';

export type SearchProgress = {
  /** Share of the search's budget used. */
  readonly done: number;
  /** The best so far, points. */
  readonly points: number;
  /** What no menu is under, points, once known. */
  readonly bound: number | undefined;
  readonly elapsedMs: number;
};

/** What was found: the trip with its menu listed, and how good it is. */
export type FoundMenu = {
  readonly trip: Trip;
  readonly plan: TripPlan;
  readonly problem: MenuProblem;
  readonly opened: readonly OpenedAt[];
  readonly score: MenuScore;
  /** What no menu is under, points; undefined where the search was stopped before it was known. */
  readonly bound: number | undefined;
  /** The points of first expired, first out, for comparison. */
  readonly firstExpiredPoints: number;
  readonly stopped: boolean;
  readonly elapsedMs: number;
};

export type FindOptions = {
  readonly effort: Effort;
  readonly progress?: (progress: SearchProgress) => void;
  /** Stops with the best so far. */
  readonly signal?: AbortSignal;
};

type Best = { readonly opened: readonly OpenedAt[]; readonly bound: number | undefined };

/** Where the loads move the needs, the menu is looked for again with the new ones, at most so often. */
const MOST_ROUNDS = 3;

/** How much worse than the best possible a menu may be, as a share of its points; undefined without a bound. */
export function gapShare(points: number, bound: number | undefined): number | undefined {
  if (bound === undefined) return undefined;
  return points <= 1e-9 ? 0 : Math.max(0, (points - bound) / points);
}

/** Looks for menus in two threads, one for the search and one for the bound. */
export class MenuFinder {
  readonly #search: TaskRunner;
  readonly #bound: TaskRunner;

  /** @param root the folder that holds the project, from whose source the threads run */
  constructor(root: string = usualRoot()) {
    this.#search = new TaskRunner(root);
    this.#bound = new TaskRunner(root);
  }

  /**
   * Plans the meals that are not locked anew, from the better of first expired, first out and the menu that the trip lists: it is worse than neither.
   * The same input gives the same menu, unless it is stopped.
   */
  async find(trip: Trip, stock: Stock, settings: Settings, options: FindOptions): Promise<FoundMenu> {
    const startedAt = performance.now();
    const elapsedMs = () => performance.now() - startedAt;
    const open = forgetUnlocked(trip);
    let problem = poseMenuProblem(open, stock, settings);
    let model = buildMenuModel(problem);
    let start = bestStart(model, [firstExpiredMenu(model, problem), toModel(model, trip.menu)]);
    let best: Best = { opened: start, bound: undefined };

    for (let round = 0; round < MOST_ROUNDS; round++) {
      best = await this.#round(problem, model, start, options, elapsedMs);
      if (options.signal?.aborted) break;
      const moved = poseMenuProblem(open, stock, settings, plannerOf(model, best.opened));
      if (targetChangeKcal(problem.demand, moved.demand) <= SETTLED_KCAL) break;
      problem = moved;
      const next = buildMenuModel(problem);
      start = bestStart(next, [
        chosenMenu(
          next,
          fromModel(model, best.opened, () => ''),
        ),
      ]);
      model = next;
    }
    const why = await this.#search.run({ kind: 'explain', problem, opened: best.opened }, () => undefined);
    const planner = plannerOf(model, best.opened, why);
    const plan = planTrip(open, stock, settings, planner);
    return {
      trip: plan.totals.pouches > 0 ? keepMenu(open, plan.menu) : open,
      plan,
      problem,
      opened: best.opened,
      score: scoreMenu(model, best.opened),
      bound: best.bound,
      firstExpiredPoints: scoreMenu(model, firstExpiredMenu(model, problem)).points,
      stopped: options.signal?.aborted ?? false,
      elapsedMs: elapsedMs(),
    };
  }

  /** What one more pouch and a relaxed rule would gain, and other menus to choose from. */
  weigh(problem: MenuProblem, opened: readonly OpenedAt[], signal?: AbortSignal): Promise<Weighed> {
    return this.#search.run({ kind: 'weigh', problem, opened }, () => undefined, signal);
  }

  async close(): Promise<void> {
    await Promise.all([this.#search.close(), this.#bound.close()]);
  }

  async #round(
    problem: MenuProblem,
    model: MenuModel,
    start: readonly OpenedAt[],
    { effort, progress, signal }: FindOptions,
    elapsedMs: () => number,
  ): Promise<Best> {
    let best = start;
    let points = scoreMenu(model, start).points;
    let bound: number | undefined;
    let done = 0;
    const onReport = (report: Report) => {
      if (report.kind === 'bound') bound = Math.max(bound ?? -Infinity, report.points);
      else done = report.done;
      if (report.opened) {
        const found = scoreMenu(model, report.opened).points;
        if (found < points - 1e-9) [points, best] = [found, report.opened];
      }
      progress?.({ done, points, bound, elapsedMs: elapsedMs() });
    };
    const tasks = [
      this.#search.run({ kind: 'search', problem, effort, start }, onReport, signal),
      this.#bound.run({ kind: 'bound', problem, effort, start }, onReport, signal),
    ];
    for (const ended of await Promise.allSettled(tasks))
      if (ended.status === 'rejected' && !signal?.aborted) throw ended.reason;
    return { opened: best, bound };
  }
}

/** What first expired, first out opens, as a menu of the model. */
export const firstExpiredMenu = (model: MenuModel, problem: MenuProblem): OpenedAt[] =>
  chosenMenu(model, firstExpired.choose(problem));

/** The best of menus that may be eaten under a model; nothing where none may. */
function bestStart(model: MenuModel, menus: readonly (readonly OpenedAt[])[]): readonly OpenedAt[] {
  const points = (menu: readonly OpenedAt[]) => scoreMenu(model, menu).points;
  return menus
    .filter((menu) => brokenRules(model, menu).length === 0)
    .reduce<readonly OpenedAt[]>((best, menu) => (points(menu) < points(best) ? menu : best), []);
}

/** A planner that puts on the table what was found. */
function plannerOf(
  model: MenuModel,
  opened: readonly OpenedAt[],
  reasons: readonly WhyHere[] = [],
): MenuPlanner {
  const why = new Map(reasons.map((at) => [`${at.slot} ${at.lot}`, whyText(model, at)]));
  const meals = fromModel(model, opened, ({ slot, lot }) => why.get(`${slot} ${lot}`) ?? writtenWhy('least'));
  return { name: 'least cost in all', choose: () => meals };
}
