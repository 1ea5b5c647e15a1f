import { GainGraph } from '../menu/gain-graph.ts';
import type { MenuCosts } from '../model/settings.ts';
import { randomFrom } from './random.ts';
import type { MenuModel, OpenedAt } from './menu-model.ts';

const MOST_CHANGES = 16;
const MOST_KNOWN = 200_000;

/**
 * A menu in the making, with its points kept up to date as pouches come and go: what the search works on. It counts as `scoreMenu` does, only faster;
 * a test holds the two together.
 */
export class MenuTable {
  readonly model: MenuModel;
  readonly openSlots: readonly number[];
  /** By slot: lots that may be opened there, the cheapest for their energy first. */
  readonly candidates: readonly (readonly number[])[];
  /** By slot: lots on the table, kept ones left out. */
  readonly lotsAt: readonly number[][];
  /** By lot: energy of a pouch. */
  readonly kcal: Float64Array;

  /** How often a day with walls had to be served anew: the costly part of the work. */
  flows = 0;
  /** By day: energy on the table, and what the party needs. */
  readonly kcalOn: Float64Array;
  readonly needOn: Float64Array;

  readonly #lots: number;
  readonly #days: number;
  readonly #groups: number;
  readonly #allGroups: number;
  readonly #pouches: Int16Array;
  readonly #most: Int16Array;
  readonly #cost: Float64Array;
  readonly #free: Int32Array;
  readonly #feeds: Int32Array;
  readonly #recipe: Int32Array;
  readonly #lackG: Float64Array;
  readonly #dayOf: Int32Array;
  readonly #keptAt: readonly (readonly OpenedAt[])[];
  /** By recipe and day: meals with it. */
  readonly #uses: Int16Array;
  readonly #dayPoints: Float64Array;
  readonly #flow: GainGraph = new GainGraph();
  readonly #target: Float64Array;
  readonly #ceiling: Float64Array;
  readonly #floor: Float64Array;
  readonly #mostKcal: Float64Array;
  #points = 0;
  readonly #costs: MenuCosts;
  /** What serving a day's table costs, remembered: the search comes by the same tables again and again. */
  readonly #known = new Map<number, number>();
  readonly #marks: Uint32Array;
  readonly #marksToo: Uint32Array;
  readonly #hash: Uint32Array;
  readonly #hashToo: Uint32Array;

  // the changes being tried
  readonly changedSlot = new Int32Array(MOST_CHANGES);
  readonly changedLot = new Int32Array(MOST_CHANGES);
  readonly changedBy = new Int32Array(MOST_CHANGES);
  changes = 0;

  constructor(model: MenuModel, start: readonly OpenedAt[]) {
    this.model = model;
    const [lots, slots, days, groups] = [
      model.lots.length,
      model.slots.length,
      model.days.length,
      model.groups.length,
    ];
    this.#lots = lots;
    this.#days = days;
    this.#groups = groups;
    this.#allGroups = groups >= 31 ? -1 : (1 << groups) - 1;
    const random = randomFrom(1);
    this.#marks = Uint32Array.from({ length: slots * lots }, () => random() * 2 ** 32);
    this.#marksToo = Uint32Array.from({ length: slots * lots }, () => random() * 2 ** 32);
    this.#hash = Uint32Array.from({ length: days }, () => random() * 2 ** 32);
    this.#hashToo = Uint32Array.from({ length: days }, () => random() * 2 ** 32);
    this.kcal = Float64Array.from(model.lots, (lot) => lot.kcal);
    this.#pouches = new Int16Array(slots * lots);
    this.#most = new Int16Array(slots * lots);
    this.#cost = new Float64Array(slots * lots);
    for (const lot of model.lots)
      for (let slot = 0; slot < slots; slot++) {
        this.#most[slot * lots + lot.index] = Math.min(30_000, lot.most[slot] ?? 0);
        this.#cost[slot * lots + lot.index] = lot.pouchCost[slot] ?? 0;
      }
    this.#free = Int32Array.from(model.lots, (lot) => lot.stock);
    this.#feeds = Int32Array.from(model.lots, (lot) =>
      lot.feeds.reduce((mask, feeds, group) => (feeds ? mask | (1 << group) : mask), 0),
    );
    this.#recipe = Int32Array.from(model.lots, (lot) => lot.recipe);
    this.#lackG = Float64Array.from(model.lots, (lot) => lot.proteinLackG);
    this.#dayOf = Int32Array.from(model.slots, (slot) => slot.dayIndex);
    this.#keptAt = model.slots.map((slot) => model.kept.filter((at) => at.slot === slot.index));
    this.#uses = new Int16Array(model.recipes.length * days);
    this.#dayPoints = new Float64Array(days);
    this.#target = Float64Array.from(model.days.flatMap((day) => day.targetKcal));
    this.#ceiling = Float64Array.from(model.days.flatMap((day) => day.ceilingKcal));
    this.#floor = Float64Array.from(model.slots.flatMap((slot) => slot.floorKcal));
    this.#mostKcal = Float64Array.from(model.slots.flatMap((slot) => slot.mostKcal));

