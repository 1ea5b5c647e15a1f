import { notice, type Notice } from '../model/notices.ts';
import type { ResolvedTrip } from '../model/resolve-trip.ts';
import { standardPressurePa } from '../stove/standard-atmosphere.ts';

/** Pouches that swell by less look as at home (rule of thumb). */
const NOTICED_FROM = 1.25;

/** Air that is left in a pouch sealed at sea level takes more room the higher it is carried (Boyle's law). A puffed-up pouch is a sign of spoilage at home, and of height up here. */
export function swellingNotices({ days }: ResolvedTrip): Notice[] {
  const altitudeM = Math.max(...days.map((day) => day.campAltitudeM));
  const factor = standardPressurePa(0) / standardPressurePa(altitudeM);
  return factor >= NOTICED_FROM ? [notice('pouches-swell', { altitudeM, factor })] : [];
}
