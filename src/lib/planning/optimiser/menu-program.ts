import {
  DAY_FREE_FROM,
  DAY_FREE_TO,
  DAY_MILD_FROM,
  daySlopes,
  EXTRA_SORT,
  EXTRA_UNIT,
  MEAL_FREE_FROM,
  MEAL_FREE_TO,
  mealSlopes,
  OWN_PLATE,
  OWN_SECOND_PART,
  POT,
  POT_FOR_OWN,
  SITTING_SHARE,
  SKIPPED_MEAL,
} from '../menu/menu-costs.ts';
import { asLaying, MOST_QUARTERS, MOST_SERVINGS, MOST_SHARED, type LaidDish } from '../menu/laying.ts';
import { OWN_POUCH_BELOW_SERVINGS } from '../menu/lot-rules.ts';
import {
  LEAST_QUARTERS,
  MOST_DRINKS,
  MOST_UNITS,
  pouchPoints,
  type ExtraDay,
  type MenuModel,
  type ModelLot,
  type ModelSlot,
  type SlotOption,
} from '../menu/menu-model.ts';
import type { DishStyle } from '../menu/menu-problem.ts';
import { extraPouchPoints, type ModelMenu } from '../menu/menu-state.ts';
import { MEAL_KINDS } from '../model/words.ts';

/** A variable of an integer program, from 0 to `upper`. */
export type Column = {
  readonly name: string;
  readonly cost: number;
  readonly upper: number;
  readonly whole: boolean;
};
/** Columns with their coefficients. */
export type Terms = readonly (readonly [column: number, coefficient: number])[];
/** A row: lower <= sum of coefficient times column <= upper. */
export type Row = {
  readonly name: string;
  readonly terms: Terms;
  readonly lower: number;
  readonly upper: number;
};
/** A dish that a table may get: one of its fillings, in portions of so many units. */
export type ProgramDish = {
  readonly slot: number;
  readonly dish: number;
  readonly style: DishStyle;
  /** The column of a filling is 1 where it is opened. */
  readonly fillings: readonly {
    readonly column: number;
    readonly lots: readonly number[];
    readonly pouches: readonly number[];
    /** Servings in a unit. */
    readonly unitServings: number;
  }[];
  readonly portions: readonly { readonly place: number; readonly units: Terms }[];
};
/** Pieces or half servings of an extra that a person of a day eats. */
export type ProgramUnits = {
  readonly column: number;
  readonly extraDay: number;
  readonly lot: number;
  readonly place: number;
};
/** A mixed-integer program to be minimised; every column is at least 0. */
export type MenuProgram = {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly dishes: readonly ProgramDish[];
  readonly units: readonly ProgramUnits[];
};

/**
 * The menu model as a mixed-integer linear program: its best menu is the best there is, and the objective of any menu is the points of `scoreMenu`.
 *
 * Columns by what their names begin with: `one` a dish for a single person, whole with its portion; `fill` a filling opened for several people, `on` the dish on the table, `in` who shares it,
 * `part` (or the bits `bit`) the units of a portion, `level` the units for a mean appetite and `at` the same for those who share; `eats` who eats a dish, `skip` who goes without;
 * `less`, `more` kcal under and over the plan of a meal, `Off` beyond its free range; `mild`, `miss`, `above` those of a day; `again` repeats; `lack` g of protein;
 * `unit` pieces of an extra, `open` its pouches, `rest` pieces in open ones, `gone` pieces past their days; `sort`, `sorts` sorts of extras.
 *
 * @example
 * const program = menuProgram(model);
 * const menu = menuOf(model, program, valuesOfSomeSolver);
 */
export function menuProgram(model: MenuModel): MenuProgram {
  return new Draft(model).program();
}

/** The menu that the values of a program's columns say. */
export function menuOf(model: MenuModel, program: MenuProgram, values: ArrayLike<number>): ModelMenu {
  const valueOf = (terms: Terms) => terms.reduce((sum, [column, by]) => sum + by * (values[column] ?? 0), 0);
  const bySlot = new Map<number, LaidDish[]>();
  for (const { slot, dish, style, fillings, portions } of program.dishes) {
    const filling = fillings.find(({ column }) => (values[column] ?? 0) > 0.5);
    if (!filling) continue;
    const { lots, pouches, unitServings } = filling;
    const laid = portions.flatMap(({ place, units }) => {
      const count = Math.round(valueOf(units));
      return count > 0 ? [{ place, servings: count * unitServings }] : [];
    });
    bySlot.set(slot, [...(bySlot.get(slot) ?? []), { dish, style, lots, pouches, portions: laid }]);
  }
  return {
    layings: model.slots.map((slot) => asLaying(model, slot, bySlot.get(slot.index) ?? [])),
    extras: program.units.flatMap(({ column, extraDay, lot, place }) => {
      const units = Math.round(values[column] ?? 0);
      return units > 0 ? [{ extraDay, lot, place, units }] : [];
    }),
  };
}

