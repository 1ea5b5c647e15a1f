import type { Route } from '../model/route.ts';
import { makeProfile } from './make-profile.ts';
import { layPath } from './path.ts';
import { placeWaypoints } from './place-waypoints.ts';
import { readGpx, type NameOf } from './read-gpx.ts';
import { RouteError } from './route-error.ts';
import type { RouteRemark } from './route-faults.ts';

/** So many tracks are named where one is asked for that is not there. */
const MOST_NAMED = 20;

/** A track or route of a file, to choose from. */
export type LineChoice = {
  readonly kind: 'track' | 'route';
  readonly name: string;
  readonly lengthM: number;
  readonly pointCount: number;
};

export type RouteFromGpx = {
  readonly route: Route;
  /** Everything in the file that makes a route; `picked` is the index of the one taken. */
  readonly choices: readonly LineChoice[];
  readonly picked: number;
  /** What was left out or taken for granted, with its reason. */
  readonly left: readonly RouteRemark[];
};

/**
 * The route of a GPX text: one of its tracks or routes with a smoothed profile, and the waypoints that lie on it.
 *
 * @param pick index of the track or route, in the order of the file with tracks and routes mixed; left out: the longest
 * @param nameOf names what has no name in the file; left out: in English
 * @throws RouteError where the text cannot be used, or has no such track or route
 */
export function routeFromGpx(
  xml: string,
  { pick, nameOf }: { pick?: number | undefined; nameOf?: NameOf } = {},
): RouteFromGpx {
  const { lines, waypoints, left } = readGpx(xml, nameOf);
  const longest = Math.max(...lines.map((line) => line.lengthM));
  const picked = pick ?? lines.findIndex((line) => line.lengthM === longest);
  const line = lines[picked];
  if (!line)
    throw new RouteError({
      code: 'no-such-line',
      count: lines.length,
      picked: picked + 1,
      names: lines.slice(0, MOST_NAMED).map(({ name }) => name),
    });

  const path = layPath(line.points);
  const { profile, altitudeKnown, left: ofProfile } = makeProfile(line.points, path);
  const placed = placeWaypoints(path, waypoints, profile.at(-1)?.distanceM ?? 0, nameOf);
  return {
    route: { name: line.name, profile, altitudeKnown, waypoints: placed.waypoints },
    choices: lines.map(({ kind, name, lengthM, points }) => ({
      kind,
      name,
      lengthM,
      pointCount: points.length,
    })),
    picked,
    left: [...left, ...path.left, ...ofProfile, ...placed.left],
  };
}
