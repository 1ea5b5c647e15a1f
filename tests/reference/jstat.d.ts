/** The part of the library that is compared with; it brings no types of its own. */
declare module 'jstat' {
  const jStat: {
    readonly studentt: { inv(probability: number, degreesOfFreedom: number): number };
    readonly models: {
      /** Least squares; each row of `exog` with its 1 for the intercept. */
      ols(
        endog: readonly number[],
        exog: readonly (readonly number[])[],
      ): { coef: [number, number]; t: { sigmaHat: number } };
    };
  };
  export default jStat;
}
