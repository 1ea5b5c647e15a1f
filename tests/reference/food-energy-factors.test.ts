/** Sources: USDA Agriculture Handbook 74 and 21 CFR 101.9(c)(1), general factors 4-9-4; Regulation (EU) 1169/2011, Annex XIV: carbohydrate 17 kJ (4 kcal), protein 17 kJ (4), fat 37 kJ (9), fibre 8 kJ (2), alcohol 29 kJ (7); 1 kcal = 4.184 kJ. */
import { describe, expect, it } from 'vitest';
import { atwaterKcal, energyKcalOf } from '../../src/lib/planning/model/energy-factors.ts';
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

describe('energy of all parts', () => {
  const nothing = { ...none, fibreG: 0, alcoholG: 0 };

  it.each([
    ['protein', 17, 4, { ...nothing, proteinG: 10 }],
    ['fat', 37, 9, { ...nothing, fatG: 10 }],
    ['carbohydrate', 17, 4, { ...nothing, carbohydrateG: 10 }],
    ['fibre', 8, 2, { ...nothing, fibreG: 10 }],
    ['alcohol', 29, 7, { ...nothing, alcoholG: 10 }],
  ])('is by Annex XIV for %s %d kJ or %d kcal per gram', (_, kJ, kcal, parts) => {
    expect(energyKcalOf(parts, 'eu')).toBe(10 * kcal);
    expect(Math.abs(toCore(kJ, 'kJ') - kcal)).toBeLessThan(0.5 / 4.184 + 0.05);
  });

  it('is by 21 CFR 101.9 4 kcal for each gram of total carbohydrate, fibre with it', () => {
    expect(energyKcalOf({ ...nothing, carbohydrateG: 10, fibreG: 5 }, 'atwater')).toBe(60);
    expect(energyKcalOf({ ...nothing, proteinG: 10, fatG: 10, carbohydrateG: 10 }, 'atwater')).toBe(170);
  });
});