    this.openSlots = model.slots.flatMap((slot) => (slot.open ? [slot.index] : []));
    this.candidates = model.slots.map((slot) =>
      model.lots
        .filter((lot) => (lot.most[slot.index] ?? 0) > 0)
        .sort(
          (a, b) =>
            (a.pouchCost[slot.index] ?? 0) / a.kcal - (b.pouchCost[slot.index] ?? 0) / b.kcal ||
            a.index - b.index,
        )
        .map((lot) => lot.index),
    );
    this.lotsAt = model.slots.map(() => []);
    this.kcalOn = Float64Array.from(model.days, (day) =>
      model.kept
        .filter(({ slot }) => day.slots.includes(slot))
        .reduce((sum, { lot, pouches }) => sum + pouches * (this.kcal[lot] as number), 0),
    );
    this.needOn = Float64Array.from(model.days, (day) => day.targetKcal.reduce((sum, kcal) => sum + kcal, 0));
    for (const slot of model.slots) {
      const recipes = new Set((this.#keptAt[slot.index] ?? []).map(({ lot }) => this.#recipe[lot] as number));
      for (const recipe of recipes) this.#use(recipe, slot.dayIndex, 1);
    }
    for (const at of start) this.#put(at.slot, at.lot, at.pouches);
    this.#costs = model.settings.menuCosts;
    this.#count();
  }

  #count(): void {
    this.#points = 0;
    for (let day = 0; day < this.#days; day++) {
      this.#dayPoints[day] = this.#pointsOfDay(day, Infinity);
      this.#points += this.#dayPoints[day] as number;
    }
    for (let recipe = 0; recipe < this.model.recipes.length; recipe++)
      this.#points += this.#repeatPoints(recipe);
  }

  get points(): number {
    return this.#points;
  }

  pouchesAt(slot: number, lot: number): number {
    return this.#pouches[slot * this.#lots + lot] as number;
  }

  freeOf(lot: number): number {
    return this.#free[lot] as number;
  }

  dayOf(slot: number): number {
    return this.#dayOf[slot] as number;
  }

  costAt(slot: number, lot: number): number {
    return this.#cost[slot * this.#lots + lot] as number;
  }

  mostAt(slot: number, lot: number): number {
    return this.#most[slot * this.#lots + lot] as number;
  }

  opened(): OpenedAt[] {
    return this.lotsAt.flatMap((lots, slot) =>
      [...lots].sort((a, b) => a - b).map((lot) => ({ slot, lot, pouches: this.pouchesAt(slot, lot) })),
    );
  }

  /** Lays another menu on the table. */
  become(opened: readonly OpenedAt[]): void {
    for (const { slot, lot, pouches } of this.opened()) this.#put(slot, lot, -pouches);
    for (const { slot, lot, pouches } of opened) this.#put(slot, lot, pouches);
    this.#count();
  }

  clearChanges(): void {
    this.changes = 0;
  }

