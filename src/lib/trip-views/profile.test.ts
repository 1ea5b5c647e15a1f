import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../planning/model/settings.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import { Trip } from '../planning/model/trip.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { legRows } from './legs.ts';
import { drawProfile, loadStretches, niceTicks } from './profile.ts';

const SETTINGS = defaultSettings();
const TRIP = Trip.parse({
  name: 'Ridge walk',
  startDate: '2026-07-04',
  dayCount: 3,
  party: [{ name: 'Ada' }, { name: 'Ben', baseLoadG: 9000 }],
  days: [{ endsAt: 'Hut' }],
  route: {
    name: 'Ridge',
    profile: [
      { distanceM: 0, altitudeM: 800 },
      { distanceM: 15_000, altitudeM: 1730 },
      { distanceM: 30_000, altitudeM: 1000 },
    ],
    waypoints: [
      { name: 'Spring', distanceM: 4000, water: true },
      { name: 'Hut', distanceM: 10_000 },
      { name: 'Pool', distanceM: 20_000, water: true, struck: true },
      { name: 'Well', distanceM: 26_000, water: true },
    ],
  },
});
const plan = planTrip(TRIP, [], SETTINGS);
const draw = (system: 'metric' | 'us' = 'metric', trip = TRIP, of: TripPlan = plan) =>
  drawProfile(of, trip.route, loadStretches(of), system);
const pointsOf = (path: string) =>
  path
    .replace(/[MZ]/g, '')
    .split('L')
    .map((point) => point.split(',').map(Number));

describe('loadStretches', () => {
  it('goes without a gap from the start to the end of the way', () => {
    const stretches = loadStretches(plan, 'Ada');
    expect(stretches[0]?.fromM).toBe(0);
    expect(stretches.at(-1)?.toM).toBeCloseTo(30_000);
    stretches.slice(1).forEach(({ fromM }, index) => expect(fromM).toBeCloseTo(stretches[index]?.toM ?? 0));
  });

  it('adds up the party', () => {
    const [party, ada, ben] = [undefined, 'Ada', 'Ben'].map((who) => loadStretches(plan, who));
    party?.forEach(({ startG }, index) =>
      expect(startG).toBeCloseTo((ada?.[index]?.startG ?? 0) + (ben?.[index]?.startG ?? 0)),
    );
    expect(ada?.[0]?.startG).toBeGreaterThan(8000);
  });
});

