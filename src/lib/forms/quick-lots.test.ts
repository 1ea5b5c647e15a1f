import { afterEach, describe, expect, it } from 'vitest';
import type { KnownToHousehold } from '$lib/planning/model/complete-lot.ts';
import { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { statedOf } from '$lib/planning/model/stated-lot.ts';
import type { UnitSystem } from '$lib/presentation/show.ts';
import { useLanguage, type Language } from '$lib/texts/say.ts';
import { readQuickLots } from './quick-lots.ts';
import { pastedRows, quickLabel } from './quick-words.ts';
import { FormReader } from './read-form.ts';

let spoken: Language = 'en';
useLanguage(() => spoken);
afterEach(() => (spoken = 'en'));

const KNOWN: KnownToHousehold = { today: '2026-12-01' };
type Rows = readonly Readonly<Record<string, string>>[];

type Given = {
  readonly all?: object;
  readonly known?: KnownToHousehold;
  readonly taken?: readonly string[];
  readonly system?: UnitSystem;
};
function read(rows: Rows, { all = {}, known = KNOWN, taken = [], system = 'metric' }: Given = {}) {
  const form = new FormData();
  rows.forEach((row, line) =>
    Object.entries(row).forEach(([name, value]) => form.append(`lots[${line}].${name}`, value)),
  );
  Object.entries(all).forEach(([name, value]) => form.append(name, String(value)));
  const reader = new FormReader(form, system);
  const lots = readQuickLots(reader, { unitSystem: system, currency: 'EUR' }, known, new Set(taken));
  return { lots, problems: reader.problems };
}
const CHILI = { recipe: 'Bean chili', pouches: '12', pouchG: '140', servingsPerPouch: '2' };

describe('readQuickLots', () => {
  it('makes a lot of name, count, weight and servings, and marks all the rest as estimated', () => {
    const { lots, problems } = read([CHILI, {}, { recipe: ' ', pouches: '' }]);
    expect(problems).toEqual([]);
    expect(lots).toHaveLength(1);
    const { lot } = lots[0]!;
    expect(PouchLot.parse(lot)).toEqual(lot);
    expect(lot).toMatchObject({ recipe: 'Bean chili', pouches: 12, servingsPerPouch: 2, dryWeightG: 70 });
    expect(lot.code).toMatch(/^BC-\w{4}$/);
    expect(Object.keys(lot.estimated ?? {}).sort()).toEqual(
      [
        'bestBefore',
        'energyKcal',
        'mealKinds',
        'sealedOn',
        'steepMin',
        'tareG',
        'waterKind',
        'waterMl',
      ].sort(),
    );
    // 70 g of a dry main dish at 3.4 to 5.2 kcal/g
    expect(lot.energyKcal).toBeGreaterThanOrEqual(238);
    expect(lot.energyKcal).toBeLessThanOrEqual(364);
    expect('allergens' in lot).toBe(false);
  });

  it('takes what is said instead of the estimate', () => {
    const { lots } = read([
      {
        ...CHILI,
        energyKcal: '310',
        waterMl: '200 ml',
        sealedOn: 'March 2026',
        bestBefore: '2027-03-01',
        allergens: 'milk, gluten',
        mealKinds: 'dinner',
        code: 'C 1',
        place: 'box 2',
      },
    ]);
    expect(lots[0]?.lot).toMatchObject({
      code: 'C 1',
      energyKcal: 310,
      waterMl: 200,
      bestBefore: '2027-03-01',
      allergens: ['milk', 'gluten'],
      mealKinds: ['dinner'],
      place: 'box 2',
    });
    expect(Object.keys(lots[0]?.lot.estimated ?? {}).sort()).toEqual(['steepMin', 'tareG', 'waterKind']);
    expect(read([{ ...CHILI, allergens: 'none' }]).lots[0]?.lot.allergens).toEqual([]);
  });

  it('takes the pouch off a weight with it, the entered one or the usual one', () => {
    const dry = (all: object, row: object = {}) =>
      read([{ ...CHILI, ...row }], { all }).lots[0]?.lot.dryWeightG;
    expect(dry({ weighed: 'with' })).toBe((140 - 14) / 2);
    expect(dry({ weighed: 'with', tareG: '20' })).toBe(60);
    expect(dry({}, { pouchG: '140 g incl. bag' })).toBe(63);
    expect(read([{ ...CHILI, pouchG: '10' }], { all: { weighed: 'with' } }).problems).toEqual([
      { field: 'lots[0].pouchG', message: expect.stringContaining('nothing is left') },
    ]);
  });

  it('takes the sealing date of all rows where a row has none', () => {
    const dates = (all: object, row: object = {}) =>
      read([{ ...CHILI, ...row }], { all }).lots.map(({ lot }) => [lot.sealedOn, lot.bestBefore]);
    // middling fat, dehydrated, in a foil pouch with an absorber: as the storage table says, from that day on
    const [[, undated] = []] = dates({});
    const [[sealed, best] = []] = dates({ sealedOn: '2026-12-01' });
    expect(sealed).toBe('2026-12-01');
    expect(best! > undated!).toBe(true);
    expect(dates({ sealedOn: '2026-12-01' }, { sealedOn: '2026-10-15' })[0]?.[0]).toBe('2026-10-15');
  });

  it('takes a small pouch for one serving, and asks about a large one', () => {
    const row = { recipe: 'Soup', pouches: '3', pouchG: '90' };
    expect(read([row]).lots[0]?.lot.servingsPerPouch).toBe(1);
    expect(read([{ ...row, pouchG: '420' }]).problems).toEqual([
      { field: 'lots[0].servingsPerPouch', message: expect.stringContaining('420 g may be') },
    ]);
  });

  it('reads ounces where the household measures in them', () =>
    expect(read([{ ...CHILI, pouchG: '5' }], { system: 'us' }).lots[0]?.lot.dryWeightG).toBeCloseTo(
      70.87,
      1,
    ));

  it('names what is missing or cannot be read, row by row, and takes nothing of such a row', () => {
    const { lots, problems } = read([
      CHILI,
      { recipe: 'Porridge', pouches: 'many', pouchG: '80' },
      { pouches: '3' },
    ]);
    expect(lots.map(({ line }) => line)).toEqual([0]);
    expect(problems.map(({ field }) => field)).toEqual(['lots[1].pouches', 'lots[2].pouchG']);
    expect(quickLabel(problems[0]!.field)).toBe('Row 2, Pouches');
    expect(quickLabel('tareG')).toBeUndefined();
  });

  it('gives each lot a code of its own', () => {
    const [first] = read([CHILI]).lots;
    const codes = read([CHILI, { ...CHILI, pouches: '4' }], { taken: [first!.lot.code] }).lots.map(
      ({ lot }) => lot.code,
    );
    expect(codes).toEqual([`${first!.lot.code}-2`, `${first!.lot.code}-3`]);
    expect(read([{ ...CHILI, code: 'X' }], { taken: ['X'] }).problems).toEqual([
      { field: 'lots[0].code', message: expect.stringContaining('"X" is taken') },
    ]);
  });

  it('asks about what is on the shelf already, and estimates from what was stated there', () => {
    const { lot } = read([{ ...CHILI, energyKcal: '320' }]).lots[0]!;
    const known = { ...KNOWN, lots: new Map([['bean chili', [statedOf(lot)]]]) };
    const again = read([CHILI], { known, taken: [lot.code] }).lots[0]!;
    expect(again.warnings).toEqual([expect.stringContaining(`lot ${lot.code} on the shelf has the same`)]);
    expect(again.lot.estimated?.energyKcal).toEqual({ low: 288, high: 352, from: 'similar lots' });
    expect(read([{ ...CHILI, pouches: '3' }], { known }).lots[0]?.warnings).toEqual([]);
  });

  it('reads German cells in German', () => {
    spoken = 'de';
    const { lots } = read([{ ...CHILI, pouchG: '140,5', allergens: 'Milch', bestBefore: '03.04.2027' }]);
    expect(lots[0]?.lot).toMatchObject({ dryWeightG: 70.25, allergens: ['milk'], bestBefore: '2027-04-03' });
  });
});

describe('pastedRows', () => {
  it('parts rows and cells as spreadsheets copy them', () => {
    expect(pastedRows('Dal\t6\t120\t1\r\nSoup\t3\t95\t\r\n\r\n')).toEqual([
      ['Dal', '6', '120', '1'],
      ['Soup', '3', '95', ''],
    ]);
    expect(pastedRows('"Dal, hot";6;1,5')).toEqual([['Dal, hot', '6', '1,5']]);
  });
});
