import { describe, expect, it } from 'vitest';
import { decodeText, recogniseText, UnreadableFile, type ByteSource } from './text-encoding.ts';

/** The bytes in pieces of `size`, so that characters are cut in two. */
function source(bytes: Uint8Array, size = 3): ByteSource {
  return async function* () {
    for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
  };
}

async function read(bytes: Uint8Array, size?: number) {
  const form = await recogniseText(source(bytes, size));
  let text = '';
  for await (const piece of decodeText(source(bytes, size), form.encoding)) text += piece;
  return { ...form, text };
}

const TEXT = 'code,recipe\r\n1,Käsespätzle für 2 – ½ Portion, 3 €\r\n';
const utf16be = (text: string) => Buffer.from(text, 'utf16le').swap16();
/** Windows-1252 differs from Latin-1 in 0x80 to 0x9f; the euro sign and the dash stand there. */
const windows1252 = (text: string) =>
  Buffer.from([...text].map((sign) => (sign === '€' ? 0x80 : sign === '–' ? 0x96 : sign.charCodeAt(0))));

describe('recogniseText', () => {
  it.each([
    ['UTF-8', Buffer.from(TEXT), 'utf-8'],
    ['UTF-8 with a byte order mark', Buffer.from(`\uFEFF${TEXT}`), 'utf-8'],
    ['UTF-16 LE with a byte order mark', Buffer.from(`\uFEFF${TEXT}`, 'utf16le'), 'utf-16le'],
    ['UTF-16 BE with a byte order mark', utf16be(`\uFEFF${TEXT}`), 'utf-16be'],
    ['UTF-16 LE without one', Buffer.from(TEXT, 'utf16le'), 'utf-16le'],
    ['UTF-16 BE without one', utf16be(TEXT), 'utf-16be'],
    ['Windows-1252', windows1252(TEXT), 'windows-1252'],
  ])('reads %s', async (_, bytes, encoding) =>
    expect(await read(bytes)).toEqual({ encoding, damaged: false, text: TEXT }),
  );

  it('sees a byte that is no UTF-8 far down the file', async () => {
    const bytes = Buffer.concat([Buffer.from('a,b\n'.repeat(100_000)), Buffer.from([0xe9])]);
    const { encoding, text } = await read(bytes, 65_536);
    expect(encoding).toBe('windows-1252');
    expect(text.endsWith('é')).toBe(true);
  });

  it('takes a UTF-8 file with one broken character for UTF-8, and says that it is damaged', async () => {
    const bytes = Buffer.concat([
      Buffer.from('Käse, Möhren, Grütze, '),
      Buffer.from([0xc3]),
      Buffer.from('x'),
    ]);
    expect(await read(bytes)).toEqual({
      encoding: 'utf-8',
      damaged: true,
      text: 'Käse, Möhren, Grütze, \uFFFDx',
    });
  });

  it('says that a byte is none in Windows-1252 either', async () => {
    expect(await read(Buffer.from([0x61, 0xe9, 0x2c, 0x81]))).toEqual({
      encoding: 'windows-1252',
      damaged: true,
      text: 'aé,\uFFFD',
    });
  });

  it('says that half a character is missing at the end of UTF-16', async () => {
    const bytes = Buffer.from('\uFEFFcode,recipe', 'utf16le');
    expect(await read(bytes.subarray(0, -1))).toMatchObject({ encoding: 'utf-16le', damaged: true });
  });

  const noise = Buffer.from(Array.from({ length: 2000 }, (_, at) => (at * 7919) % 256));
  it.each([
    ['nothing', Buffer.alloc(0), /empty/],
    [
      'a JPEG',
      Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), noise]),
      /photo \(JPEG\).*Save the table as CSV/,
    ],
    ['a PNG', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), /picture \(PNG\)/],
    ['a photo of a phone', Buffer.from('\0\0\0\x18ftypheic'), /HEIC/],
    ['a workbook', Buffer.from('PK\x03\x04rest'), /spreadsheet workbook/],
    ['a PDF', Buffer.from('%PDF-1.7'), /PDF/],
    ['bytes without order', noise, /not a CSV file/],
    [
      'a zero byte far down',
      Buffer.concat([Buffer.from('a,b\n'.repeat(50_000)), Buffer.from([0])]),
      /not a CSV file/,
    ],
    ['control characters', Buffer.from('\x01\x02\x03\x04 text'), /not a CSV file/],
  ])('refuses %s', async (_, bytes, message) => {
    const refused = recogniseText(source(bytes, 4096));
    await expect(refused).rejects.toThrow(UnreadableFile);
    await expect(refused).rejects.toThrow(message);
  });
});
