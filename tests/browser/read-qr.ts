import jsQR from 'jsqr';
import type { Locator } from 'playwright';

/** What a QR reader of others makes of what is on the screen, three times as large. */
export async function readQr(code: Locator): Promise<string | undefined> {
  const page = code.page();
  await page.evaluate(() => (document.documentElement.style.zoom = '3'));
  const png = (await code.screenshot()).toString('base64');
  await page.evaluate(() => (document.documentElement.style.zoom = ''));
  const { greys, width, height } = await page.evaluate(async (encoded) => {
    const bytes = Uint8Array.from(atob(encoded), (character) => character.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const { width, height } = image;
    const context = new OffscreenCanvas(width, height).getContext('2d')!;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, width, height);
    const reds = data.filter((_, index) => index % 4 === 0);
    return { greys: Array.from(reds, (red) => String.fromCharCode(red >> 1)).join(''), width, height };
  }, png);
  const pixels = Uint8ClampedArray.from(
    [...greys].flatMap((grey) => [...Array<number>(3).fill(2 * grey.charCodeAt(0)), 255]),
  );
  return jsQR(pixels, width, height)?.data;
}
