import { expect, test } from 'vitest';
import { instance } from '../../../tests/bench/instances.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { poseMenuProblem } from '../planning/pose-menu-problem.ts';
import { doTask, type Report } from './tasks.ts';

async function boundOf(lots: number): Promise<Report[]> {
  const { trip, stock } = instance({ eaters: 2, days: 5, lots }, 1);
  const problem = poseMenuProblem({ ...trip, menu: [] }, stock, defaultSettings());
  const reports: Report[] = [];
  await doTask({ kind: 'bound', problem, effort: 'quick', start: [] }, (report) => reports.push(report));
  return reports;
}

test('a quick search of a household shelf has a bound, one of a shelf of thousands goes without', async () => {
  expect(await boundOf(40)).toContainEqual(expect.objectContaining({ kind: 'bound' }));
  expect(await boundOf(10_000)).toEqual([]);
});
