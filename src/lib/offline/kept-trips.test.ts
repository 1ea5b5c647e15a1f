import { describe, expect, test } from 'vitest';
import {
  isOfThisVersion,
  keptAddresses,
  MOST_KEPT_TRIPS,
  pageOf,
  tripOf,
  tripsToForget,
} from './kept-trips.ts';

const ID = '0f8fad5b-d9cb-469f-a165-70867728950e';

test.each([
  [`/trips/${ID}/card`, ID],
  [`/trips/${ID}/menu/__data.json`, ID],
  [`/trips/${ID}`, ID],
  ['/trips/new', undefined],
  ['/trips', undefined],
  [`/shelf/${ID}`, undefined],
  [`/trips/${ID}0/card`, undefined],
])('%s belongs to the trip %s', (pathname, id) => expect(tripOf(pathname)).toBe(id));

test('overview, card, menu, loads, packing and shopping lists are kept, as HTML and as data', () => {
  const kept = keptAddresses(ID);
  expect(kept).toHaveLength(12);
  for (const page of ['', '/card', '/menu', '/loads', '/packing', '/shopping'])
    expect(kept.filter((address) => pageOf(address) === `/trips/${ID}${page}`)).toHaveLength(2);
});

describe('of more trips than are kept', () => {
  const kept = Array.from({ length: MOST_KEPT_TRIPS + 2 }, (_, index) => ({
    id: `trip ${index}`,
    keptAt: `2026-07-0${index + 1}T08:00:00.000Z`,
  }));

  test('those opened longest ago go', () =>
    expect(tripsToForget([...kept.slice(3), ...kept.slice(0, 3)])).toEqual(['trip 1', 'trip 0']));
  test('none goes while there is room', () => expect(tripsToForget(kept.slice(2))).toEqual([]));
});

test('a page made of files of another version is told apart', () => {
  const files = new Set(['/_app/immutable/entry/start.A1b_-2.js', '/_app/immutable/assets/0.css']);
  const page = (name: string) =>
    `<link href="../../_app/immutable/assets/0.css"><script>import("../../_app/immutable/entry/${name}")</script>`;
  expect(isOfThisVersion(page('start.A1b_-2.js'), files)).toBe(true);
  expect(isOfThisVersion(page('start.other.js'), files)).toBe(false);
});
