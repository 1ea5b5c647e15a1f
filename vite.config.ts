import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { noteClientChunks } from './src/tooling/client-chunks.ts';

export default defineConfig({
  plugins: [sveltekit(), noteClientChunks()],
  test: {
    environment: 'node',
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['src/**/*.test.ts', 'tests/reference/**/*.test.ts', 'tests/property/**/*.test.ts'],
          globalSetup: 'tests/support/postgres.ts',
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          fileParallelism: false,
          testTimeout: 300_000,
          hookTimeout: 120_000,
          expect: { poll: { timeout: 30_000 } },
        },
      },
    ],
  },
});
