import type { StoredTrip } from '../../src/lib/server/trip-repository.ts';

/** Pouches by the code of their lot. */
type Pouches = Readonly<Record<string, number>>;

/** What should be known of a trip, reckoned without the ledger. `noted`: what notes of the trail said was eaten. */
export type TripModel = {
  readonly isFinished: boolean;
  readonly aside: Pouches;
  readonly packed: Pouches;
  readonly eaten: Pouches;
  readonly back: Pouches;
  readonly noted: Pouches;
};

export const NEW_TRIP: TripModel = {
  isFinished: false,
  aside: {},
  packed: {},
  eaten: {},
  back: {},
  noted: {},
};

export const add = (one: Pouches, other: Pouches, sign = 1): Pouches => {
  const sum: Record<string, number> = { ...one };
  for (const [code, pouches] of Object.entries(other)) sum[code] = (sum[code] ?? 0) + sign * pouches;
  return Object.fromEntries(Object.entries(sum).filter(([, pouches]) => pouches !== 0));
};
export const total = (pouches: Pouches): number => Object.values(pouches).reduce((sum, n) => sum + n, 0);

export const stageOf = ({ isFinished, packed, aside, eaten }: TripModel): StoredTrip['stage'] => {
  if (isFinished) return 'finished';
  if (total(packed) > 0) return 'packed';
  if (total(aside) > 0) return 'set aside';
  return total(eaten) > 0 ? 'packed' : 'open';
};

/** What came home of a packed trip, the rest being eaten; where nothing was eaten at all it was called off. */
export function afterBringingBack(trip: TripModel, brought: Pouches): TripModel {
  const isCalledOff =
    total(trip.eaten) === 0 && total(trip.back) === 0 && total(trip.packed) === total(brought);
  if (isCalledOff) return { ...trip, packed: {} };
  const eaten = add(trip.eaten, add(trip.packed, brought, -1));
  return { ...trip, isFinished: true, packed: {}, eaten, back: add(trip.back, brought) };
}

/** Opened again, what was not noted as eaten is in the packs. */
export function afterReopening(trip: TripModel): TripModel {
  const unsure = add(trip.eaten, trip.noted, -1);
  return { ...trip, isFinished: false, packed: unsure, eaten: trip.noted };
}

const counts = (lines: StoredTrip['reserved']): Pouches =>
  add({}, Object.fromEntries(lines.map(({ code, pouches }) => [code, pouches])));
const inOrder = (pouches: Pouches) =>
  Object.entries(pouches).sort(([one], [other]) => (one < other ? -1 : 1));

/** What a model says, and what is stored, in one form to compare. */
export const said = (trip: TripModel): string =>
  JSON.stringify([stageOf(trip), ...[add(trip.aside, trip.packed), trip.eaten, trip.back].map(inOrder)]);
export const stored = ({ stage, reserved, eaten, broughtBack }: StoredTrip): string =>
  JSON.stringify([stage, ...[reserved, eaten, broughtBack].map(counts).map(inOrder)]);
