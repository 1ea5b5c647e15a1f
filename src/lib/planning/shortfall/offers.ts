import { kindOf, unitsOf } from '../menu/lot-rules.ts';
import { addDays } from '../model/calendar.ts';
import type { PlannedLot } from '../model/planned-lot.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { Settings, Staple } from '../model/settings.ts';
import { MAIN_MEALS, type LotKind, type MealKind, type WaterKind } from '../model/words.ts';

/** A food that a shortfall can be filled with: the lot that it would be, with no pouch and no code yet. */
export type Offer = PlannedLot;

/** Food of more energy than this is fat, which nobody makes a meal of, kcal per 100 g (rule of thumb; pure fat gives 900). */
const FAT_ABOVE_KCAL = 750;
/** What one person takes of a bought food, g, and a usual packet of it, g (rules of thumb; the settings have room for others). */
const USUAL_PORTION_G: Readonly<Record<LotKind, number>> = { main: 100, side: 15, extra: 50, drink: 25 };
const USUAL_PACKET_G: Readonly<Record<LotKind, number>> = { main: 500, side: 500, extra: 200, drink: 500 };
/** Water for a gram of bought dry food, ml, and the wait, min (rule of thumb; the packet decides). */
const WATER_ML_PER_G = 2;
const STEEP_MIN = 10;
/** A bag that closes, g; and how long dry food keeps in it, days (rules of thumb). */
const BAG_G = 4;
const KEEPS_DAYS = 180;

/** What a bought food is on a plate, by its meals: what suits snacks is an extra at any meal. */
export function kindOfStaple({ meals, kcalPer100G }: Pick<Staple, 'meals' | 'kcalPer100G'>): LotKind {
  if (kcalPer100G > FAT_ABOVE_KCAL) return 'side';
  if (meals.includes('drink')) return 'drink';
  return meals.includes('snack') ? 'extra' : 'main';
}

function waterKindOf({ meals }: Staple, kind: LotKind): WaterKind {
  if (kind === 'drink') return 'hot';
  if (kind !== 'main') return 'none';
  return meals.includes('dinner') ? 'boiling' : meals.includes('breakfast') ? 'hot' : 'none';
}

/** Bought foods of the settings, in bags of one portion. */
export function stapleOffers({ staples }: Pick<Settings, 'staples'>, startDate: string): Offer[] {
  return staples.flatMap((staple): Offer[] => {
    const kind = kindOfStaple(staple);
    if (kind === 'side') return [];
    const portionG = staple.portionG ?? USUAL_PORTION_G[kind];
    const waterKind = waterKindOf(staple, kind);
    const packetG = staple.packetG ?? USUAL_PACKET_G[kind];
    const { packetCostMinor } = staple;
    const guess = { from: 'rule of thumb' } as const;
    return [
      {
        way: 'buy',
        packetG,
        lot: {
          code: '+',
          recipe: staple.name,
          mealKinds: kind === 'extra' ? ['snack'] : kind === 'drink' ? ['drink'] : staple.meals,
          kind,
          sealedOn: startDate,
          bestBefore: addDays(startDate, KEEPS_DAYS),
          pouches: 0,
          servingsPerPouch: 1,
          dryWeightG: portionG,
          energyKcal: (portionG * staple.kcalPer100G) / 100,
          waterMl: waterKind === 'none' ? 0 : Math.round(portionG * WATER_ML_PER_G),
          waterKind,
          steepMin: waterKind === 'none' || kind === 'drink' ? 0 : STEEP_MIN,
          tareG: BAG_G,
          allergens: staple.allergens,
          diets: staple.diets,
          bought: true,
          ...(packetCostMinor !== undefined && {
            costMinor: Math.round((packetCostMinor * portionG) / packetG),
          }),
          pouchTakesBoilingWater: false,
          eatFromPouch: kind === 'extra',
          estimated: {
            sealedOn: guess,
            bestBefore: guess,
            energyKcal: guess,
            tareG: guess,
            ...(waterKind !== 'none' && { waterMl: guess, waterKind: guess, steepMin: guess }),
          },
          note: '',
        },
      },
    ];
  });
}

/** Dishes that the shelf has or had, to be dried once more: each recipe as its newest lot. */
export function shelfOffers(stock: Stock, planned: readonly PlannedLot[], startDate: string): Offer[] {
  const plannedCodes = new Set(planned.map(({ lot }) => lot.code));
  const newest = new Map<string, PouchLot>();
  for (const lot of stock) {
    const known = newest.get(lot.recipe);
    if (lot.energyKcal > 0 && !plannedCodes.has(lot.code) && (!known || lot.sealedOn > known.sealedOn))
      newest.set(lot.recipe, lot);
  }
  return [...newest.values()].map((lot): Offer => {
    const { place: _place, ...rest } = lot;
    const keepsDays = Math.max(1, (Date.parse(lot.bestBefore) - Date.parse(lot.sealedOn)) / 86_400_000);
    return {
      way: 'dry',
      lot: {
        ...rest,
        code: '+',
        pouches: 0,
        sealedOn: startDate,
        bestBefore: addDays(startDate, keepsDays),
        note: '',
      },
    };
  });
}

/** Foods that are planned already, more of the same. */
export const plannedOffers = (planned: readonly PlannedLot[]): Offer[] =>
  planned.map((own) => ({ ...own, lot: { ...own.lot, pouches: 0 } }));

/** Whether two planned lots are of the same food. */
export const isSameFood = (a: PlannedLot, b: PlannedLot): boolean =>
  a.way === b.way && a.lot.recipe === b.lot.recipe && a.lot.servingsPerPouch === b.lot.servingsPerPouch;

/** Whether a food can fill a gap at a meal: a main dish a main meal, an extra or a drink what is planned for these. */
export function fillsMeal({ lot }: Offer, meal: MealKind): boolean {
  const kind = kindOf(lot);
  if ((MAIN_MEALS as readonly MealKind[]).includes(meal))
    return kind === 'main' && lot.mealKinds.includes(meal);
  if (kind === 'main') return meal === 'snack' && lot.waterKind === 'none' && lot.mealKinds.includes('snack');
  return lot.mealKinds.includes(meal) && kind !== 'side';
}

/** Energy of a piece, spoonful or half serving of an extra, kcal. */
export const unitKcal = ({ lot }: Offer): number => (lot.energyKcal * lot.servingsPerPouch) / unitsOf(lot);
