import type { PouchLot } from '../model/pouch-lot.ts';
import type { MenuMeal, Portion } from '../model/trip-plan.ts';
import { NUTRIENTS, type Nutrient } from '../model/words.ts';

/** Nutrients of food, and the energy of the part of it that states each. */
export type Nutrients = Readonly<Record<Nutrient, { readonly amount: number; readonly statedKcal: number }>>;

/** Of one serving of a lot: g, sodium in mg; `undefined` where nobody has stated it. */
export const SERVING_OF: Readonly<Record<Nutrient, (lot: PouchLot) => number | undefined>> = {
  protein: ({ proteinG }) => proteinG,
  carbohydrate: ({ carbohydrateG }) => carbohydrateG,
  fat: ({ fatG }) => fatG,
  fibre: ({ fibreG }) => fibreG,
  sodium: ({ sodiumMg }) => sodiumMg,
};

/**
 * What one person eats of a meal. What comes from a pot is the mean of the pot, as its energy is.
 *
 * @param lots by code
 * @example the sums over all who eat a meal are `Σ servings × nutrient of the lot` over its portions
 */
export function nutrientsEaten(
  meal: Pick<MenuMeal, 'portions' | 'opened' | 'fromOpen'>,
  eater: string,
  lots: ReadonlyMap<string, PouchLot>,
): Nutrients {
  const recipes = new Map([...meal.opened, ...meal.fromOpen].map(({ code, recipe }) => [code, recipe]));
  const dishOf = ({ code, style }: Portion) =>
    style === 'shared pot' ? `${style} ${recipes.get(code) ?? code}` : `${style} ${code}`;
  const dishes = Map.groupBy(meal.portions, dishOf);
  const eaten = Object.fromEntries(NUTRIENTS.map((name) => [name, { amount: 0, statedKcal: 0 }])) as Record<
    Nutrient,
    { amount: number; statedKcal: number }
  >;
  for (const rows of dishes.values()) {
    const servings = sumOf(rows, (row) => row.servings);
    const own = sumOf(
      rows.filter((row) => row.eater === eater),
      (row) => row.servings,
    );
    if (own === 0 || servings === 0) continue;
    for (const name of NUTRIENTS) {
      const stated = rows.flatMap((row) => {
        const lot = lots.get(row.code);
        const serving = lot && SERVING_OF[name](lot);
        return lot && serving !== undefined
          ? [{ amount: row.servings * serving, kcal: row.servings * lot.energyKcal }]
          : [];
      });
      const share = own / servings;
      eaten[name].amount += share * sumOf(stated, ({ amount }) => amount);
      eaten[name].statedKcal += share * sumOf(stated, ({ kcal }) => kcal);
    }
  }
  return eaten;
}

const sumOf = <Row>(rows: readonly Row[], of: (row: Row) => number): number =>
  rows.reduce((sum, row) => sum + of(row), 0);
