/** What somebody gets of one lot, servings. */
export type DealtRow = { readonly to: number; readonly lot: number; readonly servings: number };

const EPSILON = 1e-9;

/**
 * Deals portions from a pot of several lots, so that each person's rows add up to the portion and no lot gives more than it has: quarters of one lot after the other, as few rows as can be.
 *
 * @param portions servings by person, in quarters
 * @param lots servings opened of each lot
 * @example dealRows([1.25, 0.75], [1, 1]) // 1 + 0.25 of the first two lots, and 0.75
 */
export function dealRows(portions: readonly number[], lots: readonly number[]): DealtRow[] {
  const rows: DealtRow[] = [];
  const left = [...lots];
  portions.forEach((portion, to) => {
    let wanted = portion;
    for (let lot = 0; lot < left.length && wanted > EPSILON; lot++) {
      const has = left[lot] ?? 0;
      if (has <= EPSILON) continue;
      // what is left of the last lot in less than a quarter goes with the next one
      const quarters = Math.floor(Math.min(has, wanted) * 4 + EPSILON) / 4;
      const isLast = !left.some((other, at) => at > lot && other > EPSILON);
      const servings = isLast || wanted <= has + EPSILON ? Math.min(has, wanted) : quarters;
      if (servings <= EPSILON) continue;
      rows.push({ to, lot, servings });
      left[lot] = has - servings;
      wanted -= servings;
    }
    // lots that hold no whole quarters: their rests make up the portion
    for (let lot = 0; lot < left.length && wanted > EPSILON; lot++) {
      const servings = Math.min(left[lot] ?? 0, wanted);
      if (servings <= EPSILON) continue;
      const known = rows.findIndex((row) => row.to === to && row.lot === lot);
      const row = rows[known];
      if (row) rows[known] = { ...row, servings: row.servings + servings };
      else rows.push({ to, lot, servings });
      left[lot] = (left[lot] ?? 0) - servings;
      wanted -= servings;
    }
  });
  return rows;
}
