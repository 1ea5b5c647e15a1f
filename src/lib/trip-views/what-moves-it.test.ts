import { describe, expect, it } from 'vitest';
import { moversOf, shownChange } from './what-moves-it.ts';

const BASE = { packsG: 30_000, fuelG: 200, waterMl: 20_000, energyKcal: 18_000 };

describe('moversOf', () => {
  it('gives changes against the plan, and names apart what moves nothing', () => {
    const { movers, idle } = moversOf({
      base: BASE,
      influences: [
        {
          input: 'base load',
          lower: { ...BASE, packsG: 27_600 },
          higher: { ...BASE, packsG: 32_400 },
          largestShare: 0.08,
        },
        { input: 'fuel reserve', lower: BASE, higher: BASE, largestShare: 0 },
      ],
    });
    expect(movers.map(({ input }) => input)).toEqual(['base weight']);
    expect(movers[0]?.changes[0]).toEqual({ key: 'packsG', lower: -2400, higher: 2400 });
    expect(idle).toEqual(['fuel reserve']);
  });
});

describe('shownChange', () => {
  it('shows the sign and the unit of the system', () => {
    expect(shownChange(400, 'pack', 'metric')).toBe('+0.4 kg');
    expect(shownChange(-453.59237, 'pack', 'us')).toBe('−1.0 lb');
    expect(shownChange(-1500, 'energy', 'metric')).toBe('−1,500 kcal');
  });
  it('shows a dash for what rounds to nothing', () => {
    expect(shownChange(20, 'pack', 'metric')).toBe('–');
    expect(shownChange(-0.2, 'energy', 'metric')).toBe('–');
  });
});
