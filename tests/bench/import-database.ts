/* The database's side of a large import, and what it costs to list a shelf whose ledger has grown long. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openApp, type App } from '../../src/lib/server/app.ts';
import { instance } from './instances.ts';

const RUNS = 5;
const IMPORTED = 100_000;
const LISTED = 10_000;
const COUNTS_PER_LOT = 9;

const lots = (count: number) =>
  instance({ eaters: 4, days: 5, lots: count }, 1).stock.map((lot, n) => ({ ...lot, code: `L${n}` }));

/** Several runs, each in a data folder of its own. Processor time is given too: other work on the machine lengthens it less. */
async function measure(
  what: string,
  prepare: (app: App) => Promise<unknown>,
  work: (app: App) => Promise<unknown>,
) {
  const times: number[] = [];
  const processorTimes: number[] = [];
  for (let run = 0; run < RUNS; run++) {
    const folder = await mkdtemp(join(tmpdir(), 'ridgelarder-bench-'));
    const app = await openApp(folder);
    await prepare(app);
    globalThis.gc?.();
    const start = performance.now();
    const processorStart = process.cpuUsage();
    await work(app);
    times.push(performance.now() - start);
    const { user, system } = process.cpuUsage(processorStart);
    processorTimes.push((user + system) / 1000);
    await app.close();
    await rm(folder, { recursive: true });
  }
  const inOrder = (values: number[]) => values.toSorted((a, b) => a - b);
  const median = (values: number[]) => inOrder(values)[Math.floor(RUNS / 2)]!.toFixed(0);
  console.log(
    `${what}: median ${median(times)} ms, fastest ${inOrder(times)[0]!.toFixed(0)} ms, processor ${median(processorTimes)} ms (${RUNS} runs)`,
  );
}

const many = lots(IMPORTED);
const changed = many.map((lot) => ({
  ...lot,
  recipe: `${lot.recipe}, second kitchen`,
  pouches: lot.pouches + 1,
}));
const shelf = lots(LISTED);
const nothing = async () => {};
const importMany = (app: App) => app.shelf.importLots(many, 'bench');

await measure(`write ${IMPORTED} new lots`, nothing, importMany);
await measure(`compare ${IMPORTED} lots of which none changed`, importMany, importMany);
await measure(`write ${IMPORTED} changed lots`, importMany, (app) => app.shelf.importLots(changed, 'bench'));
await measure(
  `list ${LISTED} lots with balances of ${LISTED * (COUNTS_PER_LOT + 1)} ledger entries`,
  async (app) => {
    for (let count = 0; count <= COUNTS_PER_LOT; count++)
      await app.shelf.importLots(
        shelf.map((lot) => ({ ...lot, pouches: lot.pouches + count })),
        'bench',
      );
    await app.shelf.listLots(); // once, so that the compiler has seen the code
  },
  (app) => app.shelf.listLots(),
);
console.log(`peak memory of all of this: ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MiB`);
