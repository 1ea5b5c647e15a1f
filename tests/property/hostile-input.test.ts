/* What was made to do harm: bombs, nesting out of reason, keys of prototypes, and texts on which a careless reader tries ever more ways. */
import { gzipSync } from 'node:zlib';
import { describe, expect, it, test } from 'vitest';
import { startCountingSteps } from '../support/count-steps.ts';
import { HOSTILE_TEXTS } from '../support/hostile-texts.ts';

const countSteps = startCountingSteps();
// Loaded only now, so that their steps are counted.
const { linesOf, keptLines } = await import('../../src/lib/forms/lines.ts');
const { FormReader } = await import('../../src/lib/forms/read-form.ts');
const { readFoodsCsv } = await import('../../src/lib/foods/read-foods-csv.ts');
const { parseJson } = await import('../../src/lib/parse-json.ts');
const { Settings } = await import('../../src/lib/planning/model/settings.ts');
const { Trip } = await import('../../src/lib/planning/model/trip.ts');
const { readGpx } = await import('../../src/lib/planning/route/read-gpx.ts');
const { RouteError } = await import('../../src/lib/planning/route/route-error.ts');
const { readJsonFile } = await import('../../src/lib/read-json-file.ts');
const { neutralise, restore } = await import('../../src/lib/shelf-csv/spreadsheet-safe.ts');
const { otherFile } = await import('../../src/lib/shelf-csv/text-encoding.ts');
const { readCell, readDate, readNumber } = await import('../../src/lib/shelf-csv/read-cell.ts');

/** Eight times the text may take some eight times the steps; with the square of its length it would be 64 times. */
const SHORT = 1000;
const LONGER = 8;
const MOST_RATIO = 10;
/** Most hostile texts of eight times this still fit into the length that a cell may have. */
const IN_A_CELL = 60;

/** Compares the steps of reading a text with those of reading one eight times as long. */
function expectLinear(read: (repeats: number) => unknown, short = SHORT): void {
  const long = short * LONGER;
  // What is made at the first use does not count.
  for (const repeats of [short - 1, long - 1]) read(repeats);
  const few = countSteps(() => read(short));
  expect(few).toBeGreaterThan(0);
  expect(countSteps(() => read(long))).toBeLessThan(MOST_RATIO * few);
}

test('steps that grow with the square of the length are told from those that grow with it', () => {
  const linear = new Function('n', 'for (let i = 0; i < n; i += 1) { n -= 0; }') as (n: number) => void;
  const square = new Function(
    'n',
    'for (let i = 0; i < n; i += 1) { for (let j = 0; j < n; j += 1) { n -= 0; } }',
  ) as (n: number) => void;
  expectLinear(linear);
  expect(() => expectLinear(square)).toThrow(/to be less than/);
});

const refused = (xml: string): string => {
  try {
    readGpx(xml);
  } catch (error) {
    expect(error).toBeInstanceOf(RouteError);
    return (error as Error).message;
  }
  return '';
};

describe('a GPX file', () => {
  it('with a DOCTYPE is refused before any entity is looked at', () => {
    const bomb = Array.from(
      { length: 20 },
      (_, level) => `<!ENTITY e${level + 1} "${`&e${level};`.repeat(10)}">`,
    ).join('');
    for (const inside of [`<!ENTITY e0 "ha">${bomb}`, '<!ENTITY e20 SYSTEM "file:///etc/passwd">'])
      expect(
        refused(`<?xml version="1.0"?><!DOCTYPE gpx [${inside}]><gpx><trk><name>&e20;</name></trk></gpx>`),
      ).toMatch(/"code":"doctype"/);
  });

  it('with an entity that nobody declared is refused', () => {
    expect(refused('<gpx><trk><name>&e20;</name></trk></gpx>')).toMatch(/"code":"not-well-formed"/);
  });

  it('is read in steps that grow with its length: nested, with empty tracks, with long names, with what is never closed', () => {
    expectLinear((n) => refused(`<gpx>${'<a>'.repeat(n)}${'</a>'.repeat(n)}</gpx>`));
    expectLinear((n) => refused(`<gpx>${'<trk/>'.repeat(n)}</gpx>`));
    expectLinear((n) => refused(`<gpx><trk><name>${' '.repeat(n)}x</name></trk></gpx>`));
    expectLinear((n) => refused(`<gpx ${'x'.repeat(n)}`));
    expectLinear((n) => refused(`<gpx><!--${'-'.repeat(n)}`));
  });

  it('has an end to its tracks', () => {
    expect(refused(`<gpx>${'<trk/>'.repeat(10_001)}</gpx>`)).toMatch(/"code":"too-many-lines","most":10000/);
  });
});

