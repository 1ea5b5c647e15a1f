import { language, say, sayList, sayNumber, text, type Text } from '../../texts/say.ts';
import type { MenuCosts } from '../model/settings.ts';
import { CHOICE_WORDS } from './wishes.ts';

/*
 * Why pouches stand at a meal. The reason is stored with the menu of a trip and sent with a plan, so it is written in English, and turned into the language around
 * where it is shown.
 */

/** What each cost of a menu is about, in a word or two. */
export const COST_WORDS: Readonly<Record<keyof MenuCosts, Text>> = {
  missingKcal: text('energy missing to a day'),
  smallMealKcal: text('a meal too small'),
  leftOverKcal: text('food left over'),
  aboveCeilingKcal: text('more than is eaten in a day'),
  repeat: text('the same recipe again'),
  carriedKgH: text('weight to carry'),
  fuelG: text('fuel'),
  shelfLifeYear: text('a pouch that would keep longer'),
  proteinG: text('little protein'),
};

const REASONS = {
  byHand: text('chosen by hand'),
  listed: text('as the trip lists it'),
  first: text('first to expire for this meal'),
  firstOf: text('first to expire that {eaters} may eat'),
  notRecent: text('{why}, not on the table in the last days'),
  notNeeded: text('{why}, not needed later by those with less choice'),
  smallest: text('least too much for this meal: every pouch holds more than is needed'),
  smallestOf: text('least too much that {eaters} may eat: every pouch holds more than is needed'),
  least: text('least cost in all'),
  only: text('least cost in all: nothing else that is free may stand in for it here'),
  asGood: text('least cost in all; {lot} ({recipe}) would do as well'),
  nextBest: text(
    'least cost in all: next best here, {lot} ({recipe}), costs {points} points more, for {cost}',
  ),
  bestFound: text('of the best menu found'),
  ofWish: text('of the menu "{wish}"'),
} as const;

/** How the parts of a reason are said. */
const PARTS: Readonly<Record<string, (written: string) => string>> = {
  why: sayWhy,
  eaters: (names) => sayList(names.split(AND)),
  points: (points) => sayNumber(Number(points), { minimumFractionDigits: 1 }),
  cost: (word) => sayKnown(Object.values(COST_WORDS), word),
  wish: (word) => sayKnown(Object.values(CHOICE_WORDS), word),
};
const AND = ' and ';
const PLACE = /\{(\w+)\}/g;

/** @returns the reason as it is stored, in English. @param parts what goes into its text; a list of `eaters` is joined by `withAnd` */
export const writtenWhy = (
  reason: keyof typeof REASONS,
  parts: Readonly<Record<string, string>> = {},
): string => REASONS[reason].replace(PLACE, (_, name: string) => parts[name] ?? '');

export const withAnd = (names: readonly string[]): string => names.join(AND);

/** Each reason with its words and the names of its parts by turns, beginning and ending with words. */
const written = Object.values(REASONS).map((reason) => ({ reason, pieces: reason.split(PLACE) }));

/** @returns the parts by name that a written reason is made of; `undefined` where it is another one */
function partsOf(why: string, [beginning = '', ...rest]: readonly string[]): [string, string][] | undefined {
  if (!why.startsWith(beginning)) return undefined;
  const parts: [string, string][] = [];
  let at = beginning.length;
  for (let next = 0; next < rest.length; next += 2) {
    const words = rest[next + 1] ?? '';
    const isLast = next + 2 === rest.length;
    const end = isLast ? why.length - words.length : why.indexOf(words, at);
    if (end <= at || !why.startsWith(words, end)) return undefined;
    parts.push([rest[next] ?? '', why.slice(at, end)]);
    at = end + words.length;
  }
  return at === why.length ? parts : undefined;
}

/** @returns a written reason in the language around; one that nobody here wrote as it is. */
export function sayWhy(why: string): string {
  if (language() === 'en') return why;
  for (const { reason, pieces } of written) {
    const parts = partsOf(why, pieces);
    if (parts)
      return say(
        reason,
        Object.fromEntries(parts.map(([name, part]) => [name, PARTS[name]?.(part) ?? part])),
      );
  }
  return why;
}

const sayKnown = (words: readonly Text[], word: string): string => {
  const known = words.find((other) => other === word);
  return known ? say(known) : word;
};
