import { expect, test } from 'vitest';
import { LAPSE_S, MOST_JOBS, PlanJobs } from './plan-jobs.ts';
import { markOf } from './process-mark.ts';
import { expectUserError, onEachDatabase, temporaryFolder } from './test-data.ts';

onEachDatabase(({ openTestDatabase }) => {
  /** Queues of several processes on one database, by one clock. */
  async function queues(count: number, marks: readonly string[] = []) {
    const folder = await temporaryFolder();
    const clock = { now: Date.parse('2026-06-01T12:00:00Z') };
    const wait = (seconds: number) => (clock.now += seconds * 1000);
    const all: PlanJobs[] = [];
    for (let n = 0; n < count; n += 1)
      all.push(new PlanJobs(await openTestDatabase(folder), () => new Date(clock.now), marks[n]));
    return { all, first: all[0]!, wait };
  }

  test('jobs are claimed in the order in which they were asked for, each once', async () => {
    const { first, wait } = await queues(1);
    for (const name of ['a', 'b', 'c']) {
      await first.ask('search', name, name, `"${name}"`);
      wait(1);
    }
    const claimed = [await first.claim('p'), await first.claim('q'), await first.claim('p')];
    expect(claimed.map((job) => job?.asked)).toEqual(['"a"', '"b"', '"c"']);
    expect(await first.areWaiting()).toBe(false);
    expect(await first.claim('p')).toBeUndefined();
  });

  test('what is asked for a trip of the house comes before what other programs ask for', async () => {
    const { first, wait } = await queues(1);
    for (const tripId of [null, 'a', null, 'b']) {
      await first.ask('search', tripId, '', `${JSON.stringify(tripId)}`);
      wait(1);
    }
    const claimed: (string | undefined)[] = [];
    for (let job; (job = await first.claim('p'));) claimed.push(job.asked);
    expect(claimed).toEqual(['"a"', '"b"', 'null', 'null']);
  });

  test('processes that claim at the same time get different jobs', async () => {
    const { all, first } = await queues(4);
    const asked = await Promise.all(
      Array.from({ length: 12 }, (_, n) => first.ask('search', `${n}`, '', '{}')),
    );
    const got = await Promise.all(
      all.map(async (jobs, process) => {
        const mine: string[] = [];
        for (let job; (job = await jobs.claim(`${process}`));) mine.push(job.id);
        return mine;
      }),
    );
    expect(got.flat().sort()).toEqual(asked.sort());
  });

  test('a trip has one job at a time, whichever process asks', async () => {
    const { all } = await queues(2);
    const [one, other] = all as [PlanJobs, PlanJobs];
    const asked = await Promise.allSettled([
      one.ask('search', 'a', 'Three lakes', '{}'),
      other.ask('compare', 'a', 'Three lakes', '{}'),
    ]);
    expect(asked.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
    await expectUserError(
      other.ask('search', 'a', 'Three lakes', '{}'),
      'Refused',
      '"Three lakes"',
      'has been running',
    );
    const id = asked.flatMap((one) => (one.status === 'fulfilled' ? one.value : []))[0]!;
    await other.remove(id);
    await other.ask('search', 'a', 'Three lakes', '{}');
  });

  test.runIf(process.platform === 'linux')(
    'what a process asked for that has ended is forgotten at once where that is known, and whoever does it is told',
    async () => {
      const here = markOf(process.pid);
      const ended = here.replace(/\d+$/, '1');
      const elsewhere = ended.replace(/^\S+/, 'other');
      const { all } = await queues(4, [ended, elsewhere, here]);
      const [dead, unknown, living, next] = all as [PlanJobs, PlanJobs, PlanJobs, PlanJobs];
      const id = await dead.ask('search', 'a', '', '{}');
      expect((await next.claim('p'))?.id).toBe(id);
      await unknown.ask('search', 'b', '', '{}');
      await living.ask('search', 'c', '', '{}');
      expect(await next.ofTrip('a')).toBeUndefined();
      for (const tripId of ['b', 'c']) {
        expect(await next.ofTrip(tripId)).toBeDefined();
        await expectUserError(next.ask('search', tripId, '', '{}'), 'Refused', 'has been running');
      }
      await next.ask('search', 'a', '', '{}');
      expect(await next.beat(id, 'p', '{}')).toBe('lost');
    },
  );

  test('where too many wait, the next is turned away', async () => {
    const { first } = await queues(1);
    for (let n = 0; n < MOST_JOBS; n += 1) await first.ask('search', null, '', '{}');
    await expectUserError(
      first.ask('search', null, '', '{}'),
      'Busy',
      `${MOST_JOBS} menu searches`,
      'Try again',
    );
  });

  test('the job of a process that died is done by another one, and what the dead one still says does not count', async () => {
    const { first, wait } = await queues(1);
    const id = await first.ask('search', 'a', '', '{}');
    expect(await first.claim('dying')).toMatchObject({ id });
    wait(LAPSE_S - 1);
    await first.lookAfter(id);
    expect(await first.beat(id, 'dying', '{}')).toBe('go on');
    wait(LAPSE_S - 1);
    await first.lookAfter(id);
    expect(await first.claim('other')).toBeUndefined();
    wait(2);
    expect(await first.areWaiting()).toBe(true);
    expect(await first.claim('other')).toMatchObject({ id });

    expect(await first.beat(id, 'dying', '{}')).toBe('lost');
    await first.finish(id, 'dying', '"too late"');
    await first.finish(id, 'other', '"found"');
    await first.finish(id, 'other', '"twice"');
    expect(await first.lookAfter(id)).toMatchObject({ state: 'done', outcome: '"found"' });
    wait(LAPSE_S - 1);
    expect(await first.claim('other')).toBeUndefined();
  });

  test('a job that nobody waits for any more is not done, and makes room', async () => {
    const { first, wait } = await queues(1);
    const id = await first.ask('search', 'a', '', '{}');
    wait(LAPSE_S + 1);
    expect(await first.claim('p')).toBeUndefined();
    expect(await first.areWaiting()).toBe(false);
    expect(await first.ofTrip('a')).toBeUndefined();
    expect(await first.stop('a')).toBe(false);
    await first.ask('search', 'a', '', '{}');
    expect(await first.lookAfter(id)).toBeUndefined();
  });

  test('a job that is stopped tells who does it, who did not begin yet, and who gives it back', async () => {
    const { first } = await queues(1);
    expect(await first.stop('a')).toBe(false);
    const id = await first.ask('search', 'a', '', '{}');
    await first.claim('p');
    expect(await first.beat(id, 'p', '{"done":0.5}')).toBe('go on');
    expect(await first.ofTrip('a')).toMatchObject({
      kind: 'search',
      state: 'running',
      progress: '{"done":0.5}',
    });
    expect(await first.stop('a')).toBe(true);
    expect(await first.beat(id, 'p', '{}')).toBe('stop');
    await first.giveBack(id, 'p');
    expect(await first.claim('q')).toMatchObject({ id, isStopped: 1 });
  });
});
