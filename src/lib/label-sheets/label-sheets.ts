import { lotHref } from '$lib/lot-href.ts';
import { makeLabel } from '$lib/presentation/make-label.ts';
import type { UnitSystem } from '$lib/presentation/show.ts';
import { fitLabel, qrIsReadable, type FittedLabel } from './fit-label.ts';
import { labelLines } from './label-lines.ts';
import type { LabelRequest } from './label-request.ts';
import { placeLabels, type Place } from './papers.ts';
import { qrCode, type QrCode } from './qr-code.ts';

/** A label ready to be set: every copy of it is alike. */
export type SetLabel = FittedLabel & { readonly code: string; readonly qr: QrCode };

export type LabelSheets = {
  readonly labels: readonly SetLabel[];
  /** Sheet by sheet; `label` is an index into `labels`. */
  readonly sheets: readonly (readonly (Place & { readonly label: number })[])[];
  /** Codes of lots that have no label, because what has to be on it does not fit on this paper. */
  readonly tooLong: readonly string[];
  /** Codes of lots whose QR code is too fine on this paper to be sure of. */
  readonly tooFine: readonly string[];
};

/** Sets the labels that were asked for, and deals them out on sheets, lot by lot. */
export function makeSheets(
  { lots, paper, from, address }: LabelRequest,
  unitSystem: UnitSystem,
): LabelSheets {
  const labels: SetLabel[] = [];
  const order: number[] = [];
  const tooLong: string[] = [];
  const tooFine: string[] = [];
  for (const { lot, copies } of lots) {
    if (copies === 0) continue;
    const fitted = fitLabel(labelLines(makeLabel(lot, unitSystem), paper.sizeClass), paper);
    if (!fitted) {
      tooLong.push(lot.code);
      continue;
    }
    const qr = qrCode(address + lotHref(lot.code));
    if (!qrIsReadable(paper, qr.size)) tooFine.push(lot.code);
    for (let copy = 0; copy < copies; copy++) order.push(labels.length);
    labels.push({ ...fitted, code: lot.code, qr });
  }
  let next = 0;
  const sheets = placeLabels(paper, order.length, from).map((places) =>
    places.map((place) => ({ ...place, label: order[next++]! })),
  );
  return { labels, sheets, tooLong, tooFine };
}
