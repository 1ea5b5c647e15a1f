import type { ActivityLevel, Term } from '../planning/model/terms.ts';
import { FUEL_WORDS } from './code-words.ts';
import { show, shownExactly, shownFixed, type UnitSystem } from './show.ts';
import { say, text, type Text } from '../texts/say.ts';

const ACTIVITY_WORDS: Readonly<Record<ActivityLevel, Text>> = {
  inactive: text('inactive'),
  'low active': text('low active'),
  active: text('active'),
  'very active': text('very active'),
};

const WORDS: Readonly<Record<Term['code'], Text | ((term: Term, units: UnitSystem) => string)>> = {
  'energy as entered': text('energy target of a full day, as entered'),
  resting: text('resting energy of a day (Mifflin-St Jeor)'),
  altitude: text('more at rest for the altitude'),
  cold: text('more at rest for the cold'),
  sleep: (term) => say('sleep, {hours} h', hours(term)),
  'camp and pauses': (term) => say('camp and pauses, {hours} h', hours(term)),
  digesting: text('digesting'),
  walking: (term) => say('walking, {hours} h on the move (load carriage equation, Looney 2022)', hours(term)),
  'load on the move': text('mean load on the move'),
  requirement: (term) => say('cross-check: NASEM 2023 requirement, {level}', { level: level(term) }),
  'requirement by walk': (term) =>
    say('NASEM 2023 requirement at {age} years, {level} by {hours} h of walking', {
      ...age(term),
      ...hours(term),
      level: level(term),
    }),
  'requirement and walk': (term) =>
    say('NASEM 2023 requirement at {age} years, inactive, and the walk', age(term)),
  'appetite learned': text('times the appetite learned from trips'),
  'day at rest': text('water of a day at rest in moderate weather, food included'),
  'heat off the trail': ({ airC = 0 }, units) =>
    say('more for the hours off the trail at {heat}', { heat: show(airC, 'temperature', units) }),
  'in the food': text('already in the food'),
  'hour of walking': ({ work, wbgtC = 0 }, units) =>
    work === undefined
      ? say('an hour of walking')
      : say(
          'an hour of {work, select, easy {easy} moderate {moderate} hard {hard} other {very hard}} walking at {heat} WBGT',
          { work: work === 'very hard' ? 'other' : work, heat: show(wbgtC, 'temperature', units) },
        ),
  'hours of walking': text('hours of walking'),
  'water to heat': text('water to heat'),
  'heat into water': text('heat into water'),
  'heat into water and pot': text('heat into water and pot'),
  'heat in fuel': ({ fuel = 'canister-gas' }) => say('heat in {fuel}', { fuel: say(FUEL_WORDS[fuel]) }),
  efficiency: ({ basis = 'usual' }) =>
    say(
      'stove efficiency in calm, mild conditions ({basis, select, entered {entered} learned {learned} measured {measured} other {default}})',
      { basis },
    ),
  'efficiency outside': text("efficiency in this trip's wind and cold"),
  'water to remove': text('water to be removed'),
  'load of dryer': text('load, of a full one'),
  'hours of run': text('hours'),
};

/** @returns what a line of how a figure came about stands for. */
export function termText(term: Term, units: UnitSystem): string {
  const words = WORDS[term.code];
  return typeof words === 'string' ? say(words) : words(term, units);
}

const hours = ({ hours = 0 }: Term) => ({ hours: shownFixed(hours, 1) });
const age = ({ ageY = 0 }: Term) => ({ age: shownExactly(ageY) });
const level = ({ level = 'inactive' }: Term): string => say(ACTIVITY_WORDS[level]);
