import { describe, expect, it } from 'vitest';
import { moneyFieldValue, moneyToMinor, showMoney } from './money.ts';

describe('money', () => {
  it('shows minor units with the digits of the currency', () => {
    expect(showMoney(1250, 'EUR')).toBe('€12.50');
    expect(showMoney(1250, 'JPY')).toBe('¥1,250');
    expect(moneyFieldValue(5, 'EUR')).toBe('0.05');
    expect(moneyFieldValue(1250, 'KWD')).toBe('1.250');
  });

  it('rounds what was typed to the smallest coin, without binary slips', () => {
    expect(moneyToMinor(1.005, 'EUR')).toBe(101);
    expect(moneyToMinor(1.15, 'EUR')).toBe(115);
    expect(moneyToMinor(1250, 'JPY')).toBe(1250);
    expect(moneyToMinor(1e-7, 'EUR')).toBe(0);
  });

  it('brings every amount back from its field', () => {
    for (const currency of ['EUR', 'JPY', 'KWD'])
      for (const minor of [0, 1, 9, 99, 12345, 100_000_000])
        expect(moneyToMinor(Number(moneyFieldValue(minor, currency)), currency)).toBe(minor);
  });
});
