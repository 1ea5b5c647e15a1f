import type { CookAfter } from '../model/words.ts';

/** In an insulating cover the food stays hotter while it steeps, so that of the extra time at altitude about half is needed (common practice). */
export const INSULATED_SHARE = 0.5;

/**
 * Activation energy of dried food that is ready to eat and takes its water back, kJ/mol. Source: García-Pascual et al. 2005, J Sci Food Agric 85:1397: 19.2 for air-dried mushrooms; porous
 * freeze-dried food is faster still (some 10), so that this is the careful value.
 */
const REHYDRATION_KJ_PER_MOL = 20;
/** The same of raw starch that has to cook, kJ/mol: 17 kcal/mol for white rice below its break (kinetic study of rice, abstract). */
const COOKING_KJ_PER_MOL = 71;
/** Dry beans soften ten times as slowly for so many °C less. Source: Quast & da Silva 1977, J Food Sci: 16 to 19 °C. */
const BEANS_Z_C = 18;
const GAS_CONSTANT_KJ_PER_MOL_K = 8.314462618e-3;
const ZERO_C_IN_K = 273.15;

/**
 * How much longer food steeps when the water boils below 100 °C: by Arrhenius for dried food, and much longer for food that was dried raw. Water that boils above 100 °C shortens nothing
 * here.
 *
 * @param boilsAtC boiling point at the stove, °C
 * @param insulated whether the pouch steeps in an insulating cover
 * @param cookAfter what has to be done with it; missing: it is ready to eat
 * @returns factor on the steep time at sea level, at least 1
 * @example steepFactor(83.3) // 1.35 at 5000 m
 */
export function steepFactor(boilsAtC: number, insulated = false, cookAfter?: CookAfter): number {
  const atC = Math.min(100, boilsAtC);
  const slower =
    cookAfter === 'boil hard'
      ? 10 ** ((100 - atC) / BEANS_Z_C)
      : Math.exp(
          ((cookAfter === 'cook' ? COOKING_KJ_PER_MOL : REHYDRATION_KJ_PER_MOL) / GAS_CONSTANT_KJ_PER_MOL_K) *
            (1 / (atC + ZERO_C_IN_K) - 1 / (100 + ZERO_C_IN_K)),
        );
  return 1 + (slower - 1) * (insulated ? INSULATED_SHARE : 1);
}

/** The shortest wait before or after stirring, min. */
const LEAST_WAIT_MIN = 0.5;

/** @returns waiting time in whole minutes; the factor is too rough for more */
export function steepAtAltitudeMin(
  steepSeaLevelMin: number,
  boilsAtC: number,
  insulated = false,
  cookAfter?: CookAfter,
): number {
  return Math.round(steepSeaLevelMin * steepFactor(boilsAtC, insulated, cookAfter));
}

/**
 * @param steepMin waiting time at this altitude, in whole minutes
 * @returns after which part of it to stir: in whole minutes, but within it, half a minute from either end; `undefined` where there is no wait
 */
export function stirAtAltitudeMin(
  stirSeaLevelMin: number,
  steepMin: number,
  boilsAtC: number,
  insulated = false,
  cookAfter?: CookAfter,
): number | undefined {
  if (steepMin < 2 * LEAST_WAIT_MIN) return undefined;
  const stirMin = steepAtAltitudeMin(stirSeaLevelMin, boilsAtC, insulated, cookAfter);
  return Math.min(Math.max(stirMin, LEAST_WAIT_MIN), steepMin - LEAST_WAIT_MIN);
}
