import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../tests/support/examples.ts';
import { defaultSettings } from './model/settings.ts';
import { planTrip } from './plan-trip.ts';
import { steepAtAltitudeMin } from './trail-card/steep-time.ts';

const settings = defaultSettings();
const dinner = { dayCount: 1, firstMeal: 'dinner', lastMeal: 'dinner' } as const;

describe('fuel, by hand', () => {
  it('heats 700 ml from 10 °C to the boil at sea level with half of the heat of canister gas', () => {
    const trip = exampleTrip({
      ...dinner,
      days: [{ campAltitudeM: 0, waterTemperatureC: 10 }],
      stove: { fuel: 'canister-gas', efficiency: 0.5, reserve: 0.25 },
    });
    const { fuel } = planTrip(trip, [exampleLot({ pouches: 1 })], settings);
    // 0.7 kg × 4.186 kJ/(kg K) × (99.974 - 10) K = 263.6 kJ; / (45.76 kJ/g × 0.5) = 11.52 g
    expect(fuel.boils).toHaveLength(1);
    expect(fuel.boils[0]?.heatKJ).toBeCloseTo(263.6, 0);
    expect(fuel.need.value).toBeCloseTo(11.52, 1);
    expect(fuel.withReserveG).toBeCloseTo(14.4, 1);
    expect(fuel.containers.map(({ label, count }) => [label, count])).toEqual([['small canister, 100 g', 1]]);
  });

  it('heats hot water to the hot temperature, or to the boil where that is lower, and cold water not at all', () => {
    const hot = planTrip(
      exampleTrip({ ...dinner, days: [{ campAltitudeM: 0 }] }),
      [exampleLot({ waterKind: 'hot' })],
      settings,
    );
    expect(hot.fuel.boils[0]?.toC).toBe(settings.hotWaterC);
    const high = planTrip(
      exampleTrip({ ...dinner, days: [{ campAltitudeM: 8000 }] }),
      [exampleLot({ waterKind: 'hot' })],
      { ...settings, hotWaterC: 90 },
    );
    expect(high.fuel.boils[0]?.toC).toBeLessThan(80);
    const cold = planTrip(exampleTrip(dinner), [exampleLot({ waterKind: 'cold' })], settings);
    expect(cold.fuel.boils).toEqual([]);
    expect(cold.fuel.containers).toEqual([]);
    expect(cold.water.cookMl).toBe(700);
  });

  it('says so where the settings have no container for the fuel', () => {
    const plan = planTrip(exampleTrip({ ...dinner, stove: { fuel: 'kerosene' } }), [exampleLot()], {
      ...settings,
      fuelContainers: settings.fuelContainers.filter((size) => size.fuel !== 'kerosene'),
    });
    expect(plan.notices.some((notice) => notice.topic === 'fuel' && notice.text.includes('kerosene'))).toBe(
      true,
    );
  });
});

