import type { Terrain } from '../model/route.ts';

/**
 * Terrain factor of walking in snow without snowshoes, by how deep the foot sinks.
 *
 * Source: US Army ERDC, review of terrain coefficients for walking over snow: 0.0005 z³ + 0.0001 z² + 0.1072 z + 1.2604 with z = h (1 - ρ/1.186), h and z in cm, ρ in g/cm³;
 * for z up to some 20 cm.
 *
 * @param depthCm depth of the footprints, cm
 * @param densityGPerCm3 of the snow; settled snow has 0.4
 * @example snowFactor(10) // 2.1
 */
export function snowFactor(depthCm: number, densityGPerCm3 = 0.4): number {
  const z = depthCm * (1 - densityGPerCm3 / 1.186);
  return 0.0005 * z ** 3 + 0.0001 * z ** 2 + 0.1072 * z + 1.2604;
}

/** How deep the foot sinks, cm, in the kinds of snow that there are to choose from. */
export const SNOW_DEPTH_CM = { 'firm-snow': 2, 'soft-snow': 10, 'deep-snow': 20 } as const;

/** What the moving part of walking costs, 1 for a hard surface. Source: Soule & Goldman 1972, in Pandolf, Givoni & Goldman 1977; snow: see `snowFactor`. */
export const TERRAIN_FACTOR: Readonly<Record<Terrain, number>> = {
  blacktop: 1.0,
  'dirt-road': 1.1,
  'light-brush': 1.2,
  'heavy-brush': 1.5,
  'swampy-bog': 1.8,
  'loose-sand': 2.1,
  'firm-snow': snowFactor(SNOW_DEPTH_CM['firm-snow']),
  'soft-snow': snowFactor(SNOW_DEPTH_CM['soft-snow']),
  'deep-snow': snowFactor(SNOW_DEPTH_CM['deep-snow']),
};

/** The ground that the methods of walking time are for. */
const PATH = TERRAIN_FACTOR['dirt-road'];

/**
 * Time on a kind of ground over that on a path. No rule of walking time has a figure for snow or sand: the speed is the one at which walking takes as much power as on a path, by
 * Pandolf's equation, whose moving part goes with η v². TB MED 507 has the same ratio: 3.5 mph on a hard surface and 2.5 mph in loose sand are the same class of work.
 *
 * @returns at least 1: nobody walks faster for a paved road
 */
export const terrainTimeFactor = (terrain: Terrain): number =>
  Math.sqrt(Math.max(1, TERRAIN_FACTOR[terrain] / PATH));

/**
 * Loss of the greatest oxygen uptake, share of that at sea level: none at 300 m and 6.3 % for each 1000 m up to 2800 m (Wehrlin & Hallén 2006, Eur J Appl Physiol 96:404), 26 % at
 * 4000 m (Buskirk et al. 1967, J Appl Physiol 23:259), 50 % at 5300 m (MacInnis et al. 2015, Med Sci Sports Exerc 47:1869); straight between.
 */
const UPTAKE_LOST = [
  [300, 0],
  [2800, 0.063 * 2.5],
  [4000, 0.26],
  [5300, 0.5],
] as const;
/** Of the lost uptake, so much is lost of the pace (rule of thumb; a study of walkers at altitude would replace it). */
const PACE_SHARE = 0.7;
/** Up to here the times of the methods hold: they are of middle mountains (rule of thumb). */
const TIMES_HOLD_UP_TO_M = 1500;

/** @returns share of the oxygen uptake at sea level that is left, not below a quarter */
export function uptakeLeft(altitudeM: number): number {
  let index = 1;
  while (index < UPTAKE_LOST.length - 1 && altitudeM > (UPTAKE_LOST[index]?.[0] ?? 0)) index++;
  const [x0, y0] = UPTAKE_LOST[index - 1] ?? UPTAKE_LOST[0];
  const [x1, y1] = UPTAKE_LOST[index] ?? UPTAKE_LOST[1];
  const lost = y0 + ((y1 - y0) * (altitudeM - x0)) / (x1 - x0);
  return Math.max(0.25, 1 - Math.max(0, lost));
}

/** @returns time at an altitude over that where the methods of walking time hold, at least 1 */
export function altitudeTimeFactor(altitudeM: number): number {
  const left = uptakeLeft(Math.max(altitudeM, TIMES_HOLD_UP_TO_M)) / uptakeLeft(TIMES_HOLD_UP_TO_M);
  return 1 / (1 - PACE_SHARE * (1 - left));
}
