/** Sources: USDA Agriculture Handbook 74 and 21 CFR 101.9(c)(1), general factors 4-9-4; Regulation (EU) 1169/2011, Annex XIV: carbohydrate 17 kJ, protein 17 kJ, fat 37 kJ; 1 kcal = 4.184 kJ. */
import { describe, expect, it } from 'vitest';
import { atwaterKcal } from '../../src/lib/planning/model/energy-factors.ts';
import { toCore } from '../../src/lib/planning/units/convert.ts';

const none = { proteinG: 0, fatG: 0, carbohydrateG: 0 };

describe('energy factors', () => {
  it('are 4 kcal for protein, 9 for fat and 4 for carbohydrate', () => {
    expect(atwaterKcal({ ...none, proteinG: 1 })).toBe(4);
    expect(atwaterKcal({ ...none, fatG: 1 })).toBe(9);
    expect(atwaterKcal({ ...none, carbohydrateG: 1 })).toBe(4);
  });

  it.each([
    ['protein', 17, { ...none, proteinG: 1 }],
    ['fat', 37, { ...none, fatG: 1 }],
    ['carbohydrate', 17, { ...none, carbohydrateG: 1 }],
  ])('agree with the kJ factor of the EU for %s within its rounding', (_, kJ, parts) => {
    expect(Math.abs(toCore(kJ, 'kJ') - atwaterKcal(parts))).toBeLessThan(0.5 / 4.184 + 0.05);
  });
});
