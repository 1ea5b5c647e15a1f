import { describe, expect, it } from 'vitest';
import { EQUATOR_DEGREE_M } from '../../../../tests/support/synthetic-track.ts';
import { RouteWaypoint } from '../model/route.ts';
import { layPath } from './path.ts';
import { placeWaypoints } from './place-waypoints.ts';
import { routeRemarkText } from '../../presentation/route-words.ts';

const NORTH_DEGREE_M = 110_574.3886; // one degree of latitude at the equator of WGS 84
const at = (eastM: number, northM = 0) => ({
  latDeg: northM / NORTH_DEGREE_M,
  lonDeg: -150 + eastM / EQUATOR_DEGREE_M,
});
const waypoint = (name: string, eastM: number, northM = 0) => ({
  ...at(eastM, northM),
  name,
  symbol: '',
  type: '',
});
const path = layPath(Array.from({ length: 1001 }, (_, i) => at(10 * i)));
const place = (...waypoints: ReturnType<typeof waypoint>[]) => placeWaypoints(path, waypoints, 10_000);

describe('a waypoint', () => {
  it('stands at the nearest point of the route, in the order of the route', () => {
    const { waypoints, left } = place(waypoint('Saddle', 7003, -20), waypoint('Reed Spring', 1234.5, 300));
    expect(left).toEqual([]);
    expect(waypoints).toEqual([
      { name: 'Reed Spring', distanceM: expect.closeTo(1234.5, 0), water: true, struck: false },
      { name: 'Saddle', distanceM: expect.closeTo(7003, 0), water: false, struck: false },
    ]);
  });

  it('between two points of a route with few stands between them', () => {
    const sparse = layPath([at(0), at(8000), at(8000, 8000)]);
    const { waypoints } = placeWaypoints(
      sparse,
      [waypoint('Hut', 3000, 10), waypoint('Gate', 8010, 5000)],
      16_000,
    );
    expect(waypoints.map(({ distanceM }) => Math.round(distanceM))).toEqual([3000, 13_000]);
  });

  it('beyond the ends stands at the end', () => {
    const { waypoints } = place(waypoint('Before', -80), waypoint('After', 10_300));
    expect(waypoints.map(({ distanceM }) => distanceM)).toEqual([0, 10_000]);
  });

  it('too far off the route is left out, with the reason', () => {
    const { waypoints, left } = place(waypoint('Village', 5000, 1280), waypoint('Hut', 5000, 490));
    expect(waypoints.map(({ name }) => name)).toEqual(['Hut']);
    expect(left.map(routeRemarkText)).toEqual([
      'The waypoint "Village" is 1.3 km (0.8 mi) off the route and was left out; the limit is 0.5 km (0.3 mi).',
    ]);
  });

  it('is passed again where the route comes back, but not at a bend', () => {
    const there = Array.from({ length: 501 }, (_, i) => at(10 * i));
    const outAndBack = layPath([...there, ...there.toReversed()]);
    const { waypoints } = placeWaypoints(
      outAndBack,
      [waypoint('Spring', 1000, 5), waypoint('Top', 5000)],
      10_000,
    );
    expect(waypoints.map(({ name, distanceM }) => [name, Math.round(distanceM)])).toEqual([
      ['Spring', 1000],
      ['Top', 5000],
      ['Spring (2)', 9000],
    ]);
  });

  it('without a name, or with one that is taken, gets its own', () => {
    const long = 'x'.repeat(120);
    const { waypoints } = place(
      waypoint('', 10),
      waypoint('Camp', 20),
      waypoint('Camp', 1000),
      waypoint('Camp', 2000),
      waypoint(long, 3000),
      waypoint(long, 4000),
    );
    expect(waypoints.map(({ name }) => name)).toEqual([
      'Waypoint 1',
      'Camp',
      'Camp (2)',
      'Camp (3)',
      long,
      `${'x'.repeat(110)} (2)`,
    ]);
    for (const entry of waypoints) expect(RouteWaypoint.safeParse(entry).error).toBeUndefined();
  });

  it('that stands twice at the same place is taken once', () => {
    const { waypoints, left } = place(waypoint('Ford', 2000), waypoint('Ford', 2040), waypoint('Hut', 2000));
    expect(waypoints.map(({ name }) => name)).toEqual(['Ford', 'Hut']);
    expect(left.map(routeRemarkText)).toEqual([
      'The waypoint "Ford" appears twice in the same place; one was kept.',
    ]);
  });

  it('is one too many after 400, and not looked at after 2000', () => {
    const many = Array.from({ length: 2100 }, (_, i) => waypoint(`P${i}`, i));
    const { waypoints, left } = place(...many);
    expect(waypoints.length).toBe(400);
    expect(left.length).toBe(1601);
    expect(routeRemarkText(left[0]!)).toBe('The waypoint "P400" was left out: a route can have at most 400.');
    expect(routeRemarkText(left.at(-1)!)).toBe(
      'The last 100 waypoints of the file were not looked at: at most 2000 are.',
    );
  });
});
