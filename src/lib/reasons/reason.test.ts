import { expect, test } from 'vitest';
import { reasonKey, type Reasons } from './reason.ts';

const reasons: Reasons = {
  stove: { of: { 'stove.fuel': { label: 'Fuel', why: 'it is usual' } } },
  dryers: {
    of: {
      dryers: { label: 'Dryers', why: 'they are usual' },
      'dryers.priceMinor': { label: 'Price', why: 'nobody entered it' },
    },
  },
  party: { of: { maxLoadG: { label: 'Carry limit', why: 'it is usual' } } },
};

test.each([
  ['stove.fuel', 'stove.fuel'],
  ['party[3].maxLoadG', 'maxLoadG'],
  ['dryers[0].trayCount', 'dryers'],
  ['dryers[0].priceMinor', 'dryers.priceMinor'],
])('%s has the reason of %s', (name, key) => {
  expect(reasonKey(reasons, name)).toBe(key);
});

test('a field that shares only the beginning of a name has none', () => {
  expect(reasonKey(reasons, 'stove')).toBeUndefined();
  expect(reasonKey(reasons, 'party[3].name')).toBeUndefined();
});
