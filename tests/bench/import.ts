/*
 * How long the import of 100,000 pouch lots takes, step by step, against papaparse alone on the same file, and how much
 * memory: each step runs in a process of its own, so that its peak is its own.
 */
import { spawnSync } from 'node:child_process';
import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import Papa from 'papaparse';
import { completeLot } from '../../src/lib/planning/model/complete-lot.ts';
import { openApp } from '../../src/lib/server/app.ts';
import { openCsv } from '../../src/lib/shelf-csv/csv-records.ts';
import { EXPORT_HEADER } from '../../src/lib/shelf-csv/fields.ts';
import { guessMapping } from '../../src/lib/shelf-csv/guess-mapping.ts';
import { judgeRows, previewImport, type LotAtHome } from '../../src/lib/shelf-csv/preview-import.ts';
import { RowReader } from '../../src/lib/shelf-csv/read-row.ts';
import type { PouchLot } from '../../src/lib/planning/model/pouch-lot.ts';

const LOTS = 100_000;
const RUNS = 3;

/** Mulberry32: the same rows at every run. */
function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function* csvLines(): Generator<string> {
  const next = random(2026);
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1));
  const one = (...texts: string[]) => texts[whole(0, texts.length - 1)]!;
  const date = (year: number) =>
    `${year}-${String(whole(1, 12)).padStart(2, '0')}-${String(whole(1, 28)).padStart(2, '0')}`;
  yield `${EXPORT_HEADER.join(',')}\r\n`;
  for (let lot = 0; lot < LOTS; lot++) {
    const [proteinG, fatG, carbohydrateG] = [whole(5, 40), whole(2, 30), whole(20, 90)];
    yield (
      [
        `L${String(lot).padStart(6, '0')}`,
        one(
          'Bean stew',
          'Red lentil dal',
          '"Pasta, tomato and cheese"',
          'Porridge',
          'Süße Grütze',
          'Rice pan',
        ),
        one('dinner', 'lunch; dinner', 'breakfast', 'snack'),
        date(2026),
        date(2028),
        whole(0, 12),
        one('1', '2', '1.5'),
        proteinG + fatG + carbohydrateG + whole(5, 20),
        4 * proteinG + 9 * fatG + 4 * carbohydrateG,
        proteinG,
        fatG,
        carbohydrateG,
        whole(100, 450),
        one('boiling', 'hot', 'cold'),
        whole(5, 20),
        one('', '', '2'),
        whole(8, 18),
        whole(200, 900),
        one('', 'none', 'milk; egg', 'celery', 'wheat; gluten; soy'),
        one('', 'vegetarian', 'vegan', 'no-pork; no-beef'),
        (whole(50, 450) / 100).toFixed(2),
        'EUR',
        one('', '', 'stir twice', '"says ""a bit salty"", add water"'),
      ].join(',') + '\r\n'
    );
  }
}

const STEPS = {
  'papaparse alone': (file: string) =>
    new Promise<number>((resolve, reject) => {
      let rows = 0;
      Papa.parse<string[]>(createReadStream(file, 'utf8'), {
        delimiter: ',',
        newline: '\r\n',
        chunk: ({ data }) => (rows += data.length),
        complete: () => resolve(rows - 1),
        error: reject,
      });
    }),
  'read: find the encoding, decode, parse': async (file: string) => {
    let rows = 0;
    for await (const batch of (await openCsv(() => createReadStream(file))).records()) rows += batch.length;
    return rows;
  },
  'read and validate': async (file: string) => {
    const csv = await openCsv(() => createReadStream(file));
    const reader = new RowReader({
      mapping: guessMapping(csv),
      currency: 'EUR',
      damaged: false,
      shelf: new Map(),
    });
    let lots = 0;
    for await (const batch of csv.records())
      for (const record of batch) if (reader.read(record).status === 'lot') lots++;
    return lots;
  },
  'read, validate and write into an empty shelf': (file: string) => importInto(file, 'empty'),
  'the same a second time, nothing to write': (file: string) => importInto(file, 'full'),
} as const;
type Step = keyof typeof STEPS;

/** As the page does it: judge all rows, keep what is to be written, write it in one transaction. */
async function importInto(file: string, shelf: 'empty' | 'full'): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-import-'));
  const app = await openApp(folder);
  const once = async () => {
    const csv = await openCsv(() => createReadStream(file));
    const onShelf = new Map<string, LotAtHome>((await app.shelf.listLots()).map((lot) => [lot.code, lot]));
    const lots: PouchLot[] = [];
    const judged = (async function* () {
      for await (const rows of judgeRows(csv, {
        mapping: guessMapping(csv),
        currency: 'EUR',
        shelf: onShelf,
      })) {
        for (const row of rows)
          if (row.fate === 'new' || row.fate === 'changed')
            lots.push(completeLot(row.lot, { today: '2026-12-01' }));
        yield rows;
      }
    })();
    const { counts } = await previewImport(judged, { show: 'all', from: 0, size: 0 });
    await app.shelf.importLots(lots, 'benchmark');
    return counts.new + counts.unchanged;
  };
  if (shelf === 'full') await once();
  clock = startClock();
  const rows = await once();
  const taken = clock();
  clock = () => taken;
  await app.close();
  rmSync(folder, { recursive: true });
  return rows;
}

type Taken = { readonly seconds: number; readonly processorSeconds: number };
function startClock(): () => Taken {
  const [start, processorStart] = [performance.now(), process.cpuUsage()];
  return () => {
    const { user, system } = process.cpuUsage(processorStart);
    return { seconds: (performance.now() - start) / 1000, processorSeconds: (user + system) / 1e6 };
  };
}
/** Started again by a step that has something to prepare, and stopped by one that has something to clear away. */
let clock = startClock();

const [, , step, file] = process.argv;
if (step && file) {
  clock = startClock();
  const rows = await STEPS[step as Step](file);
  const taken = clock();
  if (rows !== LOTS) throw new Error(`${step}: ${rows} rows instead of ${LOTS}`);
  console.log(JSON.stringify({ ...taken, peakMB: process.resourceUsage().maxRSS / 1024 }));
} else {
  const folder = mkdtempSync(join(tmpdir(), 'bench-import-'));
  const csv = join(folder, 'shelf.csv');
  await pipeline(Readable.from(csvLines()), createWriteStream(csv));
  console.log(
    `${LOTS.toLocaleString('en')} lots, ${(statSync(csv).size / 1e6).toFixed(1)} MB; the fastest of ${RUNS} runs`,
  );
  let alone: number | undefined;
  for (const name of Object.keys(STEPS)) {
    const runs = Array.from({ length: RUNS }, () => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [import.meta.filename, name, csv], {
        encoding: 'utf8',
      });
      if (status !== 0) throw new Error(stderr);
      return JSON.parse(stdout) as Taken & { peakMB: number };
    });
    const least = (of: 'seconds' | 'processorSeconds' | 'peakMB') => Math.min(...runs.map((run) => run[of]));
    alone ??= least('processorSeconds');
    console.log(
      `${name}: ${least('seconds').toFixed(2)} s, ${least('processorSeconds').toFixed(2)} s of processor time, ` +
        `${(least('processorSeconds') / alone).toFixed(1)} × papaparse alone; peak ${least('peakMB').toFixed(0)} MB`,
    );
  }
  rmSync(folder, { recursive: true });
}
