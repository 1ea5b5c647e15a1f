import { afterEach, describe, expect, it } from 'vitest';
import type { ShownIn } from '$lib/forms/lot-form.ts';
import { FormReader, type Entered } from '$lib/forms/read-form.ts';
import { defaultKitchen, type Kitchen, type LoggedRun } from '$lib/planning/model/kitchen.ts';
import { useLanguage } from '$lib/texts/say.ts';
import {
  dryerNames,
  KITCHEN_PARTS,
  kitchenFields,
  kitchenLabel,
  readKitchenPart,
  STORAGE_TABLES,
  usualOfLine,
  type KitchenPart,
} from './equipment-form.ts';

const METRIC: ShownIn = { unitSystem: 'metric', currency: 'EUR' };
const US: ShownIn = { unitSystem: 'us', currency: 'USD' };
const RUN: LoggedRun = {
  date: '2026-05-02',
  dryer: 'freeze dryer',
  preFrozen: true,
  waterRemovedG: 2711,
  hours: 21.5,
  energyKwh: 17.3,
};
const USUAL = defaultKitchen();
const KITCHEN: Kitchen = {
  ...USUAL,
  shopServingMinor: 799,
  storageTemperatureC: 17,
  runs: [RUN, { date: '2026-05-09', dryer: 'borrowed one', preFrozen: false, waterRemovedG: 900, hours: 12 }],
};

function read(changes: Entered, part: KitchenPart, current = KITCHEN, shown = METRIC) {
  const form = new FormData();
  for (const [name, values] of Object.entries({ ...kitchenFields(current, shown), ...changes }))
    for (const value of values) form.append(name, value);
  const reader = new FormReader(form, shown.unitSystem);
  return { kitchen: readKitchenPart(reader, part, current, shown), problems: reader.problems };
}

/** The order of the lines of the storage table says nothing. */
const sorted = (kitchen: Kitchen | undefined) =>
  kitchen && {
    ...kitchen,
    storage: new Set(kitchen.storage.map((rule) => JSON.stringify(rule, Object.keys(rule).sort()))),
  };

