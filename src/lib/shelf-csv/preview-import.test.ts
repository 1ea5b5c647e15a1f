import { describe, expect, it } from 'vitest';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { openCsv } from './csv-records.ts';
import { guessMapping } from './guess-mapping.ts';
import { judgeRows, previewImport, type LotAtHome, type PreviewFilter } from './preview-import.ts';
import { shelfCsv } from './write-shelf-csv.ts';

const lot = (code: string, change: Partial<PouchLot> = {}): PouchLot => ({
  code,
  recipe: 'Bean stew',
  mealKinds: ['dinner'],
  sealedOn: '2026-03-01',
  bestBefore: '2027-09-01',
  pouches: 4,
  servingsPerPouch: 2,
  dryWeightG: 120,
  energyKcal: 470,
  waterMl: 300,
  waterKind: 'boiling',
  steepMin: 15,
  tareG: 14,
  diets: [],
  note: '',
  ...change,
});

async function preview(text: string, shelf: LotAtHome[], show: PreviewFilter = 'all', from = 0, size = 50) {
  const file = await openCsv(async function* () {
    yield Buffer.from(text);
  });
  const context = {
    mapping: guessMapping(file),
    currency: 'EUR',
    shelf: new Map(shelf.map((entry) => [entry.code, entry])),
  };
  return previewImport(judgeRows(file, context), { show, from, size });
}
const csv = (...lots: PouchLot[]) => [...shelfCsv(lots, 'EUR')].join('');
const home = (entry: PouchLot, setAside = 0): LotAtHome => ({ ...entry, setAside });

describe('previewImport', () => {
  it('says of every row what becomes of it', async () => {
    const text = csv(
      lot('A'),
      lot('B', { pouches: 6, note: 'salty' }),
      lot('C'),
      lot('D', { bestBefore: '2025-01-01' }),
      lot('E', { energyKcal: 60 }),
    );
    const { counts, rows } = await preview(text, [home(lot('A')), home(lot('B'))]);
    expect(counts).toEqual({
      all: 5,
      new: 2,
      changed: 1,
      unchanged: 1,
      question: 0,
      refused: 1,
      warned: 1,
      skipped: 0,
    });
    expect(rows.map(({ row, fate }) => [row, fate])).toEqual([
      [2, 'unchanged'],
      [3, 'changed'],
      [4, 'new'],
      [5, 'refused'],
      [6, 'new'],
    ]);
    expect(rows[1]).toMatchObject({
      changed: ['pouches', 'note'],
      before: { pouches: 4 },
      lot: { pouches: 6 },
    });
  });

  it('finds nothing to change in the file of the same shelf', async () => {
    const lots = [
      lot('A', { allergens: [], proteinG: 20 }),
      lot('B', { allergens: ['milk', 'egg'], costMinor: 120, diets: ['vegetarian'] }),
    ];
    expect(
      (
        await preview(
          csv(...lots),
          lots.map((entry) => home(entry)),
        )
      ).counts,
    ).toMatchObject({ all: 2, unchanged: 2 });
  });

  it('refuses a count below what is set aside', async () => {
    const { rows } = await preview(csv(lot('A', { pouches: 2 })), [home(lot('A'), 3)]);
    expect(rows).toMatchObject([
      {
        fate: 'refused',
        problems: [
          {
            column: 'pouches',
            value: '2',
            reason:
              '3 pouches of this lot are set aside for trips; release some there first, or correct the count',
          },
        ],
      },
    ]);
    expect((await preview(csv(lot('A', { pouches: 3 })), [home(lot('A'), 3)])).counts.changed).toBe(1);
  });

  it('leaves what the file has no column for as it is on the shelf', async () => {
    const text =
      'code,recipe,meals,sealed,best before,pouches,dry weight,energy,water\nA,Bean stew,dinner,2026-03-01,2027-09-01,5,120,470,300\n';
    const before = lot('A', { proteinG: 20, allergens: ['celery'], note: 'salty', tareG: 9, steepMin: 22 });
    const { rows } = await preview(text, [home(before)]);
    expect(rows).toMatchObject([{ fate: 'changed', changed: ['pouches'], lot: { ...before, pouches: 5 } }]);
  });

  it('says that a stated value goes where the cell of its column is empty', async () => {
    const { rows } = await preview(csv(lot('A')), [home(lot('A', { allergens: ['milk'] }))]);
    expect(rows).toMatchObject([{ fate: 'changed', changed: ['allergens'] }]);
  });

  it('shows every row on some page, of all rows and of each filter', async () => {
    const text = csv(
      ...Array.from({ length: 23 }, (_, index) =>
        lot(`L${index}`, index % 4 === 0 ? { bestBefore: '2020-01-01' } : {}),
      ),
    );
    for (const show of ['all', 'new', 'refused'] as const) {
      const found: number[] = [];
      for (let from = 0; from < 30; from += 5)
        found.push(...(await preview(text, [], show, from, 5)).rows.map(({ row }) => row));
      expect(found).toHaveLength({ all: 23, new: 17, refused: 6 }[show]);
      expect(new Set(found).size).toBe(found.length);
    }
  });
});
