/** In an insulating cover the food stays hotter while it steeps, so that of the extra time at altitude about half is needed (common practice). */
const INSULATED_SHARE = 0.5;

/**
 * How much longer food steeps when the water boils below 100 °C.
 *
 * Taking up water and softening go about twice as slowly for each 10 °C less (common practice, from the rule of thumb that a reaction's
 * rate doubles for 10 °C; published factors for foods lie between 1.5 and 3). Water that boils above 100 °C shortens nothing here.
 *
 * @param boilsAtC boiling point at the stove, °C
 * @param insulated whether the pouch steeps in an insulating cover
 * @returns factor on the steep time at sea level, at least 1
 */
export function steepFactor(boilsAtC: number, insulated = false): number {
  const extra = 2 ** (Math.max(0, 100 - boilsAtC) / 10) - 1;
  return 1 + extra * (insulated ? INSULATED_SHARE : 1);
}

/** @returns waiting time in whole minutes; the factor is too rough for more */
export function steepAtAltitudeMin(steepSeaLevelMin: number, boilsAtC: number, insulated = false): number {
  return Math.round(steepSeaLevelMin * steepFactor(boilsAtC, insulated));
}
