/* The thread that does the tasks: so that the app answers while a menu is looked for. */
import { parentPort } from 'node:worker_threads';
import { doTask, type Task } from './tasks.ts';

const port = parentPort;
if (!port) throw new Error('worker.ts is started as a worker thread');
port.on('message', (task: Task) => {
  doTask(task, (report) => port.postMessage({ report })).then(
    (outcome) => port.postMessage({ outcome }),
    (error: unknown) => port.postMessage({ failed: error instanceof Error ? error.message : String(error) }),
  );
});
