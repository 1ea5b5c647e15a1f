import { allPacks } from '../carry/all-packs.ts';
import { waterInto } from '../hydration/plan-water.ts';
import { exclusionsOf, mayEat } from '../menu/exclusions.ts';
import { canBeOwnPouch, OWN_POUCH_BELOW_SERVINGS } from '../menu/lot-rules.ts';
import { estimatedOf } from '../model/lot-estimate.ts';
import type { PouchLot, Stock } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type {
  CarryPlan,
  CardMeal,
  CardPouches,
  FuelPlan,
  MenuMeal,
  MenuPlan,
  TrailCard,
  WaterPlan,
} from '../model/trip-plan.ts';
import { boilingPointC } from '../stove/boiling-point.ts';
import { stoveStopOf } from '../stove/stove-stop.ts';
import { steepAtAltitudeMin, stirAtAltitudeMin } from './steep-time.ts';

/** Below this boiling point waiting times grow enough to be said, °C. */
const NEARLY_100_C = 99;

/** What a card is made of. */
type Cooked = {
  readonly trip: ResolvedTrip;
  readonly lots: ReadonlyMap<string, PouchLot>;
  readonly carry: CarryPlan;
  readonly fuel: FuelPlan;
  readonly settings: Settings;
};

/** The trail card as data: what the person at the stove of each cook group does with each pouch, meal by meal. */
export function makeCard(
  trip: ResolvedTrip,
  menu: MenuPlan,
  stock: Stock,
  carry: CarryPlan,
  water: WaterPlan,
  fuel: FuelPlan,
  settings: Settings,
): TrailCard {
  const cooked = { trip, lots: new Map(stock.map((lot) => [lot.code, lot])), carry, fuel, settings };
  const first = trip.days[0];
  const last = trip.days.at(-1);
  if (!first || !last) throw new RangeError('a trip has at least one day');
  const hasFood = ({ opened, fromOpen }: MenuMeal) => opened.length + fromOpen.length > 0;
  return {
    title: trip.name,
    startDate: first.date,
    endDate: last.date,
    party: trip.party.map((eater) => ({ eater: eater.name, excludes: exclusionsOf(eater) })),
    groups: menu.groups,
    days: trip.days.map((day, index) => {
      const heat = water.days[index]?.heat;
      if (!heat) throw new RangeError(`no heat for day ${day.day}`);
      const boilsAtC = boilingPointC(day.campAltitudeM);
      return {
        day: day.day,
        date: day.date,
        altitudeM: day.campAltitudeM,
        boilsAtC,
        longerSteep: boilsAtC < NEARLY_100_C,
        dryCamp: day.campWater === 'dry',
        heat,
        meals: menu.meals
          .filter((meal) => meal.day === day.day && hasFood(meal))
          .map((meal) => cardMeal(cooked, meal)),
        elsewhere: menu.meals
          .filter((meal) => meal.day === day.day && meal.elsewhere.length > 0)
          .map(({ meal, group, elsewhere }) => ({ meal, group, eaters: elsewhere })),
      };
    }),
    reserve: menu.reserve.map(({ code, recipe, pouches }) => ({
      code,
      recipe,
      pouches,
      carriedBy: carry.packs.flatMap((pack) =>
        pack.reserve
          .filter((item) => item.code === code)
          .map((item) => ({ eater: pack.eater, pouches: item.pouches })),
      ),
    })),
    withdrawn: [...trip.withdrawn],
  };
}

