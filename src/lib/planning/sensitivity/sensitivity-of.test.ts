import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { defaultSettings } from '../model/settings.ts';
import { sensitivityOf } from './sensitivity-of.ts';

const stock = [
  exampleLot({
    pouches: 30,
    servingsPerPouch: 1,
    mealKinds: ['breakfast', 'lunch', 'dinner', 'snack', 'drink'],
  }),
];
const influence = (result: ReturnType<typeof sensitivityOf>, input: string) => {
  const found = result.influences.find((entry) => entry.input === input);
  if (!found) throw new Error(`no influence of ${input}`);
  return found;
};

describe('sensitivityOf', () => {
  const result = sensitivityOf(exampleTrip(), stock, defaultSettings());

  it('moves each figure by what it depends on', () => {
    expect(influence(result, 'energy target').higher.energyKcal / result.base.energyKcal).toBeCloseTo(1.1, 6);
    expect(influence(result, 'base load').higher.packsG - result.base.packsG).toBeCloseTo(1600, 0);
    expect(influence(result, 'efficiency of the stove').lower.fuelG / result.base.fuelG).toBeCloseTo(
      1 / 0.9,
      3,
    );
    expect(influence(result, 'water temperature').higher.fuelG).toBeLessThan(result.base.fuelG);
    expect(
      influence(result, 'drinking for each hour of walking').higher.waterMl - result.base.waterMl,
    ).toBeCloseTo(2 * 2 * 6 * 40, 0);
  });

  it('puts the strongest first', () => {
    const shares = result.influences.map((entry) => entry.largestShare);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(shares[0]).toBeGreaterThan(0.05);
  });

  it('steps body mass instead of an energy target where the need is estimated', () => {
    const body = sensitivityOf(
      exampleTrip({
        party: [{ name: 'Ada', body: { sex: 'female', ageY: 40, heightM: 1.7, massG: 65_000 } }],
      }),
      stock,
      defaultSettings(),
    );
    expect(influence(body, 'body mass').higher.energyKcal).toBeGreaterThan(body.base.energyKcal);
    expect(body.influences.some((entry) => entry.input === 'energy target')).toBe(false);
  });
});
