import { randomUUID } from 'node:crypto';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Running } from '../menu-search/search-state.ts';
import { UserError, type UserErrorCode } from './errors.ts';
import type { Job, JobState, PlanJobs } from './plan-jobs.ts';
import { say } from '../texts/say.ts';

/** How often who waits looks after its job, and how often an idle process looks for jobs of others. */
const LOOK_MS = 1000;
const BEAT_MS = 2000;

export type Progress = Pick<Running, 'done' | 'points' | 'bound'>;
export type Work = (
  job: Job,
  options: { readonly signal: AbortSignal; readonly progress: (progress: Progress) => void },
) => Promise<unknown>;
type Outcome = { done?: unknown } | { failed: string; code?: UserErrorCode };
type Current = { readonly job: Job; readonly stop: AbortController; progress: Progress };

const NOT_BEGUN: Progress = { done: 0, points: undefined, bound: undefined };

/** Does jobs of the queue one at a time, its own or those of other processes, and waits for the outcome of its own. */
export class PlanQueue {
  readonly #jobs: PlanJobs;
  readonly #work: Work;
  readonly #me = randomUUID();
  readonly #looking: NodeJS.Timeout;
  /** What wakes those who wait for a job that was done here. */
  readonly #waiting = new Map<string, () => void>();
  readonly #active = new Set<Promise<unknown>>();
  /** Jobs that were asked here by somebody who has gone: not begun, though the database may still list them. */
  readonly #left = new Set<string>();
  #current: Current | undefined;
  #working: Promise<void> | undefined;
  #isClosed = false;

  constructor(jobs: PlanJobs, work: Work) {
    this.#jobs = jobs;
    this.#work = work;
    this.#looking = setInterval(() => void this.#lookForWork(), LOOK_MS).unref();
  }

  /**
   * Has a job done, here or by another process.
   *
   * @param asked what `work` needs, as far as JSON holds it
   * @param signal aborted when nobody waits for it any more: the job is forgotten, and ended where it runs
   * @returns what `work` returned, as far as JSON holds it
   * @throws UserError as `PlanJobs.ask`, `Busy` where the program ends; what `work` throws
   */
  run(
    kind: Job['kind'],
    tripId: string | null,
    tripName: string,
    asked: object,
    signal?: AbortSignal,
  ): Promise<unknown> {
    return this.#tracked(this.#run(kind, tripId, tripName, asked, signal));
  }

