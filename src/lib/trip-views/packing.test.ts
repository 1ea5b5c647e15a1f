import { expect, it } from 'vitest';
import { defaultSettings } from '../planning/model/settings.ts';
import { Trip } from '../planning/model/trip.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { exampleLot } from '../../../tests/support/examples.ts';
import { packingSheets } from './packing.ts';

const trip = Trip.parse({
  name: 'Three days',
  startDate: '2026-07-04',
  dayCount: 3,
  party: [{ name: 'Ada', waterCapacityMl: 500 }, { name: 'Ben', waterCapacityMl: 20_000 }, { name: 'Cleo' }],
  days: [{}, { campWater: 'dry' }],
});
const plan = planTrip(
  trip,
  [exampleLot({ code: 'D1', mealKinds: ['dinner'], pouches: 9 })],
  defaultSettings(),
);
const sheets = packingSheets(trip, plan);

it('holds every pouch and container of the plan, in bags day after day that weigh what is in them', () => {
  expect(sheets.map(({ eater }) => eater)).toEqual(['Ada', 'Ben', 'Cleo']);
  for (const [index, pack] of plan.carry.packs.entries()) {
    const sheet = sheets[index] ?? expect.fail();
    expect(sheet.bags.flatMap(({ pouches }) => pouches)).toEqual(
      pack.pouches.toSorted((a, b) => a.day - b.day),
    );
    expect(sheet.fuelContainers).toEqual(pack.fuelContainers);
    const grossG = sheet.bags.reduce((sum, bag) => sum + bag.grossG, 0);
    expect(grossG).toBeCloseTo(pack.foodG + pack.packagingG);
    for (const bag of sheet.bags) expect(bag.date).toBe(plan.card.days[bag.day - 1]?.date);
  }
  expect(sheets.flatMap(({ bags }) => bags).length).toBeGreaterThan(0);
});

it('says what of the water has no bottle', () => {
  const [ada, ben, cleo] = sheets;
  expect(ada?.mostWater?.day).toBe(2);
  expect(ada?.bottlesLackMl).toBe((ada?.mostWater?.peakWaterG ?? 0) - 500);
  expect(ada?.bottlesLackMl).toBeGreaterThan(0);
  expect(ben?.bottlesLackMl).toBe(0);
  expect(cleo?.bottlesMl).toBe(3000);
});
