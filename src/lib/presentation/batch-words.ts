import type { BatchNotice, BatchNoticeCode } from '../planning/drying/batch-notices.ts';
import type { BatchSheet, SealingHold } from '../planning/drying/batch-sheet.ts';
import type { CostKind } from '../planning/drying/costs.ts';
import type { DrynessGap } from '../planning/drying/dryness.ts';
import type { RunBasis } from '../planning/drying/expect-run.ts';
import type { ContainerName } from '../planning/drying/portioning.ts';
import type { Measurement } from '../planning/drying/quick-batch.ts';
import type { RecipeProblem } from '../planning/drying/recipe-totals.ts';
import {
  BEAN_RULE,
  PASTEURISING,
  TWO_HOUR_RULE,
  type CheckGap,
  type HeatedClass,
  type SafetyCheck,
} from '../planning/drying/safety-steps.ts';
import type { SealingBlock } from '../planning/drying/sealed-lots.ts';
import { TABLE_C, type Keeping } from '../planning/drying/storage.ts';
import { BARRIER_WORDS, FAT_CLASS_WORDS, PROCESS_WORDS } from './code-words.ts';
import { showBoth } from './both.ts';
import { fromCore } from '../planning/units/convert.ts';
import { show, shownFixed, type UnitSystem } from './show.ts';
import { say, sayList, sayNumber, sayPercent, type Text, text } from '../texts/say.ts';
import { compositionDoubtText } from './composition-words.ts';
import { faultText } from './fault-words.ts';

/** A batch sheet as a person reads it. */
export type WordedSheet = ReturnType<typeof wordedSheet>;

/**
 * A batch sheet with the texts of all its codes, in the language around.
 *
 * @param units those of the reader
 */
export function wordedSheet(sheet: BatchSheet, units: UnitSystem) {
  const { expected, dryness, cost } = sheet;
  return {
    ...sheet,
    expected: { ...expected, run: { ...expected.run, basis: runBasisText(expected.run.basis) } },
    dryness: {
      ...dryness,
      trays: dryness.trays.map((tray) => ({ ...tray, open: tray.open.map(drynessGapText) })),
    },
    cost: { ...cost, lines: cost.lines.map((line) => ({ ...line, what: say(COST_WORDS[line.what]) })) },
    fills: sheet.fills.map((fill) => ({
      ...fill,
      name: containerText(fill.name),
      keeping: fill.keeping && { ...fill.keeping, terms: shelfLifeTerms(fill.keeping) },
    })),
    checks: sheet.checks.map((check) => ({
      ...check,
      text: checkText(check),
      source: checkSource(check),
      open: check.open && checkGapText(check.open),
    })),
    notices: sheet.notices.map((notice) => ({ ...notice, text: batchNoticeText(notice, units) })),
    blocks: sheet.blocks.map((block) => sealingBlockText(block, units)),
    holds: sheet.holds.map(sealingHoldText),
    notMeasured: sheet.notMeasured.map((what) => say(MEASUREMENT_WORDS[what])),
  };
}

const MEASUREMENT_WORDS: Readonly<Record<Measurement, Text>> = {
  dish: text('weight of the cooked dish'),
  trays: text('weight of the trays'),
  dryness: text('dryness'),
  cup: text('volume of the dry food'),
  electricity: text('electricity'),
};

type WordsOf = {
  readonly [Code in BatchNoticeCode]: (
    params: Extract<BatchNotice, { code: Code }>['params'],
    units: UnitSystem,
  ) => string;
};

