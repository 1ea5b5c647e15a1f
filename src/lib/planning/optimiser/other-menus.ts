import { WISHES, type Wish } from '../menu/wishes.ts';
import type { Settings } from '../model/settings.ts';
import { withSettings, type MenuModel, type OpenedAt } from './menu-model.ts';
import { scoreMenu, type MenuScore } from './score-menu.ts';
import { searchToEnd } from './search-menu.ts';

export type OtherMenu = {
  readonly wish: Wish;
  readonly opened: readonly OpenedAt[];
  /** By the costs of the settings, not of the wish. */
  readonly score: MenuScore;
};

/** How much more than in the settings the wish weighs: enough to change the menu, too little to leave anybody hungry (trials on the benchmark's instances). */
const MORE = 6;
/** A menu that costs more than the best by over this share and these points is no near-equal; the wish is then weighed less. */
export const NEAR_SHARE = 0.1;
const NEAR_POINTS = 30;
/** Variety: a recipe is not to come again within two weeks. */
const VARIED_DAYS = 14;
const VARIED_POINTS = 4;

const wished: Readonly<Record<Wish, (model: MenuModel, more: number) => MenuModel>> = {
  lightest: (model, more) => withSettings(model, withCost(model.settings, 'carriedKgH', more)),
  'most varied': (model, more) => ({
    ...model,
    variety: { withinDays: VARIED_DAYS, points: VARIED_POINTS * more },
  }),
  'oldest stock first': (model, more) =>
    withSettings(model, withCost(model.settings, 'shelfLifeYear', 4 * more)),
};

function withCost(settings: Settings, cost: 'carriedKgH' | 'shelfLifeYear', more: number): Settings {
  const { menuCosts } = settings;
  return { ...settings, menuCosts: { ...menuCosts, [cost]: menuCosts[cost] * more } };
}

/**
 * Menus that differ in what they put first, each found by searching on from the best with that wish weighed more, and less again where it costs too much.
 * A wish that costs too much however little it weighs has none.
 *
 * @param work moves for each search
 */
export function otherMenus(model: MenuModel, best: readonly OpenedAt[], work: number): OtherMenu[] {
  const bestPoints = scoreMenu(model, best).points;
  const nearPoints = bestPoints + Math.max(NEAR_POINTS, bestPoints * NEAR_SHARE);
  const others: OtherMenu[] = [];
  for (const wish of WISHES) {
    for (let more = MORE; more > 1.02; more = 1 + (more - 1) / 3) {
      const { opened } = searchToEnd(wished[wish](model, more), { seed: 1, work, start: best });
      const score = scoreMenu(model, opened);
      if (score.points > nearPoints) continue;
      others.push({ wish, opened, score });
      break;
    }
  }
  return others;
}
