import { error, json } from '@sveltejs/kit';
import { say } from '$lib/texts/say.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import type { RequestHandler } from './$types';
import { MAX_UPLOAD_BYTES, takeUpload, tooLarge } from '../uploads.ts';

/** Takes a file as the body of the request, so that it goes to disk as it comes in; its name is in `x-file-name`, URI-encoded. */
export const POST: RequestHandler = async ({ request, locals: { app } }) => {
  if (Number(request.headers.get('content-length')) > MAX_UPLOAD_BYTES) error(413, tooLarge());
  if (!request.body)
    error(422, say('The file is empty. Choose a CSV file with a header row and at least one row below it.'));
  const body = request.body;
  const location = await takeUpload(
    app,
    fileName(request.headers.get('x-file-name')),
    body.values({ preventCancel: true }),
  ).catch(async (caught: unknown) => {
    if (request.signal.aborted) error(400, say('The upload was incomplete, so nothing was kept.'));
    // A browser reads the answer only when all it sends is taken.
    await body.pipeTo(new WritableStream()).catch(() => undefined);
    return toHttpError(caught);
  });
  return json({ location }, { status: 201, headers: { location } });
};

function fileName(header: string | null): string {
  try {
    return decodeURIComponent(header ?? '').slice(0, 200) || 'file';
  } catch {
    return 'file';
  }
}
