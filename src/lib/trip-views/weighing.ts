import type { MenuFigures } from '../menu-search/menu-figures.ts';
import type { Running, Searched } from '../menu-search/search-state.ts';
import type { MenuCosts, Settings } from '../planning/model/settings.ts';
import type { OneMore, Relaxed } from '../planning/optimiser/explain-menu.ts';
import type { MenuModel } from '../planning/optimiser/menu-model.ts';
import type { MenuScore } from '../planning/optimiser/score-menu.ts';
import { fromCore, toCore } from '../planning/units/convert.ts';
import { showMoney } from '../planning/units/money.ts';
import { show, type UnitSystem } from '../planning/units/show.ts';
import { counted } from '../plural.ts';

const oneDigit = new Intl.NumberFormat('en', { minimumFractionDigits: 1, maximumFractionDigits: 1 });

export const shownPoints = (points: number): string => oneDigit.format(points + 0);
const seconds = (elapsedMs: number): string => `${Math.max(1, Math.round(elapsedMs / 1000))} s`;
/** Weight carried over hours of walking. */
const shownCarrying = (kgH: number, system: UnitSystem): string =>
  `${show(toCore(kgH, 'kg'), 'pack', system)} × h`;

/** One line of what a menu's points are made of. */
export type TermRow = {
  readonly term: keyof MenuCosts;
  readonly name: string;
  readonly what: string;
  readonly amount: string;
  readonly points: string;
};

/** @returns what a menu's points are made of, in the order of the costs in the settings */
export function termRows({ terms }: MenuScore, settings: Settings, system: UnitSystem): TermRow[] {
  const energy = (kcal: number) => show(kcal, 'energy', system);
  const share = (of: number) => show(of, 'share', system);
  const words: Readonly<
    Record<keyof MenuCosts, readonly [name: string, what: string, amount: (amount: number) => string]>
  > = {
    missingKcal: ['Energy missing', 'What eaters fall short of their targets, day by day.', energy],
    smallMealKcal: [
      'Meals too small',
      `What meals fall short of ${share(settings.mealFloorShare)} of what is planned for them.`,
      energy,
    ],
    leftOverKcal: ['Left over', 'Opened, and eaten by nobody.', energy],
    aboveCeilingKcal: [
      'More than enough',
      `Eaten above ${share(settings.eatUpToShare)} of the target of a day.`,
      energy,
    ],
    repeat: [
      'The same again',
      settings.repeatAfterDays === 0
        ? 'Recipes may come again as often as they like.'
        : `Times that a recipe comes twice on a day, or again within ${counted(settings.repeatAfterDays, 'day')}.`,
      (times) => counted(times, 'time'),
    ],
    carriedKgH: [
      'Carrying',
      'Pouches, and the water for them from the last source, by the hours walked with them.',
      (kgH) => shownCarrying(kgH, system),
    ],
    fuelG: ['Fuel', 'Burnt for the water of the meals, without a reserve.', (g) => show(g, 'food', system)],
    shelfLifeYear: [
      'Shelf life given up',
      'How long the opened pouches would still have kept, up to two years each.',
      (years) => `${oneDigit.format(years)} years`,
    ],
    proteinG: [
      'Protein missing',
      `What the food of a day falls short of ${show(settings.proteinFloorG, 'food', system)} in 1,000 kcal, where it is stated.`,
      (g) => show(g, 'food', system),
    ],
  };
  return (Object.keys(words) as (keyof MenuCosts)[]).map((term) => {
    const [name, what, amount] = words[term];
    return { term, name, what, amount: amount(terms[term].amount), points: shownPoints(terms[term].points) };
  });
}

/**
 * How far a menu may be from the best, in a sentence.
 *
 * @param bound what no menu is under, points
 * @param gap share of the menu's points that is not proven to be needed
 */
export function gapInWords(bound: number | undefined, gap: number | undefined): string {
  if (bound === undefined || gap === undefined)
    return 'How far it is from the best possible is not worked out yet; a search does that.';
  const most = Math.ceil(fromCore(gap, '%') * 10 - 1e-6) / 10;
  if (most <= 0) return 'No menu that this shelf allows has fewer points: it is the best possible.';
  const least = Math.floor(bound * 10 + 1e-6) / 10;
  return `No menu that this shelf allows has fewer than ${shownPoints(least)} points, so at most ${most} % of these could still be saved.`;
}

