import { addMonths } from './calendar.ts';
import { atwaterKcal } from './energy-factors.ts';
import { usualStorage, type StorageRule } from './kitchen.ts';
import type { LotEstimate, LotEstimates } from './lot-estimate.ts';
import type { PouchLot } from './pouch-lot.ts';
import type { StatedLot } from './stated-lot.ts';
import { USUAL_LOT } from './usual-lot.ts';
import { MEAL_KINDS, type MealKind, type PROCESSES, type WaterKind } from './words.ts';

/** A dish whose figures are known: a recipe of the household, for one serving. */
export type KnownDish = {
  readonly dryWeightG?: number | undefined;
  readonly energyKcal?: number | undefined;
  readonly waterMl?: number | undefined;
  readonly waterKind?: WaterKind | undefined;
  readonly steepMin?: number | undefined;
  readonly mealKinds?: readonly MealKind[] | undefined;
};

/** What the household knows already, to estimate from, under the `dishName` of its recipe. */
export type KnownToHousehold = {
  readonly recipes?: ReadonlyMap<string, KnownDish>;
  /** What was said of lots on the shelf. */
  readonly lots?: ReadonlyMap<string, readonly StatedLot[]>;
  readonly process?: (typeof PROCESSES)[number];
  readonly storage?: readonly StorageRule[];
  /** Calendar date on which nothing later can have been sealed; the sealing date is estimated from it where no date is stated. */
  readonly today: string;
};

type Dish = {
  readonly words: RegExp;
  readonly meals: readonly MealKind[];
  readonly kcalPerG: Range;
  /** Water on 1 g of dry food. */
  readonly waterMlPerG: Range;
  readonly waterKind: WaterKind;
};
type Range = readonly [value: number, low: number, high: number];

/*
 * Rules of thumb for dry food at some 5 % moisture, no source: 4 kcal/g for starch and protein, 9 for fat (Atwater), less for fibre and ash. The ranges
 * are wide on purpose.
 */
const EATEN_DRY: Pick<Dish, 'waterMlPerG' | 'waterKind'> = { waterMlPerG: [0, 0, 0], waterKind: 'none' };
const DISHES: readonly Dish[] = [
  {
    words:
      /\b(?:nuts?|nuesse|nusse|trail mix|studentenfutter|almonds?|mandeln|cashews?|seeds?|kerne|chocolate|schokolade)\b/,
    meals: ['snack'],
    kcalPerG: [5.4, 4.4, 6.4],
    ...EATEN_DRY,
  },
  {
    words:
      /\b(?:jerky|biltong|trockenfleisch|fruit leather|fruchtleder|dried (?:apple|mango|banana|fruit)s?|apfelringe|apple rings|trockenobst|bananenchips|crisps?|chips|crackers?|kracker|bars?|riegel)\b/,
    meals: ['snack'],
    kcalPerG: [3.7, 2.8, 4.8],
    ...EATEN_DRY,
  },
  {
    words:
      /\b(?:cocoa|kakao|hot chocolate|tea|tee|coffee|kaffee|smoothie|shake|drink|getrank|lassi|punsch)\b/,
    meals: ['drink'],
    kcalPerG: [4, 3.2, 4.8],
    waterMlPerG: [6, 4, 8],
    waterKind: 'hot',
  },
  {
    words: /\b(?:soup|suppe|broth|bouillon|bruhe|bisque|minestrone|borscht|borschtsch)\b|suppe\b|bruhe\b/,
    meals: ['lunch', 'dinner'],
    kcalPerG: [3.7, 3, 4.6],
    waterMlPerG: [4, 3, 5.5],
    waterKind: 'boiling',
  },
  {
    words:
      /\b(?:porridge|oats?|oatmeal|overnight oats|muesli|musli|granola|pancakes?|breakfast|fruhstuck|scrambled|ruhrei|omelette?|congee|hafer\w*|griess\w*|cereals?|brekkie|hash)\b|brei\b|grutze\b/,
    meals: ['breakfast'],
    kcalPerG: [4.2, 3.5, 5],
    waterMlPerG: [2.2, 1.6, 3],
    waterKind: 'boiling',
  },
];
const MAIN_DISH: Omit<Dish, 'words'> = {
  meals: ['lunch', 'dinner'],
  kcalPerG: [4.2, 3.4, 5.2],
  waterMlPerG: [2.7, 2, 3.5],
  waterKind: 'boiling',
};
const STEEP_MIN: Range = [USUAL_LOT.steepMin, 10, 25];
const TARE_G: Range = [USUAL_LOT.tareG, 8, 25];
/** A recipe that was cooked before, or another lot of it, comes out alike within so much. */
export const ALIKE = 0.1;
/** Where no date is stated at all, food is taken for this old, and is at most twice as old. */
const UNDATED_MONTHS = 6;
/** Fat in the dry food from which it keeps less long, as for batches: lean below the first, fatty above the second. */
const FAT_LIMITS = [0.1, 0.25] as const;

