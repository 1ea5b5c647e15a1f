import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { german } from '../../texts/de.ts';
import { useCatalog, useLanguage } from '../../texts/say.ts';
import { COST_WORDS, sayWhy, withAnd, writtenWhy } from './why.ts';

const first = writtenWhy('firstOf', { eaters: withAnd(['Ilse', 'Tarek', 'Oona']) });
const nextBest = writtenWhy('nextBest', {
  lot: 'CHILI-1',
  recipe: 'Chili (mild)',
  points: '12.5',
  cost: COST_WORDS.repeat,
});

it('is written in English, whatever the language around', () => {
  expect(first).toBe('first to expire that Ilse and Tarek and Oona may eat');
  expect(nextBest).toBe(
    'least cost in all: next best here, CHILI-1 (Chili (mild)), costs 12.5 points more, for the same recipe again',
  );
  expect(sayWhy(nextBest)).toBe(nextBest);
});

describe('in German', () => {
  beforeAll(() => {
    useCatalog('de', german);
    useLanguage(() => 'de');
  });
  afterAll(() => useLanguage(() => 'en'));

  it.each([
    [writtenWhy('least'), 'geringste Kosten im Ganzen'],
    [writtenWhy('notRecent', { why: first }), /Ilse, Tarek und Oona erlaubt ist, in den letzten Tagen nicht/],
    [nextBest, /CHILI-1 \(Chili \(mild\)\), kostet 12,5 Punkte mehr, für: dasselbe Rezept noch einmal$/],
    [writtenWhy('ofWish', { wish: 'lightest' }), 'aus dem Speiseplan „am leichtesten“'],
    ['as Grandma has it', 'as Grandma has it'],
  ])('%s', (why, said) => {
    if (typeof said === 'string') expect(sayWhy(why)).toBe(said);
    else expect(sayWhy(why)).toMatch(said);
    expect(writtenWhy('first')).toBe('first to expire for this meal');
  });
});
