/* How many steps a piece of our own work takes, counted by the engine and the same on every machine: what a clock, or the processor's time, cannot say. */
import { Session } from 'node:inspector';
import { setFlagsFromString } from 'node:v8';

type Range = { readonly count: number };
type Script = { readonly url: string; readonly functions: readonly { readonly ranges: readonly Range[] }[] };
type Coverage = { readonly result: readonly Script[] };

const isMeasured = ({ url }: Script) => !url.startsWith('node:') && !url.includes('count-steps');

/**
 * Starts counting how often each block of code runs. Code that was compiled before is not counted block by block: import what is
 * measured afterwards.
 *
 * A match of a regular expression is one step here however long it takes; lint judges the patterns.
 *
 * @example const countSteps = startCountingSteps();
 * const { linesOf } = await import('../../src/lib/forms/lines.ts');
 * expect(countSteps(() => linesOf(long, 'staples'))).toBeLessThan(9 * countSteps(() => linesOf(short, 'staples')));
 * @returns runs the work, which must not wait for anything, and returns how many blocks were entered
 */
export function startCountingSteps(): (work: () => unknown) => number {
  // A call that the optimiser puts in place of a function is not counted.
  for (const flag of ['--no-opt', '--no-maglev']) setFlagsFromString(flag);
  const session = new Session();
  session.connect();
  session.post('Profiler.enable');
  session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });

  /** Answers at once, and begins anew at nought. */
  const stepsSinceLast = (): number => {
    let steps = 0;
    session.post('Profiler.takePreciseCoverage', (error: Error | null, taken: Coverage) => {
      if (error) throw error;
      for (const script of taken.result.filter(isMeasured))
        for (const { ranges } of script.functions) for (const { count } of ranges) steps += count;
    });
    return steps;
  };
  return (work) => {
    stepsSinceLast();
    work();
    return stepsSinceLast();
  };
}
