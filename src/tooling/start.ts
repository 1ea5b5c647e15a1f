/* `npm start`: builds where needed, serves the app, to this machine only where nothing else is asked for, and stops on Ctrl-C. */
import { Passphrase, SET_IT } from '../lib/server/access/passphrase.ts';
import { dataFolder } from '../lib/server/data-folder.ts';
import { ensureBuilt } from './build.ts';
import { selfCheck } from './self-check.ts';
import { problemWith, serve, type Wanted } from './serve.ts';

const DEFAULT_PORT = 4810;

function fail(message: string): never {
  console.error(message);
  process.exit(1);
}

const message = (error: unknown) => (error instanceof Error ? error.message : String(error));
const port = Number(process.env['PORT'] ?? DEFAULT_PORT);
if (!Number.isInteger(port) || port < 0 || port > 65_535)
  fail(
    `PORT is "${process.env['PORT']}", which is no port. Set it to a number from 1 to 65535, or leave it out for ${DEFAULT_PORT}.`,
  );
const stored = await new Passphrase(dataFolder()).stored().catch((error: unknown) => fail(message(error)));
const wanted: Wanted = {
  port,
  address: process.env['RIDGELARDER_HOST'] || undefined,
  readersAt: process.env['RIDGELARDER_READERS'] || undefined,
  behind: process.env['RIDGELARDER_ORIGIN'] || undefined,
  names: (process.env['RIDGELARDER_NAMES'] ?? '')
    .toLowerCase()
    .split(',')
    .map((name) => name.trim())
    .filter(Boolean),
  hasPassphrase: stored !== undefined,
};
const problem = problemWith(wanted) ?? selfCheck(dataFolder());
if (problem) fail(problem);

if (!ensureBuilt()) fail('The build failed; the reason stands above.');

const running = await serve(wanted).catch((error: unknown) => fail(message(error)));
// The first request opens the database and migrates it where it is of an older version.
const health = await fetch(`${running.origin}/healthz`);
if (((await health.json()) as { status: string }).status === 'no store') {
  const why = await fetch(running.origin, { headers: { accept: 'application/json' } });
  console.error(`The data cannot be used: ${((await why.json()) as { message: string }).message}`);
}
// Before it says that it runs: who has heard that may stop it at once.
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void running.stop());
if (port !== 0 && running.port !== port) console.log(`Port ${port} is taken, so this is ${running.port}.`);
console.log(`Ridgelarder is at ${running.origin}  (Ctrl-C stops it)`);
if (running.readersOrigin !== undefined)
  console.log(
    `Phones of this network can read pouches and trail cards at ${running.readersOrigin}, and change nothing.`,
  );
if (wanted.behind !== undefined && !wanted.hasPassphrase)
  console.log(
    `No passphrase is set: whoever gets through the proxy at ${wanted.behind} can change everything. To be asked for one: ${SET_IT}`,
  );
