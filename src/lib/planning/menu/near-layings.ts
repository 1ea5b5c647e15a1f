import {
  eatingPoints,
  ENERGY_PRICES,
  fillingPoints,
  leastByPlace,
  platePoints,
  platesOf,
  potTable,
  shelfAt,
} from './dish-parts.ts';
import {
  asLaying,
  MOST_SERVINGS,
  MOST_SHARED,
  pouchPointsAt,
  pricedOf,
  type LaidDish,
  type Laying,
  type Surroundings,
} from './laying.ts';
import { OWN_POUCH_BELOW_SERVINGS } from './lot-rules.ts';
import { mealPoints, OWN_PLATE, POT, POT_FOR_OWN, SITTING_SHARE, SKIPPED_MEAL } from './menu-costs.ts';
import { sumOver } from './place-sets.ts';
import { LEAST_QUARTERS, type MenuModel, type ModelSlot, type SlotOption } from './menu-model.ts';

const EPSILON = 1e-9;

type Priced = { readonly part: LaidDish; readonly priced: number };

/**
 * All layings of a table that are priced below a limit.
 *
 * @param most of them, and of the dishes for some of the people that they are made of
 * @returns undefined where there are more
 */
export function layingsBelow(
  model: MenuModel,
  slot: ModelSlot,
  around: Surroundings,
  limit: number,
  most: number,
  work: { units: number },
): Laying[] | undefined {
  const count = slot.people.length;
  const all = (1 << count) - 1;
  const bySet = partsBelow(model, slot, around, limit, 4 * most, work);
  if (!bySet) return undefined;
  const without = goingWithout(model, slot, around);
  const leastOf = new Float64Array(all + 1);
  for (let set = 1; set <= all; set++) {
    const first = set & -set;
    let least = (without[Math.log2(first)] ?? 0) + (leastOf[set ^ first] ?? 0);
    for (let own = set; own > 0; own = (own - 1) & set)
      if (own & first)
        for (const { priced } of bySet[own] ?? [])
          least = Math.min(least, priced + (leastOf[set ^ own] ?? 0));
    leastOf[set] = least;
  }
  const layings: Laying[] = [];
  const chosen: LaidDish[] = [];
  /** @returns false where there are too many */
  const from = (set: number, points: number): boolean => {
    work.units += 1;
    if (set === 0) {
      if (!mayStandTogether(model, chosen)) return true;
      const laying = asLaying(model, slot, chosen);
      if (pricedOf(model, slot, laying, around) < limit) layings.push(laying);
      return layings.length <= most;
    }
    const first = set & -set;
    const skipped = points + (without[Math.log2(first)] ?? 0);
    if (skipped + (leastOf[set ^ first] ?? 0) < limit && !from(set ^ first, skipped)) return false;
    for (let own = set; own > 0; own = (own - 1) & set) {
      if (!(own & first)) continue;
      const rest = leastOf[set ^ own] ?? 0;
      for (const { part, priced } of bySet[own] ?? []) {
        if (points + priced + rest >= limit) continue;
        chosen.push(part);
        const isEnough = from(set ^ own, points + priced);
        chosen.pop();
        if (!isEnough) return false;
      }
    }
    return true;
  };
  return from(all, 0) ? layings : undefined;
}

function mayStandTogether(model: MenuModel, parts: readonly LaidDish[]): boolean {
  const shared = parts.filter(({ portions }) => portions.length > 1);
  const [one, two] = shared;
  if (shared.length > MOST_SHARED || (one && two && one.dish === two.dish && one.style === two.style))
    return false;
  const used = new Map<number, number>();
  for (const { lots, pouches } of parts)
    lots.forEach((lot, at) => used.set(lot, (used.get(lot) ?? 0) + (pouches[at] ?? 0)));
  return [...used].every(([lot, pouches]) => pouches <= (model.lots[lot]?.stock ?? 0));
}

/** What it comes to that somebody goes without, by place. */
const goingWithout = (model: MenuModel, slot: ModelSlot, around: Surroundings): number[] =>
  slot.people.map(
    (_, place) =>
      SKIPPED_MEAL * model.costs.missingKcal +
      mealPoints(slot.plannedKcal[place] ?? 0, 0, model.costs) +
      around.plate(place, 0, 0),
  );

