import { ASCENT } from '../planning/demand/ascent-notices.ts';
import type { Notice, NoticeCode, NoticeOf } from '../planning/model/notices.ts';
import { MOST_IN_PROPOSED_GROUP } from '../planning/model/meal-rules.ts';
import { FUEL_WORDS, MEAL_WORDS } from './code-words.ts';
import { exclusionTexts } from './exclusion-words.ts';
import { friendlyAmount } from './fractions.ts';
import { show, shownExactly, shownFixed, type UnitSystem } from './show.ts';
import { energyText } from './figures.ts';
import { withdrawnText } from './withdrawn-words.ts';
import { say, sayList } from '../texts/say.ts';

/** Most lots that a notice names. */
const MOST_NAMED = 8;

type WordsOf = {
  readonly [Code in NoticeCode]: (notice: NoticeOf<Code>, units: UnitSystem) => string;
};

const WORDS: WordsOf = {
  'meal-outside-trip': (notice) =>
    say(
      "The {meal} on day {day} is outside the trip's first and last meal, so its pouches stay at home.",
      whereOf(notice),
    ),
  'lot-gone': (notice) =>
    say(
      'The {meal} on day {day} uses lot {code}, which is no longer on the shelf. Choose another pouch.',
      whereOf(notice),
    ),
  'lot-past-date': (notice) =>
    say(
      'The {meal} on day {day} uses lot {code} ({recipe}), which will be past its best-before date ({best}). Choose another pouch.',
      { ...whereOf(notice), recipe: notice.params.recipe, best: notice.params.bestBefore },
    ),
  'lot-withdrawn': ({ lot = '', params: { recipe, reason } }) => withdrawnText({ code: lot, recipe, reason }),
  'too-few-pouches': (notice) =>
    say(
      'The {meal} on day {day} needs {wanted} of lot {code} ({recipe}), but only {free, plural, one {# is} other {# are}} free for this trip. Choose another pouch or seal more.',
      { ...whereOf(notice), ...notice.params },
    ),
  'meal-eaten-elsewhere': (notice) =>
    say('Everyone eats elsewhere for {meal} on day {day}, so its pouches stay at home.', whereOf(notice)),
  'portion-not-for-eater': (notice) =>
    say(
      "The {meal} on day {day} has {recipe} ({code}) on {eater}'s plate, which is not suitable for {eater}. It was taken off. Choose another dish.",
      { ...whereOf(notice), recipe: notice.params.recipe, eater: notice.eater ?? '' },
    ),
  'portions-beyond-pouches': (notice) =>
    say(
      'The {meal} on day {day} hands out {wanted} servings of {recipe} ({code}), but only {there} are there. Portions are smaller now. Add a pouch or change the portions.',
      {
        ...whereOf(notice),
        recipe: notice.params.recipe,
        wanted: friendlyAmount(notice.params.wanted),
        there: friendlyAmount(notice.params.there),
      },
    ),
  'needs-stove': (notice) =>
    say(
      '{recipe} ({code}) for {meal} on day {day} cannot be made safely as planned: it needs the stove, must be cooked after rehydrating, or would soak too long. Cook it in a pot, or choose another dish.',
      { ...whereOf(notice), recipe: notice.params.recipe },
    ),
  'shared-out-anew': ({ params: { meals } }) =>
    say(
      '{meals, plural, one {# meal is} other {# meals are}} from an older menu. Portions are now whole quarters. Plan the menu again for better ones.',
      { meals },
    ),
  'reserve-short': ({ params: { meals, missingKcal } }, units) =>
    say(
      'The reserve of {meals, plural, one {# meal} other {# meals}} is {missing} short: the shelf has no more main dishes that keep. Add pouches or plan a smaller reserve.',
      { meals, missing: energyText(missingKcal, units) },
    ),
  'cook-groups-proposed': ({ params: { groups } }) =>
    say(
      'More than {most} people do not cook in one pot, so this plan has {count} cook groups: {groups}. Change them under Group.',
      {
        most: MOST_IN_PROPOSED_GROUP,
        count: groups.length,
        groups: groups.map((names) => sayList(names)).join('; '),
      },
    ),
  hungry: ({ eater = '', params }, units) =>
    say(
      '{eater} is {missing} short on {count, plural, one {day} other {days}} {days}. See Shortfall.',
      hungerOf(eater, params, units),
    ),
  'hungry-by-exclusions': ({ eater = '', params }, units) =>
    say(
      '{eater} ({exclusions}) is {missing} short on {count, plural, one {day} other {days}} {days}: {lots, plural, one {# lot would fit but is} other {# lots would fit but are}} not suitable for {eater}. See Shortfall.',
      {
        ...hungerOf(eater, params, units),
        exclusions: exclusionTexts(params).join(', '),
        lots: params.lots,
      },
    ),
  'lots-estimated': ({ params: { lots } }) =>
    say(
      'Energy or water is an estimate for {count, plural, one {# lot} other {# lots}} on this menu: {codes}. Enter what you know on the shelf.',
      {
        count: lots.length,
        codes: `${lots.slice(0, MOST_NAMED).join(', ')}${lots.length > MOST_NAMED ? ' …' : ''}`,
      },
    ),
  'allergens-undeclared': ({ params: { lots, avoiders } }) =>
    say(
      'Allergens are not declared for {count, plural, one {# lot, so it is} other {# lots, so they are}} not served to {avoiders}: {codes}. Declare them on the shelf, or declare that there are none.',
      {
        count: lots.length,
        avoiders: sayList(avoiders),
        codes: `${lots.slice(0, MOST_NAMED).join(', ')}${lots.length > MOST_NAMED ? ' …' : ''}`,
      },
    ),
  'food-to-come': ({ params: { toBuy, toDry } }) =>
    say(
      'The plan counts on food that is not there yet: {toBuy, plural, one {# food} other {# foods}} to buy, {toDry, plural, one {# dish} other {# dishes}} to dry.',
      { toBuy, toDry },
    ),

  'route-without-elevation': () =>
    say(
      "The track has no elevation, so it is treated as flat. Walking time and energy will be too low where it climbs. Enter each camp's altitude by hand (it sets the boiling point), or import a track with elevation.",
    ),

  'body-data-limits': () =>
    say(
      'Estimates from body data are for healthy adults. If anyone is pregnant, breastfeeding, ill, recovering from an eating disorder, or a child, ask a professional and enter the daily figure they give.',
    ),
  'minor-in-party': ({ eater = '', params: { ageY } }) =>
    say(
      '{name} is {age}: the estimate is for an active {who, select, child {child} other {teenager}}, without the pack, and no deficit is planned. Keep the load light and ask a professional.',
      { name: eater, age: shownExactly(ageY), who: ageY < 9 ? 'child' : 'teenager' },
    ),
  'older-than-equation': ({ eater = '', params: { ageY, mostY } }) =>
    say(
      '{name} is {age}, older than the people the resting-energy equation was tested on (up to {most}); it is used anyway.',
      { name: eater, age: shownExactly(ageY), most: mostY },
    ),
  'planned-deficit': ({ params: { share, eaters } }, units) =>
    say(
      'This plan deliberately provides {share} less than needed, about {masses} of body weight. A deficit costs strength, warmth and judgement. Carry spare food, and ask a professional if anyone is under 18, ill or pregnant.',
      {
        share: show(share, 'share', units),
        masses: sayList(eaters.map(({ eater, bodyG }) => `${eater} ${show(bodyG, 'pack', units)}`)),
      },
    ),
  'beyond-walking-equation': ({ day = 0, params: { beyondM } }, units) =>
    say(
      'Day {day}: {distance} is steeper, faster or more heavily loaded than the walking equation was tested for. It is extrapolated there.',
      { day, distance: show(beyondM, 'distance', units) },
    ),
  'minor-without-need': ({ eater = '' }) =>
    say(
      '{eater} is under 18 and is planned with the energy of the group. Enter a daily figure that a professional gives, or sex, height and body mass.',
      { eater },
    ),
  'long-day': ({ day = 0, params: { hours } }) =>
    say('Day {day} takes {hours} h with rests. Plan where it could be cut short.', {
      day,
      hours: shownFixed(hours, 1),
    }),
  'very-long-day': ({ day = 0, params: { hours } }) =>
    say(
      'Day {day} takes {hours} h with rests. Tired people fall and get lost, and the dark comes early. Split it, or start in the night with lamps for everyone.',
      { day, hours: shownFixed(hours, 1) },
    ),

  'ascent-first-night-high': ({ params: { altitudeM } }, units) =>
    say(
      'The first night is at {altitude}. Without nights in between, altitude illness is likely above {limit}. Sleep lower first, and ask a doctor. With headache, nausea or a staggering walk: do not go higher, go down if it gets worse.',
      {
        altitude: show(altitudeM, 'altitude', units),
        limit: show(ASCENT.firstNightM, 'altitude', units),
      },
    ),
  'ascent-too-fast': ({ params: { riseM, days } }, units) =>
    say(
      'The {count, plural, one {night of day {days} is} other {nights of days {days} are}} up to {rise} higher than the one before. Above {from}, sleep at most {step} higher each night. Altitude illness can kill: with headache, nausea or a staggering walk do not go higher, go down if it gets worse.',
      {
        count: days.length,
        days: days.join(', '),
        rise: show(riseM, 'altitude', units),
        from: show(ASCENT.fromM, 'altitude', units),
        step: show(ASCENT.riseOfNightM, 'altitude', units),
      },
    ),
  'ascent-without-rest': ({ day = 0, params: { riseM, fromDay } }, units) =>
    say(
      'From day {from} to day {day} the nights rise by {rise} without a rest day. Above {above}, plan a night at the same height for every {step}.',
      {
        from: fromDay,
        day,
        rise: show(riseM, 'altitude', units),
        above: show(ASCENT.fromM, 'altitude', units),
        step: show(ASCENT.riseToRestM, 'altitude', units),
      },
    ),

  'too-little-water-capacity': ({ day = 0, params: { place, waterMl, capacityMl, toDryCamp } }, units) =>
    say(
      'Day {day}: from {place} the group must carry {water}, but its bottles and water bags hold {room}. Take more containers, or plan a source before {next, select, dry {or at the dry camp} other {the next one}}.',
      {
        day,
        place,
        water: show(waterMl, 'water', units),
        room: show(capacityMl, 'water', units),
        next: toDryCamp ? 'dry' : 'source',
      },
    ),

  'heat-danger': ({ day = 0, params: { airTemperatureC, category, avoid } }, units) =>
    say(
      'Day {day}: heat stroke can kill on this walk. {heat} is heat category {category} of 5{avoid, select, yes {, too hot for work this hard} other {}}. Put the walk off, or walk at dawn and in the shade only. If someone is confused, stumbles or has hot skin: stop, cool with water, call for help.',
      {
        day,
        heat: show(airTemperatureC, 'temperature', units),
        category,
        avoid: avoid ? 'yes' : 'no',
      },
    ),
  'heat-walk-too-long': ({ day = 0, params: { workMin, restMin, neededH } }) =>
    say(
      'Day {day}: with {work} min of walking and {rest} min of rest in each hour, this walk takes {hours} h. That does not fit into a day. Shorten it or split it.',
      { day, work: workMin, rest: restMin, hours: shownFixed(neededH, 1) },
    ),
  'heat-rests': ({ day = 0, params: { workMin, restMin, neededH, acclimatised } }) =>
    say(
      'Day {day}: in this heat, walk {work} min and rest {rest} min in the shade in each hour ({used, select, yes {used to the heat} other {not used to the heat}}). With these rests the walk takes {hours} h.',
      {
        day,
        work: workMin,
        rest: restMin,
        hours: shownFixed(neededH, 1),
        used: acclimatised ? 'yes' : 'no',
      },
    ),
  'sweat-above-drinking-limit': ({ day = 0, params: { eaters } }) =>
    say(
      'Day {day}: {names} would sweat more than anyone may drink. Drinking more than planned harms as thirst does. Walk less, rest in the shade and eat something salty.',
      { day, names: sayList(eaters) },
    ),

  'filter-may-freeze': ({ day = 0, params: { nightC } }, units) =>
    say(
      'Nights down to about {night} (day {day}) can freeze a water filter. Frost breaks its fibres without a trace, and then it holds nothing back. Keep it on your body and in the sleeping bag. Once frozen, do not trust it: boil, or use tablets.',
      { day, night: show(nightC, 'temperature', units) },
    ),
  'water-not-treated': () =>
    say(
      'Natural water is not treated on this trip. Clear water can make you seriously ill. Boil, filter or treat it, unless it comes from a tap that is safe.',
    ),
  'water-without-stove': ({ day = 0, params: { boils, melts } }) =>
    say(
      'Day {day} has no stove, so {what, select, boils {water cannot be boiled to make it safe} melts {snow cannot be melted} other {water cannot be boiled to make it safe, and snow cannot be melted}}. Unsafe or too little water can make you seriously ill. Carry safe water, or take a filter or tablets and camp by a source.',
      { day, what: boils && melts ? 'both' : boils ? 'boils' : 'melts' },
    ),
  'fuel-not-flown': ({ day = 0 }) =>
    say(
      'Day {day} is a flight. Passenger aircraft do not carry stove fuel. Buy it after landing, and ask the airline how to pack the stove.',
      { day },
    ),
  'no-fuel-container': ({ params: { fuel } }) =>
    say(
      'No containers are listed for {fuel}, so its weight is missing from the packs. Add the sizes you can buy under Settings.',
      { fuel: say(FUEL_WORDS[fuel]) },
    ),
  'cold-for-canister-gas': ({ day = 0, params: { gas, coldestC, gasBoilsC } }, units) =>
    say(
      'Day {day} is cold for canister gas: down to about {coldest}, and its {gas, select, butane {butane} other {isobutane}} stops vaporising at {limit} there. A canister also cools itself as it burns. {gas, select, butane {Take canisters with isobutane,} other {Keep the canister warm in your clothes,}} or take a liquid-fuel stove. Never warm a canister over a flame.',
      {
        day,
        gas,
        coldest: show(coldestC, 'temperature', units),
        limit: show(gasBoilsC, 'temperature', units),
      },
    ),
  'stove-safety': () =>
    say(
      'Check whether fires and stoves are banned on your route at that time of year. Never use a stove in a closed tent or hut: carbon monoxide can kill.',
    ),

  'nobody-may-carry': ({ params: { recipe, avoiders } }) =>
    say(
      '{recipe} contains, or may contain, what everyone in the group avoids ({avoiders}), so no one may carry it. Leave it at home or declare its allergens.',
      { recipe, avoiders: sayList(avoiders) },
    ),
  'load-noticeable': loadText,
  'load-heavy': loadText,
  'load-harmful': loadText,
  'pouches-swell': ({ params: { altitudeM, factor } }, units) =>
    say(
      'At {altitude}, air in a pouch sealed at sea level takes {factor} times the room. Press the air out before sealing, and pack loosely. If a pouch stays puffed up lower down, throw it away.',
      { altitude: show(altitudeM, 'altitude', units), factor: shownFixed(factor, 1) },
    ),
  'gear-of-minors': ({ params: { eaters } }) =>
    say(
      'Add the sleeping bag and clothes of {names} to the base weight of the person who carries them. Children get a small base weight by default.',
      { names: sayList(eaters) },
    ),
  'food-beyond-container': ({ eater = '', day = 0, params: { days, foodMl, roomMl } }, units) =>
    say(
      "{eater}'s food does not fit in the container on {count, plural, one {night} other {nights}} {days}: about {food} on night {day}, room for {room}. Take a larger one or repack the food.",
      {
        eater,
        count: days.length,
        days: days.join(', '),
        day,
        food: show(foodMl, 'water', units),
        room: show(roomMl, 'water', units),
      },
    ),
  'over-carry-limit': ({ eater = '', day = 0, params: { days, when } }) =>
    say(
      '{eater} is over the carry limit on {count, plural, one {day} other {days}} {days}; the heaviest is day {day}, {when}. Cut the base weight, raise the limit, or share the load among more people.',
      { eater, count: days.length, days: days.join(', '), day, when },
    ),
};

