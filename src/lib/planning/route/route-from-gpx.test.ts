import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { hills, syntheticTrack, type TrackPoint } from '../../../../tests/support/synthetic-track.ts';
import { Route } from '../model/route.ts';
import { Trip } from '../model/trip.ts';
import { dayLegs } from './day-legs.ts';
import { climbAndDescent } from './make-profile.ts';
import { RouteError } from './route-error.ts';
import { routeFromGpx } from './route-from-gpx.ts';
import { routeRemarkText } from '../../presentation/route-words.ts';

const pointsOf = (points: TrackPoint[]) =>
  points.map(
    ({ latDeg, lonDeg, elevationM }) =>
      `<trkpt lat="${latDeg}" lon="${lonDeg.toFixed(9)}">${elevationM === undefined ? '' : `<ele>${elevationM.toFixed(2)}</ele>`}</trkpt>`,
  );
const trackOf = (name: string, points: TrackPoint[]) =>
  `<trk><name>${name}</name><trkseg>${pointsOf(points).join('')}</trkseg></trk>`;
const gpx = (inner: string) => `<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1">${inner}</gpx>`;

const short = trackOf('Short way', syntheticTrack({ lengthM: 3000, altitudeM: () => 500 }));
const long = trackOf('Long way', syntheticTrack({ lengthM: 9000, altitudeM: hills(60, 900), noiseM: 2 }));
const spring = '<wpt lat="0.001" lon="-149.98"><name>Reed Spring</name></wpt>';
const village = '<wpt lat="0.2" lon="-149.98"><name>Village</name></wpt>';

describe('the route of a GPX text', () => {
  it('is what the model of a route says', () => {
    const { route, left, picked, choices } = routeFromGpx(gpx(spring + village + short + long));
    expect(Route.parse(route)).toEqual(route);
    expect(route.name).toBe('Long way');
    expect(route.altitudeKnown).toBe(true);
    expect(route.profile.at(-1)?.distanceM).toBe(9000);
    expect(climbAndDescent(route.profile).climbM / 600).toBeCloseTo(1, 1);
    expect(route.waypoints).toEqual([
      { name: 'Reed Spring', distanceM: expect.closeTo(2226.4, 0), water: true, struck: false },
    ]);
    expect(left.map(routeRemarkText)).toEqual([
      expect.stringMatching(/^The waypoint "Village" is 22\.1 km \(13\.7 mi\) off the route/),
    ]);
    expect(picked).toBe(1);
    expect(choices).toEqual([
      { kind: 'track', name: 'Short way', lengthM: expect.closeTo(3000, 3), pointCount: 301 },
      { kind: 'track', name: 'Long way', lengthM: expect.closeTo(9000, 3), pointCount: 901 },
    ]);
  });

  it('is the one that was picked', () => {
    expect(routeFromGpx(gpx(short + long), { pick: 0 }).route.name).toBe('Short way');
  });

  it('cannot be one that is not there', () => {
    expect(() => routeFromGpx(gpx(short + long), { pick: 2 })).toThrow(RouteError);
    expect(() => routeFromGpx(gpx(short + long), { pick: 2 })).toThrow(
      expect.objectContaining({
        fault: { code: 'no-such-line', count: 2, picked: 3, names: ['Short way', 'Long way'] },
      }),
    );
  });

  it('may be without elevation', () => {
    const bare = syntheticTrack({ lengthM: 3000, altitudeM: () => 0 }).map((point) => ({
      ...point,
      elevationM: undefined,
    }));
    const { route, left } = routeFromGpx(gpx(trackOf('Bare', bare)));
    expect(Route.parse(route).altitudeKnown).toBe(false);
    expect(left.map(routeRemarkText)).toEqual([
      'The track has no elevation, so that its climb is not known and is taken as none.',
    ]);
  });

  it('is the same to the byte each time', () => {
    const text = gpx(spring + long);
    expect(JSON.stringify(routeFromGpx(text))).toBe(JSON.stringify(routeFromGpx(text)));
  });
});

describe('the route of the demo', () => {
  const file = (name: string) =>
    readFileSync(new URL(`../../../../demo-data/${name}`, import.meta.url), 'utf8');
  const { route, left } = routeFromGpx(file('ridge-route.gpx'));

  it('has four camps and nine water sources, one of them not counted on', () => {
    expect(left).toEqual([]);
    const water = route.waypoints.filter((waypoint) => waypoint.water);
    expect(water.length).toBe(9);
    expect(water.filter((waypoint) => waypoint.struck).map(({ name }) => name)).toEqual([
      'Thin Spring (unreliable)',
    ]);
    expect(route.waypoints.filter(({ name }) => name.endsWith('Camp')).length).toBe(4);
  });

  it('goes with the trip of the demo: its name, the altitudes of its camps, its dry camp, its hours', () => {
    const trip = Trip.parse(JSON.parse(file('trip.json')));
    expect(route.name).toBe(trip.name);
    const pace = { method: 'din-33466', partyFactor: 1, restShare: 0.2 } as const;
    const legs = dayLegs(
      route,
      trip.dayCount,
      ['Meadow Camp', 'Terrace Camp', 'Crest Camp', 'Birch Camp'],
      pace,
    );
    legs.forEach(({ campAltitudeM, walkingH, sources, distanceM }, index) => {
      const day = trip.days[index];
      expect(Math.abs(campAltitudeM - (day?.campAltitudeM ?? NaN))).toBeLessThan(10);
      expect(Math.abs(walkingH - (day?.walkingH ?? NaN))).toBeLessThan(0.5);
      const atCamp = sources.some(({ atM, struck }) => !struck && atM === distanceM);
      if (index < legs.length - 1) expect(atCamp ? 'source' : 'dry').toBe(day?.campWater);
    });
  });
});
