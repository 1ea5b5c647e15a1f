import type { NameOf } from '../planning/route/read-gpx.ts';
import type { RouteError } from '../planning/route/route-error.ts';
import type { RouteFault, RouteRemark } from '../planning/route/route-faults.ts';
import { showBoth } from './both.ts';
import { say } from '../texts/say.ts';

/** @returns what keeps a route from being read or split into days, where, and what to do. */
export function routeErrorText({ fault, where: { line, day } }: RouteError): string {
  const message = routeFaultText(fault);
  return line !== undefined
    ? say('Line {line}: {message}', { line: String(line), message })
    : day !== undefined
      ? say('Day {day}: {message}', { day, message })
      : message;
}

/** @returns what keeps a route from being read or split into days, without its line or day. */
export function routeFaultText(fault: RouteFault): string {
  switch (fault.code) {
    case 'empty-file':
      return say('The file is empty. Choose a GPX file with a track or a route.');
    case 'too-long-file':
      return say(
        'The file has {count} million characters; at most {most} million are read. Thin out the track, or cut it in parts.',
        { count: String(Math.round(fault.characters / 1e6)), most: String(fault.most / 1e6) },
      );
    case 'no-coordinate':
      return say('a {tag} has no {attribute}. Add it, or remove the point.', {
        tag: `<${fault.element}>`,
        attribute: fault.attribute,
      });
    case 'not-degrees':
      return say(
        '{attribute}="{stated}" is not a number of degrees from -{limit} to {limit}. Correct it, or remove the point.',
        { attribute: fault.attribute, stated: fault.stated, limit: fault.limit },
      );
    case 'too-many-points':
      return say('the file has more than {most} points. Thin out the track, or cut it in parts.', {
        most: String(fault.most),
      });
    case 'too-many-lines':
      return say('the file has more than {most} tracks and routes. Keep the one that you walk.', {
        most: String(fault.most),
      });
    case 'too-deep':
      return say('the file nests more than {most} elements, which no GPX file does. Export it again.', {
        most: fault.most,
      });
    case 'doctype':
      return say('the file has a DOCTYPE, which GPX does not need and which is not read. Remove it.');
    case 'not-gpx':
      return say(
        'the file is XML, but a {tag}, not a {gpx}. Export the track as GPX where you drew or recorded it.',
        { tag: `<${fault.element}>`, gpx: '<gpx>' },
      );
    case 'not-well-formed':
      return fault.what === undefined
        ? say('this is not well-formed XML. The file is damaged, cut off or no GPX file; export it again.')
        : say(
            'this is not well-formed XML ({what}). The file is damaged, cut off or no GPX file; export it again.',
            { what: fault.what },
          );
    case 'lines-too-short':
      return [
        ...fault.left.map(routeRemarkText),
        say('Choose a file with a track or route of at least two points.'),
      ].join(' ');
    case 'waypoints-only':
      return say(
        'The file has {count, plural, one {# waypoint} other {# waypoints}} but no track and no route. Export the track as well.',
        { count: fault.count },
      );
    case 'no-line':
      return say('The file is GPX, but has no track and no route. Choose one with a track or a route.');
    case 'no-such-line':
      return say(
        'The file has {count, plural, one {# track or route} other {# tracks and routes}}, but number {picked} was asked for. Choose one of: {names}.',
        {
          count: fault.count,
          picked: String(fault.picked),
          names: [...fault.names.map(quoted), ...(fault.count > fault.names.length ? ['…'] : [])].join(', '),
        },
      );
    case 'stays-in-place':
      return say('The track stays in one place. Choose a track or route that goes somewhere.');
    case 'too-long-track':
      return say(
        'The track is {length} km long; at most {most} km are planned. Check its points, or cut it in parts.',
        { length: String(Math.round(fault.lengthM / 1000)), most: String(fault.mostM / 1000) },
      );
    case 'more-ends-than-days':
      return say(
        '{ends} ends of days are chosen, but the trip has only {days, plural, one {# day} other {# days}}. Remove some, or add days.',
        { ends: fault.ends, days: fault.days },
      );
    case 'end-behind-day':
      return say(
        '"{name}" is {chosen} along the route, before {from}, where day {day} ends. Choose a place farther along, or the same one for a rest day.',
        { name: fault.name, chosen: along(fault.chosenM), from: along(fault.fromM), day: fault.day },
      );
    case 'no-such-waypoint':
      return fault.names.length === 0
        ? say('the route has no waypoint "{name}", nor any other. Leave the end of the day open.', {
            name: fault.name,
          })
        : say('the route has no waypoint "{name}". Choose one of: {names}.', {
            name: fault.name,
            names: fault.names.map(quoted).join(', '),
          });
    case 'last-day-ends-early':
      return say(
        'the last day ends at the end of the route, {end} along it, but "{name}" lies at {place}. Leave its end open, or add days.',
        { end: along(fault.endM), name: fault.name, place: along(fault.atM) },
      );
    case 'leg-beyond-range':
      return say(
        'the {what, select, distance {distance} climb {climb} other {descent}} is {value} m. Enter a number from 0 to 1000 km.',
        { what: fault.what, value: String(fault.valueM) },
      );
    case 'leg-too-steep':
      return say(
        '{height} m of climb and descent on {distance} m of way are steeper than 45°. Check the distance, the climb and the descent.',
        { height: String(Math.round(fault.heightM)), distance: String(Math.round(fault.distanceM)) },
      );
  }
}

