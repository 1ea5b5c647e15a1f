export const LOG_KINDS = ['off', 'json', 'text'] as const;
export type LogKind = (typeof LOG_KINDS)[number];

/** One request that was answered. Nothing in it tells who asked, for what, or what was sent. */
export type LoggedRequest = {
  /** When it came in, ISO 8601. */
  readonly time: string;
  readonly method: string;
  /** Of the program, such as `/trips/[id]/menu`; `null` where it has no such page. Never the path, which holds codes and words that were looked for. */
  readonly route: string | null;
  readonly status: number;
  /** Until the answer began. */
  readonly durationMs: number;
};

/** @returns what `RIDGELARDER_LOG` asks for; `undefined` where it is no kind of log */
export function logKind(wanted = process.env['RIDGELARDER_LOG'] || 'off'): LogKind | undefined {
  return LOG_KINDS.find((kind) => kind === wanted);
}

/** @returns the line for a log, without an end of line; `undefined` where none is kept */
export function logLine(request: LoggedRequest, kind: LogKind | undefined): string | undefined {
  if (kind === 'json') return JSON.stringify(request);
  const { time, method, route, status, durationMs } = request;
  return kind === 'text' ? `${time} ${status} ${method} ${route ?? '-'} ${durationMs} ms` : undefined;
}

/**
 * Answers a request and writes its line to standard output.
 *
 * @param statusOf what status an error that `answer` throws is answered with
 */
export async function logged(
  { method, route }: Pick<LoggedRequest, 'method' | 'route'>,
  answer: () => Promise<Response>,
  statusOf: (thrown: unknown) => number,
): Promise<Response> {
  const began = performance.now();
  const time = new Date().toISOString();
  const write = (status: number) => {
    const durationMs = Math.round((performance.now() - began) * 10) / 10;
    const line = logLine({ time, method, route, status, durationMs }, logKind());
    if (line !== undefined) process.stdout.write(`${line}\n`);
  };
  try {
    const response = await answer();
    write(response.status);
    return response;
  } catch (thrown) {
    write(statusOf(thrown));
    throw thrown;
  }
}
