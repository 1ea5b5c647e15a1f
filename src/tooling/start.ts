/* `npm start`: builds where needed, serves the app on this machine only, and stops on Ctrl-C. */
import { ensureBuilt } from './build.ts';
import { serve } from './serve.ts';

const DEFAULT_PORT = 4810;

function fail(message: string): never {
  console.error(message);
  process.exit(1);
}

const wanted = Number(process.env['PORT'] ?? DEFAULT_PORT);
if (!Number.isInteger(wanted) || wanted < 0 || wanted > 65_535)
  fail(
    `PORT is "${process.env['PORT']}", which is no port. Set it to a number from 1 to 65535, or leave it out for ${DEFAULT_PORT}.`,
  );

if (!ensureBuilt()) fail('The build failed; the reason stands above.');

const running = await serve(
  wanted,
  process.env['RIDGELARDER_READERS'] || undefined,
  process.env['RIDGELARDER_ORIGIN'] || undefined,
).catch((error: unknown) => fail(error instanceof Error ? error.message : String(error)));
// The first request opens the database and migrates it where it is of an older version.
await fetch(running.origin);
if (wanted !== 0 && running.port !== wanted)
  console.log(`Port ${wanted} is taken, so this is ${running.port}.`);
console.log(`Ridgelarder is at ${running.origin}  (Ctrl-C stops it)`);
if (running.readersOrigin !== undefined)
  console.log(
    `Phones of this network can read pouches and trail cards at ${running.readersOrigin}, and change nothing.`,
  );

for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void running.stop());
