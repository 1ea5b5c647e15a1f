import { MenuFinder, type FoundMenu } from '../menu-search/find-menu.ts';
import { menuFigures, type MenuFigures } from '../menu-search/menu-figures.ts';
import type { Running } from '../menu-search/search-state.ts';
import type { Weighed } from '../menu-search/tasks.ts';
import { planWithMenu, type StandingMenu } from '../menu-search/standing-menu.ts';
import { forgetUnlocked } from '../planning/menu/edit-menu.ts';
import type { MenuProblem } from '../planning/menu/menu-problem.ts';
import type { Wish } from '../planning/menu/wishes.ts';
import type { Stock } from '../planning/model/pouch-lot.ts';
import type { Reason } from '../planning/model/reasons.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { Trip } from '../planning/model/trip.ts';
import type { ModelMenu } from '../planning/menu/menu-state.ts';
import type { OneMore, RelaxedRule } from '../planning/optimiser/explain-menu.ts';
import type { Effort } from '../planning/optimiser/search-menu.ts';
import { targetChangeKcal } from '../planning/plan-trip.ts';
import { language, say, type Language } from '../texts/say.ts';
import { digestOf } from './digest.ts';
import { UserError } from './errors.ts';
import { speaking } from './language-of-request.ts';
import type { PlanJobs } from './plan-jobs.ts';
import { PlanQueue, type Work } from './plan-queue.ts';

/** What a menu is looked for from. Of the trip's own menu only the locked meals count. */
export type Given = { readonly trip: Trip; readonly stock: Stock; readonly settings: Settings };

/** A menu that can be taken: the best that was found, or one that puts a wish first. */
export type Choice = {
  readonly name: Wish | 'best found';
  readonly menu: ModelMenu;
  readonly figures: MenuFigures;
};

/** What is known about the menus of a trip, as long as its needs, the shelf and the settings stay as they are. */
export type Known = {
  readonly problem: MenuProblem;
  /** What no menu is under, points. */
  readonly bound: number | undefined;
  readonly found: { readonly menu: ModelMenu; readonly points: number } | undefined;
  /** Comparisons made from one menu. */
  readonly compared:
    | {
        readonly from: ModelMenu;
        readonly oneMore: readonly OneMore[];
        readonly relaxed: readonly RelaxedRule[];
        readonly choices: readonly Choice[];
      }
    | undefined;
};

/** Why dishes of a chosen menu stand where they do. */
export const choiceReason = (name: Choice['name']): Reason =>
  name === 'best found' ? { code: 'best found' } : { code: 'of a choice', choice: name };

/** Trips whose menus are remembered; the one asked for longest ago is forgotten first. */
const MOST_KEPT = 20;

/** What is asked of a search, as JSON; its reasons are said in a language. */
type Asked = { readonly language: Language } & (
  ({ readonly effort: Effort } & Given) | { readonly problem: MenuProblem; readonly menu: ModelMenu }
);

/**
 * Searches for menus by trip: one at a time for each, with its progress. They wait and run in a queue that all processes on one database share; what the last
 * one found is in the memory of the process that asked.
 */
export class MenuSearches {
  readonly #finder: MenuFinder;
  readonly #queue: PlanQueue;
  readonly #known = new Map<string, { readonly given: string; readonly known: Known }>();

