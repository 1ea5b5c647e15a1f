import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { JPEG, PNG, WEBP } from '../../../tests/support/pictures.ts';
import { stripPicture, type Picture } from './strip-picture.ts';

const joined = (...parts: (Uint8Array | readonly number[])[]): Uint8Array =>
  Uint8Array.from(parts.flatMap((part) => [...part]));
const letters = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
const read = (file: Uint8Array): Picture => {
  const picture = stripPicture(file);
  if (typeof picture === 'string') throw new Error(picture);
  return picture;
};
const SECRET = letters('52.5 N 13.4 E, taken by Ada');
const holds = ({ bytes }: Picture, text: string) => Buffer.from(bytes).includes(text);

/** A JPEG segment of a marker. */
const segment = (marker: number, ...content: number[]): number[] => {
  const length = content.length + 2;
  return [0xff, marker, length >> 8, length & 0xff, ...content];
};
/** Exif with the way up and, behind it, a secret; little-endian as phones write it, or big. */
const exif = (orientation: number, isLittle = true): number[] => {
  const short = (value: number) => (isLittle ? [value, 0] : [0, value]);
  const long = (value: number) => (isLittle ? [value, 0, 0, 0] : [0, 0, 0, value]);
  const tag = isLittle ? [0x12, 0x01] : [0x01, 0x12];
  return segment(
    0xe1,
    ...letters('Exif'),
    ...[0, 0],
    ...letters(isLittle ? 'II' : 'MM'),
    ...short(42),
    ...long(8),
    ...[...short(1), ...tag, ...short(3), ...long(1), ...short(orientation), 0, 0],
    ...long(0),
    ...SECRET,
  );
};
const inJpeg = (...segments: number[][]) => joined(JPEG.subarray(0, 2), ...segments, JPEG.subarray(2));
const chunk = (name: string, content: readonly number[]): number[] => {
  const body = joined(letters(name), content);
  const number = (value: number) => [value >>> 24, (value >>> 16) & 255, (value >>> 8) & 255, value & 255];
  return [...number(content.length), ...body, ...number(crc32(body))];
};
const riff = (name: string, content: readonly number[]): number[] => [
  ...letters(name),
  ...[content.length & 255, content.length >> 8, 0, 0],
  ...content,
  ...(content.length % 2 ? [0] : []),
];
const inWebp = (...parts: number[][]): Uint8Array => {
  const body = joined(letters('WEBP'), ...parts);
  return joined(letters('RIFF'), [body.length & 255, body.length >> 8, 0, 0], body);
};

describe('a picture that tells nothing', () => {
  it.each([
    ['image/jpeg', JPEG],
    ['image/png', PNG],
    ['image/webp', WEBP],
  ])('stays as it is: %s', (mediaType, file) => {
    expect(read(file)).toEqual({ mediaType, width: 6, height: 4, bytes: file });
  });
});

describe('of a JPEG', () => {
  it('place, camera, comment, profile and what is behind its end are left out', () => {
    const file = joined(
      inJpeg(exif(1), segment(0xfe, ...SECRET), segment(0xe2, ...letters('ICC_PROFILE'), ...SECRET)),
      SECRET,
    );
    expect(holds({ ...read(JPEG), bytes: file }, 'Ada')).toBe(true);
    expect(read(file)).toEqual(read(JPEG));
  });

  it.each([true, false])('the way up stays, and nothing else of its Exif; little-endian: %s', (isLittle) => {
    for (const way of [2, 3, 4, 5, 6, 7, 8]) {
      const picture = read(inJpeg(exif(way, isLittle)));
      expect(holds(picture, 'Ada')).toBe(false);
      expect([picture.width, picture.height]).toEqual(way >= 5 ? [4, 6] : [6, 4]);
      // what was written is read the same again
      expect(read(picture.bytes)).toEqual(picture);
      expect(picture.bytes.length).toBe(JPEG.length + 36);
    }
    expect(read(inJpeg(exif(9, isLittle)))).toEqual(read(JPEG));
  });

  it.each([
    ['without a frame', joined(JPEG.subarray(0, 2), [0xff, 0xd9])],
    ['broken off', JPEG.subarray(0, JPEG.length - 20)],
    ['in a coding that browsers do not read', joined(JPEG.subarray(0, 2), segment(0xc9, 8, 0, 4, 0, 6, 1))],
  ])('%s, it is refused', (_, file) => expect(stripPicture(file)).toBe('broken'));
});

describe('of a PNG', () => {
  const withChunks = (...chunks: number[][]) => joined(PNG.subarray(0, 33), ...chunks, PNG.subarray(33));

  it('texts and times are left out', () => {
    const file = joined(withChunks(chunk('tEXt', SECRET), chunk('eXIf', SECRET), chunk('tIME', [1])), SECRET);
    expect(read(file)).toEqual(read(PNG));
  });

  it('one that moves, that has parts nobody knows or a wrong check sum is refused', () => {
    expect(stripPicture(withChunks(chunk('acTL', [0])))).toBe('moving');
    expect(stripPicture(withChunks(chunk('ABCD', [0])))).toBe('broken');
    const spoiled = PNG.slice();
    spoiled[20] = 7;
    expect(stripPicture(spoiled)).toBe('broken');
  });

  it('more pixels than may be are refused', () => {
    const head = chunk('IHDR', [0, 1, 0, 0, 0, 1, 0, 0, 8, 2, 0, 0, 0]);
    expect(stripPicture(joined(PNG.subarray(0, 8), head, PNG.subarray(33)))).toBe('too many pixels');
  });
});

describe('of a WebP', () => {
  const frame = [...WEBP.subarray(30)];
  const head = (flags: number) => riff('VP8X', [flags, 0, 0, 0, 5, 0, 0, 3, 0, 0]);

  it('profile, Exif and XMP are left out, with the flags that announce them', () => {
    const file = inWebp(head(0x2c), riff('ICCP', SECRET), frame, riff('EXIF', SECRET), riff('XMP ', SECRET));
    expect(read(file)).toEqual(read(WEBP));
  });

  it('one that moves or has parts nobody knows is refused', () => {
    expect(stripPicture(inWebp(head(0x02), riff('ANIM', [0, 0])))).toBe('moving');
    expect(stripPicture(inWebp(head(0), riff('WHAT', [0, 0]), frame))).toBe('broken');
  });
});

it('nothing else is taken, and no file makes it fail otherwise', () => {
  expect(stripPicture(Uint8Array.from(letters('<svg xmlns="http://www.w3.org/2000/svg"/>')))).toBe(
    'unknown kind',
  );
  expect(stripPicture(new Uint8Array())).toBe('unknown kind');
  const known = fc.constantFrom(JPEG, PNG, WEBP);
  const spoilt = fc
    .tuple(known, fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 255 })), { maxLength: 6 }), fc.nat())
    .map(([file, changes, end]) => {
      const copy = file.slice(0, 1 + (end % (file.length + 40)));
      for (const [at, byte] of changes) copy[at % copy.length] = byte;
      return copy;
    });
  fc.assert(
    fc.property(fc.oneof(fc.uint8Array({ maxLength: 200 }), spoilt), (file) => {
      const picture = stripPicture(file);
      // what is taken once is taken again, and changes no more
      if (typeof picture !== 'string') expect(stripPicture(picture.bytes)).toEqual(picture);
    }),
    { numRuns: 2000 },
  );
});
