import { CHOICE_WORDS } from './code-words.ts';
import type { Reason } from '../planning/model/reasons.ts';
import { say, sayList, sayNumber, text, type Text } from '../texts/say.ts';

type WordsOf = Readonly<Record<Reason['code'], (reason: Reason) => string>>;

const WORDS: WordsOf = {
  'by hand': () => say('chosen by hand'),
  'as listed': () => say('as the trip lists it'),
  'fixed dish': () => say('the dish set for this meal'),
  oldest: () => say('the oldest that suits this meal'),
  'oldest for all': ({ eaters = [] }) =>
    eaters.length > 0
      ? say('the oldest that suits {eaters}', { eaters: sayList(eaters) })
      : say('the oldest that suits everyone'),
  'oldest for some': ({ eaters = [] }) =>
    eaters.length > 0
      ? say('the oldest for {eaters}, who cannot have the other dish', { eaters: sayList(eaters) })
      : say('the oldest that suits this meal'),
  'least cost': () => say('best for the whole trip'),
  'no other': () => say('nothing else that is free suits this meal'),
  'as good': (reason) => say('{other} would do as well', { other: otherOf(reason) }),
  'next best': (reason) =>
    say('{other} would cost {points} points more, for {cost}', {
      other: otherOf(reason),
      points: sayNumber(reason.points ?? 0, { maximumFractionDigits: 1 }),
      cost: known(TERM_WORDS, reason.cost),
    }),
  'best found': () => say('from the best menu found'),
  'of a choice': ({ choice }) => say('from the menu "{choice}"', { choice: known(CHOICE_WORDS, choice) }),
  'fills the day': () => say('fills up the day'),
  'from an older menu': () => say('from an older menu'),
};

/** What each part of the points of a menu is about, in a word or two. */
export const TERM_WORDS: Readonly<Record<string, Text>> = {
  hunger: text('hunger'),
  mealSize: text('meals too small or too large'),
  leftOver: text('leftovers'),
  dishes: text('more to cook'),
  repeats: text('the same again'),
  tastes: text('tastes'),
  extras: text('extras'),
  burden: text('weight, fuel and shelf life'),
  protein: text('little protein'),
};

/** @returns why a dish is at a meal, without a full stop: `reasonText({ code: 'oldest for all' })` is "the oldest that suits everyone" */
export const reasonText = (reason: Reason): string => WORDS[reason.code](reason);

const otherOf = ({ recipe, lot }: Reason): string =>
  recipe !== undefined && lot !== undefined ? `${recipe} (${lot})` : (recipe ?? lot ?? say('another dish'));

function known(words: Readonly<Record<string, Text>>, code: string | undefined): string {
  const word = code === undefined ? undefined : words[code];
  return word ? say(word) : (code ?? say('the whole trip'));
}