/**
 * Makes a lot to plan with of what was said of it: each value that nobody stated is estimated, and `estimated` says from what and how far it may be
 * off. Allergens are never estimated: those that nobody stated stay unstated.
 *
 * @param before the lot as it is on the shelf: a sealing date that was estimated once stays, or food would grow younger with each change
 *
 * Sources: energy from protein, fat and carbohydrate by Atwater's factors; the storage table of the household, or its default, for best-before;
 * else rules of thumb.
 *
 * @example completeLot({ code: 'A', recipe: 'Chili', pouches: 12, servingsPerPouch: 2, dryWeightG: 70, diets: [], note: '' }, { today: '2026-12-01' })
 *   // energyKcal 294 (238 to 364), waterMl 189 …
 */
export function completeLot(
  stated: StatedLot,
  known: KnownToHousehold,
  before?: Pick<PouchLot, 'sealedOn' | 'estimated'>,
): PouchLot {
  const { allergensOpen, allergens, ...said } = stated;
  const estimated: Partial<Record<keyof LotEstimates, LotEstimate>> = {};
  const dish = dishCalled(stated.recipe);
  const recipe = known.recipes?.get(dishName(stated.recipe));
  const alike = known.lots?.get(dishName(stated.recipe))?.filter(({ code }) => code !== stated.code) ?? [];
  const note = (field: keyof LotEstimates, from: LotEstimate['from'], range?: readonly [Bound, Bound]) =>
    (estimated[field] = range ? { low: range[0], high: range[1], from } : { from });

  const mealKinds = stated.mealKinds ?? mealsOf(stated, recipe, alike, dish, note);
  const fits = mealKinds.every((meal) => meal === 'snack')
    ? { ...MAIN_DISH, ...EATEN_DRY, kcalPerG: [4, 2.8, 5.6] as const }
    : mealKinds.every((meal) => meal === 'drink')
      ? {
          ...MAIN_DISH,
          kcalPerG: [4, 3.2, 4.8] as const,
          waterMlPerG: [6, 4, 8] as const,
          waterKind: 'hot' as const,
        }
      : MAIN_DISH;
  const kind = dish ?? fits;

  const energyKcal = stated.energyKcal ?? energyOf(stated, recipe, alike, kind, note);
  const waterKind = stated.waterKind ?? waterKindOf(stated, recipe, alike, kind, note);
  const waterMl = stated.waterMl ?? waterOf(stated, waterKind, recipe, alike, kind, note);
  const steepMin = stated.steepMin ?? steepOf(waterKind, recipe, alike, note);
  const dates = datesOf(stated, known, before, note);

  let tareG = stated.tareG;
  if (tareG === undefined) {
    const [value, low, high] = TARE_G;
    note('tareG', 'rule of thumb', [low, high]);
    tareG = value;
  }
  return {
    ...said,
    mealKinds: [...mealKinds],
    ...dates,
    energyKcal,
    waterMl,
    waterKind,
    steepMin,
    tareG,
    ...(allergens !== undefined && !allergensOpen && { allergens }),
    ...(allergens !== undefined && allergensOpen && allergens.length > 0 && { contains: allergens }),
    ...(Object.keys(estimated).length > 0 && { estimated }),
  };
}

