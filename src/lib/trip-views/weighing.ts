import type { MenuFigures } from '../menu-search/menu-figures.ts';
import type { Running, Searched } from '../menu-search/search-state.ts';
import { DAY_FREE_FROM, DAY_FREE_TO, MEAL_FREE_FROM, MEAL_FREE_TO } from '../planning/menu/menu-costs.ts';
import type { MenuModel } from '../planning/menu/menu-model.ts';
import { SCORE_TERMS, type MenuScore, type ScoreTerm } from '../planning/menu/score-menu.ts';
import type { Settings } from '../planning/model/settings.ts';
import type { OneMore, RelaxedRule } from '../planning/optimiser/explain-menu.ts';
import { fromCore } from '../planning/units/convert.ts';
import { showMoney } from '../presentation/money.ts';
import { show, type UnitSystem } from '../presentation/show.ts';
import { MEAL_WORDS, CHOICE_WORDS } from '../presentation/code-words.ts';
import { say, sayList, sayNumber, text, type Text } from '../texts/say.ts';

const oneDigit = (value: number): string =>
  sayNumber(value, { minimumFractionDigits: 1, maximumFractionDigits: 1 });

export const shownPoints = (points: number): string => oneDigit(points + 0);
const seconds = (elapsedMs: number): string => `${Math.max(1, Math.round(elapsedMs / 1000))} s`;
/** One line of what a menu's points are made of. */
export type TermRow = {
  readonly term: ScoreTerm;
  readonly name: string;
  readonly what: string;
  readonly points: string;
};

/** @returns what a menu's points are made of */
export function termRows({ terms }: MenuScore, settings: Settings, system: UnitSystem): TermRow[] {
  const share = (of: number) => show(of, 'share', system);
  const words: Readonly<Record<ScoreTerm, readonly [name: string, what: string]>> = {
    hunger: [
      say('Hungry days'),
      say('A person has less than {low} or more than {high} of a day’s energy.', {
        low: share(DAY_FREE_FROM),
        high: share(DAY_FREE_TO),
      }),
    ],
    mealSize: [
      say('Meal sizes'),
      say('A meal is under {low} or over {high} of its plan; a little for every step away from the plan.', {
        low: share(MEAL_FREE_FROM),
        high: share(MEAL_FREE_TO),
      }),
    ],
    leftOver: [say('Leftovers'), say('Opened and not eaten.')],
    dishes: [
      say('Dishes'),
      say('Pots to wash, second dishes, pouches handed out, meals without a main dish.'),
    ],
    repeats: [
      say('Repeats'),
      settings.repeatAfterDays === 0
        ? say('Dishes may come again as often as they like.')
        : say('A person eats a dish again within {days, plural, one {# day} other {# days}}.', {
            days: settings.repeatAfterDays,
          }),
    ],
    tastes: [say('Tastes'), say('Plates someone would rather not have, less those they like.')],
    extras: [say('Extras'), say('Each piece to bag, and each further sort on a day.')],
    burden: [say('Weight, fuel and age'), say('Pouches and water carried, fuel burnt, shelf life given up.')],
    protein: [
      say('Protein'),
      say('A person’s day is below {floor} per 1,000 kcal, where the food states it.', {
        floor: show(settings.proteinFloorG, 'food', system),
      }),
    ],
  };
  return SCORE_TERMS.map((term) => {
    const [name, what] = words[term];
    return { term, name, what, points: shownPoints(terms[term]) };
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
    return say('How close this is to the best possible is not known yet; run a search to find out.');
  const most = Math.ceil(fromCore(gap, '%') * 10 - 1e-6) / 10;
  if (most <= 0) return say('No menu from this shelf scores lower: this is the best possible.');
  const least = Math.floor(bound * 10 + 1e-6) / 10;
  return say(
    'No menu from this shelf can score below {least} points, so at most {most} could still be saved.',
    {
      least: shownPoints(least),
      most: sayNumber(most / 100, { style: 'percent', maximumFractionDigits: 1 }),
    },
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
      ? say('The search found nothing better. The menu stays, at {points} points.', {
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
            at: say('day {day}, {meal}', { day: model.days[at.day] ?? 0, meal: say(MEAL_WORDS[at.meal]) }),
            points: shownPoints(points),
          },
        ]
      : [];
  });
}

/** @returns what each relaxed rule would save, in sentences */
export function relaxedInWords(relaxed: readonly RelaxedRule[]): string[] {
  return relaxed.map(({ rule, points }) => {
    const gain =
      points >= 0.5
        ? say('about {points} points fewer', { points: shownPoints(points) })
        : say('nothing better found');
    return rule === 'repeats'
      ? say('If dishes may come again at once: {gain}.', { gain })
      : say('If a second dish cost no effort: {gain}.', { gain });
  });
}

/** What each wish would cost beside the menu as it is, in sentences. */
export function wishesInWords(
  now: MenuFigures,
  choices: readonly { readonly name: keyof typeof CHOICE_WORDS; readonly figures: MenuFigures }[],
  system: UnitSystem,
): string[] {
  return choices.flatMap(({ name, figures }) => {
    if (name === 'best found') return [];
    const heavierG = figures.foodG - now.foodG;
    const pouches = figures.pouches - now.pouches;
    const left = figures.leftOverServings - now.leftOverServings;
    const parts = [
      ...(Math.abs(heavierG) >= 5
        ? [
            heavierG > 0
              ? say('{weight} heavier', { weight: show(heavierG, 'food', system) })
              : say('{weight} lighter', { weight: show(-heavierG, 'food', system) }),
          ]
        : []),
      ...(pouches !== 0
        ? [
            pouches > 0
              ? say('{count, plural, one {# pouch} other {# pouches}} more', { count: pouches })
              : say('{count, plural, one {# pouch} other {# pouches}} fewer', { count: -pouches }),
          ]
        : []),
      ...(Math.abs(left) >= 0.25
        ? [
            left > 0
              ? say('{servings} servings more left over', {
                  servings: sayNumber(left, { maximumFractionDigits: 1 }),
                })
              : say('{servings} servings fewer left over', {
                  servings: sayNumber(-left, { maximumFractionDigits: 1 }),
                }),
          ]
        : []),
    ];
    return [
      say('{wish}: {what}.', {
        wish: say(CHOICE_WORDS[name]),
        what: parts.length > 0 ? sayList(parts) : say('no heavier, and as many pouches'),
      }),
    ];
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
  [text('Different dishes'), ({ recipes }) => String(recipes)],
  [text('Pouches'), ({ pouches }) => String(pouches)],
  [text('Dishes from a pot'), ({ pots }) => String(pots)],
  [
    text('Servings left over'),
    ({ leftOverServings }) => sayNumber(leftOverServings, { maximumFractionDigits: 1 }),
  ],
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