describe('water, by hand', () => {
  const day = { walkingH: 6, waterEveryH: 3, airTemperatureC: 15 };
  it('carries from source to source on the way', () => {
    const { water } = planTrip(exampleTrip({ days: [day, day] }), [], settings);
    // 1600 ml at rest, half of it on the way, and 6 h × 400 ml: 3200 ml over 6 h, so 1600 ml for 3 h
    expect(water.days[0]?.drink[0]?.ml.value).toBe(4000);
    expect(water.days[0]?.morning).toEqual({ eachMl: 1600, groupMl: 0 });
    expect(water.days[0]?.toDryCamp).toBeUndefined();
    expect(water.days[0]?.peakMl).toBe(3200);
  });

  it('carries to a dry camp the last stretch, the evening, dinner, breakfast and the first stretch of the next day', () => {
    const stock = [
      exampleLot({ pouches: 1 }),
      exampleLot({
        code: 'B1',
        recipe: 'porridge',
        mealKinds: ['breakfast'],
        waterMl: 200,
        pouches: 9,
        bestBefore: '2027-07-06',
      }),
    ];
    const menu = [
      { day: 1, meal: 'breakfast' as const, opened: [] },
      { day: 1, meal: 'dinner' as const, opened: [{ code: 'D1', pouches: 1 }] },
      { day: 2, meal: 'breakfast' as const, opened: [{ code: 'B1', pouches: 1 }] },
    ];
    const plan = planTrip(exampleTrip({ days: [{ ...day, campWater: 'dry' }, day], menu }), stock, settings);
    expect(plan.water.days[0]?.toDryCamp).toEqual({ eachMl: 1600 + 800 + 1600, groupMl: 700 + 400 });
    expect(plan.water.days[0]?.peakMl).toBe(2 * 4000 + 1100);
    expect(plan.water.days[1]?.morning).toEqual({ eachMl: 1600, groupMl: 0 });
    const load = plan.carry.loads.find((entry) => entry.day === 1 && entry.eater === 'Ada');
    expect(load?.peakWhen).toBe('leaving the last source for a dry camp');
    expect(load?.peakWaterG).toBe(4000 + 550);
  });

  it('carries everything out of camp where neither the way nor the next camp has a source', () => {
    const { water } = planTrip(
      exampleTrip({
        days: [
          { ...day, waterEveryH: 12, campWater: 'dry' },
          { ...day, waterEveryH: 12 },
        ],
      }),
      [],
      settings,
    );
    expect(water.days[0]?.morning.eachMl).toBe(3200 + 800 + 3200);
    expect(water.days[1]?.morning.eachMl).toBe(3200);
  });

  it('drinks more when it is hot, and never more than the limits', () => {
    const drinkAt = (airTemperatureC: number) =>
      planTrip(exampleTrip({ days: [{ ...day, airTemperatureC }] }), [], settings).water.days[0]?.drink[0]?.ml
        .value ?? 0;
    expect(drinkAt(30)).toBe(1600 + 6 * 400 * 1.4);
    expect(drinkAt(-20)).toBe(4000);
    const long = planTrip(exampleTrip({ days: [{ walkingH: 20, airTemperatureC: 55 }] }), [], settings);
    expect(long.water.days[0]?.drink[0]?.ml.value).toBeCloseTo(11_356.235, 2);
  });

  it('carries nothing on a rest day at a source', () => {
    const { water } = planTrip(exampleTrip({ days: [{ walkingH: 0 }, { walkingH: 0 }] }), [], settings);
    expect(water.days.map((entry) => entry.peakMl)).toEqual([0, 0]);
  });
});

describe('packs', () => {
  it('give more to whoever may carry more, and say who is overloaded when and where', () => {
    const party = [
      { name: 'Ada', maxLoadG: 20_000, baseLoadG: 8000 },
      { name: 'Bo', maxLoadG: 9000, baseLoadG: 8000 },
    ];
    const plan = planTrip(
      exampleTrip({ party, days: [{ walkingH: 6 }, { walkingH: 6 }] }),
      [exampleLot({ pouches: 8, servingsPerPouch: 1 })],
      settings,
    );
    const [ada, bo] = plan.carry.packs;
    expect((ada?.foodG ?? 0) + (ada?.fuelGrossG ?? 0)).toBeGreaterThan(
      4 * ((bo?.foodG ?? 0) + (bo?.fuelGrossG ?? 0)),
    );
    expect(plan.notices.find((notice) => notice.topic === 'load' && notice.eater === 'Bo')).toBeDefined();
  });

  it('get lighter by what is eaten, and keep the empty pouches', () => {
    const plan = planTrip(exampleTrip({ party: [{ name: 'Ada' }] }), [exampleLot({ pouches: 2 })], settings);
    const [first, second] = plan.carry.loads;
    expect((first?.foodG ?? 0) - (second?.foodG ?? 0)).toBe(300);
    expect(first?.packagingG).toBe(24);
    expect(second?.packagingG).toBe(24);
  });
});

