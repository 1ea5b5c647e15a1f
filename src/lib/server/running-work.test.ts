import { expect, test } from 'vitest';
import { RunningWork } from './running-work.ts';

test('work tells how far it is, is done once for all who ask meanwhile, and can be done again', async () => {
  const work = new RunningWork<{ done: number }>();
  const gate = Promise.withResolvers<void>();
  let times = 0;
  const count = () =>
    work.run('a', { done: 0 }, async (piece) => {
      times += 1;
      piece.told = { done: 0.5 };
      await gate.promise;
      return times;
    });
  const both = [count(), count()];
  await Promise.resolve();
  expect(work.running('a')).toMatchObject({ done: 0.5 });
  expect(work.running('b')).toBeUndefined();
  gate.resolve();
  expect(await Promise.all(both)).toEqual([1, 1]);
  expect(work.running('a')).toBeUndefined();
  expect(await count()).toBe(2);
});

test('work is asked to stop, and is gone when it fails', async () => {
  const work = new RunningWork<object>();
  expect(work.stop('a')).toBe(false);
  const stopped = work.run('a', {}, async ({ stop }) => {
    await new Promise((resolve) => stop.signal.addEventListener('abort', resolve));
    stop.signal.throwIfAborted();
  });
  await Promise.resolve();
  expect(work.stop('a')).toBe(true);
  await expect(stopped).rejects.toThrow('abort');
  expect(work.running('a')).toBeUndefined();
});
