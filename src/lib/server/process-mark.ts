import { readFileSync, readlinkSync } from 'node:fs';

/** A running machine and the part of it in which a number means one process: containers have parts of their own. `undefined` elsewhere than on Linux. */
function place(): string | undefined {
  try {
    return `${readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()} ${readlinkSync('/proc/self/ns/pid')}`;
  } catch {
    return undefined;
  }
}

/** When a process began, in ticks since the machine did, as numbers are given out again; `undefined` where it has ended and is only still listed. @throws where it cannot be read */
function startOf(pid: number): string | undefined {
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
  // The second field is a name in brackets, which may hold anything (man 5 proc_pid_stat).
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return fields[0] === 'Z' || fields[0] === 'X' ? undefined : fields[19];
}

/** @returns what tells a process from any other on any machine; empty where that cannot be known */
export function markOf(pid: number): string {
  const where = place();
  return where === undefined ? '' : `${where} ${pid} ${startOf(pid)}`;
}

/** @returns whether the process of a mark has certainly ended; of one elsewhere that cannot be known */
export function hasEnded(mark: string): boolean {
  const [, where, number, start] = /^(\S+ \S+) (\d+) (\d+)$/.exec(mark) ?? [];
  if (where === undefined || where !== place()) return false;
  const pid = Number(number);
  try {
    process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
  try {
    return startOf(pid) !== start;
  } catch {
    return false; // of another user, and hidden
  }
}
