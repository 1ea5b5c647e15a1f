import { spawnSync } from 'node:child_process';
import { constants } from 'node:fs';
import { access, mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Random } from '../../src/lib/planning/optimiser/random.ts';

/** Pages of disks and of SQLite: each is there as it was or as it is. */
const PAGE_BYTES = 4096;

/** What a disk would hold of a folder after the power has failed: what was synced, and of the rest anything or nothing. */
export class Disk {
  readonly #library: string;
  readonly #kept: string;

  private constructor(library: string, kept: string) {
    this.#library = library;
    this.#kept = kept;
  }

  /** @returns why the loss of power cannot be tried here, where it cannot */
  static async make(): Promise<Disk | string> {
    if (process.platform !== 'linux') return 'it needs Linux, whose loader takes a library before that of C';
    const folder = await mkdtemp(path.join(tmpdir(), 'ridgelarder-disk-'));
    const library = path.join(folder, 'kept-by-disk.so');
    const source = path.join(import.meta.dirname, 'kept-by-disk.c');
    const { status, stderr, error } = spawnSync('cc', ['-shared', '-fPIC', '-O2', '-o', library, source], {
      encoding: 'utf8',
    });
    if (status !== 0) return `its library cannot be built: ${error?.message ?? stderr}`;
    return new Disk(library, path.join(folder, 'kept'));
  }

  /** Takes a folder as it is for synced. @returns the variables with which a process is started that changes it */
  async begin(root: string): Promise<Record<string, string>> {
    await rm(this.#kept, { recursive: true, force: true });
    await mkdir(this.#kept);
    await this.#take(root);
    return { LD_PRELOAD: this.#library, DISK_ROOT: root, DISK_KEPT: this.#kept, UV_USE_IO_URING: '0' };
  }

  async remove(): Promise<void> {
    await rm(path.dirname(this.#library), { recursive: true, force: true });
  }

  /**
   * Lets the power fail: leaves of a folder what a disk would hold.
   *
   * @param random chooses of each page and each name that was not synced whether it has reached the disk; left out, nothing of that has
   */
  async fail(root: string, random?: Random): Promise<void> {
    const { ino } = await stat(root);
    const left = await this.#left(root, String(ino), random);
    await rm(root, { recursive: true });
    await put(root, left);
  }

  async #take(folder: string): Promise<void> {
    const lines: string[] = [];
    for (const entry of await readdir(folder, { withFileTypes: true })) {
      const at = path.join(folder, entry.name);
      const { ino } = await stat(at);
      lines.push(`${ino} ${entry.isDirectory() ? 'd' : 'f'} ${entry.name}\n`);
      if (entry.isDirectory()) await this.#take(at);
      else await writeFile(path.join(this.#kept, String(ino)), await readFile(at));
    }
    await writeFile(path.join(this.#kept, String((await stat(folder)).ino)), lines.join(''));
  }

  /** What is left of a folder that may be there no more. */
  async #left(folder: string | undefined, ino: string, random: Random | undefined): Promise<Left> {
    const synced = entriesOf((await this.#synced(ino)).toString());
    const present = folder === undefined ? new Map<string, Entry>() : await entriesNow(folder);
    const left: Left = new Map();
    for (const name of new Set([...synced.keys(), ...present.keys()])) {
      const [before, now] = [synced.get(name), present.get(name)];
      const entry = random && before?.ino !== now?.ino ? (random() < 0.5 ? before : now) : before;
      if (!entry) continue;
      const at = folder !== undefined && now?.ino === entry.ino ? path.join(folder, name) : undefined;
      left.set(
        name,
        entry.isFolder ? await this.#left(at, entry.ino, random) : await this.#bytes(at, entry.ino, random),
      );
    }
    return left;
  }

  async #bytes(at: string | undefined, ino: string, random: Random | undefined): Promise<Buffer> {
    const synced = await this.#synced(ino);
    if (!random || at === undefined) return synced;
    const now = await readFile(at);
    const length = random() < 0.5 ? synced.length : now.length;
    const bytes = Buffer.alloc(length);
    for (let page = 0; page < length; page += PAGE_BYTES)
      bytes.set((random() < 0.5 ? synced : now).subarray(page, Math.min(page + PAGE_BYTES, length)), page);
    return bytes;
  }

  /** What was never synced has a name at most. */
  async #synced(ino: string): Promise<Buffer> {
    const file = path.join(this.#kept, ino);
    const isKept = await access(file, constants.R_OK).then(
      () => true,
      () => false,
    );
    return isKept ? readFile(file) : Buffer.alloc(0);
  }
}

type Entry = { readonly ino: string; readonly isFolder: boolean };
type Left = Map<string, Buffer | Left>;

const entriesOf = (lines: string): Map<string, Entry> =>
  new Map(
    Array.from(lines.matchAll(/^(\d+) ([df]) (.*)$/gm), ([, ino = '', kind, name = '']) => [
      name,
      { ino, isFolder: kind === 'd' },
    ]),
  );

async function entriesNow(folder: string): Promise<Map<string, Entry>> {
  const entries = await readdir(folder, { withFileTypes: true });
  return new Map(
    await Promise.all(
      entries.map(async (entry): Promise<[string, Entry]> => {
        const { ino } = await stat(path.join(folder, entry.name));
        return [entry.name, { ino: String(ino), isFolder: entry.isDirectory() }];
      }),
    ),
  );
}

async function put(folder: string, left: Left): Promise<void> {
  await mkdir(folder);
  for (const [name, what] of left)
    await (what instanceof Map
      ? put(path.join(folder, name), what)
      : writeFile(path.join(folder, name), what));
}
