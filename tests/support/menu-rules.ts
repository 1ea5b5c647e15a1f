import type { LaidDish } from '../../src/lib/planning/menu/laying.ts';
import { asLaying } from '../../src/lib/planning/menu/laying.ts';
import type { MenuModel, ModelSlot } from '../../src/lib/planning/menu/menu-model.ts';
import type { EatenExtra, ModelMenu } from '../../src/lib/planning/menu/menu-state.ts';
import { randomFrom, type Random } from '../../src/lib/planning/optimiser/random.ts';

/*
 * The rules of a menu once more, as they are said to people and not as the search has them: which dishes can be put on a table, and all the ways to lay it.
 */

type Part = LaidDish;
/** Pouches of lots, and what is in them. */
type Opened = { lots: number[]; pouches: number[]; servings: number; kcal: number; leastServings: number };

const TINY = 1e-9;
/** Lots in one pot, quarters on a plate from a pot, whole servings on a plate by hand. */
const [LOTS_IN_A_POT, QUARTERS_ON_A_PLATE, SERVINGS_ON_A_PLATE] = [3, 32, 8];
const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
/** At most 175 % of what is planned. */
const sitting = (slot: ModelSlot, place: number) => 1.75 * (slot.plannedKcal[place] ?? 0) + 1e-6;

export const subsetsOf = (places: readonly number[]): number[][] =>
  places.reduce<number[][]>((sets, place) => [...sets, ...sets.map((set) => [...set, place])], [[]]);

const feeds = (model: MenuModel, slot: ModelSlot, lot: number, place: number) =>
  model.lots[lot]?.feeds[slot.people[place] ?? -1] ?? false;
const likes = (slot: ModelSlot, dish: number, place: number) =>
  Number.isFinite(slot.options.find((option) => option.dish === dish)?.taste[place] ?? Infinity);

/** Every pot of a dish that somebody can eat of, by what is in it: one to three lots, no pouch more than they can eat of. */
export function potsOf(model: MenuModel, slot: ModelSlot, dish: number): Opened[] {
  const lots = slot.options.find((option) => option.dish === dish)?.lots ?? [];
  const eaters = slot.people
    .map((_, place) => place)
    .filter((place) => lots.some((lot) => feeds(model, slot, lot, place)));
  const mostKcal = sum(eaters.map((place) => 1.75 * (slot.plannedKcal[place] ?? 0)));
  return subsetsOf(lots)
    .filter((own) => own.length >= 1 && own.length <= LOTS_IN_A_POT)
    .flatMap((own) => {
      let pots: number[][] = [[]];
      for (const lot of own)
        pots = pots.flatMap((pouches) =>
          Array.from({ length: model.lots[lot]?.stock ?? 0 }, (_, index) => [...pouches, index + 1]),
        );
      return pots.map((pouches) => openedOf(model, own, pouches));
    })
    .filter(
      ({ kcal, lots: own }) => kcal - Math.min(...own.map((lot) => model.lots[lot]?.kcal ?? 0)) < mostKcal,
    );
}

function openedOf(model: MenuModel, lots: number[], pouches: number[]): Opened {
  const each = (of: 'servings' | 'kcal') => lots.map((lot) => model.lots[lot]?.[of] ?? 0);
  return {
    lots,
    pouches,
    servings: sum(each('servings').map((servings, at) => servings * (pouches[at] ?? 0))),
    kcal: sum(each('kcal').map((kcal, at) => kcal * (pouches[at] ?? 0))),
    leastServings: Math.min(...each('servings')),
  };
}

/** Every way to give some people so many units each between bounds, up to so many together. */
function* dealt(low: readonly number[], high: readonly number[], total: number, at = 0): Generator<number[]> {
  if (at === low.length) {
    if (total === 0) yield [];
    return;
  }
  const rest = sum(low.slice(at + 1));
  for (let units = low[at] ?? 0; units <= Math.min(high[at] ?? 0, total - rest); units++)
    for (const others of dealt(low, high, total - units, at + 1)) yield [units, ...others];
}

