import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { VOLUME_ML } from '../planning/units/convert.ts';
import { friendlyAmount, showPour } from './fractions.ts';

/** Reads "1 1/4" back. */
const parse = (text: string): number =>
  text.split(' ').reduce((sum, part) => {
    const [above = 0, below = 1] = part.split('/').map(Number);
    return sum + above / below;
  }, 0);

describe('friendlyAmount', () => {
  it.each([
    [0, '0'],
    [0.05, 'less than 1/8'],
    [0.25, '1/4'],
    [0.3, '1/3'],
    [0.34, '1/3'],
    [0.55, '1/2'],
    [0.7, '2/3'],
    [0.76, '3/4'],
    [0.99, '1'],
    [1.24, '1 1/4'],
    [2.5, '2 1/2'],
    [2.96, '3'],
    [12, '12'],
  ])('%d is "%s"', (value, text) => expect(friendlyAmount(value)).toBe(text));

  it('is never further off than an eighth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.125, max: 500, noNaN: true }), (value) => {
        expect(Math.abs(parse(friendlyAmount(value)) - value)).toBeLessThanOrEqual(0.125 + 1e-9);
      }),
    );
  });

  it.each([-1, NaN])('refuses %d', (value) => expect(() => friendlyAmount(value)).toThrow(RangeError));
});

describe('showPour', () => {
  it.each([
    [353, '350 ml'],
    [1250, '1,250 ml'],
  ])('metric: %d ml is "%s"', (ml, text) => expect(showPour(ml, 'metric')).toBe(text));

  it.each([
    [VOLUME_ML.cup, '1 cup'],
    [VOLUME_ML.cup / 2, '1/2 cup'],
    [VOLUME_ML.cup * 1.25, '1 1/4 cups'],
    [VOLUME_ML.cup * 3, '3 cups'],
    [VOLUME_ML['fl oz'] * 2, '2.0 fl oz'],
  ])('US: %d ml is "%s"', (ml, text) => expect(showPour(ml, 'us')).toBe(text));
});