describe('JSON', () => {
  const deep = [
    ['arrays', '['.repeat(10_000) + ']'.repeat(10_000)],
    ['objects', '{"trip":'.repeat(10_000) + '1' + '}'.repeat(10_000)],
    ['what is never closed', '{"a":['.repeat(10_000)],
  ] as const;
  it.each(deep)('nested 10,000 deep in %s is refused with words', (_, sent) => {
    for (const schema of [Trip, Settings]) {
      const read = readJsonFile(new TextEncoder().encode(sent), schema);
      expect('fault' in read ? read.fault : 'problems' in read ? read.problems[0]?.message : '').toMatch(
        /\w{3}/,
      );
    }
    const parsed = parseJson(sent);
    if ('fault' in parsed) expect(parsed.fault).not.toMatch(/undefined/);
  });

  it('whose keys are those of prototypes changes none, and is refused', () => {
    const base = JSON.stringify(
      Trip.parse({ name: 'x', startDate: '2027-07-05', dayCount: 1, party: [{ name: 'Ada' }] }),
    );
    for (const key of ['__proto__', 'constructor', 'prototype'])
      for (const at of ['{', '"party":[{']) {
        const sent = base.replace(at, `${at}"${key}":{"polluted":true,"prototype":{"polluted":true}},`);
        const read = readJsonFile(new TextEncoder().encode(sent), Trip);
        if ('value' in read) expect(JSON.stringify(read.value)).toBe(base);
        else expect(read).toHaveProperty('problems');
        expect({}).not.toHaveProperty('polluted');
      }
  });
});

describe('a form', () => {
  const formOf = (names: readonly string[]) => {
    const form = new FormData();
    for (const name of names) form.append(name, 'x');
    return new FormReader(form, 'metric');
  };
  it('with fields named like the keys of prototypes is read without them', () => {
    const { entered } = formOf(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'name']);
    expect(Object.entries(entered)).toEqual([['name', ['x']]]);
    expect({}).not.toHaveProperty('x');
  });

  it('with thousands of lines is read in steps that grow with their number', () => {
    const lines = (n: number) => formOf(Array.from({ length: n }, (_, line) => `staples[${line}].name`));
    expect(keptLines(lines(9999), 'staples', [])).toHaveLength(9999);
    expectLinear((n) => keptLines(lines(n), 'staples', ['meals']));
    expect(linesOf(lines(1200).entered, 'staples')).toHaveLength(1200);
  });
});

describe('a text that a careless pattern would try in ever more ways', () => {
  const rules = { unit: undefined, decimalMark: 'either', dateOrder: 'iso', currency: 'EUR' } as const;
  it.each(HOSTILE_TEXTS.map((make) => [make(3).slice(0, 12), make] as const))(
    'is read in steps that grow with its length: %j',
    (_, make) => {
      expectLinear((n) => readNumber(make(n), 'either'));
      expectLinear((n) => readDate(make(n), 'iso'));
      for (const kind of [
        'number',
        'date',
        'cost',
        'water kind',
        'allergens',
        'diets',
        'meals',
        'currency',
      ] as const)
        expectLinear((n) => readCell({ kind }, make(n), rules), IN_A_CELL);
      expectLinear((n) => restore(neutralise(make(n))));
    },
  );

  it('in a cell that is no text is refused by its length', () => {
    expect(readCell({ kind: 'number' }, '1'.repeat(1001), rules)).toMatchObject({
      reason: expect.stringMatching(/longer than 1000 characters. Is it in the right column/),
    });
  });
});

describe('what is compressed', () => {
  it('is told by its name and never unpacked', async () => {
    const zipped = gzipSync(Buffer.alloc(1_000_000));
    expect(otherFile(zipped)).toBe('a compressed file (gzip)');
    expect(otherFile(Buffer.from('PK\x03\x04 and so on'))).toBe('a spreadsheet workbook or a zip archive');
    expect(otherFile(Buffer.from('<gpx>'))).toBeUndefined();
    await expect(readFoodsCsv(zipped)).rejects.toThrow(/This is a compressed file \(gzip\), not a CSV file/);
  });
});
