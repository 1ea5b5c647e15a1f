import { expect, it } from 'vitest';
import type { KitchenUnit } from '../planning/model/recipe.ts';
import { hoursText, percentText, scaledAmount } from './batch.ts';

it('scales an amount in the unit that it was entered in', () => {
  const scaled = (amount: number, unit: KitchenUnit, times: number) =>
    scaledAmount({ quantity: { amount, unit } } as Parameters<typeof scaledAmount>[0], times);
  expect(scaled(700, 'g', 2)).toBe('1,400 g');
  expect(scaled(1, 'cup', 0.5)).toBe('0.5 cup');
  expect(scaled(1, 'cup', 1.5)).toBe('1.5 cups');
  expect(scaled(6, 'piece', 1)).toBe('6 pieces');
});

it('tells hours and shares no closer than they are known', () => {
  expect(hoursText({ value: 9.3 })).toBe('9.5 h');
  expect(hoursText({ value: 25.7 })).toBe('26 h');
  expect(percentText(0.0512)).toBe('5.1%');
  expect(percentText(-0)).toBe('0.0%');
});
