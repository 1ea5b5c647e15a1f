import { say, text, type Text } from '../texts/say.ts';

/** Opens the same bytes from their beginning at each call. */
export type ByteSource = () => AsyncIterable<Uint8Array>;

export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** `damaged`: some bytes do not fit the encoding; they are decoded to U+FFFD, and whoever reads on must look for it. */
export type TextForm = { readonly encoding: TextEncoding; readonly damaged: boolean };

/** A file that cannot be read as CSV at all. The message is for the user: what it is and what to do. */
export class UnreadableFile extends Error {
  override name = 'UnreadableFile';
}

const HEAD_BYTES = 64 * 1024;

/** First bytes of files that people take for a text, with what to tell them. */
const OTHER_FILES: readonly {
  readonly starts: readonly number[];
  readonly at?: number;
  readonly is: Text;
}[] = [
  { starts: [0xff, 0xd8, 0xff], is: text('a photo (JPEG)') },
  { starts: [0x89, 0x50, 0x4e, 0x47], is: text('a picture (PNG)') },
  { starts: [0x47, 0x49, 0x46, 0x38], is: text('a picture (GIF)') },
  { starts: [0x52, 0x49, 0x46, 0x46], is: text('a picture or a sound (RIFF)') },
  { starts: [0x66, 0x74, 0x79, 0x70], at: 4, is: text('a photo or a film (HEIC or MP4)') },
  { starts: [0x25, 0x50, 0x44, 0x46], is: text('a PDF document') },
  { starts: [0x50, 0x4b, 0x03, 0x04], is: text('a spreadsheet workbook or a zip archive') },
  { starts: [0xd0, 0xcf, 0x11, 0xe0], is: text('a spreadsheet workbook or a document') },
  { starts: [0x1f, 0x8b], is: text('a compressed file (gzip)') },
];

const SAVE_AS_CSV = text('Save the table as CSV in your spreadsheet program and choose that file.');

/** @returns what a file is that is no text, such as "a compressed file (gzip)", by its first bytes; `undefined` where they are none of those */
export function otherFile(head: Uint8Array): string | undefined {
  const other = OTHER_FILES.find(({ starts, at = 0 }) =>
    starts.every((byte, index) => head[at + index] === byte),
  );
  return other && say(other.is);
}

/**
 * Reads through the whole source once and says how to decode it, so that a byte far down cannot be misread silently.
 *
 * @throws UnreadableFile when the source is empty or is no text.
 */
export async function recogniseText(source: ByteSource): Promise<TextForm> {
  const head = await firstBytes(source, HEAD_BYTES);
  if (head.length === 0)
    throw new UnreadableFile(
      say('The file is empty. Choose a CSV file with a header row and at least one row below it.'),
    );
  const other = otherFile(head);
  if (other !== undefined)
    throw new UnreadableFile(
      `${say('This is {what}, not a CSV file.', { what: other })} ${say(SAVE_AS_CSV)}`,
    );

  const wide = utf16(head);
  if (wide) return { encoding: wide, damaged: !(await decodesCleanly(source, wide)) };
  if (await decodesCleanly(source, 'utf-8')) return { encoding: 'utf-8', damaged: false };

  const asUtf8 = await countCharacters(source, 'utf-8');
  if (asUtf8.readable > 0 && asUtf8.readable >= asUtf8.unreadable)
    return { encoding: 'utf-8', damaged: true };
  const asWestern = await countCharacters(source, 'windows-1252');
  return { encoding: 'windows-1252', damaged: asWestern.unreadable > 0 };
}

/** Decodes a source piece by piece; a byte order mark is left out. */
export async function* decodeText(source: ByteSource, encoding: TextEncoding): AsyncGenerator<string> {
  const decoder = new TextDecoder(encoding);
  // The five bytes that Windows-1252 leaves undefined; the platform's decoder turns them into control characters.
  const honest =
    encoding === 'windows-1252'
      ? (text: string) => text.replace(/[\u0081\u008d\u008f\u0090\u009d]/g, '\uFFFD')
      : (text: string) => text;
  for await (const bytes of source()) yield honest(decoder.decode(bytes, { stream: true }));
  yield honest(decoder.decode());
}

async function firstBytes(source: ByteSource, count: number): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  let length = 0;
  for await (const piece of source()) {
    pieces.push(piece);
    length += piece.length;
    if (length >= count) break;
  }
  return Buffer.concat(pieces).subarray(0, count);
}

/** By the byte order mark, or by the zero bytes that every second place of plain Latin text has in UTF-16. */
function utf16(head: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (head[0] === 0xff && head[1] === 0xfe) return 'utf-16le';
  if (head[0] === 0xfe && head[1] === 0xff) return 'utf-16be';
  const zeros = [0, 0];
  head.forEach((byte, index) => {
    if (byte === 0) zeros[index % 2]!++;
  });
  const [even, odd] = zeros as [number, number];
  const most = head.length / 2;
  if (odd > 0.4 * most && even < 0.02 * most) return 'utf-16le';
  if (even > 0.4 * most && odd < 0.02 * most) return 'utf-16be';
  return undefined;
}

/** @throws UnreadableFile at the first character that no text holds. */
async function decodesCleanly(source: ByteSource, encoding: TextEncoding): Promise<boolean> {
  const decoder = new TextDecoder(encoding, { fatal: true });
  let clean = true;
  try {
    for await (const bytes of source()) refuseBinary(decoder.decode(bytes, { stream: true }));
    decoder.decode();
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    clean = false;
  }
  return clean;
}

async function countCharacters(
  source: ByteSource,
  encoding: TextEncoding,
): Promise<{ readable: number; unreadable: number }> {
  const count = { readable: 0, unreadable: 0 };
  for await (const text of decodeText(source, encoding)) {
    refuseBinary(text);
    const unreadable = text.match(/\uFFFD/g)?.length ?? 0;
    count.unreadable += unreadable;
    count.readable += (text.match(/[^\0-\x7f]/g)?.length ?? 0) - unreadable;
  }
  return count;
}

function refuseBinary(text: string): void {
  const controls = text.match(/[\0-\x08\x0e-\x1f\x7f]/g)?.length ?? 0;
  if (text.includes('\0') || controls > text.length / 100)
    throw new UnreadableFile(
      `${say('This file contains characters that never occur in text, so it is not a CSV file.')} ${say(SAVE_AS_CSV)}`,
    );
}
