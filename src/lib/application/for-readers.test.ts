import { expect, it } from 'vitest';
import { defaultSettings } from '../planning/model/settings.ts';
import { Trip, type TripInput } from '../planning/model/trip.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { exampleLot } from '../../../tests/support/examples.ts';
import { cardView } from '../trip-views/card.ts';
import { planForReaders, tripForReaders } from './for-readers.ts';
import { menuByDay } from '../trip-views/menu.ts';
import { tripDays } from '../trip-views/trip-days.ts';
import { packingSheets } from '../trip-views/packing.ts';

const BODY = { sex: 'female', ageY: 41, heightM: 1.7, massG: 61_234 } as const;
type Entered = Partial<TripInput['party'][number]>;
const planned = (eater: Entered) => {
  const trip = Trip.parse({
    name: 'Three days',
    startDate: '2026-07-04',
    dayCount: 3,
    party: [{ name: 'Ada', ...eater }],
  });
  return {
    trip,
    plan: planTrip(trip, [exampleLot({ mealKinds: ['dinner'], pouches: 2 })], defaultSettings()),
  };
};

/** Every number in a value. */
const numbers = (value: unknown): Set<number> =>
  new Set([...JSON.stringify(value).matchAll(/(?<=[:[,])-?\d[\d.e+-]*/g)].map(([digits]) => Number(digits)));

it.each([
  ['a body', { body: BODY }],
  ['an energy target', { energyKcal: 3217 }],
])('nothing is left of %s, nor of what a person needs by it', (_, eater) => {
  const { trip, plan } = planned(eater);
  const sent = numbers([tripForReaders(trip), planForReaders(plan)]);
  const own = [
    ...('body' in eater ? [eater.body.massG, eater.body.heightM] : [eater.energyKcal]),
    ...plan.demand.flatMap(({ eaters }) =>
      eaters.flatMap(({ need, targetKcal }) => [need.value, targetKcal]),
    ),
    ...plan.menu.meals.map(({ targetKcal }) => targetKcal),
    ...plan.menu.energy.map(({ missingKcal }) => missingKcal),
    ...plan.water.days.flatMap(({ drink }) => drink.map(({ ml }) => ml.value)),
    plan.totals.targetKcal,
    plan.totals.missingKcal,
  ].filter((figure) => figure !== 0);
  expect(own.length).toBeGreaterThan(10);
  expect(own.filter((figure) => sent.has(figure))).toEqual([]);
  expect(own.filter((figure) => !numbers([trip, plan]).has(figure))).toEqual([]);
});

it('cards, packing lists and menus show readers the same meals', () => {
  const { trip, plan } = planned({ body: BODY });
  const sent = { trip: tripForReaders(trip), plan: planForReaders(plan) };
  expect(cardView(sent.plan)).toEqual(cardView(plan));
  expect(packingSheets(sent.trip, sent.plan)[0]?.bags).toEqual(packingSheets(trip, plan)[0]?.bags);
  const meals = (from: typeof sent) =>
    menuByDay(from.trip, from.plan.menu, tripDays(from.plan)).map(({ day, meals: of }) => [
      day,
      of.map(({ dishes }) => dishes),
    ]);
  expect(meals(sent)).toHaveLength(3);
  expect(meals(sent)).toEqual(meals({ trip, plan }));
});
