export type PouchCount = { readonly code: string; readonly pouches: number };

/** One lot on the way from the shelf to the pack. */
export type SetAsideLine = {
  readonly code: string;
  readonly recipe: string;
  readonly needed: number;
  readonly reserved: number;
  /** Pouches promised beyond the need; below 0 where some are lacking. */
  readonly surplus: number;
};

/** @returns what the menu needs beside what is set aside or packed, lot by lot, in the order of the codes. */
export function setAsideLines(
  need: readonly PouchCount[],
  reserved: readonly PouchCount[],
  recipes: ReadonlyMap<string, string>,
): SetAsideLine[] {
  const needed = new Map(need.map(({ code, pouches }) => [code, pouches]));
  const promised = new Map<string, number>();
  for (const { code, pouches } of reserved) promised.set(code, (promised.get(code) ?? 0) + pouches);
  return [...new Set([...needed.keys(), ...promised.keys()])]
    .sort((a, b) => (a < b ? -1 : 1))
    .map((code) => {
      const [wants, has] = [needed.get(code) ?? 0, promised.get(code) ?? 0];
      return { code, recipe: recipes.get(code) ?? '', needed: wants, reserved: has, surplus: has - wants };
    });
}

/** @returns whether exactly what the menu needs is set aside or packed. */
export function setAsideMatches(need: readonly PouchCount[], reserved: readonly PouchCount[]): boolean {
  return setAsideLines(need, reserved, new Map()).every(({ surplus }) => surplus === 0);
}
