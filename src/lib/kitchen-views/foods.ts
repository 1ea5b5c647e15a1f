import type { Stored } from '../server/records.ts';
import { compositionDoubts } from '../planning/model/composition-doubts.ts';
import type { Food } from '../planning/model/composition.ts';
import { energyKcalOf } from '../planning/model/energy-factors.ts';
import { compositionDoubtText } from '../presentation/composition-words.ts';
import { sayNumber, text } from '../texts/say.ts';

/** The parts of 100 g, in the order of the table. */
export const PART_COLUMNS = [
  text('Water'),
  text('Protein'),
  text('Fat'),
  text('Carbohydrate'),
  text('Fibre'),
  text('Alcohol'),
  text('Sugars'),
  text('Sodium (mg)'),
];

/** One row of a table of foods, per 100 g. */
export type FoodRow = {
  readonly name: string;
  /** By the columns, as they are read; a dash where nobody states it. */
  readonly parts: readonly string[];
  readonly energy: string;
  /** The table states no energy; it is by the EU factors. */
  readonly byFactors: boolean;
  readonly source: string;
  /** What cannot be right, or wants a second look. */
  readonly doubts: readonly string[];
  /** Where it is the user's own. */
  readonly own?: { readonly id: string; readonly version: number };
};

/** @param own the record of the food, where it is the user's own */
export function foodRow(food: Food, own?: Stored<Food>): FoodRow {
  const { composition } = food;
  const { waterG, proteinG, fatG, carbohydrateG, fibreG, alcoholG, sugarsG, sodiumMg, energyKcal } =
    composition;
  return {
    name: food.name,
    parts: [waterG, proteinG, fatG, carbohydrateG, fibreG, alcoholG, sugarsG, sodiumMg].map((part) =>
      part === undefined ? '–' : sayNumber(part, { maximumFractionDigits: 1 }),
    ),
    energy: sayNumber(energyKcal ?? energyKcalOf(composition, 'eu'), { maximumFractionDigits: 0 }),
    byFactors: energyKcal === undefined,
    source: food.number === undefined ? food.source : `${food.source}, ${food.number}`,
    doubts: food.number === undefined ? compositionDoubts(composition).map(compositionDoubtText) : [],
    ...(own && { own: { id: own.id, version: own.version } }),
  };
}
