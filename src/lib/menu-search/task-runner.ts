import { fork, type ChildProcess } from 'node:child_process';
import { constants, setPriority } from 'node:os';
import { join } from 'node:path';
import type { Outcome, Report, Task } from './tasks.ts';

type Answer = { report: Report } | { outcome: unknown } | { failed: string };

/** A process that has nothing to do for so long is ended, and its memory given back, ms. */
const IDLE_MS = 20_000;

/** Node runs the process from its source, so it has to know where the project lies: the folder it was started in, unless this says otherwise. */
export const usualRoot = (): string => process.env['RIDGELARDER_ROOT'] || process.cwd();

/** Runs tasks one after another in a process of its own, which is kept for the next one for a while. */
export class TaskRunner {
  readonly #root: string;
  #worker: ChildProcess | undefined;
  #resting: NodeJS.Timeout | undefined;
  #queue: Promise<unknown> = Promise.resolve();
  #closed = false;

  /** @param root the folder that holds the project */
  constructor(root: string) {
    this.#root = root;
  }

  /**
   * @param signal stops the task, its turn come or not; it then rejects with the reason
   * @throws Error what failed in the process
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

  /** Ends the process; what runs or waits in it fails. */
  async close(): Promise<void> {
    this.#closed = true;
    this.#stop();
  }

  #stop(): void {
    clearTimeout(this.#resting);
    this.#worker?.kill('SIGKILL');
    this.#worker = undefined;
  }

  #start(): ChildProcess {
    const worker = fork(join(this.#root, 'src/lib/menu-search/worker.ts'), {
      execArgv: [],
      serialization: 'advanced',
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    });
    // The process that answers requests comes first.
    if (worker.pid !== undefined) setPriority(worker.pid, constants.priority.PRIORITY_BELOW_NORMAL);
    // One that ends while nobody waits for it is started anew.
    worker
      .on('exit', () => this.#worker === worker && (this.#worker = undefined))
      .on('error', () => undefined);
    return worker;
  }

  async #runNow(task: Task, report: (report: Report) => void, signal?: AbortSignal): Promise<unknown> {
    if (this.#closed) throw new Error('the search for menus is closed');
    clearTimeout(this.#resting);
    const worker = (this.#worker ??= this.#start());
    worker.ref();
    worker.channel?.ref();
    return new Promise((resolve, reject) => {
      const end = (settle: () => void) => {
        worker.off('message', onMessage).off('error', onError).off('exit', onExit);
        signal?.removeEventListener('abort', onAbort);
        worker.unref();
        worker.channel?.unref();
        this.#resting = setTimeout(() => this.#stop(), IDLE_MS).unref();
        settle();
      };
      const drop = (reason: unknown) => {
        end(() => reject(reason));
        this.#stop();
      };
      const onMessage = (answer: Answer) => {
        if ('report' in answer) report(answer.report);
        else if ('failed' in answer) end(() => reject(new Error(answer.failed)));
        else end(() => resolve(answer.outcome));
      };
      const onError = (error: unknown) => drop(error);
      const onExit = () => drop(new Error('the process that looks for menus has ended'));
      const onAbort = () => drop(signal?.reason);
      worker.on('message', onMessage).on('error', onError).on('exit', onExit);
      signal?.addEventListener('abort', onAbort, { once: true });
      worker.send(task);
    });
  }
}