const NOTICE_WORDS: WordsOf = {
  'recipe-problem': recipeProblemText,
  'composition-doubt': ({ food, doubt }) => `${food}: ${compositionDoubtText(doubt)}.`,
  'high-in-fat': fatText,
  'cooked-in-future': ({ date }) =>
    say('It is on the trays, but the cooking date {date} is in the future. Check the date.', { date }),
  'no-price': ({ foods }) =>
    say('No price for {foods}, so the cost shown is too low.', { foods: sayList(foods) }),
  'more-on-trays-than-cooked': ({ wetG, cookedG }, units) =>
    say(
      "There are {wet} on the trays, more than the {cooked} that were cooked. Weigh the cooked dish, or check the trays' own weights.",
      { wet: food(wetG, units), cooked: food(cookedG, units) },
    ),
  'dish-not-weighed': ({ cookedG, wetG, share }, units) =>
    say(
      'The cooked dish was not weighed. By its cooking yield it should be {cooked}, so the {wet} on the trays count as {share} of it. If all of it is on the trays, enter its weight.',
      { cooked: food(cookedG, units), wet: food(wetG, units), share: show(share, 'share', units) },
    ),
  'trays-too-heavy': ({ mostG, trays }, units) =>
    say('More than the {most} limit on a tray: {trays}. It will dry slowly or stay damp inside.', {
      most: food(mostG, units),
      trays: trays
        .map(({ number, value }) =>
          say('tray {number} with {weight}', { number, weight: food(value, units) }),
        )
        .join(', '),
    }),
  'trays-too-deep': ({ mostMm, trays }) =>
    say('Food deeper than {most} mm: {trays}. It will dry slowly or stay damp inside.', {
      most: sayNumber(mostMm),
      trays: trays
        .map(({ number, value }) => say('{depth} mm on tray {number}', { depth: whole(value), number }))
        .join(', '),
    }),
  'too-few-trays': ({ cookedG, needed, dryer, count }, units) =>
    say(
      '{cooked} needs {needed} trays, but "{dryer}" has {count}. Eat, chill or freeze the rest right away and dry it in another batch.',
      { cooked: food(cookedG, units), needed: String(needed), dryer, count: String(count) },
    ),
  'lighter-than-dry-matter': ({ number, weightG, solidsG }, units) =>
    say(
      'Tray {number} weighs {weight}, less than its dry matter by the recipe ({solids}). Check the empty tray weight, the scale, and the water content of the ingredients.',
      { number, weight: food(weightG, units), solids: food(solidsG, units) },
    ),
  'wetter-than-others': ({ number, share, least }) =>
    say(
      'Tray {number} is wetter than the driest tray ({share} against {least}): a cold spot in the dryer, or a thicker layer. Turn or swap it.',
      { number, share: percent(share), least: percent(least) },
    ),
  'volume-estimated': () =>
    say(
      'No cup of dry food has been weighed, so the volume is an estimate. Weigh one before you choose pouches.',
    ),
  'cup-too-heavy': () =>
    say('That is heavier than a cup packed without any air. Check the weight and the volume.'),
  'stir-outside-wait': ({ stirMin, waitMin }) =>
    say(
      'Stirring after {stir} min is outside the {steep} min rehydration time, so it is left off the lots.',
      {
        stir: String(stirMin),
        steep: String(waitMin),
      },
    ),
  'more-packed-than-dry': ({ packedG, dryG }, units) =>
    say('You are packing {packed} of dry food, but only {dry} is on the trays.', {
      packed: food(packedG, units),
      dry: food(dryG, units),
    }),
  'no-pouch-size': () => say('No pouch or jar is listed yet. Add one under Equipment.'),
  'serving-too-large': ({ servingMl }) =>
    say(
      'One serving takes {volume} ml, and none of your pouches fits that plus headspace. Add a larger pouch under Equipment, or divide into more servings.',
      { volume: whole(servingMl) },
    ),
  'more-in-pouches': ({ inPouches, servings }) =>
    say(
      'The pouches hold {held} servings, but there are only {servings}. Use fewer pouches, or divide into more servings.',
      { held: tidy(inPouches), servings: tidy(servings) },
    ),
  'servings-left': ({ left, servings }) =>
    say('{left} of {servings} servings are not in a pouch yet.', {
      left: tidy(left),
      servings: tidy(servings),
    }),
  'pouch-overfull': ({ servings, pouch, fits }) =>
    say('{servings} servings are more than {pouch} can hold; servings that fit: {fits}.', {
      servings: tidy(servings),
      pouch: containerText(pouch),
      fits: String(fits),
    }),
  'pouch-overflows': ({ servings, pouch, fullMl, pouchMl }) =>
    say(
      '{servings} servings with their water are {full} ml, and {pouch} holds {room} ml. Choose fewer servings or a larger pouch, or mark it under Equipment as not eaten from.',
      {
        servings: tidy(servings),
        pouch: containerText(pouch),
        full: whole(fullMl),
        room: whole(pouchMl),
      },
    ),
  'no-headspace': ({ servings, pouch, fits }) =>
    say('{servings} to a pouch do not fit into {pouch} with the headspace; servings that fit: {fits}.', {
      servings: tidy(servings),
      pouch: containerText(pouch),
      fits: String(fits),
    }),
  'no-absorber': ({ pouch }) =>
    say('{pouch} has no oxygen absorber, so it will not keep as long.', { pouch: containerText(pouch) }),
  'absorber-too-small': ({ pouch, oxygenMl, neededMl, absorbedMl }) =>
    say(
      '{pouch} traps about {oxygen} ml of oxygen. With the reserve it needs {needed} ml of absorber capacity, but has {absorbed} ml.',
      {
        pouch: containerText(pouch),
        oxygen: whole(oxygenMl),
        needed: whole(neededMl),
        absorbed: whole(absorbedMl),
      },
    ),
  'germs-can-grow': ({ waterActivity, measured, limit }) =>
    say(
      'The water activity is {measured, select, yes {} other {at least }}{value}. From {limit} on, bacteria can grow, and without oxygen the one that causes botulism. You cannot smell or taste it. Do not seal this food: dry it on, or eat it now.',
      {
        measured: measured ? 'yes' : 'no',
        value: shownFixed(waterActivity, 2),
        limit: shownFixed(limit, 2),
      },
    ),
  'raw-meat-in-warm-air': () =>
    say(
      'Do not dry raw meat, poultry or fish in warm air: germs grow before it is dry. Cook it first, and say so in the recipe.',
    ),
  'allergens-undeclared': ({ foods }) =>
    say(
      'Allergens are not declared for {foods}. Declare them in the recipe, or for the whole batch below. Otherwise the lots are marked "allergens not declared" and are never served to anyone who avoids an allergen.',
      { foods: sayList(foods) },
    ),
};

