import { expect, it } from 'vitest';
import { nextWeighing } from './dryness.ts';

it('weighs again after two hours, or when a kitchen scale can show the bound', () => {
  expect(nextWeighing(300, 0.005)).toEqual({ afterH: 2, mostLossG: 3 });
  expect(nextWeighing(50, 0.005)).toEqual({ afterH: 4, mostLossG: 1 });
});