  constructor(jobs: PlanJobs, finder: MenuFinder = new MenuFinder()) {
    this.#finder = finder;
    this.#queue = new PlanQueue(jobs, ({ asked }, options) =>
      this.#work(JSON.parse(asked) as Asked, options),
    );
  }

  /**
   * Looks for a menu.
   *
   * @param id the trip that it is for; left out for one that is not stored yet
   * @param signal aborted when nobody waits for it any more: it is ended then
   * @throws UserError `Refused` while another search for this trip runs, `Busy` where too many wait; Error where the search cannot be run
   */
  async search(
    id: string | undefined,
    given: Given,
    effort: Effort,
    signal?: AbortSignal,
  ): Promise<FoundMenu> {
    const asked: Asked = { language: language(), effort, ...given };
    const found = (await this.#queue.run('search', id ?? null, given.trip.name, asked, signal)) as FoundMenu;
    if (id !== undefined) this.keep(id, given, found);
    return found;
  }

  /** Remembers what was found for a trip. */
  keep(id: string, given: Given, { problem, menu, score, bound }: FoundMenu): void {
    const before = this.known(id, given);
    const same = before && targetChangeKcal(before.problem.demand, problem.demand) === 0 ? before : undefined;
    const bounds = [same?.bound, bound].filter((points) => points !== undefined);
    this.#put(id, given, {
      problem,
      bound: bounds.length > 0 ? Math.max(...bounds) : undefined,
      found: same?.found && same.found.points <= score.points ? same.found : { menu, points: score.points },
      compared: same?.compared,
    });
  }

  /**
   * Looks for what a menu could be changed into: other menus, rules relaxed, one more pouch of a lot.
   *
   * @throws UserError `Refused` while another search for this trip runs, or where it was stopped; Error where it cannot be run
   */
  async compare(id: string, given: Given, { problem, model, menu, score }: StandingMenu): Promise<void> {
    const { trip, stock, settings } = given;
    const known = this.known(id, given);
    const found = known?.problem === problem ? known.found : undefined;
    const asked: Asked = { language: language(), problem, menu };
    const weighed = (await this.#queue.run('compare', id, trip.name, asked)) as Weighed;
    const others = weighed.others.map((other) => ({
      name: other.wish,
      menu: other.menu,
      points: other.score.points,
    }));
    const best = [found ?? [], others]
      .flat()
      .reduce((one, other) => (other.points < one.points ? other : one), { menu, points: score.points });
    const choices = [{ ...best, name: 'best found' as const }, ...others];
    const compared = {
      from: menu,
      oneMore: weighed.oneMore,
      relaxed: weighed.relaxed,
      choices: choices.map(({ name, menu: chosen, points }): Choice => ({
        name,
        menu: chosen,
        figures: menuFigures(
          planWithMenu(trip, stock, settings, { model, menu: chosen, reason: choiceReason(name) }),
          points,
        ),
      })),
    };
    this.#put(id, given, {
      problem,
      bound: known?.problem === problem ? known.bound : undefined,
      found: { menu: best.menu, points: best.points },
      compared,
    });
  }

  /** @returns what is known about the menus of a trip, if it was found from the same trip, shelf and settings. */
  known(id: string, given: Given): Known | undefined {
    const entry = this.#known.get(id);
    return entry?.given === fingerprint(given) ? entry.known : undefined;
  }

  running(id: string): Promise<Running | undefined> {
    return this.#queue.running(id);
  }

  /** Makes the search of a trip end with the best so far. @returns whether there was one */
  stop(id: string): Promise<boolean> {
    return this.#queue.stop(id);
  }

  /** Ends all searches; what they had found is dropped. */
  async close(): Promise<void> {
    await Promise.all([this.#queue.close(), this.#finder.close()]);
  }

  #work(asked: Asked, { signal, progress }: Parameters<Work>[1]): Promise<FoundMenu | Weighed> {
    return speaking(asked.language, async () => {
      if ('effort' in asked)
        return this.#finder.find(asked.trip, asked.stock, asked.settings, {
          effort: asked.effort,
          signal,
          progress: ({ done, points, bound }) => progress({ done, points, bound }),
        });
      return this.#finder.weigh(asked.problem, asked.menu, signal).catch((caught: unknown) => {
        if (!signal.aborted) throw caught;
        throw new UserError('Refused', say('The comparison was stopped; the menu is as it was.'));
      });
    });
  }

  #put(id: string, given: Given, known: Known): void {
    this.#known.delete(id);
    this.#known.set(id, { given: fingerprint(given), known });
    for (const oldest of this.#known.keys()) {
      if (this.#known.size <= MOST_KEPT) break;
      this.#known.delete(oldest);
    }
  }
}

const fingerprint = ({ trip, stock, settings }: Given): string =>
  digestOf([forgetUnlocked(trip, stock), stock, settings]);
