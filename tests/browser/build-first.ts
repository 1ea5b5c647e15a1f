import { ensureBuilt } from '../../src/tooling/build.ts';

/** Builds where needed before files that run at the same time start the app, as each of these starts would build too. */
export function setup(): void {
  if (!ensureBuilt()) throw new Error('The build failed; the reason stands above.');
}
