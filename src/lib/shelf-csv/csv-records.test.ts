import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { openCsv, type CsvRecord } from './csv-records.ts';
import { UnreadableFile } from './text-encoding.ts';

async function read(text: string, pieceSize = 1024) {
  const bytes = Buffer.from(text);
  const file = await openCsv(async function* () {
    for (let at = 0; at < bytes.length; at += pieceSize) yield bytes.subarray(at, at + pieceSize);
  });
  const records: CsvRecord[] = [];
  for await (const batch of file.records()) records.push(...batch);
  return { ...file, records };
}
const cells = ({ records }: { records: CsvRecord[] }) => records.map((record) => record.cells);

describe('openCsv', () => {
  it.each([',', ';', '\t'])('finds the delimiter %j', async (delimiter) => {
    const file = await read(
      ['code,recipe,meals', '1,"soup, red",lunch; dinner', '2,bread,"snack"']
        .join('\n')
        .replaceAll(',', delimiter),
    );
    expect(file.delimiter).toBe(delimiter);
    expect(file.header).toEqual(['code', 'recipe', 'meals']);
    expect(file.records).toHaveLength(2);
  });

  it('is not misled by decimal commas and lists', async () => {
    const file = await read('code;weight;list\n1;120,5;a, b, c\n2;90,25;a\n3;1,5;a, b\n');
    expect(file.delimiter).toBe(';');
    expect(cells(file)).toEqual([
      ['1', '120,5', 'a, b, c'],
      ['2', '90,25', 'a'],
      ['3', '1,5', 'a, b'],
    ]);
  });

  it('obeys the line that names the delimiter', async () => {
    const file = await read('sep=;\r\ncode;a,b\r\n1;2,3\r\n', 2);
    expect(file.header).toEqual(['code', 'a,b']);
    expect(cells(file)).toEqual([['1', '2,3']]);
  });

  it('counts rows as a spreadsheet does, titles and blank rows included', async () => {
    const file = await read('My shelf,,\n\ncode,recipe,note\n1,soup,"two\nlines"\n,,\n2,bread,\n');
    expect(file.header).toEqual(['code', 'recipe', 'note']);
    expect(file.records.map(({ row, cells: [code] }) => [row, code])).toEqual([
      [4, '1'],
      [6, '2'],
    ]);
  });

  it.each(['\n', '\r\n', '\r'])('ends lines at %j', async (end) => {
    expect(cells(await read(['a,b', '1,2', '"3",4', ''].join(end)))).toEqual([
      ['1', '2'],
      ['3', '4'],
    ]);
  });

  it('keeps rows apart where line ends are mixed', async () => {
    expect(cells(await read('a,b\r\n1,2\n3,"4"\r\n5,6\n'))).toEqual([
      ['1', '2'],
      ['3', '4'],
      ['5', '6'],
    ]);
  });

  it('names a row whose quotation marks are broken, and reads the others', async () => {
    const file = await read('a,b\n1,"2" wide\n3,4\n5,"6"\n7,8\n');
    expect(file.records[0]!.fault).toMatch(/not doubled/);
    const open = await read('a,b\n1,2\n3,"4\n5,6\n');
    expect(open.records).toHaveLength(2);
    expect(open.records[1]).toMatchObject({
      row: 3,
      fault: expect.stringMatching(/no closing one/) as string,
    });
  });

  it('gives up on a quotation mark that is never closed, naming the row', async () => {
    const text = `a,b\n1,2\n3,"4\n${'5,6\n'.repeat(300_000)}`;
    await expect(read(text, 65_536)).rejects.toThrow(/^Row 3 .*never closed/);
  });

  it('refuses a file of blank rows', async () => {
    await expect(read('\n\n , \n')).rejects.toThrow(UnreadableFile);
  });

  it('reads every table as it was written, however the bytes come in', async () => {
    const cell = fc.string({
      unit: fc.constantFrom('a', 'ü', '"', ',', ';', '\n', '\r\n', ' ', '€', "'"),
      maxLength: 8,
    });
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(cell, cell, cell), { maxLength: 12 }),
        fc.integer({ min: 1, max: 40 }),
        async (rows, pieceSize) => {
          const text = Papa.unparse([['head a', 'head b', 'head c'], ...rows], { newline: '\r\n' });
          const filled = rows.filter((row) => row.some((value) => value.trim() !== ''));
          const file = await read(`${text}\r\n`, pieceSize);
          expect(cells(file)).toEqual(filled);
          expect(file.records.every(({ fault }) => fault === undefined)).toBe(true);
        },
      ),
    );
  });
});
