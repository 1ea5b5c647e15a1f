import type { Parts } from './recipe-totals.ts';

/**
 * Densities of what food is made of at 20 °C, g/ml.
 * Source: Choi & Okos 1986, in Le Maguer & Jelen (eds.), Food Engineering and Process Applications 1, the linear fits at 20 °C; ASHRAE Handbook of Refrigeration,
 * "Thermal Properties of Foods", table 1, has the same. Neither text was rechecked: the tests hold them against measured densities.
 */
const DENSITY: Readonly<Record<keyof Parts, number>> = {
  waterG: 0.9957,
  proteinG: 1.3195,
  fatG: 0.9172,
  carbohydrateG: 1.5929,
  fibreG: 1.3042,
  ashG: 2.4182,
};

/** Volume of the food itself without the air in and between its pieces, ml. */
export function trueVolumeMl(parts: Parts): number {
  return (Object.keys(DENSITY) as (keyof Parts)[]).reduce(
    (sum, part) => sum + parts[part] / DENSITY[part],
    0,
  );
}
