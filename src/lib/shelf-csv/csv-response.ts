/** @returns an HTTP response that sends a CSV file as it is made, to be saved under a name. */
export function csvResponse(pieces: AsyncIterable<string> | Iterable<string>, fileName: string): Response {
  const source = (async function* () {
    yield* pieces;
  })();
  const encoder = new TextEncoder();
  const body = new ReadableStream<Uint8Array>({
    async pull(controller) {
      const { done, value } = await source.next();
      if (done) controller.close();
      else controller.enqueue(encoder.encode(value));
    },
    async cancel() {
      await source.return();
    },
  });
  return new Response(body, {
    headers: {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename*=UTF-8''${encodeURIComponent(fileName)}`,
      'cache-control': 'no-store',
    },
  });
}