/** @returns a notice of a batch as a person reads it. @param units those of the reader */
export function batchNoticeText(
  { code, params }: Pick<BatchNotice, 'code' | 'params'>,
  units: UnitSystem,
): string {
  const words = NOTICE_WORDS[code] as (given: typeof params, units: UnitSystem) => string;
  return words(params, units);
}

/** @returns what keeps a recipe from being calculated with, and what to do. */
export function recipeProblemText(problem: RecipeProblem, units: UnitSystem): string {
  switch (problem.code) {
    case 'no-ingredients':
      return say('No ingredients yet. Add what goes in.');
    case 'no-dry-matter':
      return say(
        'The ingredients contain no dry matter, so nothing would be left after drying. Check the ingredients.',
      );
    case 'more-fat-drained-than-there-is':
      return say(
        'The fat poured off is more than all the fat of the ingredients, {fat}. Correct one of them.',
        {
          fat: food(problem.fatG, units),
        },
      );
    case 'lighter-than-dry-matter':
      return say(
        'The cooked dish weighs {cooked}, less than the dry matter of its ingredients, {solids}. Check the {field, select, cookedG {weight} other {cooking yield}}, the amounts and their water.',
        {
          cooked: food(problem.cookedG, units),
          solids: food(problem.solidsG, units),
          field: problem.field,
        },
      );
  }
}

/** @returns the caution for food whose fat will not keep. @param share fat in the dry matter */
export function fatText({ share }: { readonly share: number }): string {
  return say(
    'Fat is {share} of the dry matter. Fat does not dry and does not keep: it goes rancid first and can leave the tray greasy. Drain or rinse it off, use leaner cuts, or plan to eat it soon.',
    { share: show(share, 'share', 'metric') },
  );
}

