import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldValue } from '$lib/presentation/show.ts';
import { FormReader, typedNumber, withoutUndefined } from './read-form.ts';

function reader(fields: Record<string, string | string[]>, system: 'metric' | 'us' = 'metric') {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields))
    for (const each of [value].flat()) form.append(name, each);
  return new FormReader(form, system);
}

describe('typedNumber', () => {
  it.each([
    ['120', 120],
    ['4.5', 4.5],
    ['4,5', 4.5],
    [' 1 200 ', 1200],
    ['1,200.5', 1200.5],
    ['0,250', 0.25],
    ['-3', -3],
    ['−3', -3],
    ['.5', 0.5],
    ['12.', 12],
  ])('reads %j', (text, value) => expect(typedNumber(text)).toBe(value));

  it('asks about a comma that may be either', () => {
    expect(typedNumber('1,200')).toEqual({
      problem: '"1,200" may mean 1200 or 1.200; write it without the comma, or with a point',
    });
  });

  it.each(['', 'abc', '1.2.3', '12 g', '1e5', 'NaN', 'Infinity', '0x10', '--1'])('refuses %j', (text) =>
    expect(typedNumber(text)).toHaveProperty('problem'),
  );
});

describe('FormReader', () => {
  it('brings units to those of the core', () => {
    expect(reader({ a: '1' }, 'us').number('a', { quantity: 'food' })).toBeCloseTo(28.3495, 4);
    expect(reader({ a: '35' }).number('a', { quantity: 'share' })).toBe(0.35);
    expect(reader({ a: '50' }, 'us').number('a', { quantity: 'temperature' })).toBe(10);
    expect(reader({ a: '1,5' }).number('a')).toBe(1.5);
    expect(reader({ a: '2.5' }).money('a', 'EUR')).toBe(250);
  });

  it('reads a form in the units that it was opened in, and says so where it is refused', () => {
    const late = reader({ a: '750', shownIn: 'metric' }, 'us');
    expect(late.number('a', { quantity: 'food' })).toBe(750);
    expect(late.refused().problems).toEqual([
      { field: '', message: expect.stringContaining('the units were changed') },
    ]);
    expect(reader({ a: '1', shownIn: 'us' }, 'us').refused().problems).toEqual([]);
    expect(reader({ a: '1', shownIn: 'cubits' }).number('a', { quantity: 'food' })).toBe(1);
  });

  it('leaves a stored value as it is when its field was not touched', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.constantFrom('metric' as const, 'us' as const),
        (stored, system) => {
          const text = fieldValue(stored, 'food', system);
          expect(reader({ a: text }, system).number('a', { quantity: 'food', stored })).toBe(stored);
        },
      ),
    );
  });

  it('takes a changed field, even where a value is stored', () => {
    expect(reader({ a: '100' }).number('a', { quantity: 'food', stored: 120.4 })).toBe(100);
  });

  it('keeps what was entered and says what is wrong with it', () => {
    const read = reader({ a: 'much', b: '', boxes: ['milk', 'egg'] });
    expect(read.number('a')).toBeUndefined();
    expect(read.number('b')).toBeUndefined();
    expect(read.choices('boxes')).toEqual(['milk', 'egg']);
    read.add([
      { field: 'a', message: 'is missing', missing: true },
      { field: 'b', message: 'is missing', missing: true },
    ]);
    expect(read.refused()).toEqual({
      entered: { a: ['much'], b: [''], boxes: ['milk', 'egg'] },
      problems: [
        { field: 'a', message: '"much" is not a number. Use digits only, such as 120 or 4.5' },
        { field: 'b', message: 'please fill this in' },
      ],
    });
  });
});

it('withoutUndefined drops only what is undefined', () => {
  expect(withoutUndefined({ a: undefined, b: 0, c: '', d: null })).toEqual({ b: 0, c: '', d: null });
});
