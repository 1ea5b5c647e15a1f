import { describe, expect, it } from 'vitest';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { readShelfCsv } from './read-shelf-csv.ts';
import { UnreadableFile } from './text-encoding.ts';

const KNOWN = { today: '2026-12-01' };
const HEADER =
  'code,recipe,meals,sealed,best before,pouches,servings per pouch,dry weight g,energy kcal,protein g,fat g,carbohydrate g,water ml,water kind,steep min,packaging g,cost,currency,allergens,note';
const GOOD = {
  code: 'A1',
  recipe: 'Bean stew',
  meals: 'dinner',
  sealed: '2026-03-01',
  'best before': '2027-09-01',
  pouches: '4',
  'servings per pouch': '2',
  'dry weight g': '120',
  'energy kcal': '470',
  'protein g': '22',
  'fat g': '10',
  'carbohydrate g': '68',
  'water ml': '300',
  'water kind': 'boiling',
  'steep min': '15',
  'packaging g': '14',
  cost: '1.85',
  currency: 'EUR',
  allergens: 'celery',
  note: '',
};
const LOT: PouchLot = {
  code: 'A1',
  recipe: 'Bean stew',
  mealKinds: ['dinner'],
  sealedOn: '2026-03-01',
  bestBefore: '2027-09-01',
  pouches: 4,
  servingsPerPouch: 2,
  dryWeightG: 120,
  energyKcal: 470,
  proteinG: 22,
  fatG: 10,
  carbohydrateG: 68,
  waterMl: 300,
  waterKind: 'boiling',
  steepMin: 15,
  tareG: 14,
  allergens: ['celery'],
  diets: [],
  costMinor: 185,
  note: '',
};

const line = (change: Partial<Record<keyof typeof GOOD, string>> = {}) =>
  HEADER.split(',')
    .map(
      (heading) => `"${({ ...GOOD, ...change } as Record<string, string>)[heading]!.replaceAll('"', '""')}"`,
    )
    .join(',');
const read = (text: string, currency = 'EUR') => readShelfCsv(Buffer.from(text), { currency, known: KNOWN });
const readLine = (change: Parameters<typeof line>[0]) => read(`${HEADER}\n${line(change)}\n`);
async function problems(change: Parameters<typeof line>[0]) {
  const { lots, refused } = await readLine(change);
  expect(lots).toEqual([]);
  return refused[0]!.problems.map(
    ({ column, value, reason }) => `${column} ${JSON.stringify(value)} ${reason}`,
  );
}
async function warnings(change: Parameters<typeof line>[0]) {
  const { refused, warnings: found } = await readLine(change);
  expect(refused).toEqual([]);
  return found.map(({ row, column, reason }) => `${row} ${column}: ${reason}`);
}