/** @returns a pouch as its owner calls it, or half of one. */
export const containerText = ({ label, half }: ContainerName): string =>
  half ? say('half of {pouch}', { pouch: label }) : label;

const COST_WORDS: Readonly<Record<CostKind, Text>> = {
  ingredients: text('ingredients'),
  electricity: text('electricity'),
  turnaround: text('electricity between runs'),
  pouches: text('pouches'),
  absorbers: text('oxygen absorbers'),
  machine: text('share of the machine'),
};

/** @returns why a tray does not count as dry. */
export function drynessGapText(gap: DrynessGap): string {
  switch (gap.code) {
    case 'not-weighed':
      return say('it has not been weighed yet');
    case 'weighed-once':
      return say('needs a second weighing at least an hour later');
    case 'weighed-too-soon':
      return say('the last two weighings are less than {hours} h apart', { hours: sayNumber(gap.leastH) });
    case 'still-losing':
      return say('lost {loss} g in {hours} h; the limit for that time is {most} g', {
        loss: shownFixed(gap.lostG, 1),
        hours: shownFixed(gap.hours, 1),
        most: shownFixed(gap.mostG, 1),
      });
    case 'scale-too-coarse':
      return say(
        'the scale shows steps of {step} g, too coarse for {hours} h: weigh again {wait} h after the weighing before',
        {
          step: sayNumber(gap.stepG),
          hours: shownFixed(gap.hours, 1),
          wait: shownFixed(gap.waitH, 1),
        },
      );
    case 'gained-weight':
      return say(
        'has gained weight since the last weighing (damp air, or the scale); keep drying and weigh again',
      );
    case 'too-moist':
      return say('may still contain {share} water by weight, not counting fat; the limit is {most}', {
        share: percent(gap.share),
        most: percent(gap.most),
      });
    case 'not-felt':
      return say('not checked by feel yet');
    case 'cold-spot':
      return say('cold spot: there is still ice or water inside');
    case 'damp-spot':
      return say('damp or soft spot');
    case 'lighter-than-dry-matter':
      return say('weighs less than its dry matter should, so the weight cannot be trusted');
  }
}

/** @returns what the hours and the electricity of a run stand on. */
export function runBasisText({ hours, energy }: RunBasis): string {
  return say('Hours by {hours}; electricity by {energy}.', {
    hours: hours
      ? say(
          '{runs}{kind, select, frozen { pre-frozen} plain { not pre-frozen} other {}} {runs, plural, one {run} other {runs}} of "{dryer}"',
          hours,
        )
      : say('a rule of thumb, since no run of this dryer is known yet'),
    energy:
      'meteredRuns' in energy
        ? say('{count} metered', { count: energy.meteredRuns })
        : say('its mean power of {watts} W', { watts: String(energy.meanPowerW) }),
  });
}

/** @returns how a shelf life came about, line by line. */
function shelfLifeTerms({ from: { line, warmth, moisture, meatDays } }: Keeping): string[] {
  const terms = [
    say(
      '{months} months: {process}, {fat}, {barrier}, {absorber, select, yes {with} other {without}} oxygen absorber, at {warmth} °C',
      {
        months: String(line.months),
        process: say(PROCESS_WORDS[line.process]),
        fat: say(FAT_CLASS_WORDS[line.fatClass]),
        barrier: say(BARRIER_WORDS[line.barrier]),
        absorber: line.absorber ? 'yes' : 'no',
        warmth: TABLE_C,
      },
    ),
  ];
  if (warmth.factor < 1)
    terms.push(
      say('× {factor}: kept at {warmth} °C', {
        factor: shownFixed(warmth.factor, 2),
        warmth: whole(warmth.temperatureC),
      }),
    );
  if (meatDays !== undefined)
    terms.push(
      say('at most {days} days: meat, poultry or fish dried in warm air, kept at {warmth} °C', {
        days: String(meatDays),
        warmth: whole(warmth.temperatureC),
      }),
    );
  if (moisture.factor < 1)
    terms.push(
      say('× {factor}: {residual} residual moisture, {expected} were expected', {
        factor: shownFixed(moisture.factor, 2),
        residual: percent(moisture.residual),
        expected: percent(moisture.expected),
      }),
    );
  return terms;
}

