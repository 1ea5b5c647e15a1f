import { SaxesParser, type SaxesTagPlain } from 'saxes';
import { lineLengthM } from './geodesic.ts';
import { RouteError } from './route-error.ts';
import { say } from '../../texts/say.ts';

export const MAX_GPX_CHARACTERS = 64_000_000;
export const MAX_GPX_POINTS = 1_000_000;
/** Tracks and routes, those without points among them. */
export const MAX_GPX_LINES = 10_000;
/** The format nests some six elements deep, extensions a few more. */
const MOST_LEVELS = 100;

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
  readonly left: readonly string[];
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
 * @throws RouteError for what is not well-formed, not GPX, has a DOCTYPE (no entity is ever expanded), a position off the globe, or no track or route of two points
 */
export function readGpx(xml: string): GpxContent {
  if (xml.trim() === '')
    throw new RouteError(say('The file is empty. Choose a GPX file with a track or a route.'));
  if (xml.length > MAX_GPX_CHARACTERS)
    throw new RouteError(
      say(
        'The file has {count} million characters; at most {most} million are read. Thin out the track, or cut it in parts.',
        { count: String(Math.round(xml.length / 1e6)), most: String(MAX_GPX_CHARACTERS / 1e6) },
      ),
    );

  const lines: GpxLine[] = [];
  const waypoints: GpxWaypoint[] = [];
  const left: string[] = [];
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

  const fail = (message: string): never => {
    throw new RouteError(message, { line: parser.line });
  };

  const coordinate = (tag: SaxesTagPlain, attribute: 'lat' | 'lon', limit: number): number => {
    const stated = tag.attributes[attribute];
    if (stated === undefined || stated.trim() === '')
      fail(
        say('a {tag} has no {attribute}. Add it, or remove the point.', { tag: `<${tag.name}>`, attribute }),
      );
    const degrees = Number(stated);
    if (!(Math.abs(degrees) <= limit))
      fail(
        say(
          '{attribute}="{stated}" is not a number of degrees from -{limit} to {limit}. Correct it, or remove the point.',
          { attribute, stated: stated ?? '', limit },
        ),
      );
    return degrees;
  };

  const openPoint = (tag: SaxesTagPlain): void => {
    if (++pointCount > MAX_GPX_POINTS)
      fail(
        say('the file has more than {most} points. Thin out the track, or cut it in parts.', {
          most: String(MAX_GPX_POINTS),
        }),
      );
    point = {
      latDeg: coordinate(tag, 'lat', 90),
      lonDeg: coordinate(tag, 'lon', 180),
      elevationM: undefined,
    };
    words = undefined;
  };

  const openLine = (kind: 'track' | 'route'): void => {
    if (++lineCount > MAX_GPX_LINES)
      fail(
        say('the file has more than {most} tracks and routes. Keep the one that you walk.', {
          most: String(MAX_GPX_LINES),
        }),
      );
    line = { kind, name: '', points: [] };
  };

  const closeLine = (): void => {
    if (!line) return;
    const { kind, points } = line;
    const ordinal = lines.filter((other) => other.kind === kind).length + 1;
    const name =
      line.name || say('{kind, select, track {Track} other {Route}} {number}', { kind, number: ordinal });
    if (points.length >= 2) lines.push({ kind, name, points, lengthM: lineLengthM(points) });
    else
      left.push(
        say(
          'The {kind, select, track {track} other {route}} "{name}" has {points, plural, =0 {no point} other {only one point}}; it takes two to walk.',
          { kind, name, points: points.length },
        ),
      );
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

  parser.on('doctype', () =>
    fail(say('the file has a DOCTYPE, which GPX does not need and which is not read. Remove it.')),
  );
  parser.on('opentag', (tag) => {
    const parent = open.at(-1);
    if (parent === undefined) {
      prefix = tag.name.slice(0, tag.name.indexOf(':') + 1);
      if (tag.name !== `${prefix}gpx`)
        fail(
          say(
            'the file is XML, but a {tag}, not a {gpx}. Export the track as GPX where you drew or recorded it.',
            {
              tag: `<${tag.name}>`,
              gpx: '<gpx>',
            },
          ),
        );
    }
    const name = prefix === '' || tag.name.startsWith(prefix) ? tag.name.slice(prefix.length) : '';
    open.push(name);
    if (open.length > MOST_LEVELS)
      fail(
        say('the file nests more than {most} elements, which no GPX file does. Export it again.', {
          most: MOST_LEVELS,
        }),
      );
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
        ? `${left.join(' ')} ${say('Choose a file with a track or route of at least two points.')}`
        : waypoints.length > 0
          ? say(
              'The file has {count, plural, one {# waypoint} other {# waypoints}} but no track and no route. Export the track as well.',
              { count: waypoints.length },
            )
          : say('The file is GPX, but has no track and no route. Choose one with a track or a route.'),
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
    what
      ? say(
          'this is not well-formed XML ({what}). The file is damaged, cut off or no GPX file; export it again.',
          {
            what,
          },
        )
      : say('this is not well-formed XML. The file is damaged, cut off or no GPX file; export it again.'),
    line ? { line: Number(line) } : {},
  );
}
