import { allergenLabel } from '../planning/model/allergens.ts';
import { dietLabel } from '../planning/model/diets.ts';
import type { Notice, NoticeCode, NoticeOf } from '../planning/model/notices.ts';
import { MOST_IN_PROPOSED_GROUP } from '../planning/model/meal-rules.ts';
import { FUEL_WORDS, MEAL_WORDS } from '../planning/model/words.ts';
import { friendlyAmount } from '../planning/units/fractions.ts';
import { show, shownExactly, type UnitSystem } from '../planning/units/show.ts';
import { energyText } from './figures.ts';
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
      '{eater} is {missing} short on {count, plural, one {day} other {days}} {days}. See Missing.',
      hungerOf(eater, params, units),
    ),
  'hungry-by-exclusions': ({ eater = '', params }, units) =>
    say(
      '{eater} ({exclusions}) is {missing} short on {count, plural, one {day} other {days}} {days}: {lots, plural, one {# lot would fit but is} other {# lots would fit but are}} not suitable for {eater}. See Missing.',
      {
        ...hungerOf(eater, params, units),
        exclusions: exclusionWords(params).join(', '),
        lots: params.lots,
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
  'steeper-than-equation': ({ day = 0, params: { upM, downM, steepestUp, steepestDown } }, units) => {
    const steep = {
      day,
      up: show(upM, 'distance', units),
      down: show(downM, 'distance', units),
      steepestUp: show(steepestUp, 'share', units),
      steepestDown: show(steepestDown, 'share', units),
    };
    if (downM === 0)
      return say(
        'Day {day}: {up} is steeper than {steepestUp} uphill, beyond the range the walking equation was tested for, so it is extrapolated.',
        steep,
      );
    return upM === 0
      ? say(
          'Day {day}: {down} is steeper than {steepestDown} downhill and is treated as {steepestDown}.',
          steep,
        )
      : say(
          'Day {day}: {up} is steeper than {steepestUp} uphill, beyond the range the walking equation was tested for, so it is extrapolated. {down} is steeper than {steepestDown} downhill and is treated as {steepestDown}.',
          steep,
        );
  },

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

  'no-fuel-container': ({ params: { fuel } }) =>
    say(
      'No containers are listed for {fuel}, so its weight is missing from the packs. Add the sizes you can buy under Settings.',
      { fuel: say(FUEL_WORDS[fuel]) },
    ),
  'cold-for-canister-gas': ({ day = 0 }) =>
    say(
      'Day {day} is cold for canister gas: n-butane stops vaporising below -0.5 °C (31 °F) and isobutane below -11.7 °C (11 °F), and a canister cools itself as it burns. Use a mix rich in isobutane and propane, keep the canister warm inside your clothes and never over a flame, or take a liquid-fuel stove.',
      { day },
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

/** What somebody avoids and keeps to: "no milk", "vegan". */
const exclusionWords = ({
  allergens,
  diets,
}: Pick<NoticeOf<'hungry-by-exclusions'>['params'], 'allergens' | 'diets'>): string[] => [
  ...allergens.map((allergen) => say('no {allergen}', { allergen: allergenLabel(allergen) })),
  ...diets.map(dietLabel),
];
