import { buildMenuModel, type MenuModel } from '../menu/menu-model.ts';
import type { MealTask, MenuProblem } from '../menu/menu-problem.ts';
import type { ModelMenu } from '../menu/menu-state.ts';
import { fromModel, toModel } from '../menu/place-menu.ts';
import { brokenRules, scoreMenu, type MenuScore } from '../menu/score-menu.ts';
import { WISHES, type Wish } from '../menu/wishes.ts';
import type { MenuCosts, Settings } from '../model/settings.ts';
import type { OpenProgram } from './linear-program.ts';
import { searchToEnd } from './search-menu.ts';

export type OtherMenu = {
  readonly wish: Wish;
  readonly menu: ModelMenu;
  /** By the costs and rules of the settings, not of the wish. */
  readonly score: MenuScore;
};

/** How much more than in the settings what is wished weighs: enough to change the menu (rule of thumb). */
const MORE = 8;
/** Variety: a dish is not to come again within so many days. */
const VARIED_DAYS = 14;

type Posed = { readonly settings: Settings; readonly tasks: readonly MealTask[] };

const withCosts = ({ settings, tasks }: Posed, costs: Partial<MenuCosts>): Posed => ({
  settings: { ...settings, menuCosts: { ...settings.menuCosts, ...costs } },
  tasks,
});
const withStyle = ({ settings, tasks }: Posed, style: MealTask['style']): Posed => ({
  settings,
  tasks: tasks.map((task) => ({ ...task, style })),
});

const WISHED: Readonly<Record<Wish, (posed: Posed) => Posed>> = {
  lightest: (posed) => withCosts(posed, { carriedKgH: posed.settings.menuCosts.carriedKgH * MORE }),
  'most varied': ({ settings, tasks }) =>
    withCosts({ settings: { ...settings, repeatAfterDays: VARIED_DAYS }, tasks }, {}),
  'oldest first': (posed) =>
    withCosts(posed, { shelfLifeYear: posed.settings.menuCosts.shelfLifeYear * 4 * MORE }),
  'simplest at the stove': (posed) =>
    withStyle(
      withCosts(posed, {
        secondDish: posed.settings.menuCosts.secondDish * MORE,
        fuelG: posed.settings.menuCosts.fuelG * MORE,
      }),
      'mixed',
    ),
  'one dish for all': (posed) =>
    withStyle(withCosts(posed, { secondDish: posed.settings.menuCosts.secondDish * 4 }), 'shared pot'),
  'own pouches': (posed) => withStyle(posed, 'own pouch'),
};

/**
 * Menus that differ in what they put first, each found by a search in which that wish weighs more.
 *
 * @param work for each search
 */
export function otherMenus(
  problem: MenuProblem,
  model: MenuModel,
  best: ModelMenu,
  open: OpenProgram,
  work: number,
): OtherMenu[] {
  const { settings, tasks } = problem;
  return WISHES.flatMap((wish): OtherMenu[] => {
    const wished = buildMenuModel({ ...problem, ...WISHED[wish]({ settings, tasks }) });
    const start = toModel(wished, fromModel(model, best));
    const starts = brokenRules(wished, start).length === 0 ? [start] : [];
    const found = searchToEnd(wished, open, { effort: 'quick', starts, work });
    const menu = toModel(model, fromModel(wished, found.menu));
    return [{ wish, menu, score: scoreMenu(model, menu) }];
  });
}

/** Whether two menus of one model lay the same. */
export function sameMenu(one: ModelMenu, other: ModelMenu): boolean {
  return wordsOf(one) === wordsOf(other);
}

const wordsOf = ({ layings, extras }: ModelMenu): string =>
  JSON.stringify([
    layings
      .filter(({ dishes }) => dishes.length > 0)
      .map(({ slot, dishes }) => [
        slot,
        dishes
          .map(({ dish, lots, pouches, portions }) =>
            JSON.stringify([
              dish,
              lots,
              pouches,
              portions.map(({ place, servings }) => [place, Math.round(servings * 1000)]),
            ]),
          )
          .sort(),
      ])
      .sort(([a], [b]) => Number(a) - Number(b)),
    extras.map(({ extraDay, lot, place, units }) => `${extraDay} ${lot} ${place} ${units}`).sort(),
  ]);
