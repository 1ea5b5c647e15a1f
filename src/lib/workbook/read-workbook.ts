import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { UnreadableWorkbook, type SheetRows, type WorkbookFault } from './sheet-rows.ts';

/** Longest time that a workbook may take, ms: one at the bound of its size takes some 10 s. */
const MAX_MS = 60_000;
const MAX_HEAP_MB = 1_000;

type Answer = { readonly sheets: SheetRows[] } | { readonly fault: WorkbookFault };

/**
 * Reads the sheets of a workbook in a thread of its own, bounded in memory and time.
 *
 * @param root folder of the project, where the thread's source lies
 * @throws UnreadableWorkbook
 */
export async function readWorkbook(
  bytes: Uint8Array,
  root = process.env['RIDGELARDER_ROOT'] || process.cwd(),
): Promise<SheetRows[]> {
  const thread = new Worker(join(root, 'src/lib/workbook/thread.ts'), {
    workerData: bytes,
    resourceLimits: { maxOldGenerationSizeMb: MAX_HEAP_MB },
  });
  let timer: NodeJS.Timeout | undefined;
  try {
    const answer = await new Promise<Answer>((resolve, reject) => {
      timer = setTimeout(() => resolve({ fault: 'too slow' }), MAX_MS);
      thread.once('message', resolve);
      thread.once('error', (error: NodeJS.ErrnoException) =>
        error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? resolve({ fault: 'too large' }) : reject(error),
      );
    });
    if ('fault' in answer) throw new UnreadableWorkbook(answer.fault);
    return answer.sheets;
  } finally {
    clearTimeout(timer);
    await thread.terminate();
  }
}
