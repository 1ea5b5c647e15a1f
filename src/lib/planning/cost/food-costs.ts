import { dishName } from '../model/complete-lot.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { FoodCosts, MenuPlan } from '../model/trip-plan.ts';

type Row = FoodCosts['rows'][number];
type Eaten = { readonly day: number; readonly eater: string; readonly servings: number };

/**
 * What the food of a menu costs, for each person and day. What is opened is paid for by those who eat of it, in the shares in which they eat, so that leftovers are paid for too
 * and the rows add up to what all opened pouches cost; the reserve comes home and is left out.
 *
 * @param shopPrices what a serving of a dish costs ready-made, by its name
 * @returns minor units of the currency, not rounded
 */
export function foodCosts(
  menu: Pick<MenuPlan, 'meals'>,
  stock: Stock,
  { shopPrices }: Pick<Settings, 'shopPrices'>,
  people: readonly string[],
): FoodCosts {
  const lots = new Map(stock.map((lot) => [lot.code, lot]));
  const prices = new Map(shopPrices.map(({ recipe, servingMinor }) => [dishName(recipe), servingMinor]));
  const rows = new Map<string, Row>();
  const kinds = { home: nothing(), bought: nothing() };
  const compared = { servings: 0, ownMinor: 0, shopMinor: 0 };

  for (const { code, servings, firstDay, eaten } of openedLots(menu)) {
    const lot = lots.get(code);
    if (!lot) continue;
    const kind = kinds[kindOf(lot)];
    kind.servings += servings;
    const { costMinor } = lot;
    if (costMinor === undefined) continue;
    kind.pricedServings += servings;
    kind.minor += servings * costMinor;
    const shopMinor = lot.bought ? undefined : prices.get(dishName(lot.recipe));
    if (shopMinor !== undefined) {
      compared.servings += servings;
      compared.ownMinor += servings * costMinor;
      compared.shopMinor += servings * shopMinor;
    }
    for (const { day, eater, share } of sharesOf(eaten, firstDay, people)) {
      const key = `${day} ${eater}`;
      const row = rows.get(key) ?? { day, eater, homeMinor: 0, boughtMinor: 0 };
      const minor = share * servings * costMinor;
      rows.set(key, {
        ...row,
        ...(lot.bought ? { boughtMinor: row.boughtMinor + minor } : { homeMinor: row.homeMinor + minor }),
      });
    }
  }
  const place = new Map(people.map((name, index) => [name, index]));
  return {
    rows: [...rows.values()].sort(
      (a, b) => a.day - b.day || (place.get(a.eater) ?? 0) - (place.get(b.eater) ?? 0),
    ),
    ...kinds,
    ...(compared.servings > 0 && { compared }),
  };
}

const nothing = () => ({ minor: 0, servings: 0, pricedServings: 0 });
const kindOf = ({ bought }: PouchLot): 'home' | 'bought' => (bought ? 'bought' : 'home');

/** What each cook group opens of each lot, and who eats of it when. */
function openedLots({ meals }: Pick<MenuPlan, 'meals'>) {
  const opened = new Map<string, { code: string; servings: number; firstDay: number; eaten: Eaten[] }>();
  const of = (group: string, code: string, day: number) => {
    const key = `${group}\n${code}`;
    const known = opened.get(key) ?? { code, servings: 0, firstDay: day, eaten: [] };
    opened.set(key, known);
    return known;
  };
  for (const meal of [...meals].sort((a, b) => a.day - b.day)) {
    for (const { code, servings } of meal.opened) of(meal.group, code, meal.day).servings += servings;
    for (const { code, eater, servings } of meal.portions)
      of(meal.group, code, meal.day).eaten.push({ day: meal.day, eater, servings });
  }
  return [...opened.values()].filter(({ servings }) => servings > 0);
}

/** Shares that add up to 1; where nobody eats of it, everybody bears the same. */
function sharesOf(eaten: readonly Eaten[], day: number, people: readonly string[]) {
  const all = eaten.reduce((sum, { servings }) => sum + servings, 0);
  if (all <= 0) return people.map((eater) => ({ day, eater, share: 1 / people.length }));
  return eaten.map((row) => ({ ...row, share: row.servings / all }));
}