/** Every way to share a pot: quarters, at least two, within a quarter of the share by appetite, and less than a pouch left over. */
export function* potPortions(
  model: MenuModel,
  slot: ModelSlot,
  pot: Opened,
  places: readonly number[],
): Generator<number[]> {
  if (places.some((place) => pot.lots.some((lot) => !feeds(model, slot, lot, place)))) return;
  const weights = places.map((place) => slot.weight[place] ?? 0);
  const quarterKcal = pot.kcal / pot.servings / 4;
  const most = Math.floor(pot.servings * 4 + TINY);
  for (let total = most; total >= 2 * places.length; total--) {
    if (most - total >= pot.leastServings * 4 - TINY) return;
    const share = places.map((_, at) => ((weights[at] ?? 0) / sum(weights)) * total);
    const low = share.map((quarters) => Math.max(2, Math.ceil(quarters - 1 - TINY)));
    const high = share.map((quarters, at) =>
      Math.min(
        QUARTERS_ON_A_PLATE,
        Math.floor(quarters + 1 + TINY),
        Math.floor(sitting(slot, places[at] ?? 0) / quarterKcal),
      ),
    );
    yield* dealt(low, high, total);
  }
}

/** Every dish that can be served to just these people. */
export function* partsFor(
  model: MenuModel,
  slot: ModelSlot,
  dish: number,
  places: readonly number[],
): Generator<Part> {
  if (places.some((place) => !likes(slot, dish, place))) return;
  for (const pot of potsOf(model, slot, dish))
    for (const quarters of potPortions(model, slot, pot, places))
      yield {
        dish,
        style: 'shared pot',
        lots: pot.lots,
        pouches: pot.pouches,
        portions: places.map((place, at) => ({ place, servings: (quarters[at] ?? 0) / 4 })),
      };
  if (slot.task.style === 'shared pot') return;
  for (const index of slot.options.find((option) => option.dish === dish)?.lots ?? []) {
    const lot = model.lots[index];
    if (!lot?.isOwnPouch || places.some((place) => !feeds(model, slot, index, place))) continue;
    const isSmall = lot.servings < 1.5;
    if (isSmall && places.length > 1) continue;
    // halves of small pouches, whole servings of larger ones
    const unit = isSmall ? lot.servings / 2 : 1;
    const each = isSmall ? 2 : Math.floor(lot.servings + TINY);
    const most = places.map((place) =>
      Math.min(
        isSmall ? Infinity : SERVINGS_ON_A_PLATE,
        Math.floor(sitting(slot, place) / (unit * lot.servingKcal)),
      ),
    );
    for (let total = places.length; total <= Math.min(sum(most), each * lot.stock); total++)
      for (const units of dealt(
        places.map(() => 1),
        most,
        total,
      ))
        yield {
          dish,
          style: 'own pouch',
          lots: [index],
          pouches: [Math.ceil(total / each)],
          portions: places.map((place, at) => ({ place, servings: (units[at] ?? 0) * unit })),
        };
  }
}

/** Whether some dishes may stand on one table: at most two that several people share, not twice the same; and no more pouches than there are. */
function mayStandTogether(model: MenuModel, parts: readonly Part[]): boolean {
  const shared = parts.filter(({ portions }) => portions.length > 1);
  if (shared.length > 2) return false;
  if (shared.length === 2 && shared[0]?.dish === shared[1]?.dish && shared[0]?.style === shared[1]?.style)
    return false;
  return isInStock(model, parts);
}

function isInStock(model: MenuModel, parts: readonly Part[]): boolean {
  const used = model.lots.map(() => 0);
  for (const { lots, pouches } of parts)
    lots.forEach((lot, at) => (used[lot] = (used[lot] ?? 0) + (pouches[at] ?? 0)));
  return model.lots.every(({ index, stock }) => (used[index] ?? 0) <= stock);
}

