import { randomBytes, randomUUID, scrypt, timingSafeEqual } from 'node:crypto';
import { existsSync } from 'node:fs';
import { open, readFile, rename, rm } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { z } from 'zod';
import { say } from '../../texts/say.ts';
import { UserError } from '../errors.ts';
import { folderToDisk, makeFolder } from '../to-disk.ts';

/** The command that sets a passphrase. */
export const SET_IT = 'npm run passphrase';

/** OWASP, Password Storage Cheat Sheet, scrypt: N = 2^17 (128 MiB), r = 8, p = 1. */
const COST = { n: 2 ** 17, r: 8, p: 1 };
const SALT_BYTES = 16;
const HASH_BYTES = 32;
/** What scrypt needs is 128 N r bytes; OpenSSL wants a little more allowed. */
const MEMORY_PER_BLOCK_BYTES = 128;

const bytes = (count: number) =>
  z
    .base64()
    .transform((text) => Buffer.from(text, 'base64'))
    .refine(({ length }) => length === count);
/** Bounds keep a damaged file from taking all memory. */
const PassphraseFile = z.strictObject({
  scrypt: z.strictObject({
    n: z.literal([2 ** 17, 2 ** 18, 2 ** 19, 2 ** 20]),
    r: z.int().min(8).max(16),
    p: z.int().min(1).max(8),
  }),
  salt: bytes(SALT_BYTES),
  hash: bytes(HASH_BYTES),
});
type Cost = z.output<typeof PassphraseFile>['scrypt'];

/** What is known of a passphrase: enough to tell it again, not enough to say it. */
export type StoredPassphrase = z.output<typeof PassphraseFile> & {
  /** Another one with every passphrase that is set. */
  readonly id: string;
};

/** The passphrase of a data folder, in a file of its own that its owner alone can read. */
export class Passphrase {
  readonly #file: string;

  /** @param folder the data folder, made where it is missing and something is written */
  constructor(folder: string) {
    this.#file = resolve(join(folder, 'passphrase.json'));
  }

  /** @returns what is stored now, or `undefined` where none is set. @throws UserError `Unusable` where it cannot be read */
  async stored(): Promise<StoredPassphrase | undefined> {
    // Asked at every request, and where none is set, failing to read takes longer than many a page.
    if (!existsSync(this.#file)) return undefined;
    try {
      const stored = PassphraseFile.parse(JSON.parse(await readFile(this.#file, 'utf8')));
      return { ...stored, id: stored.salt.toString('base64url') };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
      // Whoever reads this may not have signed in: it says nothing of what is in the file, or where that is.
      throw new UserError(
        'Unusable',
        say(
          'The passphrase of the data folder cannot be read, so no one can sign in. Set it again on the computer that runs Ridgelarder: {command}',
          { command: SET_IT },
        ),
        { cause: error },
      );
    }
  }

  /** Puts a passphrase in the place of the one before; whoever signed in with that one is signed out. */
  async set(text: string): Promise<void> {
    const salt = randomBytes(SALT_BYTES);
    const hash = await derive(text, salt, COST);
    const json = JSON.stringify({
      scrypt: COST,
      salt: salt.toString('base64'),
      hash: hash.toString('base64'),
    });
    await makeFolder(dirname(this.#file));
    const draft = `${this.#file}.${randomUUID()}`;
    const file = await open(draft, 'wx', 0o600);
    try {
      await file.writeFile(`${json}\n`);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(draft, this.#file);
    await folderToDisk(dirname(this.#file));
  }

  /** @returns whether there was one */
  async remove(): Promise<boolean> {
    const wasSet = await readFile(this.#file).then(
      () => true,
      () => false,
    );
    await rm(this.#file, { force: true });
    if (wasSet) await folderToDisk(dirname(this.#file));
    return wasSet;
  }
}

/** @returns whether this is the passphrase; it takes as long either way */
export async function isPassphrase(stored: StoredPassphrase, text: string): Promise<boolean> {
  return timingSafeEqual(await derive(text, stored.salt, stored.scrypt), stored.hash);
}

/** One at a time, whoever asks: each takes 128 MiB. */
let before: Promise<unknown> = Promise.resolve();

function derive(text: string, salt: Buffer, { n, r, p }: Cost): Promise<Buffer> {
  const derived = before.then(
    () =>
      new Promise<Buffer>((done, failed) =>
        scrypt(
          typed(text),
          salt,
          HASH_BYTES,
          { N: n, r, p, maxmem: 2 * MEMORY_PER_BLOCK_BYTES * n * r },
          (error, key) => (error ? failed(error) : done(key)),
        ),
      ),
  );
  before = derived.catch(() => undefined);
  return derived;
}

/** The same letters are the same passphrase, whichever way a keyboard composes them. */
const typed = (text: string): string => text.normalize('NFC');