function cardMeal(cooked: Cooked, meal: MenuMeal): CardMeal {
  const { trip, fuel } = cooked;
  const poured = (kind: 'boiling' | 'hot') =>
    waterInto(meal)
      .filter((lot) => lot.waterKind === kind)
      .reduce((sum, lot) => sum + lot.waterMl, 0);
  const boils = fuel.boils.filter(
    (boil) => boil.day === meal.day && boil.meal === meal.meal && boil.group === meal.group,
  );
  const firstFor = avoidersFirst(cooked, meal);
  const isTheirs = ({ shares }: CardPouches) =>
    shares.length > 0 && shares.every(({ eater }) => firstFor.includes(eater));
  const lines = [
    ...meal.opened.map((row) => openedLine(cooked, meal, row)),
    ...[...Map.groupBy(meal.fromOpen, ({ code }) => code)].flatMap(([code, rows]) =>
      openLine(cooked, meal, code, rows),
    ),
  ];
  const party = trip.party.map(({ name }) => name);
  const inOrder = (line: CardPouches) => ({
    ...line,
    shares: [...line.shares].sort((a, b) => party.indexOf(a.eater) - party.indexOf(b.eater)),
  });
  return {
    meal: meal.meal,
    group: meal.group,
    boilMl: poured('boiling'),
    heatMl: poured('hot'),
    potfuls: boils.reduce((sum, boil) => sum + boil.potfuls, 0),
    fuelG: boils.reduce((sum, boil) => sum + boil.fuelG, 0),
    pouches: [...lines.filter(isTheirs), ...lines.filter((line) => !isTheirs(line))].map(inOrder),
    firstFor,
  };
}

/** Where one pot cooks two dishes in turn: those whose dish goes first, since they must not eat the other. */
function avoidersFirst({ trip, lots }: Cooked, meal: MenuMeal): string[] {
  const inPot = meal.opened.filter(({ style, role }) => style === 'shared pot' && role !== 'extra');
  return trip.party
    .filter((eater) => {
      const own = meal.portions.filter(({ eater: name }) => name === eater.name).map(({ code }) => code);
      const eatsFromPot = inPot.some(({ code }) => own.includes(code));
      const avoids = inPot.some(({ code }) => {
        const lot = lots.get(code);
        return lot !== undefined && !mayEat(lot, eater);
      });
      return eatsFromPot && avoids;
    })
    .map(({ name }) => name);
}

/** What stands on the card of a lot whatever became of its pouches. */
function lineOf(
  { trip, lots, settings }: Cooked,
  meal: MenuMeal,
  row: Pick<MenuMeal['fromOpen'][number], 'code' | 'recipe' | 'role' | 'waterKind'>,
  style: CardPouches['style'],
) {
  const lot = lots.get(row.code);
  if (!lot) throw new RangeError(`the menu opens lot ${row.code}, which is not in the stock`);
  const boilsAtC = boilingPointC(stoveStopOf(trip, meal.day, meal.meal).campAltitudeM);
  const stretched = row.waterKind === 'boiling';
  const steepMin = stretched
    ? steepAtAltitudeMin(lot.steepMin, boilsAtC, settings.insulatedSteep, lot.cookAfter)
    : lot.steepMin;
  const stirAfterMin =
    stretched && lot.stirAfterMin !== undefined
      ? stirAtAltitudeMin(lot.stirAfterMin, steepMin, boilsAtC, settings.insulatedSteep, lot.cookAfter)
      : lot.stirAfterMin;
  const takesWater = row.waterKind !== 'none';
  return {
    lot,
    line: {
      code: row.code,
      recipe: row.recipe,
      role: row.role,
      style,
      waterKind: row.waterKind,
      steepMin,
      steepSeaLevelMin: lot.steepMin,
      ...(stirAfterMin !== undefined && { stirAfterMin }),
      ...estimatedOf(lot),
      ...(lot.allergens && { allergens: lot.allergens }),
      ...(lot.cookAfter && { cookAfter: lot.cookAfter }),
      pourIntoPot: takesWater && !canBeOwnPouch(lot),
    },
  };
}

const servingsOf = (
  rows: readonly { readonly code: string; readonly servings: number }[],
  code: string,
): number => rows.reduce((sum, row) => sum + (row.code === code ? row.servings : 0), 0);

