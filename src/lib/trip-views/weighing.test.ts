import { describe, expect, it } from 'vitest';
import { SCORE_TERMS, type MenuScore } from '../planning/menu/score-menu.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import {
  figureRows,
  gapInWords,
  relaxedInWords,
  searchInWords,
  shownProgress,
  termRows,
} from './weighing.ts';

const SETTINGS = defaultSettings();
const score = (terms: Partial<MenuScore['terms']>): MenuScore => ({
  points: 0,
  terms: {
    ...(Object.fromEntries(SCORE_TERMS.map((term) => [term, 0])) as Record<
      (typeof SCORE_TERMS)[number],
      number
    >),
    ...terms,
  },
});

describe('termRows', () => {
  it('has a row for everything that a menu is paid for', () => {
    expect(termRows(score({}), SETTINGS, 'metric').map(({ term }) => term)).toEqual([...SCORE_TERMS]);
  });
  it('shows the points of each, with the rule it is measured by', () => {
    const rows = termRows(score({ hunger: 1234.4 }), { ...SETTINGS, repeatAfterDays: 2 }, 'us');
    const of = (term: string) => rows.find((row) => row.term === term);
    expect(of('hunger')).toMatchObject({ points: '1,234.4' });
    expect(of('hunger')?.what).toContain('95');
    expect(of('repeats')?.what).toContain('2 days');
  });
});

describe('gapInWords', () => {
  it('never promises more than is proven: the bound is rounded down, the share up', () => {
    expect(gapInWords(271.39, 0.05612)).toMatch(/below 271\.3 points, so at most 5\.7%/);
  });
  it('says when nothing is better, and when nothing is known', () => {
    expect(gapInWords(12, 0)).toContain('the best possible');
    expect(gapInWords(0.0001, 0.00012)).toContain('at most 0.1%');
    expect(gapInWords(undefined, undefined)).toContain('is not known yet');
  });
});

describe('shownProgress', () => {
  it('says what is known so far', () => {
    const running = {
      phase: 'search',
      done: 0.25,
      points: undefined,
      bound: undefined,
      elapsedMs: 40,
    } as const;
    expect(shownProgress(running)).toEqual({ done: 0.25, words: 'Searching: 1 s so far.' });
    expect(shownProgress({ ...running, points: 300, bound: 250.04, elapsedMs: 2600 }).words).toBe(
      'Searching: best so far 300.0 points; none can have fewer than 250.0; 3 s so far.',
    );
    expect(shownProgress({ ...running, phase: 'compare' }).done).toBeUndefined();
  });
});

it('says what a search came to', () => {
  const searched = {
    before: 400,
    after: 300,
    stays: false,
    stopped: false,
    elapsedMs: 1900,
    betterInComparison: undefined,
  };
  expect(searchInWords(searched)).toMatch(/^Done after 2 s\. .* 300\.0 points instead of 400\.0/);
  expect(searchInWords({ ...searched, stays: true, stopped: true })).toMatch(/^Stopped after .* stays/);
  expect(searchInWords({ ...searched, betterInComparison: 299 })).toContain('one with 299.0 points');
});

it('says what a relaxed rule would save, and where nothing was found', () => {
  expect(
    relaxedInWords([
      { rule: 'one dish', points: 12.34 },
      { rule: 'repeats', points: 0.02 },
    ]),
  ).toEqual([
    expect.stringContaining('about 12.3 points fewer'),
    expect.stringContaining('nothing better found'),
  ]);
});

it('sets menus side by side, with a dash for a cost that nobody stated', () => {
  const figures = {
    points: 100,
    foodG: 5000,
    missingKcal: 0,
    recipes: 9,
    pouches: 20,
    pots: 6,
    leftOverServings: 0.5,
    fuelG: 320,
    costMinor: 1250,
  };
  const rows = figureRows([figures, { ...figures, foodG: 4400, costMinor: undefined }], 'metric', 'EUR');
  const of = (label: string) => rows.find((row) => row.label.startsWith(label))?.values;
  expect(of('Food')).toEqual(['5.0 kg', '4.4 kg']);
  expect(of('Cost')).toEqual(['€12.50', '–']);
  expect(of('Servings left')).toEqual(['0.5', '0.5']);
});
