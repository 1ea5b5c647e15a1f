import { expect, test } from 'vitest';
import { everyAddress, pageRoutes, type Things } from './every-address.ts';

const THINGS: Things = {
  trip: '/trips/t',
  hungryTrip: '/trips/h',
  recipe: '/kitchen/recipes/r',
  drying: '/kitchen/batches/d',
  sealed: '/kitchen/batches/s',
  upload: '/shelf/import/u',
  backup: '/settings/backups/b',
};

test('every page has something to show', () => {
  const addresses = everyAddress(THINGS);
  expect(addresses.length).toBe(pageRoutes().length + 1);
  expect(addresses).toContain('/');
  expect(addresses).toContain('/trips/t/menu');
  expect(addresses).toContain('/settings/backups/b');
  for (const address of addresses) expect(address).not.toMatch(/[[\]]/);
});

test('a page of something unknown is named', () => {
  expect(() => everyAddress(THINGS, ['/kitchen/new-thing/[id]'])).toThrow('/kitchen/new-thing/[id]');
});
