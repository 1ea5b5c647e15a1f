import { MM_PER_INCH } from '../planning/units/print.ts';
import { text, type Text } from '../texts/say.ts';

/** How much a label says: `dense` where there is room for what has to be on it and little else. */
export type SizeClass = 'full' | 'dense';

/** Labels of one size on a page of one size. All lengths in mm. */
export type Paper = {
  /** In addresses. */
  readonly id: string;
  readonly name: Text;
  readonly pageWidthMm: number;
  readonly pageHeightMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly labelWidthMm: number;
  readonly labelHeightMm: number;
  /** From the edge of the page to the first label. */
  readonly marginLeftMm: number;
  readonly marginTopMm: number;
  /** From the left edge of one label to that of the next, and from top edge to top edge. */
  readonly pitchXMm: number;
  readonly pitchYMm: number;
  /** Blank inside each label: at least what the printer cannot reach along the edge of the page. */
  readonly paddingXMm: number;
  readonly paddingYMm: number;
  readonly sizeClass: SizeClass;
};

/** Blank at the edge of a label, so that a sheet that went in a little askew still fits. */
const LEAST_PADDING_MM = 1.5;
/** What office printers leave blank along the edge of the page, and label printers on a roll (rule of thumb). */
const SHEET_EDGE_MM = 5;
const ROLL_EDGE_MM = 2;
/** A label with less room than this inside is dense. */
const FULL_FROM_MM2 = 4000;

type Grid = {
  readonly page: readonly [widthMm: number, heightMm: number];
  readonly grid: readonly [columns: number, rows: number];
  readonly label: readonly [widthMm: number, heightMm: number];
  /** Between two columns and two rows; the grid is centred on the page. */
  readonly gapXMm?: number;
  readonly gapYMm?: number;
  readonly edgeMm: number;
};

function paper(id: string, name: Text, { page, grid, label, gapXMm = 0, gapYMm = 0, edgeMm }: Grid): Paper {
  const [[pageWidthMm, pageHeightMm], [columns, rows], [labelWidthMm, labelHeightMm]] = [page, grid, label];
  const marginLeftMm = (pageWidthMm - columns * labelWidthMm - (columns - 1) * gapXMm) / 2;
  const marginTopMm = (pageHeightMm - rows * labelHeightMm - (rows - 1) * gapYMm) / 2;
  const padding = (marginMm: number) => Math.max(LEAST_PADDING_MM, edgeMm - marginMm);
  const [paddingXMm, paddingYMm] = [padding(marginLeftMm), padding(marginTopMm)];
  const roomMm2 = (labelWidthMm - 2 * paddingXMm) * (labelHeightMm - 2 * paddingYMm);
  return {
    id,
    name,
    pageWidthMm,
    pageHeightMm,
    columns,
    rows,
    labelWidthMm,
    labelHeightMm,
    marginLeftMm,
    marginTopMm,
    pitchXMm: labelWidthMm + gapXMm,
    pitchYMm: labelHeightMm + gapYMm,
    paddingXMm,
    paddingYMm,
    sizeClass: roomMm2 >= FULL_FROM_MM2 ? 'full' : 'dense',
  };
}

const inch = (value: number) => value * MM_PER_INCH;
const A4 = { page: [210, 297], edgeMm: SHEET_EDGE_MM } as const;
const LETTER = { page: [inch(8.5), inch(11)], edgeMm: SHEET_EDGE_MM } as const;
const single = (widthMm: number, heightMm: number): Grid => ({
  page: [widthMm, heightMm],
  grid: [1, 1],
  label: [widthMm, heightMm],
  edgeMm: ROLL_EDGE_MM,
});

