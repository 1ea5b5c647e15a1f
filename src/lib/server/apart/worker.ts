/* The process that does the tasks. */
import type { PouchLot } from '../../planning/model/pouch-lot.ts';
import { RouteError } from '../../planning/route/route-error.ts';
import { UnreadableFile } from '../../shelf-csv/text-encoding.ts';
import { UserError } from '../errors.ts';
import { speaking } from '../language-of-request.ts';
import type { Answer, Sent, Told } from './apart.ts';
import { doTask, withStock } from './tasks.ts';

process.once('disconnect', () => process.exit());
const lots: PouchLot[] = [];
process.on('message', (sent: Sent) => {
  if ('lots' in sent) {
    for (const lot of sent.lots) lots.push(lot);
    return;
  }
  const { language } = sent;
  const task = withStock(sent.task, lots.splice(0));
  const tell = (answer: Answer) => process.send?.({ answer, rss: process.memoryUsage.rss() } satisfies Told);
  speaking(language, () => doTask(task)).then(
    (outcome) => tell({ outcome }),
    (error: unknown) => {
      const message = error instanceof Error ? error.message : String(error);
      if (error instanceof UserError) tell({ failed: 'UserError', message, code: error.code });
      else if (error instanceof RouteError)
        tell({ failed: 'RouteError', fault: error.fault, where: error.where });
      else if (error instanceof UnreadableFile) tell({ failed: 'UnreadableFile', message });
      else tell({ failed: 'Error', message: (error instanceof Error && error.stack) || message });
    },
  );
});
