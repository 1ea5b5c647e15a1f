import { spawn } from 'node:child_process';
import { on, once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';
import { ROOT } from './run.ts';

/** What `npm start` hands to Node. */
const START = (
  JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8')) as { scripts: { start: string } }
).scripts.start
  .split(' ')
  .slice(1);

export type BuiltApp = {
  /** Address of the app, without a slash at the end. */
  readonly origin: string;
  /** Where pages can only be read, if the environment asks for it; else empty. */
  readonly readersOrigin: string;
  readonly dataFolder: string;
  /** Of its process. */
  readonly pid: number;
  /** Ends it as Ctrl-C or a service manager does and removes its data, unless they are kept for another start. @returns its exit code */
  stop(keepData?: boolean, signal?: 'SIGTERM' | 'SIGINT'): Promise<number | null>;
};

/**
 * Starts the built app as `npm start` does, in a process of its own, on a free port with an empty data folder.
 *
 * @param environment variables that the app is started with
 * @param again a stopped one to start again at the same address with the data it kept
 * @param hear gets every line that it writes
 * @throws where it ends before it says where it is
 */
export async function startBuiltApp(
  environment: Readonly<Record<string, string>> = {},
  again?: BuiltApp,
  hear?: (line: string) => void,
): Promise<BuiltApp> {
  const dataFolder = again?.dataFolder ?? mkdtempSync(path.join(tmpdir(), 'ridgelarder-'));
  const port = again ? new URL(again.origin).port : '0';
  const server = spawn(process.execPath, START, {
    cwd: ROOT,
    env: { ...process.env, ...environment, PORT: port, RIDGELARDER_DATA: dataFolder },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = once(server, 'exit') as Promise<[number | null]>;
  const stop = async (keepData = false, signal: 'SIGTERM' | 'SIGINT' = 'SIGTERM') => {
    server.kill(signal);
    const [code] = await ended;
    if (!keepData) rmSync(dataFolder, { recursive: true });
    return code;
  };
  const lines = createInterface({ input: server.stdout });
  if (hear) lines.on('line', hear);
  let origin = '';
  for await (const [line] of on(lines, 'line', { close: ['close'] }) as AsyncIterable<[string]>) {
    origin ||= /Ridgelarder is at (\S+)/.exec(line)?.[1] ?? '';
    const readersOrigin = /Phones .* at (\S+),/.exec(line)?.[1] ?? '';
    if (origin && (readersOrigin || !environment['RIDGELARDER_READERS']))
      return { origin, readersOrigin, dataFolder, pid: server.pid ?? 0, stop };
  }
  throw new Error('The app ended before it said where it is.');
}

/** Variables for `startBuiltApp` with which the app's clock begins at an instant, ISO 8601, and goes on from there. */
export const clockFrom = (at: string): Readonly<Record<string, string>> => ({
  CLOCK_BEGINS_AT: at,
  NODE_OPTIONS: `--import ${pathToFileURL(path.join(import.meta.dirname, 'moved-clock.ts')).href}`,
});

/** Fills an empty shelf with the demo, as its button does. @returns the path of its trip */
export async function fillDemo(origin: string): Promise<string> {
  const response = await fetch(`${origin}/demo`, {
    method: 'POST',
    headers: { origin, accept: 'text/html', 'content-type': 'application/x-www-form-urlencoded' },
    redirect: 'manual',
  });
  return new URL(response.headers.get('location') ?? '', origin).pathname;
}
