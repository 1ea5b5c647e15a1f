import {
  DAY_FREE_FROM,
  DAY_MILD_FROM,
  daySlopes,
  MEAL_FREE_FROM,
  mealSlopes,
  SITTING_SHARE,
  SKIPPED_MEAL,
} from '../../../src/lib/planning/menu/menu-costs.ts';
import type { MenuModel } from '../../../src/lib/planning/menu/menu-model.ts';
import type {
  OpenProgram,
  ProgramColumn,
  ProgramRow,
} from '../../../src/lib/planning/optimiser/linear-program.ts';

type Sink = { readonly key: string; readonly lots: ReadonlySet<number>; readonly person: number };

/**
 * Points of hunger that no menu avoids: those of the days, meals and people if food could be poured by the kilocalorie, from any lot that suits, and cost nothing to carry, open or cook.
 * Lots that suit the same plates are poured together.
 */
export function unavoidableShortage(model: MenuModel, open: OpenProgram): number {
  const columns: ProgramColumn[] = [];
  const rows: { lower: number; upper: number; terms: (readonly [number, number])[] }[] = [];
  const row = (lower: number, upper: number) => rows.push({ lower, upper, terms: [] }) - 1;
  const column = (cost: number, upper: number, terms: readonly (readonly [number, number])[]) => {
    const index = columns.push({ cost, upper, terms: [] }) - 1;
    for (const [at, value] of terms) rows[at]?.terms.push([index, value]);
  };
  const days = daySlopes(model.costs);
  const meals = mealSlopes(model.costs);
  const dayRows = model.people.map((_, person) =>
    model.days.map((_, day) => {
      const need = model.needKcal[person]?.[day] ?? 0;
      const at = row(DAY_FREE_FROM * need - (model.keptKcal[person]?.[day] ?? 0), Infinity);
      column(days.mild, (DAY_FREE_FROM - DAY_MILD_FROM) * need, [[at, 1]]);
      column(days.missing, Infinity, [[at, 1]]);
      return at;
    }),
  );
  const sinks: (Sink & { readonly rows: readonly number[] })[] = [];
  for (const slot of model.slots)
    slot.people.forEach((person, place) => {
      const planned = slot.plannedKcal[place] ?? 0;
      const meal = row(planned, Infinity);
      // who goes without eats nothing, so the share of a full plate that is missing is skipped at least
      const most = row(SITTING_SHARE * planned, SITTING_SHARE * planned);
      column(SKIPPED_MEAL * model.costs.missingKcal, 1, [[most, SITTING_SHARE * planned]]);
      column(0, Infinity, [[most, 1]]);
      column(meals.pull, (1 - MEAL_FREE_FROM) * planned, [[meal, 1]]);
      column(meals.pull + meals.off, Infinity, [[meal, 1]]);
      const lots = new Set(
        slot.options.flatMap((option) =>
          Number.isFinite(option.taste[place])
            ? option.lots.filter((lot) => model.lots[lot]?.feeds[person])
            : [],
        ),
      );
      const dayRow = dayRows[person]?.[slot.day] ?? -1;
      sinks.push({ key: `meal ${slot.index} ${place}`, lots, person, rows: [dayRow, meal, most] });
    });
  for (const extraDay of model.extraDays)
    extraDay.people.forEach((person, place) => {
      const most = row(-Infinity, extraDay.mostKcal[place] ?? 0);
      const lots = new Set(extraDay.lots.filter((lot) => model.lots[lot]?.feeds[person]));
      const dayRow = dayRows[person]?.[extraDay.day] ?? -1;
      sinks.push({ key: `extra ${extraDay.index} ${place}`, lots, person, rows: [dayRow, most] });
    });
  const sinksOf = (lot: number) => sinks.flatMap(({ lots }, at) => (lots.has(lot) ? [at] : []));
  const alike = Map.groupBy(model.lots, ({ index }) => sinksOf(index).join());
  for (const own of alike.values()) {
    const energy = row(
      -Infinity,
      own.reduce((sum, lot) => sum + lot.stock * lot.kcal, 0),
    );
    for (const at of sinksOf(own[0]?.index ?? -1))
      column(0, Infinity, [[energy, 1], ...(sinks[at]?.rows ?? []).map((of) => [of, 1] as const)]);
  }
  const program = open();
  try {
    program.addColumns(columns);
    program.addRows(rows.map((of): ProgramRow => of));
    return program.solve().points;
  } finally {
    program.close();
  }
}
