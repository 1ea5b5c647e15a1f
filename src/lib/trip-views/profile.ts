import type { ProfilePoint, Route } from '../planning/model/route.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import { altitudeAt } from '../planning/route/along-profile.ts';
import { fromCore, toCore } from '../planning/units/convert.ts';
import { show, unitOf, type Quantity, type UnitSystem } from '../presentation/show.ts';
import { say, sayNumber } from '../texts/say.ts';

/** Load on one stretch, of one eater or of all together. */
export type LoadStretch = {
  readonly day: number;
  readonly from: string;
  readonly fromM: number;
  readonly toM: number;
  readonly startG: number;
  readonly endG: number;
};

/** @returns the load by stretch in the order of the way; of the whole party where no eater is named. */
export function loadStretches(plan: TripPlan, eater?: string): LoadStretch[] {
  const stretches = new Map<string, LoadStretch>();
  for (const load of plan.carry.loads)
    if (eater === undefined || load.eater === eater)
      load.stretches.forEach((stretch, index) => {
        const key = `${load.day} ${index}`;
        const others = stretches.get(key);
        stretches.set(key, {
          ...stretch,
          day: load.day,
          startG: (others?.startG ?? 0) + stretch.startG,
          endG: (others?.endG ?? 0) + stretch.endG,
        });
      });
  return [...stretches.values()].sort((a, b) => a.day - b.day || a.fromM - b.fromM);
}

/** A place on a scale, in units of the drawing, with what is written there. */
export type Tick = { readonly at: number; readonly label: string };
export type PlaceMark = {
  readonly kind: 'camp' | 'source' | 'struck';
  readonly x: number;
  readonly y: number;
  /** What it is, and where. */
  readonly title: string;
  /** Written beside it; empty where there is no room for it. */
  readonly label: string;
};
type Panel = {
  readonly unit: string;
  readonly ticks: readonly Tick[];
  readonly top: number;
  readonly bottom: number;
};

/** All that the drawing of a route needs, in units of its view box. */
export type ProfileDrawing = {
  readonly lengthM: number;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly distance: { readonly unit: string; readonly ticks: readonly Tick[] };
  /** Missing where no altitudes are known. */
  readonly altitude: (Panel & { readonly line: string; readonly area: string }) | undefined;
  readonly load: Panel & { readonly line: string; readonly area: string };
  readonly days: readonly {
    readonly day: number;
    readonly end: number;
    readonly middle: number;
    readonly label: string;
  }[];
  readonly places: readonly PlaceMark[];
  /** The drawing in words. */
  readonly description: string;
};

const WIDTH = 720;
const LEFT = 60;
const RIGHT = 704;
const PANEL = { altitude: { top: 44, bottom: 214 }, load: { top: 262, bottom: 382 } } as const;
/** What a label of a day, its bare number, and a name take of the width. */
const LABEL_WIDTH = { day: 42, number: 14, name: 96 } as const;

/**
 * Lays out the profile of a route: altitude, the days with their camps, and water sources over the distance; below it the load.
 *
 * @param stretches the load, as `loadStretches` gives it
 */
