import { describe, expect, it } from 'vitest';
import type { Observation } from '../model/observation.ts';
import {
  learnedAppetite,
  learnedDefaults,
  learnedEfficiency,
  learnedPace,
  learnedTastes,
} from './learned-figures.ts';

const of = (date: string) => ({ tripId: date, trip: `Walk of ${date}`, date });
const hungry = (
  date: string,
  answer: 'too little' | 'right' | 'too much',
  ofOwnFigure = false,
): Observation => ({
  ...of(date),
  ...{ kind: 'appetite', eater: 'Ada', answer, ofOwnFigure },
});
const fuel = (date: string, plannedG: number, burntG: number, efficiency = 0.5): Observation => ({
  ...of(date),
  ...{ kind: 'fuel', fuel: 'canister-gas', efficiency, plannedG, burntG },
});
const pace = (date: string, plannedH: number, walkedH: number): Observation => ({
  ...of(date),
  ...{ kind: 'pace', plannedH, walkedH },
});

describe('learnedAppetite', () => {
  it('goes by small steps, in the order of the dates, and keeps what was said', () => {
    const figure = learnedAppetite(
      [hungry('2026-08-01', 'too much'), hungry('2026-07-01', 'too little'), hungry('2026-07-15', 'right')],
      'Ada',
    );
    expect(figure?.history.map(({ date, valueAfter }) => [date, valueAfter])).toEqual([
      ['2026-07-01', 1.05],
      ['2026-07-15', 1.05],
      ['2026-08-01', 1],
    ]);
    expect(figure?.value).toBe(1);
  });

  it('never leaves its bounds, and comes back from them at once', () => {
    const days = Array.from({ length: 9 }, (_, day) => `2026-07-0${day + 1}`);
    const value = (answers: Observation[]) => learnedAppetite(answers, 'Ada')?.value;
    const hungryDays = days.map((date) => hungry(date, 'too little'));
    expect(value(hungryDays)).toBe(1.25);
    expect(value([...hungryDays, hungry('2026-08-01', 'too much')])).toBe(1.2);
    expect(value(days.map((date) => hungry(date, 'too much')))).toBe(0.8);
  });

  it('an answer to a figure of their own moves nothing; of others nothing is known', () => {
    const said = [hungry('2026-07-01', 'too much', true)];
    expect(learnedAppetite(said, 'Ada')).toMatchObject({ value: 1, history: [{ answer: 'too much' }] });
    expect(learnedAppetite(said, 'Ben')).toBeUndefined();
  });
});

describe('learnedTastes', () => {
  const taste = (date: string, eater: string, dish: string, answer: 'liked' | 'not liked'): Observation => ({
    ...of(date),
    ...{ kind: 'taste', eater, dish, answer },
  });

  it('goes by the latest word of an eater on each dish, and refuses none', () => {
    const said = [
      taste('2026-08-01', 'Ada', 'chili', 'not liked'),
      taste('2026-07-01', 'Ada', 'chili', 'liked'),
      taste('2026-07-01', 'Ada', 'bean stew', 'liked'),
      taste('2026-07-01', 'Bo', 'soup', 'liked'),
    ];
    expect(learnedTastes(said, 'Ada').map(({ food, taste }) => [food, taste])).toEqual([
      ['bean stew', 'gladly'],
      ['chili', 'rather not'],
    ]);
    expect(learnedTastes(said, 'Cy')).toEqual([]);
    expect(learnedDefaults(said).tastesOf('Bo')).toMatchObject([{ food: 'soup', taste: 'gladly' }]);
  });
});

describe('learnedPace', () => {
  it('moves half of the way after one trip, and most of it after several', () => {
    expect(learnedPace([pace('2026-07-01', 10, 12)])?.value).toBe(1.1);
    const figure = learnedPace(['01', '02', '03', '04'].map((day) => pace(`2026-07-${day}`, 10, 12)));
    expect(figure?.history.map(({ valueAfter }) => valueAfter)).toEqual([1.1, 1.13, 1.15, 1.16]);
    expect(learnedPace([pace('2026-07-01', 1, 90)])?.value).toBe(2);
    expect(learnedPace([])).toBeUndefined();
  });
});

describe('learnedEfficiency', () => {
  it('is the base where as much was burnt as planned, and less where more was burnt', () => {
    expect(learnedEfficiency([fuel('2026-07-01', 100, 100)], 'canister-gas', 0.5)?.value).toBe(0.5);
    // the plan counts as one more trip: 250 g in place of 200 g for the same heat
    expect(learnedEfficiency([fuel('2026-07-01', 100, 150)], 'canister-gas', 0.5)?.value).toBe(0.4);
    expect(learnedEfficiency([fuel('2026-07-01', 100, 100)], 'ethanol', 0.4)).toBeUndefined();
  });

  it('adds up plans made with different efficiencies by the heat that they needed', () => {
    const same = learnedEfficiency([fuel('2026-07-01', 100, 150)], 'canister-gas', 0.5);
    expect(learnedEfficiency([fuel('2026-07-01', 125, 150, 0.4)], 'canister-gas', 0.5)?.value).toBe(
      same?.value,
    );
  });

  it('comes to stand at what the scale says when the same is burnt again and again', () => {
    // heat needed: 100 g at 50 %; burnt each time: 125 g, so 40 %
    let value = 0.5;
    const seen: Observation[] = [];
    for (let trip = 1; trip <= 28; trip += 1) {
      seen.push(fuel(`2026-02-${String(trip).padStart(2, '0')}`, 50 / value, 125, value));
      value = learnedEfficiency(seen, 'canister-gas', 0.5)!.value;
    }
    expect(value).toBeCloseTo(0.4, 2);
  });
});

it('where nothing was learned, or it comes out as the default, nothing takes the place of a default', () => {
  for (const seen of [[], [hungry('2026-07-01', 'right'), pace('2026-07-01', 10, 10)]]) {
    const learned = learnedDefaults(seen);
    expect(learned.appetiteOf('Ada')).toBeUndefined();
    expect(learned.partyFactor).toBeUndefined();
  }
});
