import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { Afterwards } from '../model/afterwards.ts';
import { defaultSettings } from '../model/settings.ts';
import { planTrip } from '../plan-trip.ts';
import { fuelForG, observeTrip } from './observe-trip.ts';

const settings = defaultSettings();
const stock = [exampleLot({ code: 'A', pouches: 40, mealKinds: ['breakfast', 'lunch', 'dinner'] })];
const trip = exampleTrip();
const plan = planTrip(trip, stock, settings);
const opened = plan.menu.meals.flatMap((meal) => meal.opened).reduce((sum, { pouches }) => sum + pouches, 0);
const observe = (said: Parameters<typeof Afterwards.parse>[0], of = trip) =>
  observeTrip({
    ...{ tripId: 't', trip: of, plan, date: '2026-07-10', said: Afterwards.parse(said) },
    eaten: new Map([['A', opened]]),
  });

describe('fuelForG', () => {
  it('is the need of the plan where all was eaten, and goes with the pouches that were', () => {
    expect(opened).toBeGreaterThan(1);
    expect(fuelForG(plan, new Map([['A', opened]]))).toBeCloseTo(plan.fuel.need.value, 1);
    expect(fuelForG(plan, new Map([['A', opened / 2]]))).toBeCloseTo(plan.fuel.need.value / 2, 1);
    expect(fuelForG(plan, new Map())).toBe(0);
  });
});

describe('observeTrip', () => {
  it('nothing said teaches nothing', () => {
    expect(observe({})).toEqual([]);
  });

  it('says of each answer whether the target was a figure of their own', () => {
    const [first] = trip.party;
    const said = { appetites: [{ eater: first!.name, answer: 'too little' }] };
    const ofOwnFigure = (of: typeof trip) =>
      observe(said, of).map((one) => 'ofOwnFigure' in one && one.ofOwnFigure);
    const plain = { ...trip, energyKcal: undefined, party: [{ ...first!, energyKcal: undefined }] } as never;
    expect(ofOwnFigure(plain)).toEqual([false]);
    expect(ofOwnFigure({ ...(plain as typeof trip), energyKcal: 3000 })).toEqual([true]);
    expect(ofOwnFigure({ ...trip, party: [{ ...first!, energyKcal: 2000 }] })).toEqual([true]);
  });

  it('takes the fuel of all containers together', () => {
    const container = (beforeG: number, afterG: number) => ({ label: 'c', tareG: 90, beforeG, afterG });
    const [seen] = observe({ fuel: [container(200, 120), container(190, 190)] });
    expect(seen).toMatchObject({ kind: 'fuel', burntG: 80, efficiency: plan.fuel.efficiency });
    expect(observe({ fuel: [container(200, 200)] })).toEqual([]);
  });

  it('compares hours only on days whose way is known, with the party factor taken out', () => {
    const walked = { walkedH: [5, null, 3] };
    expect(observe(walked)).toEqual([]);
    const leg = { distanceM: 12_000, climbM: 0, descentM: 0 };
    const onFoot = (partyFactor: number) =>
      observe(walked, { ...trip, days: [leg, leg], pace: { partyFactor, restShare: 0 } });
    // 12 km on the level at the 4 km/h of DIN 33466
    expect(onFoot(1)).toEqual([expect.objectContaining({ kind: 'pace', plannedH: 3, walkedH: 5 })]);
    expect(onFoot(2)).toEqual(onFoot(1));
  });
});
