/*
 * What a picture is, without what it tells of who took it, where and when. JPEG (ITU-T T.81), PNG (ISO/IEC 15948) and WebP (RFC 9649) are files of marked
 * parts: those that a decoder needs are kept, all others are left out, and a file with a part that is not known is refused rather than guessed at.
 */

export type MediaType = 'image/jpeg' | 'image/png' | 'image/webp';
/** A picture with nothing in it but what it shows. */
export type Picture = {
  readonly mediaType: MediaType;
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
};
/** Why a file is not taken: no picture of these kinds, one that is not whole or has parts that are not known, one that moves, or more pixels than may be. */
export type Unfit = 'unknown kind' | 'broken' | 'moving' | 'too many pixels';

/** The most pixels of a picture: more than phones take, and less than a browser would choke on. */
export const MOST_PIXELS = 50_000_000;

/**
 * @returns the picture without its metadata: no place, time, camera, thumbnail, comment, colour profile or anything behind its end. What way up it is stays, of JPEG
 * @example stripPicture(readFileSync('plum.jpg')) // { mediaType: 'image/jpeg', width: 4032, height: 3024, bytes }
 */
export function stripPicture(file: Uint8Array): Picture | Unfit {
  try {
    const read = startsWith(file, [0xff, 0xd8, 0xff])
      ? jpeg(file)
      : startsWith(file, PNG_SIGNATURE)
        ? png(file)
        : textAt(file, 0) === 'RIFF' && textAt(file, 8) === 'WEBP'
          ? webp(file)
          : refuse('unknown kind');
    const { width, height } = read;
    if (width === 0 || height === 0) return 'broken';
    return width * height > MOST_PIXELS ? 'too many pixels' : read;
  } catch (caught) {
    if (caught instanceof Refused) return caught.why;
    if (caught instanceof RangeError) return 'broken'; // read beyond the end
    throw caught;
  }
}

class Refused extends Error {
  readonly why: Unfit;
  constructor(why: Unfit) {
    super(why);
    this.why = why;
  }
}
const refuse = (why: Unfit): never => {
  throw new Refused(why);
};

const viewOf = (file: Uint8Array): DataView => new DataView(file.buffer, file.byteOffset, file.byteLength);
const startsWith = (file: Uint8Array, bytes: readonly number[]): boolean =>
  file.length > bytes.length && bytes.every((byte, index) => file[index] === byte);
