import { defineConfig, mergeConfig } from 'vitest/config';
import viteConfig from './vite.config.ts';

export default mergeConfig(
  viteConfig,
  defineConfig({
    test: {
      environment: 'node',
      projects: [
        {
          extends: true,
          test: {
            name: 'unit',
            include: [
              'src/**/*.test.ts',
              'tests/reference/**/*.test.ts',
              'tests/property/**/*.test.ts',
              'tests/everyday-tables/**/*.test.ts',
              'tests/crash/**/*.test.ts',
            ],
            globalSetup: 'tests/support/postgres.ts',
            // By itself Vitest leaves a processor idle, which is half of what CI has.
            maxWorkers: '100%',
            testTimeout: 30_000,
            hookTimeout: 120_000,
          },
        },
        {
          test: {
            name: 'browser',
            include: ['tests/browser/**/*.test.ts'],
            globalSetup: 'tests/browser/build-first.ts',
            // Most of a file's time is waiting, so two share the two processors that CI has.
            maxWorkers: 2,
            sequence: { groupOrder: 1 },
            testTimeout: 300_000,
            hookTimeout: 120_000,
            expect: { poll: { timeout: 30_000 } },
          },
        },
      ],
    },
  }),
);
