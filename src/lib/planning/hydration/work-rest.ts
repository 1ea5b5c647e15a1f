import { heatCategory, type WorkRate } from './fluid-replacement.ts';

/** Minutes of work in each hour; the others are rest in the shade. 60: no limit. */
export type WorkRest = {
  readonly workMin: number;
  /** The table says not to work at all. */ readonly avoid: boolean;
};

type Minutes = readonly [easy: number, moderate: number, hard: number, veryHard: number];

/** Minutes of work in an hour of people used to the heat, by heat category 1 to 5. Source: US Army TB MED 507, heat cards of 2002 to 2004; very hard work as hard. */
const ACCLIMATISED: readonly Minutes[] = [
  [60, 60, 40, 40],
  [60, 50, 30, 30],
  [60, 40, 30, 30],
  [60, 30, 20, 20],
  [50, 20, 10, 10],
];

/**
 * The same for people not used to it, by wet-bulb globe temperature from, °C; 0: avoid. A cell that does not tell the two apart holds for both.
 * Source: Canadian Forces Health Services, Annex B.
 */
const NOT_ACCLIMATISED: readonly (readonly [fromC: number, minutes: Minutes])[] = [
  [20, [60, 60, 40, 30]],
  [25.5, [50, 40, 30, 20]],
  [26.5, [40, 30, 20, 10]],
  [29.5, [30, 20, 10, 0]],
  [31, [20, 10, 0, 0]],
  [32, [10, 0, 0, 0]],
];
/** Where a table says to avoid work, walking is still planned with the least of its minutes, so that the plan shows what it would take. */
const LEAST_WORK_MIN = 10;

const COLUMN: Readonly<Record<WorkRate, number>> = { easy: 0, moderate: 1, hard: 2, 'very hard': 3 };

/** @returns minutes of work in an hour, and whether work is to be avoided altogether: in "avoid" cells, for both, whoever is used to the heat */
export function workRestOf(wbgtC: number, work: WorkRate, isAcclimatised: boolean): WorkRest {
  const column = COLUMN[work];
  const byAnnexB = NOT_ACCLIMATISED.findLast(([fromC]) => wbgtC >= fromC - 1e-9)?.[1][column] ?? 60;
  const avoid = byAnnexB === 0;
  const category = heatCategory(wbgtC);
  const workMin = isAcclimatised ? (ACCLIMATISED[category - 1]?.[column] ?? 60) : byAnnexB;
  return { workMin: Math.max(LEAST_WORK_MIN, workMin), avoid };
}
