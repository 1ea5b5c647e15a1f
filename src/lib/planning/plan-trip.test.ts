import { describe, expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../tests/support/examples.ts';
import { defaultSettings } from './model/settings.ts';
import { planTrip } from './plan-trip.ts';
import { waitText } from '../presentation/wait-words.ts';
import { steepAtAltitudeMin, stirAtAltitudeMin } from './trail-card/steep-time.ts';

const settings = defaultSettings();
const dinner = { dayCount: 1, firstMeal: 'dinner', lastMeal: 'dinner' } as const;

describe('fuel, by hand', () => {
  it('heats 700 ml from 10 °C to the boil at sea level with half of the heat of canister gas', () => {
    const trip = exampleTrip({
      ...dinner,
      days: [{ campAltitudeM: 0, waterTemperatureC: 10, airTemperatureC: 20 }],
      stove: { fuel: 'canister-gas', efficiency: 0.5, reserve: 0.25 },
    });
    const { fuel } = planTrip(trip, [exampleLot({ pouches: 1 })], settings);
    // 0.7 kg × 4.186 kJ/(kg K) × (99.974 - 10) K = 263.6 kJ; the share entered is what reaches the water, pot paid for; / (45.76 kJ/g × 0.5) = 11.52 g
    expect(fuel.boils).toHaveLength(1);
    expect(fuel.boils[0]?.heatKJ).toBeCloseTo(263.6, 0);
    expect(fuel.need.value).toBeCloseTo(11.52, 1);
    expect(fuel.withReserveG).toBeCloseTo(14.4, 1);
    expect(fuel.containers.map(({ label, count }) => [label, count])).toEqual([['small canister, 100 g', 1]]);
  });

  it('takes a quarter more than is burnt where no reserve is chosen, and none where none is wanted', () => {
    const fuelWith = (reserve?: number) =>
      planTrip(
        exampleTrip({
          ...dinner,
          stove: { fuel: 'canister-gas', ...(reserve !== undefined && { reserve }) },
        }),
        [exampleLot({ pouches: 1 })],
        settings,
      ).fuel;
    const usual = fuelWith();
    expect(usual.need.value).toBeGreaterThan(10);
    expect(usual.withReserveG).toBeCloseTo(usual.need.value * 1.25, 2);
    expect(fuelWith(0).withReserveG).toBeCloseTo(usual.need.value, 2);
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
    expect(
      plan.notices.some((notice) => notice.code === 'no-fuel-container' && notice.params.fuel === 'kerosene'),
    ).toBe(true);
  });
});

describe('water, by hand', () => {
  const day = { walkingH: 6, waterEveryH: 3, airTemperatureC: 15 };
  const startOf = (plan: ReturnType<typeof planTrip>, dayNumber: number, stretch = 0) =>
    plan.water.days[dayNumber - 1]?.stretches.at(stretch)?.start;
  const own = (ml: number) => [
    { eater: 'Ada', ml },
    { eater: 'Bo', ml },
  ];

  it('carries from source to source on the way', () => {
    const plan = planTrip(exampleTrip({ days: [day, day] }), [], settings);
    // 2250 ml at rest, half of it on the way, and 6 h × 400 ml: 3525 ml over 6 h, so 1762.5 ml for 3 h
    expect(plan.water.days[0]?.drink[0]?.ml.value).toBe(4650);
    expect(
      plan.water.days[0]?.stretches.map(({ from, fromH, toH, refilled, toDryCamp }) => [
        from,
        fromH,
        toH,
        refilled,
        toDryCamp,
      ]),
    ).toEqual([
      ['the start', 0, 3, true, false],
      ['source after 3 h', 3, 6, true, false],
    ]);
    expect(startOf(plan, 1)).toEqual({ own: own(1762.5), groupMl: 0, totalMl: 3525 });
    expect(plan.water.days[0]?.peakMl).toBe(3525);
  });

  it('counts the water in the food', () => {
    const dry =
      planTrip(exampleTrip({ ...dinner, days: [day] }), [], settings).water.days[0]?.drink[0]?.ml.value ?? 0;
    const fed =
      planTrip(exampleTrip({ ...dinner, days: [day] }), [exampleLot({ pouches: 1 })], settings).water.days[0]
        ?.drink[0]?.ml.value ?? 0;
    expect(dry - fed).toBeCloseTo(350, 6);
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
    // day 1: 350 ml come with dinner, so (1900 / 2 + 2400) / 6 = 558.33 ml an hour on the way and 950 ml at camp; day 2: 200 ml with breakfast, (1025 + 2400) / 6 = 570.83 ml an hour
    const eachMl = 3 * (3350 / 6) + 950 + 3 * (3425 / 6);
    const load = startOf(plan, 1, -1);
    expect(load?.groupMl).toBe(700 + 400);
    expect(load?.own[0]?.ml).toBeCloseTo(eachMl, 2);
    expect(plan.water.days[0]?.stretches.at(-1)?.toDryCamp).toBe(true);
    expect(plan.water.days[1]?.stretches[0]?.refilled).toBe(false);
    expect(startOf(plan, 2)?.own[0]?.ml).toBeCloseTo(3 * (3425 / 6), 2);
    const pack = plan.carry.loads.find((entry) => entry.day === 1 && entry.eater === 'Ada');
    expect(pack?.peakWhen).toBe('leaving source after 3 h for a dry camp');
    expect(pack?.peakWaterG).toBeCloseTo(eachMl + 550, 2);
  });

  it('carries everything out of camp where neither the way nor the next camp has a source, and says when no bottle holds it', () => {
    const plan = planTrip(
      exampleTrip({
        days: [
          { ...day, waterEveryH: 12, campWater: 'dry' },
          { ...day, waterEveryH: 12 },
        ],
      }),
      [],
      settings,
    );
    expect(startOf(plan, 1)?.own[0]?.ml).toBe(3525 + 1125 + 3525);
    expect(startOf(plan, 2)?.own[0]?.ml).toBe(3525);
    expect(
      plan.notices.filter(({ code }) => code === 'too-little-water-capacity').map((notice) => notice.day),
    ).toEqual([1, 2]);
    const bags = exampleTrip({
      party: [
        { name: 'Ada', waterCapacityMl: 10_000 },
        { name: 'Bo', waterCapacityMl: 10_000 },
      ],
      days: plan.water.days.map(() => ({ ...day, waterEveryH: 12, campWater: 'dry' as const })),
    });
    expect(
      planTrip(bags, [], settings).notices.filter(({ code }) => code === 'too-little-water-capacity'),
    ).toEqual([]);
  });

  it('drinks more when it is hot, and never more than the limits', () => {
    const drinkAt = (airTemperatureC: number) =>
      planTrip(exampleTrip({ days: [{ ...day, airTemperatureC }] }), [], settings).water.days[0]?.drink[0]?.ml
        .value ?? 0;
    expect(drinkAt(-20)).toBe(4650);
    for (let air = -30; air < 45; air++) expect(drinkAt(air + 1)).toBeGreaterThanOrEqual(drinkAt(air));
    const long = planTrip(exampleTrip({ days: [{ walkingH: 20, airTemperatureC: 55 }] }), [], settings);
    expect(long.water.days[0]?.drink[0]?.ml.value).toBeCloseTo(11_356.235, 2);
  });

  it('carries nothing on a rest day at a source', () => {
    const { water } = planTrip(exampleTrip({ days: [{ walkingH: 0 }, { walkingH: 0 }] }), [], settings);
    expect(water.days.map((entry) => entry.peakMl)).toEqual([0, 0]);
  });

  it('melts at a snow camp what is drunk and cooked there and carried on, and burns fuel for it', () => {
    const atSource = planTrip(exampleTrip({ days: [day, day] }), [], settings);
    const onSnow = planTrip(
      exampleTrip({ days: [{ ...day, campWater: 'snow', waterTemperatureC: -8 }, day] }),
      [],
      settings,
    );
    expect(onSnow.water.days[0]?.meltMl).toBe(2 * 1125);
    expect(onSnow.water.days[1]?.meltMl).toBe(3525);
    expect(atSource.fuel.need.value).toBe(0);
    const melted = onSnow.fuel.boils.filter((boil) => boil.purpose === 'melting');
    expect(melted.map((boil) => boil.waterMl)).toEqual([2250, 3525]);
    // 2.25 kg from -8 to 5 °C: 2.25 × (16.8 + 333.55 + 20.93) = 835.4 kJ, and 2 potsful × 0.25 kg × 0.9 × 13 K = 5.9 kJ
    expect(melted[0]?.heatKJ).toBeCloseTo(835.4 + 5.85, 0);
  });

  it('melts the water of meals at a snow camp too, however warm water was said to be elsewhere', () => {
    const boilOn = (treatment: 'filter' | 'boil') =>
      planTrip(
        exampleTrip({
          ...dinner,
          dayCount: 2,
          treatment,
          days: [{ campWater: 'snow', campAltitudeM: 0, waterTemperatureC: 10, airTemperatureC: -5 }],
        }),
        [exampleLot({ pouches: 1 })],
        settings,
      ).fuel.boils.filter((boil) => boil.day === 1);
    const [meal, melted] = boilOn('filter');
    // 0.7 kg from -5 °C to the boil: 0.7 × (10.5 + 333.55 + 418.5) = 533.8 kJ, and the pot 0.25 kg × 0.9 × 104.97 K = 23.6 kJ
    expect([meal?.purpose, meal?.waterMl, meal?.fromC]).toEqual(['meal', 700, -5]);
    expect(meal?.heatKJ).toBeCloseTo(533.8 + 23.6, 0);
    expect([melted?.purpose, melted?.fromC, melted?.toC]).toEqual(['melting', -5, 5]);
    const safe = boilOn('boil').filter(({ purpose }) => purpose === 'making safe');
    expect(safe[0]?.fromC).toBe(-5);
    expect(safe[0]?.waterMl).toBeCloseTo(melted?.waterMl ?? 0, 6);
  });

  it('burns fuel to make water safe by boiling, longer above 2000 m', () => {
    const boiled = (campAltitudeM: number) =>
      planTrip(exampleTrip({ treatment: 'boil', days: [{ ...day, campAltitudeM }, day] }), [], settings).fuel
        .boils[0];
    expect(boiled(1000)?.purpose).toBe('making safe');
    const perPot = (boil: ReturnType<typeof boiled>) =>
      (boil?.heatKJ ?? 0) -
      (boil
        ? ((boil.waterMl / 1000) * 4.186 + Math.ceil(boil.waterMl / 1500) * 0.25 * 0.9) *
          (boil.toC - boil.fromC)
        : 0);
    expect(perPot(boiled(1000))).toBeCloseTo(Math.ceil((boiled(1000)?.waterMl ?? 0) / 1500) * 18, 1);
    expect(perPot(boiled(2500))).toBeCloseTo(Math.ceil((boiled(2500)?.waterMl ?? 0) / 1500) * 54, 1);
  });
});

it('a cook group fills its own pot as often as that holds its water, and others that of the trip', () => {
  const party = [{ name: 'Ada' }, { name: 'Ben' }];
  const { fuel } = planTrip(
    exampleTrip({
      ...dinner,
      party,
      cookGroups: [
        { name: 'North', eaters: ['Ada'], potMl: 300 },
        { name: 'South', eaters: ['Ben'] },
      ],
    }),
    [exampleLot({ pouches: 2, waterMl: 700 })],
    settings,
  );
  const fills = fuel.boils.map(({ group, waterMl, potfuls }) => [
    group,
    potfuls,
    Math.ceil(waterMl / (group === 'North' ? 300 : 1500)),
  ]);
  expect(fills.map(([group]) => group)).toEqual(['North', 'South']);
  for (const [, potfuls, needed] of fills) expect(potfuls).toBe(needed);
  expect(fills[0]?.[1]).toBeGreaterThan(1);
});

describe('fuel from home', () => {
  it('takes a started canister where that is lighter, by its weight less the empty weight', () => {
    const started = [
      { label: 'canister from spring', fuel: 'canister-gas' as const, grossG: 150, tareG: 95 },
    ];
    const { fuel } = planTrip(
      exampleTrip({ ...dinner, stove: { started } }),
      [exampleLot({ pouches: 1 })],
      settings,
    );
    expect(fuel.containers).toEqual([
      { label: 'canister from spring', group: '1', count: 1, netG: 55, tareG: 95, started: true },
    ]);
    const empty = planTrip(
      exampleTrip({ ...dinner, stove: { started: [{ ...started[0]!, grossG: 100 }] } }),
      [exampleLot({ pouches: 1 })],
      settings,
    );
    expect(empty.fuel.containers.map(({ label }) => label)).toEqual(['small canister, 100 g']);
  });

  it('burns more in wind and cold, and says so for canister gas in frost', () => {
    const burnt = (conditions: object) =>
      planTrip(exampleTrip({ ...dinner, days: [conditions] }), [exampleLot({ pouches: 1 })], settings);
    const calm = burnt({ airTemperatureC: 20 }).fuel.need.value;
    expect(burnt({ airTemperatureC: 20, wind: 'windy' }).fuel.need.value).toBeCloseTo(calm / 0.7, 2);
    expect(burnt({ airTemperatureC: -5 }).fuel.need.value).toBeCloseTo(calm / 0.9, 2);
    expect(burnt({ airTemperatureC: -5 }).notices.some(({ code }) => code === 'cold-for-canister-gas')).toBe(
      true,
    );
    expect(burnt({ airTemperatureC: 20 }).notices.some(({ code }) => code === 'cold-for-canister-gas')).toBe(
      false,
    );
  });
});

describe('needs from body data', () => {
  const body = { sex: 'male' as const, ageY: 30, heightM: 1.8, massG: 80_000 };
  const withBody = (changes: object = {}, more: object = {}) =>
    exampleTrip({
      party: [{ name: 'Ada', body: { ...body, ...changes } }],
      days: [{ walkingH: 6 }, { walkingH: 0 }],
      ...more,
    });
  const row = (plan: ReturnType<typeof planTrip>, day: number) => plan.demand[day - 1]?.eaters[0];

  it('come from resting, camp and walking, with a range and a cross-check', () => {
    const plan = planTrip(withBody(), [], settings);
    const rest = row(plan, 2);
    // resting 1781.6 kcal/d: sleep 8 h × 0.95, camp 16 h × 1.6, and a tenth of both for digesting
    expect(rest?.need.value).toBeCloseTo((1781.6 / 24) * (8 * 0.95 + 16 * 1.6) * 1.1, 1);
    expect(row(plan, 1)?.need.value).toBeGreaterThan((rest?.need.value ?? 0) + 500);
    expect(row(plan, 1)?.need.low).toBeLessThan(row(plan, 1)?.need.value ?? 0);
    expect(row(plan, 1)?.need.terms.some((term) => term.code === 'requirement')).toBe(true);
  });

  it('are planned at the chosen point of the range, less a planned deficit, and not below the need otherwise', () => {
    const middle = row(planTrip(withBody(), [], settings), 1);
    const high = row(planTrip(withBody({}, { planFor: 'high' }), [], settings), 1);
    expect(middle?.targetKcal).toBeCloseTo(middle?.need.value ?? 0, 2);
    expect(high?.targetKcal).toBeCloseTo(high?.need.high ?? 0, 2);
    const hungry = planTrip(withBody({}, { deficitShare: 0.2 }), [], settings);
    expect(row(hungry, 1)?.targetKcal).toBeCloseTo(0.8 * (row(hungry, 1)?.need.value ?? 0), 1);
    expect(hungry.notices.some(({ code }) => code === 'planned-deficit')).toBe(true);
  });

  it('of minors are those of their age, without a deficit, with a word of caution', () => {
    const plan = planTrip(
      withBody({ ageY: 14, massG: 50_000, heightM: 1.6 }, { deficitShare: 0.2 }),
      [],
      settings,
    );
    expect(row(plan, 1)?.basis).toBe('minor body');
    expect(row(plan, 1)?.deficitKcal).toBe(0);
    expect(row(plan, 1)?.targetKcal).toBeCloseTo(row(plan, 1)?.need.value ?? 0, 2);
    expect(plan.notices.some(({ code, eater }) => code === 'minor-in-party' && eater === 'Ada')).toBe(true);
  });

  it('settle with the loads that the food makes', () => {
    const plan = planTrip(
      withBody(),
      [exampleLot({ pouches: 20, mealKinds: ['breakfast', 'lunch', 'dinner', 'snack'] })],
      settings,
    );
    expect(plan.coupling.settled).toBe(true);
    expect(plan.coupling.steps).toBeGreaterThan(1);
    expect(row(plan, 1)?.walkingLoadG).toBeGreaterThan(8000);
  });
});

describe('legs', () => {
  const body = { sex: 'female' as const, ageY: 35, heightM: 1.7, massG: 65_000 };
  const route = {
    name: 'ridge',
    profile: [
      { distanceM: 0, altitudeM: 600 },
      { distanceM: 10_000, altitudeM: 1800 },
      { distanceM: 20_000, altitudeM: 900 },
    ],
    waypoints: [
      { name: 'spring', distanceM: 4000, water: true },
      { name: 'old well', distanceM: 7000, water: true, struck: true },
      { name: 'saddle', distanceM: 10_000 },
      { name: 'brook', distanceM: 15_000, water: true },
    ],
  };

  it('entered by hand give hours by DIN 33466, and hours entered stand over them', () => {
    // 12 km and 900 m up: 3 h each on the flat and up; 3 + 3 / 2 = 4.5 h, and a fifth of rest
    const plan = planTrip(
      exampleTrip({
        days: [
          { distanceM: 12_000, climbM: 900, descentM: 0 },
          { distanceM: 12_000, walkingH: 7 },
        ],
      }),
      [],
      settings,
    );
    expect(plan.legs.map(({ basis, walkingH }) => [basis, walkingH])).toEqual([
      ['by hand', 5.4],
      ['by hand', 7],
    ]);
    expect(plan.legs[0]?.climbM).toBe(900);
  });

  it('of a route are split at the waypoints, with the camp’s altitude, its water and the sources on the way', () => {
    const plan = planTrip(exampleTrip({ route, days: [{ endsAt: 'saddle' }, {}] }), [], settings);
    expect(
      plan.legs.map(({ basis, distanceM, climbM, descentM, endsAt }) => [
        basis,
        distanceM,
        climbM,
        descentM,
        endsAt,
      ]),
    ).toEqual([
      ['route', 10_000, 1200, 0, 'saddle'],
      ['route', 10_000, 0, 900, undefined],
    ]);
    expect(plan.legs[0]?.sources.map((source) => source.name)).toEqual(['spring']);
    expect(plan.card.days[0]?.altitudeM).toBe(1800);
    expect(plan.card.days[0]?.dryCamp).toBe(true);
    expect(plan.water.days[0]?.stretches.at(-1)).toMatchObject({
      from: 'spring',
      toDryCamp: true,
      fromM: 4000,
      toM: 10_000,
    });
    expect(plan.water.days[1]?.stretches.map((stretch) => [stretch.from, stretch.refilled])).toEqual([
      ['camp', false],
      ['brook', true],
    ]);
    expect(plan.water.days[1]?.stretches[1]).toMatchObject({ fromM: 15_000, toM: 20_000 });
  });

  it('of a track without elevation are level, and say so; the camp’s altitude is then the one entered', () => {
    const level = {
      ...route,
      altitudeKnown: false,
      profile: route.profile.map((point) => ({ ...point, altitudeM: 0 })),
    };
    const plan = planTrip(
      exampleTrip({ route: level, days: [{ endsAt: 'saddle', campAltitudeM: 1800 }, {}] }),
      [],
      settings,
    );
    expect(plan.notices.some(({ code }) => code === 'route-without-elevation')).toBe(true);
    expect(plan.card.days.map((day) => day.altitudeM)).toEqual([1800, 500]);
  });

  it('cost more uphill, and more still with a heavier base load', () => {
    const need = (days: object[], baseLoadG = 8000) =>
      planTrip(
        exampleTrip({ party: [{ name: 'Ada', body, baseLoadG, maxLoadG: 30_000 }], days }),
        [],
        settings,
      ).demand[0]?.eaters[0]?.need.value ?? 0;
    const flat = need([{ distanceM: 12_000, climbM: 0, descentM: 0, walkingH: 5 }]);
    const up = need([{ distanceM: 12_000, climbM: 900, descentM: 0, walkingH: 5 }]);
    expect(up).toBeGreaterThan(flat + 100);
    expect(need([{ distanceM: 12_000, climbM: 900, descentM: 0, walkingH: 5 }], 14_000)).toBeGreaterThan(
      up + 50,
    );
  });

  it('beyond the data of the equation are named', () => {
    const plan = planTrip(
      exampleTrip({ party: [{ name: 'Ada', body }], days: [{ distanceM: 4000, climbM: 0, descentM: 2000 }] }),
      [],
      settings,
    );
    expect(plan.notices.find(({ code }) => code === 'beyond-walking-equation')?.params).toMatchObject({
      beyondM: 4000,
    });
  });

  it('at the ends of the world are still planned: -430 to 8848 m, -30 and 45 °C', () => {
    for (const campAltitudeM of [-430, 8848])
      for (const airTemperatureC of [-30, 45]) {
        const plan = planTrip(
          exampleTrip({
            days: [
              { campAltitudeM, airTemperatureC, waterTemperatureC: 0 },
              { campAltitudeM, airTemperatureC },
            ],
          }),
          [exampleLot({ pouches: 9 })],
          settings,
        );
        expect(plan.fuel.need.value).toBeGreaterThan(0);
        expect(Number.isFinite(plan.card.days[0]?.boilsAtC)).toBe(true);
      }
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
    expect(
      plan.notices.find((notice) => notice.code === 'over-carry-limit' && notice.eater === 'Bo'),
    ).toBeDefined();
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
    ).toEqual(['instant rice', 5 * 104]);
  });

  it('is nothing where everyone is fed', () => {
    const plan = planTrip(
      exampleTrip(dinner),
      [exampleLot({ servingsPerPouch: 2, energyKcal: 800 })],
      settings,
    );
    expect(plan.shortfall).toEqual({ missingKcal: 0, missingServings: 0, meals: [], shopping: [] });
    expect(plan.notices.filter((notice) => notice.severity === 'attention')).toEqual([]);
  });
});

