import { MM_PER_POINT } from '../planning/units/print.ts';
import type { LabelLine } from './label-lines.ts';
import type { Paper } from './papers.ts';

/*
 * How large the type of a label can be, reckoned without a browser, so that a label is whole where no script runs as well. LabelSheet.svelte
 * sets it by the same figures.
 */

/** The smallest type that can be read without a glass, pt (common practice). */
export const LEAST_TYPE_PT = 5.5;
/** Before the type gets smaller than this, a name is cut, and a label that is not dense says less, pt. */
const COMFORTABLE_TYPE_PT = 6.5;
export const LARGEST_TYPE_PT = 14;
export const TYPE_STEP_PT = 0.25;
/** Parts of the type size. */
export const NAME_SCALE = { full: 1.3, dense: 1.15 } as const;
export const LINE_HEIGHT = 1.15;
export const GAP_ABOVE_LINE = 0.15;
/** Rows of a name before it is cut, the better first. */
export const NAME_ROWS = [3, 2, 1] as const;

/** Side of the QR code as parts of the room inside the label, and at most, mm: a phone reads it at arm's length. */
const QR_OF_HEIGHT = 0.65;
const QR_OF_WIDTH = 0.3;
const LARGEST_QR_MM = 30;
export const QR_GAP_MM = 1.5;
/** Smaller dots than this are not sure to be printed and read, mm (common practice: four dots of a printer with 300 to the inch). */
const LEAST_MODULE_MM = 0.3;

/** Fonts differ a little from the widths below, which are those of the bold face; the regular one is narrower by more than this. */
const WIDTH_RESERVE = { name: 1.03, strong: 1.03, plain: 1 } as const;
const HEIGHT_RESERVE_PT = 1;

/**
 * Widths of the bold face of usual grotesques as parts of the type size, rounded up (rule of thumb; the font metrics of the PostScript base fonts would replace them).
 */
const WIDTHS: readonly (readonly [characters: string, width: number])[] = [
  ["ijl.,\u00a0 '|/\\I", 0.28],
  ['ft:;!()[]-·', 0.34],
  ['r"*', 0.39],
  ['0123456789aceksvxyz', 0.56],
  ['bdghnopquFLTZ+=×', 0.62],
  ['ABCDEHKNPRSUVXYJ&', 0.73],
  ['wGOQ', 0.78],
  ['mMW%', 0.95],
];
const WIDTH_OF: ReadonlyMap<string, number> = new Map(
  WIDTHS.flatMap(([characters, width]) => [...characters].map((character) => [character, width] as const)),
);
const LATIN_WIDTH = 0.75;
const OTHER_WIDTH = 1.3;

function widthOf(text: string): number {
  let width = 0;
  for (const character of text.normalize('NFD').replace(/\p{M}/gu, ''))
    width += WIDTH_OF.get(character) ?? (/\p{Script=Latin}/u.test(character) ? LATIN_WIDTH : OTHER_WIDTH);
  return width;
}

type Room = {
  readonly widthPt: number;
  readonly heightPt: number;
  /** Side of the QR code in the top right corner, with the gap beside and below it. */
  readonly cornerPt: number;
};

const roomMm = (paper: Paper) => ({
  widthMm: paper.labelWidthMm - 2 * paper.paddingXMm,
  heightMm: paper.labelHeightMm - 2 * paper.paddingYMm,
});

/** @returns the side of the QR code on a paper, quiet zone included, mm */
export function qrSideMm(paper: Paper): number {
  const { widthMm, heightMm } = roomMm(paper);
  return Math.min(QR_OF_HEIGHT * heightMm, QR_OF_WIDTH * widthMm, LARGEST_QR_MM);
}

/** @returns whether a QR code of so many modules a side is coarse enough for printers and phones. */
export function qrIsReadable(paper: Paper, modules: number): boolean {
  return qrSideMm(paper) / modules >= LEAST_MODULE_MM;
}

export type FittedLabel = {
  readonly typePt: number;
  /** Rows after which the name is cut. */
  readonly nameRows: number;
  readonly lines: readonly LabelLine[];
};

/**
 * The lines of a label in the largest type in which they fit. Before the type gets small, the name is cut and what may be left out goes,
 * from the end; nothing else is ever cut.
 *
 * @returns `undefined` where not even what has to be on it fits in the smallest type
 */
export function fitLabel(lines: readonly LabelLine[], paper: Paper): FittedLabel | undefined {
  const { widthMm, heightMm } = roomMm(paper);
  const room: Room = {
    widthPt: widthMm / MM_PER_POINT,
    heightPt: heightMm / MM_PER_POINT,
    cornerPt: (qrSideMm(paper) + QR_GAP_MM) / MM_PER_POINT,
  };
  for (let kept: readonly LabelLine[] | undefined = lines; kept; kept = withoutLastOptional(kept)) {
    const saysMore = paper.sizeClass === 'full' && kept.some(({ optional }) => optional);
    for (const nameRows of NAME_ROWS) {
      const least = saysMore || nameRows > 1 ? COMFORTABLE_TYPE_PT : LEAST_TYPE_PT;
      for (let typePt = LARGEST_TYPE_PT; typePt >= least; typePt -= TYPE_STEP_PT) {
        const height = heightPt(kept, typePt, room, NAME_SCALE[paper.sizeClass], nameRows);
        if (height + HEIGHT_RESERVE_PT <= room.heightPt) return { typePt, nameRows, lines: kept };
      }
    }
  }
  return undefined;
}

function withoutLastOptional(lines: readonly LabelLine[]): readonly LabelLine[] | undefined {
  const last = lines.findLastIndex(({ optional }) => optional);
  return last < 0 ? undefined : lines.toSpliced(last, 1);
}

/** The height that lines take when they flow around the QR code in the corner, which is never lower than that. */
function heightPt(
  lines: readonly LabelLine[],
  typePt: number,
  room: Room,
  nameScale: number,
  nameRows: number,
): number {
  let y = 0;
  for (const [index, { kind, text }] of lines.entries()) {
    if (index > 0) y += typePt * GAP_ABOVE_LINE;
    const sizePt = kind === 'name' ? typePt * nameScale : typePt;
    const mostRows = kind === 'name' ? nameRows : Infinity;
    let rows = 1;
    let x = 0;
    const widthNow = () =>
      (room.widthPt - (y < room.cornerPt ? room.cornerPt : 0)) / (sizePt * WIDTH_RESERVE[kind]);
    const newRow = () => {
      if (rows === mostRows) return;
      rows += 1;
      y += sizePt * LINE_HEIGHT;
      x = 0;
    };
    for (const word of text.split(' ')) {
      const width = widthOf(word);
      if (x > 0 && x + widthOf(` ${word}`) > widthNow()) newRow();
      else if (x > 0) x += widthOf(' ');
      if (width <= widthNow()) x += width;
      // A word that is wider than the label is broken where the row ends.
      else
        for (const character of word) {
          if (x + widthOf(character) > widthNow()) newRow();
          x += widthOf(character);
        }
    }
    y += sizePt * LINE_HEIGHT;
  }
  return Math.max(y, room.cornerPt);
}
