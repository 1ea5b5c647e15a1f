import { exec, spawnSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const env = {
  ...process.env,
  PATH: [path.join(ROOT, 'node_modules/.bin'), process.env['PATH']].join(path.delimiter),
};

/**
 * Runs a command line of the project's own making in the project's folder, its output going where ours goes.
 *
 * @param variables of its environment, besides ours
 * @returns whether it ended with exit code 0
 */
export function run(commandLine: string, variables: Readonly<Record<string, string>> = {}): boolean {
  const options = { cwd: ROOT, env: { ...env, ...variables }, shell: true } as const;
  return spawnSync(commandLine, { ...options, stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;
}

/**
 * Does the same beside other work.
 *
 * @returns whether it ended with exit code 0, and all that it wrote
 */
export function runBeside(commandLine: string): Promise<{ readonly ok: boolean; readonly output: string }> {
  return new Promise((resolve) => {
    const options = { cwd: ROOT, env, maxBuffer: Infinity };
    exec(commandLine, options, (error, stdout, stderr) =>
      resolve({ ok: error === null, output: stdout + stderr }),
    );
  });
}
