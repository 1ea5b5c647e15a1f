import { aboutWhere, type Estimated } from './about.ts';
import { shownExactly } from './show.ts';
import { say, sayNumber } from '../texts/say.ts';

/**
 * The waiting time as the person with the watch needs it, without a full stop: "wait 7 min, stir, wait 6 min more (9 min in all at sea level)".
 *
 * @returns '' where there is no wait
 */
export function waitText({
  steepMin,
  steepSeaLevelMin = steepMin,
  stirAfterMin,
  estimated,
}: {
  readonly steepMin: number;
  readonly steepSeaLevelMin?: number;
  readonly stirAfterMin?: number | undefined;
  readonly estimated?: Estimated | undefined;
}): string {
  if (steepMin === 0) return '';
  const minutes = (value: number) => sayNumber(value, { maximumFractionDigits: 1, useGrouping: false });
  const seaLevel = shownExactly(steepSeaLevelMin);
  const longer = steepMin > steepSeaLevelMin;
  if (stirAfterMin === undefined) {
    const wait = aboutWhere({ estimated }, 'steepMin', minutes(steepMin));
    return longer
      ? say('wait {wait} min ({seaLevel} at sea level)', { wait, seaLevel })
      : say('wait {wait} min', { wait });
  }
  const waits = { first: minutes(stirAfterMin), rest: minutes(steepMin - stirAfterMin) };
  return longer
    ? say('wait {first} min, stir, wait {rest} min more ({seaLevel} min total at sea level)', {
        ...waits,
        seaLevel: minutes(steepSeaLevelMin),
      })
    : say('wait {first} min, stir, wait {rest} min more', waits);
}
