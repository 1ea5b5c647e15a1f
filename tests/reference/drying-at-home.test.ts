/**
 * Sources: University of Wyoming Extension (Hayman): jerky made at home keeps two weeks at room temperature, 3 to 6 months in the refrigerator, a year in the freezer; University of
 * Georgia, So Easy to Preserve: dried fruit keeps a year at 60 °F and six months at 80 °F, dried foods four months to a year; FDA: beans soaked 5 h and boiled 30 min; Beuchat 1981
 * and Jay, Modern Food Microbiology ch. 18: water activity of dried fruit (15-20 % moisture) 0.60-0.65, of low-moisture foods 0.60 and less, of jerky 0.75-0.80.
 */
import { describe, expect, it } from 'vitest';
import { safetyChecks } from '../../src/lib/planning/drying/safety-steps.ts';
import { keeping, warmthFactor } from '../../src/lib/planning/drying/storage.ts';
import { waterActivityOf } from '../../src/lib/planning/drying/water-activity.ts';
import { defaultKitchen } from '../../src/lib/planning/model/kitchen.ts';
import { BARRIERS, FAT_CLASSES } from '../../src/lib/planning/model/words.ts';
import { toCore } from '../../src/lib/planning/units/convert.ts';
import { checkText } from '../../src/lib/presentation/batch-words.ts';
import { exampleFood, exampleRecipe } from '../support/kitchen-examples.ts';

const SEALED = '2026-09-01';
const days = (until: string) => (Date.parse(until) - Date.parse(SEALED)) / 86_400_000;
const kept = (storageTemperatureC: number, hasMeat: boolean) => {
  const food = {
    process: 'dehydrated',
    fatClass: 'lean',
    residual: 0.08,
    barrier: 'foil pouch',
    absorber: true,
  } as const;
  const result = keeping(
    { ...food, sealedOn: SEALED, hasMeat },
    { ...defaultKitchen(), storageTemperatureC },
  );
  if (!result) throw new Error('no such line');
  return days(result.bestBefore);
};

describe('meat dried in warm air', () => {
  it('keeps two weeks at room temperature', () => expect(kept(20, true)).toBeLessThanOrEqual(14));
  it('keeps 3 to 6 months in the refrigerator', () => {
    expect(kept(4, true)).toBeGreaterThanOrEqual(89);
    expect(kept(4, true)).toBeLessThanOrEqual(184);
  });
  it('keeps up to a year in the freezer', () => expect(kept(-18, true)).toBeLessThanOrEqual(366));
});

describe('food dried in warm air', () => {
  it('keeps a year at most, whatever it is sealed in', () => {
    for (const { process, months } of defaultKitchen().storage)
      if (process === 'dehydrated') expect(months).toBeLessThanOrEqual(12);
    expect(defaultKitchen().storage).toHaveLength(2 * 2 * BARRIERS.length * FAT_CLASSES.length);
  });

  it('keeps half as long 20 °F warmer', () =>
    expect(warmthFactor(20 + (toCore(80, '°F') - toCore(60, '°F')))).toBeCloseTo(6 / 12, 9));
});

describe('water activity by moisture without fat', () => {
  it.each([
    [0.15, 0.6, 0.65],
    [0.2, 0.6, 0.65],
    [0.28, 0.75, 0.8],
    [0.05, 0.15, 0.3],
  ])('of %d lies between %d and %d', (moisture, low, high) => {
    expect(waterActivityOf(moisture).value).toBeGreaterThanOrEqual(low);
    expect(waterActivityOf(moisture).value).toBeLessThanOrEqual(high);
  });

  it('of food of more than 50 % moisture is above what is stable', () =>
    expect(waterActivityOf(0.55).value).toBeGreaterThan(0.85));
});

it('dried kidney beans are soaked 5 hours and boiled hard for 30 minutes', () => {
  const food = exampleFood({
    name: 'Kidney beans, dry',
    composition: { waterG: 12, proteinG: 24, fatG: 1, carbohydrateG: 40 },
  });
  const recipe = exampleRecipe({ ingredients: [{ food, quantity: { amount: 1, unit: 'kg' } }] });
  const check = safetyChecks(recipe, 'freeze-dried').find(({ id }) => id === 'beans boiled');
  if (!check) throw new Error('beans are not asked after');
  expect(checkText(check)).toMatch(/at least 5 hours.*at least 30 minutes/);
});
