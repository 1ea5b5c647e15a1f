import { type DayLeg, legOver } from './day-legs.ts';
import { RouteError } from './route-error.ts';
import type { Pace } from '../model/resolve-trip.ts';

/** A day's walk as a person types it. */
export type TypedLeg = {
  readonly distanceM: number;
  readonly climbM: number;
  readonly descentM: number;
  readonly highestM?: number | undefined;
  readonly startAltitudeM?: number | undefined;
};

/** Steeper than this on the whole, the figures are mistyped: 45°. */
const STEEPEST = 1;

/**
 * The leg of typed figures. How climb and descent follow each other is not known: the leg climbs first and descends after, each over the share of the way that it has of the height,
 * so that both are equally steep. Where the altitude of the start is left out, it is taken from the highest point, else so that the leg touches sea level.
 *
 * @throws RouteError naming the day, where a figure is no height or distance, or the way is steeper than 45° on the whole
 */
export function legByHand(typed: TypedLeg, day: number, pace: Pace): DayLeg {
  const { distanceM, climbM, descentM, highestM } = typed;
  for (const [what, value] of Object.entries({ distance: distanceM, climb: climbM, descent: descentM }))
    if (!(value >= 0 && value <= 1e6))
      throw new RouteError(
        { code: 'leg-beyond-range', what: what as 'distance' | 'climb' | 'descent', valueM: value },
        { day },
      );
  const heightM = climbM + descentM;
  if (heightM > STEEPEST * distanceM)
    throw new RouteError({ code: 'leg-too-steep', heightM, distanceM }, { day });

  const startM =
    typed.startAltitudeM ?? (highestM !== undefined ? highestM - climbM : Math.max(0, descentM - climbM));
  const piece = [{ distanceM: 0, altitudeM: startM }];
  if (climbM > 0) piece.push({ distanceM: (distanceM * climbM) / heightM, altitudeM: startM + climbM });
  if (distanceM > 0 && (descentM > 0 || climbM === 0))
    piece.push({ distanceM, altitudeM: startM + climbM - descentM });
  const leg = legOver(piece, { day, pace });
  return highestM === undefined
    ? leg
    : { ...leg, highestM: Math.max(highestM, startM, startM + climbM - descentM) };
}
