import { randomUUID } from 'node:crypto';
import type { Selectable, Transaction } from 'kysely';
import { isOnPostgres } from './database/migrations.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { UserError } from './errors.ts';
import { hasEnded, markOf } from './process-mark.ts';
import { say } from '../texts/say.ts';

/** Jobs that wait or run at the same time, of all processes together; more are turned away. */
export const MOST_JOBS = 16;
/** Who has given no sign of life for so long is taken for dead, s. */
export const LAPSE_S = 30;

type Row = Selectable<Tables['planJobs']>;
export type Job = Pick<Row, 'id' | 'kind' | 'tripId' | 'asked' | 'isStopped'>;
export type JobState = Pick<Row, 'kind' | 'state' | 'askedAt' | 'progress' | 'outcome'>;

/**
 * Searches for menus that wait or run, shared by all processes on one database. Each job is self-contained: whoever claims it needs nothing but what was
 * asked, and gives nothing but the outcome, so that one that was claimed by a process that died may be done once more.
 */
export class PlanJobs {
  readonly #db: Database;
  readonly #clock: () => Date;
  readonly #mark: string;

  /** @param mark of the process that asks */
  constructor(db: Database, clock: () => Date, mark = markOf(process.pid)) {
    this.#db = db;
    this.#clock = clock;
    this.#mark = mark;
  }

