/** Published equations of the energy of walking, written down from their texts and not from the program, W for each kg of body mass; and ten legs to hold them against each other. */

export type TestLeg = {
  readonly name: string;
  readonly speedMs: number;
  /** Rise over run, %. */
  readonly gradePercent: number;
  /** Pack over body mass. */
  readonly packShare: number;
};

export const BODY_KG = 75;
/** Resting rate that sample figures of the backpacking equation are given with, W/kg. */
const RESTING = 1.2;

export const TEN_LEGS: readonly TestLeg[] = [
  { name: 'level, no pack', speedMs: 1.3, gradePercent: 0, packShare: 0 },
  { name: 'level, 15 kg', speedMs: 1.2, gradePercent: 0, packShare: 0.2 },
  { name: 'level, 26 kg', speedMs: 1.1, gradePercent: 0, packShare: 0.35 },
  { name: 'up 5 %, 11 kg', speedMs: 1.1, gradePercent: 5, packShare: 0.15 },
  { name: 'up 10 %, 15 kg', speedMs: 0.9, gradePercent: 10, packShare: 0.2 },
  { name: 'up 20 %, 15 kg', speedMs: 0.6, gradePercent: 20, packShare: 0.2 },
  { name: 'up 30 %, no pack', speedMs: 0.45, gradePercent: 30, packShare: 0 },
  { name: 'down 5 %, 15 kg', speedMs: 1.2, gradePercent: -5, packShare: 0.2 },
  { name: 'down 10 %, 11 kg', speedMs: 1.2, gradePercent: -10, packShare: 0.15 },
  { name: 'down 20 %, 15 kg', speedMs: 0.9, gradePercent: -20, packShare: 0.2 },
];

const looneyGrade = (s: number, g: number) => 0.34 * s * g * (1 - Math.pow(1.05, 1 - Math.pow(1.1, g + 32)));

/** Looney et al. 2019, Med Sci Sports Exerc 51:1954; -40 to 45 %, up to 1.96 m/s. Measured without pack: a pack counts as body mass here. */
export const looney2019 = ({ speedMs: s, gradePercent: g, packShare }: TestLeg): number =>
  (1.44 + 1.94 * Math.pow(s, 0.43) + 0.24 * Math.pow(s, 4) + looneyGrade(s, g)) * (1 + packShare);

/** Looney et al. 2022, Med Sci Sports Exerc 54:646; packs up to 66 % of the body mass, 0.45 to 1.97 m/s. */
export const looney2022 = ({ speedMs: s, gradePercent: g, packShare }: TestLeg, terrain = 1): number =>
  RESTING +
  (0.19 + terrain * (1.78 * Math.pow(s, 0.58) + 0.27 * Math.pow(s, 4)) + looneyGrade(s, g)) *
    (1 + 1.96 * Math.pow(packShare, 1.36));

/** Pandolf, Givoni & Goldman 1977, J Appl Physiol 43:577, downhill less the correction of Santee et al. 2003 (text not rechecked); tested from -12 to 12 %. */
export function pandolf1977({ speedMs: v, gradePercent: g, packShare }: TestLeg, terrain = 1): number {
  const w = BODY_KG;
  const l = packShare * w;
  const standing = 1.5 * w + 2 * (w + l) * (l / w) ** 2;
  const moving = terrain * (w + l) * (1.5 * v ** 2 + 0.35 * v * g);
  const correction =
    g < 0 ? terrain * ((g * (w + l) * v) / 3.5 - ((w + l) * (g + 6) ** 2) / w + (25 - v ** 2)) : 0;
  return Math.max(standing, standing + moving - correction) / w;
}

/** Minetti et al. 2002, J Appl Physiol 93:1039: the polynomial of the cost of walking, J/kg/m, above rest (text not rechecked: a cross-check only); -45 to 45 %. */
export function minetti2002({ speedMs, gradePercent, packShare }: TestLeg): number {
  const i = gradePercent / 100;
  const cost = 280.5 * i ** 5 - 58.7 * i ** 4 - 76.8 * i ** 3 + 51.9 * i ** 2 + 19.6 * i + 2.5;
  return speedMs * cost * (1 + packShare) + RESTING;
}

/** The mean of the equations that are in range, but for Minetti's. */
export function meanInRange(leg: TestLeg): number {
  const inRange = [looney2019(leg), looney2022(leg)];
  if (Math.abs(leg.gradePercent) <= 12) inRange.push(pandolf1977(leg));
  return inRange.reduce((sum, value) => sum + value, 0) / inRange.length;
}
