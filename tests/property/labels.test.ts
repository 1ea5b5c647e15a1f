/* What must hold for the label of any lot, on any paper. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitLabel } from '../../src/lib/label-sheets/fit-label.ts';
import { labelLines } from '../../src/lib/label-sheets/label-lines.ts';
import { PAPERS } from '../../src/lib/label-sheets/papers.ts';
import { makeLabel } from '../../src/lib/presentation/make-label.ts';
import { allergenLabel } from '../../src/lib/presentation/code-words.ts';
import { POUR_WORDS } from '../../src/lib/presentation/pour-words.ts';
import { lots } from '../support/arbitraries.ts';

const anyLabel = fc.record({
  lot: lots,
  paper: fc.constantFrom(...PAPERS),
  unitSystem: fc.constantFrom('metric' as const, 'us' as const),
});

test('says what it has to, whatever else is left out for want of room', () => {
  fc.assert(
    fc.property(anyLabel, ({ lot, paper, unitSystem }) => {
      const fitted = fitLabel(labelLines(makeLabel(lot, unitSystem), paper.sizeClass), paper);
      const text = fitted?.lines.map((line) => line.text.replaceAll('\u00a0', ' ')).join('\n') ?? '';
      expect(text).toContain(lot.recipe);
      expect(text).toContain(`${lot.code} · best before ${lot.bestBefore}`);
      expect(text).toContain('Remove the oxygen absorber');
      for (const allergen of lot.allergens ?? []) expect(text).toContain(allergenLabel(allergen));
      if (lot.allergens === undefined) expect(text).toContain('NOT DECLARED');
      else
        expect(text).toMatch(lot.allergens.length > 0 ? /Contains: \w/ : /None of the \d+ listed allergens/);
      if (lot.waterKind !== 'none' && lot.waterMl > 0) {
        expect(text).toContain(POUR_WORDS[lot.waterKind]);
        expect(text).toMatch(/Pour in .*(ml \(.*(cup|fl oz)|(cups?|fl oz) \(.* ml\))/);
        if (lot.steepMin > 0) expect(text).toMatch(/wait \d/);
        expect(text.includes('stir')).toBe(lot.stirAfterMin !== undefined && lot.steepMin > 0);
      } else
        expect(text).toContain(
          lot.cookAfter === undefined
            ? 'Needs no water.'
            : `Needs no water, ${lot.cookAfter === 'cook' ? 'cook before eating' : 'boil hard for 10 minutes'}.`,
        );
    }),
    { numRuns: 500 },
  );
});

test('never has an unknown figure in it', () => {
  fc.assert(
    fc.property(anyLabel, ({ lot, unitSystem }) => {
      const words = JSON.stringify(makeLabel(lot, unitSystem));
      expect(words).not.toMatch(/NaN|undefined|null|Infinity/);
    }),
  );
});