describe('readKitchenPart', () => {
  it('changes nothing where nothing was changed, in either unit system', () => {
    for (const shown of [METRIC, US])
      for (const part of Object.keys(KITCHEN_PARTS) as KitchenPart[]) {
        const { kitchen, problems } = read({}, part, KITCHEN, shown);
        expect(problems, part).toEqual([]);
        expect(sorted(kitchen), part).toEqual(sorted(KITCHEN));
      }
  });

  it('reads its own part only', () => {
    const changes = { 'dryers[0].trayCount': ['5'], headspaceShare: ['30'], readyDaysBefore: ['9'] };
    const { kitchen } = read(changes, 'dryers');
    expect(kitchen?.dryers[0]?.trayCount).toBe(5);
    expect(kitchen).toEqual({
      ...KITCHEN,
      dryers: [{ ...USUAL.dryers[0], trayCount: 5 }, ...USUAL.dryers.slice(1)],
    });
  });

  it('refuses figures out of range or unreadable, and names taken, by the field', () => {
    const { kitchen, problems } = read(
      { 'dryers[0].trayCount': ['0'], 'dryers[1].depthLimitMm': ['thin'] },
      'dryers',
    );
    expect(kitchen).toBeUndefined();
    expect(problems.map(({ field }) => kitchenLabel(field)).sort()).toEqual([
      'Dryer 1, Trays',
      'Dryer 2, Max layer depth',
    ]);
    expect(read({ 'dryers[1].name': ['freeze dryer'] }, 'dryers').problems).toEqual([
      { field: 'dryers[1].name', message: '"freeze dryer" is listed twice; tell them apart' },
    ]);
  });

  it('finds the line of a problem although one before it is removed', () => {
    const changes = { 'pouches[0].remove': ['on'], 'pouches[2].volumeMl': ['0'] };
    expect(read(changes, 'pouches').problems).toEqual([
      { field: 'pouches[2].volumeMl', message: 'must be more than 0' },
    ]);
  });

  it('adds a dryer with the usual values where it was left empty, and leaves out the empty line', () => {
    const at = `dryers[${USUAL.dryers.length}]`;
    const empty = { [`${at}.process`]: ['freeze-dried'], [`${at}.name`]: [' '], [`${at}.trayCount`]: [''] };
    expect(read(empty, 'dryers').kitchen).toEqual(KITCHEN);
    const changes = {
      ...empty,
      [`${at}.process`]: ['dehydrated'],
      [`${at}.name`]: ['sun frame'],
      [`${at}.trayCount`]: ['2'],
      [`${at}.trayAreaCm2`]: ['1 200'],
      [`${at}.trayLimitG`]: ['400'],
      [`${at}.depthLimitMm`]: ['6,5'],
      [`${at}.meanPowerW`]: ['0'],
      [`${at}.priceMinor`]: [''],
    };
    expect(read(changes, 'dryers').kitchen?.dryers.at(-1)).toEqual({
      name: 'sun frame',
      process: 'dehydrated',
      trayCount: 2,
      trayAreaCm2: 1200,
      trayLimitG: 400,
      depthLimitMm: 6.5,
      meanPowerW: 0,
      priceMinor: 0,
      expectedBatches: 300,
    });
  });

  it('lets runs follow their dryer to its new name, even where two change names', () => {
    const renamed = read({ 'dryers[0].name': ['old faithful'] }, 'dryers').kitchen;
    expect(renamed?.runs.map(({ dryer }) => dryer)).toEqual(['old faithful', 'borrowed one']);
    const removed = read({ 'dryers[0].remove': ['on'], 'dryers[1].name': ['warm air'] }, 'dryers').kitchen;
    expect(removed?.runs[0]?.dryer).toBe('freeze dryer');
    expect(dryerNames(removed!)).toEqual(['warm air', 'large freeze dryer', 'freeze dryer', 'borrowed one']);
    const swapped = { 'dryers[0].name': ['dehydrator'], 'dryers[1].name': ['freeze dryer'] };
    expect(read(swapped, 'dryers').kitchen?.runs[0]?.dryer).toBe('dehydrator');
  });

  it('reads units and money as they are shown', () => {
    const at = `absorbers[${USUAL.absorbers.length}]`;
    const changes = {
      [`${at}.label`]: ['800 ml'],
      [`${at}.oxygenMl`]: ['800'],
      [`${at}.tareG`]: ['0.25'],
      [`${at}.priceMinor`]: ['0.19'],
      absorberReserve: ['40'],
    };
    const { kitchen } = read(changes, 'absorbers', KITCHEN, US);
    expect(kitchen?.absorbers.at(-1)).toMatchObject({ oxygenMl: 800, priceMinor: 19 });
    expect(kitchen?.absorbers.at(-1)?.tareG).toBeCloseTo(7.0874, 3);
    expect(kitchen?.absorberReserve).toBe(0.4);
    expect(
      read({ storageTemperatureC: ['68'] }, 'keeping', KITCHEN, US).kitchen?.storageTemperatureC,
    ).toBeCloseTo(20, 9);
    expect(read({ electricityMinorPerKwh: ['0.31'] }, 'costs').kitchen?.electricityMinorPerKwh).toBe(31);
  });

  it('takes the usual value for a figure left empty, and none where there is none', () => {
    const changes = { 'processes.dehydrated.steepMin': [''], 'processes.freeze-dried.steepMin': ['7'] };
    const { processes } = read(changes, 'processes').kitchen!;
    expect([processes.dehydrated.steepMin, processes['freeze-dried'].steepMin]).toEqual([20, 7]);
    const costs = read({ shopServingMinor: [''], electricityMinorPerKwh: [''] }, 'costs').kitchen;
    expect(costs?.shopServingMinor).toBeUndefined();
    expect(costs?.electricityMinorPerKwh).toBe(30);
    expect(read({ storageTemperatureC: [''] }, 'keeping').kitchen?.storageTemperatureC).toBe(20);
  });

  it('reads the storage table by its cells; an empty one is no line', () => {
    const [lean, , fatty] = STORAGE_TABLES[1]!.groups[0]!.rows[0]!.fields as [string, string, string];
    expect(kitchenLabel(fatty)).toBe('Months, dehydrated, foil pouch, with absorber, high-fat');
    const { kitchen } = read({ [lean]: [''], [fatty]: ['7'] }, 'keeping');
    const here = kitchen?.storage.filter(
      ({ process, barrier, absorber }) => process === 'dehydrated' && barrier === 'foil pouch' && absorber,
    );
    expect(here?.map(({ fatClass, months }) => [fatClass, months])).toEqual([
      ['middling', 6],
      ['fatty', 7],
    ]);
    expect(read({ [lean]: [''], [fatty]: ['-1'] }, 'keeping').problems).toEqual([
      { field: fatty, message: 'must not be negative' },
    ]);
  });

  it('wants a day of the week', () => {
    expect(read({ cookDays: ['Sat', 'Sun'] }, 'calendar').kitchen?.cookDays).toEqual(['Sat', 'Sun']);
    expect(read({ cookDays: [] }, 'calendar').problems).toEqual([
      { field: 'cookDays', message: 'must name at least one day of the week' },
    ]);
  });

  it('logs a run, metered or not, and refuses a date that is none', () => {
    const fields = {
      'runs[2].date': ['2026-06-01'],
      'runs[2].dryer': ['dehydrator'],
      'runs[2].waterRemovedG': ['1500'],
      'runs[2].hours': ['10'],
      'runs[2].energyKwh': [''],
    };
    expect(read(fields, 'runs').kitchen?.runs.at(-1)).toEqual({
      date: '2026-06-01',
      dryer: 'dehydrator',
      preFrozen: false,
      waterRemovedG: 1500,
      hours: 10,
    });
    expect(read({ ...fields, 'runs[2].date': [''] }, 'runs').problems).toEqual([
      { field: 'runs[2].date', message: 'please fill this in' },
    ]);
  });
});

it('says what is taken for a field of a line that is left empty', () => {
  expect(usualOfLine('dryers', 'expectedBatches', METRIC)).toBe('300');
  expect(usualOfLine('absorbers', 'tareG', US)).toBe('0.071 oz');
  expect(usualOfLine('pouches', 'priceMinor', METRIC)).toBe('0.00 EUR');
  expect(usualOfLine('runs', 'energyKwh', METRIC)).toBeUndefined();
  expect(usualOfLine('dryers', 'trayCount', METRIC)).toBeUndefined();
  useLanguage(() => 'de');
  expect(usualOfLine('absorbers', 'tareG', US)).toBe('0,071 oz');
  expect(usualOfLine('pouches', 'priceMinor', METRIC)).toBe('0,00 EUR');
});
afterEach(() => useLanguage(() => 'en'));

it('has a label in words for every field', () => {
  for (const field of Object.keys(kitchenFields(KITCHEN, METRIC)))
    expect(kitchenLabel(field), field).not.toMatch(/[[\]]|[a-z][A-Z]/);
  expect(kitchenLabel('processes.freeze-dried.waterShare')).toBe('Water to add, freeze-dried');
  expect(kitchenLabel('cookDays')).toBe('Cooking and unloading days');
});
