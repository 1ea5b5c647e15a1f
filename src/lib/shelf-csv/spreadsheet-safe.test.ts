import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { neutralise, restore } from './spreadsheet-safe.ts';

const nasty = fc.string({
  unit: fc.constantFrom("'", '"', '=', '+', '-', '@', '\t', '\r', ' ', '＝', '1', ',', 'a'),
  maxLength: 6,
});

describe('neutralise', () => {
  it.each(['=1+1', '+A1', '-A1', '@SUM(A1)', '\t=1', '\r=1', ' =1', '"=1"', "'=1", `"'=1`, '＝1', '-2+3'])(
    'puts an apostrophe before %j',
    (text) => expect(neutralise(text)).toBe(`'${text}`),
  );
  it.each(['', 'soup', "'n soup", '-5', '+1,5', '2026-03-04', 'a=b', 'milk; egg'])(
    'leaves %j as it is',
    (text) => expect(neutralise(text)).toBe(text),
  );

  it('never leaves a text that begins with a sign of a formula', () => {
    fc.assert(
      fc.property(nasty, (text) => !/^\s*[=+\-@＝]/.test(neutralise(text)) || /^[+-]?\d[\d.,]*$/.test(text)),
    );
  });

  it('is taken back by restore, for every text, and only what it made is changed', () => {
    fc.assert(
      fc.property(nasty, (text) => {
        expect(restore(neutralise(text))).toBe(text);
        if (restore(text) !== text) expect(neutralise(restore(text))).toBe(text);
      }),
    );
  });
});
