import type { ProfilePoint } from '../model/route.ts';
import { altitudeSamples, HIGHEST_M, LOWEST_M, noiseOf, type Sample } from './altitude-samples.ts';
import { movingMean } from './moving-mean.ts';
import type { Path } from './path.ts';
import type { GpxPoint } from './read-gpx.ts';
import { LEAST_SWING_M, settle } from './settle.ts';
import type { RouteRemark } from './route-faults.ts';

/** Most points of a profile: half of what the model takes, since it is kept with its trip and laid out anew with every plan. */
const MOST_POINTS = 2000;
const GRID_M = 10;
const LEAST_WINDOW_M = 30;
const MOST_WINDOW_M = 120;
/** What the window leaves of the noise, m, where it can be wide enough. */
const NOISE_LEFT_M = 1.25;
/** A swing that is counted is at least this many times what is left of the noise. */
const SWING_TO_NOISE = 8;

export type MadeProfile = {
  readonly profile: ProfilePoint[];
  /** False where no elevation was stated: the profile is flat at 0 m. */
  readonly altitudeKnown: boolean;
  /** What was left out or filled in, with its reason. */
  readonly left: readonly RouteRemark[];
};

/**
 * The smoothed profile of a track.
 *
 * 1. Spikes are dropped: up to ten points within 200 m that the track enters and leaves by a jump (more than 20 m, six times the noise, and 150 %).
 *    Where elevation is missing, the line between its neighbours stands in.
 * 2. A moving mean by distance takes out the noise of single points. How much there is shows in how far each point lies off the line between its two
 *    neighbours (by the median, so that bends do not count). The window is as wide as it takes to leave 1.25 m of it, within 30 to 120 m: 58 m for a noise
 *    of 3 m in points 10 m apart. A clean track so keeps its summits: a mean over 100 m would take 2.5 m off a summit between sides of 10 %, 30 m take 0.8 m.
 * 3. Hysteresis: a way up or down counts as one from 10 m on, or from eight times what the window left of the noise if that is more; the highest and the lowest
 *    of some thousand points of noise alone lie about seven times its size apart. What is smaller is flattened (`settle`), so that climb is not invented.
 *
 * The window, the swing and the jumps are common practice. make-profile.test.ts shows what they do to tracks of known climb: at a noise of 3 m every 10 m,
 * 50 km of flat show at most a few metres of climb, one climb of 500 m comes out within 2 %, rolling hills of 30 m within 8 %.
 * Points more than 60 m apart are believed as they stand. Drift cannot be told from terrain: 3 m that falls off over 100 m of the way invent some 5 m of climb a kilometre.
 *
 * @param points of the track, in order
 * @param path the same points laid out by length
 */
export function makeProfile(points: readonly GpxPoint[], path: Path): MadeProfile {
  const { samples, left } = altitudeSamples(points, path);
  const nodes = Math.max(2, Math.round(path.lengthM / GRID_M) + 1);
  const stepM = path.lengthM / (nodes - 1);
  const altitudeKnown = samples.length >= 2;
  const { windowM, noiseLeftM } = windowFor(samples);
  const altitudes = altitudeKnown
    ? settle(movingMean(samples, nodes, stepM, windowM), Math.max(LEAST_SWING_M, SWING_TO_NOISE * noiseLeftM))
    : new Float64Array(nodes);
  const profile = thin(altitudes).map((node) => ({
    distanceM: toDecimetre(node * stepM),
    altitudeM: toDecimetre(Math.min(HIGHEST_M, Math.max(LOWEST_M, altitudes[node] ?? 0))),
  }));
  return { profile, altitudeKnown, left };
}

/**
 * Climb and descent of a profile, m. Ways up or down of less than 10 m are not counted; climb less descent is the difference of its ends,
 * and the profile walked backwards swaps them.
 */
export function climbAndDescent(profile: readonly ProfilePoint[]): { climbM: number; descentM: number } {
  const settled = settle(Float64Array.from(profile, (point) => point.altitudeM));
  let climbM = 0;
  let descentM = 0;
  for (let i = 1; i < settled.length; i++) {
    const riseM = (settled[i] ?? 0) - (settled[i - 1] ?? 0);
    if (riseM > 0) climbM += riseM;
    else descentM -= riseM;
  }
  return { climbM, descentM };
}

const toDecimetre = (m: number): number => Math.round(m * 10) / 10;

/** How wide a window the noise asks for, and the noise that it leaves. */
function windowFor(samples: readonly Sample[]): { windowM: number; noiseLeftM: number } {
  const { noiseM, stepM } = noiseOf(samples);
  const wantedM = stepM * (noiseM / NOISE_LEFT_M) ** 2;
  const windowM = Math.min(MOST_WINDOW_M, Math.max(LEAST_WINDOW_M, wantedM));
  return { windowM, noiseLeftM: noiseM * Math.sqrt(Math.min(1, stepM / windowM)) };
}

/** Indexes of at most MOST_POINTS altitudes: all of them, or the ends and the lowest and highest of each stretch, so that no top or bottom is lost. */
function thin(altitudes: Float64Array): number[] {
  const count = altitudes.length;
  if (count <= MOST_POINTS) return Array.from({ length: count }, (_, node) => node);
  const stretches = MOST_POINTS / 2 - 1;
  const kept = [0];
  for (let stretch = 0; stretch < stretches; stretch++) {
    const from = 1 + Math.floor(((count - 2) * stretch) / stretches);
    const to = 1 + Math.floor(((count - 2) * (stretch + 1)) / stretches);
    let lowest = from;
    let highest = from;
    for (let node = from; node < to; node++) {
      if ((altitudes[node] ?? 0) < (altitudes[lowest] ?? 0)) lowest = node;
      if ((altitudes[node] ?? 0) >= (altitudes[highest] ?? 0)) highest = node;
    }
    kept.push(...[...new Set([Math.min(lowest, highest), Math.max(lowest, highest)])]);
  }
  return [...kept, count - 1];
}
