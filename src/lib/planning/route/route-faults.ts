/** What keeps a route from being read or split into days: a code with its params. Worded in `presentation/route-words.ts`. */
export type RouteFault =
  // the file
  | { readonly code: 'empty-file' }
  | { readonly code: 'too-long-file'; readonly characters: number; readonly most: number }
  | { readonly code: 'no-coordinate'; readonly element: string; readonly attribute: string }
  | {
      readonly code: 'not-degrees';
      readonly attribute: string;
      readonly stated: string;
      readonly limit: number;
    }
  | { readonly code: 'too-many-points' | 'too-many-lines' | 'too-deep'; readonly most: number }
  | { readonly code: 'doctype' }
  | { readonly code: 'not-gpx'; readonly element: string }
  | { readonly code: 'not-well-formed'; readonly what?: string }
  | { readonly code: 'lines-too-short'; readonly left: readonly RouteRemark[] }
  | { readonly code: 'waypoints-only'; readonly count: number }
  | { readonly code: 'no-line' }
  | {
      readonly code: 'no-such-line';
      readonly count: number;
      readonly picked: number;
      readonly names: readonly string[];
    }
  // the track
  | { readonly code: 'stays-in-place' }
  | { readonly code: 'too-long-track'; readonly lengthM: number; readonly mostM: number }
  // the days
  | { readonly code: 'more-ends-than-days'; readonly ends: number; readonly days: number }
  | {
      readonly code: 'end-behind-day';
      readonly name: string;
      readonly chosenM: number;
      readonly fromM: number;
      readonly day: number;
    }
  | { readonly code: 'no-such-waypoint'; readonly name: string; readonly names: readonly string[] }
  | {
      readonly code: 'last-day-ends-early';
      readonly endM: number;
      readonly name: string;
      readonly atM: number;
    }
  | {
      readonly code: 'leg-beyond-range';
      readonly what: 'distance' | 'climb' | 'descent';
      readonly valueM: number;
    }
  | { readonly code: 'leg-too-steep'; readonly heightM: number; readonly distanceM: number };

/** What was left out of a file, or taken for granted, with its reason. */
export type RouteRemark =
  | {
      readonly code: 'short-line';
      readonly kind: 'track' | 'route';
      readonly name: string;
      readonly points: number;
    }
  | { readonly code: 'leaps'; readonly count: number }
  | { readonly code: 'gaps'; readonly lengthM: number; readonly fromM: number; readonly others: number }
  | { readonly code: 'no-elevation' }
  | { readonly code: 'elevations-missing'; readonly missing: number; readonly points: number }
  | { readonly code: 'elevations-jump'; readonly count: number }
  | {
      readonly code: 'waypoint-off-route';
      readonly name: string;
      readonly offM: number;
      readonly mostM: number;
    }
  | { readonly code: 'waypoint-twice'; readonly name: string }
  | { readonly code: 'waypoint-too-many'; readonly name: string; readonly most: number }
  | { readonly code: 'waypoints-not-read'; readonly count: number; readonly most: number };