describe('the card', () => {
  it('waits longer at altitude for boiling water only', () => {
    expect(steepAtAltitudeMin(10, 100)).toBe(10);
    expect(steepAtAltitudeMin(10, 90)).toBe(12);
    expect(steepAtAltitudeMin(10, 101)).toBe(10);
    const plan = planTrip(
      exampleTrip({ ...dinner, days: [{ campAltitudeM: 3000 }] }),
      [exampleLot()],
      settings,
    );
    expect(plan.card.days[0]?.longerSteep).toBe(true);
    expect(plan.card.days[0]?.meals[0]?.pouches[0]?.steepMin).toBe(12);
    const cold = planTrip(
      exampleTrip({ ...dinner, days: [{ campAltitudeM: 3000 }] }),
      [exampleLot({ waterKind: 'cold' })],
      settings,
    );
    expect(cold.card.days[0]?.meals[0]?.pouches[0]?.steepMin).toBe(10);
  });

  it('stirs within the wait, later at altitude as the wait is longer', () => {
    const pouches = (changes: object) =>
      planTrip(
        exampleTrip({ ...dinner, days: [{ campAltitudeM: 3000 }] }),
        [exampleLot({ stirAfterMin: 4, ...changes })],
        settings,
      ).card.days[0]?.meals[0]?.pouches[0];
    expect(pouches({})).toMatchObject({ steepMin: 12, stirAfterMin: 5 });
    expect(pouches({ waterKind: 'cold' })).toMatchObject({ steepMin: 10, stirAfterMin: 4 });
    expect(pouches({ stirAfterMin: undefined })).not.toHaveProperty('stirAfterMin');

    expect(stirAtAltitudeMin(9.9, 10, 100)).toBe(9.5);
    expect(stirAtAltitudeMin(0.1, 10, 100)).toBe(0.5);
    expect(stirAtAltitudeMin(0.2, 0, 100)).toBeUndefined();
  });

  it('says the wait as it is timed', () => {
    expect(waitText({ steepMin: 0 })).toBe('');
    expect(waitText({ steepMin: 10 })).toBe('wait 10 min');
    expect(waitText({ steepMin: 20, steepSeaLevelMin: 10 })).toBe('wait 20 min (10 at sea level)');
    expect(waitText({ steepMin: 15, stirAfterMin: 8 })).toBe('wait 8 min, stir, wait 7 min more');
    expect(waitText({ steepMin: 18, steepSeaLevelMin: 9, stirAfterMin: 10 })).toBe(
      'wait 10 min, stir, wait 8 min more (9 min total at sea level)',
    );
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
});

describe('defaults', () => {
  it('make a plan from party, days and calories alone, and are listed with their reasons', () => {
    const plan = planTrip(exampleTrip({ firstMeal: undefined, lastMeal: undefined }), [], settings);
    expect(plan.assumptions.map((entry) => entry.field)).toContain('days.0.walkingH');
    expect(
      plan.assumptions.every((entry) => entry.why.code === 'usual' || entry.why.code === 'signposts'),
    ).toBe(true);
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
