import type { ProfilePoint } from '../model/route.ts';

type Profile = readonly ProfilePoint[];

/** The step of a profile that a distance falls in: index of the point before it, and the share of the step. Held to the ends. */
export function stepAt(profile: Profile, alongM: number): { before: number; share: number } {
  let before = 0;
  let after = profile.length - 1;
  while (after - before > 1) {
    const middle = (before + after) >> 1;
    if ((profile[middle]?.distanceM ?? 0) <= alongM) before = middle;
    else after = middle;
  }
  const fromM = profile[before]?.distanceM ?? 0;
  const wayM = (profile[before + 1]?.distanceM ?? fromM) - fromM;
  return { before, share: wayM > 0 ? Math.min(1, Math.max(0, (alongM - fromM) / wayM)) : 0 };
}

/** Altitude at a distance along a profile, m. */
export function altitudeAt(profile: Profile, alongM: number): number {
  const { before, share } = stepAt(profile, alongM);
  const fromM = profile[before]?.altitudeM ?? 0;
  return fromM + share * ((profile[before + 1]?.altitudeM ?? fromM) - fromM);
}

/** Points nearer than this to an end of a slice are left out of it, m. */
const SLIVER_M = 0.1;

/** The profile from one distance to another, with a point at each; one point if both are the same. */
export function sliceProfile(profile: Profile, fromM: number, toM: number): ProfilePoint[] {
  const at = (distanceM: number) => ({ distanceM, altitudeM: altitudeAt(profile, distanceM) });
  if (toM <= fromM) return [at(fromM)];
  const between = profile.filter(
    ({ distanceM }) => distanceM > fromM + SLIVER_M && distanceM < toM - SLIVER_M,
  );
  return [at(fromM), ...between, at(toM)];
}
