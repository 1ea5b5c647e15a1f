/** A way to serve one person: from a lot of which there are so many pouches, or from none that others could want. */
export type Candidate<T> = {
  readonly lot: number | undefined;
  readonly pouches: number;
  readonly points: number;
  readonly of: T;
};
/** `least`: no way to serve them all costs less. `chosen`: by person; undefined where pouches do not do for what was chosen. */
export type Served<T> = { readonly least: number; readonly chosen: readonly Candidate<T>[] | undefined };

const EPSILON = 1e-9;

/**
 * Serves some people by themselves from lots that do not last for all: the assignment of least cost, each pouch to one person, by shortest augmenting paths
 * (Ahuja, Magnanti & Orlin, Network Flows, 1993, ch. 12). Who eats more than one pouch of a lot is counted as one; then what was chosen may be too much.
 *
 * @param candidates by person, the cheapest first; one of them needs no pouch
 * @param free pouches of a lot
 *
 * @example
 * serveAlone([[{ lot: 3, pouches: 1, points: 5, of: 'stew' }, { lot: undefined, pouches: 0, points: 150, of: 'nothing' }]], () => 1); // least: 5
 */
export function serveAlone<T>(
  candidates: readonly (readonly Candidate<T>[])[],
  free: (lot: number) => number,
): Served<T> {
  const chosen: Candidate<T>[] = [];
  for (let person = 0; person < candidates.length; person++) insert(candidates, chosen, person, free);
  let least = 0;
  for (const { points } of chosen) least += points;
  const used = new Map<number, number>();
  for (const { lot, pouches } of chosen) if (lot !== undefined) used.set(lot, (used.get(lot) ?? 0) + pouches);
  const fits = [...used].every(([lot, pouches]) => pouches <= free(lot));
  return { least, chosen: fits ? chosen : undefined };
}

/** Serves one person more; others move to what suits them next where that costs least. */
function insert<T>(
  candidates: readonly (readonly Candidate<T>[])[],
  chosen: Candidate<T>[],
  person: number,
  free: (lot: number) => number,
): void {
  const eaters = new Map<number, number[]>();
  chosen.forEach(({ lot }, other) => {
    if (lot !== undefined) eaters.set(lot, [...(eaters.get(lot) ?? []), other]);
  });
  // the least that it costs to have somebody look for something else, and how they came to that
  const cost = new Float64Array(candidates.length).fill(Infinity);
  const pushedBy = new Map<number, { person: number; takes: Candidate<T> }>();
  cost[person] = 0;
  let end: { person: number; takes: Candidate<T>; cost: number } | undefined;
  const waiting = [person];
  for (let one = waiting.shift(); one !== undefined; one = waiting.shift()) {
    const soFar = cost[one] ?? 0;
    for (const takes of candidates[one] ?? []) {
      const reached = soFar + takes.points;
      // what is dearer than a way that is free helps nobody: those who are served are served as cheaply as can be
      if (end && reached >= end.cost - EPSILON) break;
      if (takes.lot !== undefined && takes.pouches > free(takes.lot)) continue;
      const own = takes.lot === undefined ? [] : (eaters.get(takes.lot) ?? []);
      if (takes.lot === undefined || own.length < free(takes.lot)) {
        if (!end || reached < end.cost - EPSILON) end = { person: one, takes, cost: reached };
        continue;
      }
      for (const other of own) {
        const after = reached - (chosen[other]?.points ?? 0);
        if (other === one || after >= (cost[other] ?? Infinity) - EPSILON) continue;
        cost[other] = after;
        pushedBy.set(other, { person: one, takes });
        waiting.push(other);
      }
    }
  }
  if (!end) return;
  let { person: one, takes } = end;
  for (;;) {
    const before = one === person ? undefined : pushedBy.get(one);
    chosen[one] = takes;
    if (!before) return;
    ({ person: one, takes } = before);
  }
}
