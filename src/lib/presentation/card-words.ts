import type { CardMeal, CardPouches, TrailCard } from '../planning/model/trip-plan.ts';
import type { CookAfter } from '../planning/model/words.ts';
import { allergenLabel, MEAL_WORDS } from './code-words.ts';
import { POUR_WORDS } from './pour-words.ts';
import { aboutWhere } from './about.ts';
import { friendlyAmount, showPour } from './fractions.ts';
import type { UnitSystem } from './show.ts';
import { waitText } from './wait-words.ts';
import { say, sayList, text, type Text } from '../texts/say.ts';
import { sharesText } from './portion-words.ts';

/* What stands on a trail card of one lot at one meal, sentence by sentence: the same on paper, on a phone and in a terminal. */

/** What is done with food after its wait, before anyone eats it. */
const COOK_ON_WORDS: Readonly<Record<CookAfter, Text>> = {
  cook: text('Then cook it through, before anyone eats it.'),
  'boil hard': text('Then boil it hard for 10 minutes, before anyone eats it.'),
};

/** @returns what is taken: "2 × D04 Chicken curry", "D04 Chicken curry, open since day 2" */
export function takenText({ pouches, code, recipe, openSinceDay }: CardPouches): string {
  if (pouches > 0) return say('{pouches} × {code} {recipe}', { pouches, code, recipe });
  return say('{code} {recipe}, open since day {day}', { code, recipe, day: openSinceDay ?? 0 });
}

/** @returns how a lot is made, from the pouch to the plate */
export function makingTexts(line: CardPouches, system: UnitSystem): string[] {
  const { pouches, openSinceDay, cookAfter } = line;
  const wait = line.steepMin === 0 ? '' : waitText(line);
  return [
    ...(pouches > 0 && openSinceDay !== undefined
      ? [say('First eat up the pouch open since day {day}.', { day: openSinceDay })]
      : []),
    ...pourTexts(line, system),
    ...(wait ? [sentence(wait)] : []),
    ...(cookAfter ? [say(COOK_ON_WORDS[cookAfter])] : []),
  ];
}

function pourTexts(line: CardPouches, system: UnitSystem): string[] {
  const { pouches, waterMl, waterMlPerPouch, waterKind, style, role, pourIntoPot } = line;
  const isPot = style === 'shared pot';
  const empty = isPot
    ? say(
        '{pouches, plural, =0 {Into the pot.} one {Empty the pouch into the pot.} other {Empty # pouches into the pot.}}',
        {
          pouches,
        },
      )
    : pourIntoPot && role !== 'drink'
      ? say('Empty it into a bowl: its pouch takes no boiling water or is no plate.')
      : '';
  if (waterKind === 'none' || waterMl === 0)
    return [empty, role === 'extra' ? '' : say('No water.')].filter(Boolean);
  const water = say(POUR_WORDS[waterKind]);
  const total = aboutWhere(line, 'waterMl', showPour(waterMl, system));
  const each = aboutWhere(line, 'waterMl', showPour(waterMlPerPouch, system));
  const poured =
    isPot || pouches === 1
      ? say('{amount} {water}.', { amount: total, water })
      : pouches === 0
        ? say('{each} {water} per serving, {total} total.', { each, water, total })
        : say('{each} {water} into each pouch, {total} in total.', { each, water, total });
  return [empty, poured].filter(Boolean);
}

/** @returns who has how much, what stays open and what is left over */
export function platesTexts({
  shares,
  staysOpenServings,
  leftOverServings,
}: Pick<CardPouches, 'shares' | 'staysOpenServings' | 'leftOverServings'>): string[] {
  return [
    ...sharesText(shares),
    ...(staysOpenServings > 0.05
      ? [say('stays open: {servings}', { servings: friendlyAmount(staysOpenServings) })]
      : []),
    ...(leftOverServings > 0.05
      ? [say('left over: {servings}', { servings: friendlyAmount(leftOverServings) })]
      : []),
  ];
}

/** @returns the allergens of a lot, as a sentence */
export const allergensText = ({ allergens }: Pick<CardPouches, 'allergens'>): string =>
  allergens === undefined
    ? say('Allergens not declared.')
    : allergens.length > 0
      ? say('Contains {allergens}.', { allergens: allergens.map(allergenLabel).join(', ') })
      : say('None of the listed allergens.');

/** @returns in whose pack it is */
export const carriedText = (carriedBy: CardPouches['carriedBy']): string =>
  say('In the pack of {eaters}.', {
    eaters: carriedBy
      .map(({ eater, pouches }) => (carriedBy.length > 1 ? `${eater} (${pouches})` : eater))
      .join(', '),
  });

/** @returns whose dish is made first, where two are made in turn in one pot; empty where all may eat everything */
export const firstForText = ({ firstFor }: Pick<CardMeal, 'firstFor'>): string =>
  firstFor.length > 0
    ? say('First make what {eaters} may eat, in the clean pot and with its own spoon.', {
        eaters: sayList(firstFor),
      })
    : '';

/** @returns who eats a meal elsewhere: "dinner: Ada elsewhere" */
export const elsewhereText = (
  { meal, group, eaters }: TrailCard['days'][number]['elsewhere'][number],
  groups: TrailCard['groups'],
): string => {
  const isWhole = groups.find(({ name }) => name === group)?.eaters.length === eaters.length;
  return isWhole
    ? say('{meal}: eaten elsewhere.', { meal: say(MEAL_WORDS[meal]) })
    : say('{meal}: {eaters} elsewhere.', { meal: say(MEAL_WORDS[meal]), eaters: sayList(eaters) });
};

const sentence = (words: string): string => {
  const capital = words.charAt(0).toUpperCase() + words.slice(1);
  return /[.!?]$/.test(capital) ? capital : `${capital}.`;
};
