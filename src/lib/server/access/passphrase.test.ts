import { randomUUID, scryptSync } from 'node:crypto';
import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { expectUserError, temporaryFolder } from '../test-data.ts';
import { isPassphrase, Passphrase, type StoredPassphrase } from './passphrase.ts';

const WORDS = 'walnut ladder seven fog';

async function setIn(folder: string, text = WORDS): Promise<StoredPassphrase> {
  const passphrase = new Passphrase(folder);
  await passphrase.set(text);
  const stored = await passphrase.stored();
  if (!stored) throw new Error('nothing was stored');
  return stored;
}

test('a passphrase is told again, however its letters are composed, and no other is', async () => {
  const stored = await setIn(await temporaryFolder(), 'Nüsse, Leiter, sieben, Nebel');
  expect(await isPassphrase(stored, 'Nüsse, Leiter, sieben, Nebel'.normalize('NFD'))).toBe(true);
  for (const other of ['', 'Nusse, Leiter, sieben, Nebel', 'nüsse, leiter, sieben, nebel', ` ${WORDS}`])
    expect(await isPassphrase(stored, other), other).toBe(false);
});

// OWASP, Password Storage Cheat Sheet: scrypt with N = 2^17 (128 MiB), r = 8, p = 1.
test('of a passphrase its salted scrypt hash is kept, in a file for its owner alone', async () => {
  const folder = await temporaryFolder();
  const first = await setIn(folder);
  const file = join(folder, 'passphrase.json');
  expect((await stat(file)).mode & 0o777).toBe(0o600);
  expect(await readdir(folder)).toEqual(['passphrase.json']);
  const text = await readFile(file, 'utf8');
  expect(text).not.toContain(WORDS);
  const kept = JSON.parse(text) as { scrypt: unknown; salt: string; hash: string };
  expect(kept.scrypt).toEqual({ n: 131_072, r: 8, p: 1 });
  expect(kept.hash).toBe(
    scryptSync(WORDS, Buffer.from(kept.salt, 'base64'), 32, {
      N: 131_072,
      r: 8,
      p: 1,
      maxmem: 2 ** 28,
    }).toString('base64'),
  );
  const again = await setIn(folder);
  expect(again.id).not.toBe(first.id);
  expect(again.hash).not.toEqual(first.hash);
});

test('none is set before it is, and after it was removed', async () => {
  const folder = await temporaryFolder();
  const passphrase = new Passphrase(join(folder, randomUUID()));
  expect(await passphrase.stored()).toBeUndefined();
  expect(await passphrase.remove()).toBe(false);
  await passphrase.set(WORDS);
  expect(await passphrase.remove()).toBe(true);
  expect(await passphrase.stored()).toBeUndefined();
});

const SALT = `${'A'.repeat(22)}==`;
const HASH = `${'A'.repeat(43)}=`;
const file = (n: number, salt: string, hash: string) =>
  JSON.stringify({ scrypt: { n, r: 8, p: 1 }, salt, hash });

test.each([
  ['is empty', ''],
  ['is no JSON', '{'],
  ['is too cheap', file(2, SALT, HASH)],
  ['has a salt that cannot be read', file(131_072, '?', HASH)],
  ['has a short hash', file(131_072, SALT, 'AAAA')],
])('a file that %s lets nobody in', async (_what, text) => {
  const folder = await temporaryFolder();
  await writeFile(join(folder, 'passphrase.json'), text);
  await expectUserError(new Passphrase(folder).stored(), 'Unusable', 'npm run passphrase');
});

test('a file of that form is read', async () => {
  const folder = await temporaryFolder();
  await writeFile(join(folder, 'passphrase.json'), file(131_072, SALT, HASH));
  expect(await new Passphrase(folder).stored()).toMatchObject({
    salt: Buffer.alloc(16),
    hash: Buffer.alloc(32),
  });
});