describe('a row', () => {
  it('becomes a lot', async () => {
    expect(await readLine({})).toMatchObject({ lots: [LOT], refused: [], warnings: [] });
  });

  it.each([
    [{ 'dry weight g': '-5' }, 'dry weight g "-5" must not be negative'],
    [{ 'dry weight g': '' }, 'dry weight g "" is empty'],
    [{ pouches: '2.5' }, 'pouches "2.5" must be a whole number of pouches'],
    [{ pouches: '-1' }, 'pouches "-1" must not be negative'],
    [{ recipe: '' }, 'recipe "" is empty'],
    [{ code: 'A/1' }, 'code "A/1" must be a single line without / ? #'],
    [
      { 'best before': '2025-01-01' },
      'best before "2025-01-01" best-before 2025-01-01 is before the sealing date 2026-03-01',
    ],
    [
      { 'energy kcal': '1966' },
      'energy kcal "1966" 16.4 kcal per gram of dry weight is more than pure fat gives; check kJ or kcal, and per serving or per pouch',
    ],
    [
      { 'carbohydrate g': '168' },
      'dry weight g "120" protein, fat and carbohydrate add up to 200 g, more than the dry weight of 120 g',
    ],
    [{ 'water kind': 'none' }, 'water kind "none" water type "none" does not go with 300 ml of water'],
  ])('is refused for %j', async (change, problem) => expect(await problems(change)).toEqual([problem]));

  it('is refused with all its problems at once', async () => {
    expect(
      await problems({ 'dry weight g': 'x', pouches: 'some', 'servings per pouch': 'all' }),
    ).toHaveLength(3);
  });

  it.each([
    [
      { 'energy kcal': '300' },
      '2 energy kcal: the stated 300 kcal is far from the 450 kcal its protein, fat and carbohydrate give',
    ],
    [
      { 'water ml': '1300' },
      '2 water ml: 1300 ml for 120 g of dry food is more than ten times its weight; check the unit, and whether it is per serving or per pouch',
    ],
    [{ code: '' }, '2 code: is empty; "BS-8VWS" was made for it'],
    [{ allergens: 'may contain milk' }, '2 allergens: traces are treated as an allergen, to be safe'],
  ])('is taken with a warning for %j', async (change, warning) =>
    expect(await warnings(change)).toEqual([warning]),
  );

  it('does not mind a missing currency where there is no cost, nor the kind of water where there is none', async () => {
    expect(await warnings({ cost: '', currency: '' })).toEqual([]);
    const { lots } = await readLine({ 'water ml': '0', 'water kind': '', 'steep min': '' });
    expect(lots).toMatchObject([{ waterMl: 0, waterKind: 'none', steepMin: 0 }]);
  });

  it('tells allergens that are none from allergens that nobody stated', async () => {
    expect((await readLine({ allergens: 'none' })).lots[0]).toHaveProperty('allergens', []);
    expect((await readLine({ allergens: '' })).lots[0]).not.toHaveProperty('allergens');
  });

  it('leaves open what cannot be read and no lot needs, and keeps it in the note', async () => {
    const { lots, warnings: found } = await readLine({ 'energy kcal': 'lots', sealed: 'soon' });
    expect(lots).toMatchObject([
      { note: 'sealed: soon; energy kcal: lots', estimated: { energyKcal: {}, sealedOn: {} } },
    ]);
    expect(found.map(({ column }) => column)).toEqual(['sealed', 'energy kcal']);
  });

  it('takes no cost in another currency than that of the shelf', async () => {
    const { lots } = await readLine({ currency: 'USD' });
    expect(lots).toMatchObject([{ note: 'cost: 1.85 USD' }]);
    expect(lots[0]).not.toHaveProperty('costMinor');
  });

  it('counts allergens as not declared where any part of their list cannot be read', async () => {
    const { lots } = await readLine({ allergens: 'milk, milc' });
    expect(lots).toMatchObject([{ contains: ['milk'] }]);
    expect(lots[0]).not.toHaveProperty('allergens');
    const [free] = (await readLine({ allergens: 'gluten-free' })).lots;
    expect(free).not.toHaveProperty('allergens');
    expect(free).not.toHaveProperty('contains');
  });

  it('gives back what a spreadsheet was kept from running', async () => {
    expect((await readLine({ note: "'=1+1" })).lots[0]!.note).toBe('=1+1');
    expect((await readLine({ note: "'n bit salty" })).lots[0]!.note).toBe("'n bit salty");
  });

  it('is refused with more cells than the header, instead of being shifted', async () => {
    const { refused } = await read(
      'recipe,note,meals,sealed,best before,pouches,servings,weight,kcal,water\nLentil soup,,dinner,2026-03-01,2027-03-01,1,1,100,400,200\nBeef stew,,dinner,2026-03-01,2027-03-01,1,1,100,400,200\nstew,stir, well,dinner,2026-03-01,2027-03-01,1,1,100,400,200\n',
    );
    expect(refused[0]!.problems[0]!.reason).toBe(
      'this row has 11 cells but the header has 10. Put quotation marks around any text that contains the delimiter',
    );
  });

  it('may end before the header does', async () => {
    const { lots } = await read(`${HEADER}\n${line().split(',').slice(0, 16).join(',')}\n`);
    expect(lots).toHaveLength(1);
    expect(lots[0]).not.toHaveProperty('costMinor');
  });

  it('is refused where a character could not be decoded, and only that row', async () => {
    const text = Buffer.from(
      `${HEADER}\n${line({ recipe: 'Käse' })}\n${line({ code: 'A2', recipe: 'Möhren' })}\n${line({ code: 'A3', recipe: 'Gr?tze' })}\n`,
    );
    text[text.lastIndexOf('?')] = 0xfc;
    const { lots, refused } = await readShelfCsv(text, { currency: 'EUR', known: KNOWN });
    expect(lots.map(({ code }) => code)).toEqual(['A1', 'A2']);
    expect(refused).toMatchObject([
      {
        row: 4,
        problems: [{ column: 'recipe', reason: expect.stringMatching(/could not be read.*UTF-8/) as string }],
      },
    ]);
  });
});

