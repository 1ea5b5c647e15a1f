/*
 * What can be read without signing in to everything. Told by the route that a request leads to, not by its address, which can be
 * written in more than one way.
 */

/** What a link that was given out opens. */
export type ReadScope = {
  /** The one trip that can be read; `undefined` where it is the shelf. */
  readonly tripId: string | undefined;
  /** Notes of the trail are taken for that trip. */
  readonly mayNote: boolean;
};

export type Asked = {
  readonly method: string;
  /** As SvelteKit names it. */
  readonly route: string | null;
  readonly tripId: string | undefined;
};

const CARD = ['/trips/[id]/card', '/trips/[id]/card.html', '/trips/[id]/packing'];
const NOTES = '/trips/[id]/notes.json';
/** What a code on a pouch or a card leads to. */
const FOR_READERS = [...CARD, '/shelf/[code]', '/shelf/[code]/photo/image'];
const OF_TRIP = [...CARD, '/trips/[id]/menu'];
const OF_SHELF = ['/shelf', '/shelf/[code]', '/shelf/[code]/photo/image', '/shelf/lots.json'];

const reads = ({ method }: Asked): boolean => method === 'GET' || method === 'HEAD';

/** @returns whether the address for readers answers this */
export const readersMay = (asked: Asked): boolean => reads(asked) && FOR_READERS.includes(asked.route ?? '');

/** @returns whether whoever came by a link may do this */
export function linkMay({ tripId, mayNote }: ReadScope, asked: Asked): boolean {
  const route = asked.route ?? '';
  if (tripId === undefined) return reads(asked) && OF_SHELF.includes(route);
  if (asked.tripId !== tripId) return false;
  return route === NOTES
    ? mayNote && (reads(asked) || asked.method === 'POST')
    : reads(asked) && OF_TRIP.includes(route);
}

/** @returns the page that a link leads to */
export const homeOf = ({ tripId }: ReadScope): string =>
  tripId === undefined ? '/shelf' : `/trips/${tripId}/card`;
