import { expect, test } from 'vitest';
import { homeOf, linkMay, readersMay } from './read-scope.ts';

const ask = (route: string | null, method = 'GET', tripId?: string) => ({ method, route, tripId });
const card = { tripId: 'a', mayNote: false };
const notes = { tripId: 'a', mayNote: true };
const shelf = { tripId: undefined, mayNote: false };

test('readers read what a code leads to, and change nothing', () => {
  for (const route of ['/shelf/[code]', '/trips/[id]/card', '/trips/[id]/card.html', '/trips/[id]/packing']) {
    expect(readersMay(ask(route))).toBe(true);
    expect(readersMay(ask(route, 'POST'))).toBe(false);
  }
  for (const route of ['/', '/shelf', '/shelf/new', '/shelf/labels', '/trips/[id]/menu', '/settings', null])
    expect(readersMay(ask(route)), String(route)).toBe(false);
});

test('a link for a trip opens that trip and no other', () => {
  for (const route of [
    '/trips/[id]/card',
    '/trips/[id]/card.html',
    '/trips/[id]/packing',
    '/trips/[id]/menu',
  ]) {
    expect(linkMay(card, ask(route, 'GET', 'a'))).toBe(true);
    expect(linkMay(card, ask(route, 'HEAD', 'a'))).toBe(true);
    expect(linkMay(card, ask(route, 'POST', 'a'))).toBe(false);
    expect(linkMay(card, ask(route, 'GET', 'b'))).toBe(false);
    expect(linkMay(card, ask(route))).toBe(false);
  }
  for (const route of [
    '/',
    '/shelf',
    '/shelf/[code]',
    '/trips',
    '/trips/[id]/party',
    '/settings/access',
    null,
  ])
    expect(linkMay(notes, ask(route, 'GET', 'a')), String(route)).toBe(false);
  expect(homeOf(card)).toBe('/trips/a/card');
});

test('notes of the trail are taken for the one trip where the link allows it', () => {
  const route = '/trips/[id]/notes.json';
  expect(linkMay(notes, ask(route, 'POST', 'a'))).toBe(true);
  expect(linkMay(notes, ask(route, 'GET', 'a'))).toBe(true);
  expect(linkMay(notes, ask(route, 'DELETE', 'a'))).toBe(false);
  expect(linkMay(notes, ask(route, 'POST', 'b'))).toBe(false);
  expect(linkMay(card, ask(route, 'POST', 'a'))).toBe(false);
  expect(linkMay(card, ask(route, 'GET', 'a'))).toBe(false);
});

test('a link for the shelf opens its lots', () => {
  for (const route of ['/shelf', '/shelf/[code]', '/shelf/lots.json']) {
    expect(linkMay(shelf, ask(route))).toBe(true);
    expect(linkMay(shelf, ask(route, 'POST'))).toBe(false);
  }
  for (const route of ['/', '/shelf/new', '/shelf/export.csv', '/trips/[id]/card'])
    expect(linkMay(shelf, ask(route, 'GET', 'a')), route).toBe(false);
  expect(homeOf(shelf)).toBe('/shelf');
});
