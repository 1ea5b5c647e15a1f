/** Sources: NIST Handbook 44, appendix C (exact US customary factors); Regulation (EU) 1169/2011 (1 kcal = 4.184 kJ). */
import { describe, expect, it } from 'vitest';
import { fromCore, toCore, type Unit } from '../../src/lib/planning/units/convert.ts';

describe('units', () => {
  it.each<[number, Unit, number]>([
    [1, 'lb', 453.59237],
    [16, 'oz', 453.59237],
    [1, 'qt', 946.352946],
    [4, 'cup', 946.352946],
    [32, 'fl oz', 946.352946],
    [1, 'mi', 1609.344],
    [5280, 'ft', 1609.344],
    [4.184, 'kJ', 1],
    [212, '°F', 100],
    [32, '°F', 0],
    [-40, '°F', -40],
  ])('%d %s is %d in the core', (value, unit, core) => {
    expect(toCore(value, unit)).toBeCloseTo(core, 9);
    expect(fromCore(core, unit)).toBeCloseTo(value, 9);
  });
});
