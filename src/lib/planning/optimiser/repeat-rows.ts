import type { Laying } from '../menu/laying.ts';
import type { MenuModel, ModelSlot } from '../menu/menu-model.ts';

/**
 * A row of repeats, for some people of a group and one dish: on a day, all that somebody eats of it is a repeat where they ate it at one time before (`since`, by person; undefined: all but
 * one of that day); or within the days of a window all but one is.
 */
export type RepeatRow = {
  readonly group: number;
  readonly dish: number;
  readonly day: number;
  readonly since: ReadonlyMap<number, number | undefined>;
  readonly isWindow: boolean;
};

/** Whether what a person eats at a slot counts in a row. */
export function isIn(
  { group, day, since, isWindow }: RepeatRow,
  slot: ModelSlot,
  person: number,
  within: number,
): boolean {
  if (slot.group !== group || !since.has(person)) return false;
  if (isWindow) return slot.day <= day && slot.day >= day - within;
  return slot.day === day || slot.at === since.get(person);
}

/** How often a laying counts in a row. */
export function countIn(row: RepeatRow, slot: ModelSlot, { dishes }: Laying, within: number): number {
  let count = 0;
  for (const { dish, portions } of dishes)
    if (dish === row.dish)
      for (const { place } of portions) if (isIn(row, slot, slot.people[place] ?? -1, within)) count++;
  return count;
}

type Eaten = { readonly slot: ModelSlot; share: number };

/** What each person eats of each dish in a relaxed menu: by group and dish, by person, by slot. */
function sharesOf(model: MenuModel, laid: readonly { readonly laying: Laying; readonly share: number }[]) {
  const shares = new Map<string, Map<number, Map<number, Eaten>>>();
  for (const { laying, share } of laid) {
    const slot = model.slots[laying.slot];
    if (!slot) continue;
    for (const { dish, portions } of laying.dishes) {
      const key = `${slot.group} ${dish}`;
      const byPerson = shares.get(key) ?? new Map<number, Map<number, Eaten>>();
      shares.set(key, byPerson);
      for (const { place } of portions) {
        const person = slot.people[place] ?? -1;
        const bySlot = byPerson.get(person) ?? new Map<number, Eaten>();
        byPerson.set(person, bySlot);
        const eaten = bySlot.get(slot.index) ?? { slot, share: 0 };
        bySlot.set(slot.index, eaten);
        eaten.share += share;
      }
    }
  }
  return shares;
}

/**
 * The rows that a relaxed menu breaks most.
 *
 * @param paid repeats that it pays for already, of a group's dish on a day
 */
export function brokenRepeats(
  model: MenuModel,
  laid: readonly { readonly laying: Laying; readonly share: number }[],
  paid: (group: number, dish: number, day: number) => number,
  breaks: number,
  most: number,
): RepeatRow[] {
  const within = model.settings.repeatAfterDays;
  if (within <= 0) return [];
  const broken: { row: RepeatRow; by: number }[] = [];
  for (const [key, byPerson] of sharesOf(model, laid)) {
    const [group = 0, dish = 0] = key.split(' ').map(Number);
    const days = new Set(
      [...byPerson.values()].flatMap((own) => [...own.values()].map(({ slot }) => slot.day)),
    );
    for (const day of days) {
      const since = new Map<number, number | undefined>();
      const inWindow = new Map<number, undefined>();
      let [by, byWindow] = [-paid(group, dish, day), 0];
      for (let at = day - within; at <= day; at++) byWindow -= paid(group, dish, at);
      for (const [person, own] of byPerson) {
        let [today, before, at, window]: [number, number, number | undefined, number] = [0, 0, undefined, 0];
        for (const { slot, share } of own.values()) {
          if (slot.day > day || slot.day < day - within) continue;
          window += share;
          if (slot.day === day) today += share;
          else if (share > before) [before, at] = [share, slot.at];
        }
        if (today + before > 1 + 1e-6) {
          since.set(person, at);
          by += today + before - 1;
        }
        if (window > 1 + 1e-6) {
          inWindow.set(person, undefined);
          byWindow += window - 1;
        }
      }
      if (by > breaks) broken.push({ row: { group, dish, day, since, isWindow: false }, by });
      if (byWindow > breaks && byWindow > by)
        broken.push({ row: { group, dish, day, since: inWindow, isWindow: true }, by: byWindow });
    }
  }
  return broken
    .sort((a, b) => b.by - a.by)
    .slice(0, most)
    .map(({ row }) => row);
}
