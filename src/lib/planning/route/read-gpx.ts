import { SaxesParser, type SaxesTagPlain } from 'saxes';
import { lineLengthM } from './geodesic.ts';
import { RouteError } from './route-error.ts';
import type { RouteFault, RouteRemark } from './route-faults.ts';

export const MAX_GPX_CHARACTERS = 64_000_000;
export const MAX_GPX_POINTS = 1_000_000;
/** Tracks and routes, those without points among them. */
export const MAX_GPX_LINES = 10_000;
/** The format nests some six elements deep, extensions a few more. */
const MOST_LEVELS = 100;

/** Names what has none of its own, by its place in the file from 1. */
export type NameOf = (kind: 'track' | 'route' | 'waypoint', number: number) => string;
export const plainName: NameOf = (kind, number) =>
  `${{ track: 'Track', route: 'Route', waypoint: 'Waypoint' }[kind]} ${number}`;

/** A point of a track or route. Elevation in m above sea level; undefined where the file states none that can be read. */
export type GpxPoint = {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevationM: number | undefined;
};

/** A track or route with at least two points. */
export type GpxLine = {
  readonly kind: 'track' | 'route';
  readonly name: string;
  readonly points: readonly GpxPoint[];
  readonly lengthM: number;
};

export type GpxWaypoint = {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly name: string;
  readonly symbol: string;
  readonly type: string;
};

export type GpxContent = {
  readonly lines: readonly GpxLine[];
  /** Waypoints, and the points of routes that have a name. */
  readonly waypoints: readonly GpxWaypoint[];
  /** What was left out, with its reason. */
  readonly left: readonly RouteRemark[];
};

/** Names in a GPX file may run over lines and be long; those of a route are one line of at most 120 characters. */
const tidyName = (text: string): string =>
  text
    .replace(/[\p{Cc}\s]+/gu, ' ')
    .trim()
    .slice(0, 120)
    .replace(/\p{Cs}$/u, '');

type OpenPoint = { -readonly [Field in keyof GpxPoint]: GpxPoint[Field] };
type Words = { name: string; symbol: string; type: string };

/**
 * Reads the tracks, routes and waypoints of a GPX 1.1 or 1.0 text. The segments of a track are joined in their order. Extensions are passed over.
 *
 * @param xml the text of the file, at most MAX_GPX_CHARACTERS with at most MAX_GPX_POINTS points and MAX_GPX_LINES tracks and routes
 * @param nameOf names lines without a name
 * @throws RouteError for what is not well-formed, not GPX, has a DOCTYPE (no entity is ever expanded), a position off the globe, or no track or route of two points
 */
