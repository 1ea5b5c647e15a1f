import type { Batch, CheckDone } from '../model/batch.ts';
import type { CookingClass } from '../model/composition.ts';
import { addDays } from '../model/calendar.ts';
import type { Kitchen, Process } from '../model/kitchen.ts';
import type { Recipe } from '../model/recipe.ts';
import type { CookAfter } from '../model/words.ts';
import { toCore } from '../units/convert.ts';

export const SAFETY_STEPS = ['cook', 'load', 'dry', 'seal'] as const;
export type SafetyStep = (typeof SAFETY_STEPS)[number];

/** What is cooked through before drying. */
export type HeatedClass = Exclude<CookingClass, 'other'>;
export const checkIdOf = (heated: HeatedClass) => `cooked ${heated}` as const;

/** A check of a batch sheet; its id is kept with the batch where it is ticked. */
export type SafetyCheck = {
  readonly step: SafetyStep;
} & (
  | {
      readonly id:
        | 'hands'
        | 'apart'
        | 'two hours'
        | 'dry through'
        | 'cooled'
        | 'conditioned'
        | 'pasteurised'
        | 'marked raw'
        | 'low oxygen'
        | 'seams';
      readonly leastC?: undefined;
    }
  | { readonly id: 'beans boiled'; readonly beans: readonly string[]; readonly leastC?: undefined }
  | { readonly id: 'dryer air'; readonly leastC: number }
  | {
      readonly id: ReturnType<typeof checkIdOf>;
      readonly heated: HeatedClass;
      /** A temperature has to be read, and to be at least this, °C. */
      readonly leastC: number;
    }
);

/** Why a check does not count as done. Temperatures in °C. */
export type CheckGap =
  | { readonly code: 'not-ticked' | 'no-temperature' }
  | { readonly code: 'too-early'; readonly until: string }
  | { readonly code: 'too-cold'; readonly readingC: number; readonly leastC: number };

/**
 * Internal temperatures before drying, °C. Source: USDA FSIS, 165, 160 and 145 °F or 74, 71 and 63 °C: who reads either figure off the thermometer has reached it, so the bound
 * is the lower of the two. All meat is heated to 160 °F before it is dried, whole cuts too (FSIS guidance on jerky): germs that dry while they are warmed become hard to kill.
 */
export const SAFE_INTERNAL_C: Readonly<Record<HeatedClass, number>> = {
  poultry: toCore(165, '°F'),
  'minced meat': 71,
  'whole meat': 71,
  fish: toCore(145, '°F'),
  egg: 71,
  leftovers: toCore(165, '°F'),
};

/**
 * The two-hour rule, source: USDA FSIS. Food stands no longer than `hours` above `aboveC`, and half as long above `hotC`.
 */
export const TWO_HOUR_RULE = { hours: 2, aboveC: toCore(40, '°F'), hotC: toCore(90, '°F') } as const;

/** Air in the dryer while meat dries, °C: 130 °F. Source: USDA FSIS guidance on jerky, 130 to 140 °F. */
const MEAT_AIR_C = 54;
/** Oven in which dried food is pasteurised, °C, and for how long, min. Source: Michigan State University Extension. */
export const PASTEURISING = { ovenC: 71, min: 30 } as const;
/** Beans are soaked and boiled for so long. Source: FDA, on the lectin of kidney beans. */
export const BEAN_RULE = { soakH: 5, boilMin: 30 } as const;
const DRIES_AS_MEAT: readonly CookingClass[] = ['poultry', 'minced meat', 'whole meat', 'fish'];

/** Whether a dish has meat, poultry or fish in it. */
export const hasMeat = ({ ingredients }: Pick<Recipe, 'ingredients'>): boolean =>
  ingredients.some(({ food }) => DRIES_AS_MEAT.includes(food.cookingClass));

/** Common beans (Phaseolus vulgaris) by name, in English, German and French; broad, soya, mung and green beans are others. */
const COMMON_BEAN =
  /kidney|cannellini|borlotti|pinto|haricot|\b(?:red|black|white|navy|runner)[ -]beans?|(?:^|[, ])beans?,? (?:red|black|white)|(?:weiße|rote|schwarze) bohnen|feuerbohne|kidneybohne/i;
/** Beans with less water than this have not been cooked, g per 100 g: dry ones hold some 12, cooked ones 60 and more. */
const DRY_BEAN_WATER_G = 25;

