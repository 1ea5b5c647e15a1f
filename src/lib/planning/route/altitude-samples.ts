import { medianOf, type Path } from './path.ts';
import type { GpxPoint } from './read-gpx.ts';
import type { RouteRemark } from './route-faults.ts';

/** Altitudes outside of this are a device's way of saying that it has none. */
export const LOWEST_M = -430;
export const HIGHEST_M = 8848;

/** A step up or down is a jump when it is higher than this, higher than so many times the noise, and steeper than 150 %. */
const JUMP_M = 20;
const JUMP_TO_NOISE = 6;
const JUMP_GRADE = 1.5;
/** So few points over so short a way between two jumps are a spike; when they are more than a tenth of all, it is noise, and none is. */
const SPIKE_POINTS = 10;
const SPIKE_M = 200;
const SPIKE_SHARE = 0.1;

/** Between points farther apart than this, noise cannot be told from terrain. */
const NOISE_STEP_M = 60;

export type Sample = { readonly distanceM: number; readonly altitudeM: number };

/**
 * The altitudes of a track that can be believed, by strictly rising distance; points at the same distance are averaged.
 *
 * @returns `left`: what was left out, with its reason
 */
export function altitudeSamples(
  points: readonly GpxPoint[],
  path: Path,
): { samples: Sample[]; left: RouteRemark[] } {
  const usable = points.flatMap(({ elevationM }, index) => {
    const distanceM = path.pointDistanceM[index] ?? NaN;
    const usable = elevationM !== undefined && elevationM >= LOWEST_M && elevationM <= HIGHEST_M;
    return usable && distanceM >= 0 ? [{ distanceM, altitudeM: elevationM }] : [];
  });
  const believed = withoutSpikes(usable);
  const samples = averaged(believed);

  const left: RouteRemark[] = [];
  const spikes = usable.length - believed.length;
  const missing = points.length - usable.length;
  if (samples.length < 2) left.push({ code: 'no-elevation' });
  else if (missing > 0) left.push({ code: 'elevations-missing', missing, points: points.length });
  if (spikes > 0) left.push({ code: 'elevations-jump', count: spikes });
  return { samples, left };
}

function averaged(samples: readonly Sample[]): Sample[] {
  const merged: Sample[] = [];
  let count = 0;
  for (const { distanceM, altitudeM } of samples) {
    const last = merged.at(-1);
    count = distanceM === last?.distanceM ? count + 1 : 1;
    if (last && count > 1)
      merged[merged.length - 1] = {
        distanceM,
        altitudeM: last.altitudeM + (altitudeM - last.altitudeM) / count,
      };
    else merged.push({ distanceM, altitudeM });
  }
  return merged;
}

function withoutSpikes(samples: readonly Sample[]): readonly Sample[] {
  const jumpM = Math.max(JUMP_M, JUMP_TO_NOISE * noiseOf(samples).noiseM);
  const stretches: Sample[][] = [];
  let before: Sample | undefined;
  for (const sample of samples) {
    const stepM = before ? Math.abs(sample.altitudeM - before.altitudeM) : 0;
    const wayM = before ? sample.distanceM - before.distanceM : 0;
    const stretch = stretches.at(-1);
    if (!stretch || (stepM > jumpM && stepM > JUMP_GRADE * wayM)) stretches.push([sample]);
    else stretch.push(sample);
    before = sample;
  }
  const isSpike = (stretch: readonly Sample[]): boolean =>
    stretch.length <= SPIKE_POINTS &&
    (stretch.at(-1)?.distanceM ?? 0) - (stretch[0]?.distanceM ?? 0) <= SPIKE_M;
  const believed = stretches.filter((stretch) => !isSpike(stretch)).flat();
  const spikes = samples.length - believed.length;
  return spikes <= Math.max(1, SPIKE_SHARE * samples.length) && believed.length > 0 ? believed : samples;
}

/** Standard deviation of the noise of single samples, and the mean step between those it was seen in, m. */
export function noiseOf(samples: readonly Sample[]): { noiseM: number; stepM: number } {
  const offsets: number[] = [];
  let sumOfStepsM = 0;
  for (let i = 1; i + 1 < samples.length; i++) {
    const [before, here, after] = [samples[i - 1], samples[i], samples[i + 1]];
    if (!before || !here || !after) continue;
    const beforeM = here.distanceM - before.distanceM;
    const afterM = after.distanceM - here.distanceM;
    if (beforeM > NOISE_STEP_M || afterM > NOISE_STEP_M) continue;
    const share = beforeM + afterM > 0 ? beforeM / (beforeM + afterM) : 0.5;
    const lineM = before.altitudeM * (1 - share) + after.altitudeM * share;
    // The variance of the offset is that of three points of equal noise, weighted.
    offsets.push(Math.abs(here.altitudeM - lineM) / Math.sqrt(1 + share ** 2 + (1 - share) ** 2));
    sumOfStepsM += beforeM;
  }
  // 1.4826 times the median deviation is the standard deviation of a normal distribution.
  return {
    noiseM: 1.4826 * medianOf(Float64Array.from(offsets)),
    stepM: offsets.length > 0 ? sumOfStepsM / offsets.length : 0,
  };
}
