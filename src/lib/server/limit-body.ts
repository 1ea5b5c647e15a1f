import { error } from '@sveltejs/kit';
import { say, sayNumber } from '../texts/say.ts';

/** More than any form of the program holds that is filled in by hand. */
const LARGEST_FORM_BYTES = 1_000_000;
/** These take files or data, and say themselves how much; what is larger than any of them the server refuses (`LARGEST_UPLOAD` in `tooling/serve.ts`). */
const TAKING_FILES: readonly (string | null)[] = [
  '/api/plan',
  '/kitchen/foods',
  '/kitchen/recipes/paste',
  '/settings/backups',
  '/shelf/import',
  '/shelf/import/upload',
  '/trips/[id]/notes.json',
  '/trips/[id]/route',
  '/trips/new',
];

/**
 * @param route SvelteKit's id of the route that was asked
 * @returns the request; where it sends more than a form can hold, whoever reads its body gets 413. All that is sent is taken all the same, as a browser reads
 *   the answer only then.
 * @throws HttpError 415 for a body that is compressed: a few bytes of it could stand for any number
 */
export function limitBody(request: Request, route: string | null): Request {
  const coding = request.headers.get('content-encoding') ?? 'identity';
  if (coding !== 'identity')
    error(
      415,
      say('The request is compressed ({coding}), which is not accepted. Send it uncompressed.', { coding }),
    );
  if (!request.body || TAKING_FILES.includes(route)) return request;
  let bytes = 0;
  const body = request.body.pipeThrough(
    new TransformStream<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>({
      transform(piece, controller) {
        bytes += piece.byteLength;
        if (bytes <= LARGEST_FORM_BYTES) controller.enqueue(piece);
      },
      flush() {
        if (bytes > LARGEST_FORM_BYTES) error(413, tooLarge(LARGEST_FORM_BYTES));
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
