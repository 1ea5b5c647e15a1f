export type PouchCount = { readonly code: string; readonly pouches: number };

/** One lot on the way from the shelf to the pack. */
export type SetAsideLine = {
  readonly code: string;
  readonly recipe: string;
  /** Where it is kept; empty where nobody has said. */
  readonly place: string;
  readonly needed: number;
  readonly reserved: number;
  /** Pouches promised beyond the need; below 0 where some are lacking. */
  readonly surplus: number;
};

/** @returns what the menu needs beside what is set aside or packed, lot by lot, by the place where they are kept, then by code. */
export function setAsideLines(
  need: readonly PouchCount[],
  reserved: readonly PouchCount[],
  recipes: ReadonlyMap<string, string>,
  places: ReadonlyMap<string, string> = new Map(),
): SetAsideLine[] {
  const needed = new Map(need.map(({ code, pouches }) => [code, pouches]));
  const promised = new Map<string, number>();
  for (const { code, pouches } of reserved) promised.set(code, (promised.get(code) ?? 0) + pouches);
  return [...new Set([...needed.keys(), ...promised.keys()])]
    .map((code) => ({ code, place: places.get(code) ?? '' }))
    .sort((a, b) => (a.place === b.place ? (a.code < b.code ? -1 : 1) : a.place < b.place ? -1 : 1))
    .map(({ code, place }) => {
      const [wants, has] = [needed.get(code) ?? 0, promised.get(code) ?? 0];
      return {
        code,
        recipe: recipes.get(code) ?? '',
        place,
        needed: wants,
        reserved: has,
        surplus: has - wants,
      };
    });
}

/** @returns whether exactly what the menu needs is set aside or packed. */
export function setAsideMatches(need: readonly PouchCount[], reserved: readonly PouchCount[]): boolean {
  return setAsideLines(need, reserved, new Map()).every(({ surplus }) => surplus === 0);
}
