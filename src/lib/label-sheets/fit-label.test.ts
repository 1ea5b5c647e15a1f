import { describe, expect, it } from 'vitest';
import { exampleLot, longestLot } from '../../../tests/support/examples.ts';
import { makeLabel } from '$lib/presentation/make-label.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { fitLabel, qrIsReadable, qrSideMm } from './fit-label.ts';
import { labelLines } from './label-lines.ts';
import { PAPERS, type Paper } from './papers.ts';

const paper = (id: string): Paper => PAPERS.find((entry) => entry.id === id) ?? expect.fail(id);
const linesFor = (lot: PouchLot, on: Paper) => labelLines(makeLabel(lot, 'metric'), on.sizeClass);
const fit = (lot: PouchLot, on: Paper) => fitLabel(linesFor(lot, on), on);

describe.each(PAPERS)('$name', (on) => {
  it('takes a plain label whole, in type that is read with ease', () => {
    const lot = exampleLot({ allergens: ['milk'] });
    expect(fit(lot, on)?.lines).toEqual(linesFor(lot, on));
    expect(fit(lot, on)?.typePt).toBeGreaterThanOrEqual(6);
  });

  it('takes all that has to be on the longest label, in type that can be read', () => {
    const fitted = fit(longestLot, on);
    expect(fitted?.typePt).toBeGreaterThanOrEqual(5.5);
    expect(fitted?.lines).toEqual(
      expect.arrayContaining(linesFor(longestLot, on).filter(({ optional }) => !optional)),
    );
  });

  it('has a QR code that a phone reads', () => {
    // 29 modules for an address in the home network, and the quiet zone on either side.
    expect(qrIsReadable(on, 29 + 8)).toBe(true);
    expect(qrSideMm(on)).toBeLessThan(Math.min(on.labelWidthMm, on.labelHeightMm));
  });
});

describe('fitLabel', () => {
  it('sets type as large as fits', () => {
    const [small, middle, large] = ['letter-3x8', 'a4-2x6', 'a4-2x4-whole'].map(
      (id) => fit(exampleLot(), paper(id))?.typePt,
    );
    expect(small).toBeLessThan(middle ?? NaN);
    expect(middle).toBeLessThan(large ?? NaN);
  });

  it('cuts a long name rather than setting small type', () => {
    expect(fit(exampleLot({ recipe: 'stew' }), paper('a4-3x8'))?.nameRows).toBe(3);
    expect(fit(longestLot, paper('a4-3x8'))?.nameRows).toBe(1);
  });

  it('leaves out what may be, from the end', () => {
    const lines = linesFor(longestLot, paper('letter-2x4'));
    const tight = fitLabel(lines, paper('letter-3x8'));
    const kept = lines.filter((line) => tight?.lines.includes(line));
    expect(kept.length).toBeLessThan(lines.length);
    const firstLeftOut = lines.findIndex((line) => !kept.includes(line));
    expect(lines.slice(firstLeftOut).every(({ optional }) => optional)).toBe(true);
  });

  it('refuses what does not fit, rather than cutting it', () => {
    const wide = exampleLot({ ...longestLot, code: '湯'.repeat(40) });
    expect(fit(wide, paper('letter-3x8'))).toBeUndefined();
    expect(fit(wide, paper('a4-2x4-whole'))).toBeDefined();
  });
});
