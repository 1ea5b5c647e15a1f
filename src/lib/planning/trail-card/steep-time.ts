/**
 * How much longer food steeps when the water boils below 100 °C.
 *
 * Taking up water and softening go about twice as slowly for each 10 °C less (common practice, from the rule of thumb that a reaction's
 * rate doubles for 10 °C; published factors for foods lie between 1.5 and 3). Water that boils above 100 °C shortens nothing here.
 *
 * @param boilsAtC boiling point at the stove, °C
 * @returns factor on the steep time at sea level, at least 1
 */
export function steepFactor(boilsAtC: number): number {
  return 2 ** (Math.max(0, 100 - boilsAtC) / 10);
}

/** @returns waiting time in whole minutes; the factor is too rough for more */
export function steepAtAltitudeMin(steepSeaLevelMin: number, boilsAtC: number): number {
  return Math.round(steepSeaLevelMin * steepFactor(boilsAtC));
}