/** Rules of thumb: pages cut in even parts, and round sizes. Those who have other labels enter them. */
export const PAPERS: readonly [Paper, ...Paper[]] = [
  paper('a4-2x4-whole', text('A4, 2 × 4 of 105 × 74 mm'), { ...A4, grid: [2, 4], label: [105, 74] }),
  paper('a4-2x6', text('A4, 2 × 6 of 100 × 45 mm'), { ...A4, grid: [2, 6], label: [100, 45] }),
  paper('a4-3x8', text('A4, 3 × 8 of 70 × 37 mm'), { ...A4, grid: [3, 8], label: [70, 37] }),
  paper('letter-2x4', text('US letter, 2 × 4 of 4 × 2 1/2 in'), {
    ...LETTER,
    grid: [2, 4],
    label: [inch(4), inch(2.5)],
  }),
  paper('letter-3x8', text('US letter, 3 × 8 of 2 1/2 × 1 1/4 in'), {
    ...LETTER,
    grid: [3, 8],
    label: [inch(2.5), inch(1.25)],
  }),
  paper('single-100x60', text('Single labels, 100 × 60 mm'), single(100, 60)),
  paper('single-60x40', text('Single labels, 60 × 40 mm'), single(60, 40)),
  paper('single-4x3', text('Single labels, 4 × 3 in'), single(inch(4), inch(3))),
];

/** What labels of another size are on. */
export const PAGES = ['a4', 'letter', 'single'] as const;
export type Page = (typeof PAGES)[number];
export const PAGE_WORDS: Readonly<Record<Page, Text>> = {
  a4: text('A4 sheets'),
  letter: text('US letter sheets'),
  single: text('one label at a time'),
};

/** Labels of a size of one's own, mm; of single labels only width and height count. */
export type OwnSize = {
  readonly page: Page;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly gapXMm: number;
  readonly gapYMm: number;
};
/** In addresses. */
export const OWN_SIZE = 'own';

/**
 * @example ownPaper({ page: 'a4', widthMm: 60, heightMm: 30, columns: 3, rows: 9, gapXMm: 2, gapYMm: 0 })
 * @returns the paper, its labels centred on the page; `undefined` where they do not fit on it
 */
export function ownPaper(size: OwnSize): Paper | undefined {
  const { page, widthMm, heightMm, columns, rows, gapXMm, gapYMm } = size;
  const grid: Grid =
    page === 'single'
      ? single(widthMm, heightMm)
      : {
          ...(page === 'a4' ? A4 : LETTER),
          grid: [columns, rows],
          label: [widthMm, heightMm],
          gapXMm,
          gapYMm,
        };
  const made = paper(OWN_SIZE, text('your own size'), grid);
  return made.marginLeftMm < 0 || made.marginTopMm < 0 ? undefined : made;
}

export const perSheet = ({ columns, rows }: Paper): number => columns * rows;

export type Place = { readonly xMm: number; readonly yMm: number };

/** @returns all places of a sheet from the top left, row by row. */
export function placesOf(paper: Paper): Place[] {
  return Array.from({ length: perSheet(paper) }, (_, index) => ({
    xMm: paper.marginLeftMm + (index % paper.columns) * paper.pitchXMm,
    yMm: paper.marginTopMm + Math.floor(index / paper.columns) * paper.pitchYMm,
  }));
}

/**
 * Deals labels out on sheets.
 *
 * @param count how many labels
 * @param startAt the first free place of the first sheet, from 1
 * @returns the places that are printed on, sheet by sheet
 * @throws RangeError where a sheet has no place of that number
 */
export function placeLabels(paper: Paper, count: number, startAt: number): Place[][] {
  const places = placesOf(paper);
  if (!Number.isInteger(startAt) || startAt < 1 || startAt > places.length)
    throw new RangeError(`a sheet of ${places.length} labels has no place ${startAt}`);
  const sheets: Place[][] = [];
  for (let left = count; left > 0; left -= sheets.at(-1)!.length) {
    const used = sheets.length === 0 ? startAt - 1 : 0;
    sheets.push(places.slice(used, used + left));
  }
  return sheets;
}
