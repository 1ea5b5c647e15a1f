import { expect, test } from 'vitest';
import { crashRounds } from './rounds.ts';

test('a process that is killed at any moment loses nothing that it acknowledged, and leaves nothing half done', async () => {
  const seed = Math.floor(Math.random() * 1e6);
  console.log(`seed ${seed}`); // npm run test:crash -- 12 SEED does the same again
  const counts = await crashRounds(12, seed, () => undefined);
  expect(counts.rounds).toBe(12);
  expect(counts.acknowledged).toBeGreaterThan(12);
}, 600_000);
