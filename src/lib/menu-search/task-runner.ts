import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Outcome, Report, Task } from './tasks.ts';

type Answer = { report: Report } | { outcome: unknown } | { failed: string };

/** Node runs the thread from its source, so it has to know where the project lies: the folder it was started in, unless this says otherwise. */
export const usualRoot = (): string => process.env['RIDGELARDER_ROOT'] || process.cwd();

/** Runs tasks one after another in a thread of its own, which is kept for the next one. */
export class TaskRunner {
  readonly #root: string;
  #worker: Worker | undefined;
  #queue: Promise<unknown> = Promise.resolve();
  #closed = false;

  /** @param root the folder that holds the project */
  constructor(root: string) {
    this.#root = root;
  }

  /**
   * @param signal stops the task, its turn come or not; it then rejects with the reason
   * @throws Error what failed in the thread
   */
  run<T extends Task>(
    task: T,
    report: (report: Report) => void,
    signal?: AbortSignal,
  ): Promise<Outcome<T['kind']>> {
    const turn = this.#queue.then(() => {
      signal?.throwIfAborted();
      return this.#runNow(task, report, signal);
    });
    this.#queue = turn.catch(() => undefined);
    return turn as Promise<Outcome<T['kind']>>;
  }

  /** Ends the thread; what runs or waits in it fails. */
  async close(): Promise<void> {
    this.#closed = true;
    const worker = this.#worker;
    this.#worker = undefined;
    await worker?.terminate();
  }

  async #runNow(task: Task, report: (report: Report) => void, signal?: AbortSignal): Promise<unknown> {
    if (this.#closed) throw new Error('the search for menus is closed');
    const worker = (this.#worker ??= new Worker(join(this.#root, 'src/lib/menu-search/worker.ts')));
    worker.ref();
    return new Promise((resolve, reject) => {
      const end = (settle: () => void) => {
        worker.off('message', onMessage).off('error', onError).off('exit', onExit);
        signal?.removeEventListener('abort', onAbort);
        worker.unref();
        settle();
      };
      const drop = (reason: unknown) => {
        this.#worker = undefined;
        void worker.terminate();
        end(() => reject(reason));
      };
      const onMessage = (answer: Answer) => {
        if ('report' in answer) report(answer.report);
        else if ('failed' in answer) end(() => reject(new Error(answer.failed)));
        else end(() => resolve(answer.outcome));
      };
      const onError = (error: unknown) => drop(error);
      const onExit = () => drop(new Error('the thread that looks for menus has ended'));
      const onAbort = () => drop(signal?.reason);
      worker.on('message', onMessage).on('error', onError).on('exit', onExit);
      signal?.addEventListener('abort', onAbort, { once: true });
      worker.postMessage(task);
    });
  }
}
