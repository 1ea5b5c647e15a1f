import type { LegSummary } from '../planning/model/trip-plan.ts';
import type { Route } from '../planning/model/route.ts';
import { show, type UnitSystem } from '../presentation/show.ts';
import { say } from '../texts/say.ts';

/** A day's way as the table shows it. Heights are missing where nobody knows them. */
export type LegRow = {
  readonly day: number;
  readonly from: string;
  readonly to: string;
  readonly distanceM: number;
  readonly climbM: number | undefined;
  readonly descentM: number | undefined;
  readonly highestM: number | undefined;
  readonly walkingH: number;
  readonly sources: readonly string[];
  readonly basis: LegSummary['basis'];
};
/** Of the whole way; heights as far as they are known. */
export type LegTotals = Pick<LegRow, 'distanceM' | 'climbM' | 'descentM' | 'highestM' | 'walkingH'>;

/** The way of each day, its ends named by the waypoint chosen or by how far along they lie. */
export function legRows(
  legs: readonly LegSummary[],
  route: Route | undefined,
  system: UnitSystem,
): { rows: LegRow[]; totals: LegTotals } {
  const endOf = (leg: LegSummary, index: number): string =>
    leg.endsAt ??
    (index === legs.length - 1 ? say('the end') : show(leg.fromM + leg.distanceM, 'distance', system));
  const rows = legs.map((leg, index): LegRow => {
    const before = legs[index - 1];
    const heightKnown = leg.basis === 'by hand' || (leg.basis === 'route' && Boolean(route?.altitudeKnown));
    return {
      day: leg.day,
      from: before ? endOf(before, index - 1) : say('the start'),
      to: endOf(leg, index),
      distanceM: leg.distanceM,
      climbM: heightKnown ? leg.climbM : undefined,
      descentM: heightKnown ? leg.descentM : undefined,
      highestM: heightKnown && leg.basis === 'route' ? leg.highestM : undefined,
      walkingH: leg.walkingH,
      sources: leg.sources.map(({ name, atM }) => `${name} (${show(atM, 'distance', system)})`),
      basis: leg.basis,
    };
  });
  return {
    rows,
    totals: {
      distanceM: sum(rows.map(({ distanceM }) => distanceM)) ?? 0,
      climbM: sum(rows.map(({ climbM }) => climbM)),
      descentM: sum(rows.map(({ descentM }) => descentM)),
      highestM: known(rows.map(({ highestM }) => highestM)).reduce<number | undefined>(
        (highest, m) => Math.max(highest ?? m, m),
        undefined,
      ),
      walkingH: sum(rows.map(({ walkingH }) => walkingH)) ?? 0,
    },
  };
}

const known = (values: readonly (number | undefined)[]): number[] =>
  values.filter((value) => value !== undefined);

/** @returns the sum of what is known; `undefined` where nothing is. */
function sum(values: readonly (number | undefined)[]): number | undefined {
  const given = known(values);
  return given.length > 0 ? given.reduce((total, value) => total + value, 0) : undefined;
}