function openedLine(cooked: Cooked, meal: MenuMeal, opened: MenuMeal['opened'][number]): CardPouches {
  const { lot, line } = lineOf(cooked, meal, opened, opened.style);
  const isSmall = lot.servingsPerPouch < OWN_POUCH_BELOW_SERVINGS;
  const byPouch = opened.style === 'own pouch' && opened.role === 'main' && isSmall;
  const shares = meal.portions.filter(
    (portion) => portion.code === opened.code && portion.style === opened.style,
  );
  const before = meal.fromOpen.filter(({ code }) => code === opened.code);
  return {
    ...line,
    pouches: opened.pouches,
    ...(before.length > 0 && { openSinceDay: Math.min(...before.map(({ sinceDay }) => sinceDay)) }),
    waterMl: before.reduce((sum, row) => sum + row.waterMl, opened.waterMl),
    waterMlPerPouch: opened.waterMl / opened.pouches,
    carriedBy: carriersOf(cooked, meal, opened),
    shares: shares.map(({ eater, servings, pieces, energyKcal }) => ({
      eater,
      servings,
      ...(pieces !== undefined && { pieces }),
      ...(byPouch && { pouches: servings / lot.servingsPerPouch }),
      energyKcal,
    })),
    staysOpenServings: servingsOf(meal.staysOpen, opened.code),
    leftOverServings: servingsOf(meal.leftOver, opened.code),
  };
}

/** Who carries the pouches of a line. Of a lot with two lines at a meal, the first one takes the first pouches. */
function carriersOf(
  { carry }: Cooked,
  meal: MenuMeal,
  opened: MenuMeal['opened'][number],
): CardPouches['carriedBy'] {
  const same = meal.opened.filter(({ code }) => code === opened.code);
  let before = same.slice(0, same.indexOf(opened)).reduce((sum, { pouches }) => sum + pouches, 0);
  let wanted = opened.pouches;
  return allPacks(carry).flatMap(({ eater, pouches: items }) =>
    items
      .filter(
        (item) =>
          item.code === opened.code &&
          item.day === meal.day &&
          item.meal === meal.meal &&
          item.group === meal.group,
      )
      .flatMap((item) => {
        const skipped = Math.min(before, item.pouches);
        const pouches = Math.min(wanted, item.pouches - skipped);
        before -= skipped;
        wanted -= pouches;
        return pouches > 0 ? [{ eater, pouches }] : [];
      }),
  );
}

/** A line for food from a pouch that was opened before; none where a pouch is opened too, which then stands for both. */
function openLine(
  cooked: Cooked,
  meal: MenuMeal,
  code: string,
  rows: readonly MenuMeal['fromOpen'][number][],
): CardPouches[] {
  const [first] = rows;
  if (!first || meal.opened.some((opened) => opened.code === code)) return [];
  const { line } = lineOf(cooked, meal, first, 'own pouch');
  const waterMl = rows.reduce((sum, row) => sum + row.waterMl, 0);
  const servings = rows.reduce((sum, row) => sum + row.servings, 0);
  return [
    {
      ...line,
      pouches: 0,
      openSinceDay: Math.min(...rows.map(({ sinceDay }) => sinceDay)),
      waterMl,
      waterMlPerPouch: servings > 0 ? waterMl / servings : 0,
      carriedBy: allPacks(cooked.carry).flatMap((pack) =>
        pack.pouches
          .filter(
            (item) =>
              item.code === code &&
              item.group === meal.group &&
              rows.some(({ sinceDay }) => sinceDay === item.day),
          )
          .map((item) => ({ eater: pack.eater, pouches: item.pouches })),
      ),
      shares: meal.portions
        .filter((portion) => portion.code === code)
        .map(({ eater, servings: own, pieces, energyKcal }) => ({
          eater,
          servings: own,
          ...(pieces !== undefined && { pieces }),
          energyKcal,
        })),
      staysOpenServings: servingsOf(meal.staysOpen, code),
      leftOverServings: servingsOf(meal.leftOver, code),
    },
  ];
}
