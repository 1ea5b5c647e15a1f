import { fork, type ChildProcess } from 'node:child_process';
import { constants, setPriority } from 'node:os';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { usualRoot } from '../../menu-search/task-runner.ts';
import type { Stock } from '../../planning/model/pouch-lot.ts';
import { RouteError } from '../../planning/route/route-error.ts';
import type { RouteFault } from '../../planning/route/route-faults.ts';
import { UnreadableFile } from '../../shelf-csv/text-encoding.ts';
import { language, say } from '../../texts/say.ts';
import { asker, type Asker } from '../asker.ts';
import { UserError, type UserErrorCode } from '../errors.ts';
import { doTask, stockOf, withStock, type Outcome, type Task } from './tasks.ts';

/** What is told of a task. */
export type Answer =
  | { readonly outcome: unknown }
  | { readonly failed: 'UserError'; readonly message: string; readonly code: UserErrorCode }
  | { readonly failed: 'RouteError'; readonly fault: RouteFault; readonly where: RouteError['where'] }
  | { readonly failed: 'UnreadableFile' | 'Error'; readonly message: string };

/** What a process is sent: the stock of a task in parts, and then the task without it. */
export type Sent =
  { readonly lots: Stock } | { readonly task: Task; readonly language: ReturnType<typeof language> };

/** What a process sends: with its answer the memory that it now holds, bytes. */
export type Told = { readonly answer: Answer; readonly rss: number };

/** When nobody waits for the outcome any more, what waits is forgotten, and what runs is ended. */
export type Asking = Asker & {
  /** How long it may take, where that is not the usual, ms. */
  readonly taskMs?: number | undefined;
};

type Job = {
  readonly task: Task;
  readonly language: ReturnType<typeof language>;
  readonly asking: Asking;
  readonly settle: (answer: Answer) => void;
  readonly fail: (reason: unknown) => void;
};

export type Limits = {
  /** Processes at a time; one of them is for what comes first. */
  readonly processes: number;
  /** So many tasks wait at most, of what comes first as of the rest. */
  readonly waiting: number;
  /** A task that takes longer is ended, ms. */
  readonly taskMs: number;
  /** A process that has nothing to do for so long is ended, and its memory given back, ms. */
  readonly idleMs: number;
};

const USUAL: Limits = { processes: 2, waiting: 24, taskMs: 120_000, idleMs: 20_000 };
/** Of a process. What needs more ends it, and nothing else: memory that runs out in a thread would end the whole program. */
const HEAP_MB = 200;
/** A process that holds more when it has answered is ended, since it would keep that for as long as it rests. */
const MOST_RESTING_BYTES = 150_000_000;
/** What is smaller than this is read while others wait, since to hand it over would take longer. */
const LARGE_BYTES = 50_000;
const LOTS_AT_ONCE = 1000;
/** So many people times days times lots are planned in some 0.1 s. */
const LARGE_PLAN = 400_000;

/** Reads and plans in processes of its own what would hold everybody up, or take the memory of all. */
export class Apart {
  readonly #limits: Limits;
  readonly #waiting: Job[] = [];
  readonly #idle: { readonly worker: ChildProcess; readonly end: NodeJS.Timeout }[] = [];
  readonly #busy = new Set<Job>();
  readonly #workers = new Set<ChildProcess>();
  #isClosed = false;

  constructor(limits: Partial<Limits> = {}) {
    this.#limits = { ...USUAL, ...limits };
  }

