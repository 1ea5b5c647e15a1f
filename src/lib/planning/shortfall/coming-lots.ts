import { pouchesNeeded } from '../menu/plan-menu.ts';
import { packetsOf, type PlannedLot } from '../model/planned-lot.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { Stock } from '../model/pouch-lot.ts';
import { pouchEnergyKcal, pouchFoodG } from '../model/pouch-totals.ts';
import type { CarryPlan, ComingLot, MenuPlan, Pack, TrailCard } from '../model/trip-plan.ts';
import type { PlannedWay } from '../model/words.ts';

/** Planned lots that are not on the shelf: a code that is there already is there. */
export function stillToCome(planned: readonly PlannedLot[], shelf: Stock): PlannedLot[] {
  const there = new Set(shelf.map(({ code }) => code));
  return planned.filter(({ lot }) => !there.has(lot.code));
}

/** What is still to come for a menu, lot by lot. */
export function comingLots(planned: readonly PlannedLot[], menu: MenuPlan): ComingLot[] {
  const needed = new Map(pouchesNeeded(menu).map(({ code, pouches }) => [code, pouches]));
  return planned.map((own): ComingLot => {
    const { lot, way, at, by, packetG } = own;
    const packets = packetsOf(own);
    const eaters = new Set(
      menu.meals.flatMap(({ portions }) =>
        portions.filter(({ code }) => code === lot.code).map(({ eater }) => eater),
      ),
    );
    return {
      code: lot.code,
      recipe: lot.recipe,
      way,
      ...(at !== undefined && { at }),
      ...(by !== undefined && { by }),
      pouches: lot.pouches,
      needed: needed.get(lot.code) ?? 0,
      ...(packets > 0 && { packets }),
      ...(packetG !== undefined && { packetG }),
      weightG: lot.pouches * pouchFoodG(lot),
      energyKcal: lot.pouches * pouchEnergyKcal(lot),
      ...(lot.allergens && { allergens: lot.allergens }),
      ...(lot.costMinor !== undefined && {
        costMinor: lot.costMinor * lot.servingsPerPouch * lot.pouches,
      }),
      eaters: [...eaters].sort(),
    };
  });
}

/** That food of the plan is not there yet, where some is. */
export function comingNotices(coming: readonly ComingLot[]): Notice[] {
  const count = (way: PlannedWay) => coming.filter((own) => own.way === way && own.needed > 0).length;
  const [toBuy, toDry] = [count('buy'), count('dry')];
  return toBuy + toDry > 0 ? [notice('food-to-come', { toBuy, toDry })] : [];
}

type Shown = { readonly menu: MenuPlan; readonly carry: CarryPlan; readonly card: TrailCard };

/** Marks, wherever a plan names lots, those that are not there yet. */
export function markToCome({ menu, carry, card }: Shown, planned: readonly PlannedLot[]): Shown {
  if (planned.length === 0) return { menu, carry, card };
  const ways = new Map(planned.map(({ lot, way }) => [lot.code, way]));
  const marked = <Row extends { readonly code: string }>(rows: readonly Row[]) =>
    rows.map((row) => {
      const toCome = ways.get(row.code);
      return toCome ? { ...row, toCome } : row;
    });
  const markedPack = (pack: Pack): Pack => ({
    ...pack,
    pouches: marked(pack.pouches),
    reserve: marked(pack.reserve),
  });
  return {
    menu: {
      ...menu,
      meals: menu.meals.map((meal) => ({
        ...meal,
        opened: marked(meal.opened),
        fromOpen: marked(meal.fromOpen),
      })),
      reserve: marked(menu.reserve),
    },
    carry: {
      ...carry,
      packs: carry.packs.map(markedPack),
      pickUps: carry.pickUps.map((pickUp) => ({
        ...pickUp,
        pouches: marked(pickUp.pouches),
        packs: pickUp.packs.map(markedPack),
      })),
    },
    card: {
      ...card,
      days: card.days.map((day) => ({
        ...day,
        meals: day.meals.map((meal) => ({ ...meal, pouches: marked(meal.pouches) })),
      })),
    },
  };
}