/** A search as it runs, for its bar and the words beside it. */
export type ShownProgress = {
  /** Share done; left out where that is not known. */
  readonly done: number | undefined;
  readonly words: string;
};

export function shownProgress(running: Running): ShownProgress {
  const { phase, done, points, bound, elapsedMs } = running;
  if (phase === 'compare')
    return { done: undefined, words: `Comparing with other menus, for ${seconds(elapsedMs)} now.` };
  const parts = [
    ...(points === undefined ? [] : [`best so far ${shownPoints(points)} points`]),
    ...(bound === undefined ? [] : [`none can have fewer than ${shownPoints(bound)}`]),
    `${seconds(elapsedMs)} so far`,
  ];
  return { done, words: `Searching: ${parts.join('; ')}.` };
}

/** What a search came to, in words. */
export function searchInWords(searched: Searched): string {
  const { before, after, stays, stopped, elapsedMs, betterInComparison } = searched;
  return [
    `${stopped ? 'Stopped' : 'Done'} after ${seconds(elapsedMs)}.`,
    stays
      ? `The search found nothing better; the menu stays, with ${shownPoints(after)} points.`
      : `The menu now has ${shownPoints(after)} points instead of ${shownPoints(before)}; locked meals are as they were.`,
    ...(betterInComparison === undefined
      ? []
      : [
          `Comparing it with others came upon one with ${shownPoints(betterInComparison)} points: "best found" below.`,
        ]),
  ].join(' ');
}

/** @returns for each lot of which one more pouch would help: which, where, and what it would save */
export function oneMoreRows(model: MenuModel, oneMore: readonly OneMore[]) {
  return oneMore.flatMap(({ lot, slot, points }) => {
    const [of, at] = [model.lots[lot]?.lot, model.slots[slot]];
    return of && at
      ? [
          {
            code: of.code,
            recipe: of.recipe,
            at: `day ${at.day}, ${at.meal}`,
            points: shownPoints(points),
          },
        ]
      : [];
  });
}

/** @returns what each relaxed rule would save, in sentences */
export function relaxedInWords(relaxed: readonly Relaxed[], settings: Settings): string[] {
  return relaxed.map(({ rule, points }) => {
    const gain =
      Number(shownPoints(points)) > 0
        ? `about ${shownPoints(points)} points fewer`
        : 'nothing better was found';
    return rule === 'recipes'
      ? `With ${counted(settings.maxRecipesPerMeal + 1, 'recipe')} at a meal instead of ${settings.maxRecipesPerMeal}: ${gain}.`
      : `With recipes coming again as soon as they like: ${gain}, besides what the repeats of this menu cost.`;
  });
}

/** What menus are compared by, one row each. */
const FIGURES: readonly (readonly [
  label: string,
  value: (figures: MenuFigures, system: UnitSystem, currency: string) => string,
])[] = [
  ['Points', ({ points }) => shownPoints(points)],
  ['Food and packaging', ({ foodG }, system) => show(foodG, 'pack', system)],
  ['Energy missing', ({ missingKcal }, system) => show(missingKcal, 'energy', system)],
  ['Different recipes', ({ recipes }) => String(recipes)],
  ['Carrying water for the meals', ({ waterKgH }, system) => shownCarrying(waterKgH, system)],
  ['Fuel with reserve', ({ fuelG }, system) => show(fuelG, 'food', system)],
  [
    'Cost, as far as known',
    ({ costMinor }, _, currency) => (costMinor === undefined ? '–' : showMoney(costMinor, currency)),
  ],
];

/** @returns the rows of the table of menus side by side, with a value for each menu */
export function figureRows(
  menus: readonly MenuFigures[],
  system: UnitSystem,
  currency: string,
): { label: string; values: string[] }[] {
  return FIGURES.map(([label, value]) => ({
    label,
    values: menus.map((figures) => value(figures, system, currency)),
  }));
}
