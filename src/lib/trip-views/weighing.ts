import type { MenuFigures } from '../menu-search/menu-figures.ts';
import type { Running, Searched } from '../menu-search/search-state.ts';
import type { MenuCosts, Settings } from '../planning/model/settings.ts';
import type { OneMore, Relaxed } from '../planning/optimiser/explain-menu.ts';
import type { MenuModel } from '../planning/optimiser/menu-model.ts';
import type { MenuScore } from '../planning/optimiser/score-menu.ts';
import { fromCore, toCore } from '../planning/units/convert.ts';
import { showMoney } from '../planning/units/money.ts';
import { show, type UnitSystem } from '../planning/units/show.ts';
import { MEAL_WORDS } from '../planning/model/words.ts';
import { say, sayNumber, text, type Text } from '../texts/say.ts';

const oneDigit = (value: number): string =>
  sayNumber(value, { minimumFractionDigits: 1, maximumFractionDigits: 1 });

export const shownPoints = (points: number): string => oneDigit(points + 0);
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
    missingKcal: [say('Energy missing'), say('What eaters fall short of their targets, day by day.'), energy],
    smallMealKcal: [
      say('Meals too small'),
      say('What meals fall short of {share} of what is planned for them.', {
        share: share(settings.mealFloorShare),
      }),
      energy,
    ],
    leftOverKcal: [say('Left over'), say('Opened, and eaten by nobody.'), energy],
    aboveCeilingKcal: [
      say('More than enough'),
      say('Eaten above {share} of the target of a day.', { share: share(settings.eatUpToShare) }),
      energy,
    ],
    repeat: [
      say('The same again'),
      settings.repeatAfterDays === 0
        ? say('Recipes may come again as often as they like.')
        : say(
            'Times that a recipe comes twice on a day, or again within {days, plural, one {# day} other {# days}}.',
            { days: settings.repeatAfterDays },
          ),
      (times) => say('{count, plural, one {# time} other {# times}}', { count: times }),
    ],
    carriedKgH: [
      say('Carrying'),
      say('Pouches, and the water for them from the last source, by the hours walked with them.'),
      (kgH) => shownCarrying(kgH, system),
    ],
    fuelG: [
      say('Fuel'),
      say('Burnt for the water of the meals, without a reserve.'),
      (g) => show(g, 'food', system),
    ],
    shelfLifeYear: [
      say('Shelf life given up'),
      say('How long the opened pouches would still have kept, up to two years each.'),
      (years) => say('{years} years', { years: oneDigit(years) }),
    ],
    proteinG: [
      say('Protein missing'),
      say('What the food of a day falls short of {floor} in 1,000 kcal, where it is stated.', {
        floor: show(settings.proteinFloorG, 'food', system),
      }),
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
    return say('How far it is from the best possible is not worked out yet; a search does that.');
  const most = Math.ceil(fromCore(gap, '%') * 10 - 1e-6) / 10;
  if (most <= 0) return say('No menu that this shelf allows has fewer points: it is the best possible.');
  const least = Math.floor(bound * 10 + 1e-6) / 10;
  return say(
    'No menu that this shelf allows has fewer than {least} points, so at most {most} % of these could still be saved.',
    { least: shownPoints(least), most: sayNumber(most, { maximumFractionDigits: 1 }) },
  );
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
    return {
      done: undefined,
      words: say('Comparing with other menus, for {time} now.', { time: seconds(elapsedMs) }),
    };
  const parts = [
    ...(points === undefined ? [] : [say('best so far {points} points', { points: shownPoints(points) })]),
    ...(bound === undefined
      ? []
      : [say('none can have fewer than {points}', { points: shownPoints(bound) })]),
    say('{time} so far', { time: seconds(elapsedMs) }),
  ];
  return { done, words: say('Searching: {state}.', { state: parts.join('; ') }) };
}

/** What a search came to, in words. */
export function searchInWords(searched: Searched): string {
  const { before, after, stays, stopped, elapsedMs, betterInComparison } = searched;
  return [
    stopped
      ? say('Stopped after {time}.', { time: seconds(elapsedMs) })
      : say('Done after {time}.', { time: seconds(elapsedMs) }),
    stays
      ? say('The search found nothing better; the menu stays, with {points} points.', {
          points: shownPoints(after),
        })
      : say('The menu now has {after} points instead of {before}; locked meals are as they were.', {
          after: shownPoints(after),
          before: shownPoints(before),
        }),
    ...(betterInComparison === undefined
      ? []
      : [
          say('Comparing it with others came upon one with {points} points: "best found" below.', {
            points: shownPoints(betterInComparison),
          }),
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
            at: say('day {day}, {meal}', { day: at.day, meal: say(MEAL_WORDS[at.meal]) }),
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
      points >= 0.05
        ? say('about {points} points fewer', { points: shownPoints(points) })
        : say('nothing better was found');
    return rule === 'recipes'
      ? say('With {more, plural, one {# recipe} other {# recipes}} at a meal instead of {most}: {gain}.', {
          more: settings.maxRecipesPerMeal + 1,
          most: settings.maxRecipesPerMeal,
          gain,
        })
      : say(
          'With recipes coming again as soon as they like: {gain}, besides what the repeats of this menu cost.',
          { gain },
        );
  });
}

/** What menus are compared by, one row each. */
const FIGURES: readonly (readonly [
  label: Text,
  value: (figures: MenuFigures, system: UnitSystem, currency: string) => string,
])[] = [
  [text('Points'), ({ points }) => shownPoints(points)],
  [text('Food and packaging'), ({ foodG }, system) => show(foodG, 'pack', system)],
  [text('Energy missing'), ({ missingKcal }, system) => show(missingKcal, 'energy', system)],
  [text('Different recipes'), ({ recipes }) => String(recipes)],
  [text('Carrying water for the meals'), ({ waterKgH }, system) => shownCarrying(waterKgH, system)],
  [text('Fuel with reserve'), ({ fuelG }, system) => show(fuelG, 'food', system)],
  [
    text('Cost, as far as known'),
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
    label: say(label),
    values: menus.map((figures) => value(figures, system, currency)),
  }));
}