describe('drawProfile', () => {
  it('spans the width, keeps the summit, and stays inside its panels', () => {
    const { altitude, load, left, right } = draw();
    const line = pointsOf(altitude?.line ?? '');
    expect(line[0]?.[0]).toBe(left);
    expect(line.at(-1)?.[0]).toBe(right);
    const summit = line.reduce((high, point) => ((point[1] ?? 0) < (high[1] ?? 0) ? point : high));
    expect(summit[0]).toBe((left + right) / 2);
    for (const [panel, path] of [
      [altitude, altitude?.line],
      [load, load.line],
    ] as const)
      for (const [, y] of pointsOf(path ?? '')) {
        expect(y).toBeGreaterThanOrEqual(panel?.top ?? NaN);
        expect(y).toBeLessThanOrEqual(panel?.bottom ?? NaN);
      }
  });

  it('marks camps once, sources, and which are struck', () => {
    const { places, days } = draw();
    expect(places.map(({ kind, title }) => `${kind} ${title}`)).toEqual([
      'source Spring, 4.0 km: water source',
      'struck Pool, 20.0 km: water source, unreliable, not counted on',
      'source Well, 26.0 km: water source',
      'camp Hut: camp of day 1',
      expect.stringMatching(/^camp [\d.]+ km: camp of day 2$/),
    ]);
    expect(days.map(({ label }) => label)).toEqual(['Day 1', 'Day 2', 'Day 3']);
    const rest = Trip.parse({ ...TRIP, days: [{ endsAt: 'Hut' }, { endsAt: 'Hut' }] });
    const camps = draw('metric', rest, planTrip(rest, [], SETTINGS)).places.filter(
      ({ kind }) => kind === 'camp',
    );
    expect(camps.map(({ title }) => title)).toEqual(['Hut: camp of day 1, 2']);
  });

  it('has its axes in the units of the reader, and the same way in both', () => {
    const [metric, us] = [draw('metric'), draw('us')];
    expect([metric.distance.unit, metric.altitude?.unit, metric.load.unit]).toEqual(['km', 'm', 'kg']);
    expect([us.distance.unit, us.altitude?.unit, us.load.unit]).toEqual(['mi', 'ft', 'lb']);
    expect(us.days).toEqual(metric.days);
    expect(metric.distance.ticks.map(({ label }) => label)).toEqual(['0', '5', '10', '15', '20', '25', '30']);
    expect(metric.altitude?.ticks[0]?.label).toBe('500');
    expect(us.description).toMatch(/^18\.6 mi in 3 days\. The way lies between 2,625 ft and 5,676 ft\./);
  });

  it('thins a long profile, but not its summit', () => {
    const profile = Array.from({ length: 4000 }, (_, index) => ({
      distanceM: index * 10,
      altitudeM: index === 1777 ? 2499 : 1000 + (index % 7),
    }));
    const long = Trip.parse({ ...TRIP, days: [], route: { name: 'Long', profile } });
    const { altitude } = draw('metric', long, planTrip(long, [], SETTINGS));
    const line = pointsOf(altitude?.line ?? '');
    expect(line.length).toBeLessThan(1400);
    expect(Math.min(...line.map(([, y]) => y ?? NaN))).toBeLessThan((altitude?.top ?? 0) + 2);
  });

  it('shows the load over the legs alone where there is no route, and no altitude that nobody knows', () => {
    const { route, ...rest } = TRIP;
    expect(route).toBeDefined();
    const byHand = Trip.parse({ ...rest, days: [{ distanceM: 12_000, climbM: 300 }] });
    const drawing = draw('metric', byHand, planTrip(byHand, [], SETTINGS));
    expect(drawing.altitude).toBeUndefined();
    expect(drawing.lengthM).toBeGreaterThan(12_000);
    expect(drawing.height).toBeLessThan(draw().height);
    expect(pointsOf(drawing.load.line).at(-1)?.[0]).toBe(drawing.right);
    const flat = Trip.parse({ ...TRIP, route: { ...TRIP.route, altitudeKnown: false } });
    expect(draw('metric', flat).altitude).toBeUndefined();
  });

  it('survives a trip on which nobody walks', () => {
    const { route, ...rest } = TRIP;
    expect(route).toBeDefined();
    const still = Trip.parse({ ...rest, dayCount: 1, days: [{ walkingH: 0 }] });
    const drawing = draw('metric', still, planTrip(still, [], SETTINGS));
    expect(JSON.stringify(drawing)).not.toMatch(/null|NaN/);
  });
});

it.each([
  [0, 30, 8, '0 5 10 15 20 25 30'],
  [812, 1730, 4, '500 1,000 1,500 2,000'],
  [-12, 3, 4, '-15 -10 -5 0 5'],
  [0, 0, 4, '0.00 0.05'],
])('niceTicks from %d to %d in %d steps', (low, high, count, labels) => {
  const ticks = niceTicks(low, high, count);
  expect(ticks[0]?.value).toBeLessThanOrEqual(low);
  expect(ticks.at(-1)?.value).toBeGreaterThanOrEqual(high);
  expect(ticks.map(({ label }) => label).join(' ')).toBe(labels);
});

describe('legRows', () => {
  it('names the ends, adds up the way, and says what is not known', () => {
    const { rows, totals } = legRows(plan.legs, TRIP.route, 'metric');
    expect(rows.map(({ from, to }) => `${from} to ${to}`)).toEqual([
      'the start to Hut',
      expect.stringMatching(/^Hut to [\d.]+ km$/),
      expect.stringMatching(/^[\d.]+ km to the end$/),
    ]);
    expect(rows.map(({ sources }) => sources.join())).toEqual(['Spring (4.0 km)', '', 'Well (26.0 km)']);
    expect(totals.distanceM).toBeCloseTo(30_000);
    expect(totals.climbM).toBeCloseTo(930);
    expect(totals.highestM).toBe(1730);
    const { route, ...rest } = TRIP;
    expect(route).toBeDefined();
    const hours = planTrip(Trip.parse({ ...rest, days: [] }), [], SETTINGS);
    expect(legRows(hours.legs, undefined, 'metric').totals).toMatchObject({
      climbM: undefined,
      highestM: undefined,
    });
  });
});
