import { expect, test } from 'vitest';
import { z } from 'zod';
import { longList } from './long-list.ts';

const seen: unknown[] = [];
const Element = z.number().refine((value) => seen.push(value) > 0 && value >= 0, 'is negative');
const List = longList(Element, 1000, 'is too long').describe('with a word on it');

test('what is right comes through, in its order', () => {
  const good = Array.from({ length: 1000 }, (_, index) => index);
  expect(List.parse(good)).toEqual(good);
});

test('more than the most is refused before any element is looked at', () => {
  seen.length = 0;
  const { error } = List.safeParse(Array.from({ length: 1001 }, () => -1));
  expect(error?.issues).toMatchObject([{ path: [], message: 'is too long' }]);
  expect(seen).toEqual([]);
});

test('no element is looked at after the hundredth problem', () => {
  seen.length = 0;
  const { error } = List.safeParse(Array.from({ length: 1000 }, (_, index) => (index < 150 ? 1 : -1)));
  expect(error?.issues[0]).toMatchObject({ path: [150], message: 'is negative' });
  expect(error?.issues.length).toBeGreaterThanOrEqual(100);
  expect(seen.length).toBeLessThanOrEqual(300);
});

test('its schema says how long it may be', () => {
  expect(z.toJSONSchema(List)).toMatchObject({ type: 'array', maxItems: 1000 });
});
