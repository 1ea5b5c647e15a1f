import { expect, it } from 'vitest';
import { whoLacks } from './missing.ts';

const eaters = (...lacks: readonly (readonly [string, number])[]) => ({
  eaters: lacks.map(([eater, missingKcal]) => ({ eater, missingKcal })),
});

it.each([
  ['Ada 300 kcal, Ben 200 kcal', eaters(['Ada', 300], ['Ben', 200]), 2],
  ['everyone 300 kcal each', eaters(['Ada', 300.2], ['Ben', 299.9]), 2],
  ['Ada, Ben 300 kcal each', eaters(['Ada', 300], ['Ben', 300]), 3],
  ['Ada 300 kcal', eaters(['Ada', 300]), 1],
])('who lacks how much: %s', (text, meal, partySize) => expect(whoLacks(meal, partySize)).toBe(text));