/**
 * A notice as a person reads it: what, where, and what to do.
 *
 * @param units those of the reader
 * @example noticeText(notice('lot-gone', {}, { day: 1, meal: 'dinner', lot: 'CH-01' }), 'metric')
 *   // 'The dinner on day 1 uses lot CH-01, which is no longer on the shelf. Choose another pouch.'
 */
export function noticeText(notice: Notice, units: UnitSystem): string {
  const words = WORDS[notice.code] as (notice: Notice, units: UnitSystem) => string;
  return words(notice, units);
}

function loadText(
  {
    eater = '',
    day = 0,
    params: { share, minor },
  }: NoticeOf<'load-noticeable' | 'load-heavy' | 'load-harmful'>,
  units: UnitSystem,
): string {
  const load = { eater, day, share: show(share, 'share', units) };
  return minor
    ? say(
        '{eater} carries {share} of their body mass on day {day}. For children and youths, 10 to 15% is the limit that evidence supports and 20% the very most. Give the load to adults.',
        load,
      )
    : say(
        '{eater} carries {share} of their body mass on day {day}. Heavy packs tire, and hurt backs, knees and feet. Leave things at home, share the load or resupply on the way.',
        load,
      );
}

const whereOf = ({ day = 0, meal, lot = '' }: Notice) => ({
  day,
  meal: meal ? say(MEAL_WORDS[meal]) : '',
  code: lot,
});

const hungerOf = (
  eater: string,
  { missingKcal, days }: { missingKcal: number; days: readonly number[] },
  units: UnitSystem,
) => ({ eater, missing: energyText(missingKcal, units), count: days.length, days: days.join(', ') });
