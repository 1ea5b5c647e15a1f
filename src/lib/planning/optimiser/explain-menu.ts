import type { MenuCosts, Settings } from '../model/settings.ts';
import { mostAtSitting, withSettings, type MenuModel, type OpenedAt } from './menu-model.ts';
import { MenuTable } from './menu-table.ts';
import { scoreMenu, type MenuScore } from './score-menu.ts';
import { searchToEnd } from './search-menu.ts';

export type CostTerm = keyof MenuCosts;

/** Why pouches stand where they do: what the menu would cost more with the next best lot in their place. */
export type WhyHere = OpenedAt & {
  readonly instead?: {
    readonly lot: number;
    readonly pouches: number;
    readonly points: number;
    readonly term: CostTerm;
  };
};
/** What one more pouch of a lot on the shelf would gain, points. */
export type OneMore = { readonly lot: number; readonly slot: number; readonly points: number };
/** What a menu would gain, points, if a rule gave way. */
export type Relaxed = { readonly rule: 'recipes' | 'repeats'; readonly points: number };

/** Changes smaller than this are none, points. */
const NOTHING = 0.005;
/** Most lots named as worth one more. */
const MOST_NAMED = 5;

/** For each lot on the table: the best single lot to stand in for it, by trying them all. */
export function whyHere(model: MenuModel, opened: readonly OpenedAt[]): WhyHere[] {
  const table = new MenuTable(model, opened);
  const before = scoreMenu(model, opened);
  return opened.map((at): WhyHere => {
    let best: { lot: number; pouches: number; points: number } | undefined;
    for (const lot of table.candidates[at.slot] ?? []) {
      if (lot === at.lot || table.freeOf(lot) <= 0) continue;
      const even = (at.pouches * (table.kcal[at.lot] ?? 0)) / (table.kcal[lot] ?? 1);
      for (const pouches of new Set([Math.floor(even), Math.ceil(even)])) {
        if (pouches < 1) continue;
        table.clearChanges();
        if (!table.change(at.slot, at.lot, -at.pouches) || !table.change(at.slot, lot, pouches)) continue;
        const points = table.peek() - table.points;
        if (Number.isFinite(points) && (!best || points < best.points - 1e-9))
          best = { lot, pouches, points };
      }
    }
    if (!best) return at;
    const swapped = [
      ...opened.filter(({ slot, lot }) => slot !== at.slot || (lot !== at.lot && lot !== best.lot)),
      {
        slot: at.slot,
        lot: best.lot,
        pouches: best.pouches + table.pouchesAt(at.slot, best.lot),
      },
    ];
    return {
      ...at,
      instead: { ...best, term: decidingTerm(before, scoreMenu(model, swapped)) },
    };
  });
}

/** The term by which a menu is worse than another, the most. */
function decidingTerm(before: MenuScore, after: MenuScore): CostTerm {
  const terms = Object.keys(before.terms) as CostTerm[];
  const worse = (term: CostTerm) => after.terms[term].points - before.terms[term].points;
  return terms.reduce((most, term) => (worse(term) > worse(most) ? term : most));
}

/** The lots of which one more pouch would gain most, put in by itself or for another pouch of the same meal; one for each recipe. */
export function worthOneMore(model: MenuModel, opened: readonly OpenedAt[]): OneMore[] {
  const more: MenuModel = {
    ...model,
    lots: model.lots.map((lot) => ({
      ...lot,
      stock: lot.stock + 1,
      most: lot.most.map((most, slot) =>
        most === 0 ? 0 : Math.min(most + 1, mostAtSitting(model.slots[slot]?.mostKcal ?? [], lot)),
      ),
    })),
  };
  const table = new MenuTable(more, opened);
  const best = new Map<number, OneMore>();
  for (const lot of model.lots) {
    const used = lot.stock - (table.freeOf(lot.index) - 1);
    if (used < lot.stock) continue; // there are free ones, and the menu is better without
    for (const slot of table.openSlots) {
      if ((more.lots[lot.index]?.most[slot] ?? 0) === 0) continue;
      const tries = [undefined, ...(table.lotsAt[slot] ?? [])];
      for (const out of tries) {
        if (out === lot.index) continue;
        table.clearChanges();
        if (out !== undefined && !table.change(slot, out, -1)) continue;
        if (!table.change(slot, lot.index, 1)) continue;
        const points = table.points - table.peek();
        if (points > (best.get(lot.recipe)?.points ?? NOTHING))
          best.set(lot.recipe, { lot: lot.index, slot, points });
      }
    }
  }
  return [...best.values()].sort((a, b) => b.points - a.points).slice(0, MOST_NAMED);
}

/**
 * What a menu would gain if a rule gave way, by searching on from it: one recipe more at each meal; no recipe counted as a repeat.
 * A gain is what was found in so much work; more may be possible.
 */
export function relaxedRules(model: MenuModel, opened: readonly OpenedAt[], work: number): Relaxed[] {
  const { settings } = model;
  const now = scoreMenu(model, opened);
  const gain = (changed: Settings, from: number) => {
    const relaxed = withSettings(model, changed);
    const found = searchToEnd(relaxed, { seed: 1, work, start: opened });
    return Math.max(0, from - scoreMenu(relaxed, found.opened).points);
  };
  return [
    {
      rule: 'recipes',
      points: gain({ ...settings, maxRecipesPerMeal: settings.maxRecipesPerMeal + 1 }, now.points),
    },
    // what the repeats cost now is no gain by itself: the menu is the same
    {
      rule: 'repeats',
      points: gain({ ...settings, repeatAfterDays: 0 }, now.points - now.terms.repeat.points),
    },
  ];
}