const EPSILON = 1e-9;

/** Pouches that may be opened for a dish, and how they may be shared out. */
type Choice = {
  readonly lots: readonly number[];
  readonly pouches: readonly number[];
  readonly kcal: number;
  /** A unit: a quarter of a serving from a pot, a whole one by hand, half a pouch of one's own. */
  readonly unitServings: number;
  readonly unitKcal: number;
  readonly unitLackG: number;
  /** Units that can be shared out, and those that must be: with fewer, fewer pouches would do. */
  readonly room: number;
  readonly from: number;
  /** By place: units that may be eaten. */
  readonly most: readonly number[];
};
/** A way to serve a dish at a table. */
type Serving = {
  readonly name: 'pot' | 'own' | 'hand';
  readonly style: DishStyle;
  readonly choices: readonly Choice[];
  /** Least units of a portion. */
  readonly least: number;
  /** Points for making the dish, for making it beside a dearer one, and for each plate of it. */
  readonly dishPoints: number;
  readonly secondPoints: number;
  readonly platePoints: number;
};

type Term = readonly [column: number, coefficient: number];
/** What a group eats of an extra, by day. */
type Wanted = {
  readonly group: number;
  readonly lot: ModelLot;
  readonly isDrink: boolean;
  readonly byDay: Map<number, Term[]>;
};
/** By place at a table: what is eaten, g of protein that lack in it, and by which columns a dish is eaten. */
type Plates = { readonly kcal: Term[][]; readonly lackG: Term[][]; readonly eats: Term[][] };

const times = (terms: Terms, by: number): Term[] => terms.map(([column, value]) => [column, value * by]);
const sumOf = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

class Draft {
  readonly #model: MenuModel;
  readonly #columns: Column[] = [];
  readonly #rows: Row[] = [];
  readonly #dishes: ProgramDish[] = [];
  readonly #units: ProgramUnits[] = [];
  /** By lot: pouches opened. */
  readonly #opened: Term[][];
  /** By person and day: kcal as far as the columns say, kcal besides, and g of protein that lack. */
  readonly #kcal: Term[][][];
  readonly #plannedKcal: number[][];
  readonly #lackG: Term[][][];
  /** By person and dish: when it may be eaten. */
  readonly #eaten = new Map<string, { at: number; column: number }[]>();
  /** By group and lot: what is eaten of an extra. */
  readonly #wanted = new Map<string, Wanted>();

  constructor(model: MenuModel) {
    this.#model = model;
    this.#opened = model.lots.map(() => []);
    this.#kcal = model.people.map(() => model.days.map(() => []));
    this.#plannedKcal = model.keptKcal.map((days) => [...days]);
    this.#lackG = model.people.map(() => model.days.map(() => []));
  }

