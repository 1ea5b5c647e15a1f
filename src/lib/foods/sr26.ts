import type { Food } from '../planning/model/composition.ts';
import { VOLUME_ML } from '../planning/units/convert.ts';
import { natureOf } from './food-nature.ts';
import { SR26_FOODS_CSV, SR26_MEASURES_CSV } from './sr26-table.ts';

/** So many grams are one of a household measure: a cup of it chopped, a large one, a clove. */
export type HouseholdMeasure = {
  /** As the table has it, in English: "cup, chopped", "large (3-1/4\" dia)", "clove". */
  readonly name: string;
  /** Weight of one, g. */
  readonly grams: number;
};

/** A food of the table: what the program keeps of it, and what only the table has. */
export type TableFood = {
  readonly food: Food & { readonly number: string };
  /** Food group of the table. */
  readonly group: string;
  readonly ashG: number;
  readonly measures: readonly HouseholdMeasure[];
};

/** How the source of a row is cited; its number stands in `number`. */
export const SR26_SOURCE = 'USDA Standard Reference 26';

/** The cells of a line of CSV that has no line break in a cell. */
function cellsOf(line: string): string[] {
  const cells: string[] = [];
  for (const [, quoted, bare] of line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g))
    cells.push(quoted === undefined ? (bare ?? '') : quoted.replaceAll('""', '"'));
  return cells;
}

/** Carbohydrate by difference leaves alcohol out, so it is what is left of 100 g; elsewhere that is acid, or rounding. */
const HOLDS_ALCOHOL = /^Vanilla extract(?!.*no alcohol)/;

const stated = (cell: string | undefined): number | undefined =>
  cell === undefined || cell === '' ? undefined : Number(cell);
const rounded = (grams: number) => Number(grams.toFixed(2));

function foodOfLine(line: string, measures: readonly HouseholdMeasure[]): TableFood {
  const [number = '', name = '', group = '', ...figures] = cellsOf(line);
  const [water, energy, protein, fat, total, fibre, sugars, ash, sodium, potassium] = figures.map(stated);
  const fibreG = Math.min(fibre ?? 0, total ?? 0);
  const restG = 100 - [water, protein, fat, total, ash].reduce<number>((sum, part) => sum + (part ?? 0), 0);
  const { allergens, diets, cookingClass } = natureOf(name, group);
  const gPerMl = gPerMlOf(measures);
  const gPerPiece = gPerPieceOf(measures);
  return {
    food: {
      name,
      number,
      composition: {
        waterG: water ?? 0,
        proteinG: protein ?? 0,
        fatG: fat ?? 0,
        carbohydrateG: rounded((total ?? 0) - fibreG),
        fibreG,
        alcoholG: HOLDS_ALCOHOL.test(name) ? rounded(restG) : 0,
        ...(energy !== undefined && { energyKcal: energy }),
        ...(sugars !== undefined && { sugarsG: sugars }),
        ...(sodium !== undefined && { sodiumMg: sodium }),
        ...(potassium !== undefined && { potassiumMg: potassium }),
      },
      source: SR26_SOURCE,
      ...(allergens && { allergens: [...allergens] }),
      diets: [...diets],
      cookingClass,
      ...(gPerMl !== undefined && { gPerMl }),
      ...(gPerPiece !== undefined && { gPerPiece }),
    },
    group,
    ashG: ash ?? 0,
    measures,
  };
}

/** Units of volume that the table uses, as a measure begins with them. */
const VOLUMES: readonly (readonly [start: RegExp, ml: number])[] = [
  [/^cups?\b/i, VOLUME_ML.cup],
  [/^tbsp\b|^tablespoons?\b/i, VOLUME_ML.tbsp],
  [/^tsp\b|^teaspoons?\b/i, VOLUME_ML.tsp],
  [/^fl oz\b/i, VOLUME_ML['fl oz']],
  [/^quarts?\b/i, VOLUME_ML.qt],
  [/^pints?\b/i, VOLUME_ML.qt / 2],
  [/^liters?\b/i, VOLUME_ML.l],
];

/** @returns volume of a measure, ml; `undefined` where it is no volume. */
export const volumeOf = ({ name }: HouseholdMeasure): number | undefined =>
  VOLUMES.find(([start]) => start.test(name))?.[1];

function gPerMlOf(measures: readonly HouseholdMeasure[]): number | undefined {
  const byVolume = measures.flatMap((measure) => {
    const ml = volumeOf(measure);
    return ml === undefined ? [] : [{ measure, ml }];
  });
  // The largest volume of the table is the least rounded.
  const best = byVolume.reduce<(typeof byVolume)[number] | undefined>(
    (so, each) => (so && so.ml >= each.ml ? so : each),
    undefined,
  );
  return best && Number((best.measure.grams / best.ml).toPrecision(4));
}

const PIECES: readonly RegExp[] = [
  /^medium\b|\bmedium\b/i,
  /^(?:whole|fruit|clove|egg|each|piece)\b/i,
  /^(?:large|small)\b/i,
  /^(?:slice|stalk|leaf|root|pepper|carrot|potato|tomato|ear|head|spear|tortilla|pita|roll|bagel)\b/i,
];
const gPerPieceOf = (measures: readonly HouseholdMeasure[]): number | undefined => {
  const pieces = measures.filter((measure) => volumeOf(measure) === undefined);
  return PIECES.map((pattern) => pieces.find(({ name }) => pattern.test(name))).find(Boolean)?.grams;
};

let table: readonly TableFood[] | undefined;

/**
 * The foods of the USDA National Nutrient Database for Standard Reference, Release 26 (2013), that a kitchen uses: per 100 g edible
 * portion; carbohydrate is the table's by difference less fibre; energy is the table's, by food-specific factors; the alcohol of
 * extracts is what the other parts leave of 100 g. What the table does not state of fibre counts as none; sugars, sodium and potassium are left out then.
 *
 * @example sr26().find(({ food }) => food.number === '11282')?.food.name // 'Onions, raw'
 */
export function sr26(): readonly TableFood[] {
  if (table) return table;
  const measures = new Map<string, HouseholdMeasure[]>();
  for (const line of SR26_MEASURES_CSV.split('\n')) {
    const [number = '', amount, name = '', grams] = cellsOf(line);
    const of = measures.get(number) ?? [];
    of.push({ name, grams: Number(grams) / Number(amount) });
    measures.set(number, of);
  }
  table = SR26_FOODS_CSV.split('\n').map((line) => foodOfLine(line, measures.get(line.slice(0, 5)) ?? []));
  return table;
}