  /** Notes a change to be tried. @returns false where it cannot be, by itself */
  change(slot: number, lot: number, by: number): boolean {
    const now = this.pouchesAt(slot, lot) + by;
    if (by === 0 || (this.changes === 0 && now < 0) || by > (this.#most[slot * this.#lots + lot] as number))
      return false;
    if (this.changes === MOST_CHANGES) return false;
    this.changedSlot[this.changes] = slot;
    this.changedLot[this.changes] = lot;
    this.changedBy[this.changes] = by;
    this.changes++;
    return true;
  }

  /**
   * Makes the noted changes where the menu then costs no more than a limit and breaks no rule.
   *
   * @returns whether they were made
   */
  tryChanges(limit: number): boolean {
    return this.#weigh(limit, true) <= limit;
  }

  /** @returns the points after the noted changes, which are not made; infinite where they break a rule */
  peek(): number {
    return this.#weigh(Infinity, false);
  }

  #weigh(limit: number, keep: boolean): number {
    const changes = this.changes;
    let repeatsBefore = 0;
    let daysBefore = 0;
    for (let at = 0; at < changes; at++) {
      if (this.#firstOfRecipe(at))
        repeatsBefore += this.#repeatPoints(this.#recipe[this.changedLot[at] as number] as number);
      if (this.#firstOfDay(at))
        daysBefore += this.#dayPoints[this.#dayOf[this.changedSlot[at] as number] as number] as number;
    }
    for (let at = 0; at < changes; at++)
      this.#put(this.changedSlot[at] as number, this.changedLot[at] as number, this.changedBy[at] as number);
    let possible = true;
    for (let at = 0; at < changes && possible; at++)
      possible =
        (this.#free[this.changedLot[at] as number] as number) >= 0 &&
        this.#fits(this.changedSlot[at] as number, this.changedLot[at] as number) &&
        this.#recipesAt(this.changedSlot[at] as number) <= this.model.settings.maxRecipesPerMeal;
    let now = this.#points - repeatsBefore - daysBefore;
    if (possible)
      for (let at = 0; at < changes; at++)
        if (this.#firstOfRecipe(at))
          now += this.#repeatPoints(this.#recipe[this.changedLot[at] as number] as number);
    const newDays: number[] = [];
    for (let at = 0; at < changes && possible; at++)
      if (this.#firstOfDay(at)) {
        const day = this.#dayOf[this.changedSlot[at] as number] as number;
        const points = this.#pointsOfDay(day, limit - now);
        newDays.push(day, points);
        now += points;
        possible = now <= limit;
      }
    if (possible && keep) {
      for (let at = 0; at < newDays.length; at += 2)
        this.#dayPoints[newDays[at] as number] = newDays[at + 1] as number;
      this.#points = now;
      return now;
    }
    for (let at = changes - 1; at >= 0; at--)
      this.#put(
        this.changedSlot[at] as number,
        this.changedLot[at] as number,
        -(this.changedBy[at] as number),
      );
    return possible ? now : Infinity;
  }

  #fits(slot: number, lot: number): boolean {
    const pouches = this.pouchesAt(slot, lot);
    return pouches >= 0 && pouches <= this.mostAt(slot, lot);
  }

  #firstOfRecipe(at: number): boolean {
    const recipe = this.#recipe[this.changedLot[at] as number];
    for (let before = 0; before < at; before++)
      if (this.#recipe[this.changedLot[before] as number] === recipe) return false;
    return true;
  }

  #firstOfDay(at: number): boolean {
    const day = this.#dayOf[this.changedSlot[at] as number];
    for (let before = 0; before < at; before++)
      if (this.#dayOf[this.changedSlot[before] as number] === day) return false;
    return true;
  }

  #put(slot: number, lot: number, by: number): void {
    const at = slot * this.#lots + lot;
    const before = this.#pouches[at] as number;
    const after = before + by;
    this.#pouches[at] = after;
    this.#free[lot] = (this.#free[lot] as number) - by;
    const day = this.#dayOf[slot] as number;
    this.#hash[day] = (this.#hash[day] as number) + Math.imul(by, this.#marks[at] as number);
    this.#hashToo[day] = (this.#hashToo[day] as number) + Math.imul(by, this.#marksToo[at] as number);
    this.kcalOn[day] = (this.kcalOn[day] as number) + by * (this.kcal[lot] as number);
    const lots = this.lotsAt[slot] as number[];
    if (before === 0 && after !== 0) {
      if (!this.#recipeIsAt(slot, this.#recipe[lot] as number))
        this.#use(this.#recipe[lot] as number, this.#dayOf[slot] as number, 1);
      lots.push(lot);
    } else if (before !== 0 && after === 0) {
      lots.splice(lots.indexOf(lot), 1);
      if (!this.#recipeIsAt(slot, this.#recipe[lot] as number))
        this.#use(this.#recipe[lot] as number, this.#dayOf[slot] as number, -1);
    }
  }

  #use(recipe: number, day: number, by: number): void {
    const at = recipe * this.#days + day;
    this.#uses[at] = (this.#uses[at] as number) + by;
  }

  #recipeIsAt(slot: number, recipe: number): boolean {
    for (const lot of this.lotsAt[slot] as number[]) if (this.#recipe[lot] === recipe) return true;
    return false;
  }

  #recipesAt(slot: number): number {
    const lots = this.lotsAt[slot] as number[];
    let count = 0;
    for (let at = 0; at < lots.length; at++) {
      let isNew = 1;
      for (let before = 0; before < at; before++)
        if (this.#recipe[lots[before] as number] === this.#recipe[lots[at] as number]) isNew = 0;
      count += isNew;
    }
    return count;
  }

  #repeatPoints(recipe: number): number {
    const { repeatAfterDays } = this.model.settings;
    const { variety } = this.model;
    if (repeatAfterDays === 0 && !variety) return 0;
    const row = recipe * this.#days;
    let repeats = 0;
    let later = 0;
    let last = -Infinity;
    for (let day = 0; day < this.#days; day++) {
      const uses = this.#uses[row + day] as number;
      if (uses === 0) continue;
      if (repeatAfterDays > 0) repeats += uses - 1 + (day - last <= repeatAfterDays ? 1 : 0);
      if (variety && day - last > repeatAfterDays && day - last <= variety.withinDays) later++;
      last = day;
    }
    return repeats * this.#costs.repeat + (variety ? later * variety.points : 0);
  }

  // a day's food, gathered
  readonly #foodMeal: number[] = [];
  readonly #foodKcal: number[] = [];
  readonly #foodFeeds: number[] = [];
  #foodLackG = 0;
  readonly #mergedMeal: number[] = [];
  readonly #mergedMask: number[] = [];
  readonly #mergedKcal: number[] = [];

  /** Takes food of a meal in. @returns what its pouches cost by themselves */
  #gather(meal: number, slot: number, lot: number, pouches: number): number {
    this.#foodMeal.push(meal);
    this.#foodKcal.push(pouches * (this.kcal[lot] as number));
    this.#foodFeeds.push(this.#feeds[lot] as number);
    this.#foodLackG += pouches * (this.#lackG[lot] as number);
    return pouches * (this.#cost[slot * this.#lots + lot] as number);
  }

  #pointsOfDay(dayIndex: number, limit: number): number {
    const day = this.model.days[dayIndex]!;
    const feeds = this.#foodFeeds;
    this.#foodMeal.length = this.#foodKcal.length = feeds.length = this.#foodLackG = 0;
    let points = 0;
    for (let meal = 0; meal < day.slots.length; meal++) {
      const slot = day.slots[meal] as number;
      for (const lot of this.lotsAt[slot] as number[])
        points += this.#gather(meal, slot, lot, this.#pouches[slot * this.#lots + lot] as number);
      for (const { lot, pouches } of this.#keptAt[slot]!) points += this.#gather(meal, slot, lot, pouches);
    }
    points += Math.max(0, this.#foodLackG) * this.#costs.proteinG;
    if (points > limit) return points;
    const alike = this.#servedAlike(dayIndex);
    points += alike;
    if (points > limit) return points;
    let walls = false;
    for (const mask of feeds) if (mask !== this.#allGroups) walls = true;
    return walls ? points - alike + this.#servedWithWalls(dayIndex) : points;
  }

  /** What serving costs if everybody may eat everything: exact without walls, and never more than with them. */
  #servedAlike(dayIndex: number): number {
    const day = this.model.days[dayIndex]!;
    const { missingKcal, smallMealKcal, leftOverKcal, aboveCeilingKcal } = this.#costs;
    const groups = this.#groups;
    let target = 0;
    let ceiling = 0;
    for (let group = 0; group < groups; group++) {
      target += this.#target[dayIndex * groups + group] as number;
      ceiling += this.#ceiling[dayIndex * groups + group] as number;
    }
    let onTable = 0;
    let eaten = 0;
    let small = 0;
    for (let meal = 0; meal < day.slots.length; meal++) {
      let kcal = 0;
      for (let food = 0; food < this.#foodMeal.length; food++)
        if (this.#foodMeal[food] === meal) kcal += this.#foodKcal[food] as number;
      onTable += kcal;
      let floor = 0;
      let most = 0;
      const row = (day.slots[meal] as number) * groups;
      for (let group = 0; group < groups; group++) {
        floor += this.#floor[row + group] as number;
        most += this.#mostKcal[row + group] as number;
      }
      const sat = Math.min(kcal, most);
      eaten += sat;
      if (sat < floor) small += floor - sat;
    }
    if (aboveCeilingKcal >= leftOverKcal) eaten = Math.min(eaten, Math.max(ceiling, 0));
    return (
      Math.max(0, target - eaten) * missingKcal +
      small * smallMealKcal +
      (onTable - eaten) * leftOverKcal +
      Math.max(0, eaten - ceiling) * aboveCeilingKcal
    );
  }

  #servedWithWalls(dayIndex: number): number {
    const key = (this.#hash[dayIndex] as number) * 2 ** 21 + ((this.#hashToo[dayIndex] as number) >>> 11);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const points = this.#servedByGroup(dayIndex);
    this.flows++;
    if (this.#known.size >= MOST_KNOWN) this.#known.clear();
    this.#known.set(key, points);
    return points;
  }

  /** What serving costs with walls: the flow of `serveDay` over the groups, those with equal choice taken as one. */
  #servedByGroup(dayIndex: number): number {
    const day = this.model.days[dayIndex]!;
    const costs = this.#costs;
    const groups = this.#groups;
    const foods = this.#foodMeal.length;
    const meals = day.slots.length;
    // classes: groups that may eat the same foods of today
    const classOf: number[] = [];
    const heads: number[] = [];
    for (let group = 0; group < groups; group++) {
      let found = -1;
      for (let at = 0; at < heads.length && found < 0; at++) {
        let same = true;
        for (let food = 0; food < foods && same; food++)
          same =
            (((this.#foodFeeds[food] as number) >> group) & 1) ===
            (((this.#foodFeeds[food] as number) >> (heads[at] as number)) & 1);
        if (same) found = at;
      }
      if (found < 0) {
        found = heads.length;
        heads.push(group);
      }
      classOf.push(found);
    }
    const classes = heads.length;
    // foods of one meal for the same classes are one
    const [mergedMeal, mergedMask, mergedKcal] = [this.#mergedMeal, this.#mergedMask, this.#mergedKcal];
    mergedMeal.length = mergedMask.length = mergedKcal.length = 0;
    let onTable = 0;
    for (let food = 0; food < foods; food++) {
      const kcal = this.#foodKcal[food] as number;
      onTable += kcal;
      let mask = 0;
      for (let at = 0; at < classes; at++)
        if (((this.#foodFeeds[food] as number) >> (heads[at] as number)) & 1) mask |= 1 << at;
      let found = 0;
      while (
        found < mergedMeal.length &&
        !(mergedMeal[found] === this.#foodMeal[food] && mergedMask[found] === mask)
      )
        found++;
      if (found < mergedMeal.length) mergedKcal[found] = (mergedKcal[found] as number) + kcal;
      else {
        mergedMeal.push(this.#foodMeal[food] as number);
        mergedMask.push(mask);
        mergedKcal.push(kcal);
      }
    }
    const merged = mergedMeal.length;
    const graph = this.#flow;
    graph.reset(2 + merged + meals * classes + classes);
    const mealNode = 2 + merged;
    const classNode = mealNode + meals * classes;
    for (let food = 0; food < merged; food++) {
      const kcal = mergedKcal[food] as number;
      graph.addArc(0, 2 + food, kcal, 0);
      for (let at = 0; at < classes; at++)
        if (((mergedMask[food] as number) >> at) & 1)
          graph.addArc(2 + food, mealNode + (mergedMeal[food] as number) * classes + at, kcal, 0);
    }
    let floors = 0;
    for (let meal = 0; meal < meals; meal++) {
      const row = (day.slots[meal] as number) * groups;
      for (let at = 0; at < classes; at++) {
        let floor = 0;
        let most = 0;
        for (let group = 0; group < groups; group++)
          if (classOf[group] === at) {
            floor += this.#floor[row + group] as number;
            most += this.#mostKcal[row + group] as number;
          }
        floors += floor;
        const node = mealNode + meal * classes + at;
        graph.addArc(node, classNode + at, floor, costs.smallMealKcal);
        graph.addArc(node, classNode + at, Math.max(0, most - floor), 0);
      }
    }
    let targets = 0;
    for (let at = 0; at < classes; at++) {
      let target = 0;
      let ceiling = 0;
      for (let group = 0; group < groups; group++)
        if (classOf[group] === at) {
          target += this.#target[dayIndex * groups + group] as number;
          ceiling += this.#ceiling[dayIndex * groups + group] as number;
        }
      targets += target;
      graph.addArc(classNode + at, 1, target, costs.missingKcal + costs.leftOverKcal);
      graph.addArc(classNode + at, 1, Math.max(0, ceiling - target), costs.leftOverKcal);
      if (costs.leftOverKcal > costs.aboveCeilingKcal)
        graph.addArc(classNode + at, 1, Infinity, costs.leftOverKcal - costs.aboveCeilingKcal);
    }
    return (
      targets * costs.missingKcal +
      floors * costs.smallMealKcal +
      onTable * costs.leftOverKcal -
      graph.raise(0, 1)
    );
  }
}