/** Every way to lay a table: each person goes without, or eats of one dish, alone or with others. */
export function everyLaying(model: MenuModel, slot: ModelSlot): Part[][] {
  const everyone = slot.people.map((_, place) => place);
  const bySet = new Map<string, Part[]>();
  for (const places of subsetsOf(everyone).filter((set) => set.length > 0))
    bySet.set(
      places.join(),
      slot.options.flatMap(({ dish }) => [...partsFor(model, slot, dish, places)]),
    );
  const layings: Part[][] = [];
  const from = (left: readonly number[], parts: readonly Part[]) => {
    const [first, ...others] = left;
    if (first === undefined) {
      layings.push([...parts]);
      return;
    }
    from(others, parts);
    for (const company of subsetsOf(others))
      for (const part of bySet.get([first, ...company].sort((a, b) => a - b).join()) ?? []) {
        const withIt = [...parts, part];
        if (mayStandTogether(model, withIt))
          from(
            others.filter((place) => !company.includes(place)),
            withIt,
          );
      }
  };
  from(everyone, []);
  return layings;
}

/** Every way to give out extras on all days: at most four pieces of one for a person and day, and no more sorts and kcal than a person may have. */
export function everyExtras(model: MenuModel): EatenExtra[][] {
  let all: EatenExtra[][] = [[]];
  for (const extraDay of model.extraDays)
    extraDay.people.forEach((person, place) => {
      let own: EatenExtra[][] = [[]];
      extraDay.lots.forEach((lot) => {
        if (!model.lots[lot]?.feeds[person]) return;
        own = own.flatMap((eaten) =>
          [0, 1, 2, 3, 4].map((units) =>
            units === 0 ? eaten : [...eaten, { extraDay: extraDay.index, lot, place, units }],
          ),
        );
      });
      const isDrink = ({ lot }: EatenExtra) => extraDay.isDrink[extraDay.lots.indexOf(lot)] ?? false;
      const kcalOf = ({ lot, units }: EatenExtra) => {
        const of = model.lots[lot];
        return of ? (units * of.kcal) / of.units : 0;
      };
      own = own.filter(
        (eaten) =>
          eaten.filter(isDrink).length <= 1 &&
          eaten.filter((extra) => !isDrink(extra)).length <= (extraDay.mostSorts[place] ?? 0) &&
          sum(eaten.map(kcalOf)) <= (extraDay.mostKcal[place] ?? 0) + 1e-6,
      );
      all = all.flatMap((eaten) => own.map((more) => [...eaten, ...more]));
    });
  return all.filter((extras) =>
    pouchesOfExtras(model, extras).every((pouches, lot) => pouches <= (model.lots[lot]?.stock ?? 0)),
  );
}

/**
 * Pouches of an extra, piece by piece: the piece that is open longest is eaten first, a pouch is opened when no piece is open, and what is open for too long is gone.
 *
 * @returns pouches opened by day, and pieces that nobody ate
 */
export function openPieces(unitsByDay: readonly number[], unitsPerPouch: number, keepsDays: number) {
  let open: number[] = [];
  let leftUnits = 0;
  const opened = unitsByDay.map((units, day) => {
    const kept = open.filter((since) => day - since < keepsDays);
    leftUnits += open.length - kept.length;
    open = kept;
    let pouches = 0;
    for (let unit = 0; unit < units; unit++) {
      if (open.length === 0) {
        pouches++;
        open = Array.from({ length: unitsPerPouch }, () => day);
      }
      open.shift();
    }
    return pouches;
  });
  return { opened, leftUnits: leftUnits + open.length };
}

/** Pouches that the extras of a menu take, by lot. */
export function pouchesOfExtras(model: MenuModel, extras: readonly EatenExtra[]): number[] {
  const pouches = model.lots.map(() => 0);
  const groupOf = ({ extraDay }: EatenExtra) => model.extraDays[extraDay]?.group ?? -1;
  for (const own of Map.groupBy(extras, (extra) => `${groupOf(extra)} ${extra.lot}`).values()) {
    const lot = model.lots[own[0]?.lot ?? -1];
    if (!lot) continue;
    const byDay = model.days.map((_, day) =>
      sum(own.filter(({ extraDay }) => model.extraDays[extraDay]?.day === day).map(({ units }) => units)),
    );
    const { opened } = openPieces(byDay, lot.units, lot.keepsOpen ? model.settings.dryOpenDays : 1);
    pouches[lot.index] = (pouches[lot.index] ?? 0) + sum(opened);
  }
  return pouches;
}

