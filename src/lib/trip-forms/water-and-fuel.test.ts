import { describe, expect, it } from 'vitest';
import { FormReader } from '$lib/forms/read-form.ts';
import { Settings } from '$lib/planning/model/settings.ts';
import { Trip } from '$lib/planning/model/trip.ts';
import { readStarted, readStoveRun, readWater, waterFields } from './water-and-fuel.ts';

const TRIP = Trip.parse({
  name: 'Ridge walk',
  startDate: '2026-07-04',
  dayCount: 2,
  party: [{ name: 'Ada' }],
  stove: { potG: 310, started: [{ label: 'dented', fuel: 'canister-gas', grossG: 200, tareG: 120 }] },
});
const SETTINGS = Settings.parse({});

function reader(entered: Readonly<Record<string, string>>, system: 'metric' | 'us' = 'metric') {
  const form = new FormData();
  for (const [name, value] of Object.entries(entered)) form.append(name, value);
  return new FormReader(form, system);
}

describe('readWater', () => {
  it.each(['metric', 'us'] as const)('reads back what the form was filled with, in %s units', (system) => {
    const entered = Object.fromEntries(
      Object.entries(waterFields(TRIP, system)).map(([name, values]) => [name, values[0] ?? '']),
    );
    expect(readWater(reader(entered, system), TRIP)).toEqual(TRIP);
  });

  it('takes treatment and pot, and leaves out what is emptied', () => {
    const read = reader({ treatment: 'boil', 'stove.potG': '', 'stove.potMl': '1.2' });
    const trip = readWater(read, TRIP);
    expect(trip?.treatment).toBe('boil');
    expect(trip?.stove).toEqual({ potMl: 1200, started: TRIP.stove.started });
  });

  it('says what is wrong with a pot', () => {
    const read = reader({ treatment: '', 'stove.potG': '9000', 'stove.potMl': 'big' });
    expect(readWater(read, TRIP)).toBeUndefined();
    expect(read.problems.map(({ field }) => field).sort()).toEqual(['stove.potG', 'stove.potMl']);
  });
});

describe('readStarted', () => {
  const entered = {
    'started.label': 'red mark',
    'started.fuel': 'canister-gas',
    'started.grossG': '210',
    'started.tareG': '120',
  };
  it('reads a container', () => {
    expect(readStarted(reader(entered), TRIP)).toEqual({
      label: 'red mark',
      fuel: 'canister-gas',
      grossG: 210,
      tareG: 120,
    });
  });
  it('refuses one that weighs less than when empty, and a label that is taken', () => {
    const light = reader({ ...entered, 'started.grossG': '100' });
    expect(readStarted(light, TRIP)).toBeUndefined();
    expect(light.problems.map(({ field }) => field)).toEqual(['started.grossG']);
    const twice = reader({ ...entered, 'started.label': 'dented' });
    expect(readStarted(twice, TRIP)).toBeUndefined();
    expect(twice.problems).toEqual([
      { field: 'started.label', message: expect.stringContaining('tell them apart') as string },
    ]);
  });
});

describe('readStoveRun', () => {
  const entered = {
    'run.date': '2026-06-01',
    'run.fuel': 'canister-gas',
    'run.grossBeforeG': '380',
    'run.grossAfterG': '365',
    'run.waterMl': '1',
    'run.fromC': '15',
    'run.altitudeM': '200',
  };
  it('reads a boil', () => {
    expect(readStoveRun(reader(entered), SETTINGS)).toEqual({
      date: '2026-06-01',
      fuel: 'canister-gas',
      grossBeforeG: 380,
      grossAfterG: 365,
      waterMl: 1000,
      fromC: 15,
      altitudeM: 200,
    });
  });
  it.each([
    ['so little fuel that more heat would be in the water than in it', '378', 'so little fuel'],
    ['so much fuel that hardly any heat would be in the water', '20', 'so much fuel'],
    ['a weight that went up', '390', 'must be less than before'],
  ])('refuses %s', (_, after, words) => {
    const read = reader({ ...entered, 'run.grossAfterG': after });
    expect(readStoveRun(read, SETTINGS)).toBeUndefined();
    expect(read.problems).toEqual([
      { field: 'run.grossAfterG', message: expect.stringContaining(words) as string },
    ]);
  });
  it('asks for every field', () => {
    const read = reader({ 'run.fuel': 'canister-gas' });
    expect(readStoveRun(read, SETTINGS)).toBeUndefined();
    expect(read.problems.map(({ field }) => field)).toEqual([
      'run.date',
      'run.grossBeforeG',
      'run.grossAfterG',
      'run.waterMl',
      'run.fromC',
      'run.altitudeM',
    ]);
  });
});
