import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ownPaper, PAPERS, perSheet, placeLabels, placesOf, type OwnSize, type Paper } from './papers.ts';

const paper = (id: string): Paper => PAPERS.find((entry) => entry.id === id) ?? expect.fail(id);
/** To a hundredth of a mm. */
const near = (value: number) => expect.closeTo(value, 2);

describe('PAPERS', () => {
  it('have their labels in the middle of the page', () => {
    expect(paper('a4-2x4-whole')).toMatchObject({ marginLeftMm: near(0), marginTopMm: near(0.5) });
    expect(paper('a4-2x6')).toMatchObject({ marginLeftMm: near(5), marginTopMm: near(13.5) });
    // 8 1/2 × 11 in: 1/4 in beside two of 4 in, 1/2 in above four of 2 1/2 in
    expect(paper('letter-2x4')).toMatchObject({ marginLeftMm: near(6.35), marginTopMm: near(12.7) });
  });

  it("can be of a size of one's own, if it fits on the page", () => {
    const own: OwnSize = { page: 'a4', widthMm: 60, heightMm: 30, columns: 3, rows: 9, gapXMm: 2, gapYMm: 1 };
    expect(ownPaper(own)).toMatchObject({
      marginLeftMm: near((210 - 3 * 60 - 2 * 2) / 2),
      marginTopMm: near((297 - 9 * 30 - 8 * 1) / 2),
      pitchXMm: 62,
      pitchYMm: 31,
    });
    expect(ownPaper({ ...own, columns: 4 })).toBeUndefined();
    expect(ownPaper({ ...own, rows: 10 })).toBeUndefined();
    expect(ownPaper({ ...own, page: 'single', columns: 4 })).toMatchObject({
      pageWidthMm: 60,
      pageHeightMm: 30,
      columns: 1,
      rows: 1,
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
    const sheets = placeLabels(paper('a4-2x6'), 20, 11);
    expect(sheets.map((places) => places.length)).toEqual([2, 12, 6]);
    expect(sheets[0]?.[0]).toEqual({ xMm: near(5), yMm: near(13.5 + 5 * 45) });
    expect(sheets[0]?.[1]).toEqual({ xMm: near(5 + 100), yMm: near(13.5 + 5 * 45) });
    expect(sheets[2]?.[0]).toEqual({ xMm: near(5), yMm: near(13.5) });
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

  it.each([0, 13, 1.5, NaN])('refuses place %s of 12', (startAt) => {
    expect(() => placeLabels(paper('a4-2x6'), 1, startAt)).toThrow('no place');
  });
});