/** @returns what was left out of a file, or taken for granted, with its reason. */
export function routeRemarkText(remark: RouteRemark): string {
  switch (remark.code) {
    case 'short-line':
      return say(
        'The {kind, select, track {track} other {route}} "{name}" has {points, plural, =0 {no point} other {only one point}}; it takes two to walk.',
        { kind: remark.kind, name: remark.name, points: remark.points },
      );
    case 'leaps':
      return say(
        '{count, plural, one {# point far off the track was ignored.} other {# points far off the track were ignored.}}',
        { count: remark.count },
      );
    case 'gaps':
      return say(
        'The track has no point for {length} from {from} on{others, plural, =0 {; the gap is taken as a straight walk.} one {, and # shorter gap elsewhere; each gap is taken as a straight walk.} other {, and # shorter gaps elsewhere; each gap is taken as a straight walk.}}',
        {
          length: showBoth(remark.lengthM, 'distance'),
          from: showBoth(remark.fromM, 'distance'),
          others: remark.others,
        },
      );
    case 'no-elevation':
      return say('The track has no elevation, so that its climb is not known and is taken as none.');
    case 'elevations-missing':
      return say(
        '{missing} of {points} points have no usable elevation; it is interpolated from their neighbours.',
        { missing: String(remark.missing), points: String(remark.points) },
      );
    case 'elevations-jump':
      return say(
        "{spikes, plural, one {# point had an elevation far from its neighbours'; it was ignored.} other {# points had elevations far from their neighbours'; they were ignored.}}",
        { spikes: remark.count },
      );
    case 'waypoint-off-route':
      return say('The waypoint "{name}" is {off} off the route and was left out; the limit is {most}.', {
        name: remark.name,
        off: showBoth(remark.offM, 'distance'),
        most: showBoth(remark.mostM, 'distance'),
      });
    case 'waypoint-twice':
      return say('The waypoint "{name}" appears twice in the same place; one was kept.', {
        name: remark.name,
      });
    case 'waypoint-too-many':
      return say('The waypoint "{name}" was left out: a route can have at most {most}.', {
        name: remark.name,
        most: String(remark.most),
      });
    case 'waypoints-not-read':
      return say('The last {count} waypoints of the file were not looked at: at most {most} are.', {
        count: String(remark.count),
        most: String(remark.most),
      });
  }
}

/** Names what a file leaves without a name. */
export const nameOnRoute: NameOf = (kind, number) =>
  kind === 'waypoint'
    ? say('Waypoint {number}', { number })
    : say('{kind, select, track {Track} other {Route}} {number}', { kind, number });

const along = (m: number): string => showBoth(m, 'distance');
const quoted = (name: string): string => `"${name}"`;
