import { say, sayNumber } from '../../texts/say.ts';
import { shownExactly } from '../units/show.ts';

/** In an insulating cover the food stays hotter while it steeps, so that of the extra time at altitude about half is needed (common practice). */
export const INSULATED_SHARE = 0.5;

/**
 * How much longer food steeps when the water boils below 100 °C.
 *
 * Taking up water and softening go about twice as slowly for each 10 °C less (common practice, from the rule of thumb that a reaction's
 * rate doubles for 10 °C; published factors for foods lie between 1.5 and 3). Water that boils above 100 °C shortens nothing here.
 *
 * @param boilsAtC boiling point at the stove, °C
 * @param insulated whether the pouch steeps in an insulating cover
 * @returns factor on the steep time at sea level, at least 1
 */
export function steepFactor(boilsAtC: number, insulated = false): number {
  const extra = 2 ** (Math.max(0, 100 - boilsAtC) / 10) - 1;
  return 1 + extra * (insulated ? INSULATED_SHARE : 1);
}

/** The shortest wait before or after stirring, min. */
const LEAST_WAIT_MIN = 0.5;

/** @returns waiting time in whole minutes; the factor is too rough for more */
export function steepAtAltitudeMin(steepSeaLevelMin: number, boilsAtC: number, insulated = false): number {
  return Math.round(steepSeaLevelMin * steepFactor(boilsAtC, insulated));
}

/**
 * @param steepMin waiting time at this altitude, in whole minutes
 * @returns after which part of it to stir: in whole minutes, but within it, half a minute from either end; `undefined` where there is no wait
 */
export function stirAtAltitudeMin(
  stirSeaLevelMin: number,
  steepMin: number,
  boilsAtC: number,
  insulated = false,
): number | undefined {
  if (steepMin < 2 * LEAST_WAIT_MIN) return undefined;
  const stirMin = steepAtAltitudeMin(stirSeaLevelMin, boilsAtC, insulated);
  return Math.min(Math.max(stirMin, LEAST_WAIT_MIN), steepMin - LEAST_WAIT_MIN);
}

/**
 * The waiting time as the person with the watch needs it, without a full stop: "wait 7 min, stir, wait 6 min more (9 min in all at sea level)".
 *
 * @returns '' where there is no wait
 */
export function waitText({
  steepMin,
  steepSeaLevelMin = steepMin,
  stirAfterMin,
}: {
  readonly steepMin: number;
  readonly steepSeaLevelMin?: number;
  readonly stirAfterMin?: number | undefined;
}): string {
  if (steepMin === 0) return '';
  const minutes = (value: number) => sayNumber(value, { maximumFractionDigits: 1, useGrouping: false });
  const seaLevel = shownExactly(steepSeaLevelMin);
  const longer = steepMin > steepSeaLevelMin;
  if (stirAfterMin === undefined) {
    const wait = minutes(steepMin);
    return longer
      ? say('wait {wait} min ({seaLevel} at sea level)', { wait, seaLevel })
      : say('wait {wait} min', { wait });
  }
  const waits = { first: minutes(stirAfterMin), rest: minutes(steepMin - stirAfterMin) };
  return longer
    ? say('wait {first} min, stir, wait {rest} min more ({seaLevel} min in all at sea level)', {
        ...waits,
        seaLevel: minutes(steepSeaLevelMin),
      })
    : say('wait {first} min, stir, wait {rest} min more', waits);
}