/** Four letters. */
const textAt = (file: Uint8Array, at: number): string => String.fromCharCode(...file.subarray(at, at + 4));
/** @throws Refused where there are not so many */
function cut(file: Uint8Array, from: number, to: number): Uint8Array {
  if (from > to || to > file.length) refuse('broken');
  return file.subarray(from, to);
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

// JPEG

const MARKER = { startOfImage: 0xd8, endOfImage: 0xd9, startOfScan: 0xda, app1: 0xe1, app14: 0xee } as const;
/** Baseline, extended and progressive frames in Huffman coding; browsers read no others. */
const FRAMES = [0xc0, 0xc1, 0xc2];
/** Huffman tables, quantisation tables, restart interval. */
const TABLES = [0xc4, 0xdb, 0xdd];
const isApplication = (marker: number) => marker >= 0xe0 && marker <= 0xef;
const COMMENT = 0xfe;

function jpeg(file: Uint8Array): Picture {
  const view = viewOf(file);
  const kept: Uint8Array[] = [];
  let frame: { width: number; height: number } | undefined;
  let orientation = 1;
  let scans = 0;
  for (let at = 2; ;) {
    if (view.getUint8(at) !== 0xff) refuse('broken');
    while (view.getUint8(at + 1) === 0xff) at += 1; // filling
    const marker = view.getUint8(at + 1);
    if (marker === MARKER.endOfImage) break;
    const end = at + 2 + view.getUint16(at + 2);
    const segment = cut(file, at, end);
    if (FRAMES.includes(marker)) {
      if (frame) refuse('broken');
      frame = { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
      kept.push(segment);
    } else if (TABLES.includes(marker)) kept.push(segment);
    else if (marker === MARKER.startOfScan) {
      const after = endOfScan(file, end);
      kept.push(cut(file, at, after));
      scans += 1;
      at = after;
      continue;
    } else if (marker === MARKER.app14) kept.push(...adobeTransform(segment));
    else if (marker === MARKER.app1) orientation = orientationOf(segment) ?? orientation;
    else if (!isApplication(marker) && marker !== COMMENT) refuse('broken');
    at = end;
  }
  if (!frame || scans === 0) return refuse('broken');
  const turned = orientation >= 5;
  return {
    mediaType: 'image/jpeg',
    width: turned ? frame.height : frame.width,
    height: turned ? frame.width : frame.height,
    bytes: joined([
      Uint8Array.of(0xff, MARKER.startOfImage),
      ...(orientation === 1 ? [] : [orientationSegment(orientation)]),
      ...kept,
      Uint8Array.of(0xff, MARKER.endOfImage),
    ]),
  };
}

/** Coded data ends at a marker that is neither a stuffed byte nor a restart. */
function endOfScan(file: Uint8Array, from: number): number {
  for (let at = from; at + 1 < file.length; at += 1) {
    if (file[at] !== 0xff) continue;
    const next = file[at + 1]!;
    if (next !== 0 && next !== 0xff && (next < 0xd0 || next > 0xd7)) return at;
  }
  return refuse('broken');
}

/** How colours are coded, in a segment of twelve bytes that says nothing else; another one of that number is left out. */
const adobeTransform = (segment: Uint8Array): Uint8Array[] =>
  segment.length === 16 && textAt(segment, 4) === 'Adob' ? [segment] : [];

const ORIENTATION_TAG = 0x0112;
/** The way up, 1 to 8, from the first directory of an Exif segment (CIPA DC-008). */
function orientationOf(segment: Uint8Array): number | undefined {
  if (textAt(segment, 4) !== 'Exif' || segment.length < 18) return undefined;
  const tiff = viewOf(segment.subarray(10));
  const isLittle = tiff.getUint16(0) === 0x4949;
  try {
    const directory = tiff.getUint32(4, isLittle);
    const entries = tiff.getUint16(directory, isLittle);
    for (let entry = 0; entry < entries; entry += 1) {
      const at = directory + 2 + 12 * entry;
      if (tiff.getUint16(at, isLittle) !== ORIENTATION_TAG) continue;
      const value = tiff.getUint16(at + 8, isLittle);
      return value >= 1 && value <= 8 ? value : undefined;
    }
  } catch (caught) {
    if (!(caught instanceof RangeError)) throw caught;
  }
  return undefined;
}

/** An Exif segment made anew, with the way up and nothing else. */
const orientationSegment = (orientation: number): Uint8Array =>
  // prettier-ignore
  Uint8Array.of(
    0xff, MARKER.app1, 0, 34, 0x45, 0x78, 0x69, 0x66, 0, 0, 0x4d, 0x4d, 0, 42, 0, 0, 0, 8,
    0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0,
  );

// PNG

const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const PNG_KEPT = ['IHDR', 'PLTE', 'tRNS', 'IDAT', 'IEND'];
/** A chunk whose name begins with a capital has to be understood. */
const isCritical = (name: string) => /^[A-Z]/.test(name);

function png(file: Uint8Array): Picture {
  const view = viewOf(file);
  const kept = [file.subarray(0, 8)];
  const names: string[] = [];
  for (let at = 8; names.at(-1) !== 'IEND';) {
    const end = at + 12 + view.getUint32(at);
    const name = textAt(file, at + 4);
    const chunk = cut(file, at, end);
    if (crc32(chunk.subarray(4, -4)) !== view.getUint32(end - 4)) refuse('broken');
    if (name === 'acTL') refuse('moving');
    if (PNG_KEPT.includes(name)) kept.push(chunk);
    else if (isCritical(name)) refuse('broken');
    names.push(name);
    at = end;
  }
  if (names[0] !== 'IHDR' || !names.includes('IDAT')) refuse('broken');
  return {
    mediaType: 'image/png',
    width: view.getUint32(16),
    height: view.getUint32(20),
    bytes: joined(kept),
  };
}

/** The check sum of PNG, annex D of the standard. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (crc >>> 8) ^ CRC_TABLE[(crc ^ byte) & 0xff]!;
  return (crc ^ 0xffffffff) >>> 0;
}
const CRC_TABLE = /* @__PURE__ */ Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

// WebP

/** Parts that tell of a picture rather than being it. */
const WEBP_LEFT_OUT = ['ICCP', 'EXIF', 'XMP '];
const HAS_ALPHA = 0x10;
const IS_ANIMATED = 0x02;

function webp(file: Uint8Array): Picture {
  const view = viewOf(file);
  const whole = cut(file, 0, 8 + view.getUint32(4, true));
  const parts = new Map<string, Uint8Array>();
  for (let at = 12; at < whole.length;) {
    const name = textAt(file, at);
    const bytes = view.getUint32(at + 4, true);
    const end = at + 8 + bytes + (bytes % 2);
    if (name === 'ANIM' || name === 'ANMF') refuse('moving');
    if (['VP8 ', 'VP8L', 'VP8X', 'ALPH'].includes(name)) {
      if (parts.has(name)) refuse('broken');
      parts.set(name, cut(whole, at, end));
    } else if (!WEBP_LEFT_OUT.includes(name)) refuse('broken');
    at = end;
  }
  const [lossy, lossless, extended, alpha] = ['VP8 ', 'VP8L', 'VP8X', 'ALPH'].map((name) => parts.get(name));
  if ((lossy === undefined) === (lossless === undefined) || (alpha && !extended)) refuse('broken');
  const kept: Uint8Array[] = [];
  if (extended) {
    const plain = extended.slice();
    if ((plain[8] ?? 0) & IS_ANIMATED) refuse('moving');
    plain[8] = (plain[8] ?? 0) & HAS_ALPHA;
    kept.push(plain);
    if (alpha) kept.push(alpha);
  }
  const size = lossy ? lossySize(lossy) : losslessSize(lossless!);
  kept.push((lossy ?? lossless)!);
  const body = joined(kept);
  const head = new Uint8Array(12);
  head.set(file.subarray(0, 12));
  viewOf(head).setUint32(4, 4 + body.length, true);
  return { mediaType: 'image/webp', ...size, bytes: joined([head, body]) };
}

/** Of a key frame (RFC 6386, 9.1). */
function lossySize(chunk: Uint8Array): { width: number; height: number } {
  const view = viewOf(chunk);
  if (
    view.getUint8(8) & 1 ||
    view.getUint8(11) !== 0x9d ||
    view.getUint8(12) !== 0x01 ||
    view.getUint8(13) !== 0x2a
  )
    refuse('broken');
  return { width: view.getUint16(14, true) & 0x3fff, height: view.getUint16(16, true) & 0x3fff };
}

function losslessSize(chunk: Uint8Array): { width: number; height: number } {
  const view = viewOf(chunk);
  if (view.getUint8(8) !== 0x2f) refuse('broken');
  const bits = view.getUint32(9, true);
  return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
}
