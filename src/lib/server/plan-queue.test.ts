import { expect, onTestFinished, test, vi } from 'vitest';
import { UserError } from './errors.ts';
import { LAPSE_S, MOST_JOBS, PlanJobs } from './plan-jobs.ts';
import { PlanQueue, type Work } from './plan-queue.ts';
import { expectUserError, onEachDatabase, temporaryFolder } from './test-data.ts';

/** Work that ends when it is told to, or is stopped. */
function work() {
  const begun: string[] = [];
  const ends = new Map<string, () => void>();
  const doIt: Work = async ({ asked }, { signal, progress }) => {
    const { name } = JSON.parse(asked) as { name: string };
    begun.push(name);
    progress({ done: 0.25, points: 7, bound: undefined });
    await new Promise<void>((resolve) => {
      ends.set(name, resolve);
      signal.addEventListener('abort', () => resolve(), { once: true });
      if (signal.aborted) resolve();
    });
    return { name, stopped: signal.aborted };
  };
  return { doIt, begun, end: (name: string) => ends.get(name)?.() };
}

onEachDatabase(({ openTestDatabase }) => {
  const clock = { now: Date.parse('2026-06-01T12:00:00Z') };

  async function process(folder: string, doIt: Work) {
    const jobs = new PlanJobs(await openTestDatabase(folder), () => new Date(clock.now));
    const queue = new PlanQueue(jobs, doIt);
    onTestFinished(() => queue.close());
    return { jobs, queue };
  }
  const until = (check: () => unknown) => vi.waitFor(check, { timeout: 20_000, interval: 5 });

  test('a job whose asker has gone is ended where it runs and forgotten where it waits, and those behind it have their turn', async () => {
    const { doIt, begun, end } = work();
    const { queue, jobs } = await process(await temporaryFolder(), doIt);
    const gone = Array.from({ length: MOST_JOBS - 1 }, () => new AbortController());
    const left = gone.map(({ signal }, index) =>
      queue.run('search', null, '', { name: `left ${index}` }, signal).catch((error: unknown) => error),
    );
    await until(() => expect(begun).toHaveLength(1));
    for (const each of gone) each.abort(new Error('gone'));
    for (const each of await Promise.all(left)) expect(each).toMatchObject({ message: 'gone' });
    const owner = queue.run('search', 'a', '', { name: 'owner' });
    await until(() => expect(begun).toContain('owner'));
    expect(begun).toHaveLength(2);
    end('owner');
    expect(await owner).toEqual({ name: 'owner', stopped: false });
    expect(await jobs.areWaiting()).toBe(false);
    const late = queue.run('search', null, '', { name: 'late' }, AbortSignal.abort(new Error('late')));
    await expect(late).rejects.toThrow('late');
  });

  test('a process does one job after the other, and tells how far it is', async () => {
    const { doIt, begun, end } = work();
    const { queue } = await process(await temporaryFolder(), doIt);
    const first = queue.run('search', 'a', '', { name: 'first' });
    await until(() => expect(begun).toEqual(['first']));
    const second = queue.run('compare', null, '', { name: 'second' });
    expect(await queue.running('a')).toMatchObject({ phase: 'search', done: 0.25, points: 7 });
    expect(await queue.running('b')).toBeUndefined();
    expect(begun).toEqual(['first']);
    end('first');
    expect(await first).toEqual({ name: 'first', stopped: false });
    await until(() => expect(begun).toEqual(['first', 'second']));
    end('second');
    expect(await second).toEqual({ name: 'second', stopped: false });
    expect(await queue.running('a')).toBeUndefined();
  });

  test('what a busy process is asked for, an idle one does', async () => {
    const folder = await temporaryFolder();
    const [busy, idle] = [work(), work()];
    const { queue } = await process(folder, busy.doIt);
    const first = queue.run('search', 'a', '', { name: 'first' });
    await until(() => expect(busy.begun).toEqual(['first']));
    await process(folder, idle.doIt);
    const second = queue.run('search', 'b', '', { name: 'second' });
    await until(() => expect(idle.begun).toEqual(['second']));
    idle.end('second');
    expect(await second).toEqual({ name: 'second', stopped: false });
    expect(busy.begun).toEqual(['first']);
    busy.end('first');
    await first;
  });

  test('what a process that died had begun is done once more', async () => {
    const folder = await temporaryFolder();
    const { doIt, begun, end } = work();
    const { queue, jobs } = await process(folder, doIt);
    const first = queue.run('search', 'a', '', { name: 'first' });
    await until(() => expect(begun).toEqual(['first']));
    const second = queue.run('search', 'b', '', { name: 'second' });
    await until(async () => expect(await jobs.claim('dying')).toBeDefined());
    end('first');
    await first;
    clock.now += (LAPSE_S - 1) * 1000;
    // Who waits gives a sign of life at each look; who died does not.
    await new Promise((resolve) => setTimeout(resolve, 1500));
    clock.now += 2000;
    await until(() => expect(begun).toEqual(['first', 'second']));
    end('second');
    expect(await second).toEqual({ name: 'second', stopped: false });
  });

  test('a job ends early where it is stopped through any process', async () => {
    const folder = await temporaryFolder();
    const { doIt, begun } = work();
    const { queue } = await process(folder, doIt);
    const other = await process(folder, doIt);
    const running = queue.run('search', 'a', '', { name: 'first' });
    await until(() => expect(begun).toEqual(['first']));
    expect(await other.queue.stop('a')).toBe(true);
    expect(await running).toEqual({ name: 'first', stopped: true });
    expect(await other.queue.stop('a')).toBe(false);
  });

  test('what goes wrong is told to who asked', async () => {
    const doIt = vi.fn<Work>();
    const { queue } = await process(await temporaryFolder(), doIt);
    doIt.mockRejectedValueOnce(new UserError('Refused', 'Not today.'));
    await expectUserError(queue.run('search', 'a', '', {}), 'Refused', 'Not today.');
    doIt.mockRejectedValueOnce(new Error('no thread'));
    await expect(queue.run('search', 'a', '', {})).rejects.toThrow('no thread');
    doIt.mockResolvedValueOnce(undefined);
    expect(await queue.run('search', 'a', '', {})).toBeUndefined();
  });

  test('a process that ends gives back what it does for others, and drops what it was asked for', async () => {
    const folder = await temporaryFolder();
    const { doIt, begun, end } = work();
    const ending = work();
    const asking = await process(folder, doIt);
    const own = asking.queue.run('search', 'a', '', { name: 'own' });
    await until(() => expect(begun).toEqual(['own']));
    const { queue } = await process(folder, ending.doIt);
    const foreign = asking.queue.run('search', 'b', '', { name: 'foreign' });
    await until(() => expect(ending.begun).toEqual(['foreign']));
    const dropped = queue.run('search', 'c', '', { name: 'dropped' });
    await until(async () => expect(await asking.queue.running('c')).toBeDefined());
    const closing = queue.close();
    ending.end('foreign');
    await expectUserError(dropped, 'Busy', 'being stopped');
    await closing;
    end('own');
    await own;
    await until(() => expect(begun).toEqual(['own', 'foreign']));
    end('foreign');
    expect(await foreign).toEqual({ name: 'foreign', stopped: false });
  });
});
