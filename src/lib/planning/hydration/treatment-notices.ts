import { notice, type Notice } from '../model/notices.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import { NIGHT_COLDER_C } from './night.ts';

/** What has to be said about how water is made safe: none at all, or a filter in frost, which breaks its fibres unseen. */
export function treatmentNotices({ treatment, days }: ResolvedTrip, treatMl: number): Notice[] {
  if (treatMl <= 0) return [];
  if (treatment === 'none') return [notice('water-not-treated', {})];
  if (treatment !== 'filter') return [];
  const coldest = days.reduce((cold, day) => (day.airTemperatureC < cold.airTemperatureC ? day : cold));
  const nightC = coldest.airTemperatureC - NIGHT_COLDER_C;
  return nightC < 0 ? [notice('filter-may-freeze', { nightC }, { day: coldest.day })] : [];
}
