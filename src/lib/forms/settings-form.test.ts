import { describe, expect, it } from 'vitest';
import { defaultSettings, Settings } from '$lib/planning/model/settings.ts';
import { FormReader, type Entered } from './read-form.ts';
import {
  COST_FIELDS,
  readSettingsPart,
  SETTINGS_PARTS,
  settingsFields,
  settingsLabel,
  type SettingsPart,
} from './settings-form.ts';

const METRIC = defaultSettings();
const US: Settings = { ...METRIC, unitSystem: 'us', currency: 'USD', proteinFloorG: 17.25, hotWaterC: 71 };
const PARTS = Object.keys(SETTINGS_PARTS) as SettingsPart[];

function read(fields: Entered, part: SettingsPart, current: Settings) {
  const form = new FormData();
  for (const [name, values] of Object.entries(fields)) for (const value of values) form.append(name, value);
  const reader = new FormReader(form, current.unitSystem);
  return { settings: readSettingsPart(reader, part, current), problems: reader.problems };
}

describe('readSettingsPart', () => {
  it('changes nothing where nothing was changed, in either unit system', () => {
    for (const current of [METRIC, US])
      for (const part of PARTS)
        expect(read(settingsFields(current), part, current), part).toEqual({
          settings: current,
          problems: [],
        });
  });

  it('reads the figures of its own part only', () => {
    const fields = {
      ...settingsFields(US),
      hotWaterC: ['180'],
      waterAtRestMl: ['2'],
      repeatAfterDays: ['5'],
    };
    const { settings } = read(fields, 'water', US);
    expect(settings?.hotWaterC).toBeCloseTo(82.2222, 3);
    expect(settings?.waterAtRestMl).toBeCloseTo(1892.706, 2);
    expect(settings?.repeatAfterDays).toBe(METRIC.repeatAfterDays);
  });

  it('wants shares of 100% in all, and says where', () => {
    const fields = { ...settingsFields(METRIC), 'mealShares.dinner': ['45'] };
    expect(read(fields, 'shares', METRIC)).toEqual({
      settings: undefined,
      problems: [{ field: 'mealShares', message: 'must add up to 100%' }],
    });
    const even = { ...fields, 'mealShares.lunch': ['12'] };
    expect(read(even, 'shares', METRIC).settings?.mealShares).toMatchObject({ lunch: 0.12, dinner: 0.45 });
    expect(read({ ...fields, 'mealShares.lunch': [''] }, 'shares', METRIC).problems).toEqual([
      { field: 'mealShares.lunch', message: 'please fill this in' },
    ]);
  });

  it('takes the usual value for a figure that is left empty', () => {
    const current = { ...METRIC, dryOpenDays: 7 };
    expect(
      read({ ...settingsFields(current), dryOpenDays: [''] }, 'menu', current).settings?.dryOpenDays,
    ).toBe(3);
  });

  it('refuses figures out of range or unreadable, by name', () => {
    const fields = {
      ...settingsFields(METRIC),
      dryOpenDays: ['0'],
      repeatAfterDays: ['often'],
      proteinFloorG: ['101'],
    };
    expect(
      read(fields, 'menu', METRIC)
        .problems.map(({ field }) => field)
        .sort(),
    ).toEqual(['dryOpenDays', 'proteinFloorG', 'repeatAfterDays']);
  });

  it('reads what a menu costs; a cost left empty takes its usual value', () => {
    const current = { ...METRIC, menuCosts: { ...METRIC.menuCosts, repeat: 5, fuelG: 3 } };
    const fields = {
      ...settingsFields(current),
      'menuCosts.repeat': [''],
      'menuCosts.carriedKgH': ['2,5'],
    };
    expect(read(fields, 'costs', current).settings).toEqual({
      ...current,
      menuCosts: { ...current.menuCosts, repeat: METRIC.menuCosts.repeat, carriedKgH: 2.5 },
    });
  });

  it('refuses costs that are none, by name', () => {
    const fields = {
      ...settingsFields(METRIC),
      'menuCosts.missingKcal': ['-1'],
      'menuCosts.repeat': ['much'],
    };
    const { problems } = read(fields, 'costs', METRIC);
    expect(problems.map(({ field }) => settingsLabel(field)).sort()).toEqual([
      'A recipe repeated too soon, per person',
      'One kcal short on a day',
    ]);
    expect(problems.find(({ field }) => field.endsWith('missingKcal'))?.message).toBe('must not be negative');
  });

  it('adds, changes and removes containers', () => {
    const count = METRIC.fuelContainers.length;
    const fields = {
      ...settingsFields(METRIC),
      'fuelContainers[0].remove': ['on'],
      'fuelContainers[1].netG': ['220'],
      [`fuelContainers[${count}].label`]: ['my bottle'],
      [`fuelContainers[${count}].fuel`]: ['kerosene'],
      [`fuelContainers[${count}].netG`]: ['300'],
      [`fuelContainers[${count}].tareG`]: ['0'],
    };
    const containers = read(fields, 'fuel', METRIC).settings?.fuelContainers;
    expect(containers).toHaveLength(count);
    expect(containers?.[0]).toEqual({ ...METRIC.fuelContainers[1], netG: 220 });
    expect(containers?.at(-1)).toEqual({ label: 'my bottle', fuel: 'kerosene', netG: 300, tareG: 0 });
  });

  it('leaves out the empty line, and finds the line of a problem although one before it is removed', () => {
    const count = METRIC.fuelContainers.length;
    const fields = {
      ...settingsFields(METRIC),
      [`fuelContainers[${count}].label`]: [''],
      [`fuelContainers[${count}].fuel`]: ['canister-gas'],
      [`fuelContainers[${count}].netG`]: [''],
      [`fuelContainers[${count}].tareG`]: [''],
    };
    expect(read(fields, 'fuel', METRIC).settings?.fuelContainers).toEqual(METRIC.fuelContainers);
    const broken = {
      ...fields,
      'fuelContainers[0].remove': ['on'],
      'fuelContainers[2].netG': ['0'],
      'fuelContainers[3].label': [''],
    };
    expect(read(broken, 'fuel', METRIC).problems.map(({ field }) => field)).toEqual([
      'fuelContainers[2].netG',
      'fuelContainers[3].label',
    ]);
  });

  it('refuses to remove the last container', () => {
    const current = { ...METRIC, fuelContainers: METRIC.fuelContainers.slice(0, 1) };
    const fields = { ...settingsFields(current), 'fuelContainers[0].remove': ['on'] };
    expect(read(fields, 'fuel', current).problems).toEqual([
      { field: 'fuelContainers', message: 'must list at least one size' },
    ]);
  });

  it('adds a food to buy, in the units shown', () => {
    const count = US.staples.length;
    const at = `staples[${count}]`;
    const fields = {
      ...settingsFields(US),
      [`${at}.name`]: ['roasted chickpeas'],
      [`${at}.meals`]: ['snack'],
      [`${at}.kcalPer100G`]: ['110'],
      [`${at}.allergens`]: ['sesame'],
      [`${at}.diets`]: ['vegan'],
    };
    const staple = read(fields, 'staples', US).settings?.staples.at(-1);
    expect(staple).toMatchObject({
      name: 'roasted chickpeas',
      meals: ['snack'],
      allergens: ['sesame'],
      diets: ['vegan'],
    });
    expect(staple?.kcalPer100G).toBeCloseTo(388.01, 1);
    expect(read({ ...fields, [`${at}.meals`]: [] }, 'staples', US).problems).toEqual([
      { field: `${at}.meals`, message: 'must name at least one meal' },
    ]);
  });

  it('reads the portion, the size and the price of a package, and keeps them where another food is changed', () => {
    const fields = {
      ...settingsFields(METRIC),
      'staples[0].portionG': ['60'],
      'staples[0].packetG': ['500'],
      'staples[0].packetCostMinor': ['2.49'],
    };
    const settings = read(fields, 'staples', METRIC).settings;
    if (!settings) return expect.fail('the form was refused');
    expect(settings.staples[0]).toMatchObject({ portionG: 60, packetG: 500, packetCostMinor: 249 });
    expect(settings.staples[1]).toEqual(METRIC.staples[1]);
    const again = { ...settingsFields(settings), 'staples[1].name': ['porridge'] };
    expect(read(again, 'staples', settings).settings?.staples[0]).toEqual(settings.staples[0]);
    const refused = { ...fields, 'staples[0].packetG': ['0.2'] };
    expect(read(refused, 'staples', METRIC).problems.map(({ field }) => field)).toEqual([
      'staples[0].packetG',
    ]);
  });

  it('keeps currencies to the code of ISO 4217', () => {
    expect(read({ ...settingsFields(METRIC), currency: ['euro'] }, 'units', METRIC).problems).toHaveLength(1);
  });
});

it('has a field for every cost', () => {
  expect(COST_FIELDS.map(({ cost }) => cost).sort()).toEqual(Object.keys(METRIC.menuCosts).sort());
});

it('has a label in words for every field', () => {
  for (const field of Object.keys(settingsFields(METRIC)))
    expect(settingsLabel(field), field).not.toMatch(/[[\]]|[a-z][A-Z]/);
  expect(settingsLabel('fuelContainers[1].netG')).toBe('Container 2, Fuel when full');
  expect(settingsLabel('mealShares')).toBe('Shares');
});
