import { EventEmitter } from 'node:events';
import { expect, test } from 'vitest';
import { asker, askedBy } from './asker.ts';

const socket = () => Object.assign(new EventEmitter(), { destroyed: false });

test('who asks is known to all that is done for them, and to nothing else', async () => {
  expect(asker()).toEqual({});
  const [one, other] = await Promise.all([
    askedBy(socket(), true, async () => {
      await Promise.resolve();
      return asker();
    }),
    askedBy(socket(), false, async () => asker()),
  ]);
  expect([one.first, other.first]).toEqual([true, false]);
  expect(asker()).toEqual({});
});

test('whoever asks has gone when their connection closes, and not when they were answered', async () => {
  const leaving = socket();
  await askedBy(leaving, false, async () => {
    const { signal } = asker();
    expect(signal?.aborted).toBe(false);
    leaving.emit('close');
    expect(signal?.reason).toMatchObject({ code: 'Busy' });
  });
  const staying = socket();
  const signal = await askedBy(staying, false, async () => asker().signal);
  staying.emit('close');
  expect(signal?.aborted).toBe(false);
  expect(staying.listenerCount('close')).toBe(0);
});
