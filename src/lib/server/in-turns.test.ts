import { setTimeout as sleep } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { InTurns } from './in-turns.ts';
import { expectUserError } from './test-data.ts';

it('lets one after the other work, and others be looked at in between', async () => {
  const turns = new InTurns(10, () => '');
  const order: string[] = [];
  const work = (name: string) => turns.enter((turn) => turn(() => order.push(name)));
  const all = [work('a'), work('b'), work('c')];
  setImmediate(() => order.push('other'));
  await Promise.all(all);
  expect(order.indexOf('other')).toBeLessThan(order.indexOf('c'));
  expect(order.filter((name) => name !== 'other')).toEqual(['a', 'b', 'c']);
});

it('turns away who finds it full, and lets in who comes after one has gone, however that one ended', async () => {
  const turns = new InTurns(2, () => 'Come again.');
  const held = [Promise.withResolvers<string>(), Promise.withResolvers<string>()] as const;
  const inside = held.map(({ promise }) => turns.enter(() => promise));
  await expectUserError(
    turns.enter(async () => 'third'),
    'Busy',
    'Come again.',
  );
  held[0].resolve('first');
  expect(await inside[0]).toBe('first');
  expect(await turns.enter((turn) => turn(() => 'third'))).toBe('third');
  held[1].reject(new Error('broken'));
  await expect(inside[1]).rejects.toThrow('broken');
  await expect(
    turns.enter((turn) =>
      turn(() => {
        throw new Error('at work');
      }),
    ),
  ).rejects.toThrow('at work');
  await sleep(0);
  expect(await turns.enter((turn) => turn(() => 'after'))).toBe('after');
});
