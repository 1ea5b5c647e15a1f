import { encode } from 'uqr';

/** A QR code as one shape: a square of `size` modules, the quiet zone included. */
export type QrCode = {
  readonly size: number;
  /** The dark modules, as the path of an SVG with a view box of 0 0 size size. */
  readonly path: string;
};

/** Blank modules around it (rule of thumb; the text of ISO/IEC 18004 would replace it). */
const QUIET_ZONE = 4;

/** The dark and light modules of a text with error correction M, which outlives 15 % of damage, quiet zone included. */
export function qrModules(text: string): boolean[][] {
  return encode(text, { ecc: 'M', border: QUIET_ZONE }).data;
}

export function qrCode(text: string): QrCode {
  const rows = qrModules(text);
  // One bar for each run of dark modules.
  const bars = rows.flatMap((row, y) =>
    [
      ...row
        .map((dark) => (dark ? '1' : '0'))
        .join('')
        .matchAll(/1+/g),
    ].map(({ index, 0: run }) => `M${index} ${y}h${run.length}v1h-${run.length}z`),
  );
  return { size: rows.length, path: bars.join('') };
}
