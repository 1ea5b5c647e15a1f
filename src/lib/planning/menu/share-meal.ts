import type { PouchLot } from '../model/pouch-lot.ts';
import type { Reason } from '../model/reasons.ts';
import type { DishStyle } from '../model/trip.ts';
import type { LotKind } from '../model/words.ts';
import type { Dish, MealTask } from './menu-problem.ts';
import { dealExtra, shareDish, styleOf, type AtTable } from './share-dish.ts';

/** Pouches that somebody put on a table, with what was said of them. */
export type TablePouches = {
  readonly lot: PouchLot;
  readonly pouches: number;
  readonly role: LotKind;
  /** Left out: as fits. */
  readonly style: DishStyle | undefined;
  readonly reason: Reason;
};

type Offered = {
  readonly recipe: string;
  readonly role: LotKind;
  readonly style: DishStyle | undefined;
  readonly rows: readonly TablePouches[];
  readonly may: readonly AtTable[];
};

/** The pouches of a table by dish. */
export const byDish = (rows: readonly TablePouches[]): TablePouches[][] => [
  ...Map.groupBy(rows, ({ lot, role, style }) => `${lot.recipe}\n${role}\n${style ?? ''}`).values(),
];

/**
 * Shares out what stands on a table where nobody said who eats what: one main dish for everyone, a second one only where there are more dishes than people.
 *
 * @param mayEat whether somebody, by name, may be served a lot
 */
export function shareMeal(
  task: Pick<MealTask, 'style'>,
  people: readonly AtTable[],
  opened: readonly TablePouches[],
  mayEat: (lot: PouchLot, eater: string) => boolean,
): Dish[] {
  const offered = byDish(opened).flatMap((rows): Offered[] => {
    const [first] = rows;
    if (!first) return [];
    const may = people.filter(({ name }) => rows.every(({ lot }) => mayEat(lot, name)));
    return [{ recipe: first.lot.recipe, role: first.role, style: first.style, rows, may }];
  });
  const seats = seatsAt(offered, people);
  return offered.map((dish): Dish => {
    const eaters = seats.get(dish) ?? dish.may;
    const pouches = dish.rows.map(({ lot, pouches }) => ({ lot, pouches }));
    const isMain = dish.role === 'main';
    const style = dish.style ?? (isMain ? styleOf(task, eaters, pouches) : 'own pouch');
    return {
      recipe: dish.recipe,
      role: dish.role,
      style,
      opened: pouches,
      portions: isMain
        ? shareDish(task, eaters, pouches, style)
        : pouches.flatMap((of) => dealExtra(eaters, of)),
      reason: dish.rows[0]?.reason ?? { code: 'as listed' },
    };
  });
}

/** Who eats which main dish: whoever has least to choose from sits down first, where there is most left for them. */
function seatsAt(offered: readonly Offered[], people: readonly AtTable[]): Map<Offered, AtTable[]> {
  const mains = offered.filter(({ role, may }) => role === 'main' && may.length > 0);
  const seats = new Map(mains.map((dish) => [dish, [] as AtTable[]]));
  const energy = ({ rows }: Offered) =>
    rows.reduce((sum, { lot, pouches }) => sum + pouches * lot.servingsPerPouch * lot.energyKcal, 0);
  const leftKcal = (dish: Offered) =>
    energy(dish) - (seats.get(dish) ?? []).reduce((sum, { plannedKcal }) => sum + plannedKcal, 0);
  const choices = (one: AtTable) => mains.filter(({ may }) => may.includes(one));
  for (const one of [...people].sort((a, b) => choices(a).length - choices(b).length)) {
    const [first, ...others] = choices(one);
    if (!first) continue;
    const best = others.reduce((most, dish) => (leftKcal(dish) > leftKcal(most) + 1e-9 ? dish : most), first);
    seats.get(best)?.push(one);
  }
  for (const [dish, seated] of seats) if (seated.length === 0) seats.set(dish, [...dish.may]);
  for (const [dish, seated] of seats)
    seats.set(
      dish,
      people.filter((one) => seated.includes(one)),
    );
  return seats;
}
