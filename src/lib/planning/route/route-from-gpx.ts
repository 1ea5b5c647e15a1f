import type { Route } from '../model/route.ts';
import { makeProfile } from './make-profile.ts';
import { layPath } from './path.ts';
import { placeWaypoints } from './place-waypoints.ts';
import { readGpx } from './read-gpx.ts';
import { RouteError } from './route-error.ts';
import { say } from '../../texts/say.ts';

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
  readonly left: readonly string[];
};

/**
 * The route of a GPX text: one of its tracks or routes with a smoothed profile, and the waypoints that lie on it.
 *
 * @param pick index of the track or route, in the order of the file with tracks and routes mixed; left out: the longest
 * @throws RouteError where the text cannot be used, or has no such track or route
 */
export function routeFromGpx(xml: string, { pick }: { pick?: number | undefined } = {}): RouteFromGpx {
  const { lines, waypoints, left } = readGpx(xml);
  const longest = Math.max(...lines.map((line) => line.lengthM));
  const picked = pick ?? lines.findIndex((line) => line.lengthM === longest);
  const line = lines[picked];
  if (!line)
    throw new RouteError(
      say(
        'The file has {count, plural, one {# track or route} other {# tracks and routes}}, but number {picked} was asked for. Choose one of: {names}.',
        {
          count: lines.length,
          picked: String(picked + 1),
          names: [
            ...lines.slice(0, MOST_NAMED).map(({ name }) => `"${name}"`),
            ...(lines.length > MOST_NAMED ? ['…'] : []),
          ].join(', '),
        },
      ),
    );

  const path = layPath(line.points);
  const { profile, altitudeKnown, left: ofProfile } = makeProfile(line.points, path);
  const placed = placeWaypoints(path, waypoints, profile.at(-1)?.distanceM ?? 0);
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