/** By set of places, as bits: each dish that can be served to just these, as far as a laying with it can be priced below the limit. */
function partsBelow(
  model: MenuModel,
  slot: ModelSlot,
  around: Surroundings,
  limit: number,
  most: number,
  work: { units: number },
): Priced[][] | undefined {
  const { costs } = model;
  const count = slot.people.length;
  const plates = platesOf(model, slot, around);
  const shelf = shelfAt(model, slot, around);
  const byHand = slot.task.style !== 'shared pot';
  const asked = POT + (slot.task.style === 'own pouch' ? POT_FOR_OWN * costs.missingKcal : 0);
  const dishes = slot.options.map((option) => {
    const eating = Float64Array.from(slot.people, (_, place) =>
      eatingPoints(model, slot, option, place, around, plates),
    );
    const kcalPoints = Math.min(
      ...option.lots.map((lot) => (shelf.points[lot] ?? 0) / (model.lots[lot]?.kcal ?? 1)),
    );
    return { option, eating, least: leastByPlace(slot, plates, eating, kcalPoints, costs.leftOverKcal) };
  });
  /** The least that each place adds to any laying. */
  const leastOf = goingWithout(model, slot, around).map((without, place) =>
    dishes.reduce((least, dish) => Math.min(least, dish.least[place] ?? Infinity), without),
  );
  const bySet: Priced[][] = [];
  let found = 0;
  for (let set = 1; set < 1 << count; set++) {
    const places = slot.people.flatMap((_, place) => ((set >> place) & 1 ? [place] : []));
    const own: Priced[] = [];
    bySet[set] = own;
    const ownLimit = limit - leastOf.reduce((sum, least, place) => sum + ((set >> place) & 1 ? 0 : least), 0);
    const atPrice = plates.least.map((byPlace) => sumOver(places, (place) => byPlace[place] ?? 0));
    const add = (part: LaidDish, priced: number) => {
      own.push({ part, priced });
      found++;
    };
    for (const dish of dishes) {
      const { option } = dish;
      if (places.some((place) => dish.eating[place] === Infinity)) continue;
      if (places.reduce((sum, place) => sum + (dish.least[place] ?? 0), 0) >= ownLimit) continue;
      for (const filling of option.fillings) {
        const opened =
          fillingPoints(shelf, filling) +
          (around.opens?.(option.dish, filling.servings) ?? 0) +
          asked +
          costs.leftOverKcal * filling.kcal;
        work.units += 1;
        // as in `potOf`: at any price of energy this is no more than the filling comes to
        const kcal = filling.kcal * costs.missingKcal;
        const portions = Math.max(...ENERGY_PRICES.map((price, at) => (atPrice[at] ?? 0) - price * kcal));
        const eat = sumOver(places, (place) => dish.eating[place] ?? Infinity);
        if (!(opened + portions + eat < ownLimit)) continue;
        const { plate, most: mostQuarters, total } = potTable(model, slot, option, filling, around, work);
        const weights = places.reduce((sum, place) => sum + (slot.weight[place] ?? 0), 0);
        const from = total - Math.ceil(filling.leastServings * 4 - EPSILON) + 1;
        for (let served = total; served >= Math.max(from, LEAST_QUARTERS * places.length); served--) {
          const share = places.map((place) => ((slot.weight[place] ?? 0) / weights) * served);
          const low = share.map((quarters) => Math.max(LEAST_QUARTERS, Math.ceil(quarters - 1 - EPSILON)));
          const high = share.map((quarters, at) =>
            Math.min(mostQuarters[places[at] ?? 0] ?? 0, Math.floor(quarters + 1 + EPSILON)),
          );
          for (const { units, points } of dealt(places, plate, low, high, served, ownLimit - opened, work)) {
            const { lots, pouches } = filling;
            add(
              {
                dish: option.dish,
                style: 'shared pot',
                lots,
                pouches,
                portions: places.map((place, at) => ({ place, servings: (units[at] ?? 0) / 4 })),
              },
              opened + points,
            );
            if (found > most) return undefined;
          }
        }
      }
      if (byHand)
        for (const { part, priced } of handed(model, slot, option, places, around, ownLimit, work)) {
          add(part, priced);
          if (found > most) return undefined;
        }
    }
  }
  return bySet;
}