/** The beans of a dish that are bought dry, and raw: their toxin has to be boiled out. */
export const rawBeans = ({ ingredients }: Pick<Recipe, 'ingredients'>): string[] =>
  ingredients.flatMap(({ food }) =>
    COMMON_BEAN.test(food.name) && food.composition.waterG < DRY_BEAN_WATER_G ? [food.name] : [],
  );

/**
 * What has to be done with a dish after its water has gone in: what was dried raw is cooked through, raw beans are boiled hard.
 *
 * @returns `undefined` where it is ready to eat
 */
export function cookAfterOf(recipe: Recipe): CookAfter | undefined {
  if (!recipe.driedRaw) return undefined;
  if (rawBeans(recipe).length > 0) return 'boil hard';
  return heatedClasses(recipe).length > 0 ? 'cook' : undefined;
}

function heatedClasses({ ingredients }: Recipe): HeatedClass[] {
  const classes = new Set(ingredients.map(({ food }) => food.cookingClass));
  return (Object.keys(SAFE_INTERNAL_C) as HeatedClass[]).filter((name) => classes.has(name));
}

/**
 * The checks that stand in a batch sheet, each at the step where it is done. Local guidance goes before them.
 * Sources: USDA FSIS; FDA for beans; Utah State and Michigan State University Extension for conditioning and pasteurising; 21 CFR 114 for botulism.
 *
 * @param process how it is dried: in warm air, meat has to be cooked first whatever is done with it later
 */
export function safetyChecks(recipe: Recipe, process: Process): SafetyCheck[] {
  const heated = heatedClasses(recipe);
  const beans = rawBeans(recipe);
  const staysRaw = recipe.driedRaw && process === 'freeze-dried';
  const inWarmAir = process === 'dehydrated';
  return [
    { id: 'hands', step: 'cook' },
    ...(heated.length > 0 ? [{ id: 'apart', step: 'cook' } as const] : []),
    ...(staysRaw ? [] : heated).map((name): SafetyCheck => ({
      id: checkIdOf(name),
      heated: name,
      step: 'cook',
      leastC: SAFE_INTERNAL_C[name],
    })),
    ...(beans.length > 0 && !staysRaw ? [{ id: 'beans boiled', step: 'cook', beans } as const] : []),
    { id: 'two hours', step: 'load' },
    ...(inWarmAir && hasMeat(recipe) ? [{ id: 'dryer air', step: 'seal', leastC: MEAT_AIR_C } as const] : []),
    { id: 'dry through', step: 'seal' },
    { id: 'cooled', step: 'seal' },
    ...(inWarmAir
      ? [{ id: 'conditioned', step: 'seal' } as const, { id: 'pasteurised', step: 'seal' } as const]
      : []),
    ...(staysRaw && cookAfterOf(recipe) ? [{ id: 'marked raw', step: 'seal' } as const] : []),
    { id: 'low oxygen', step: 'seal' },
    { id: 'seams', step: 'seal' },
  ];
}

/** Why a check does not count as done, by its last entry; `undefined`: done. */
export function whyCheckOpen({ id, leastC }: SafetyCheck, done: readonly CheckDone[]): CheckGap | undefined {
  const entry = done.findLast((other) => other.id === id);
  if (!entry) return { code: 'not-ticked' };
  if (leastC === undefined) return undefined;
  const { readingC } = entry;
  if (readingC === undefined) return { code: 'no-temperature' };
  return readingC < leastC ? { code: 'too-cold', readingC, leastC } : undefined;
}

/** @returns the first day on which food that went into its jar then counts as conditioned. */
export const conditionedUntil = (
  from: string,
  { conditioningDays }: Pick<Kitchen, 'conditioningDays'>,
): string => addDays(from, conditioningDays);

/**
 * Each check of a batch with why it does not count as done. Conditioning that began too lately is not over, whatever is ticked.
 *
 * @param today calendar date
 */
export function checksOf(
  batch: Pick<Batch, 'recipe' | 'dryer' | 'checks' | 'conditionedFrom'>,
  kitchen: Pick<Kitchen, 'conditioningDays'>,
  today: string,
): (SafetyCheck & { readonly open: CheckGap | undefined })[] {
  const until = batch.conditionedFrom && conditionedUntil(batch.conditionedFrom, kitchen);
  return safetyChecks(batch.recipe, batch.dryer.process).map((check) => ({
    ...check,
    open:
      check.id === 'conditioned' && until !== undefined && until > today
        ? { code: 'too-early', until }
        : whyCheckOpen(check, batch.checks),
  }));
}