  program(): MenuProgram {
    const { slots, extraDays } = this.#model;
    for (const slot of slots) this.#layTable(slot);
    for (const extraDay of extraDays) this.#shareExtras(extraDay);
    this.#openExtras();
    this.#countDays();
    this.#countRepeats();
    this.#keepToStock();
    return { columns: this.#columns, rows: this.#rows, dishes: this.#dishes, units: this.#units };
  }

  #column(name: string, cost: number, upper: number, whole = false): number {
    return this.#columns.push({ name, cost, upper, whole }) - 1;
  }
  #row(name: string, terms: Terms, lower: number, upper: number): void {
    const merged = new Map<number, number>();
    for (const [column, value] of terms) merged.set(column, (merged.get(column) ?? 0) + value);
    this.#rows.push({ name, terms: [...merged].filter(([, value]) => value !== 0), lower, upper });
  }
  #cost(column: number, more: number): void {
    const of = this.#columns[column];
    if (of) this.#columns[column] = { ...of, cost: of.cost + more };
  }

  // tables

  #layTable(slot: ModelSlot): void {
    const { costs } = this.#model;
    const kcal = slot.people.map((): Term[] => []);
    const lackG = slot.people.map((): Term[] => []);
    const plates = slot.people.map((): Term[] => []);
    /** By kind: the dishes made. */
    const made = new Map<string, { readonly points: number; readonly on: Term[] }>();
    const shared: Term[] = [];
    for (const option of slot.options) {
      const eats = slot.people.map((): Term[] => []);
      for (const serving of servingsOf(this.#model, slot, option)) {
        const on = this.#serveOne(slot, option, serving, { kcal, lackG, eats });
        const several =
          serving.name === 'own'
            ? undefined
            : this.#serveSeveral(slot, option, serving, { kcal, lackG, eats });
        if (several !== undefined) shared.push([several, 1]);
        if (serving.secondPoints > 0) {
          const known = made.get(serving.name) ?? { points: serving.secondPoints, on: [] };
          made.set(serving.name, known);
          for (const column of several === undefined ? on : [...on, several]) known.on.push([column, 1]);
        }
      }
      eats.forEach((terms, place) => {
        if (terms.length === 0) return;
        const name = `eats_${slot.index}_${option.dish}_${place}`;
        const column = this.#column(name, option.taste[place] ?? 0, 1);
        this.#row(name, [...terms, [column, -1]], 0, 0);
        plates[place]?.push([column, 1]);
        const key = `${slot.people[place]} ${option.dish}`;
        const known = this.#eaten.get(key) ?? [];
        this.#eaten.set(key, known);
        known.push({ at: slot.at, column });
      });
    }
    plates.forEach((terms, place) => {
      const skip = this.#column(`skip_${slot.index}_${place}`, SKIPPED_MEAL * costs.missingKcal, 1);
      this.#row(`plate_${slot.index}_${place}`, [...terms, [skip, 1]], 1, 1);
      this.#sizeMeal(slot, place, kcal[place] ?? [], lackG[place] ?? []);
    });
    // fewer people cannot have more
    if (slot.people.length > 2 * MOST_SHARED + 1 && shared.length > MOST_SHARED)
      this.#row(`shared_${slot.index}`, shared, 0, MOST_SHARED);
    this.#payDishes(slot, made);
  }

  /** A dish for one person: a column for each portion of each filling. @returns the columns */
  #serveOne(slot: ModelSlot, option: SlotOption, serving: Serving, { kcal, lackG, eats }: Plates): number[] {
    const columns: number[] = [];
    serving.choices.forEach((choice, index) =>
      choice.most.forEach((most, place) => {
        for (
          let units = Math.max(serving.least, choice.from);
          units <= Math.min(most, choice.room);
          units++
        ) {
          const left = this.#model.costs.leftOverKcal * units * choice.unitKcal;
          const column = this.#column(
            `one_${serving.name}_${slot.index}_${option.dish}_${index}_${place}_${units}`,
            this.#choicePoints(slot, choice) + serving.dishPoints + serving.platePoints - left,
            1,
            true,
          );
          columns.push(column);
          kcal[place]?.push([column, units * choice.unitKcal]);
          lackG[place]?.push([column, units * choice.unitLackG]);
          eats[place]?.push([column, 1]);
          choice.lots.forEach((lot, at) => this.#opened[lot]?.push([column, choice.pouches[at] ?? 0]));
          this.#dishes.push({
            slot: slot.index,
            dish: option.dish,
            style: serving.style,
            fillings: [{ column, ...choice }],
            portions: [{ place, units: [[column, units]] }],
          });
        }
      }),
    );
    return columns;
  }

  /** A dish for two people or more. @returns the column that says whether it is on the table; undefined where it cannot be */
  #serveSeveral(slot: ModelSlot, option: SlotOption, serving: Serving, plates: Plates): number | undefined {
    const { least } = serving;
    const eaters = (choice: Choice) => choice.most.filter((most) => most >= least);
    const choices = serving.choices.filter(
      (choice) =>
        choice.room >= 2 * least && eaters(choice).length >= 2 && sumOf(eaters(choice)) >= choice.from,
    );
    if (choices.length === 0) return undefined;
    const name = `${serving.name}_${slot.index}_${option.dish}`;
    const fillings = choices.map((choice, index) => {
      const column = this.#column(`fill_${name}_${index}`, this.#choicePoints(slot, choice), 1, true);
      choice.lots.forEach((lot, at) => this.#opened[lot]?.push([column, choice.pouches[at] ?? 0]));
      return { column, choice };
    });
    const over = (of: (choice: Choice) => number): Term[] =>
      fillings.map(({ column, choice }) => [column, of(choice)]);
    const on = this.#column(`on_${name}`, serving.dishPoints, 1);
    this.#row(`on_${name}`, [...over(() => 1), [on, -1]], 0, 0);

    const shares = this.#sharesOf(name, choices, over, on);
    const portions = slot.people.flatMap((_, place) => {
      const mosts = choices.map(({ most }) => most[place] ?? 0);
      const most = Math.max(...mosts);
      if (most < least) return [];
      const own = `${name}_${place}`;
      const isIn = this.#column(`in_${own}`, serving.platePoints, 1, true);
      const portion = shares(place, most);
      const units = portion.units;
      this.#row(
        `in_${own}`,
        [
          [isIn, 1],
          [on, -1],
        ],
        -Infinity,
        0,
      );
      this.#row(`least_${own}`, [...units, [isIn, -least]], 0, Infinity);
      this.#row(`most_${own}`, [...units, [isIn, -most]], -Infinity, 0);
      if (mosts.some((other) => other < most))
        this.#row(
          `sitting_${own}`,
          [
            ...units,
            ...times(
              over((choice) => choice.most[place] ?? 0),
              -1,
            ),
          ],
          -Infinity,
          0,
        );
      plates.eats[place]?.push([isIn, 1]);
      plates.kcal[place]?.push(...portion.kcal);
      plates.lackG[place]?.push(...portion.lackG);
      for (const [column, value] of portion.kcal) this.#cost(column, -this.#model.costs.leftOverKcal * value);
      return [{ place, isIn, most, units }];
    });
    const served = portions.flatMap(({ units }) => units);
    this.#row(`several_${name}`, [...portions.map(({ isIn }): Term => [isIn, 1]), [on, -2]], 0, Infinity);
    this.#row(
      `room_${name}`,
      [
        ...served,
        ...times(
          over(({ room }) => room),
          -1,
        ),
      ],
      -Infinity,
      0,
    );
    this.#row(
      `from_${name}`,
      [
        ...served,
        ...times(
          over(({ from }) => from),
          -1,
        ),
      ],
      0,
      Infinity,
    );
    if (serving.style === 'shared pot') this.#shareFairly(slot, name, on, portions);
    this.#dishes.push({
      slot: slot.index,
      dish: option.dish,
      style: serving.style,
      fillings: fillings.map(({ column, choice }) => ({ column, ...choice })),
      portions: portions.map(({ place, units }) => ({ place, units })),
    });
    return on;
  }

  /**
   * The portions of a dish: their units, kcal and protein. Where the fillings differ in what a unit holds, units times kcal is a product: the units are written in bits, and each bit times the
   * kcal above the least of all fillings is a column of its own (McCormick 1976, Mathematical Programming 10:147-175; exact, since a bit is 0 or 1).
   */
  #sharesOf(
    name: string,
    choices: readonly Choice[],
    over: (of: (choice: Choice) => number) => Term[],
    on: number,
  ): (place: number, most: number) => { units: Term[]; kcal: Term[]; lackG: Term[] } {
    const varying = (of: (choice: Choice) => number, what: string) => {
      const least = Math.min(...choices.map(of));
      const range = Math.max(...choices.map(of)) - least;
      const isSame = range <= EPSILON * Math.max(1, Math.abs(least));
      if (isSame) return { least, range: 0, what, column: -1 };
      const column = this.#column(`${what}_${name}`, 0, range);
      this.#row(`${what}_${name}`, [...over((choice) => of(choice) - least), [column, -1]], 0, 0);
      return { least, range, what, column };
    };
    const kcal = varying(({ unitKcal }) => unitKcal, 'kcal');
    const lackG = varying(({ unitLackG }) => unitLackG, 'lack');
    if (kcal.range === 0 && lackG.range === 0)
      return (place, most) => {
        const part = this.#column(`part_${name}_${place}`, 0, most, true);
        return { units: [[part, 1]], kcal: [[part, kcal.least]], lackG: [[part, lackG.least]] };
      };
    return (place, most) => {
      const units: Term[] = [];
      for (let by = 1; by <= most; by *= 2)
        units.push([this.#column(`bit_${name}_${place}_${by}`, 0, 1, true), by]);
      const product = ({ least, range, what, column }: typeof kcal): Term[] => [
        ...times(units, least),
        ...(range === 0 ? [] : units).map(([bit, by]): Term => {
          const own = `${what}_${name}_${place}_${by}`;
          const value = this.#column(own, 0, range);
          this.#row(
            `${own}_bit`,
            [
              [value, 1],
              [bit, -range],
            ],
            -Infinity,
            0,
          );
          this.#row(
            `${own}_most`,
            [
              [value, 1],
              [column, -1],
            ],
            -Infinity,
            0,
          );
          this.#row(
            `${own}_least`,
            [
              [value, 1],
              [column, -1],
              [on, range],
              [bit, -range],
            ],
            0,
            Infinity,
          );
          return [value, by];
        }),
      ];
      return { units, kcal: product(kcal), lackG: product(lackG) };
    };
  }

  /**
   * Each portion within a unit of its share of the pot: `level` is the units for a mean appetite, and `at` is the same for those who share and 0 for the others, so that all shares add up to
   * what is served.
   */
  #shareFairly(
    slot: ModelSlot,
    name: string,
    on: number,
    portions: readonly { place: number; isIn: number; most: number; units: Terms }[],
  ): void {
    const mean = sumOf(slot.weight) / slot.weight.length;
    const weightOf = (place: number) => (slot.weight[place] ?? mean) / mean;
    const most = Math.max(...portions.map((portion) => (portion.most + 1) / weightOf(portion.place)));
    const level = this.#column(`level_${name}`, 0, most);
    this.#row(
      `level_${name}`,
      [
        [level, 1],
        [on, -most],
      ],
      -Infinity,
      0,
    );
    const all: Term[] = [];
    for (const { place, isIn, units } of portions) {
      const own = `at_${name}_${place}`;
      const weight = weightOf(place);
      const at = this.#column(own, 0, most);
      this.#row(
        `${own}_most`,
        [
          [at, 1],
          [level, -1],
        ],
        -Infinity,
        0,
      );
      this.#row(
        `${own}_least`,
        [
          [at, 1],
          [level, -1],
          [on, most],
          [isIn, -most],
        ],
        0,
        Infinity,
      );
      this.#row(`${own}_above`, [...units, [at, -weight], [isIn, -1]], -Infinity, 0);
      this.#row(`${own}_below`, [...units, [at, -weight], [isIn, 1]], 0, Infinity);
      all.push(...units, [at, -weight]);
    }
    this.#row(`fair_${name}`, all, 0, 0);
  }

  /** What a filling costs if nobody eats of it. */
  #choicePoints(slot: ModelSlot, { lots, pouches, kcal }: Choice): number {
    return (
      this.#model.costs.leftOverKcal * kcal +
      sumOf(
        lots.map(
          (lot, at) =>
            (pouches[at] ?? 0) * pouchPoints(this.#model, lot, slot.day, slot.at % MEAL_KINDS.length),
        ),
      )
    );
  }

  /** Every dish but the dearest to make is paid for: all are, and the dearest gives its points back. */
  #payDishes(
    slot: ModelSlot,
    made: ReadonlyMap<string, { readonly points: number; readonly on: Terms }>,
  ): void {
    const back = [...made].map(([kind, { points, on }]): Term => {
      for (const [column] of on) this.#cost(column, points);
      const name = `dearest_${kind}_${slot.index}`;
      const column = this.#column(name, -points, 1);
      this.#row(name, [[column, 1], ...times(on, -1)], -Infinity, 0);
      return [column, 1];
    });
    if (back.length > 1) this.#row(`dearest_${slot.index}`, back, -Infinity, 1);
  }

  /** The size of a person's meal against its plan; what it comes to goes to the day. */
  #sizeMeal(slot: ModelSlot, place: number, kcal: Terms, lackG: Terms): void {
    const slopes = mealSlopes(this.#model.costs);
    const planned = slot.plannedKcal[place] ?? 0;
    const name = `${slot.index}_${place}`;
    const off: Term[] = [
      [this.#column(`less_${name}`, slopes.pull, (1 - MEAL_FREE_FROM) * planned), 1],
      [this.#column(`lessOff_${name}`, slopes.pull + slopes.off, MEAL_FREE_FROM * planned), 1],
      [this.#column(`more_${name}`, slopes.pull, (MEAL_FREE_TO - 1) * planned), -1],
      [
        this.#column(`moreOff_${name}`, slopes.pull + slopes.off, (SITTING_SHARE - MEAL_FREE_TO) * planned),
        -1,
      ],
    ];
    this.#row(`meal_${name}`, [...kcal, ...off], planned, planned);
    const person = slot.people[place] ?? -1;
    const ofDay = this.#plannedKcal[person];
    if (ofDay) ofDay[slot.day] = (ofDay[slot.day] ?? 0) + planned;
    this.#kcal[person]?.[slot.day]?.push(...times(off, -1));
    this.#lackG[person]?.[slot.day]?.push(...lackG);
  }

  // extras

  #shareExtras(extraDay: ExtraDay): void {
    const { lots, costs } = this.#model;
    const { index, group, day, people } = extraDay;
    const kcal = people.map((): Term[] => []);
    for (const isDrink of [false, true]) {
      const kind = isDrink ? 'drink' : 'extra';
      const of = extraDay.lots.flatMap((lot, at) =>
        extraDay.isDrink[at] === isDrink ? (lots[lot] ?? []) : [],
      );
      /** By lot: what is 1 or more where somebody eats of it, and by how much it can be. */
      const eaten = new Map<number, Term[]>();
      people.forEach((person, place) => {
        const most = (lot: ModelLot) =>
          Math.min(
            MOST_UNITS,
            lot.stock * lot.units,
            Math.floor(((extraDay.mostKcal[place] ?? 0) * lot.units) / lot.kcal + EPSILON),
          );
        const own = of.filter((lot) => lot.feeds[person] && most(lot) >= 1);
        const mostSorts = isDrink ? MOST_DRINKS : (extraDay.mostSorts[place] ?? 0);
        const sorts: Term[] = [];
        for (const lot of own) {
          const name = `${index}_${lot.index}_${place}`;
          const unitKcal = lot.kcal / lot.units;
          const unit = this.#column(
            `unit_${name}`,
            EXTRA_UNIT - costs.leftOverKcal * unitKcal,
            most(lot),
            true,
          );
          this.#units.push({ column: unit, extraDay: index, lot: lot.index, place });
          kcal[place]?.push([unit, unitKcal]);
          this.#kcal[person]?.[day]?.push([unit, unitKcal]);
          this.#lackG[person]?.[day]?.push([unit, (lot.servings * lot.lackG) / lot.units]);
          this.#want(group, lot, isDrink, day, unit);
          let has: Term = [unit, most(lot)];
          if (own.length > mostSorts) {
            has = [this.#column(`has_${name}`, 0, 1, true), 1];
            this.#row(
              `has_${name}`,
              [
                [unit, 1],
                [has[0], -most(lot)],
              ],
              -Infinity,
              0,
            );
            sorts.push(has);
          }
          eaten.set(lot.index, [...(eaten.get(lot.index) ?? []), has]);
        }
        if (sorts.length > 0) this.#row(`${kind}s_${index}_${place}`, sorts, 0, mostSorts);
      });
      if (eaten.size > 1) {
        const sorts = [...eaten].map(([lot, by]): Term => {
          const sort = this.#column(`sort_${index}_${lot}`, 0, 1, true);
          for (const [column, most] of by)
            this.#row(
              `sort_${index}_${lot}_${column}`,
              [
                [column, 1],
                [sort, -most],
              ],
              -Infinity,
              0,
            );
          return [sort, 1];
        });
        const more = this.#column(`sorts_${kind}_${index}`, EXTRA_SORT, eaten.size - 1);
        this.#row(`sorts_${kind}_${index}`, [...sorts, [more, -1]], 0, 1);
      }
    }
    kcal.forEach((terms, place) => {
      if (terms.length > 0) this.#row(`sitting_${index}_${place}`, terms, 0, extraDay.mostKcal[place] ?? 0);
    });
  }

  #want(group: number, lot: ModelLot, isDrink: boolean, day: number, unit: number): void {
    const key = `${group} ${lot.index}`;
    const known = this.#wanted.get(key) ?? { group, lot, isDrink, byDay: new Map<number, Term[]>() };
    this.#wanted.set(key, known);
    known.byDay.set(day, [...(known.byDay.get(day) ?? []), [unit, 1]]);
  }

  /**
   * Pouches of extras. What is open at the end of a day is less than a pouch: so no pouch is opened before it is needed, and whenever one is opened, what was open before is eaten up.
   * Hence there is never more than one lot of open pieces, and it is gone once no pouch was opened within its days: the rules of `openExtras`, which leave the program no choice.
   */
  #openExtras(): void {
    const { costs, settings } = this.#model;
    for (const { group, lot, isDrink, byDay } of this.#wanted.values()) {
      const keeps = lot.keepsOpen ? settings.dryOpenDays : 1;
      const days = [...byDay]
        .sort(([a], [b]) => a - b)
        .map(([day, wanted]) => {
          const most = sumOf(wanted.map(([column]) => this.#columns[column]?.upper ?? 0));
          const pouches = Math.min(lot.stock, Math.ceil(most / lot.units));
          const points =
            extraPouchPoints(this.#model, lot.index, day, isDrink) + costs.leftOverKcal * lot.kcal;
          const name = `${group}_${lot.index}_${day}`;
          const open = this.#column(`open_${name}`, points, pouches, true);
          this.#opened[lot.index]?.push([open, 1]);
          return { day, wanted, name, open, pouches, opens: undefined as number | undefined };
        });
      const opensOn = (on: (typeof days)[number]): number => {
        if (on.opens !== undefined) return on.opens;
        on.opens = this.#column(`opens_${on.name}`, 0, 1, true);
        this.#row(
          `opens_${on.name}`,
          [
            [on.open, 1],
            [on.opens, -on.pouches],
          ],
          -Infinity,
          0,
        );
        this.#row(
          `opens_${on.name}_some`,
          [
            [on.open, 1],
            [on.opens, -1],
          ],
          0,
          Infinity,
        );
        return on.opens;
      };
      let open: Term[] = [];
      days.forEach((on, at) => {
        const left: Term[] = [...open, [on.open, lot.units], ...times(on.wanted, -1)];
        const next = days[at + 1];
        open = [];
        if (!next || lot.units === 1 || next.day - on.day >= keeps) {
          this.#row(`rest_${on.name}`, left, 0, lot.units - 1);
          return;
        }
        const rest = this.#column(`rest_${on.name}`, 0, lot.units - 1);
        this.#row(`rest_${on.name}`, [...left, [rest, -1]], 0, 0);
        open = [[rest, 1]];
        const until = days.slice(0, at + 1);
        const recent = until.filter(({ day }) => next.day - day < keeps);
        if (recent.length === until.length) return;
        const gone = this.#column(`gone_${next.name}`, 0, lot.units - 1);
        open.push([gone, -1]);
        this.#row(`gone_${next.name}`, open, 0, Infinity);
        const most = lot.units - 1;
        this.#row(
          `kept_${next.name}`,
          [...open, ...recent.map((day): Term => [opensOn(day), -most])],
          -Infinity,
          0,
        );
        for (const day of recent)
          this.#row(
            `gone_${next.name}_${day.day}`,
            [
              [gone, 1],
              [opensOn(day), most],
            ],
            -Infinity,
            most,
          );
      });
    }
  }

  // days

  #countDays(): void {
    const { people, days, needKcal, keptLackG, costs } = this.#model;
    const slopes = daySlopes(costs);
    people.forEach((_, person) =>
      days.forEach((_, day) => {
        const name = `${person}_${day}`;
        const need = needKcal[person]?.[day] ?? 0;
        const planned = this.#plannedKcal[person]?.[day] ?? 0;
        const mild = this.#column(`mild_${name}`, slopes.mild, (DAY_FREE_FROM - DAY_MILD_FROM) * need);
        const miss = this.#column(`miss_${name}`, slopes.missing, DAY_MILD_FROM * need);
        const above = this.#column(`above_${name}`, slopes.above, Infinity);
        this.#row(
          `day_${name}`,
          [...(this.#kcal[person]?.[day] ?? []), [mild, 1], [miss, 1], [above, -1]],
          DAY_FREE_FROM * need - planned,
          DAY_FREE_TO * need - planned,
        );
        const lackG = this.#lackG[person]?.[day] ?? [];
        const keptG = keptLackG[person]?.[day] ?? 0;
        if (costs.proteinG === 0 || (lackG.length === 0 && keptG <= 0)) return;
        const lack = this.#column(`lack_${name}`, costs.proteinG, Infinity);
        this.#row(`lack_${name}`, [...lackG, [lack, -1]], -Infinity, -keptG);
      }),
    );
  }

  /** On each day, a person's plates of a dish are repeats: all of them where they ate it within the days before, else all but one. */
  #countRepeats(): void {
    const { costs, settings, keptEaten } = this.#model;
    const within = settings.repeatAfterDays;
    if (within <= 0 || costs.repeat === 0) return;
    const plates = new Map<string, { day: number; column: number | undefined }[]>();
    const note = (key: string, at: number, column: number | undefined) =>
      plates.set(key, [...(plates.get(key) ?? []), { day: Math.floor(at / MEAL_KINDS.length), column }]);
    for (const [key, own] of this.#eaten) for (const { at, column } of own) note(key, at, column);
    for (const { person, dish, at } of keptEaten) note(`${person} ${dish}`, at, undefined);
    for (const [key, own] of plates)
      for (const [day, today] of Map.groupBy(own, (plate) => plate.day)) {
        const before = own.filter((plate) => plate.day < day && plate.day >= day - within);
        if (today.length === 1 && before.length === 0) continue;
        const isKeptBefore = before.some(({ column }) => column === undefined);
        const kept = today.filter(({ column }) => column === undefined).length;
        const name = `again_${key.replace(' ', '_')}_${day}`;
        const again = this.#column(name, costs.repeat, today.length);
        const terms = today.flatMap(({ column }): Term[] => (column === undefined ? [] : [[column, -1]]));
        const eachOf: Term[][] =
          isKeptBefore || before.length === 0 ? [[]] : before.map(({ column = 0 }) => [[column, -1]]);
        eachOf.forEach((earlier, at) =>
          this.#row(
            eachOf.length > 1 ? `${name}_${at}` : name,
            [[again, 1], ...terms, ...earlier],
            kept - (isKeptBefore ? 0 : 1),
            Infinity,
          ),
        );
      }
  }

  #keepToStock(): void {
    this.#model.lots.forEach(({ index, stock }) => {
      const terms = this.#opened[index] ?? [];
      const most = sumOf(terms.map(([column, pouches]) => pouches * (this.#columns[column]?.upper ?? 0)));
      if (most > stock) this.#row(`stock_${index}`, terms, 0, stock);
    });
  }
}

