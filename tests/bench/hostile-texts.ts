/*
 * How the time of reading a cell grows with what was made to take long: each text against one eight times as long, in turns in one run. Some 8 is in proportion,
 * 64 its square. Short texts are read in less than a clock can tell, so they are lengthened until they take a while.
 */
import { readDate, readNumber } from '../../src/lib/shelf-csv/read-cell.ts';
import { neutralise, restore } from '../../src/lib/shelf-csv/spreadsheet-safe.ts';
import { HOSTILE_TEXTS } from '../support/hostile-texts.ts';

const LONGER = 8;
const RUNS = 5;
const SHORTEST_MS = 2;
const LONGEST_REPEATS = 1e6;

const READERS: Readonly<Record<string, (text: string) => unknown>> = {
  number: (text) => readNumber(text, 'either'),
  date: (text) => readDate(text, 'iso'),
  'safe for spreadsheets': (text) => restore(neutralise(text)),
};

function timeMs(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

for (const [name, read] of Object.entries(READERS)) {
  for (const make of HOSTILE_TEXTS) {
    let repeats = 1000;
    while (repeats < LONGEST_REPEATS && timeMs(() => read(make(repeats))) < SHORTEST_MS) repeats *= 2;
    const [short, long] = [make(repeats), make(repeats * LONGER)];
    const ratios = Array.from({ length: RUNS }, () => timeMs(() => read(long)) / timeMs(() => read(short)));
    const middle = ratios.toSorted((a, b) => a - b)[Math.floor(RUNS / 2)] ?? NaN;
    console.log(`${name}, ${JSON.stringify(make(3).slice(0, 12))} × ${repeats}: ${middle.toFixed(1)}`);
  }
}