const HEATED_WORDS: Readonly<Record<HeatedClass, Text>> = {
  poultry: text('poultry'),
  'minced meat': text('minced meat'),
  'whole meat': text('whole cuts of meat'),
  fish: text('fish'),
  egg: text('eggs and egg dishes'),
  leftovers: text('reheated food'),
};

/** @returns a safety check as what the cook did, to be ticked. */
export function checkText(check: SafetyCheck): string {
  switch (check.id) {
    case 'hands':
      return say('Washed hands, boards, knives, trays and surfaces before and after.');
    case 'apart':
      return say('Kept raw meat, fish and egg away from ready-to-eat food, on their own boards and trays.');
    case 'two hours':
      return say(
        'No more than {hours} hours above {warm} between the stove and the fridge, freezer or running dryer ({half, plural, one {# hour} other {# hours}} above {hot}).',
        {
          hours: TWO_HOUR_RULE.hours,
          half: TWO_HOUR_RULE.hours / 2,
          warm: showBoth(TWO_HOUR_RULE.aboveC, 'temperature'),
          hot: showBoth(TWO_HOUR_RULE.hotC, 'temperature'),
        },
      );
    case 'dry through':
      return say(
        'Broke open the thickest pieces on every tray: dry to the centre, with nothing cold, damp, soft or bendy that should be crisp.',
      );
    case 'beans boiled':
      return say(
        '{beans}: soaked for at least {soak} hours, water poured away, then boiled hard in fresh water for at least {boil} minutes. Beans that were only warmed are poisonous.',
        { beans: sayList(check.beans), soak: BEAN_RULE.soakH, boil: BEAN_RULE.boilMin },
      );
    case 'dryer air':
      return say(
        'The air in the dryer stayed at {air} or warmer all the time, by a thermometer on a tray. In cooler air germs grow before the meat is dry.',
        { air: showBoth(check.leastC, 'temperature') },
      );
    case 'cooled':
      return say('Cooled to room temperature before sealing. Warm food sweats in the pouch.');
    case 'conditioned':
      return say(
        'Conditioned: kept in a jar two-thirds full for 4 to 10 days, shaken and checked every day. Drops on the glass mean: dry on.',
      );
    case 'pasteurised':
      return say(
        'Pasteurised if insects could reach it, as when dried outdoors: {min} minutes in an oven at {oven}, or 2 days in the freezer. Freezing kills insects, not germs.',
        { min: PASTEURISING.min, oven: showBoth(PASTEURISING.ovenC, 'temperature') },
      );
    case 'marked raw':
      return say(
        'Every pouch is marked as raw, to be cooked through after rehydrating. Germs survive freeze drying.',
      );
    case 'low oxygen':
      return say(
        'Only dry food is sealed with an oxygen absorber. In damp food without oxygen, the bacteria that cause botulism can grow, and you cannot smell or taste them.',
      );
    case 'seams':
      return say(
        'Seams flat, unbroken and airtight; absorbers out of their bag for minutes only. Check the pouches after a day and do not keep any that are loose or puffed up.',
      );
    default:
      return say(
        'Cooked through before drying: {what} to at least {least} in the centre. Drying does not kill germs.',
        { what: say(HEATED_WORDS[check.heated]), least: showBoth(check.leastC, 'temperature') },
      );
  }
}

/** @returns where a safety check is from. */
export function checkSource({ id }: SafetyCheck): string {
  switch (id) {
    case 'hands':
    case 'apart':
      return say('USDA FSIS, basics of handling food safely');
    case 'two hours':
      return say('USDA FSIS, the two-hour rule');
    case 'dry through':
    case 'cooled':
      return say('extension guidance, rule of thumb');
    case 'beans boiled':
      return say('FDA, natural toxins: lectin of kidney beans');
    case 'dryer air':
      return say('USDA FSIS, jerky and food safety');
    case 'conditioned':
    case 'pasteurised':
      return say('Utah State and Michigan State University Extension');
    case 'marked raw':
      return say('university extension on freeze drying at home');
    case 'low oxygen':
      return say('21 CFR 114 and 117: water activity at most 0.85');
    case 'seams':
      return say('rule of thumb');
    default:
      return say('USDA FSIS, jerky and food safety; safe minimum internal temperatures');
  }
}