  /**
   * Does a task, in a process of its own where it is large.
   *
   * @param how what is different from how whoever sent the request around asks
   *
   * @throws UserError `Busy` where too many wait, `Refused` where it takes too long or too much memory; the signal's reason; as `doTask`
   */
  async do<Kind extends Task['kind']>(
    task: Extract<Task, { kind: Kind }>,
    how: Asking = {},
  ): Promise<Outcome<Kind>> {
    if (!isLarge(task)) return (await doTask(task)) as Outcome<Kind>;
    return (await this.#handOver(task, { ...asker(), ...how })) as Outcome<Kind>;
  }

  /** Ends what runs and what waits. */
  close(): void {
    this.#isClosed = true;
    for (const job of this.#waiting.splice(0)) job.fail(ending());
    for (const { end } of this.#idle.splice(0)) clearTimeout(end);
    for (const worker of this.#workers) this.#end(worker);
  }

  #handOver(task: Task, asking: Asking): Promise<unknown> {
    return new Promise((resolve, reject) => {
      if (this.#isClosed) throw ending();
      asking.signal?.throwIfAborted();
      const settle = (answer: Answer) => {
        if ('outcome' in answer) resolve(answer.outcome);
        else reject(errorOf(answer));
      };
      const job: Job = { task, language: language(), asking, settle, fail: reject };
      const isFirst = asking.first === true;
      if (
        this.#waiting.filter((other) => (other.asking.first === true) === isFirst).length >=
        this.#limits.waiting
      )
        throw new UserError('Busy', say('Too many plans are being calculated. Try again in a moment.'));
      const place = isFirst ? this.#waiting.findIndex((other) => !other.asking.first) : -1;
      this.#waiting.splice(place < 0 ? this.#waiting.length : place, 0, job);
      asking.signal?.addEventListener('abort', () => this.#forget(job), { once: true });
      this.#next();
    });
  }

  /** Whoever asked has gone. */
  #forget(job: Job): void {
    const place = this.#waiting.indexOf(job);
    if (place >= 0) this.#waiting.splice(place, 1);
    job.fail(job.asking.signal?.reason);
  }

  #next(): void {
    for (;;) {
      const job = this.#waiting[0];
      if (!job || this.#isClosed) return;
      const most = job.asking.first ? this.#limits.processes : this.#limits.processes - 1;
      if (this.#busy.size >= Math.max(1, most)) return;
      this.#waiting.shift();
      this.#begin(job);
    }
  }

  #begin(job: Job): void {
    this.#busy.add(job);
    const idle = this.#idle.pop();
    clearTimeout(idle?.end);
    const worker = idle?.worker ?? this.#start();
    worker.ref();
    worker.channel?.ref();
    const { signal } = job.asking;
    const done = (keep: boolean) => {
      clearTimeout(late);
      signal?.removeEventListener('abort', onAbort);
      worker.off('message', onMessage).off('error', onError).off('exit', onExit);
      this.#busy.delete(job);
      if (keep) this.#rest(worker);
      else this.#end(worker);
      this.#next();
    };
    const onMessage = ({ answer, rss }: Told) => {
      job.settle(answer);
      done(rss <= MOST_RESTING_BYTES);
    };
    const onError = (error: Error) => {
      job.fail(error);
      done(false);
    };
    // Nothing in a task ends its process but memory that has run out.
    const onExit = () => {
      job.fail(this.#isClosed ? ending() : tooMuch());
      done(false);
    };
    const onAbort = () => done(false);
    const taskMs = job.asking.taskMs ?? this.#limits.taskMs;
    const late = setTimeout(() => {
      job.fail(tooLong(taskMs));
      done(false);
    }, taskMs);
    worker.on('message', onMessage).on('error', onError).on('exit', onExit);
    signal?.addEventListener('abort', onAbort, { once: true });
    void this.#send(worker, job);
  }

  /** A long stock goes in parts, as other requests would wait while all of it is written. */
  async #send(worker: ChildProcess, { task, language: spoken, asking }: Job): Promise<void> {
    const stock = stockOf(task);
    for (let at = 0; at < stock.length; at += LOTS_AT_ONCE) {
      worker.send({ lots: stock.slice(at, at + LOTS_AT_ONCE) } satisfies Sent);
      await setImmediate();
      if (asking.signal?.aborted || !worker.connected) return;
    }
    worker.send({ task: withStock(task, []), language: spoken } satisfies Sent);
  }

  #start(): ChildProcess {
    const worker = fork(join(usualRoot(), 'src/lib/server/apart/worker.ts'), {
      execArgv: [`--max-old-space-size=${HEAP_MB}`, '--max-semi-space-size=4'],
      serialization: 'advanced',
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    });
    // The process that answers requests comes first.
    if (worker.pid !== undefined) setPriority(worker.pid, constants.priority.PRIORITY_BELOW_NORMAL);
    this.#workers.add(worker);
    return worker;
  }

  #rest(worker: ChildProcess): void {
    worker.unref();
    worker.channel?.unref();
    const entry = {
      worker,
      end: setTimeout(() => {
        this.#idle.splice(this.#idle.indexOf(entry), 1);
        this.#end(worker);
      }, this.#limits.idleMs).unref(),
    };
    this.#idle.push(entry);
  }

  #end(worker: ChildProcess): void {
    this.#workers.delete(worker);
    // What still arrives of it is of no use to anybody.
    worker.on('error', () => undefined);
    worker.kill('SIGKILL');
  }
}

function isLarge(task: Task): boolean {
  if (task.kind === 'copy') return true;
  if ('source' in task)
    return (
      (task.source instanceof Uint8Array ? task.source.length : task.source.bytes) > LARGE_BYTES ||
      'own' in task
    );
  return task.trip.party.length * task.trip.dayCount * task.stock.length > LARGE_PLAN;
}

function errorOf(answer: Exclude<Answer, { outcome: unknown }>): Error {
  switch (answer.failed) {
    case 'UserError':
      return new UserError(answer.code, answer.message);
    case 'RouteError':
      return new RouteError(answer.fault, answer.where);
    case 'UnreadableFile':
      return new UnreadableFile(answer.message);
    case 'Error':
      return new Error(answer.message);
  }
}

const ending = () => new UserError('Busy', say('Ridgelarder is being stopped. Try again in a moment.'));
const tooLong = (ms: number) =>
  new UserError(
    'Refused',
    say(
      'This takes longer than {seconds} s, so it was ended. Try fewer people, days or pouches, or a smaller file.',
      {
        seconds: Math.round(ms / 1000),
      },
    ),
  );
const tooMuch = () =>
  new UserError(
    'TooLarge',
    say('This is too large for this computer. Try a smaller file, or fewer people, days or pouches.'),
  );
