import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PAPERS, perSheet, placeLabels, placesOf, type Paper } from './papers.ts';

const paper = (id: string): Paper => PAPERS.find((entry) => entry.id === id) ?? expect.fail(id);
/** To a hundredth of a mm. */
const near = (value: number) => expect.closeTo(value, 2);

describe('PAPERS', () => {
  // Margins of sheets as they are sold (memory).
  it('have their labels where the sheets that are sold have them', () => {
    expect(paper('a4-2x7')).toMatchObject({ marginLeftMm: near(4.65), marginTopMm: near(15.15) });
    expect(paper('a4-3x7')).toMatchObject({ marginLeftMm: near(7.25), marginTopMm: near(15.15) });
    expect(paper('a4-2x4')).toMatchObject({ marginLeftMm: near(4.65), marginTopMm: near(13.1) });
    const [inSixteenths, half] = [25.4 / 16, 12.7];
    expect(paper('letter-2x5')).toMatchObject({
      marginLeftMm: near(2.5 * inSixteenths),
      marginTopMm: near(half),
    });
    expect(paper('letter-2x3')).toMatchObject({
      marginLeftMm: near(2.5 * inSixteenths),
      marginTopMm: near(half),
    });
    expect(paper('letter-3x10')).toMatchObject({
      marginLeftMm: near(3 * inSixteenths),
      marginTopMm: near(half),
    });
  });

  it.each(PAPERS)('$name: no label leaves the page or lies on another', (each) => {
    const places = placesOf(each);
    expect(places).toHaveLength(perSheet(each));
    for (const [index, { xMm, yMm }] of places.entries()) {
      expect(xMm).toBeGreaterThanOrEqual(0);
      expect(yMm).toBeGreaterThanOrEqual(0);
      expect(xMm + each.labelWidthMm).toBeLessThan(each.pageWidthMm + 1e-9);
      expect(yMm + each.labelHeightMm).toBeLessThan(each.pageHeightMm + 1e-9);
      for (const other of places.slice(0, index))
        expect(
          xMm - other.xMm > each.labelWidthMm - 1e-9 ||
            Math.abs(yMm - other.yMm) > each.labelHeightMm - 1e-9 ||
            other.xMm - xMm > each.labelWidthMm - 1e-9,
        ).toBe(true);
    }
  });

  it('have an id of their own', () => {
    expect(new Set(PAPERS.map(({ id }) => id)).size).toBe(PAPERS.length);
  });
});

describe('placeLabels', () => {
  it('skips the used places of the first sheet, and fills whole sheets after it', () => {
    const sheets = placeLabels(paper('a4-2x7'), 20, 13);
    expect(sheets.map((places) => places.length)).toEqual([2, 14, 4]);
    expect(sheets[0]?.[0]).toEqual({ xMm: near(4.65), yMm: near(15.15 + 6 * 38.1) });
    expect(sheets[0]?.[1]).toEqual({ xMm: near(4.65 + 101.6), yMm: near(15.15 + 6 * 38.1) });
    expect(sheets[2]?.[0]).toEqual({ xMm: near(4.65), yMm: near(15.15) });
  });

  it('places every label once, for any count and first place', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...PAPERS),
        fc.nat({ max: 200 }),
        fc.nat({ max: 40 }),
        (each, count, skip) => {
          const used = skip % perSheet(each);
          const sheets = placeLabels(each, count, used + 1);
          const all = sheets.flatMap((places, sheet) =>
            places.map(({ xMm, yMm }) => `${sheet} ${xMm} ${yMm}`),
          );
          expect(new Set(all).size).toBe(count);
          expect(all).toHaveLength(count);
          expect(sheets.length).toBe(count === 0 ? 0 : Math.ceil((used + count) / perSheet(each)));
        },
      ),
    );
  });

  it.each([0, 15, 1.5, NaN])('refuses place %s of 14', (startAt) => {
    expect(() => placeLabels(paper('a4-2x7'), 1, startAt)).toThrow('no place');
  });
});