export function drawProfile(
  plan: TripPlan,
  route: Route | undefined,
  stretches: readonly LoadStretch[],
  system: UnitSystem,
): ProfileDrawing {
  const lastLeg = plan.legs.at(-1);
  const lengthM = route?.profile.at(-1)?.distanceM ?? (lastLeg ? lastLeg.fromM + lastLeg.distanceM : 0);
  const length = fromCore(lengthM, unitOf('distance', system));
  const x = (m: number) => tidy(LEFT + (lengthM > 0 ? Math.min(1, m / lengthM) : 0) * (RIGHT - LEFT));
  const hasAltitude = Boolean(route?.altitudeKnown);
  /** Without altitudes the load moves up into their place. */
  const shiftUp = hasAltitude ? 0 : PANEL.load.top - PANEL.altitude.top;

  const altitudes = route && hasAltitude ? route.profile.map(({ altitudeM }) => altitudeM) : [];
  const lowestM = altitudes.reduce((low, m) => Math.min(low, m), Infinity);
  const highestM = altitudes.reduce((high, m) => Math.max(high, m), -Infinity);
  const altitude =
    route && hasAltitude
      ? altitudePanel(
          thinned(route.profile, x),
          scaleOf(lowestM, highestM, 'altitude', system, PANEL.altitude),
          x,
          system,
        )
      : undefined;
  const yAt = (m: number) =>
    altitude && route ? altitude.y(altitudeAt(route.profile, m)) : PANEL.load.top - shiftUp;

  const loadPlace = { top: PANEL.load.top - shiftUp, bottom: PANEL.load.bottom - shiftUp };
  const mostG = stretches.reduce((most, { startG, endG }) => Math.max(most, startG, endG), 0);
  const loadScale = scaleOf(0, mostG, 'pack', system, loadPlace);
  const loadPoints = stretches
    .filter(({ fromM, toM }) => toM > fromM)
    .flatMap(({ fromM, toM, startG, endG }) => [
      [x(fromM), loadScale.y(startG)] as const,
      [x(toM), loadScale.y(endG)] as const,
    ]);

  return {
    lengthM,
    width: WIDTH,
    height: loadPlace.bottom + 44,
    left: LEFT,
    right: RIGHT,
    bottom: loadPlace.bottom,
    distance: {
      unit: unitOf('distance', system),
      ticks: niceTicks(0, length, 8)
        .filter(({ value }) => value <= length)
        .map(({ value, label }) => ({ at: x(toCore(value, unitOf('distance', system))), label })),
    },
    altitude: altitude?.panel,
    load: {
      unit: unitOf('pack', system),
      ticks: loadScale.ticks,
      ...loadPlace,
      line: lineThrough(loadPoints),
      area: areaUnder(loadPoints, loadPlace.bottom),
    },
    days: plan.legs.map(({ day, fromM, distanceM }) => {
      const [from, end] = [x(fromM), x(fromM + distanceM)];
      const room = end - from;
      const label =
        room >= LABEL_WIDTH.day
          ? say('Day {number}', { number: day })
          : room >= LABEL_WIDTH.number
            ? String(day)
            : '';
      return { day, end, middle: tidy((from + end) / 2), label };
    }),
    places: [...sourceMarks(route, x, yAt, system), ...campMarks(plan, x, yAt, system)],
    description: [
      say('{length} in {days} days.', { length: show(lengthM, 'distance', system), days: plan.legs.length }),
      altitude
        ? say('The way lies between {lowest} and {highest}.', {
            lowest: show(lowestM, 'altitude', system),
            highest: show(highestM, 'altitude', system),
          })
        : say('The altitudes on the way are not known.'),
      mostG > 0 ? say('The heaviest load on the way is {load}.', { load: show(mostG, 'pack', system) }) : '',
      say('The tables show the same numbers.'),
    ]
      .filter(Boolean)
      .join(' '),
  };
}

type Scale = { readonly ticks: readonly Tick[]; readonly y: (value: number) => number };

/** A scale from bottom to top that begins and ends with a tick. */
function scaleOf(
  low: number,
  high: number,
  quantity: Quantity,
  system: UnitSystem,
  { top, bottom }: { top: number; bottom: number },
): Scale {
  const unit = unitOf(quantity, system);
  const ticks = niceTicks(fromCore(low, unit), fromCore(high, unit), 4);
  const first = ticks[0]?.value ?? 0;
  const range = (ticks.at(-1)?.value ?? 1) - first;
  const at = (shown: number) => tidy(bottom - ((shown - first) / range) * (bottom - top));
  return {
    ticks: ticks.map(({ value, label }) => ({ at: at(value), label })),
    y: (value) => at(fromCore(value, unit)),
  };
}

