import { EXTRA_UNIT } from '../menu/menu-costs.ts';
import { MOST_DRINKS, MOST_UNITS, type ExtraDay, type MenuModel } from '../menu/menu-model.ts';
import { extraPouchPoints } from '../menu/menu-state.ts';

/** What one person eats of extras on a day: units of some lots. */
export type ExtraPlate = {
  readonly extraDay: number;
  readonly place: number;
  readonly lots: readonly number[];
  readonly units: readonly number[];
};
export const plateKey = ({ extraDay, place, lots, units }: ExtraPlate): string =>
  `x ${extraDay} ${place} ${lots
    .map((lot, at) => `${lot}x${units[at]}`)
    .sort()
    .join()}`;

/** Extras that one person may choose from on a day, piece by piece: units of each lot at most. */
export type ExtraPieces = {
  readonly extraDay: number;
  readonly place: number;
  readonly lots: readonly number[];
  readonly most: readonly number[];
};
/** An extra that a person may eat on a day, with what a unit of it costs by itself and brings. */
export type PlateLot = {
  readonly lot: number;
  readonly isDrink: boolean;
  readonly most: number;
  readonly unitPoints: number;
  readonly unitKcal: number;
  readonly unitLackG: number;
  readonly unitPouches: number;
};

/** The extras that somebody may eat on a day. A pouch may have been opened some days before, where it was carried less far. */
export function plateLots(model: MenuModel, extraDay: ExtraDay, place: number): PlateLot[] {
  const person = extraDay.people[place] ?? -1;
  return extraDay.lots.flatMap((index, at): PlateLot[] => {
    const lot = model.lots[index];
    if (!lot?.feeds[person]) return [];
    const isDrink = extraDay.isDrink[at] ?? false;
    const unitKcal = lot.kcal / lot.units;
    const most = Math.min(
      MOST_UNITS,
      lot.stock * lot.units,
      Math.floor((extraDay.mostKcal[place] ?? 0) / unitKcal + 1e-9),
    );
    if (most < 1) return [];
    const keeps = lot.keepsOpen ? model.settings.dryOpenDays : 1;
    let pouch = Infinity;
    for (let day = Math.max(0, extraDay.day - keeps + 1); day <= extraDay.day; day++)
      pouch = Math.min(pouch, extraPouchPoints(model, index, day, isDrink));
    return [
      {
        lot: index,
        isDrink,
        most,
        unitPoints: EXTRA_UNIT + pouch / lot.units,
        unitKcal,
        unitLackG: (lot.servings * lot.lackG) / lot.units,
        unitPouches: 1 / lot.units,
      },
    ];
  });
}

/**
 * The plate of extras that gains most, exactly: whole units, no more sorts, drinks and energy than a day may have.
 *
 * @param gainOf what a unit gains, points
 * @returns units by lot of `lots`, and what they gain in all; 0 for an empty plate
 */
export function bestPlate(
  lots: readonly PlateLot[],
  mostKcal: number,
  mostSorts: number,
  gainOf: (lot: PlateLot) => number,
  work: { units: number },
): { readonly gain: number; readonly units: ReadonlyMap<PlateLot, number> } {
  const worth = lots
    .map((lot) => ({ lot, gain: gainOf(lot) }))
    .filter(({ gain }) => gain > 0)
    .sort((a, b) => b.gain * b.lot.most - a.gain * a.lot.most || a.lot.lot - b.lot.lot);
  work.units += lots.length;
  /** From each one on: the most that a kcal can still gain. */
  const perKcal = worth.map(() => 0);
  for (let at = worth.length - 1; at >= 0; at--) {
    const one = worth[at];
    if (one) perKcal[at] = Math.max(perKcal[at + 1] ?? 0, one.gain / one.lot.unitKcal);
  }
  let best = 0;
  let bestUnits: [PlateLot, number][] = [];
  const chosen: [PlateLot, number][] = [];
  const from = (at: number, kcal: number, sorts: number, drinks: number, gain: number): void => {
    work.units += 1;
    if (gain > best + 1e-12) {
      best = gain;
      bestUnits = [...chosen];
    }
    for (let next = at; next < worth.length; next++) {
      const one = worth[next];
      if (!one) return;
      const byCount = (sorts + drinks) * one.gain * one.lot.most;
      if (gain + Math.min(byCount, (perKcal[next] ?? 0) * kcal) <= best + 1e-12) return;
      if (one.lot.isDrink ? drinks <= 0 : sorts <= 0) continue;
      const most = Math.min(one.lot.most, Math.floor(kcal / one.lot.unitKcal + 1e-9));
      for (let units = most; units >= 1; units--) {
        chosen.push([one.lot, units]);
        from(
          next + 1,
          kcal - units * one.lot.unitKcal,
          sorts - (one.lot.isDrink ? 0 : 1),
          drinks - (one.lot.isDrink ? 1 : 0),
          gain + units * one.gain,
        );
        chosen.pop();
      }
    }
  };
  from(0, mostKcal, mostSorts, MOST_DRINKS, 0);
  return { gain: best, units: new Map(bestUnits) };
}

/**
 * All plates of extras that gain more than so much, the empty one left out.
 *
 * @returns undefined where there are more than `most`
 */
export function platesAbove(
  lots: readonly PlateLot[],
  mostKcal: number,
  mostSorts: number,
  gainOf: (lot: PlateLot) => number,
  above: number,
  most: number,
  work: { units: number },
): (readonly (readonly [PlateLot, number])[])[] | undefined {
  const worth = lots
    .map((lot) => ({ lot, gain: gainOf(lot) }))
    .sort((a, b) => b.gain * b.lot.most - a.gain * a.lot.most || a.lot.lot - b.lot.lot);
  const found: (readonly (readonly [PlateLot, number])[])[] = [];
  const chosen: (readonly [PlateLot, number])[] = [];
  const from = (at: number, kcal: number, sorts: number, drinks: number, gain: number): boolean => {
    work.units += 1;
    if (chosen.length > 0 && gain > above) found.push([...chosen]);
    if (found.length > most) return false;
    for (let next = at; next < worth.length; next++) {
      const one = worth[next];
      if (!one) break;
      if (one.gain > 0 && gain + (sorts + drinks) * one.gain * one.lot.most <= above) break;
      if (one.gain <= 0 && gain + one.gain <= above) continue;
      if (one.lot.isDrink ? drinks <= 0 : sorts <= 0) continue;
      for (
        let units = 1;
        units <= Math.min(one.lot.most, Math.floor(kcal / one.lot.unitKcal + 1e-9));
        units++
      ) {
        chosen.push([one.lot, units]);
        const isEnough = from(
          next + 1,
          kcal - units * one.lot.unitKcal,
          sorts - (one.lot.isDrink ? 0 : 1),
          drinks - (one.lot.isDrink ? 1 : 0),
          gain + units * one.gain,
        );
        chosen.pop();
        if (!isEnough) return false;
      }
    }
    return true;
  };
  return from(0, mostKcal, mostSorts, MOST_DRINKS, 0) ? found : undefined;
}
