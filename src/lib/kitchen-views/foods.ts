import type { Stored } from '../server/records.ts';
import { compositionDoubts } from '../planning/model/composition-doubts.ts';
import type { Food } from '../planning/model/composition.ts';
import { energyKcalOf } from '../planning/model/energy-factors.ts';

/** The parts of 100 g, in the order of the table. */
export const PART_COLUMNS = ['Water', 'Protein', 'Fat', 'Carbohydrate', 'Fibre', 'Alcohol'] as const;

/** One row of a table of foods, per 100 g. */
export type FoodRow = {
  readonly name: string;
  /** Grams by the columns, as they are read. */
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

const grams = new Intl.NumberFormat('en', { maximumFractionDigits: 1 });
const kcal = new Intl.NumberFormat('en', { maximumFractionDigits: 0 });

/** @param own the record of the food, where it is the user's own */
export function foodRow(food: Food, own?: Stored<Food>): FoodRow {
  const { composition } = food;
  const { waterG, proteinG, fatG, carbohydrateG, fibreG, alcoholG, energyKcal } = composition;
  return {
    name: food.name,
    parts: [waterG, proteinG, fatG, carbohydrateG, fibreG, alcoholG].map((part) => grams.format(part)),
    energy: kcal.format(energyKcal ?? energyKcalOf(composition, 'eu')),
    byFactors: energyKcal === undefined,
    source: food.source,
    doubts: compositionDoubts(composition),
    ...(own && { own: { id: own.id, version: own.version } }),
  };
}
