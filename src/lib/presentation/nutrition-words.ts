import type { EatenNutrient, NutrientRange } from '../planning/model/nutrition.ts';
import type { Nutrient, NutrientStanding, RangeSource } from '../planning/model/words.ts';
import { say, sayNumber, text, type Text, withUnit } from '../texts/say.ts';
import { show } from './show.ts';

/** How each is called. */
export const NUTRIENT_WORDS: Readonly<Record<Nutrient, Text>> = {
  protein: text('Protein'),
  carbohydrate: text('Carbohydrate'),
  fat: text('Fat'),
  fibre: text('Fibre'),
  sodium: text('Sodium'),
};

/** How each is said beside its range; what is within says nothing. */
export const STANDING_WORDS: Readonly<Record<NutrientStanding, Text | undefined>> = {
  below: text('below {range}'),
  within: text('within {range}'),
  above: text('above {range}'),
  unknown: text('too little stated to compare'),
  'no range': undefined,
};

/** Whom the ranges of each source are for. */
export const SOURCE_WORDS: Readonly<Record<RangeSource, Text>> = {
  'IOM 2005': text(
    'Shares of energy and fibre: Institute of Medicine 2005, for everyday eating. Ages 4 to 18 have their own.',
  ),
  'IOM 2006': text(
    'Grams of carbohydrate and fibre on days of {hours} h and more: a ration for hard days in the field, Institute of Medicine 2006.',
  ),
  'ACSM 2009': text(
    'Protein per kilogram on walking days: American College of Sports Medicine 2009, for adults in training.',
  ),
};

const percent = (share: number) => show(share, 'share', 'metric');
const whole = (value: number) => sayNumber(value, { maximumFractionDigits: 0 });

/** @returns an amount of a nutrient: "92 g", and sodium as "2,310 mg", to 10 mg. */
export const nutrientText = (nutrient: Nutrient, amount: number): string =>
  nutrient === 'sodium' ? `${whole(Math.round(amount / 10) * 10)} mg` : `${whole(amount)} g`;

/** @returns a range as it was published: "45 to 65%", "1.2 to 1.7 g/kg", "at least 15 g". */
export function rangeText({ unit, least, most }: NutrientRange): string {
  const bare = (value: number) =>
    sayNumber(unit === 'share of energy' ? value * 100 : value, {
      maximumFractionDigits: unit === 'g/kg' ? 1 : 0,
    });
  const shown = (value: number) => withUnit(bare(value), unit === 'share of energy' ? '%' : unit);
  if (least !== undefined && most !== undefined)
    return say('{least} to {most}', { least: bare(least), most: shown(most) });
  return least === undefined
    ? say('at most {most}', { most: shown(most ?? 0) })
    : say('at least {least}', { least: shown(least) });
}

/** @returns the same amount as the range has it, where that is not in grams: "1.4 g/kg" or "52%". */
export function comparedText({ range, perKg, energyShare }: EatenNutrient): string | undefined {
  if (range?.unit === 'g/kg' && perKg !== undefined)
    return `${sayNumber(perKg, { maximumFractionDigits: 1 })} g/kg`;
  if (range?.unit === 'share of energy' && energyShare !== undefined)
    return say('{share} of energy', { share: percent(energyShare) });
  return undefined;
}

/** @returns how it stands beside its range: "below 1.2 to 1.7 g/kg"; `undefined` where there is none. */
export function standingText({ range, standing }: EatenNutrient): string | undefined {
  const words = STANDING_WORDS[standing];
  return words && say(words, { range: range ? rangeText(range) : '' });
}

/** @returns how much of the food states it, where that is not all: "78% of food states it". */
export const statedText = ({ statedShare }: EatenNutrient): string | undefined =>
  statedShare > 0.995 ? undefined : say('stated by {share} of the food', { share: percent(statedShare) });