describe('what is missing', () => {
  it('names day, meal and eaters, and ways that fill it', () => {
    const plan = planTrip(
      exampleTrip({ ...dinner, party: [{ name: 'Ada', allergens: ['milk'] }] }),
      [
        exampleLot({ pouches: 0, allergens: ['milk'] }),
        exampleLot({ code: 'D2', recipe: 'dal', pouches: 0 }),
      ],
      settings,
    );
    expect(plan.shortfall.missingKcal).toBe(800);
    const line = plan.shortfall.shopping.find((entry) => entry.meal === 'dinner');
    expect(line?.missingKcal).toBe(700);
    expect(
      line?.suggestions
        .filter((suggestion) => suggestion.way === 'dry')
        .map(({ what, pouches }) => [what, pouches]),
    ).toEqual([['dal', 1]]);
    expect(
      line?.suggestions
        .filter((suggestion) => suggestion.way === 'buy')
        .map(({ what, weightG }) => [what, weightG])[0],
    ).toEqual(['instant rice', 200]);
  });

  it('is nothing where everyone is fed', () => {
    const plan = planTrip(
      exampleTrip(dinner),
      [exampleLot({ servingsPerPouch: 2, energyKcal: 800 })],
      settings,
    );
    expect(plan.shortfall).toEqual({ missingKcal: 0, missingServings: 0, meals: [], shopping: [] });
    expect(plan.notices.filter((notice) => notice.level === 'wrong')).toEqual([]);
  });
});

describe('the card', () => {
  it('waits longer at altitude for boiling water only', () => {
    expect(steepAtAltitudeMin(10, 100)).toBe(10);
    expect(steepAtAltitudeMin(10, 90)).toBe(20);
    expect(steepAtAltitudeMin(10, 101)).toBe(10);
    const plan = planTrip(
      exampleTrip({ ...dinner, days: [{ campAltitudeM: 3000 }] }),
      [exampleLot()],
      settings,
    );
    expect(plan.card.days[0]?.longerSteep).toBe(true);
    expect(plan.card.days[0]?.meals[0]?.pouches[0]?.steepMin).toBe(20);
    const cold = planTrip(
      exampleTrip({ ...dinner, days: [{ campAltitudeM: 3000 }] }),
      [exampleLot({ waterKind: 'cold' })],
      settings,
    );
    expect(cold.card.days[0]?.meals[0]?.pouches[0]?.steepMin).toBe(10);
  });

  it('cooks breakfast at the camp of the night before', () => {
    const stock = [exampleLot({ code: 'B1', mealKinds: ['breakfast'] })];
    const plan = planTrip(
      exampleTrip({
        days: [{ campAltitudeM: 2500 }, { campAltitudeM: 500 }],
        menu: [{ day: 1, meal: 'breakfast', opened: [] }],
      }),
      stock,
      settings,
    );
    expect(plan.fuel.boils.find((boil) => boil.day === 2)?.altitudeM).toBe(2500);
  });

  it('carries the cautions of CDC and of every stove', () => {
    const { cautions } = planTrip(exampleTrip(dinner), [exampleLot()], settings).card;
    expect(
      cautions.some((text) => text.includes('1 minute') && text.includes('3 minutes above 2000 m')),
    ).toBe(true);
    for (const word of ['absorber', 'carbon monoxide', 'Allergens', 'Local rules'])
      expect(cautions.some((text) => text.includes(word))).toBe(true);
  });
});

describe('defaults', () => {
  it('make a plan from party, days and calories alone, and are listed with their reasons', () => {
    const plan = planTrip(exampleTrip({ firstMeal: undefined, lastMeal: undefined }), [], settings);
    expect(plan.assumptions.map((entry) => entry.field)).toContain('days.0.walkingH');
    expect(plan.assumptions.every((entry) => entry.reason.length > 10)).toBe(true);
  });
});

describe('cost', () => {
  it('is that of the opened servings, and says how much of it is known', () => {
    const plan = planTrip(
      exampleTrip({ firstMeal: 'dinner' }),
      [exampleLot({ pouches: 1, costMinor: 250 }), exampleLot({ code: 'D2', recipe: 'dal', pouches: 1 })],
      settings,
    );
    expect(plan.totals.costMinor).toBe(500);
    expect(plan.totals.costKnownShare).toBe(0.5);
  });
});
