/*
 * What cooperative extension services and food tables publish on drying at home. Our usual values are rules of thumb in round figures; these are the ranges that
 * they have to agree with.
 */
import { describe, expect, it } from 'vitest';
import { USUAL_BULK } from '../../src/lib/planning/drying/dry-food.ts';
import { USUAL_H } from '../../src/lib/planning/drying/expect-run.ts';
import { TABLE_C, warmthFactor } from '../../src/lib/planning/drying/storage.ts';
import { defaultKitchen } from '../../src/lib/planning/model/kitchen.ts';

describe('drying in warm air', () => {
  it('takes strips of meat 10 to 14 h (University of Wyoming Extension, on jerky)', () => {
    const [low, , high] = USUAL_H.dehydrated.plain;
    expect(low).toBeLessThanOrEqual(10);
    expect(high).toBeGreaterThanOrEqual(14);
  });
});

describe('dried food', () => {
  const months = defaultKitchen()
    .storage.filter(
      ({ process, barrier, absorber }) =>
        process === 'dehydrated' && barrier === 'plastic pouch' && !absorber,
    )
    .map((rule) => rule.months);

  it('keeps 4 months to a year (University of Georgia Cooperative Extension, So Easy to Preserve): no longer, and less where it is fatty', () => {
    expect(Math.max(...months)).toBeGreaterThanOrEqual(4);
    expect(Math.max(...months)).toBeLessThanOrEqual(12);
    expect(Math.min(...months)).toBeLessThan(4);
  });

  it('as fruit keeps a year at 60 °F and half as long at 80 °F (there)', () => {
    const warmerC = (80 - 60) / 1.8;
    expect(warmthFactor(TABLE_C + warmerC)).toBeCloseTo(0.5, 9);
  });

  // USDA National Nutrient Database for Standard Reference 26, weights of a cup of 236.6 ml: potato flakes 60 g, lentils 192 g.
  it.each(['freeze-dried', 'dehydrated'] as const)(
    '%s weighs more than potato flakes and less than lentils',
    (process) => {
      expect(USUAL_BULK[process]).toBeGreaterThan(60 / 236.6);
      expect(USUAL_BULK[process]).toBeLessThan(192 / 236.6);
    },
  );
});
