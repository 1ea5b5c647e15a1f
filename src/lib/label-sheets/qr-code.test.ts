import fc from 'fast-check';
import jsQR from 'jsqr';
import { expect, it } from 'vitest';
import { lotHref } from '$lib/lot-href.ts';
import { qrCode, qrModules } from './qr-code.ts';

/** Modules as an image of some pixels each, read by a QR reader that is not ours. */
function decode(modules: readonly (readonly boolean[])[]): string | undefined {
  const scale = 4;
  const side = modules.length * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++)
      if (modules[Math.floor(y / scale)]?.[Math.floor(x / scale)])
        pixels.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
  return jsQR(pixels, side, side)?.data;
}

/** The modules that the path draws. */
function modulesOf({ size, path }: ReturnType<typeof qrCode>): boolean[][] {
  const modules = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
    modules[Number(y)]?.fill(true, Number(x), Number(x) + Number(width));
  return modules;
}

it('is read back as the address of the lot, whatever its code', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }), (code) => {
      fc.pre(code.isWellFormed());
      const address = `http://192.168.1.20:4810${lotHref(code)}`;
      expect(decode(qrModules(address))).toBe(address);
    }),
    { numRuns: 60 },
  );
});

it('draws its modules and leaves the quiet zone blank', () => {
  const qr = qrCode('http://192.168.1.20:4810/shelf/D01');
  const modules = modulesOf(qr);
  expect(decode(modules)).toBe('http://192.168.1.20:4810/shelf/D01');
  const inner = modules.slice(4, -4).map((row) => row.slice(4, -4));
  expect(modules.flat().filter(Boolean)).toHaveLength(inner.flat().filter(Boolean).length);
  expect(inner[0]?.[0]).toBe(true);
});
