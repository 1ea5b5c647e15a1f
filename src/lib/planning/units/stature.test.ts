import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feetAndInchesM, statureValue } from './stature.ts';

describe('statureValue', () => {
  it('gives centimetres, or feet and inches', () => {
    expect(statureValue(1.78, 'metric')).toBe('178');
    expect(statureValue(1.778, 'us')).toBe('5 ft 10 in');
    expect(statureValue(1.8288, 'us')).toBe('6 ft 0 in');
  });

  it('never shows twelve inches, and is read back to a twentieth of an inch', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.8, max: 2.4, noNaN: true }), (heightM) => {
        const text = statureValue(heightM, 'us');
        expect(text).not.toMatch(/ 12 in/);
        expect(Math.abs((feetAndInchesM(text) ?? 0) - heightM)).toBeLessThan(0.00128);
      }),
    );
  });
});

describe('feetAndInchesM', () => {
  it.each(['5 ft 10 in', `5'10"`, '5′ 10″', '5 feet 10', '5ft 10in'])('reads %s', (text) => {
    expect(feetAndInchesM(text)).toBeCloseTo(1.778, 9);
  });
  it('reads feet alone and half inches', () => {
    expect(feetAndInchesM('6 ft')).toBeCloseTo(1.8288, 9);
    expect(feetAndInchesM('5 ft 10.5 in')).toBeCloseTo(1.7907, 9);
  });
  it.each(['5 ft 12 in', '70', '5.8', 'tall', ''])('does not read "%s"', (text) => {
    expect(feetAndInchesM(text)).toBeUndefined();
  });
});
