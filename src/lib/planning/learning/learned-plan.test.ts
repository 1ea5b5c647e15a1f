import { expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import type { Observation } from '../model/observation.ts';
import { defaultSettings, type Settings } from '../model/settings.ts';
import { planTrip } from '../plan-trip.ts';

const of = { tripId: 't', trip: 'Walk', date: '2026-07-01' };
const LEARNED: Observation[] = [
  { kind: 'appetite', ...of, eater: 'Ada', answer: 'too little', ofOwnFigure: false },
  { kind: 'appetite', ...of, eater: 'Bo', answer: 'too much', ofOwnFigure: false },
  { kind: 'fuel', ...of, fuel: 'canister-gas', efficiency: 0.5, plannedG: 100, burntG: 150 },
  { kind: 'pace', ...of, plannedH: 10, walkedH: 12 },
];
const learned: Settings = { ...defaultSettings(), learned: LEARNED };
const stock = [exampleLot({ pouches: 20 })];
const leg = { distanceM: 12_000, climbM: 400, descentM: 0 };
const body = { sex: 'female', ageY: 40, heightM: 1.7, massG: 65_000 } as const;
const open = exampleTrip({
  energyKcal: undefined,
  days: [leg, leg],
  party: [{ name: 'Ada', body }, { name: 'Bo' }],
});
const full = exampleTrip({
  energyKcal: 2000,
  days: [leg, leg],
  pace: { partyFactor: 1 },
  stove: { efficiency: 0.5 },
});

it('what was learned takes the place of the defaults, each with its reason', () => {
  const [before, after] = [planTrip(open, stock, defaultSettings()), planTrip(open, stock, learned)];
  const reasons = after.assumptions.filter(({ why }) => why.code.endsWith('learned'));
  expect(reasons.map(({ field, value }) => [field, value])).toEqual([
    ['party.0.appetite', 1.05],
    ['party.1.appetite', 0.95],
    ['pace.partyFactor', 1.1],
    ['stove.efficiency', 0.4],
  ]);
  expect(after.legs[0]!.walkingH).toBeCloseTo(before.legs[0]!.walkingH * 1.1, 2);
  expect(after.fuel.efficiencyBasis).toBe('learned');
  const [ada, bo] = after.demand[0]!.eaters;
  expect(bo?.targetKcal).toBeCloseTo(3000 * 0.95, 1);
  expect(ada?.need.terms.at(-1)).toEqual({
    code: 'appetite learned',
    value: 105,
    unit: '%',
  });
  const paceOnly = { ...learned, learned: LEARNED.filter(({ kind }) => kind !== 'appetite') };
  const needOfAda = planTrip(open, [], paceOnly).demand[0]!.eaters[0]!.need.value;
  expect(planTrip(open, [], learned).demand[0]!.eaters[0]!.need.value).toBeCloseTo(needOfAda * 1.05, -1);
});

it('a figure that somebody entered stands, to the byte of the plan', () => {
  expect(JSON.stringify(planTrip(full, stock, learned))).toBe(
    JSON.stringify(planTrip(full, stock, defaultSettings())),
  );
});

it('a child is not planned to eat less than the need of its age', () => {
  const child = (name: string) => ({ name, body: { ...body, ageY: 12, heightM: 1.5, massG: 40_000 } });
  const trip = exampleTrip({ energyKcal: undefined, party: [child('Bo'), child('Ada')] });
  const needs = (settings: Settings) =>
    planTrip(trip, stock, settings).demand[0]!.eaters.map(({ need }) => need.value);
  const [usual = 0] = needs(defaultSettings());
  expect(needs(learned)[0]).toBe(usual);
  expect(needs(learned)[1]).toBeCloseTo(usual * 1.05, 1);
});
