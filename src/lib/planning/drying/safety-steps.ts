import type { Batch, CheckDone } from '../model/batch.ts';
import type { CookingClass } from '../model/composition.ts';
import type { Recipe } from '../model/recipe.ts';
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
      readonly id: 'hands' | 'apart' | 'two hours' | 'dry through' | 'low oxygen' | 'seams';
      readonly leastC?: undefined;
    }
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
  | { readonly code: 'too-cold'; readonly readingC: number; readonly leastC: number };

/**
 * Safe minimum internal temperatures, °C, with the rest they need. Source: USDA FSIS, 165, 160 and 145 °F or 74, 71 and 63 °C: who reads either
 * figure off the thermometer has reached it, so the bound is the lower of the two.
 */
export const SAFE_INTERNAL_C: Readonly<Record<HeatedClass, number>> = {
  poultry: toCore(165, '°F'),
  'minced meat': 71,
  'whole meat': toCore(145, '°F'),
  fish: toCore(145, '°F'),
  egg: 71,
  leftovers: toCore(165, '°F'),
};

/**
 * The two-hour rule, source: USDA FSIS. Food stands no longer than `hours` above `aboveC`, and half as long above `hotC`.
 */
export const TWO_HOUR_RULE = { hours: 2, aboveC: toCore(40, '°F'), hotC: toCore(90, '°F') } as const;

/**
 * The checks that stand in a batch sheet, each at the step where it is done. Local guidance goes before them.
 * Sources: USDA FSIS; extension guidance on home drying (National Center for Home Food Preservation, memory); 21 CFR 114 for botulism.
 */
export function safetyChecks(recipe: Recipe): SafetyCheck[] {
  const classes = new Set(recipe.ingredients.map(({ food }) => food.cookingClass));
  const heated = (Object.keys(SAFE_INTERNAL_C) as HeatedClass[]).filter((name) => classes.has(name));
  return [
    { id: 'hands', step: 'cook' },
    ...(heated.length > 0 ? [{ id: 'apart', step: 'cook' } as const] : []),
    ...heated.map((name): SafetyCheck => ({
      id: checkIdOf(name),
      heated: name,
      step: 'cook',
      leastC: SAFE_INTERNAL_C[name],
    })),
    { id: 'two hours', step: 'load' },
    { id: 'dry through', step: 'seal' },
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

/** The checks of a batch that are still open, with why. */
export function openChecks(
  batch: Pick<Batch, 'recipe' | 'checks'>,
): { check: SafetyCheck; open: CheckGap }[] {
  return safetyChecks(batch.recipe).flatMap((check) => {
    const open = whyCheckOpen(check, batch.checks);
    return open ? [{ check, open }] : [];
  });
}
