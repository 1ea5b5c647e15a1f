/*
 * What of a trip stays readable without a network. Shared by the service worker, which keeps it, the pages, which say so, and
 * the server, which is asked for it.
 */

/** So many trips are kept, those opened last. */
export const MOST_KEPT_TRIPS = 5;

/** What the names of the caches begin with that hold pages of trips. */
export const TRIP_CACHES = 'trips-';

/** Marks requests for copies to keep: nobody is looking, so what a page says once is not said. */
export const KEEPING_HEADER = 'x-ridgelarder-keeping';

/** Header of a kept copy: the instant at which the server gave it, ISO 8601. */
export const KEPT_AT_HEADER = 'x-ridgelarder-kept-at';

/** A page asks the service worker this, on a port of its own: is what stands at `pathname` a kept copy, and as of when? */
export type KeptQuestion = { readonly pathname: string };
/** Instant, ISO 8601; `undefined` where the page came from the server. */
export type KeptAnswer = { readonly keptAt: string | undefined };

export const DATA_SUFFIX = '/__data.json';

/** The overview, and what is wanted in the shop and on the way. */
const PAGES = ['', '/card', '/menu', '/loads', '/packing', '/shopping'] as const;
const TRIP = /^\/trips\/([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})(?:\/|$)/;

/** @returns the trip that a page, or its data, belongs to */
export const tripOf = (pathname: string): string | undefined => TRIP.exec(pathname)?.[1];

/** @returns the pages of a trip that are kept, each as HTML and as the data that a running page asks for */
export const keptAddresses = (tripId: string): string[] =>
  PAGES.flatMap((page) => [`/trips/${tripId}${page}`, `/trips/${tripId}${page}${DATA_SUFFIX}`]);

export const cardOf = (tripId: string): string => `/trips/${tripId}/card`;

/** @returns the page that a request is for, be it for its HTML or for its data */
export const pageOf = (pathname: string): string =>
  pathname.endsWith(DATA_SUFFIX) ? pathname.slice(0, -DATA_SUFFIX.length) : pathname;

export type KeptTrip = { readonly id: string; readonly keptAt: string };

/** @returns the trips beyond those that are kept, by when they were opened last */
export function tripsToForget(kept: readonly KeptTrip[]): string[] {
  return [...kept]
    .sort((a, b) => (a.keptAt < b.keptAt ? 1 : -1))
    .slice(MOST_KEPT_TRIPS)
    .map(({ id }) => id);
}

/**
 * A page only runs with the scripts it was built with; those of another version may be gone when it is wanted.
 *
 * @param html a page
 * @param files addresses of what is kept of this version
 */
export function isOfThisVersion(html: string, files: ReadonlySet<string>): boolean {
  return [...html.matchAll(/_app\/immutable\/(?!texts\/)[\w./-]+/g)].every(([file]) => files.has(`/${file}`));
}
