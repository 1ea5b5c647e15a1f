import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { Readable } from 'node:stream';
import type { App } from '$lib/server/app.ts';

const TYPES = { sqlite: 'application/vnd.sqlite3', json: 'application/json' } as const;

/** Sends a file to be saved. @returns the response, and when all of it is sent or nobody wants it any more */
export async function fileResponse(
  path: string,
  fileName: string,
  kind: keyof typeof TYPES,
): Promise<{ readonly response: Response; readonly sent: Promise<unknown> }> {
  const { size } = await stat(path);
  const stream = createReadStream(path);
  const response = new Response(Readable.toWeb(stream) as ReadableStream, {
    headers: {
      'content-type': TYPES[kind],
      'content-length': String(size),
      'content-disposition': `attachment; filename="${fileName}"`,
      'cache-control': 'no-store',
    },
  });
  // Whoever goes away in the middle makes an error of the stream, and none of the program.
  return { response, sent: new Promise((resolve) => stream.once('close', resolve)) };
}

/** Sends everything as it is now, to be saved. @throws as `Backups.withFile` */
export function everything(app: App, kind: keyof typeof TYPES): Promise<Response> {
  const answered = Promise.withResolvers<Response>();
  app.backups
    .withFile(kind, async (path) => {
      const { response, sent } = await fileResponse(path, `ridgelarder-${app.today()}.${kind}`, kind);
      answered.resolve(response);
      await sent;
    })
    .catch(answered.reject);
  return answered.promise;
}
