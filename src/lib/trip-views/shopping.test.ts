import { expect, it } from 'vitest';
import { defaultSettings } from '../planning/model/settings.ts';
import type { DryingPlan } from '../planning/shortfall/plan-drying.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { exampleTrip } from '../../../tests/support/examples.ts';
import { fullContainers, shoppingItems } from './shopping.ts';

const TRIP = exampleTrip();
const plan = planTrip(TRIP, [], defaultSettings());
const [line = expect.fail()] = plan.shortfall.shopping;
const { missingKcal } = line;
const buying = line.suggestions.filter(({ way }) => way === 'buy');

/** Food that is planned to be dried stands before what is missing. */
const PLANNED = { meal: 'dinner' as const, forEaters: ['Ada'] };
const dryingAllBut = (kcal: number) => ({
  drying: dryingPlan(kcal),
  lines: [PLANNED, ...plan.shortfall.shopping],
});
const dryingPlan = (kcal: number): DryingPlan => ({
  readyBy: '2027-07-01',
  runs: [],
  workDays: [],
  underWay: [],
  groceries: [],
  costMinor: 0,
  unpriced: [],
  toBuy: kcal > 0 ? [{ line: 1, missingKcal: kcal, why: { kind: 'no time' } }] : [],
  notes: [],
});

it('lists every line of the plan; without drying all of it is to be bought', () => {
  const items = shoppingItems(plan.shortfall, TRIP.party.length, undefined);
  expect(items.map((item) => item.missingKcal)).toEqual(
    plan.shortfall.shopping.map((shopping) => shopping.missingKcal),
  );
  expect(buying.length).toBeGreaterThan(0);
  expect(items[0]).toMatchObject({ toBuyKcal: missingKcal, choices: buying });
});

it('wants nothing of what is dried, and says how much is not', () => {
  const [half] = shoppingItems(plan.shortfall, TRIP.party.length, dryingAllBut(missingKcal / 2));
  expect(half?.toBuyKcal).toBe(missingKcal / 2);
  expect(half?.choices).toEqual(buying);
  expect(shoppingItems(plan.shortfall, TRIP.party.length, dryingAllBut(0))[0]).toMatchObject({
    missingKcal,
    toBuyKcal: 0,
    choices: [],
  });
});

it('names the containers that are taken full', () => {
  const group = '1';
  const started = { group, label: 'begun', count: 1, netG: 50, tareG: 100, started: true };
  const full = { group, label: 'canister', count: 2, netG: 230, tareG: 150, started: false };
  expect(
    fullContainers({ ...plan.fuel, containers: [started, full, { ...full, group: '2', count: 1 }] }),
  ).toEqual([{ label: 'canister', count: 3 }]);
});
