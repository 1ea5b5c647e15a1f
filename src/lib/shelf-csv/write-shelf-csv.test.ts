import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { ALLERGENS } from '../planning/model/allergens.ts';
import { DIETS } from '../planning/model/diets.ts';
import { doubtsOf } from '../planning/model/plausibility.ts';
import { PouchLot } from '../planning/model/pouch-lot.ts';
import { MEAL_KINDS, WATER_KINDS } from '../planning/model/words.ts';
import { openCsv } from './csv-records.ts';
import { guessMapping } from './guess-mapping.ts';
import { judgeRows } from './preview-import.ts';
import { readShelfCsv } from './read-shelf-csv.ts';
import { refusedHeaderCsv, refusedRowsCsv, shelfCsv } from './write-shelf-csv.ts';

// Signs that CSV, spreadsheets, encodings and lists stumble over, and any others.
const sign = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.constantFrom(
      "'",
      '"',
      ',',
      ';',
      '=',
      '+',
      '-',
      '@',
      ' ',
      '|',
      '\uFEFF',
      '\uFFFD',
      '\u00a0',
      'é',
      '€',
      'ﬁ',
      '½',
      '漢',
      '👩‍🍳',
      '1',
      'a',
    ),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', minLength: 1, maxLength: 1 }) },
);
const text = (maxLength: number, more: fc.Arbitrary<string> = sign) =>
  fc
    .array(fc.oneof({ weight: 5, arbitrary: sign }, { weight: 1, arbitrary: more }), { maxLength })
    .map((signs) => signs.join(''));
const amount = (max: number) =>
  fc
    .oneof(
      fc.integer({ min: 0, max }),
      fc.double({ min: 0, max, noNaN: true }),
      fc.double({ min: 1e-9, max: 1e-6, noNaN: true }),
    )
    .map((value) => value + 0);
const optional = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const day = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

const lots: fc.Arbitrary<PouchLot[]> = fc.uniqueArray(
  fc
    .record({
      code: text(20),
      recipe: text(30),
      mealKinds: fc.shuffledSubarray([...MEAL_KINDS], { minLength: 1 }),
      sealedOn: day,
      bestBefore: day,
      pouches: fc.integer({ min: 0, max: 100_000 }),
      servingsPerPouch: amount(100),
      dryWeightG: amount(5000),
      energyKcal: amount(20_000),
      proteinG: optional(amount(50)),
      fatG: optional(amount(50)),
      carbohydrateG: optional(amount(50)),
      waterMl: amount(2000),
      waterKind: fc.constantFrom(...WATER_KINDS),
      steepMin: amount(1440),
      stirAfterMin: optional(amount(1440)),
      tareG: amount(2000),
      volumeMl: optional(amount(50_000)),
      allergens: optional(fc.shuffledSubarray(ALLERGENS)),
      diets: fc.shuffledSubarray(DIETS),
      costMinor: optional(fc.integer({ min: 0, max: 100_000_000 })),
      kind: optional(fc.constantFrom('main', 'side', 'extra', 'drink')),
      pieces: optional(fc.integer({ min: 1, max: 40 })),
      fibreG: optional(amount(50)),
      sodiumMg: optional(amount(4000)),
      eatFromPouch: optional(fc.boolean()),
      bought: optional(fc.boolean()),
      cookAfter: optional(fc.constantFrom('cook', 'boil hard')),
      withdrawn: optional(fc.constantFrom('mould', 'one pouch, of six; was open')),
      note: text(40, fc.constantFrom('\n', '\r\n', '\r', '\t')),
    })
    .map(
      (fields) =>
        PouchLot.safeParse(
          Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)),
        ).data,
    )
    .filter(
      (lot): lot is PouchLot =>
        lot !== undefined && doubtsOf(lot).every(({ severity }) => severity === 'warn'),
    ),
  { selector: ({ code }) => code, minLength: 1, maxLength: 6 },
);

const write = (all: readonly PouchLot[], currency: string) => [...shelfCsv(all, currency)].join('');

describe('shelfCsv', () => {
  it('has the header that is agreed', () => {
    expect(write([], 'EUR')).toBe(
      'code,recipe,meals,sealed,best before,pouches,servings per pouch,dry weight g,energy kcal,protein g,fat g,carbohydrate g,water ml,water kind,steep min,stir after min,packaging g,volume ml,allergens,diets,cost,currency,note,kind,pieces,place,fibre g,sugars g,sodium mg,boiling water in pouch,eat from pouch,pouch stands,cook after,withdrawn,weighed dry,bought\r\n',
    );
  });

  it(
    'is read back to the same shelf, and a second export has the same bytes',
    { timeout: 60_000 },
    async () => {
      await fc.assert(
        fc.asyncProperty(lots, fc.constantFrom('EUR', 'JPY', 'KWD'), async (shelf, currency) => {
          const written = write(shelf, currency);
          const read = await readShelfCsv(Buffer.from(written), { currency, known: { today: '2026-12-01' } });
          expect(read.refused).toEqual([]);
          expect(read.lots).toEqual(shelf);
          expect(write(read.lots, currency)).toBe(written);
        }),
        { numRuns: 300 },
      );
    },
  );

  it('never begins a cell with a sign of a formula', () => {
    fc.assert(
      fc.property(lots, (shelf) => {
        const cells = Papa.parse<string[]>(write(shelf, 'EUR'), {
          delimiter: ',',
          newline: '\r\n',
        }).data.flat();
        expect(cells.filter((cell) => /^[\s"]*[=+@-]/.test(cell) && !/^[+-]?\d[\d.,]*$/.test(cell))).toEqual(
          [],
        );
      }),
    );
  });
});

describe('refused rows', () => {
  const FILE =
    'code,recipe,meals,sealed,best before,pouches,weight,kcal,water,note\nA,soup,dinnr,2026-01-01,2027-01-01,1,-5,400,300,"x,=1"\nB,soup,dinner,2026-01-01,2027-01-01,1,100,400,300,fine\nC,soup,dinner,1,2,3,4,5,6,=1,more\n';
  async function refusedOf(bytes: string) {
    const file = await openCsv(async function* () {
      yield Buffer.from(bytes);
    });
    let csv = refusedHeaderCsv(file.header);
    for await (const rows of judgeRows(file, {
      mapping: guessMapping(file),
      currency: 'EUR',
      shelf: new Map(),
    }))
      csv += refusedRowsCsv(
        file.header,
        rows.filter((row) => row.fate === 'refused' || row.fate === 'question'),
      );
    return csv;
  }

  it('keep their cells and get the reason behind them', async () => {
    expect(await refusedOf(FILE)).toBe(
      'code,recipe,meals,sealed,best before,pouches,weight,kcal,water,note,reason\r\n' +
        'A,soup,dinnr,2026-01-01,2027-01-01,1,-5,400,300,"x,=1","weight ""-5"": must not be negative"\r\n' +
        `C,soup,dinner,1,2,3,4,5,6,'=1,this row has 11 cells but the header has 10. Put quotation marks around any text that contains the delimiter,more\r\n`,
    );
  });

  it('can be mended and imported again', async () => {
    const mended = (await refusedOf(FILE))
      .split('\r\n')
      .slice(0, 2)
      .join('\n')
      .replace('dinnr,', 'dinner,')
      .replace('-5', '95');
    const { lots: taken, refused } = await readShelfCsv(Buffer.from(mended), {
      currency: 'EUR',
      known: { today: '2026-12-01' },
    });
    expect(refused).toEqual([]);
    expect(taken).toMatchObject([{ code: 'A', dryWeightG: 95, note: 'x,=1' }]);
  });
});
