import { describe, expect, it } from 'vitest';
import { exampleBatch, exampleFood, exampleRecipe } from '../../../tests/support/kitchen-examples.ts';
import { batchSheet } from '../planning/drying/batch-sheet.ts';
import { defaultKitchen, type Kitchen } from '../planning/model/kitchen.ts';
import { wordedSheet } from './batch-words.ts';

const worded = (changes: Parameters<typeof exampleBatch>[0] = {}, kitchen: Partial<Kitchen> = {}) =>
  wordedSheet(
    batchSheet(exampleBatch(changes), { ...defaultKitchen(), ...kitchen }, [], '2026-09-03'),
    'metric',
  );

describe('a batch sheet in words', () => {
  it('says what holds a tray back, with its figures', () => {
    const { holds, dryness } = worded({ weighings: [] });
    expect(holds[0]).toBe('Tray 1: it has not been weighed yet.');
    expect(dryness.trays[0]?.open).toEqual(['it has not been weighed yet']);
  });

  it('says which check is open and why', () => {
    const { holds, checks } = worded({ checks: [] });
    expect(holds[0]).toBe(
      'Washed hands, boards, knives, trays and surfaces before and after. – it is not ticked.',
    );
    expect(checks.find(({ id }) => id === 'low oxygen')?.text).toContain('the bacteria that cause botulism');
  });

  it('says what keeps it from being sealed and what to do', () => {
    expect(worded({ trays: [], weighings: [] }).blocks).toContain('No trays weighed yet.');
    expect(worded({ recipe: exampleRecipe({ ingredients: [] }) }).blocks[0]).toBe(
      'No ingredients yet. Add what goes in.',
    );
    expect(worded({ cookedG: 1000 }).blocks[0]).toBe(
      'The cooked dish weighs 1,000 g, less than the dry matter of its ingredients, 1,200 g. Check the weight, the amounts and their water.',
    );
    expect(worded({}, { storage: [] }).blocks[0]).toContain(
      'has no entry for freeze-dried, medium-fat food in ',
    );
  });

  it('says how the shelf life, the hours and the cost came about', () => {
    const { fills, expected, cost } = worded();
    expect(fills[0]?.keeping?.terms[0]).toMatch(/^24 months: freeze-dried, /);
    expect(expected.run.basis).toBe(
      'Hours by a rule of thumb, since no run of this dryer is known yet; electricity by its mean power of 1000 W.',
    );
    expect(cost.lines.map(({ what }) => what)).toContain('oxygen absorbers');
  });

  it('cautions against undeclared allergens and fat', () => {
    const fatty = exampleFood({
      name: 'lard',
      allergens: undefined,
      composition: { waterG: 10, proteinG: 0, fatG: 90, carbohydrateG: 0 },
    });
    const texts = worded({
      recipe: exampleRecipe({ ingredients: [{ food: fatty, quantity: { amount: 4, unit: 'kg' } }] }),
    }).notices.map(({ severity, text }) => `${severity}: ${text}`);
    expect(texts).toContainEqual(expect.stringMatching(/^caution: Fat is 100% of the dry matter/));
    expect(texts).toContainEqual(
      expect.stringMatching(/^warning: Allergens are not declared for lard\. Declare them/),
    );
  });
});