/** Every menu of a small model. */
export function* everyMenu(model: MenuModel): Generator<ModelMenu> {
  const layings = model.slots.map((slot) =>
    everyLaying(model, slot).map((parts) => ({ parts, laying: asLaying(model, slot, parts) })),
  );
  const extras = everyExtras(model).map((eaten) => ({ eaten, pouches: pouchesOfExtras(model, eaten) }));
  const used = model.lots.map(() => 0);
  const take = (parts: readonly Part[], sign: 1 | -1) => {
    for (const { lots, pouches } of parts)
      lots.forEach((lot, at) => (used[lot] = (used[lot] ?? 0) + sign * (pouches[at] ?? 0)));
  };
  const fits = (more: readonly number[]) =>
    model.lots.every(({ index, stock }) => (used[index] ?? 0) + (more[index] ?? 0) <= stock);
  const chosen: ModelMenu['layings'][number][] = [];
  function* from(slot: number): Generator<ModelMenu> {
    const own = layings[slot];
    if (!own) {
      for (const { eaten, pouches } of extras)
        if (fits(pouches)) yield { layings: [...chosen], extras: eaten };
      return;
    }
    for (const { parts, laying } of own) {
      take(parts, 1);
      if (fits([])) {
        chosen.push(laying);
        yield* from(slot + 1);
        chosen.pop();
      }
      take(parts, -1);
    }
  }
  yield* from(0);
}

/** A menu that keeps to the rules, laid at random. */
export function randomMenu(model: MenuModel, seed: number): ModelMenu {
  const random = randomFrom(seed);
  const pick = <T>(of: readonly T[]): T | undefined => of[Math.floor(random() * of.length)];
  const free = model.lots.map(({ stock }) => stock);
  const takes = (parts: readonly Part[]) =>
    parts.forEach(({ lots, pouches }) =>
      lots.forEach((lot, at) => (free[lot] = (free[lot] ?? 0) - (pouches[at] ?? 0))),
    );
  const layings = model.slots.map((slot) => {
    const parts: Part[] = [];
    let left = slot.people.map((_, place) => place);
    for (let tries = 0; tries < 8 && left.length > 0; tries++) {
      const places = left.filter(() => random() < 0.6);
      const option = pick(slot.options);
      if (!option || places.length === 0) continue;
      const part = randomPart(model, slot, option.dish, places, random);
      if (!part || part.lots.some((lot, at) => (part.pouches[at] ?? 0) > (free[lot] ?? 0))) continue;
      if (!mayStandTogether(model, [...parts, part])) continue;
      parts.push(part);
      takes([part]);
      left = left.filter((place) => !places.includes(place));
    }
    return asLaying(model, slot, parts);
  });
  let extras: EatenExtra[] = [];
  for (const extraDay of model.extraDays)
    extraDay.people.forEach((person, place) => {
      let [kcal, sorts, drinks] = [0, 0, 0];
      extraDay.lots.forEach((index, at) => {
        const lot = model.lots[index];
        const units = 1 + Math.floor(random() * 4);
        if (!lot?.feeds[person] || random() < 0.5) return;
        const isDrink = extraDay.isDrink[at] ?? false;
        kcal += (units * lot.kcal) / lot.units;
        if (isDrink) drinks++;
        else sorts++;
        const isTooMuch =
          kcal > (extraDay.mostKcal[place] ?? 0) || drinks > 1 || sorts > (extraDay.mostSorts[place] ?? 0);
        const more = [...extras, { extraDay: extraDay.index, lot: index, place, units }];
        if (
          isTooMuch ||
          pouchesOfExtras(model, more).some((pouches, other) => pouches > (free[other] ?? 0))
        ) {
          kcal -= (units * lot.kcal) / lot.units;
          if (isDrink) drinks--;
          else sorts--;
        } else extras = more;
      });
    });
  return { layings, extras };
}

function randomPart(
  model: MenuModel,
  slot: ModelSlot,
  dish: number,
  places: readonly number[],
  random: Random,
): Part | undefined {
  let [found, count]: [Part | undefined, number] = [undefined, 0];
  // any of the first some hundreds is as likely as another
  for (const part of partsFor(model, slot, dish, places)) {
    if (++count > 400) break;
    if (random() * count < 1) found = part;
  }
  return found;
}