type Bound = number | string;
type Note = (field: keyof LotEstimates, from: LotEstimate['from'], range?: readonly [Bound, Bound]) => void;

/** @returns a name of a dish as it is compared: without capitals, accents and marks. */
export const dishName = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

const dishCalled = (recipe: string): Dish | undefined => {
  const name = dishName(recipe);
  return DISHES.find(({ words }) => words.test(name));
};

function mealsOf(
  { kind }: StatedLot,
  recipe: KnownDish | undefined,
  alike: readonly StatedLot[],
  dish: Dish | undefined,
  note: Note,
): readonly MealKind[] {
  if (kind === 'drink' || kind === 'extra') {
    note('mealKinds', 'kind of dish');
    return [kind === 'drink' ? 'drink' : 'snack'];
  }
  if (recipe?.mealKinds) {
    note('mealKinds', 'recipe');
    return recipe.mealKinds;
  }
  const same = alike.find(({ mealKinds }) => mealKinds)?.mealKinds;
  if (same) {
    note('mealKinds', 'similar lots');
    return same;
  }
  note('mealKinds', dish ? 'kind of dish' : 'rule of thumb');
  return MEAL_KINDS.filter((meal) => (dish ?? MAIN_DISH).meals.includes(meal));
}

/** A value for each gram of dry food: of the recipe, of lots alike, or of the kind of dish. */
function perGram(
  field: 'energyKcal' | 'waterMl',
  weightG: number,
  recipe: KnownDish | undefined,
  alike: readonly StatedLot[],
  usual: Range,
): { readonly range: Range; readonly from: LotEstimate['from'] } {
  const around = (ratios: readonly number[]): Range => {
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
    return [mean, Math.min(...ratios) * (1 - ALIKE), Math.max(...ratios) * (1 + ALIKE)];
  };
  const scaled = ([value, low, high]: Range): Range => [value * weightG, low * weightG, high * weightG];
  const ofRecipe = recipe?.[field];
  if (ofRecipe !== undefined && recipe?.dryWeightG)
    return { range: scaled(around([ofRecipe / recipe.dryWeightG])), from: 'recipe' };
  const ratios = alike.flatMap((lot) => (lot[field] === undefined ? [] : [lot[field] / lot.dryWeightG]));
  if (ratios.length > 0) return { range: scaled(around(ratios)), from: 'similar lots' };
  return { range: scaled(usual), from: 'kind of dish' };
}

function energyOf(
  stated: StatedLot,
  recipe: KnownDish | undefined,
  alike: readonly StatedLot[],
  kind: Omit<Dish, 'words'>,
  note: Note,
): number {
  const { proteinG, fatG, carbohydrateG } = stated;
  if (proteinG !== undefined && fatG !== undefined && carbohydrateG !== undefined) {
    const kcal = Math.round(atwaterKcal({ proteinG, fatG, carbohydrateG }));
    note('energyKcal', 'composition', [Math.round(kcal * (1 - ALIKE)), Math.round(kcal * (1 + ALIKE))]);
    return kcal;
  }
  const { range, from } = perGram('energyKcal', stated.dryWeightG, recipe, alike, kind.kcalPerG);
  const [value, low, high] = range.map(Math.round) as [number, number, number];
  note('energyKcal', from, [low, high]);
  return value;
}

function waterKindOf(
  { waterMl }: StatedLot,
  recipe: KnownDish | undefined,
  alike: readonly StatedLot[],
  kind: Omit<Dish, 'words'>,
  note: Note,
): WaterKind {
  if (waterMl === 0) {
    note('waterKind', 'composition');
    return 'none';
  }
  const same = alike.find(({ waterKind }) => waterKind)?.waterKind;
  const found = recipe?.waterKind ?? same ?? kind.waterKind;
  note('waterKind', recipe?.waterKind ? 'recipe' : same ? 'similar lots' : 'kind of dish');
  // Water was stated, so the food is not eaten dry.
  return found === 'none' && waterMl !== undefined ? 'boiling' : found;
}