describe('codes', () => {
  it('come once in a file: another lot gets signs added, and the same lot twice is asked about', async () => {
    const {
      lots,
      refused,
      warnings: found,
    } = await read(
      `${HEADER}\n${line()}\n${line({ code: 'B' })}\n${line({ recipe: 'other' })}\n${line({ note: 'again' })}\n`,
    );
    expect(lots.map(({ code }) => code)).toEqual(['A1', 'B', 'A1-2']);
    expect(found).toMatchObject([
      { row: 4, column: 'code', reason: expect.stringMatching(/row 2 has this code/) as string },
    ]);
    expect(refused).toMatchObject([
      {
        row: 5,
        problems: [
          {
            column: 'code',
            value: 'A1',
            reason: expect.stringMatching(/row 2 already has this lot/) as string,
          },
        ],
      },
    ]);
  });

  it('are free again when the first row was refused', async () => {
    const { lots } = await read(`${HEADER}\n${line({ pouches: 'x' })}\n${line()}\n`);
    expect(lots).toHaveLength(1);
  });

  it('are made of recipe, date and servings where there is no column, short and always the same', async () => {
    const text =
      'recipe,sealed,best before,pouches,weight,kcal,water\nSüße Grütze (rot),2026-03-01,2027-03-01,1,100,400,200\n';
    const [{ code } = { code: '' }] = (await read(text)).lots;
    expect(code).toMatch(/^SGR-[2-9A-Z]{4}$/);
    const recounted = (await read(text.replace(',1,100,', ',7,104,'))).lots;
    expect(recounted).toMatchObject([{ code, pouches: 7 }]);
    const twice = await read(`${text}Süße Grütze rot,2026-03-01,2027-03-01,2,120,400,200\n`);
    expect(twice.lots.map((lot) => lot.code)).toEqual([code, `${code}-2`]);
    const long = await read(text.replace('Süße Grütze (rot)', 'x'.repeat(100)));
    expect(long.lots[0]!.code).toMatch(/^XXXX-.{4}$/);
  });
});

describe('a file', () => {
  it('may be in German, Windows-1252, semicolons, decimal commas, kJ and per pouch', async () => {
    const text = [
      'Bezeichnung;Mahlzeit;Versiegelt am;MHD;Anzahl;Portionen;Trockengewicht (g) pro Beutel;Brennwert (kJ) pro Beutel;Wasser je Portion;Wasserart;Ziehzeit;Preis;Allergene',
      'Linsen mit Möhren;Abendessen;13.02.2026;01.03.2028;4;2;251,5;4184;3 dl;kochend;15 min;1,85;Sellerie und Senf',
    ].join('\r\n');
    const { lots, refused, taken } = await readShelfCsv(Buffer.from(text, 'latin1'), {
      currency: 'EUR',
      known: KNOWN,
    });
    expect(refused).toEqual([]);
    expect(lots).toEqual([
      {
        ...LOT,
        code: 'LMM-ZBS7',
        recipe: 'Linsen mit Möhren',
        sealedOn: '2026-02-13',
        bestBefore: '2028-03-01',
        dryWeightG: 125.75,
        energyKcal: 500,
        tareG: 14,
        allergens: ['celery', 'mustard'],
        proteinG: undefined,
        fatG: undefined,
        carbohydrateG: undefined,
        // Costs are not said to be of a pouch or of a serving.
        costMinor: undefined,
        note: 'Preis: 1,85',
        estimated: { tareG: { low: 8, high: 25, from: 'rule of thumb' } },
      },
    ]);
    expect(taken).toEqual([]);
  });

  it('may count cost per pouch, in a currency that the heading names', async () => {
    const text =
      'recipe,sealed,best before,pouches,servings,weight,kcal,water,cost per pouch (USD)\nstew,2026-03-01,2027-03-01,1,3,100,400,200,5.00\n';
    expect((await read(text, 'USD')).lots[0]!.costMinor).toBe(167);
    expect((await read(text, 'EUR')).warnings).toContainEqual(
      expect.objectContaining({ value: '5.00', reason: expect.stringMatching(/"USD" is not EUR/) as string }),
    );
  });

  it('without the columns of a shelf is refused as a whole, with its columns named', async () => {
    await expect(read('name,phone\nAnn,1\n')).rejects.toThrow(UnreadableFile);
    await expect(read('name,phone\nAnn,1\n')).rejects.toThrow(
      /no column contains the dry weight.*Its columns are: name, phone/,
    );
  });

  it('may come as a stream', async () => {
    async function* stream() {
      yield Buffer.from(`${HEADER}\n`);
      yield Buffer.from(line());
    }
    expect((await readShelfCsv(stream(), { currency: 'EUR', known: KNOWN })).lots).toEqual([LOT]);
  });
});
