import {
  GAP_ABOVE_LINE,
  LARGEST_TYPE_PT,
  LEAST_TYPE_PT,
  LINE_HEIGHT,
  NAME_ROWS,
  NAME_SCALE,
  QR_GAP_MM,
  qrSideMm,
  TYPE_STEP_PT,
} from './fit-label.ts';
import { perSheet, placeLabels, type Paper } from './papers.ts';

/**
 * @returns the style sheet of a paper: the size of its pages for the printer, where each label stands, and every size of type. Elements name in
 *   `data-` attributes what they take of it, as a page that lets no style attributes through cannot state measures of its own.
 */
export function sheetStyle(paper: Paper): string {
  const [places = []] = placeLabels(paper, perSheet(paper), 1);
  const types = Array.from(
    { length: (LARGEST_TYPE_PT - LEAST_TYPE_PT) / TYPE_STEP_PT + 1 },
    (_, step) => LEAST_TYPE_PT + step * TYPE_STEP_PT,
  );
  return [
    `@page { size: ${paper.pageWidthMm}mm ${paper.pageHeightMm}mm; margin: 0; }`,
    `.labels { --page-w: ${paper.pageWidthMm}mm; --page-h: ${paper.pageHeightMm}mm; --label-w: ${paper.labelWidthMm}mm; --label-h: ${paper.labelHeightMm}mm; --pad-x: ${paper.paddingXMm}mm; --pad-y: ${paper.paddingYMm}mm; --qr: ${qrSideMm(paper)}mm; --qr-gap: ${QR_GAP_MM}mm; --name-scale: ${NAME_SCALE[paper.sizeClass]}; --line-height: ${LINE_HEIGHT}; --gap-above-line: ${GAP_ABOVE_LINE}em; }`,
    ...[...new Set(places.map(({ xMm }) => xMm))].map(
      (mm) => `.labels [data-x-mm='${mm}'] { left: ${mm}mm; }`,
    ),
    ...[...new Set(places.map(({ yMm }) => yMm))].map(
      (mm) => `.labels [data-y-mm='${mm}'] { top: ${mm}mm; }`,
    ),
    ...types.map((pt) => `.labels [data-type-pt='${pt}'] { --type: ${pt}pt; }`),
    ...NAME_ROWS.map((rows) => `.labels [data-name-rows='${rows}'] { --name-rows: ${rows}; }`),
  ].join('\n');
}
