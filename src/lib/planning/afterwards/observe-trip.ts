import type { Afterwards } from '../model/afterwards.ts';
import type { Observation } from '../model/observation.ts';
import { hasOwnFigure } from '../model/resolve-trip.ts';
import type { TripPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import { knownLegs } from '../route/trip-legs.ts';

export type FinishedTrip = {
  readonly tripId: string;
  readonly trip: Trip;
  /** As the trip was planned, with the settings that it was planned with. */
  readonly plan: TripPlan;
  /** Pouches eaten, by code. */
  readonly eaten: ReadonlyMap<string, number>;
  readonly said: Afterwards;
  /** When it was said, ISO 8601. */
  readonly date: string;
};

/** What a finished trip teaches: how each appetite was met, which dishes were liked, the fuel burnt beside the fuel planned, the hours walked beside those of the method. */
export function observeTrip({ tripId, trip, plan, eaten, said, date }: FinishedTrip): Observation[] {
  const of = { tripId, trip: trip.name, date };
  const appetites = said.appetites.map(({ eater, answer }): Observation => {
    const entered = trip.party.find(({ name }) => name === eater);
    const ofOwnFigure = entered !== undefined && hasOwnFigure(entered, trip);
    return { kind: 'appetite', ...of, eater, answer, ofOwnFigure };
  });

  const burntG = said.fuel.reduce((sum, { beforeG, afterG }) => sum + beforeG - afterG, 0);
  const plannedG = fuelForG(plan, eaten);
  const { fuel, efficiency } = plan.fuel;
  const weighed: Observation[] =
    burntG > 0 && plannedG > 0 ? [{ kind: 'fuel', ...of, fuel, efficiency, plannedG, burntG }] : [];

  const { plannedH, walkedH } = timedHours(trip, said.walkedH);
  const timed: Observation[] =
    walkedH > 0 && plannedH > 0 ? [{ kind: 'pace', ...of, plannedH, walkedH }] : [];
  const tastes = said.tastes.map(({ recipe, eater, answer }): Observation => ({
    kind: 'taste',
    ...of,
    eater,
    dish: recipe,
    answer,
  }));
  return [...appetites, ...tastes, ...weighed, ...timed];
}

/** Fuel that the plan burns for what was eaten of it, g: the meals by the heated water of their pouches that were eaten, all other water in full. */
export function fuelForG(plan: TripPlan, eaten: ReadonlyMap<string, number>): number {
  const heated = plan.menu.meals
    .flatMap(({ opened }) => opened)
    .filter(({ waterKind }) => waterKind === 'boiling' || waterKind === 'hot');
  const planned = new Map<string, { pouches: number; waterMl: number }>();
  for (const { code, pouches, waterMl } of heated) {
    const lot = planned.get(code) ?? { pouches: 0, waterMl: 0 };
    planned.set(code, { pouches: lot.pouches + pouches, waterMl: lot.waterMl + waterMl });
  }
  const lots = [...planned];
  const plannedMl = lots.reduce((sum, [, { waterMl }]) => sum + waterMl, 0);
  const eatenMl = lots.reduce(
    (sum, [code, { pouches, waterMl }]) => sum + (waterMl * (eaten.get(code) ?? 0)) / pouches,
    0,
  );
  const share = plannedMl > 0 ? eatenMl / plannedMl : 0;
  return plan.fuel.boils.reduce(
    (sum, { purpose, fuelG }) => sum + (purpose === 'meal' ? fuelG * share : fuelG),
    0,
  );
}

/** Hours of the method at a party factor of 1 beside the hours walked, of the days that have both. */
function timedHours(trip: Trip, walkedH: Afterwards['walkedH']): { plannedH: number; walkedH: number } {
  const legs = knownLegs({ ...trip, pace: { ...trip.pace, partyFactor: 1 } });
  const days = legs.flatMap((leg, index) => {
    const walked = walkedH[index] ?? null;
    return leg && leg.walkingH > 0 && walked !== null ? [{ planned: leg.walkingH, walked }] : [];
  });
  return {
    plannedH: days.reduce((sum, { planned }) => sum + planned, 0),
    walkedH: days.reduce((sum, { walked }) => sum + walked, 0),
  };
}
