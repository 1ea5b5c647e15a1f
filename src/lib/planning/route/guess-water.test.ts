import { expect, it } from 'vitest';
import { guessWater } from './guess-water.ts';

it.each([
  'Reed Spring',
  'HOT SPRINGS',
  'Fountain at the chapel',
  'Alder Creek camp',
  'Tap behind the hut',
  'Waterfall',
  'Water',
  'Old well',
])('"%s" has water', (name) => {
  expect(guessWater(name, '', '')).toEqual({ water: true, struck: false });
});

it('so has a waypoint whose symbol or type says it', () => {
  expect(guessWater('P4', 'Drinking Water', '')).toEqual({ water: true, struck: false });
  expect(guessWater('P4', '', 'water source')).toEqual({ water: true, struck: false });
});

it.each([
  'Saddle Camp',
  'Watershed',
  'Springfield',
  'Wellhouse',
  'Tapered rock',
  'Dry camp',
  'Camp, no water',
  'No good water here',
  'Waterless gully',
  '',
])('"%s" has none', (name) => {
  expect(guessWater(name, '', '')).toEqual({ water: false, struck: false });
});

it.each([
  'Thin Spring (unreliable)',
  'Seasonal stream',
  'Dry Creek',
  'Well, may be dry',
  'Tank tap - not potable',
])('"%s" is not counted on', (name) => {
  expect(guessWater(name, '', '')).toEqual({ water: true, struck: true });
});