  /** How far the job of a trip is, if there is one. */
  async running(tripId: string): Promise<Running | undefined> {
    const state = await this.#jobs.ofTrip(tripId);
    if (!state || state.state === 'done') return undefined;
    const current = this.#current?.job.tripId === tripId ? this.#current.progress : undefined;
    return {
      phase: state.kind,
      ...NOT_BEGUN,
      ...(current ?? (state.progress === null ? {} : (JSON.parse(state.progress) as Progress))),
      elapsedMs: Math.max(0, this.#jobs.now() - Date.parse(state.askedAt)),
    };
  }

  /** Makes the job of a trip end with the best so far. @returns whether there is one */
  async stop(tripId: string): Promise<boolean> {
    const isThere = await this.#jobs.stop(tripId);
    if (isThere && this.#current?.job.tripId === tripId) this.#current.stop.abort();
    return isThere;
  }

  /** Waits until all have been told that the program ends; what runs has to fail by itself. */
  async close(): Promise<void> {
    this.#isClosed = true;
    clearInterval(this.#looking);
    for (const wake of this.#waiting.values()) wake();
    await Promise.allSettled([...this.#active, this.#working]);
  }

  async #run(
    kind: Job['kind'],
    tripId: string | null,
    tripName: string,
    asked: object,
    signal?: AbortSignal,
  ): Promise<unknown> {
    signal?.throwIfAborted();
    const id = await this.#jobs.ask(kind, tripId, tripName, JSON.stringify(asked));
    const onAbort = () => {
      this.#left.add(id);
      if (this.#current?.job.id === id) this.#current.stop.abort();
      this.#waiting.get(id)?.();
    };
    signal?.addEventListener('abort', onAbort, { once: true });
    // Gone while it was being asked, where no event comes any more.
    if (signal?.aborted) onAbort();
    void this.#workOff();
    try {
      for (;;) {
        await this.#untilDoneHere(id);
        signal?.throwIfAborted();
        if (this.#isClosed)
          throw new UserError(
            'Busy',
            say('Ridgelarder is being stopped, so the search was ended; nothing was changed.'),
          );
        const state = await this.#lookAfter(id);
        if (state?.state === 'done') return outcomeOf(state);
      }
    } finally {
      signal?.removeEventListener('abort', onAbort);
      // Left there, it is forgotten soon, as nobody waits for it.
      await this.#jobs.remove(id).catch(() => {});
      this.#left.delete(id);
    }
  }

  async #lookAfter(id: string): Promise<JobState | undefined> {
    try {
      const state = await this.#jobs.lookAfter(id);
      if (state) return state;
    } catch (error) {
      // A long change, such as an import, keeps others from writing; the search goes on meanwhile.
      if (isBusy(error)) return undefined;
      throw error;
    }
    throw new UserError(
      'Busy',
      say('The menu search was lost because the database did not respond. Nothing was changed. Try again.'),
    );
  }

  async #untilDoneHere(id: string): Promise<void> {
    const woken = Promise.withResolvers<void>();
    this.#waiting.set(id, woken.resolve);
    const pause = new AbortController();
    const slept = sleep(LOOK_MS, undefined, { signal: pause.signal }).catch(() => {});
    await Promise.race([woken.promise, slept]);
    pause.abort();
    this.#waiting.delete(id);
  }

  async #lookForWork(): Promise<void> {
    if (this.#working) return;
    const areWaiting = await this.#tracked(this.#jobs.areWaiting()).catch(() => false);
    if (areWaiting) await this.#workOff();
  }

  /** Does jobs until none waits. */
  async #workOff(): Promise<void> {
    await this.#working;
    if (this.#working || this.#isClosed) return;
    // What the database refuses now is tried again at the next look.
    this.#working = this.#doAll().catch(() => {});
    await this.#working;
    this.#working = undefined;
  }

  async #doAll(): Promise<void> {
    for (;;) {
      const job = this.#isClosed ? undefined : await this.#jobs.claim(this.#me);
      if (!job) return;
      if (!this.#left.has(job.id)) await this.#do(job);
    }
  }

  async #do(job: Job): Promise<void> {
    const current: Current = { job, stop: new AbortController(), progress: NOT_BEGUN };
    this.#current = current;
    if (job.isStopped) current.stop.abort();
    const beating = setInterval(() => {
      const told = this.#jobs.beat(job.id, this.#me, JSON.stringify(current.progress));
      void this.#tracked(told).then(
        (answer) => answer !== 'go on' && current.stop.abort(),
        () => {},
      );
    }, BEAT_MS);
    const { signal } = current.stop;
    const outcome = await this.#work(job, {
      signal,
      progress: (progress) => (current.progress = progress),
    }).then((done) => ({ done }), failure);
    clearInterval(beating);
    this.#current = undefined;
    await this.#keep(job, outcome);
    this.#waiting.get(job.id)?.();
  }

  async #keep({ id }: Job, outcome: Outcome): Promise<void> {
    for (;;) {
      try {
        if (this.#isClosed) return await this.#jobs.giveBack(id, this.#me);
        return await this.#jobs.finish(id, this.#me, JSON.stringify(outcome));
      } catch (error) {
        if (this.#isClosed || !isBusy(error)) throw error;
      }
    }
  }

  #tracked<Result>(work: Promise<Result>): Promise<Result> {
    this.#active.add(work);
    const end = () => void this.#active.delete(work);
    work.then(end, end);
    return work;
  }
}

const isBusy = (error: unknown): boolean => error instanceof UserError && error.code === 'Busy';

const failure = (error: unknown): Outcome => ({
  failed: error instanceof Error ? error.message : String(error),
  ...(error instanceof UserError && { code: error.code }),
});

function outcomeOf({ outcome }: JobState): unknown {
  const told = JSON.parse(outcome ?? 'null') as Outcome;
  if (!('failed' in told)) return told.done;
  throw told.code === undefined ? new Error(told.failed) : new UserError(told.code, told.failed);
}
