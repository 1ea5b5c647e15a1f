/* The thread that reads one workbook, so that the program answers meanwhile, and what a file does to memory or time ends with the thread. */
import { parentPort, workerData } from 'node:worker_threads';
import { sheetRows, UnreadableWorkbook } from './sheet-rows.ts';

sheetRows(workerData as Uint8Array).then(
  (sheets) => parentPort?.postMessage({ sheets }),
  (error: unknown) =>
    parentPort?.postMessage({ fault: error instanceof UnreadableWorkbook ? error.fault : 'not a workbook' }),
);
