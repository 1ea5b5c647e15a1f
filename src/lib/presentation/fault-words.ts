import type { BoundUnit, Fault, FaultCode, FaultOf, ValueType } from '../planning/model/faults.ts';
import {
  BARRIER_WORDS,
  FAT_CLASS_WORDS,
  KITCHEN_UNIT_WORDS,
  MEAL_WORDS,
  PROCESS_WORDS,
  WATER_WORDS,
} from './code-words.ts';
import { shownExactly, shownFixed } from './show.ts';
import { say, sayNumber, type Text, text, withUnit } from '../texts/say.ts';

type WordsOf = { readonly [Code in FaultCode]: Text | ((params: FaultOf<Code>['params']) => string) };

const TYPES: Readonly<Record<ValueType, Text>> = {
  string: text('must be a text'),
  number: text('must be a number'),
  int: text('must be a whole number'),
  boolean: text('must be true or false'),
  array: text('must be a list'),
  object: text('must be an object with fields'),
  other: text('is of the wrong kind'),
};

const WORDS: WordsOf = {
  'not-json': (params) => say('is no valid JSON: {fault}', params),
  'not-of-type': ({ type }) => say(TYPES[type]),
  'not-of-form': text('is not of a form that is known'),
  'unknown-fields': ({ count, fields }) =>
    say(
      'has the unknown {count, plural, one {field} other {fields}} {fields}; check the spelling or remove it',
      {
        count,
        fields: [...fields.map((field) => `"${field}"`), ...(count > fields.length ? ['…'] : [])].join(', '),
      },
    ),
  'not-one-of': ({ known, found }) =>
    found === undefined
      ? say('must be one of: {known}', { known: known.join(', ') })
      : say('must be one of: {known}; found "{found}"', { known: known.join(', '), found }),
  missing: ({ must }) => say('is missing; it {must}', { must: faultText(must) }),
  under: ({ least, unit }) => say('must be at least {least}', { least: boundText(least, unit) }),
  over: ({ most, unit }) => say('must be at most {most}', { most: boundText(most, unit) }),
  negative: text('must not be negative'),
  'not-positive': text('must be more than 0'),
  'too-short': text('is too short'),
  'too-long': (params) => say('must be at most {most, number} characters', params),
  'too-few': (params) => say('must have at least {least, number} entries', params),
  'too-many': (params) => say('must have at most {most, number} entries', params),
  empty: text('must not be empty'),
  'not-filled-in': text('please fill this in'),
  'not-one-line': text('must be a single line'),
  'control-characters': text('must be text without control characters'),
  'not-a-code': text('must be a single line without / ? #'),
  'not-a-currency': text('must be an ISO 4217 code such as EUR'),
  'not-a-date': text('must be a date such as 2026-07-04'),
  'not-a-uuid': text('must be a UUID'),
  'not-an-instant': text('must be an instant such as 2026-07-04T18:30:00Z'),
  'not-a-number': text('must be a number'),
  'not-a-weight': text('must be a weight'),
  'not-a-volume': text('must be a volume'),
  'not-a-distance': text('must be a distance'),
  'not-an-altitude': text('must be an altitude'),
  'not-a-height': text('must be a height'),
  'not-a-temperature': text('must be a temperature'),
  'not-an-area': text('must be an area'),
  'not-a-depth': text('must be a depth'),
  'not-a-power': text('must be a power'),
  'not-a-share': text('must be a share'),
  'not-a-factor': text('must be a factor'),
  'not-an-amount': text('must be an amount'),
  'not-from-0-to-1': text('must be a number from 0 to 1'),
  'not-grams': text('must be a number of grams'),
  'not-milligrams': text('must be a number of milligrams'),
  'not-millilitres': text('must be a number of ml'),
  'not-kcal': text('must be a number of kcal'),
  'not-kwh': text('must be a number of kWh'),
  'not-minutes': text('must be a number of minutes'),
  'not-hours': text('must be a number of hours'),
  'not-months': text('must be a number of months'),
  'not-years': text('must be a number of years'),
  'not-points': text('must be a number of points'),
  'not-minor-units': text('must be whole minor units, such as cents'),
  'not-whole': text('must be a whole number'),
  'not-whole-within': (params) => say('must be a whole number from {least} to {most}', params),
  'not-whole-days': text('must be a whole number of days'),
  'not-whole-meals': text('must be a whole number of meals'),
  'not-whole-pieces': text('must be a whole number of pieces'),
  'not-whole-pouches': text('must be a whole number of pouches'),

  'no-meal': text('must name at least one meal'),
  'over-whole': text('must be at most 100 g in 100 g'),
  'richer-than-fat': (params) =>
    say('must be at most {most} kcal per 100 g, which is a little more than pure fat gives', params),
  'best-before-sealing': ({ bestBefore, sealedOn }) =>
    say('best-before {best} is before the sealing date {sealed}', { best: bestBefore, sealed: sealedOn }),
  'lot-richer-than-fat': ({ kcalPerG }) =>
    say(
      '{richness} kcal per gram of dry weight is more than pure fat gives; check kJ or kcal, and per serving or per pouch',
      { richness: shownFixed(kcalPerG, 1) },
    ),
  'no-energy': text('no energy is stated'),
  'little-energy': ({ kcalPerG }) =>
    say('{richness} kcal per gram is low for dry food; is this the wet weight?', {
      richness: shownFixed(kcalPerG, 1),
    }),
  'energy-unlike-parts': ({ statedKcal, byPartsKcal }) =>
    say('the stated {stated} kcal is far from the {reckoned} kcal its protein, fat and carbohydrate give', {
      stated: shownFixed(statedKcal, 0),
      reckoned: shownFixed(byPartsKcal, 0),
    }),
  'parts-over-dry-weight': ({ partsG, dryG }) =>
    say('protein, fat and carbohydrate add up to {parts} g, more than the dry weight of {dry} g', {
      parts: shownFixed(partsG, 0),
      dry: shownExactly(dryG),
    }),
  'much-water': ({ waterMl, dryG }) =>
    say(
      '{water} ml for {dry} g of dry food is more than ten times its weight; check the unit, and whether it is per serving or per pouch',
      { water: shownFixed(waterMl, 0), dry: shownExactly(dryG) },
    ),
  'water-of-no-kind': ({ waterMl }) =>
    say('water type "none" does not go with {water} ml of water', { water: shownFixed(waterMl, 0) }),
  'no-water': ({ waterKind }) =>
    say('water type "{kind}" but no amount of water', { kind: say(WATER_WORDS[waterKind]) }),
  'stir-outside-wait': ({ stirMin, waitMin }) =>
    say('stirring after {stir} min does not fall within the steep time of {steep} min', {
      stir: shownExactly(stirMin),
      steep: shownExactly(waitMin),
    }),
  'place-twice': (params) => say('"{place}" is in the list twice', params),
  'code-twice': ({ lot }) => say('"{code}" is used by two lots; give each its own code', { code: lot }),

  'piece-without-weight': text('pieces need the weight of one: state it below'),
  'volume-without-weight': ({ unit }) =>
    say('"{unit}" is a volume and needs the weight of 1 ml: state it below, or weigh it', {
      unit: say(KITCHEN_UNIT_WORDS[unit]),
    }),
  'lighter-than-tray': ({ tareG }) =>
    tareG === undefined
      ? say('must be more than the empty tray')
      : say('must be more than the empty tray, {weight} g', { weight: shownExactly(tareG) }),
  'heavier-than-loaded': ({ loadedG }) =>
    say(
      "cannot be more than the {weight} g that the tray was loaded with; is the tray's own weight in both?",
      { weight: shownExactly(loadedG) },
    ),
  'more-trays-than-dryer': (params) => say('are {trays}, but "{dryer}" has {most}', params),
  'weighing-not-later': ({ beforeH }) =>
    say('must be later than the weighing before it, after {hours} h', { hours: shownExactly(beforeH) }),
  'tray-without-weight': text('must have a line for each tray'),
  'hotter-than-moist-food': (params) =>
    say('must be at most {most} °C; the middle of moist food gets no hotter', params),
  'no-weekday': text('must name at least one day of the week'),
  'listed-twice': (params) => say('"{name}" is listed twice; tell them apart', params),
  'storage-rule-twice': ({ process, fatClass, barrier, absorber }) =>
    say(
      'is in the table twice: {process}, {fat}, {barrier}, {absorber, select, yes {with absorber} other {without absorber}}; keep one of the two',
      {
        absorber: absorber ? 'yes' : 'no',
        process: say(PROCESS_WORDS[process]),
        fat: say(FAT_CLASS_WORDS[fatClass]),
        barrier: say(BARRIER_WORDS[barrier]),
      },
    ),

  'not-a-whole': text('must add up to 100%'),
  'no-size': text('must list at least one size'),
  'no-fuel-burnt': text('must be less than before the boil, since fuel was burnt'),

  'no-eater': text('must have at least one person'),
  'eater-twice': (params) =>
    say('"{name}" is in the group twice; tell them apart, for instance by an initial', params),
  'child-too-small': (params) =>
    say(
      'must be at least {least} years; for a younger child, ask a professional and enter a daily value',
      params,
    ),
  'trip-too-long': (params) =>
    say(
      'must be at most {most} days; plan a longer journey as several trips with a resupply between them',
      params,
    ),
  'more-days-than-trip': (params) =>
    say('has {days} days, but the trip has only {most}; remove some or add days', params),
  'last-meal-before-first': ({ last, first }) =>
    say('is {last}, before the first meal, {first}, of the same day', {
      last: say(MEAL_WORDS[last]),
      first: say(MEAL_WORDS[first]),
    }),
  'group-twice': (params) => say('"{name}" is used by two cook groups', params),
  'not-in-party': (params) => say('"{name}" is not in the group', params),
  'in-two-groups': (params) => say('"{name}" is in two cook groups', params),
  'in-no-group': (params) => say('leave "{name}" out; put everyone in one', params),
  'day-after-trip': (params) => say('is day {day}, but the trip has only {most} days', params),
  'meal-twice': ({ day, meal }) =>
    say('lists the {meal} of day {day} a second time', { day, meal: say(MEAL_WORDS[meal]) }),
  'lot-twice-at-meal': ({ lot }) =>
    say('lists "{code}" twice at one meal; add up the pouches', { code: lot }),
  'lighter-than-empty': text(
    'is less than the container weighs when empty; weigh again, or correct the empty weight',
  ),
  'heavier-than-before': text('is more than before the trip; weigh again, or correct the weight before'),
  'no-hours-walked': text('must be more than 0; leave a day of rest empty'),
  'left-over-without-servings': text('is missing; say how many servings were left over'),
  'too-many-notes': (params) => say('must be at most {most} notes; send the others after these', params),

  'leg-without-length': text('is missing; climb and descent need the length of the leg'),
  'leg-too-steep': text(
    'and descent together are steeper than 45° on the whole; check the distance, the climb and the descent',
  ),
  'point-not-further': text('must lie further along the route than the point before it'),
  'waypoint-twice': (params) => say('"{name}" is on the route twice; tell them apart', params),
  'beyond-route': ({ endM }) => say('lies beyond the end of the route, {end} m', { end: endM }),
  'no-such-waypoint': (params) => say('"{place}" is no waypoint of the route', params),
  'day-ends-before-last': (params) =>
    say('"{place}" lies before the end of an earlier day; order the days along the route', params),
  'last-day-ends-early': (params) =>
    say(
      '"{place}" is not the end of the route, where the last day ends; leave it open, or add a day',
      params,
    ),
};

/** @returns what is wrong and what would be right, after the name of its field: "must be at most 80 kg". */
export function faultText({ code, params }: Fault): string {
  const words = WORDS[code] as Text | ((given: typeof params) => string);
  return typeof words === 'string' ? say(words) : words(params);
}

/** A bound with its unit. Units that are the same in every language are written as they are. */
function boundText(value: number, unit: BoundUnit | undefined): string {
  switch (unit) {
    case undefined:
      return sayNumber(value);
    case 'd':
      return say('{value, plural, one {# day} other {# days}}', { value });
    case 'years':
      return say('{value, plural, one {# year} other {# years}}', { value });
    case 'meals':
      return say('{value, plural, one {# meal} other {# meals}}', { value });
    case 'points':
      return say('{value, number} points', { value });
    case 'minor':
      return say('{value, number} minor units', { value });
    case 'kcal/d':
    case 'km/d':
    case 'm/d':
      return say('{amount} a day', { amount: `${sayNumber(value)} ${unit.slice(0, -2)}` });
    default:
      return withUnit(sayNumber(value), unit);
  }
}
