import type { Batch } from '../model/batch.ts';
import { describe, expect, it } from 'vitest';
import { exampleBatch, exampleFood, exampleRecipe } from '../../../../tests/support/kitchen-examples.ts';
import type { CookingClass } from '../model/composition.ts';
import { cookAfterOf, checksOf, safetyChecks, whyCheckOpen } from './safety-steps.ts';

const recipeOf = (...classes: CookingClass[]) =>
  exampleRecipe({
    ingredients: classes.map((cookingClass) => ({
      food: exampleFood({ cookingClass }),
      quantity: { amount: 1, unit: 'kg' },
    })),
  });
const ids = (...classes: CookingClass[]) =>
  safetyChecks(recipeOf(...classes), 'freeze-dried').map(({ id }) => id);

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
    expect(ids('other')).toEqual(['hands', 'two hours', 'dry through', 'cooled', 'low oxygen', 'seams']);
  });

  it('are open until they are ticked, and until a temperature is reached', () => {
    const [poultry] = safetyChecks(recipeOf('poultry'), 'freeze-dried').filter(
      ({ leastC }) => leastC !== undefined,
    );
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

  it('ask for conditioning and pasteurising of what is dried in warm air', () => {
    const warm = safetyChecks(recipeOf('other'), 'dehydrated').map(({ id }) => id);
    expect(warm).toContain('conditioned');
    expect(warm).toContain('pasteurised');
  });

  it('of food that is freeze-dried raw ask for a mark instead of cooking; in warm air it is cooked first', () => {
    const raw = { ...recipeOf('whole meat'), driedRaw: true };
    const cold = safetyChecks(raw, 'freeze-dried').map(({ id }) => id);
    expect(cold).toContain('marked raw');
    expect(cold).not.toContain('cooked whole meat');
    expect(safetyChecks(raw, 'dehydrated').map(({ id }) => id)).toContain('cooked whole meat');
    expect(cookAfterOf(raw)).toBe('cook');
    expect(cookAfterOf(recipeOf('whole meat'))).toBeUndefined();
  });

  it.each([
    ['Kidney beans, dry', 12, true],
    ['Kidneybohnen, getrocknet', 12, true],
    ['Haricots rouges secs', 12, true],
    ['Black beans, dry', 11, true],
    ['Kidney beans, tinned, drained', 68, false],
    ['Green beans', 90, false],
    ['Soya beans, dry', 9, false],
  ])('%s with %d g of water have to be boiled hard: %s', (name, waterG, asked) => {
    const composition = { waterG, proteinG: 2, fatG: 1, carbohydrateG: 4 };
    const recipe = exampleRecipe({
      ingredients: [{ food: exampleFood({ name, composition }), quantity: { amount: 1, unit: 'kg' } }],
    });
    expect(safetyChecks(recipe, 'freeze-dried').some(({ id }) => id === 'beans boiled')).toBe(asked);
    expect(cookAfterOf({ ...recipe, driedRaw: true })).toBe(asked ? 'boil hard' : undefined);
  });

  it('of a batch are listed with why they are open', () => {
    const open = (batch: Batch, today = '2026-09-10') =>
      checksOf(batch, { conditioningDays: 4 }, today).flatMap((check) => check.open ?? []);
    expect(open(exampleBatch({ recipe: recipeOf('egg') }))).toEqual([]);
    expect(open(exampleBatch({ checks: [] })).map(({ code }) => code)).toEqual(
      Array.from({ length: 6 }, () => 'not-ticked'),
    );
    // in its jar since the 8th: conditioned from the 12th on, whatever is ticked
    const jarred = exampleBatch({
      dryer: { ...exampleBatch().dryer, process: 'dehydrated' },
      conditionedFrom: '2026-09-08',
    });
    expect(open(jarred, '2026-09-11')).toEqual([{ code: 'too-early', until: '2026-09-12' }]);
    expect(open(jarred, '2026-09-12')).toEqual([]);
  });
});
