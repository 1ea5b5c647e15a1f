import { notice, type Notice } from '../model/notices.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';

/**
 * Low risk of altitude illness for people who come from below 1200 m. Source: Wilderness Medical Society, practice guidelines 2019 and 2024 (Luks et al. 2024, Wilderness Environ Med
 * 35(1S):2S): the first night below 2800 m; above 3000 m each night at most 500 m higher than the one before, and a day without a gain for each 1000 m.
 */
export const ASCENT = { firstNightM: 2800, fromM: 3000, riseOfNightM: 500, riseToRestM: 1000 } as const;

/** What the nights of a trip ask for at altitude; nobody is known to be acclimatised. */
export function ascentNotices({ days, lastMeal }: ResolvedTrip): Notice[] {
  const nights = days.slice(0, lastMeal === 'dinner' ? days.length : -1);
  const [first] = nights;
  if (!first) return [];
  const notices: Notice[] = [];
  if (first.campAltitudeM > ASCENT.firstNightM)
    notices.push(notice('ascent-first-night-high', { altitudeM: first.campAltitudeM }, { day: first.day }));

  const rises = nights.slice(1).map((night, index) => ({
    day: night.day,
    altitudeM: night.campAltitudeM,
    riseM: night.campAltitudeM - (nights[index]?.campAltitudeM ?? 0),
  }));
  const fast = rises.filter(
    ({ altitudeM, riseM }) => altitudeM > ASCENT.fromM && riseM > ASCENT.riseOfNightM,
  );
  const steepest = fast.toSorted((a, b) => b.riseM - a.riseM)[0];
  if (steepest)
    notices.push(
      notice(
        'ascent-too-fast',
        { riseM: steepest.riseM, days: fast.map(({ day }) => day) },
        { day: steepest.day },
      ),
    );

  let restedAtM = Math.max(ASCENT.fromM, first.campAltitudeM);
  let restedOn = first.day;
  for (const { day, altitudeM, riseM } of rises) {
    if (riseM <= 0) {
      restedAtM = Math.max(ASCENT.fromM, altitudeM);
      restedOn = day;
    } else if (altitudeM - restedAtM > ASCENT.riseToRestM) {
      notices.push(
        notice('ascent-without-rest', { riseM: altitudeM - restedAtM, fromDay: restedOn }, { day }),
      );
      break;
    }
  }
  return notices;
}