  /**
   * Puts a job at the end of the queue.
   *
   * @param tripName for the user
   * @returns its id
   * @throws UserError `Refused` while there is another one for this trip, `Busy` while there are too many
   */
  ask(kind: Row['kind'], tripId: string | null, tripName: string, asked: string): Promise<string> {
    const id = `${this.#mark}/${randomUUID()}`;
    return writing(this.#db, async (trx) => {
      await this.#forgetAbandoned(trx);
      const jobs = await trx.selectFrom('planJobs').select(['tripId', 'askedAt', 'state']).execute();
      const other = tripId === null ? undefined : jobs.find((job) => job.tripId === tripId);
      if (other)
        throw new UserError(
          'Refused',
          say(
            'A menu search for "{trip}" has been running for {seconds} s. Wait for it, or stop it on the page "How good is this menu?", then try again.',
            { trip: tripName, seconds: String(this.#secondsSince(other.askedAt)) },
          ),
        );
      if (jobs.length >= MOST_JOBS)
        throw new UserError(
          'Busy',
          say(
            '{count} menu searches are running and no more can wait; nothing was changed. Try again in a minute.',
            { count: String(jobs.length) },
          ),
        );
      const now = this.#ago(0);
      await trx
        .insertInto('planJobs')
        .values({
          ...{ id, kind, tripId, asked, askedAt: now, waitedAt: now, state: 'waiting' },
          ...{ claimedBy: null, beatAt: null, progress: null, isStopped: 0, outcome: null },
        })
        .execute();
      return id;
    });
  }

  /**
   * Takes the job that has waited longest, of those for trips of the house first, or one whose process has died. No two claim the same.
   *
   * @param by the process
   */
  claim(by: string): Promise<Job | undefined> {
    // Not serialisable: the locks of the rows are enough, and whoever claims passes by what others are claiming.
    return this.#db
      .transaction()
      .setIsolationLevel('read committed')
      .execute(async (trx) => {
        const job = await this.#claimable(trx)
          .select(['id', 'kind', 'tripId', 'asked', 'isStopped'])
          // What other programs ask for belongs to no trip of the house, and comes after what does.
          .orderBy((eb) => eb.case().when('tripId', 'is', null).then(1).else(0).end())
          .orderBy('askedAt')
          .orderBy('id')
          .limit(1)
          .$if(isOnPostgres(this.#db), (query) => query.forUpdate().skipLocked())
          .executeTakeFirst();
        if (job)
          await trx
            .updateTable('planJobs')
            .set({ state: 'running', claimedBy: by, beatAt: this.#ago(0) })
            .where('id', '=', job.id)
            .execute();
        return job;
      });
  }

  /** @returns whether a job waits to be claimed; cheaper than `claim` */
  async areWaiting(): Promise<boolean> {
    const job = await reading(this.#db, (trx) =>
      this.#claimable(trx).select('id').limit(1).executeTakeFirst(),
    );
    return job !== undefined;
  }

  /**
   * A sign of life of the process that does a job.
   *
   * @returns whether to go on, to come to an end, or that the job is not its own any more
   */
  beat(id: string, by: string, progress: string): Promise<'go on' | 'stop' | 'lost'> {
    return this.#update(id, by, { beatAt: this.#ago(0), progress });
  }

  /** Keeps what came of a job, unless another process has it now. */
  async finish(id: string, by: string, outcome: string): Promise<void> {
    await this.#update(id, by, { state: 'done', outcome });
  }

  /** Gives a job back that was claimed, for another process to do. */
  async giveBack(id: string, by: string): Promise<void> {
    await this.#update(id, by, { state: 'waiting', claimedBy: null });
  }

  /** @returns how far a job is; `undefined` where it is gone. Says at the same time that somebody waits for it. */
  async lookAfter(id: string): Promise<JobState | undefined> {
    return writing(this.#db, (trx) =>
      trx
        .updateTable('planJobs')
        .set({ waitedAt: this.#ago(0) })
        .where('id', '=', id)
        .returning(['kind', 'state', 'askedAt', 'progress', 'outcome'])
        .executeTakeFirst(),
    );
  }

  /** How far the job of a trip is, if there is one. */
  async ofTrip(tripId: string): Promise<JobState | undefined> {
    const job = await reading(this.#db, (trx) =>
      trx
        .selectFrom('planJobs')
        .select(['id', 'kind', 'state', 'askedAt', 'progress', 'outcome'])
        .where('tripId', '=', tripId)
        .where('waitedAt', '>=', this.#ago(LAPSE_S))
        .executeTakeFirst(),
    );
    return job && !isOrphan(job) ? job : undefined;
  }

  /** Asks the job of a trip to end with the best so far. @returns whether there is one */
  stop(tripId: string): Promise<boolean> {
    return writing(this.#db, async (trx) => {
      const stopped = await trx
        .updateTable('planJobs')
        .set({ isStopped: 1 })
        .where('tripId', '=', tripId)
        .where('waitedAt', '>=', this.#ago(LAPSE_S))
        .returning('id')
        .execute();
      return stopped.length > 0;
    });
  }

  /** Removes a job that nobody waits for any more. */
  async remove(id: string): Promise<void> {
    await writing(this.#db, (trx) => trx.deleteFrom('planJobs').where('id', '=', id).execute());
  }

  /** What waits, or is in the hands of a process that died, as long as somebody waits for it. */
  #claimable(trx: Transaction<Tables>) {
    return trx
      .selectFrom('planJobs')
      .where((is) =>
        is.or([
          is('state', '=', 'waiting'),
          is.and([is('state', '=', 'running'), is('beatAt', '<', this.#ago(LAPSE_S))]),
        ]),
      )
      .where('waitedAt', '>=', this.#ago(LAPSE_S));
  }

  async #update(id: string, by: string, values: Partial<Row>): Promise<'go on' | 'stop' | 'lost'> {
    const row = await writing(this.#db, (trx) =>
      trx
        .updateTable('planJobs')
        .set(values)
        .where('id', '=', id)
        .where('claimedBy', '=', by)
        .where('state', '=', 'running')
        .returning('isStopped')
        .executeTakeFirst(),
    );
    return row ? (row.isStopped ? 'stop' : 'go on') : 'lost';
  }

  async #forgetAbandoned(trx: Transaction<Tables>): Promise<void> {
    await trx.deleteFrom('planJobs').where('waitedAt', '<', this.#ago(LAPSE_S)).execute();
    const orphans = (await trx.selectFrom('planJobs').select('id').execute()).filter(isOrphan);
    for (const { id } of orphans) await trx.deleteFrom('planJobs').where('id', '=', id).execute();
  }

  /** @returns milliseconds since 1970, by the clock that the instants of jobs are from */
  now(): number {
    return this.#clock().getTime();
  }

  #ago(seconds: number): string {
    return new Date(this.now() - seconds * 1000).toISOString();
  }

  #secondsSince(instant: string): number {
    return Math.max(1, Math.ceil((this.now() - Date.parse(instant)) / 1000));
  }
}

/** Whether who asked for a job has certainly ended; if that cannot be known, it shows in time that nobody waits. */
const isOrphan = ({ id }: Pick<Row, 'id'>): boolean => hasEnded(id.slice(0, id.lastIndexOf('/')));
