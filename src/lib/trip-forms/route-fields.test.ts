import { describe, expect, it } from 'vitest';
import { FormReader, type Entered } from '$lib/forms/read-form.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import {
  readWaypoints,
  waypointCount,
  waypointFields,
  waypointLabel,
  withoutWaypoint,
  withRoute,
  withWaypoint,
} from './route-fields.ts';

const END_M = 30_000.4567;
const ROUTE = {
  name: 'Ridge',
  profile: [
    { distanceM: 0, altitudeM: 800 },
    { distanceM: END_M, altitudeM: 1400 },
  ],
  waypoints: [
    { name: 'Spring', distanceM: 4000.123456, water: true },
    { name: 'Hut', distanceM: 12_000.7, water: true, struck: true },
    { name: 'End', distanceM: END_M },
  ],
};
const TRIP = Trip.parse({
  name: 'Ridge walk',
  startDate: '2026-07-04',
  dayCount: 4,
  party: [{ name: 'Ada' }],
  days: [{ endsAt: 'Hut', walkingH: 5 }, { endsAt: 'Hut' }],
  route: ROUTE,
});

function read(entered: Entered, system: 'metric' | 'us' = 'metric') {
  const form = new FormData();
  for (const [name, values] of Object.entries(entered)) for (const value of values) form.append(name, value);
  const reader = new FormReader(form, system);
  return { trip: readWaypoints(reader, TRIP), problems: reader.problems };
}
const FIELDS = waypointFields(TRIP, 'metric');

describe('readWaypoints', () => {
  it.each(['metric', 'us'] as const)('reads back the very trip, in %s units', (system) => {
    expect(read(waypointFields(TRIP, system), system)).toEqual({ trip: TRIP, problems: [] });
  });

  it('keeps a place to the millimetre where the rows before it are removed', () => {
    const { trip } = read(withoutWaypoint(FIELDS, 0));
    expect(trip?.route?.waypoints.map(({ distanceM }) => distanceM)).toEqual([12_000.7, END_M]);
  });

  it('puts a new waypoint in its place, and lets a day end there', () => {
    const more = withWaypoint(FIELDS);
    expect(waypointCount(more)).toBe(4);
    const { trip } = read({
      ...more,
      'route.waypoints[3].name': ['Meadow'],
      'route.waypoints[3].distanceM': ['20,5'],
      'route.waypoints[3].endsDays': ['3'],
    });
    expect(trip?.route?.waypoints.map(({ name }) => name)).toEqual(['Spring', 'Hut', 'Meadow', 'End']);
    expect(trip?.days).toEqual([{ endsAt: 'Hut', walkingH: 5 }, { endsAt: 'Hut' }, { endsAt: 'Meadow' }]);
  });

  it('carries the ends of days along when a waypoint is renamed, and opens them when it is removed', () => {
    const renamed = read({ ...FIELDS, 'route.waypoints[1].name': ['Old hut'] }).trip;
    expect(renamed?.days.map(({ endsAt }) => endsAt)).toEqual(['Old hut', 'Old hut']);
    expect(read(withoutWaypoint(FIELDS, 1)).trip?.days).toEqual([{ walkingH: 5 }]);
  });

  it('a source that is none is not struck either', () => {
    const { trip } = read({ ...FIELDS, 'route.waypoints[1].water': [] });
    expect(trip?.route?.waypoints[1]).toMatchObject({ water: false, struck: false });
  });

  it.each([
    ['no name', { name: '' }, 'name', 'must not be empty'],
    ['one name twice', { name: 'Spring' }, 'name', 'twice'],
    ['a place beyond the end', { distanceM: '31' }, 'distanceM', 'beyond the end'],
    ['no distance', { distanceM: '' }, 'distanceM', ''],
    ['words for a distance', { distanceM: 'far' }, 'distanceM', 'is not a number'],
    ['a day that is not', { endsDays: '9' }, 'endsDays', 'from 1 to 4'],
    ['a word for a day', { endsDays: 'first' }, 'endsDays', 'from 1 to 4'],
    ['a last day that stops on the way', { endsDays: '1, 4' }, 'endsDays', 'where the last day ends'],
  ])('refuses %s and names the field', (_, change, field, message) => {
    const changes = Object.entries(change).map(([name, value]) => [`route.waypoints[1].${name}`, [value]]);
    const { trip, problems } = read({ ...FIELDS, ...Object.fromEntries(changes) });
    expect(trip).toBeUndefined();
    expect(problems).toEqual([
      { field: `route.waypoints[1].${field}`, message: expect.stringContaining(message) },
    ]);
  });

  it('refuses two ends of a day, and days that end backwards', () => {
    expect(read({ ...FIELDS, 'route.waypoints[2].endsDays': ['2'] }).problems).toEqual([
      { field: 'route.waypoints[2].endsDays', message: expect.stringContaining('waypoint 2 already') },
    ]);
    const backwards = {
      ...FIELDS,
      'route.waypoints[0].endsDays': ['2'],
      'route.waypoints[1].endsDays': ['1'],
    };
    expect(read(backwards).problems).toEqual([
      { field: 'route.waypoints[0].endsDays', message: expect.stringMatching(/^day 2: .*before the end/) },
    ]);
  });
});

describe('withRoute', () => {
  it('keeps the ends of days that are on the new route, in their order, and opens the others', () => {
    const trip = Trip.parse({ ...TRIP, days: [{ endsAt: 'Spring' }, { endsAt: 'Hut', walkingH: 4 }] });
    const waypoints = [{ name: 'Hut', distanceM: 9000 }];
    const changed = withRoute(trip, Trip.parse({ ...TRIP, days: [], route: { ...ROUTE, waypoints } }).route);
    expect(changed.openedDays).toEqual([1]);
    expect(changed.trip.days).toEqual([{}, { endsAt: 'Hut', walkingH: 4 }]);
    expect(Trip.parse(changed.trip)).toEqual(changed.trip);
  });

  it('takes the route away, with all ends of days', () => {
    const { trip, openedDays } = withRoute(TRIP, undefined);
    expect(trip.route).toBeUndefined();
    expect(trip.days).toEqual([{ walkingH: 5 }]);
    expect(openedDays).toEqual([1, 2]);
  });
});

it('waypointLabel says which', () => {
  expect(waypointLabel('route.waypoints[2].distanceM')).toBe('Waypoint 3, distance');
  expect(waypointLabel('days[0].endsAt')).toBeUndefined();
});
