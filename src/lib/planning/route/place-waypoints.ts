import type { RouteWaypoint } from '../model/route.ts';
import { earthCentred } from './geodesic.ts';
import { guessWater } from './guess-water.ts';
import type { Path } from './path.ts';
import { plainName, type GpxWaypoint, type NameOf } from './read-gpx.ts';
import type { RouteRemark } from './route-faults.ts';

/** A waypoint farther off the route than this is not on it. */
const OFF_ROUTE_M = 500;
/** A way that leaves a waypoint for longer than this and comes back within such a distance passes it again (common practice). */
const PASS_M = 100;
const AWAY_M = 2000;
/** Most waypoints of a route, as the model has it, and most of a file that are looked at. */
const MOST_WAYPOINTS = 400;
const MOST_LOOKED_AT = 2000;

type Place = { readonly alongM: number; readonly offM: number };

/**
 * Puts waypoints on the route, each at its nearest point. A route that comes by again passes the waypoint again, so that a spring on the way there is one on the way back too.
 *
 * @param lengthM of the profile: nothing is placed beyond it
 * @param nameOf names waypoints without a name
 * @returns `left`: the waypoints that were left out, with the reason
 */
export function placeWaypoints(
  path: Path,
  waypoints: readonly GpxWaypoint[],
  lengthM: number,
  nameOf: NameOf = plainName,
): { waypoints: RouteWaypoint[]; left: RouteRemark[] } {
  const left: RouteRemark[] = [];
  const placed = waypoints.slice(0, MOST_LOOKED_AT).flatMap((waypoint, index) => {
    const name = waypoint.name || nameOf('waypoint', index + 1);
    const passes = passesOf(path, waypoint);
    const offM = Math.min(...passes.map((pass) => pass.offM));
    if (offM > OFF_ROUTE_M) {
      left.push({ code: 'waypoint-off-route', name, offM, mostM: OFF_ROUTE_M });
      return [];
    }
    const guess = guessWater(waypoint.name, waypoint.symbol, waypoint.type);
    return passes.map(({ alongM }) => ({
      name,
      distanceM: Math.min(lengthM, Math.round(alongM * 10) / 10),
      ...guess,
    }));
  });
  placed.sort((a, b) => a.distanceM - b.distanceM);
  const places = placed.filter(({ name, distanceM }, index) => {
    const twice = placed
      .slice(0, index)
      .some((other) => other.name === name && distanceM - other.distanceM <= PASS_M);
    if (twice) left.push({ code: 'waypoint-twice', name });
    return !twice;
  });
  for (const { name } of places.slice(MOST_WAYPOINTS))
    left.push({ code: 'waypoint-too-many', name, most: MOST_WAYPOINTS });
  if (waypoints.length > MOST_LOOKED_AT)
    left.push({ code: 'waypoints-not-read', count: waypoints.length - MOST_LOOKED_AT, most: MOST_LOOKED_AT });
  return { waypoints: withUniqueNames(places.slice(0, MOST_WAYPOINTS)), left };
}

/** The nearest point of each time that the route comes by; at least the nearest of all. */
function passesOf(path: Path, waypoint: GpxWaypoint): Place[] {
  const { xyz, distanceM } = path;
  const [hereX = 0, hereY = 0, hereZ = 0] = earthCentred([waypoint]);

  let nearest: Place = { alongM: 0, offM: Infinity };
  const passes: Place[] = [];
  let lastNearM = -Infinity;
  for (let i = 0; i + 1 < distanceM.length; i++) {
    const fromX = xyz[3 * i] ?? 0;
    const fromY = xyz[3 * i + 1] ?? 0;
    const fromZ = xyz[3 * i + 2] ?? 0;
    const stepX = (xyz[3 * i + 3] ?? 0) - fromX;
    const stepY = (xyz[3 * i + 4] ?? 0) - fromY;
    const stepZ = (xyz[3 * i + 5] ?? 0) - fromZ;
    const alongStep = (hereX - fromX) * stepX + (hereY - fromY) * stepY + (hereZ - fromZ) * stepZ;
    const share = Math.min(1, Math.max(0, alongStep / (stepX * stepX + stepY * stepY + stepZ * stepZ)));
    const offX = fromX + share * stepX - hereX;
    const offY = fromY + share * stepY - hereY;
    const offZ = fromZ + share * stepZ - hereZ;
    const offM = Math.sqrt(offX * offX + offY * offY + offZ * offZ);
    const startM = distanceM[i] ?? 0;
    const alongM = startM + share * ((distanceM[i + 1] ?? 0) - startM);
    const place = { alongM, offM };
    if (offM < nearest.offM) nearest = place;
    if (offM > PASS_M) continue;
    const pass = passes.at(-1);
    if (!pass || alongM - lastNearM > AWAY_M) passes.push(place);
    else if (offM < pass.offM) passes[passes.length - 1] = place;
    lastNearM = alongM;
  }
  return passes.length > 0 ? passes : [nearest];
}

/** The second of a name gets " (2)". */
function withUniqueNames(waypoints: readonly RouteWaypoint[]): RouteWaypoint[] {
  const taken = new Set<string>();
  return waypoints.map((waypoint) => {
    let name = waypoint.name;
    for (let count = 2; taken.has(name); count++)
      name = `${waypoint.name.slice(0, 110).replace(/\p{Cs}$/u, '')} (${count})`;
    taken.add(name);
    return { ...waypoint, name };
  });
}
