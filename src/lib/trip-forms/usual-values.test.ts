import { describe, expect, it } from 'vitest';
import { learnedDefaults } from '$lib/planning/learning/learned-figures.ts';
import { defaultSettings } from '$lib/planning/model/settings.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import { usualAppetites, usualByDay, usualValues } from './usual-values.ts';

const trip = (more: object) =>
  Trip.parse({ name: 'Walk', startDate: '2026-07-04', dayCount: 2, party: [{ name: 'Ada' }], ...more });

describe('usualByDay', () => {
  it('says nothing of a day of which only the hours are known', () => {
    expect(usualByDay(trip({ days: [{ walkingH: 5 }] }), 'metric')).toEqual([{}, {}]);
  });

  it('takes the hours from a leg entered by hand, whatever hours stand over them', () => {
    const [first, second] = usualByDay(
      trip({ days: [{ distanceM: 12_000, walkingH: 9 }], pace: { restShare: 0 } }),
      'metric',
    );
    expect(first).toEqual({ walkingH: { text: '3 h', typed: '3', reason: 'by the leg' } });
    expect(second).toEqual({});
  });

  it('takes hours, camp and its water from the route, in the unit shown', () => {
    const route = {
      name: 'Ridge',
      profile: [
        { distanceM: 0, altitudeM: 1000 },
        { distanceM: 16_000, altitudeM: 1000 },
      ],
      waypoints: [
        { name: 'Spring', distanceM: 8000, water: true },
        { name: 'Pass', distanceM: 9000 },
      ],
    };
    const [first, last] = usualByDay(trip({ route, pace: { restShare: 0 } }), 'us');
    expect(first?.walkingH?.typed).toBe('2');
    expect(first?.campAltitudeM?.text).toBe('3,281 ft');
    expect(first?.campWater?.typed).toBe('source');
    expect(first?.endsAt?.text).toBe('open, at 5.0 mi');
    expect(last?.campWater).toBeUndefined();
    expect(last?.endsAt?.text).toBe('the end of the route');
    const [dry] = usualByDay(trip({ route, days: [{ endsAt: 'Pass' }] }), 'metric');
    expect(dry?.campWater?.typed).toBe('dry');
  });
});

it('shows the usual values in the units of the reader, each with its reason', () => {
  const metric = usualValues('metric', 'canister-gas');
  const us = usualValues('us', 'canister-gas');
  expect(metric.maxLoadG).toMatchObject({ text: '18.0 kg', typed: '18' });
  expect(us.maxLoadG).toMatchObject({ text: '39.7 lb', typed: '39.7' });
  expect(us.airTemperatureC).toMatchObject({ text: '64 °F', typed: '64' });
  for (const { text, reason } of Object.values(metric)) {
    expect(text).not.toBe('');
    expect(reason.length).toBeGreaterThan(10);
  }
});

it('the usual efficiency is that of the fuel', () => {
  expect(usualValues('metric', 'ethanol')['stove.efficiency'].text).toBe('40%');
  expect(usualValues('metric', 'canister-gas')['stove.efficiency'].text).toBe('50%');
});

describe('what trips taught', () => {
  const of = { tripId: 't', trip: 'Walk', date: '2026-07-01' };
  const settings = {
    ...defaultSettings(),
    learned: [
      { kind: 'pace' as const, ...of, plannedH: 10, walkedH: 12 },
      { kind: 'fuel' as const, ...of, fuel: 'ethanol' as const, efficiency: 0.4, plannedG: 100, burntG: 150 },
      { kind: 'appetite' as const, ...of, eater: 'Ada', answer: 'too little' as const, ofOwnFigure: false },
    ],
  };
  const learned = learnedDefaults(settings.learned);

  it('is the usual value, with its reason, and marked as learned', () => {
    const usual = usualValues('metric', 'ethanol', settings);
    expect(usual['stove.efficiency']).toMatchObject({ text: '32%', isLearned: true });
    expect(usual['pace.partyFactor']).toMatchObject({ typed: '1.1', isLearned: true });
    expect(usualValues('metric', 'naphtha', settings)['stove.efficiency'].isLearned).toBeUndefined();
    const [day] = usualByDay(
      trip({ days: [{ distanceM: 12_000 }], pace: { restShare: 0 } }),
      'metric',
      learned,
    );
    expect(day?.walkingH?.typed).toBe('3.3');
  });

  it('of an eater is shown only where nobody entered a figure', () => {
    const texts = (more: object) =>
      usualAppetites(trip(more), learned).map((appetite) => appetite?.energyText);
    expect(texts({})).toEqual(['3,150 kcal']);
    expect(texts({ energyKcal: 2500 })).toEqual([undefined]);
    expect(texts({ party: [{ name: 'Ada', energyKcal: 2500 }, { name: 'Bo' }] })).toEqual([
      undefined,
      undefined,
    ]);
  });
});
