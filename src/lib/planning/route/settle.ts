/** A way up or down shorter than this is not counted as one, m (common practice: what a barometer or a satellite fix drifts by in minutes). */
export const LEAST_SWING_M = 10;

/**
 * Turning points: the tops from which the way falls by at least `swingM` before and after them without rising above them in between,
 * and the bottoms likewise. Read backwards, a profile has the same ones.
 *
 * @returns their indexes, and whether the way first rises; undefined where it never goes up or down by `swingM`
 */
function turningPoints(
  altitudesM: Float64Array,
  swingM: number,
): { turns: number[]; risesFirst: boolean | undefined } {
  const turns: number[] = [];
  let risesFirst: boolean | undefined;
  let rising: boolean | undefined;
  let lowM = altitudesM[0] ?? 0;
  let highM = lowM;
  let extreme = 0;
  for (let i = 1; i < altitudesM.length; i++) {
    const altitudeM = altitudesM[i] ?? 0;
    const extremeM = altitudesM[extreme] ?? 0;
    if (rising === undefined) {
      lowM = Math.min(lowM, altitudeM);
      highM = Math.max(highM, altitudeM);
      if (highM - lowM < swingM) continue;
      rising = risesFirst = altitudeM === highM;
      extreme = i;
    } else if (rising ? altitudeM > extremeM : altitudeM < extremeM) extreme = i;
    else if (Math.abs(altitudeM - extremeM) >= swingM) {
      turns.push(extreme);
      rising = !rising;
      extreme = i;
    }
  }
  return { turns, risesFirst };
}

const meanOf = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** 1 where the altitudes rise on the whole, -1 where they fall, by the slope of their regression line; 0 where they do neither. */
function trendOf(altitudesM: Float64Array): number {
  const middle = (altitudesM.length - 1) / 2;
  return Math.sign(altitudesM.reduce((sum, altitudeM, index) => sum + (index - middle) * altitudeM, 0));
}

/**
 * The rising line nearest to the altitudes by least squares, from `first` to `last`, in place; the falling one if `sign` is -1.
 * Pool adjacent violators (Barlow, Bartholomew, Bremner & Brunk 1972, Statistical inference under order restrictions).
 */
function straighten(altitudesM: Float64Array, first: number, last: number, sign: 1 | -1): void {
  const means: number[] = [];
  const counts: number[] = [];
  for (let i = first; i <= last; i++) {
    let mean = sign * (altitudesM[i] ?? 0);
    let count = 1;
    while (means.length > 0 && (means.at(-1) ?? 0) > mean) {
      const pooled = counts.pop() ?? 0;
      mean = (mean * count + (means.pop() ?? 0) * pooled) / (count + pooled);
      count += pooled;
    }
    means.push(mean);
    counts.push(count);
  }
  let i = first;
  means.forEach((mean, block) => altitudesM.fill(sign * mean, i, (i += counts[block] ?? 0)));
}

/**
 * Flattens the ups and downs that are smaller than `swingM`, so that what is left rises or falls from one turning point to the next,
 * and its climb is the plain sum of its rises. Tops and bottoms keep their altitude; between them, each way is the nearest rising or falling line.
 *
 * @param altitudesM along the route
 */
export function settle(altitudesM: Float64Array, swingM = LEAST_SWING_M): Float64Array {
  const settled = altitudesM.slice();
  const { turns, risesFirst } = turningPoints(altitudesM, swingM);
  if (risesFirst === undefined && trendOf(altitudesM) === 0) return settled.fill(meanOf(altitudesM));
  let rises = risesFirst ?? trendOf(altitudesM) > 0;
  let first = 0;
  for (const turn of [...turns, altitudesM.length - 1]) {
    straighten(settled, first, turn, rises ? 1 : -1);
    rises = !rises;
    first = turn;
  }
  return settled;
}