export function readGpx(xml: string, nameOf: NameOf = plainName): GpxContent {
  if (xml.trim() === '') throw new RouteError({ code: 'empty-file' });
  if (xml.length > MAX_GPX_CHARACTERS)
    throw new RouteError({ code: 'too-long-file', characters: xml.length, most: MAX_GPX_CHARACTERS });

  const lines: GpxLine[] = [];
  const waypoints: GpxWaypoint[] = [];
  const left: RouteRemark[] = [];
  let pointCount = 0;
  let lineCount = 0;

  const parser = new SaxesParser();
  /** Names of the open elements; empty for those of other namespaces. */
  const open: string[] = [];
  let prefix = '';
  let line: { kind: 'track' | 'route'; name: string; points: GpxPoint[] } | undefined;
  let point: OpenPoint | undefined;
  let words: Words | undefined;
  let text: string | undefined;

  const fail = (fault: RouteFault): never => {
    throw new RouteError(fault, { line: parser.line });
  };

  const coordinate = (tag: SaxesTagPlain, attribute: 'lat' | 'lon', limit: number): number => {
    const stated = tag.attributes[attribute];
    if (stated === undefined || stated.trim() === '')
      fail({ code: 'no-coordinate', element: tag.name, attribute });
    const degrees = Number(stated);
    if (!(Math.abs(degrees) <= limit)) fail({ code: 'not-degrees', attribute, stated: stated ?? '', limit });
    return degrees;
  };

  const openPoint = (tag: SaxesTagPlain): void => {
    if (++pointCount > MAX_GPX_POINTS) fail({ code: 'too-many-points', most: MAX_GPX_POINTS });
    point = {
      latDeg: coordinate(tag, 'lat', 90),
      lonDeg: coordinate(tag, 'lon', 180),
      elevationM: undefined,
    };
    words = undefined;
  };

  const openLine = (kind: 'track' | 'route'): void => {
    if (++lineCount > MAX_GPX_LINES) fail({ code: 'too-many-lines', most: MAX_GPX_LINES });
    line = { kind, name: '', points: [] };
  };

  const closeLine = (): void => {
    if (!line) return;
    const { kind, points } = line;
    const ordinal = lines.filter((other) => other.kind === kind).length + 1;
    const name = line.name || nameOf(kind, ordinal);
    if (points.length >= 2) lines.push({ kind, name, points, lengthM: lineLengthM(points) });
    else left.push({ code: 'short-line', kind, name, points: points.length });
    line = undefined;
  };

  const closePoint = (parent: string): void => {
    if (!point) return;
    if (parent !== 'gpx') line?.points.push(point);
    if (parent === 'gpx' || words?.name) {
      const { latDeg, lonDeg } = point;
      waypoints.push({ latDeg, lonDeg, ...(words ?? noWords()) });
    }
    point = undefined;
  };

  parser.on('doctype', () => fail({ code: 'doctype' }));
  parser.on('opentag', (tag) => {
    const parent = open.at(-1);
    if (parent === undefined) {
      prefix = tag.name.slice(0, tag.name.indexOf(':') + 1);
      if (tag.name !== `${prefix}gpx`) fail({ code: 'not-gpx', element: tag.name });
    }
    const name = prefix === '' || tag.name.startsWith(prefix) ? tag.name.slice(prefix.length) : '';
    open.push(name);
    if (open.length > MOST_LEVELS) fail({ code: 'too-deep', most: MOST_LEVELS });
    text = undefined;
    switch (`${parent ?? ''} ${name}`) {
      case 'gpx trk':
        return openLine('track');
      case 'gpx rte':
        return openLine('route');
      case 'trkseg trkpt':
      case 'rte rtept':
      case 'gpx wpt':
        return openPoint(tag);
      case 'trk name':
      case 'rte name':
      case 'trkpt ele':
      case 'rtept ele':
      case 'rtept name':
      case 'rtept sym':
      case 'rtept type':
      case 'wpt name':
      case 'wpt sym':
      case 'wpt type':
        text = '';
    }
  });
  const collect = (part: string): void => {
    if (text !== undefined) text += part;
  };
  parser.on('text', collect);
  parser.on('cdata', collect);
  parser.on('closetag', () => {
    const name = open.pop() ?? '';
    const parent = open.at(-1) ?? '';
    if (text !== undefined) {
      if (point) {
        if (name === 'ele') point.elevationM = readElevation(text);
        else
          (words ??= noWords())[name === 'sym' ? 'symbol' : name === 'type' ? 'type' : 'name'] =
            tidyName(text);
      } else if (line) line.name = tidyName(text);
      text = undefined;
    }
    if ((parent === 'trkseg' && name === 'trkpt') || (parent === 'rte' && name === 'rtept'))
      closePoint(parent);
    else if (parent === 'gpx') {
      if (name === 'wpt') closePoint(parent);
      else if (name === 'trk' || name === 'rte') closeLine();
    }
  });

  try {
    parser.write(xml).close();
  } catch (error) {
    throw error instanceof RouteError ? error : notWellFormed(error);
  }

  if (lines.length === 0)
    throw new RouteError(
      left.length > 0
        ? { code: 'lines-too-short', left }
        : waypoints.length > 0
          ? { code: 'waypoints-only', count: waypoints.length }
          : { code: 'no-line' },
    );
  return { lines, waypoints, left };
}

const noWords = (): Words => ({ name: '', symbol: '', type: '' });

const readElevation = (text: string): number | undefined => {
  const elevationM = text.trim() === '' ? NaN : Number(text);
  return Number.isFinite(elevationM) ? elevationM : undefined;
};

/** saxes says "LINE:COLUMN: what is wrong." */
function notWellFormed(error: unknown): RouteError {
  const [, line, what] = /^(\d+):\d+: (.*?)\.?$/s.exec(error instanceof Error ? error.message : '') ?? [];
  return new RouteError(
    { code: 'not-well-formed', ...(what && { what }) },
    line ? { line: Number(line) } : {},
  );
}
