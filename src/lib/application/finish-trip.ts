import { observeTrip } from '../planning/afterwards/observe-trip.ts';
import type { Afterwards } from '../planning/model/afterwards.ts';
import type { Observation } from '../planning/model/observation.ts';
import type { PortionNote, WaterNote } from '../planning/model/recipe.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import type { Trip } from '../planning/model/trip.ts';
import { say } from '../texts/say.ts';

type Pouches = { readonly code: string; readonly pouches: number };

/** What becomes a note on the recipe of a dish, by the name of the recipe. */
export type DishNotes = {
  readonly water: ReadonlyMap<string, WaterNote>;
  readonly portion: ReadonlyMap<string, PortionNote>;
};

/** What finishing a trip needs of a house: its trip with its plan, and where all that comes of it is kept, in one change. */
export type FinishingStores<Finished> = {
  readonly planned: (tripId: string) => Promise<{
    readonly stored: {
      readonly trip: Trip;
      readonly reserved: readonly Pouches[];
      readonly eaten: readonly Pouches[];
    };
    readonly plan: TripPlan;
  }>;
  readonly finish: (learned: readonly Observation[], notes: DishNotes) => Promise<Finished>;
  readonly today: () => string;
};

/**
 * Finishes a packed trip: works out what it teaches from its plan, what came back and what was said of it.
 *
 * @param back pouches that came home unopened and are not on the shelf yet
 * @throws what the stores throw
 */
export async function finishTrip<Finished>(
  { planned, finish, today }: FinishingStores<Finished>,
  tripId: string,
  back: readonly Pouches[],
  said: Afterwards,
): Promise<Finished> {
  const { stored, plan } = await planned(tripId);
  const eaten = new Map(stored.eaten.map(({ code, pouches }) => [code, pouches]));
  const add = (code: string, pouches: number) => eaten.set(code, (eaten.get(code) ?? 0) + pouches);
  for (const { code, pouches } of stored.reserved) add(code, pouches);
  for (const { code, pouches } of back) add(code, -pouches);
  const date = today();
  const learned = observeTrip({ tripId, trip: stored.trip, plan, eaten, said, date });
  const note = { date, note: say('on the trip "{name}"', { name: stored.trip.name }), tripId };
  return finish(learned, {
    water: new Map(said.water.map(({ recipe, finding }) => [recipe, { ...note, finding }])),
    portion: new Map(said.portions.map(({ recipe, answer }) => [recipe, { ...note, finding: answer }])),
  });
}
