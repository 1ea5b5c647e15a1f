import { describe, expect, it } from 'vitest';
import { Settings } from '../planning/model/settings.ts';
import { fuelLeftG } from './fuel.ts';
import { measuredFuels, measuredRuns } from './stove-runs.ts';

const run = (date: string, burntG: number) => ({
  date,
  fuel: 'canister-gas' as const,
  grossBeforeG: 380,
  grossAfterG: 380 - burntG,
  waterMl: 1000,
  fromC: 15,
  altitudeM: 0,
});

describe('measured boils', () => {
  const settings = Settings.parse({ stoveRuns: [run('2026-05-01', 14), run('2026-06-01', 16)] });

  it('stand newest first, each with its place in the settings', () => {
    const runs = measuredRuns(settings);
    expect(runs.map(({ date, place }) => [date, place])).toEqual([
      ['2026-06-01', 1],
      ['2026-05-01', 0],
    ]);
    expect(runs[0]?.burntG).toBe(16);
    expect(runs[0]?.efficiency).toBeLessThan(runs[1]?.efficiency ?? 0);
  });

  it('make one mean for their fuel and none for another', () => {
    const fuels = measuredFuels(settings);
    expect(fuels.map(({ fuel, runs }) => [fuel, runs])).toEqual([['canister-gas', 2]]);
    const [first, second] = measuredRuns(settings);
    expect(fuels[0]?.efficiency).toBeGreaterThan(first?.efficiency ?? 1);
    expect(fuels[0]?.efficiency).toBeLessThan(second?.efficiency ?? 0);
  });
});

it('fuelLeftG is the weight less the empty weight', () => {
  expect(fuelLeftG({ label: 'dented', fuel: 'naphtha', grossG: 300, tareG: 125 })).toBe(175);
});
