import type { MenuCosts } from '../model/settings.ts';
import { GainGraph } from './gain-graph.ts';

/** A day's table in numbers; groups and meals by index, energies in kcal. */
export type DayTable = {
  /** By group. */
  readonly targetKcal: readonly number[];
  readonly ceilingKcal: readonly number[];
  /** By meal, then by group. */
  readonly floorKcal: readonly (readonly number[])[];
  readonly mostKcal: readonly (readonly number[])[];
};
/** Food on the table of one meal. */
export type OpenedFood = { readonly meal: number; readonly kcal: number; readonly feeds: readonly boolean[] };

/** What a day comes to, kcal over all groups. */
export type DayServed = {
  readonly missingKcal: number;
  readonly smallMealKcal: number;
  readonly leftOverKcal: number;
  readonly aboveCeilingKcal: number;
  /** By food, then by group. */
  readonly eatenKcal: readonly (readonly number[])[];
};

export type ServingCosts = Pick<
  MenuCosts,
  'missingKcal' | 'smallMealKcal' | 'leftOverKcal' | 'aboveCeilingKcal'
>;

/**
 * Shares what is opened on a day among the groups so that it costs least: hunger of the day, meals under their floor, what is left over, what is eaten above the
 * ceiling. Exact: a flow of energy from foods through meals and groups, raised along the path that gains most until none gains (successive
 * shortest paths; Ahuja, Magnanti & Orlin, Network Flows, 1993, ch. 9).
 */
export function serveDay(table: DayTable, foods: readonly OpenedFood[], costs: ServingCosts): DayServed {
  const groups = table.targetKcal.length;
  const meals = table.floorKcal.length;
  const graph = new GainGraph();
  graph.reset(2 + foods.length + meals * groups + groups);
  const [source, sink] = [0, 1];
  const foodNode = (food: number) => 2 + food;
  const mealNode = (meal: number, group: number) => 2 + foods.length + meal * groups + group;
  const groupNode = (group: number) => 2 + foods.length + meals * groups + group;

  const supply = foods.map(({ kcal }, food) => graph.addArc(source, foodNode(food), kcal, 0));
  const eaten = foods.map(({ meal, kcal, feeds }, food) =>
    table.targetKcal.map((_, group) =>
      feeds[group] ? graph.addArc(foodNode(food), mealNode(meal, group), kcal, 0) : -1,
    ),
  );
  const small: number[] = [];
  for (let meal = 0; meal < meals; meal++)
    for (let group = 0; group < groups; group++) {
      const floor = table.floorKcal[meal]?.[group] ?? 0;
      const most = table.mostKcal[meal]?.[group] ?? 0;
      small.push(graph.addArc(mealNode(meal, group), groupNode(group), floor, costs.smallMealKcal));
      graph.addArc(mealNode(meal, group), groupNode(group), Math.max(0, most - floor), 0);
    }
  const hunger: number[] = [];
  const above: number[] = [];
  table.targetKcal.forEach((target, group) => {
    const ceiling = table.ceilingKcal[group] ?? target;
    hunger.push(graph.addArc(groupNode(group), sink, target, costs.missingKcal + costs.leftOverKcal));
    graph.addArc(groupNode(group), sink, Math.max(0, ceiling - target), costs.leftOverKcal);
    above.push(graph.addArc(groupNode(group), sink, Infinity, costs.leftOverKcal - costs.aboveCeilingKcal));
  });
  graph.raise(source, sink);

  const flows = (arcs: readonly number[]) => arcs.reduce((sum, arc) => sum + graph.flow(arc), 0);
  const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  return {
    missingKcal: Math.max(0, sumOf(table.targetKcal) - flows(hunger)),
    smallMealKcal: Math.max(0, sumOf(table.floorKcal.flat()) - flows(small)),
    leftOverKcal: Math.max(0, sumOf(foods.map(({ kcal }) => kcal)) - flows(supply)),
    aboveCeilingKcal: flows(above),
    eatenKcal: eaten.map((byGroup) => byGroup.map((arc) => (arc < 0 ? 0 : graph.flow(arc)))),
  };
}
