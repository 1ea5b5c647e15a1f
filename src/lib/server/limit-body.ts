import { error } from '@sveltejs/kit';
import { say, sayNumber } from '../texts/say.ts';

/** More than any form of the program holds that is filled in by hand. */
const LARGEST_FORM_BYTES = 1_000_000;
/** And more fields: a page of a hundred lots has a thousand. */
const MOST_FIELDS = 20_000;
/** Routes and actions of pages that take files or data, and say themselves how much; what is larger than any of them the server refuses (`LARGEST_UPLOAD` in `tooling/serve.ts`). */
const TAKING_FILES: ReadonlySet<string> = new Set([
  '/api/plan',
  '/kitchen/foods?/import',
  '/kitchen/recipes/[id]/photo',
  '/settings/backups?/upload',
  '/shelf/[code]/photo',
  '/shelf/import?/file',
  '/shelf/import/upload',
  '/trips/[id]/notes.json',
  '/trips/[id]/route?/import',
  '/trips/new?/open',
]);
/** What is pasted, or a page that a browser has saved, is longer than what is typed, bytes. */
const LARGER_FORMS: Readonly<Record<string, number>> = {
  '/kitchen/recipes/paste?/paste': 4_000_000,
  '/shelf/import?/paste': 4_000_000,
};
const AMPERSAND = 0x26;

/**
 * @param route SvelteKit's id of the route that was asked
 * @param search of its address, which names the action of a page
 * @returns the request; where it sends more than a form can hold, whoever reads its body gets 413. All that is sent is taken all the same, as a browser reads
 *   the answer only then.
 * @throws HttpError 415 for a body that is compressed: a few bytes of it could stand for any number
 */
export function limitBody(request: Request, route: string | null, search = ''): Request {
  const coding = request.headers.get('content-encoding') ?? 'identity';
  if (coding !== 'identity')
    error(
      415,
      say('The request is compressed ({coding}), which is not accepted. Send it uncompressed.', { coding }),
    );
  const asked = `${route ?? ''}${/^\?\/\w+/.exec(search)?.[0] ?? ''}`;
  if (!request.body || TAKING_FILES.has(asked)) return request;
  const most = LARGER_FORMS[asked] ?? LARGEST_FORM_BYTES;
  let bytes = 0;
  let fields = 0;
  const isTooMuch = () => bytes > most || fields > MOST_FIELDS;
  const body = request.body.pipeThrough(
    new TransformStream<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>({
      transform(piece, controller) {
        bytes += piece.byteLength;
        for (
          let at = piece.indexOf(AMPERSAND);
          at >= 0 && !isTooMuch();
          at = piece.indexOf(AMPERSAND, at + 1)
        )
          fields += 1;
        if (!isTooMuch()) controller.enqueue(piece);
      },
      flush() {
        if (isTooMuch()) error(413, bytes > most ? tooLarge(most) : tooMany());
      },
    }),
  );
  return new Request(request, { body, duplex: 'half' });
}

/**
 * @returns the request, whose form is remembered when it is read, so that it can be sent again; one that is broken is refused with 400
 */
export function rememberForm(request: Request, locals: Pick<App.Locals, 'sent'>): Request {
  const read = request.formData.bind(request);
  request.formData = async () => {
    locals.sent = await read().catch((failure: unknown) => {
      if (typeof failure === 'object' && failure !== null && 'status' in failure) throw failure;
      return error(400, say('The form broke off or is incomplete, so nothing was changed. Send it again.'));
    });
    return locals.sent;
  };
  return request;
}

const tooMany = (): string =>
  say(
    'That has more than {most, number} fields, the most that can be sent at once, so nothing was changed. Send less at once.',
    { most: MOST_FIELDS },
  );

/** Takes what nobody has read of a body, and forgets it: a browser reads an answer only when all is taken that it sends. */
export async function takeRest({ body }: Request): Promise<void> {
  if (body && !body.locked) await body.pipeTo(new WritableStream()).catch(() => undefined);
}

/** @returns what is said of a body that is too large */
export const tooLarge = (mostBytes: number): string =>
  say(
    'That was larger than {most} MB, the most that can be sent here, so nothing was changed. Send less at once.',
    {
      most: sayNumber(mostBytes / 1e6),
    },
  );
