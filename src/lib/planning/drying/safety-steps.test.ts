import { describe, expect, it } from 'vitest';
import { exampleBatch, exampleFood, exampleRecipe } from '../../../../tests/support/kitchen-examples.ts';
import type { CookingClass } from '../model/composition.ts';
import { openChecks, safetyChecks, whyCheckOpen } from './safety-steps.ts';

const recipeOf = (...classes: CookingClass[]) =>
  exampleRecipe({
    ingredients: classes.map((cookingClass) => ({
      food: exampleFood({ cookingClass }),
      quantity: { amount: 1, unit: 'kg' },
    })),
  });
const ids = (...classes: CookingClass[]) => safetyChecks(recipeOf(...classes)).map(({ id }) => id);

describe('safety checks', () => {
  it('ask for a temperature of what has to be cooked through, once for each kind', () => {
    expect(ids('other').filter((id) => id.startsWith('cooked'))).toEqual([]);
    expect(ids('other')).not.toContain('apart');
    expect(ids('fish', 'other', 'poultry', 'fish').filter((id) => id.startsWith('cooked'))).toEqual([
      'cooked poultry',
      'cooked fish',
    ]);
    expect(ids('fish')).toContain('apart');
  });

  it('ask of every dish for clean hands, time, a look inside, dryness and seams', () => {
    expect(ids('other')).toEqual(['hands', 'two hours', 'dry through', 'low oxygen', 'seams']);
  });

  it('are open until they are ticked, and until a temperature is reached', () => {
    const [poultry] = safetyChecks(recipeOf('poultry')).filter(({ leastC }) => leastC !== undefined);
    const why = (...readingsC: (number | undefined)[]) =>
      poultry &&
      whyCheckOpen(
        poultry,
        readingsC.map((readingC) => ({ id: poultry.id, on: '2026-09-01', readingC, note: '' })),
      );
    expect(why()).toEqual({ code: 'not-ticked' });
    expect(why(undefined)).toEqual({ code: 'no-temperature' });
    expect(why(73.5)).toMatchObject({ code: 'too-cold', readingC: 73.5 });
    expect(why(74)).toBeUndefined();
    // cooked on, and measured again
    expect(why(60, 76)).toBeUndefined();
    expect(why(76, 60)).toMatchObject({ readingC: 60 });
  });

  it('of a batch are listed with why they are open', () => {
    expect(openChecks(exampleBatch({ recipe: recipeOf('egg') }))).toEqual([]);
    expect(openChecks(exampleBatch({ checks: [] })).map(({ open }) => open.code)).toEqual(
      Array.from({ length: 5 }, () => 'not-ticked'),
    );
  });
});
