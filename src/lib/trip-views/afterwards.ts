import type { Stock } from '../planning/model/pouch-lot.ts';
import { hasOwnFigure } from '../planning/model/resolve-trip.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import type { TrailNote } from '../planning/model/trail-note.ts';
import { isVerdict, type Verdict } from '../planning/model/words.ts';
import { knownLegs } from '../planning/route/trip-legs.ts';
import { say } from '../texts/say.ts';

type PouchCount = { readonly code: string; readonly pouches: number };

/** One lot that a trip packed, and where its pouches went. */
export type LotAfterwards = {
  readonly code: string;
  readonly recipe: string;
  readonly packed: number;
  readonly eaten: number;
  readonly broughtBack: number;
  /** In the packs still, as far as anybody noted. */
  readonly left: number;
  /** Servings noted on the trail as left over. */
  readonly leftOverNoted: number;
};

/** One dish of the packed lots, and what was noted of it on the trail. */
export type DishAfterwards = {
  readonly name: string;
  /** The kitchen has the recipe, so that a finding becomes a note on it. */
  readonly isKnown: boolean;
  readonly takesWater: boolean;
  /** Who was to eat of it. */
  readonly eaters: readonly string[];
  readonly noted: readonly Verdict[];
};

/** What can be said of a trip that came home: of whom, of which dish, container and day. */
export type AfterwardsSubjects = {
  readonly lots: readonly LotAfterwards[];
  /** `hasOwnFigure`: the target was entered, so the answer teaches nothing about the usual one. */
  readonly eaters: readonly { readonly name: string; readonly hasOwnFigure: boolean }[];
  readonly dishes: readonly DishAfterwards[];
  readonly containers: readonly {
    readonly label: string;
    readonly tareG: number;
    readonly beforeG: number;
  }[];
  /** `teaches`: the way of the day is known, so that the hours say something about the pace. */
  readonly days: readonly { readonly date: string; readonly plannedH: number; readonly teaches: boolean }[];
};

export function afterwardsSubjects(
  {
    trip,
    reserved,
    eaten,
    broughtBack,
  }: {
    readonly trip: Trip;
    readonly reserved: readonly PouchCount[];
    readonly eaten: readonly PouchCount[];
    readonly broughtBack: readonly PouchCount[];
  },
  plan: TripPlan,
  stock: Stock,
  notes: readonly Pick<TrailNote, 'code' | 'kind' | 'servings'>[],
  recipesOfKitchen: ReadonlySet<string>,
): AfterwardsSubjects {
  const counts = [reserved, eaten, broughtBack].map(
    (list) => new Map(list.map(({ code, pouches }) => [code, pouches])),
  );
  const [left, gone, home] = counts;
  const codes = [...new Set(counts.flatMap((list) => [...list.keys()]))].sort();
  const ofCode = new Map(stock.map((lot) => [lot.code, lot]));
  const lots = codes.map((code): LotAfterwards => {
    const [inPacks, wasEaten, cameHome] = [left?.get(code) ?? 0, gone?.get(code) ?? 0, home?.get(code) ?? 0];
    return {
      code,
      recipe: ofCode.get(code)?.recipe ?? '',
      packed: inPacks + wasEaten + cameHome,
      eaten: wasEaten,
      broughtBack: cameHome,
      left: inPacks,
      leftOverNoted: notes
        .filter((note) => note.code === code && note.kind === 'left over')
        .reduce((sum, { servings = 0 }) => sum + servings, 0),
    };
  });
  const everybody = trip.party.map(({ name }) => name);
  const plates = plan.menu.meals.flatMap(({ portions }) => portions);
  const dishes = [...Map.groupBy(lots, ({ recipe }) => recipe)]
    .filter(([name]) => name !== '')
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, ofDish]): DishAfterwards => {
      const isOfDish = ({ code }: { readonly code: string }) => ofDish.some((lot) => lot.code === code);
      const ate = new Set(plates.filter(isOfDish).map(({ eater }) => eater));
      return {
        name,
        isKnown: recipesOfKitchen.has(name),
        takesWater: ofDish.some(({ code }) => ofCode.get(code)?.waterKind !== 'none'),
        eaters: ate.size > 0 ? everybody.filter((eater) => ate.has(eater)) : everybody,
        noted: notes.filter(isOfDish).flatMap(({ kind }) => (isVerdict(kind) ? [kind] : [])),
      };
    });
  const legs = knownLegs(trip);
  return {
    lots,
    eaters: trip.party.map((eater) => ({ name: eater.name, hasOwnFigure: hasOwnFigure(eater, trip) })),
    dishes,
    containers: plan.fuel.containers.flatMap(({ label, count, netG, tareG }) =>
      Array.from({ length: count }, (_, index) => ({
        label:
          count > 1 ? say('{container}, number {number}', { container: label, number: index + 1 }) : label,
        tareG,
        beforeG: netG + tareG,
      })),
    ),
    days: plan.demand.map(({ date }, index) => ({
      date,
      plannedH: plan.legs[index]?.walkingH ?? 0,
      teaches: legs[index] !== undefined,
    })),
  };
}
