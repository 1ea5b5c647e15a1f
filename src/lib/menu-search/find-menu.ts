import { forgetUnlocked, keepMenu } from '../planning/menu/edit-menu.ts';
import { layByExpiry, layOldestFirst } from '../planning/menu/lay-by-expiry.ts';
import { buildMenuModel, type MenuModel } from '../planning/menu/menu-model.ts';
import type { MealChoice, MenuPlanner, MenuProblem } from '../planning/menu/menu-problem.ts';
import type { ModelMenu } from '../planning/menu/menu-state.ts';
import { fromModel, toModel } from '../planning/menu/place-menu.ts';
import { brokenRules, scoreMenu, type MenuScore } from '../planning/menu/score-menu.ts';
import { withPlanned } from '../planning/model/planned-lot.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import type { DishReason } from '../planning/optimiser/explain-menu.ts';
import type { Effort } from '../planning/optimiser/search-menu.ts';
import {
  buildMenuProblem,
  completePlan,
  planTrip,
  SETTLED_KCAL,
  targetChangeKcal,
} from '../planning/plan-trip.ts';
import { standingChoices } from './standing-menu.ts';
import { TaskRunner, usualRoot } from './task-runner.ts';
import type { Report, Weighed } from './tasks.ts';

export type SearchProgress = {
  /** Share of the search's work that is done. */
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
  readonly menu: ModelMenu;
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

type Best = { readonly menu: ModelMenu; readonly bound: number | undefined };

/** Where the loads move the needs, the menu is looked for again with the new ones, at most so often. */
const MOST_ROUNDS = 3;
/** A thorough search looks from so many seeds at once. */
const THOROUGH_SEEDS = [1, 2];

/** How much worse than the best possible a menu may be, as a share of its points; undefined without a bound. */
export function gapShare(points: number, bound: number | undefined): number | undefined {
  if (bound === undefined) return undefined;
  return points <= 1e-9 ? 0 : Math.max(0, (points - bound) / points);
}

/** Looks for menus in two processes. */
export class MenuFinder {
  readonly #runners: readonly [TaskRunner, TaskRunner];

  /** @param root the folder that holds the project, from whose source they run */
  constructor(root: string = usualRoot()) {
    this.#runners = [new TaskRunner(root), new TaskRunner(root)];
  }

  /**
   * Plans the meals that are not locked anew, from the better of first expired, first out and the menu that the trip lists: it is worse than neither.
   * The same input gives the same menu, unless it is stopped.
   */
  async find(trip: Trip, stock: Stock, settings: Settings, options: FindOptions): Promise<FoundMenu> {
    const startedAt = performance.now();
    const elapsedMs = () => performance.now() - startedAt;
    const open = forgetUnlocked(trip, stock);
    const standing =
      trip.menu.length > 0
        ? standingChoices(planTrip(trip, stock, settings), withPlanned(stock, trip.planned))
        : [];
    let problem = buildMenuProblem(open, stock, settings);
    let model = buildMenuModel(problem);
    let best: Best = { menu: layByExpiry(model), bound: undefined };
    let listed = toModel(model, standing);

    for (let round = 0; round < MOST_ROUNDS; round++) {
      best = await this.#round(problem, model, [best.menu, listed], options, elapsedMs);
      if (options.signal?.aborted) break;
      const moved = completePlan(open, stock, settings, fromModel(model, best.menu), '');
      if (targetChangeKcal(problem.demand, moved.demand) <= SETTLED_KCAL) break;
      problem = buildMenuProblem(open, stock, settings, moved.demand);
      const next = buildMenuModel(problem);
      listed = toModel(next, standing);
      best = { menu: toModel(next, fromModel(model, best.menu)), bound: undefined };
      model = next;
    }
    const reasons = await this.#runners[0].run(
      { kind: 'explain', problem, menu: best.menu },
      () => undefined,
    );
    const plan = planTrip(open, stock, settings, plannerOf(model, best.menu, reasons));
    return {
      trip: plan.totals.pouches > 0 ? keepMenu(open, plan.menu) : open,
      plan,
      problem,
      menu: best.menu,
      score: scoreMenu(model, best.menu),
      bound: best.bound,
      firstExpiredPoints: scoreMenu(model, layOldestFirst(model)).points,
      stopped: options.signal?.aborted ?? false,
      elapsedMs: elapsedMs(),
    };
  }

  /** What one more pouch and a relaxed rule would gain, and other menus to choose from. */
  weigh(problem: MenuProblem, menu: ModelMenu, signal?: AbortSignal): Promise<Weighed> {
    return this.#runners[0].run({ kind: 'weigh', problem, menu }, () => undefined, signal);
  }

  async close(): Promise<void> {
    await Promise.all(this.#runners.map((runner) => runner.close()));
  }

  async #round(
    problem: MenuProblem,
    model: MenuModel,
    menus: readonly ModelMenu[],
    { effort, progress, signal }: FindOptions,
    elapsedMs: () => number,
  ): Promise<Best> {
    const starts = menus.filter((menu) => brokenRules(model, menu).length === 0);
    let best = starts.reduce<{ menu: ModelMenu; points: number }>(
      (one, menu) => {
        const { points } = scoreMenu(model, menu);
        return points < one.points ? { menu, points } : one;
      },
      { menu: { layings: [], extras: [] }, points: Infinity },
    );
    let bound: number | undefined;
    const onReport = (report: Report) => {
      if (Number.isFinite(report.bound)) bound = Math.max(bound ?? -Infinity, report.bound);
      if (report.points < best.points - 1e-9) best = report;
      progress?.({ done: report.done, points: best.points, bound, elapsedMs: elapsedMs() });
    };
    const seeds = effort === 'thorough' ? THOROUGH_SEEDS : [1];
    const tasks = seeds.map((seed, at) =>
      (this.#runners[at] ?? this.#runners[0]).run(
        { kind: 'search', problem, effort, seed, starts },
        onReport,
        signal,
      ),
    );
    for (const ended of await Promise.allSettled(tasks))
      if (ended.status === 'rejected' && !signal?.aborted) throw ended.reason;
    return { menu: best.menu, bound };
  }
}

/** A planner that puts on the table what was found. */
function plannerOf(model: MenuModel, menu: ModelMenu, reasons: readonly DishReason[]): MenuPlanner {
  const known = new Map(reasons.map(({ slot, dish, reason }) => [`${slot} ${dish}`, reason]));
  const meals: MealChoice[] = fromModel(model, menu, (at) =>
    'slot' in at ? (known.get(`${at.slot} ${at.dish}`) ?? { code: 'least cost' }) : { code: 'fills the day' },
  );
  return { name: 'least cost in all', choose: () => meals };
}
