import { meaningOf } from '../model/day-kinds.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import type { DayWater } from '../model/trip-plan.ts';
import { NIGHT_COLDER_C } from './night.ts';

/** What has to be said about how water is made safe: none at all, a filter in frost, which breaks its fibres unseen, or a boil on a day without a stove. */
export function treatmentNotices(
  trip: ResolvedTrip,
  water: readonly Pick<DayWater, 'day' | 'treatMl' | 'meltMl'>[],
): Notice[] {
  return [...treatmentNotice(trip, water), ...stovelessNotices(trip, water)];
}

function treatmentNotice(
  { treatment, days }: ResolvedTrip,
  water: readonly Pick<DayWater, 'treatMl'>[],
): Notice[] {
  if (water.every(({ treatMl }) => treatMl <= 0)) return [];
  if (treatment === 'none') return [notice('water-not-treated', {})];
  if (treatment !== 'filter') return [];
  const coldest = days.reduce((cold, day) => (day.airTemperatureC < cold.airTemperatureC ? day : cold));
  const nightC = coldest.airTemperatureC - NIGHT_COLDER_C;
  return nightC < 0 ? [notice('filter-may-freeze', { nightC }, { day: coldest.day })] : [];
}

/** Days whose stove stays cold, although water is to be boiled or snow to be melted on them. */
function stovelessNotices(
  { treatment, days }: ResolvedTrip,
  water: readonly Pick<DayWater, 'day' | 'treatMl' | 'meltMl'>[],
): Notice[] {
  return water.flatMap(({ day, treatMl, meltMl }) => {
    const boils = treatment === 'boil' && treatMl > 0;
    const melts = meltMl > 0;
    return meaningOf(days[day - 1]?.kind).stove || !(boils || melts)
      ? []
      : [notice('water-without-stove', { boils, melts }, { day })];
  });
}
