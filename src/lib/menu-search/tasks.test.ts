import { expect, test } from 'vitest';
import { instance } from '../../../tests/bench/instances.ts';
import { buildMenuProblem } from '../planning/plan-trip.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { doTask, type Report } from './tasks.ts';

test('a quick search of a household shelf ends with a bound that its menu is not under', async () => {
  const { trip, stock } = instance({ eaters: 2, days: 3, lots: 40 }, 1);
  const problem = buildMenuProblem({ ...trip, menu: [] }, stock, defaultSettings());
  const reports: Report[] = [];
  await doTask({ kind: 'search', problem, effort: 'quick', seed: 1, starts: [] }, (report) =>
    reports.push(report),
  );
  const last = reports.at(-1);
  expect(last?.done).toBe(1);
  expect(last?.bound).toBeGreaterThan(0);
  expect(last?.bound).toBeLessThanOrEqual((last?.points ?? 0) + 1e-6);
}, 120_000);