/** Round numbers from at or below `low` to at or above `high`, about `count` steps apart. */
export function niceTicks(low: number, high: number, count: number): { value: number; label: string }[] {
  const raw = Math.max(high - low, 1e-9 + Math.abs(high) * 1e-3, 0.1) / count;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((times) => times * power >= raw * (1 - 1e-9)) ?? 10) * power;
  const digits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.floor(low / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(high / step - 1e-9));
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const value = Number(((first + index) * step).toFixed(digits));
    return {
      value,
      label: sayNumber(value + 0, { maximumFractionDigits: digits, minimumFractionDigits: digits }),
    };
  });
}

function altitudePanel(
  profile: readonly ProfilePoint[],
  scale: Scale,
  x: (m: number) => number,
  system: UnitSystem,
): { panel: NonNullable<ProfileDrawing['altitude']>; y: Scale['y'] } {
  const points = profile.map(({ distanceM, altitudeM }) => [x(distanceM), scale.y(altitudeM)] as const);
  return {
    y: scale.y,
    panel: {
      unit: unitOf('altitude', system),
      ticks: scale.ticks,
      ...PANEL.altitude,
      line: lineThrough(points),
      area: areaUnder(points, PANEL.altitude.bottom),
    },
  };
}

/** The lowest and the highest point of each unit of width, and both ends: all that can be seen of a long profile. */
function thinned(profile: readonly ProfilePoint[], x: (m: number) => number): ProfilePoint[] {
  const kept = new Set([profile[0], profile.at(-1)]);
  for (const column of Map.groupBy(profile, ({ distanceM }) => Math.round(x(distanceM))).values()) {
    const byHeight = column.toSorted((a, b) => a.altitudeM - b.altitudeM);
    kept.add(byHeight[0]).add(byHeight.at(-1));
  }
  return profile.filter((point) => kept.has(point));
}

function sourceMarks(
  route: Route | undefined,
  x: (m: number) => number,
  yAt: (m: number) => number,
  system: UnitSystem,
): PlaceMark[] {
  return (route?.waypoints ?? [])
    .filter(({ water }) => water)
    .map(({ name, distanceM, struck }) => ({
      kind: struck ? 'struck' : 'source',
      x: x(distanceM),
      y: yAt(distanceM),
      title: say(
        '{name}, {place}: water source{struck, select, yes {, unreliable, not counted on} other {}}',
        {
          name,
          place: show(distanceM, 'distance', system),
          struck: struck ? 'yes' : 'no',
        },
      ),
      label: '',
    }));
}

/** Where the nights are spent; a camp of several nights is marked once. */
function campMarks(
  plan: TripPlan,
  x: (m: number) => number,
  yAt: (m: number) => number,
  system: UnitSystem,
): PlaceMark[] {
  const camps = Map.groupBy(plan.legs.slice(0, -1), ({ fromM, distanceM }) => x(fromM + distanceM));
  let freeFrom = 0;
  return [...camps.values()].flatMap((nights): PlaceMark[] => {
    const [first] = nights;
    if (!first) return [];
    const atM = first.fromM + first.distanceM;
    const name = nights.find(({ endsAt }) => endsAt !== undefined)?.endsAt;
    const place = name ?? show(atM, 'distance', system);
    const hasRoom = name !== undefined && x(atM) - LABEL_WIDTH.name / 2 >= freeFrom;
    if (hasRoom) freeFrom = x(atM) + LABEL_WIDTH.name / 2;
    return [
      {
        kind: 'camp',
        x: x(atM),
        y: yAt(atM),
        title: say('{place}: camp of day {days}', { place, days: nights.map(({ day }) => day).join(', ') }),
        label: hasRoom ? shortened(name) : '',
      },
    ];
  });
}

const shortened = (name: string): string => (name.length > 16 ? `${name.slice(0, 15)}…` : name);

type Point = readonly [x: number, y: number];

function lineThrough(points: readonly Point[]): string {
  return points.length > 0 ? `M${points.map((point) => point.join(',')).join('L')}` : '';
}

function areaUnder(points: readonly Point[], bottom: number): string {
  const [first, last] = [points[0], points.at(-1)];
  return first && last ? `${lineThrough(points)}L${last[0]},${bottom}L${first[0]},${bottom}Z` : '';
}

const tidy = (value: number): number => Number(value.toFixed(1));
