import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [sveltekit()],
  test: {
    include: ['src/**/*.test.ts', 'tests/reference/**/*.test.ts', 'tests/property/**/*.test.ts'],
    environment: 'node',
    reporters: ['default'],
  },
});
