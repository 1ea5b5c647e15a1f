import { describe, expect, it } from 'vitest';
import { FormReader } from '$lib/forms/read-form.ts';
import type { AfterwardsSubjects } from '$lib/trip-views/afterwards.ts';
import { afterwardsFields, afterwardsLabel, readAfterwards } from './afterwards.ts';

const lot = (code: string, left: number, leftOverNoted = 0) => ({
  ...{ code, recipe: 'Stew', packed: left + 1, eaten: 1, broughtBack: 0, left, leftOverNoted },
});
const container = { label: 'small canister', tareG: 95, beforeG: 195 };
const SUBJECTS: AfterwardsSubjects = {
  lots: [lot('A', 2, 0.5), lot('B', 0)],
  eaters: [
    { name: 'Ada', hasOwnFigure: false },
    { name: 'Bo', hasOwnFigure: true },
  ],
  dishes: [
    { name: 'Stew', isKnown: true, takesWater: true, eaters: ['Ada', 'Bo'], noted: [] },
    { name: 'Bar', isKnown: false, takesWater: false, eaters: ['Bo'], noted: ['liked', 'too little'] },
  ],
  containers: [container, { ...container, label: 'other' }],
  days: [
    { date: '2026-07-04', plannedH: 5, teaches: true },
    { date: '2026-07-05', plannedH: 5, teaches: true },
  ],
};

function read(fields: Record<string, string>, system: 'metric' | 'us' = 'metric') {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(name, value);
  const reader = new FormReader(form, system);
  return { result: readAfterwards(reader, SUBJECTS), problems: reader.problems };
}

describe('readAfterwards', () => {
  it('reads what was said and passes over what was not', () => {
    const { result, problems } = read({
      ...{ 'back[0]': '1', 'leftOver[0]': '0,5', 'leftOver[1]': '', 'appetite[1]': 'too much' },
      ...{ 'water[0]': 'too dry', 'walkedH[1]': '6.5' },
      ...{ 'portion[1]': 'too much', 'liked[0]': 'Bo', 'disliked[1]': 'Bo' },
      ...{ 'fuel[0].afterG': '120', 'fuel[1].beforeG': '200', 'fuel[1].afterG': '200' },
    });
    expect(problems).toEqual([]);
    expect(result).toEqual({
      back: [
        { code: 'A', pouches: 1 },
        { code: 'B', pouches: 0 },
      ],
      said: {
        leftOver: [{ code: 'A', servings: 0.5 }],
        appetites: [{ eater: 'Bo', answer: 'too much' }],
        water: [{ recipe: 'Stew', finding: 'too dry' }],
        portions: [{ recipe: 'Bar', answer: 'too much' }],
        tastes: [
          { recipe: 'Stew', eater: 'Bo', answer: 'liked' },
          { recipe: 'Bar', eater: 'Bo', answer: 'not liked' },
        ],
        fuel: [
          { label: 'small canister', tareG: 95, beforeG: 195, afterG: 120 },
          { label: 'other', tareG: 95, beforeG: 200, afterG: 200 },
        ],
        walkedH: [null, 6.5],
      },
    });
  });

  it('comes back into the form as it was said, in the units of the reader', () => {
    const fields = {
      'appetite[0]': 'right',
      'fuel[0].afterG': '5',
      'fuel[1].afterG': '4',
      'walkedH[0]': '3',
    };
    const { result } = read(fields, 'us');
    const shown = afterwardsFields(SUBJECTS, result?.said, 'us');
    for (const [field, value] of Object.entries(fields)) expect(shown[field]).toEqual([value]);
    expect(afterwardsFields(SUBJECTS, undefined, 'metric')).toMatchObject({
      'leftOver[0]': ['0.5'],
      'liked[0]': [],
      // as it was noted on the trail
      'liked[1]': ['Bo'],
      'portion[1]': ['too little'],
      'fuel[0].beforeG': ['195'],
      'fuel[0].afterG': [''],
      'walkedH[1]': [''],
    });
  });

  it.each<[string, Record<string, string>, string]>([
    ['more than is in the packs', { 'back[0]': '3' }, 'back[0]'],
    ['half a pouch', { 'back[0]': '0.5' }, 'back[0]'],
    ['of a lot that is all eaten', { 'back[1]': '1' }, 'back[1]'],
    ['servings below nothing', { 'leftOver[1]': '-1' }, 'leftOver[1]'],
    ['an unknown answer', { 'appetite[1]': 'starving' }, 'appetite[1]'],
    ['one who liked it and did not', { 'liked[0]': 'Ada', 'disliked[0]': 'Ada' }, 'disliked[0]'],
    ['an unknown portion', { 'portion[0]': 'huge' }, 'portion[0]'],
    ['an unknown finding', { 'water[0]': 'wet' }, 'water[0]'],
    ['heavier than before', { 'fuel[0].afterG': '100', 'fuel[1].afterG': '300' }, 'fuel[1].afterG'],
    ['lighter than empty', { 'fuel[0].afterG': '100', 'fuel[1].afterG': '50' }, 'fuel[1].afterG'],
    ['one container not weighed', { 'fuel[1].afterG': '100' }, 'fuel[0].afterG'],
    ['a day of 25 hours', { 'walkedH[1]': '25' }, 'walkedH[1]'],
    ['no number', { 'walkedH[0]': 'six' }, 'walkedH[0]'],
  ])('refuses %s, and names the field', (_, fields, field) => {
    const { result, problems } = read(fields);
    expect(result).toBeUndefined();
    expect(problems.map((problem) => problem.field)).toEqual([field]);
    expect(afterwardsLabel(SUBJECTS)(field)).toMatch(/\w/);
  });
});
