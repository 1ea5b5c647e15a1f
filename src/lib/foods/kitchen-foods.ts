import type { Food } from '../planning/model/composition.ts';
import { foodWords } from './food-words.ts';
import { KITCHEN_NAMES } from './kitchen-names.ts';
import { ruleOfThumbFoods } from './rule-of-thumb-foods.ts';
import { sr26, type HouseholdMeasure } from './sr26.ts';

/** A name that cooks use, as its words, and the food that it means. */
export type KitchenName = { readonly name: string; readonly words: readonly string[]; readonly food: Food };

/** Words in one order, each once: two names with the same key mean the same. */
export const keyOf = (words: readonly string[]): string => [...new Set(words)].sort().join(' ');

type KitchenFoods = {
  readonly foods: readonly Food[];
  readonly names: readonly KitchenName[];
  readonly byKey: ReadonlyMap<string, KitchenName>;
  readonly groups: ReadonlyMap<Food, string>;
  readonly measures: ReadonlyMap<string, readonly HouseholdMeasure[]>;
};

let known: KitchenFoods | undefined;

/** The foods that every kitchen has from the start, those of the published table first, and how cooks call them. */
export function kitchenFoods(): KitchenFoods {
  if (known) return known;
  const table = sr26();
  const own = ruleOfThumbFoods();
  const byNumber = new Map(table.map(({ food }) => [food.number, food]));
  const listed: [Food, string[]][] = [];
  for (const line of KITCHEN_NAMES.split('\n')) {
    const food = byNumber.get(line.slice(0, 5));
    if (food) listed.push([food, line.slice(6).split(', ')]);
  }
  for (const { food, names } of own) listed.push([food, [...names]]);
  const names = listed.flatMap(([food, called]) =>
    called.map((name): KitchenName => ({ name, words: foodWords(name), food })),
  );
  const byKey = new Map<string, KitchenName>();
  for (const name of names) {
    const key = keyOf(name.words);
    if (!byKey.has(key)) byKey.set(key, name);
  }
  known = {
    foods: [...table.map(({ food }) => food), ...own.map(({ food }) => food)],
    names,
    byKey,
    groups: new Map(table.map(({ food, group }) => [food, group])),
    measures: new Map(table.map(({ food, measures }) => [food.number, measures])),
  };
  return known;
}

/** @returns the household measures of a food of the table; none for another food. */
export const measuresOf = ({ number }: Pick<Food, 'number'>): readonly HouseholdMeasure[] =>
  (number === undefined ? undefined : kitchenFoods().measures.get(number)) ?? [];