/** Every way to give some places so many units together, of points below a limit. */
function* dealt(
  places: readonly number[],
  plate: readonly Float64Array[],
  low: readonly number[],
  high: readonly number[],
  total: number,
  limit: number,
  work: { units: number },
): Generator<{ readonly units: readonly number[]; readonly points: number }> {
  if (low.some((least, at) => least > (high[at] ?? 0))) return;
  const rests = places.map(() => ({ low: 0, high: 0, points: 0 }));
  let rest = { low: 0, high: 0, points: 0 };
  for (let at = places.length - 1; at >= 0; at--) {
    rests[at] = rest;
    let least = Infinity;
    for (let units = low[at] ?? 0; units <= (high[at] ?? 0); units++)
      least = Math.min(least, plate[places[at] ?? 0]?.[units] ?? Infinity);
    rest = { low: rest.low + (low[at] ?? 0), high: rest.high + (high[at] ?? 0), points: rest.points + least };
  }
  const units: number[] = [];
  function* from(
    at: number,
    left: number,
    points: number,
  ): Generator<{ units: readonly number[]; points: number }> {
    work.units += 1;
    if (at === places.length) {
      if (left === 0) yield { units: [...units], points };
      return;
    }
    const after = rests[at] ?? rest;
    const to = Math.min(high[at] ?? 0, left - after.low);
    for (let own = Math.max(low[at] ?? 0, left - after.high); own <= to; own++) {
      const now = points + (plate[places[at] ?? 0]?.[own] ?? Infinity);
      if (now + after.points >= limit) continue;
      units[at] = own;
      yield* from(at + 1, left - own, now);
    }
  }
  yield* from(0, total, 0);
}

/** Pouches by hand for some places, of points below a limit: one's own, whole or half eaten, or larger ones in whole servings. */
function* handed(
  model: MenuModel,
  slot: ModelSlot,
  option: SlotOption,
  places: readonly number[],
  around: Surroundings,
  limit: number,
  work: { units: number },
): Generator<Priced> {
  const { costs } = model;
  for (const index of option.lots) {
    const lot = model.lots[index];
    if (!lot?.isOwnPouch || places.some((place) => !lot.feeds[slot.people[place] ?? -1])) continue;
    const isSmall = lot.servings < OWN_POUCH_BELOW_SERVINGS;
    if (isSmall && places.length > 1) continue;
    const free = Math.min(lot.stock, around.free?.(index) ?? Infinity);
    const unitServings = isSmall ? lot.servings / 2 : 1;
    const each = isSmall ? 2 : Math.floor(lot.servings + EPSILON);
    const unitKcal = unitServings * lot.servingKcal;
    const most = places.map((place) =>
      Math.min(
        isSmall ? Infinity : MOST_SERVINGS,
        free * each,
        Math.floor((SITTING_SHARE * (slot.plannedKcal[place] ?? 0)) / unitKcal + EPSILON),
      ),
    );
    const plate = slot.people.map((): Float64Array => new Float64Array(0));
    places.forEach((place, at) => {
      const row = new Float64Array((most[at] ?? 0) + 1);
      for (let units = 1; units < row.length; units++)
        row[units] =
          OWN_PLATE +
          platePoints(
            model,
            slot,
            option,
            place,
            units * unitKcal,
            units * unitServings * lot.lackG,
            around,
          ) -
          costs.leftOverKcal * units * unitKcal;
      plate[place] = row;
    });
    const pouch = around.pouch(index) + pouchPointsAt(model, slot, index) + costs.leftOverKcal * lot.kcal;
    const mostUnits = Math.min(
      free * each,
      most.reduce((sum, units) => sum + units, 0),
    );
    for (let total = places.length; total <= mostUnits; total++) {
      const pouches = Math.ceil(total / each);
      const opened = pouches * pouch + (around.opens?.(option.dish, pouches * lot.servings) ?? 0);
      const low = places.map(() => 1);
      for (const { units, points } of dealt(places, plate, low, most, total, limit - opened, work))
        yield {
          part: {
            dish: option.dish,
            style: 'own pouch',
            lots: [index],
            pouches: [pouches],
            portions: places.map((place, at) => ({ place, servings: (units[at] ?? 0) * unitServings })),
          },
          priced: opened + points,
        };
    }
  }
}
