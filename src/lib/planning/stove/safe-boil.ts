/** Minutes at a rolling boil that make water safe: 1, above 2000 m 3 (CDC, "Making Water Safe in an Emergency"). `safeBoilMin(2500)` is 3. */
export const safeBoilMin = (altitudeM: number): number => (altitudeM > 2000 ? 3 : 1);