const mayEatAll = (model: MenuModel, slot: ModelSlot, lots: readonly number[], place: number): boolean =>
  lots.every((lot) => model.lots[lot]?.feeds[slot.people[place] ?? -1]);

/** The ways to serve a dish at a table, each with all that may be opened for it. */
function servingsOf(model: MenuModel, slot: ModelSlot, option: SlotOption): Serving[] {
  const { costs } = model;
  const { style } = slot.task;
  /** By place: how many units of so many kcal they may eat. */
  const mostOf = (lots: readonly number[], unitKcal: number, most: number, least: number) =>
    slot.people.map((_, place) => {
      if (!Number.isFinite(option.taste[place]) || !mayEatAll(model, slot, lots, place)) return 0;
      const mostKcal = SITTING_SHARE * (slot.plannedKcal[place] ?? 0);
      const units = Math.min(most, Math.floor(mostKcal / unitKcal + EPSILON));
      return units < least ? 0 : units;
    });
  const pots = option.fillings.map((filling): Choice => {
    const quarters = filling.servings * 4;
    const room = Math.floor(quarters + EPSILON);
    const unitKcal = filling.kcal / quarters;
    return {
      ...filling,
      unitServings: 1 / 4,
      unitKcal,
      unitLackG: filling.lackG / quarters,
      room,
      from: room - Math.ceil(filling.leastServings * 4 - EPSILON) + 1,
      most: mostOf(filling.lots, unitKcal, Math.min(MOST_QUARTERS, room), LEAST_QUARTERS),
    };
  });
  const pot: Serving = {
    name: 'pot',
    style: 'shared pot',
    choices: pots,
    least: LEAST_QUARTERS,
    dishPoints: POT + (style === 'own pouch' ? POT_FOR_OWN * costs.missingKcal : 0),
    secondPoints: costs.secondDish,
    platePoints: 0,
  };
  if (style === 'shared pot') return [pot];

  const own = option.lots.flatMap((index) => {
    const lot = model.lots[index];
    return lot?.isOwnPouch ? [lot] : [];
  });
  /** Pouches of one lot that hold so many units each, as many as the people can eat of. */
  const pouchesOf = (
    lot: ModelLot,
    each: number,
    unitServings: number,
    mostUnits: number,
    people: 'one' | 'all',
  ) => {
    const unitKcal = lot.servingKcal * unitServings;
    const choices: Choice[] = [];
    const most = mostOf([lot.index], unitKcal, mostUnits, 1);
    const room = people === 'one' ? Math.max(...most) : sumOf(most);
    for (let pouches = 1; pouches <= lot.stock && (pouches - 1) * each < room; pouches++)
      choices.push({
        lots: [lot.index],
        pouches: [pouches],
        kcal: pouches * lot.kcal,
        unitServings,
        unitKcal,
        unitLackG: lot.lackG * unitServings,
        room: pouches * each,
        from: (pouches - 1) * each + 1,
        most,
      });
    return choices;
  };
  const isSmall = ({ servings }: ModelLot) => servings < OWN_POUCH_BELOW_SERVINGS;
  const byHand = { style: 'own pouch', least: 1, dishPoints: 0, platePoints: OWN_PLATE } as const;
  return [
    pot,
    {
      ...byHand,
      name: 'own',
      choices: own.filter(isSmall).flatMap((lot) => pouchesOf(lot, 2, lot.servings / 2, Infinity, 'one')),
      secondPoints: 0,
    },
    {
      ...byHand,
      name: 'hand',
      choices: own
        .filter((lot) => !isSmall(lot))
        .flatMap((lot) => pouchesOf(lot, Math.floor(lot.servings + EPSILON), 1, MOST_SERVINGS, 'all')),
      secondPoints: costs.secondDish * OWN_SECOND_PART,
    },
  ];
}
