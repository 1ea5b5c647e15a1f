import { describe, expect, it } from 'vitest';
import { addMonths } from '../model/calendar.ts';
import { defaultKitchen, type Kitchen } from '../model/kitchen.ts';
import { keeping } from './storage.ts';

const FOOD = {
  process: 'freeze-dried',
  fatClass: 'lean',
  residual: 0.02,
  barrier: 'foil pouch',
  absorber: true,
  sealedOn: '2026-09-30',
  hasMeat: false,
} as const;
const kept = (food: Partial<Parameters<typeof keeping>[0]> = {}, kitchen: Partial<Kitchen> = {}) =>
  keeping({ ...FOOD, ...food }, { ...defaultKitchen(), ...kitchen });

describe('sealed food', () => {
  it('keeps as long as its line in the table says', () => {
    expect(kept()).toMatchObject({ months: 60, bestBefore: '2031-09-30' });
    expect(kept()?.from).toMatchObject({
      line: { months: 60 },
      warmth: { factor: 1 },
      moisture: { factor: 1 },
    });
    expect(kept({ fatClass: 'fatty', absorber: false })?.months).toBe(3);
  });

  it('keeps less long with more residual moisture than expected, not longer with less', () => {
    expect(kept({ residual: 0.04 })?.months).toBe(30);
    expect(kept({ residual: 0.04 })?.from.moisture).toEqual({ factor: 0.5, residual: 0.04, expected: 0.02 });
    expect(kept({ residual: 0 })?.months).toBe(60);
  });

  it('keeps half as long 20 °F warmer, not longer in the cold', () => {
    expect(kept({}, { storageTemperatureC: 20 + 20 / 1.8 })?.months).toBe(30);
    expect(kept({}, { storageTemperatureC: 25 })?.months).toBe(43);
    expect(kept({}, { storageTemperatureC: 5 })?.months).toBe(60);
  });

  it('keeps for weeks where meat was dried in warm air, and is told so', () => {
    const jerky = { process: 'dehydrated', residual: 0.08, hasMeat: true } as const;
    expect(kept(jerky)).toMatchObject({ months: 0, bestBefore: '2026-10-14' });
    expect(kept(jerky)?.from.meatDays).toBe(14);
    expect(kept(jerky, { storageTemperatureC: 4 })?.bestBefore).toBe('2026-12-29');
    expect(kept({ ...jerky, hasMeat: false })?.months).toBe(12);
    expect(kept({ hasMeat: true })?.months).toBe(60);
  });

  it('keeps for some time even where no moisture at all was expected', () => {
    const { processes } = defaultKitchen();
    const none = { ...processes, 'freeze-dried': { ...processes['freeze-dried'], residualShare: 0 } };
    expect(kept({ residual: 1e-16 }, { processes: none })?.months).toBe(60);
    expect(kept({ residual: 0.02 }, { processes: none })?.months).toBe(30);
  });

  it('is not judged where the table has no line for it', () => {
    expect(kept({}, { storage: [] })).toBeUndefined();
  });
});

describe('months after a date', () => {
  it.each([
    ['2026-01-31', 1, '2026-02-28'],
    ['2028-01-31', 1, '2028-02-29'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2026-08-31', 1, '2026-09-30'],
    ['2026-12-15', 1, '2027-01-15'],
    ['2026-11-30', 3, '2027-02-28'],
    ['2026-05-31', 0, '2026-05-31'],
    ['2026-05-31', 60, '2031-05-31'],
  ])('%s + %d is %s', (date, months, after) => {
    expect(addMonths(date, months)).toBe(after);
  });
});
