import { expect, test } from 'vitest';
import { beyondBounds } from './json-bounds.ts';

test('what a file may hold is let through', () => {
  expect(beyondBounds('{"a":[1,{"b":"x"}]}')).toBeUndefined();
  expect(beyondBounds('['.repeat(100))).toBeUndefined();
  expect(beyondBounds(`[${'1,'.repeat(900_000)}1]`)).toBeUndefined();
});

test('what nests or counts without end is not', () => {
  expect(beyondBounds('['.repeat(101))).toMatch(/100 levels/);
  expect(beyondBounds('{"a":'.repeat(101))).toMatch(/100 levels/);
  expect(beyondBounds(`[${'[],'.repeat(600_000)}[]]`)).toMatch(/1,000,000 values/);
});

test('a text counts as one value, whatever stands in it', () => {
  expect(beyondBounds(JSON.stringify('[{,'.repeat(2_000_000)))).toBeUndefined();
  expect(beyondBounds(JSON.stringify(`"\\${'['.repeat(200)}`))).toBeUndefined();
  expect(beyondBounds(`"\\"${'['.repeat(200)}`)).toBeUndefined();
  expect(beyondBounds(`"\\\\"${'['.repeat(200)}`)).toMatch(/levels/);
});