/** @returns why a check does not count as done. */
export function checkGapText(gap: CheckGap): string {
  switch (gap.code) {
    case 'not-ticked':
      return say('it is not ticked');
    case 'no-temperature':
      return say('no temperature is entered');
    case 'too-early':
      return say('its days in the jar are not over until {until}', { until: gap.until });
    case 'too-cold':
      return say('{reading} is below the required {least}', {
        // a reading just below its limit must not look like it
        reading: `${shownFixed(gap.readingC, 1)} °C (${shownFixed(fromCore(gap.readingC, '°F'), 1)} °F)`,
        least: showBoth(gap.leastC, 'temperature'),
      });
  }
}

/** @returns what is not shown to be dry or safe, as a sentence. */
export function sealingHoldText(hold: SealingHold): string {
  if ('waterActivity' in hold)
    return say(
      'Water activity {reading}: from {limit} on, moulds and yeasts can grow. Dry on and measure again.',
      { reading: shownFixed(hold.waterActivity, 2), limit: shownFixed(hold.limit, 2) },
    );
  if ('inPouches' in hold)
    return say(
      'The pouches may still contain {share} water by weight, not counting fat; the limit is {most}. Check the weights, or open them and dry on.',
      { share: percent(hold.inPouches), most: percent(hold.most) },
    );
  return 'tray' in hold
    ? say('Tray {number}: {reason}.', { number: hold.tray, reason: drynessGapText(hold.open) })
    : `${checkText(hold.check)} – ${checkGapText(hold.open)}.`;
}

/** @returns what keeps a batch from being sealed, as a sentence. */
export function sealingBlockText(block: SealingBlock, units: UnitSystem): string {
  switch (block.code) {
    case 'no-tray-weighed':
      return say('No trays weighed yet.');
    case 'no-pouch-chosen':
      return say('No pouch is chosen.');
    case 'no-shelf-life':
      return say(
        'The shelf-life table has no entry for {process}, {fat} food in {pouch} ({barrier}, {absorber, select, yes {with} other {without}} enough absorber). Add one under Equipment, or enter a best-before date.',
        {
          process: say(PROCESS_WORDS[block.process]),
          fat: say(FAT_CLASS_WORDS[block.fatClass]),
          pouch: containerText(block.pouch),
          barrier: say(BARRIER_WORDS[block.barrier]),
          absorber: block.absorber ? 'yes' : 'no',
        },
      );
    case 'best-before-sealing':
      return say('The best-before date {bestBefore} is before the sealing date {sealedOn}.', {
        bestBefore: block.bestBefore,
        sealedOn: block.sealedOn,
      });
    case 'lot-problem': {
      const word = LOT_FIELD_WORDS[block.field];
      return say('Lot {code} has a problem: {problem}. Check amounts, weights and servings.', {
        code: block.lot,
        problem: word ? `${say(word)} ${faultText(block.fault)}` : faultText(block.fault),
      });
    }
    default:
      return batchNoticeText(block, units);
  }
}

/** Fields of a lot whose messages do not name them. */
const LOT_FIELD_WORDS: Readonly<Record<string, Text>> = {
  dryWeightG: text('dry weight of a serving'),
  energyKcal: text('energy of a serving'),
  waterMl: text('water of a serving'),
  costMinor: text('cost of a serving'),
  bestBefore: text('best-before'),
};

const tidy = (value: number): string => sayNumber(value, { maximumFractionDigits: 2, useGrouping: false });
const whole = (value: number): string => shownFixed(value, 0);
const food = (grams: number, units: UnitSystem): string => show(grams, 'food', units);
const percent = (share: number): string => sayPercent(share, 1);
