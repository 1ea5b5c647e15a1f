/* The process that does the tasks: so that the app answers while a menu is looked for. */
import { doTask, type Task } from './tasks.ts';

process.once('disconnect', () => process.exit());
process.on('message', (task: Task) => {
  doTask(task, (report) => process.send?.({ report })).then(
    (outcome) => process.send?.({ outcome }),
    (error: unknown) => process.send?.({ failed: error instanceof Error ? error.message : String(error) }),
  );
});
