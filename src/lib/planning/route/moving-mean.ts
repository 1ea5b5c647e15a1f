import type { Sample } from './altitude-samples.ts';

/**
 * The moving mean of the line through the samples, at evenly spaced nodes, by the integral of that line: points may lie as they will.
 * Within half a window of an end, where no even window fits, it is the straight line through the means of the two half windows next to the end;
 * a narrower window would let the noise of the last point through.
 *
 * @param samples at least one, by strictly rising distance
 * @param nodes number of nodes, at least 2, `stepM` apart from 0 on
 * @param windowM width of the window, m
 */
export function movingMean(
  samples: readonly Sample[],
  nodes: number,
  stepM: number,
  windowM: number,
): Float64Array {
  const distanceM = Float64Array.from(samples, (sample) => sample.distanceM);
  const altitudeM = Float64Array.from(samples, (sample) => sample.altitudeM);
  const last = samples.length - 1;
  const areas = new Float64Array(last + 1);
  for (let i = 1; i <= last; i++)
    areas[i] =
      (areas[i - 1] ?? 0) +
      ((distanceM[i] ?? 0) - (distanceM[i - 1] ?? 0)) * (((altitudeM[i] ?? 0) + (altitudeM[i - 1] ?? 0)) / 2);

  /** Area below the line from the first sample to `x`; beyond the samples, the line goes on level. */
  const areaBefore = (x: number): number => {
    const i = lastAtOrBefore(distanceM, x);
    const wayM = x - (distanceM[i] ?? 0);
    const altitude = altitudeM[i] ?? 0;
    if (wayM < 0 || i === last) return (areas[i] ?? 0) + wayM * altitude;
    const grade = ((altitudeM[i + 1] ?? 0) - altitude) / ((distanceM[i + 1] ?? 0) - (distanceM[i] ?? 0));
    return (areas[i] ?? 0) + wayM * (altitude + (grade * wayM) / 2);
  };
  const mean = (fromM: number, toM: number): number => (areaBefore(toM) - areaBefore(fromM)) / (toM - fromM);

  const lengthM = (nodes - 1) * stepM;
  const halfM = Math.min(windowM, lengthM / 2) / 2;
  return Float64Array.from({ length: nodes }, (_, node) => {
    const x = node * stepM;
    const endM = x < halfM ? 0 : x > lengthM - halfM ? lengthM : undefined;
    if (endM === undefined) return mean(x - halfM, x + halfM);
    const inwards = endM === 0 ? 1 : -1;
    const outer = mean(endM, endM + inwards * halfM);
    const inner = mean(endM + inwards * halfM, endM + inwards * 2 * halfM);
    return outer + (inner - outer) * (Math.abs(x - endM) / halfM - 0.5);
  });
}

/** Index of the last of the rising `values` that is not above `x`; 0 if all are. */
function lastAtOrBefore(values: Float64Array, x: number): number {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((values[middle] ?? 0) <= x) low = middle;
    else high = middle - 1;
  }
  return low;
}
