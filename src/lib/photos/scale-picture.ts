/** Longest side of a picture that is sent, pixels: a phone or a page shows no more. */
const LONGEST_PX = 1280;
const QUALITY = 0.82;

/** In a browser: @returns the picture with its longest side of at most 1280 pixels, the right way up, as JPEG; `undefined` where it cannot be drawn */
export async function scaledDown(file: File): Promise<File | undefined> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const scale = Math.min(1, LONGEST_PX / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const context = canvas.getContext('2d');
  if (!context) return undefined;
  context.fillStyle = '#fff'; // what was see-through
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', QUALITY));
  return blob ? new File([blob], 'photo.jpg', { type: blob.type }) : undefined;
}
