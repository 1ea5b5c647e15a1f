import { describe, expect, it } from 'vitest';
import { AbsorberSize } from '../model/kitchen.ts';
import { chooseAbsorbers, oxygenInPouchMl, ruleOfThumbMl } from './absorbers.ts';

const size = (oxygenMl: number) => AbsorberSize.parse({ label: `${oxygenMl} ml`, oxygenMl });
const SIZES = [size(100), size(300)];
const chosen = (oxygenMl: number, reserve = 0, sizes = SIZES) => {
  const choice = chooseAbsorbers(oxygenMl, reserve, sizes);
  return choice && [choice.absorbers, choice.absorber.oxygenMl];
};

describe('oxygen in a pouch', () => {
  it('is that of the air beside the food', () => {
    expect(oxygenInPouchMl(1000, 0)).toBeCloseTo(209.5, 9);
    expect(oxygenInPouchMl(1000, 400)).toBeCloseTo(125.7, 9);
  });

  it('is none where the food fills it', () => {
    expect(oxygenInPouchMl(1000, 1200)).toBe(0);
  });
});

describe('absorbers', () => {
  it('are the fewest, and of as few the smaller', () => {
    expect(chosen(80)).toEqual([1, 100]);
    expect(chosen(100)).toEqual([1, 100]);
    expect(chosen(101)).toEqual([1, 300]);
    expect(chosen(301)).toEqual([2, 300]);
  });

  it('have their reserve', () => {
    expect(chosen(90, 0.25)).toEqual([1, 300]);
  });

  it('are one even where hardly any air is left', () => {
    expect(chosen(0)).toEqual([1, 100]);
  });

  it('are none where there is none, or too many would be needed', () => {
    expect(chosen(80, 0, [])).toBeUndefined();
    expect(chosen(2001, 0, [size(100)])).toBeUndefined();
    expect(chosen(2000, 0, [size(100)])).toEqual([20, 100]);
  });

  it('of one size are told apart by name, whatever their order', () => {
    const [a, b] = [
      { ...size(100), label: 'a' },
      { ...size(100), label: 'b' },
    ];
    expect(chooseAbsorbers(50, 0, [b, a])?.absorber.label).toBe('a');
    expect(chooseAbsorbers(50, 0, [a, b])?.absorber.label).toBe('a');
  });

  it('have a rule of thumb to be held against', () => {
    expect(ruleOfThumbMl(1000)).toEqual({ low: 70, high: 250 });
  });
});
