import { expect, test } from 'vitest';
import { Disk } from './kept-by-disk.ts';
import { crashRounds } from './rounds.ts';

const seeded = () => {
  const seed = Math.floor(Math.random() * 1e6);
  console.log(`seed ${seed}`); // npm run test:crash -- 12 SEED does the same again
  return seed;
};

test('a process that is killed at any moment loses nothing that it acknowledged, and leaves nothing half done', async () => {
  const counts = await crashRounds(12, seeded(), () => undefined);
  expect(counts.rounds).toBe(12);
  expect(counts.acknowledged).toBeGreaterThan(12);
}, 600_000);

test('nor does a loss of power take anything that was acknowledged', async ({ skip }) => {
  const disk = await Disk.make();
  if (typeof disk === 'string') return skip(disk);
  const counts = await crashRounds(12, seeded(), () => undefined, disk);
  await disk.remove();
  expect(counts.rounds).toBe(12);
  expect(counts.acknowledged).toBeGreaterThan(12);
}, 600_000);
