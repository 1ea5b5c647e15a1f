import { expect, it } from 'vitest';
import { usualValues } from './usual-values.ts';

it('shows the usual values in the units of the reader, each with its reason', () => {
  const metric = usualValues('metric', 'canister-gas');
  const us = usualValues('us', 'canister-gas');
  expect(metric.maxLoadG).toMatchObject({ text: '18.0 kg', typed: '18' });
  expect(us.maxLoadG).toMatchObject({ text: '39.7 lb', typed: '39.7' });
  expect(us.airTemperatureC).toMatchObject({ text: '64 °F', typed: '64' });
  for (const { text, reason } of Object.values(metric)) {
    expect(text).not.toBe('');
    expect(reason.length).toBeGreaterThan(10);
  }
});

it('the usual efficiency is that of the fuel', () => {
  expect(usualValues('metric', 'ethanol')['stove.efficiency'].text).toBe('40 %');
  expect(usualValues('metric', 'canister-gas')['stove.efficiency'].text).toBe('50 %');
});
