/* How long a shelf of 100,000 lots takes to copy, to export, to compare with a copy and to put back, and for how long nothing else is answered meanwhile. */
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { setTimeout as sleep } from 'node:timers/promises';
import { openApp } from '../../src/lib/server/app.ts';
import { exampleLot } from '../support/examples.ts';

const LOTS = 100_000;
const folder = await mkdtemp(path.join(tmpdir(), 'ridgelarder-bench-'));
const app = await openApp(folder);
await app.shelf.importLots(
  Array.from({ length: LOTS }, (_, n) => exampleLot({ code: `L${n}` })),
  '',
);

async function timed<Result>(what: string, work: () => Promise<Result>): Promise<Result> {
  const delay = monitorEventLoopDelay({ resolution: 1 });
  delay.enable();
  await sleep(20);
  const start = performance.now();
  const result = await work();
  const ms = performance.now() - start;
  await sleep(20);
  delay.disable();
  console.log(`${what}: ${ms.toFixed(0)} ms, nothing else for at most ${(delay.max / 1e6).toFixed(0)} ms`);
  return result;
}
const sizeOf = async (file: string) => console.log(`  ${((await stat(file)).size / 1e6).toFixed(0)} MB`);

const { name } = await timed('a copy', () => app.backups.make('by-hand'));
await sizeOf(await app.backups.pathOf(name));
await timed('the export as JSON', () => app.backups.withFile('json', sizeOf));
await timed('comparing', () => app.backups.compare(name));
await timed('putting back', () => app.backups.restore(name));
await app.close();
await rm(folder, { recursive: true });
