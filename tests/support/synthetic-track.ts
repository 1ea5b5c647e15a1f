/** Tracks whose length and climb are known, with seeded noise. */
import { randomFrom } from '../../src/lib/planning/optimiser/random.ts';

/** Normally distributed random numbers of mean 0 and standard deviation 1 (Box & Muller 1958). */
export function seededNormal(seed: number): () => number {
  const random = randomFrom(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** One degree of longitude on the equator of WGS 84, m. */
export const EQUATOR_DEGREE_M = (6_378_137 * Math.PI) / 180;

export type TrackPoint = { latDeg: number; lonDeg: number; elevationM: number | undefined };

/** A track eastwards along the equator, with its altitude as a function of the way, and noise on the altitude. */
export function syntheticTrack(track: {
  lengthM: number;
  stepM?: number;
  altitudeM: (alongM: number) => number;
  noiseM?: number;
  seed?: number;
}): TrackPoint[] {
  const { lengthM, stepM = 10, altitudeM, noiseM = 0, seed = 1 } = track;
  const normal = seededNormal(seed);
  return Array.from({ length: Math.round(lengthM / stepM) + 1 }, (_, index) => ({
    latDeg: 0,
    lonDeg: -150 + (index * stepM) / EQUATOR_DEGREE_M,
    elevationM: altitudeM(index * stepM) + noiseM * normal(),
  }));
}

/** Rounded hills of a height, one every `everyM`; the way starts and ends in a valley if it is a multiple of that. */
export const hills =
  (heightM: number, everyM: number, baseM = 800) =>
  (alongM: number): number =>
    baseM + (heightM / 2) * (1 - Math.cos((2 * Math.PI * alongM) / everyM));

/** A straight-sided mountain: up to the middle, down to the end. */
export const gable =
  (heightM: number, lengthM: number, baseM = 800) =>
  (alongM: number): number =>
    baseM + heightM * (1 - Math.abs((2 * alongM) / lengthM - 1));