function waterOf(
  stated: StatedLot,
  waterKind: WaterKind,
  recipe: KnownDish | undefined,
  alike: readonly StatedLot[],
  kind: Omit<Dish, 'words'>,
  note: Note,
): number {
  if (waterKind === 'none') {
    note('waterMl', 'composition', [0, 0]);
    return 0;
  }
  const usual = kind.waterMlPerG[0] > 0 ? kind.waterMlPerG : MAIN_DISH.waterMlPerG;
  const { range, from } = perGram('waterMl', stated.dryWeightG, recipe, alike, usual);
  const [value, low, high] = range.map(Math.round) as [number, number, number];
  note('waterMl', from, [low, high]);
  return value;
}

function steepOf(
  waterKind: WaterKind,
  recipe: KnownDish | undefined,
  alike: readonly StatedLot[],
  note: Note,
): number {
  if (waterKind === 'none') {
    note('steepMin', 'composition', [0, 0]);
    return 0;
  }
  const same = alike.find(({ steepMin }) => steepMin !== undefined)?.steepMin;
  const [usual, low, high] = STEEP_MIN;
  const value = recipe?.steepMin ?? same;
  note(
    'steepMin',
    recipe?.steepMin !== undefined ? 'recipe' : same !== undefined ? 'similar lots' : 'rule of thumb',
    value === undefined ? [low, high] : [value, value],
  );
  return value ?? usual;
}

/** Best-before by process and fat, in a foil pouch with an absorber, at the earliest as without one; dates that nobody stated are never later than today. */
function datesOf(
  stated: StatedLot,
  { storage = usualStorage(), process = 'dehydrated', today }: KnownToHousehold,
  before: Pick<PouchLot, 'sealedOn' | 'estimated'> | undefined,
  note: Note,
): { sealedOn: string; bestBefore: string } {
  const fat = stated.fatG === undefined ? undefined : stated.fatG / stated.dryWeightG;
  const fatClass =
    fat === undefined
      ? 'middling'
      : fat < FAT_LIMITS[0]
        ? 'lean'
        : fat > FAT_LIMITS[1]
          ? 'fatty'
          : 'middling';
  const monthsKept = (absorber: boolean, fallback: number): number =>
    storage.find(
      (rule) =>
        rule.process === process &&
        rule.fatClass === fatClass &&
        rule.barrier === 'foil pouch' &&
        rule.absorber === absorber,
    )?.months ?? fallback;
  const [months, least] = [monthsKept(true, 9), monthsKept(false, 4)];
  const { bestBefore } = stated;
  let { sealedOn } = stated;
  const earlier = before?.estimated?.sealedOn;
  if (sealedOn === undefined && before && earlier?.low !== undefined && earlier.high !== undefined) {
    sealedOn = before.sealedOn;
    note('sealedOn', earlier.from, [earlier.low, earlier.high]);
  }
  if (sealedOn === undefined) {
    const earliest = (date: string) => (date < today ? date : today);
    const back =
      bestBefore === undefined ? addMonths(today, -UNDATED_MONTHS) : addMonths(bestBefore, -months);
    sealedOn = earliest(back);
    note('sealedOn', 'rule of thumb', [
      earliest(addMonths(sealedOn, -UNDATED_MONTHS)),
      today > sealedOn ? earliest(bestBefore ?? today) : sealedOn,
    ]);
  }
  if (bestBefore !== undefined) return { sealedOn, bestBefore };
  note('bestBefore', fat === undefined ? 'rule of thumb' : 'composition', [
    addMonths(sealedOn, least),
    addMonths(sealedOn, months),
  ]);
  return { sealedOn, bestBefore: addMonths(sealedOn, months) };
}
