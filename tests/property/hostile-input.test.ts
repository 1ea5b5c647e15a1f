/* What was made to do harm: bombs, nesting out of reason, keys of prototypes, and texts on which a careless reader tries ever more ways. */
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { linesOf, keptLines } from '../../src/lib/forms/lines.ts';
import { FormReader } from '../../src/lib/forms/read-form.ts';
import { readFoodsCsv } from '../../src/lib/foods/read-foods-csv.ts';
import { parseJson } from '../../src/lib/parse-json.ts';
import { Settings } from '../../src/lib/planning/model/settings.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { sayWhy } from '../../src/lib/planning/menu/why.ts';
import { readGpx } from '../../src/lib/planning/route/read-gpx.ts';
import { RouteError } from '../../src/lib/planning/route/route-error.ts';
import { readJsonFile } from '../../src/lib/read-json-file.ts';
import { neutralise, restore } from '../../src/lib/shelf-csv/spreadsheet-safe.ts';
import { otherFile } from '../../src/lib/shelf-csv/text-encoding.ts';
import { readCell, readDate, readNumber } from '../../src/lib/shelf-csv/read-cell.ts';
import { useLanguage } from '../../src/lib/texts/say.ts';

/** Eight times the text may take some eight times the steps; with the square of its length it would be 64 times. */
const LONGER = 8;
const MOST_RATIO = 24;

/** Processor time, the least of some runs, as others share the processor, µs. */
function cost(work: () => unknown): number {
  const runs = Array.from({ length: 5 }, () => {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    return user + system;
  });
  return Math.min(...runs);
}

/** Lengthens the text until reading it can be measured, then compares it with one eight times as long. */
function expectLinear(read: (repeats: number) => unknown): void {
  let repeats = 500;
  while (cost(() => read(repeats)) < 3000 && repeats < 2e6) repeats *= 2;
  expect(
    cost(() => read(repeats * LONGER)) /
      Math.max(
        cost(() => read(repeats)),
        3000,
      ),
  ).toBeLessThan(MOST_RATIO);
}

const refused = (xml: string): string => {
  try {
    readGpx(xml);
  } catch (error) {
    expect(error).toBeInstanceOf(RouteError);
    return (error as RouteError).message;
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
      ).toMatch(/DOCTYPE.*Remove it/);
  });

  it('with an entity that nobody declared is refused', () => {
    expect(refused('<gpx><trk><name>&e20;</name></trk></gpx>')).toMatch(/not well-formed/);
  });

  it('is read in steps that grow with its length: nested, with empty tracks, with long names, with what is never closed', () => {
    expectLinear((n) => refused(`<gpx>${'<a>'.repeat(n)}${'</a>'.repeat(n)}</gpx>`));
    expectLinear((n) => refused(`<gpx>${'<trk/>'.repeat(Math.min(n, 20_000))}</gpx>`));
    expectLinear((n) => refused(`<gpx><trk><name>${' '.repeat(n)}x</name></trk></gpx>`));
    expectLinear((n) => refused(`<gpx ${'x'.repeat(n)}`));
    expectLinear((n) => refused(`<gpx><!--${'-'.repeat(n)}`));
  });

  it('has an end to its tracks', () => {
    expect(refused(`<gpx>${'<trk/>'.repeat(10_001)}</gpx>`)).toMatch(/more than 10000 tracks/);
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
    const lines = (n: number) =>
      formOf(Array.from({ length: Math.min(n, 9999) }, (_, line) => `staples[${line}].name`));
    expect(keptLines(lines(9999), 'staples', [])).toHaveLength(9999);
    const [few, many] = [lines(1200), lines(9600)];
    const ratio =
      cost(() => keptLines(many, 'staples', ['meals'])) /
      Math.max(
        cost(() => keptLines(few, 'staples', ['meals'])),
        2000,
      );
    expect(ratio).toBeLessThan(MOST_RATIO);
    expect(linesOf(few.entered, 'staples')).toHaveLength(1200);
  });
});

describe('a text that a careless pattern would try in ever more ways', () => {
  const rules = { unit: undefined, decimalMark: 'either', dateOrder: 'iso', currency: 'EUR' } as const;
  const HOSTILE: readonly ((n: number) => string)[] = [
    (n) => '1'.repeat(n),
    (n) => `1${' '.repeat(n)}x`,
    (n) => `${'1 '.repeat(n)}/`,
    (n) => '1,'.repeat(n),
    (n) => `${' '.repeat(n)}watr`,
    (n) => `2026-01-01${'T '.repeat(n)}1:`,
    (n) => `1${'a'.repeat(n)}1${'a'.repeat(n)}`,
    (n) => '-'.repeat(n),
    (n) => `${'('.repeat(n)}), costs `,
  ];
  it.each(HOSTILE.map((make) => [make(3).slice(0, 12), make] as const))(
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
        expectLinear((n) => readCell({ kind }, make(n), rules));
      expectLinear((n) => restore(neutralise(make(n))));
      useLanguage(() => 'de');
      expectLinear((n) => sayWhy(`least cost in all: next best here, ${make(n)} points more, for `));
      useLanguage(() => 'en');
    },
  );

  it('in a cell that is no text is refused by its length', () => {
    expect(readCell({ kind: 'number' }, '1'.repeat(1001), rules)).toMatchObject({
      reason: expect.stringMatching(/longer than 1000 characters; is it in the right column/),
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
