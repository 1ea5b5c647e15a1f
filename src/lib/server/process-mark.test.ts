import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { expect, test } from 'vitest';
import { hasEnded, markOf } from './process-mark.ts';

const ownMark = markOf(process.pid);
const isLinux = process.platform === 'linux';

test.runIf(isLinux)('a process has ended once it is gone, and not before', async () => {
  const other = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
  await once(other, 'spawn');
  const mark = markOf(other.pid!);
  expect(mark).not.toBe(ownMark);
  expect(hasEnded(mark)).toBe(false);
  other.kill('SIGKILL');
  await once(other, 'exit');
  expect(hasEnded(mark)).toBe(true);
  expect(hasEnded(ownMark)).toBe(false);
});

test.runIf(isLinux)('a number that was given out again is another process', () =>
  expect(hasEnded(ownMark.replace(/\d+$/, (start) => String(Number(start) - 1)))).toBe(true),
);

test('of what is elsewhere nothing is known', () => {
  const [boot, part, ...rest] = `${ownMark || 'a b 1 1'}`.split(' ');
  // A number that no process has: they end at 2^22 (man 5 proc_sys_kernel, pid_max).
  for (const mark of ['', 'odd', `other ${part} ${rest.join(' ')}`, `${boot} pid:[1] ${2 ** 22 + 1} 5`])
    expect(hasEnded(mark), mark).toBe(false);
});
