import { expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../tests/support/examples.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { FUEL_WORDS } from '../presentation/code-words.ts';
import { afterwardsSubjects } from './afterwards.ts';
import { isOfFigure, learnedViews } from './learned.ts';

it('lists what can be said: lots with where their pouches are, dishes with water, each container by itself, days', () => {
  const stock = [
    exampleLot({ code: 'A', pouches: 30, mealKinds: ['breakfast', 'lunch', 'dinner'] }),
    exampleLot({ code: 'N', recipe: 'nuts', waterKind: 'none', waterMl: 0, mealKinds: ['snack'] }),
  ];
  const trip = exampleTrip({ days: [{ distanceM: 12_000 }], party: [{ name: 'Ada', energyKcal: 2500 }] });
  const settings = { ...defaultSettings(), fuelContainers: defaultSettings().fuelContainers.slice(0, 1) };
  const plan = planTrip(trip, stock, settings);
  const subjects = afterwardsSubjects(
    {
      trip,
      reserved: [{ code: 'A', pouches: 2 }],
      eaten: [{ code: 'A', pouches: 1 }],
      broughtBack: [{ code: 'N', pouches: 3 }],
    },
    {
      ...plan,
      fuel: { ...plan.fuel, containers: plan.fuel.containers.map((one) => ({ ...one, count: 2 })) },
    },
    stock,
    [
      { code: 'A', kind: 'left over', servings: 0.5 },
      { code: 'A', kind: 'left over', servings: 1 },
      { code: 'A', kind: 'too wet' },
    ],
    new Set(['bean stew']),
  );
  expect(subjects.lots).toEqual([
    { code: 'A', recipe: 'bean stew', packed: 3, eaten: 1, broughtBack: 0, left: 2, leftOverNoted: 1.5 },
    { code: 'N', recipe: 'nuts', packed: 3, eaten: 0, broughtBack: 3, left: 0, leftOverNoted: 0 },
  ]);
  expect(subjects.eaters).toEqual([{ name: 'Ada', hasOwnFigure: true }]);
  expect(subjects.dishes).toEqual([
    { name: 'bean stew', isKnown: true, takesWater: true, eaters: ['Ada'], noted: ['too wet'] },
    { name: 'nuts', isKnown: false, takesWater: false, eaters: ['Ada'], noted: [] },
  ]);
  expect(subjects.containers.map(({ label, beforeG }) => [label, beforeG])).toEqual([
    ['small canister, 100 g, number 1', 195],
    ['small canister, 100 g, number 2', 195],
  ]);
  expect(subjects.days.map(({ teaches }) => teaches)).toEqual([true, false]);
});

it('shows each learned figure with its history, and a key that finds just its observations', () => {
  const of = { tripId: 't', trip: 'Walk', date: '2026-07-01' };
  const settings = {
    ...defaultSettings(),
    learned: [
      { kind: 'pace' as const, ...of, plannedH: 10, walkedH: 12 },
      { kind: 'appetite' as const, ...of, eater: 'Bo', answer: 'too much' as const, ofOwnFigure: false },
      { kind: 'appetite' as const, ...of, eater: 'Ada', answer: 'too little' as const, ofOwnFigure: true },
      { kind: 'taste' as const, ...of, eater: 'Bo', dish: 'chili', answer: 'liked' as const },
      { kind: 'taste' as const, ...of, eater: 'Bo', dish: 'soup', answer: 'not liked' as const },
      { kind: 'fuel' as const, ...of, fuel: 'ethanol' as const, efficiency: 0.4, plannedG: 100, burntG: 150 },
    ],
  };
  const views = learnedViews(settings, 'metric');
  expect(views.map(({ name, value }) => [name, value])).toEqual([
    ['Appetite of Ada', '100% of the usual need'],
    ['Appetite of Bo', '95% of the usual need'],
    ['Tastes of Bo', 'chili: gladly and soup: rather not'],
    [`Efficiency of the stove, ${FUEL_WORDS.ethanol}`, '32%'],
    ['Group pace', 'pace factor 1.1'],
  ]);
  expect(views[3]?.usual).toContain('40%');
  for (const { key, history } of views)
    expect(settings.learned.filter(isOfFigure(key))).toHaveLength(history.length);
});
