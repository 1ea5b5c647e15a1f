/**
 * Sources: USDA FSIS, jerky and food safety: all meat to 160 °F (71 °C) and poultry to 165 °F (74 °C) before it is dried, then air of 130 to 140 °F; safe minimum internal
 * temperatures: fish 145 °F, egg dishes 160 °F, reheated dishes 165 °F; the two-hour rule: not above 40 °F for more than 2 hours, 1 hour above 90 °F.
 */
import { describe, expect, it } from 'vitest';
import { safetyChecks, whyCheckOpen } from '../../src/lib/planning/drying/safety-steps.ts';
import type { CookingClass } from '../../src/lib/planning/model/composition.ts';
import { COOKING_CLASSES } from '../../src/lib/planning/model/words.ts';
import { checkText } from '../../src/lib/presentation/batch-words.ts';
import { toCore } from '../../src/lib/planning/units/convert.ts';
import { exampleFood, exampleRecipe } from '../support/kitchen-examples.ts';

const checks = safetyChecks(
  exampleRecipe({
    ingredients: COOKING_CLASSES.map((cookingClass) => ({
      food: exampleFood({ cookingClass }),
      quantity: { amount: 100, unit: 'g' },
    })),
  }),
  'dehydrated',
);
const check = (id: string) => {
  const found = checks.find((entry) => entry.id === id);
  if (!found) throw new Error(`no check "${id}"`);
  return found;
};

describe.each<[CookingClass, leastF: number, leastC: number]>([
  ['poultry', 165, 74],
  ['minced meat', 160, 71],
  ['whole meat', 160, 71],
  ['fish', 145, 63],
  ['egg', 160, 71],
  ['leftovers', 165, 74],
])('%s', (cookingClass, leastF, leastC) => {
  const cooked = check(`cooked ${cookingClass}`);
  const passes = (readingC: number) =>
    whyCheckOpen(cooked, [{ id: cooked.id, on: '2026-09-01', readingC, note: '' }]) === undefined;

  it(`is asked to be ${leastF} °F or ${leastC} °C in words`, () => {
    expect(checkText(cooked)).toContain(`${leastC} °C (${leastF} °F)`);
  });

  it(`passes at ${leastF} °F and not a degree below`, () => {
    expect(passes(toCore(leastF, '°F'))).toBe(true);
    expect(passes(toCore(leastF - 1, '°F'))).toBe(false);
  });

  it(`passes at ${leastC} °C and not a degree below`, () => {
    expect(passes(leastC)).toBe(true);
    expect(passes(leastC - 1)).toBe(false);
  });
});

describe('meat in warm air', () => {
  const air = check('dryer air');
  const passes = (readingC: number) =>
    whyCheckOpen(air, [{ id: air.id, on: '2026-09-01', readingC, note: '' }]) === undefined;

  it('dries at 130 °F and not a few degrees below', () => {
    expect(passes(toCore(130, '°F'))).toBe(true);
    expect(passes(toCore(126, '°F'))).toBe(false);
  });

  it('is asked after of meat only', () => {
    const beans = exampleRecipe({
      ingredients: [{ food: exampleFood(), quantity: { amount: 1, unit: 'kg' } }],
    });
    expect(safetyChecks(beans, 'dehydrated').map(({ id }) => id)).not.toContain('dryer air');
  });
});

describe('in words', () => {
  it('drying does not kill germs', () => {
    expect(checkText(check('cooked poultry'))).toContain('Drying does not kill germs');
  });

  it('food stands no more than 2 hours above 40 °F, 1 hour above 90 °F', () => {
    expect(checkText(check('two hours'))).toMatch(
      /2 hours above 4 °C \(40 °F\).*1 hour above 32 °C \(90 °F\)/,
    );
  });
});
