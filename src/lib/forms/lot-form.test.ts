import { describe, expect, it } from 'vitest';
import { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { differences } from './differences.ts';
import { LOT_WORDS, lotFields, newLotFields, readLot, unconfirmed, type ShownIn } from './lot-form.ts';
import { FormReader, type Entered } from './read-form.ts';

const METRIC: ShownIn = { unitSystem: 'metric', currency: 'EUR' };
const US: ShownIn = { unitSystem: 'us', currency: 'USD' };

const KNOWN = { today: '2026-12-01' };

const LOT = PouchLot.parse({
  code: 'L-7',
  recipe: 'Lentil stew',
  mealKinds: ['lunch', 'dinner'],
  sealedOn: '2026-01-10',
  bestBefore: '2027-01-10',
  pouches: 4,
  servingsPerPouch: 1.5,
  dryWeightG: 120.4567,
  energyKcal: 480,
  proteinG: 25,
  fatG: 12,
  carbohydrateG: 68,
  waterMl: 301,
  waterKind: 'boiling',
  steepMin: 12,
  stirAfterMin: 5,
  tareG: 14,
  allergens: [],
  diets: ['vegan'],
  costMinor: 215,
  note: 'two\nlines',
});

function formOf(fields: Entered): FormData {
  const form = new FormData();
  for (const [name, values] of Object.entries(fields)) for (const value of values) form.append(name, value);
  return form;
}

const read = (fields: Entered, shown: ShownIn, stored?: PouchLot) => {
  const reader = new FormReader(formOf(fields), shown.unitSystem);
  return { result: readLot(reader, shown, KNOWN, stored), problems: reader.problems, reader };
};

describe('readLot', () => {
  it.each([
    ['metric', METRIC],
    ['US', US],
  ])('reads back the very lot that the form was filled with, in %s units', (_, shown) => {
    expect(read(lotFields(LOT, shown), shown, LOT).result).toEqual({ lot: LOT, warnings: [] });
  });

  it('says of the pouch what is ticked, and keeps what its boxes do not ask', () => {
    const pouch = (...ticked: string[]) =>
      read({ ...lotFields(LOT, METRIC), pouch: ['', ...ticked] }, METRIC, LOT).result?.lot;
    expect(pouch('no boiling water', 'stands')).toMatchObject({
      pouchTakesBoilingWater: false,
      pouchStands: true,
    });
    const lot = pouch('no boiling water', 'not eaten from')!;
    expect(lotFields(lot, METRIC)['pouch']).toEqual(['no boiling water', 'not eaten from']);
    // unticked again, nobody says so any more; a lot of before whose form did not ask keeps it
    const again = read({ ...lotFields(lot, METRIC), pouch: [''] }, METRIC, lot).result?.lot;
    expect(again).toEqual(LOT);
    const { pouch: _, ...unasked } = lotFields(lot, METRIC);
    expect(read(unasked, METRIC, lot).result?.lot).toEqual(lot);
  });

  it('leaves out what is empty, and tells "holds none" from "nobody has stated them"', () => {
    const { allergens, volumeMl, proteinG, costMinor, stirAfterMin, ...rest } = LOT;
    const bare = PouchLot.parse(rest);
    expect('allergens' in (read(lotFields(bare, METRIC), METRIC).result?.lot ?? {})).toBe(false);
    expect(read(lotFields(bare, METRIC), METRIC, bare).result?.lot).toEqual(bare);
    expect(
      read({ ...lotFields(bare, METRIC), allergensStated: ['yes'] }, METRIC).result?.lot.allergens,
    ).toEqual([]);
  });

  it('does not read ticked allergens away when it also says that nobody has stated them', () => {
    const { result, problems } = read(
      { ...lotFields(LOT, METRIC), allergensStated: ['no'], allergens: ['milk'] },
      METRIC,
    );
    expect(result).toBeUndefined();
    expect(problems).toEqual([
      { field: 'allergens', message: expect.stringContaining('choose one or the other') },
    ]);
  });

  it('keeps the count of a stored lot, whatever the form says', () => {
    expect(read({ ...lotFields(LOT, METRIC), pouches: ['99'] }, METRIC, LOT).result?.lot.pouches).toBe(4);
    expect(read({ ...lotFields(LOT, METRIC), pouches: ['99'] }, METRIC).result?.lot.pouches).toBe(99);
  });

  it('names every field that has to be mended, and keeps what was entered', () => {
    const fields = {
      ...lotFields(LOT, METRIC),
      recipe: [''],
      dryWeightG: ['a lot'],
      energyKcal: ['-4'],
      mealKinds: [],
      bestBefore: [''],
    };
    const { result, problems, reader } = read(fields, METRIC);
    expect(result).toBeUndefined();
    expect(problems.map(({ field }) => field).sort()).toEqual(['dryWeightG', 'energyKcal', 'recipe']);
    expect(problems.find(({ field }) => field === 'recipe')?.message).toBe('please fill this in');
    expect(reader.refused().entered['dryWeightG']).toEqual(['a lot']);
  });

  it('refuses what cannot be true', () => {
    const { result, problems } = read(
      { ...lotFields(LOT, METRIC), bestBefore: ['2025-01-01'], energyKcal: ['48000'] },
      METRIC,
    );
    expect(result).toBeUndefined();
    expect(problems.map(({ field }) => field)).toEqual(['energyKcal']);
    const refused = (changes: Entered) =>
      read({ ...lotFields(LOT, METRIC), ...changes }, METRIC).problems.map(({ field }) => field);
    expect(refused({ bestBefore: ['2025-01-01'] })).toEqual(['bestBefore']);
    expect(refused({ stirAfterMin: ['12'] })).toEqual(['stirAfterMin']);
  });

  it('wants a yes to what is odd, and a yes to one warning is none to another', () => {
    const oddWith = (waterMl: string, confirmed: string[] = []) => {
      const { result, reader } = read({ ...lotFields(LOT, METRIC), waterMl: [waterMl], confirmed }, METRIC);
      return unconfirmed(reader, result?.warnings ?? []);
    };
    const odd = oddWith('5000');
    expect(odd?.reasons).toEqual([expect.stringMatching(/^Water to add: .*ten times/)]);
    expect(oddWith('5000', [odd?.yes ?? ''])).toBeUndefined();
    expect(oddWith('6000', [odd?.yes ?? ''])?.reasons).toHaveLength(1);
    expect(oddWith('300')).toBeUndefined();
  });

  it('asks the cook for what only the cook can know', () => {
    const { problems } = read(newLotFields('2026-06-15', METRIC), METRIC);
    expect(problems.map(({ field }) => field).sort()).toEqual(['code', 'dryWeightG', 'recipe']);
  });

  it('estimates what is left blank, makes the code, and keeps an estimate an estimate until it is stated', () => {
    const fields = { ...newLotFields('2026-06-15', METRIC), recipe: ['Bean chili'], dryWeightG: ['120'] };
    const { lot } = read(fields, METRIC).result!;
    expect(lot.code).toMatch(/^BC-/);
    expect(Object.keys(lot.estimated ?? {}).sort()).toEqual(
      ['bestBefore', 'energyKcal', 'mealKinds', 'steepMin', 'tareG', 'waterKind', 'waterMl'].sort(),
    );
    const shown = lotFields(lot, METRIC);
    expect([shown['energyKcal'], shown['bestBefore'], shown['sealedOn']]).toEqual([
      [''],
      [''],
      ['2026-06-15'],
    ]);
    expect(read(shown, METRIC, lot).result?.lot).toEqual(lot);
    const said = read({ ...shown, energyKcal: ['480'] }, METRIC, lot).result!.lot;
    expect(said.energyKcal).toBe(480);
    expect(said.estimated).toEqual({ ...lot.estimated, energyKcal: undefined });
  });

  it('does not let food grow younger: a sealing date that was estimated once stays', () => {
    const fields = { ...newLotFields('', METRIC), recipe: ['Bean chili'], dryWeightG: ['120'], code: ['C'] };
    const { lot } = read(fields, METRIC).result!;
    expect(lot.sealedOn).toBe('2026-06-01');
    const reader = new FormReader(formOf(lotFields(lot, METRIC)), 'metric');
    const later = readLot(reader, METRIC, { today: '2027-12-01' }, lot)!.lot;
    expect(later).toEqual(lot);
  });

  it('keeps allergens that are known apart from a whole list of them', () => {
    const fields = { ...lotFields(LOT, METRIC), allergensStated: ['some'], allergens: ['milk'] };
    const { lot } = read(fields, METRIC, LOT).result!;
    expect('allergens' in lot).toBe(false);
    expect(lot.contains).toEqual(['milk']);
    expect(lotFields(lot, METRIC)).toMatchObject({ allergensStated: ['some'], allergens: ['milk'] });
  });
});

describe('differences', () => {
  it('names the fields that two people filled in differently, in words', () => {
    const mine = {
      ...lotFields(LOT, METRIC),
      recipe: ['Lentil stew, hot'],
      allergens: ['nuts'],
      note: ['two\r\nlines'],
    };
    const theirs = lotFields({ ...LOT, diets: [], pouches: 2, waterKind: 'cold' }, METRIC);
    expect(differences(mine, theirs, LOT_WORDS)).toEqual([
      { label: 'Recipe', mine: 'Lentil stew, hot', theirs: 'Lentil stew' },
      { label: 'Water', mine: 'boiling', theirs: 'cold' },
      { label: 'Allergens', mine: 'tree nuts', theirs: '–' },
      { label: 'Diets', mine: 'vegan', theirs: '–' },
    ]);
  });
});
