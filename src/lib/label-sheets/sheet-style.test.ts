import { expect, test } from 'vitest';
import { LARGEST_TYPE_PT, LEAST_TYPE_PT } from './fit-label.ts';
import { PAPERS, perSheet, placeLabels } from './papers.ts';
import { sheetStyle } from './sheet-style.ts';

test.each(PAPERS.map((paper) => [paper.id, paper] as const))(
  'the style sheet of %s places every label, from whichever place the first sheet begins',
  (_id, paper) => {
    const style = sheetStyle(paper);
    expect(style).toContain(`@page { size: ${paper.pageWidthMm}mm ${paper.pageHeightMm}mm; margin: 0; }`);
    const places = placeLabels(paper, 2 * perSheet(paper), Math.min(2, perSheet(paper))).flat();
    for (const { xMm, yMm } of places) {
      expect(style).toContain(`[data-x-mm='${xMm}'] { left: ${xMm}mm; }`);
      expect(style).toContain(`[data-y-mm='${yMm}'] { top: ${yMm}mm; }`);
    }
    for (const typePt of [LEAST_TYPE_PT, 7.25, LARGEST_TYPE_PT])
      expect(style).toContain(`[data-type-pt='${typePt}'] { --type: ${typePt}pt; }`);
  },
);
