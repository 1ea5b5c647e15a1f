import { readFile } from 'node:fs/promises';
import { error } from '@sveltejs/kit';
import { stripPicture, type Picture, type Unfit } from '../photos/strip-picture.ts';
import { say, sayNumber, text, type Text } from '../texts/say.ts';
import type { App } from './app.ts';
import type { PhotoOf } from './photo-repository.ts';

/** What a phone's camera makes of one picture. */
export const MOST_PHOTO_BYTES = 8_000_000;

const UNFIT_WORDS: Readonly<Record<Unfit, Text>> = {
  'unknown kind': text('This is no JPEG, PNG or WebP picture. Save it as one of these first.'),
  broken: text('This picture is damaged or of a kind that cannot be read. Save it again as JPEG.'),
  moving: text('This picture moves. Choose a still one.'),
  'too many pixels': text('This picture has too many pixels. Make it smaller first.'),
};

/**
 * Takes a picture from a form, takes its metadata out and keeps it; or removes the one that is there, where the form says so.
 *
 * @returns what is wrong, for the user; `undefined` where it is kept
 * @throws HttpError as `Incoming.form`; UserError where there is no such lot or recipe
 */
export function takePhoto(app: App, request: Request, of: PhotoOf): Promise<string | undefined> {
  return app.incoming.form(request, MOST_PHOTO_BYTES, async ({ form, file }) => {
    if (form.get('then') === 'remove') {
      await app.photos.remove(of);
      return undefined;
    }
    if (!file || file.bytes === 0) return say('No picture was chosen. Choose or take one first.');
    if (file.bytes > MOST_PHOTO_BYTES)
      return say('This picture has more than {most} MB. Make it smaller first.', {
        most: sayNumber(MOST_PHOTO_BYTES / 1e6),
      });
    const picture = stripPicture(new Uint8Array(await readFile(file.path)));
    if (typeof picture === 'string') return say(UNFIT_WORDS[picture]);
    await app.photos.keep(of, picture);
    return undefined;
  });
}

/** @returns the picture as an answer; its address changes with it, so that a browser may keep it */
export function photoAnswer(photo: Pick<Picture, 'mediaType' | 'bytes'> | undefined): Response {
  if (!photo) error(404, say('There is no photo here.'));
  return new Response(Uint8Array.from(photo.bytes), {
    headers: {
      'content-type': photo.mediaType,
      'content-length': String(photo.bytes.length),
      'cache-control': 'private, max-age=31536000, immutable',
    },
  });
}
