import type { TestProject } from 'vitest/node';
import { findPostgres, startPostgres } from '../../src/tooling/postgres.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the PostgreSQL of this run; `undefined` where this machine has none. */
    postgresUrl: string | undefined;
  }
}

/** Starts one PostgreSQL for all unit tests of a run. */
export default async function setup({ provide }: TestProject): Promise<(() => Promise<void>) | undefined> {
  const bin = findPostgres();
  if (bin === undefined) {
    console.warn(
      'There is no PostgreSQL on this machine, so the tests on it are skipped. Debian has it as "postgresql"; POSTGRES_BIN names the folder of its programs elsewhere.',
    );
    provide('postgresUrl', undefined);
    return undefined;
  }
  const { url, stop } = await startPostgres(bin);
  provide('postgresUrl', url);
  return stop;
}
