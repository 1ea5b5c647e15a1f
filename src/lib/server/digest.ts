import { createHash, hash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';

/** @returns SHA-256 of a value as JSON, in base64url: the same for what is written the same */
export const digestOf = (value: unknown): string => hash('sha256', JSON.stringify(value), 'base64url');

const ITEMS_AT_ONCE = 1000;

/** As `digestOf` of a value and a list, which may be long: other requests are answered meanwhile. */
export async function digestWith(value: unknown, list: readonly unknown[]): Promise<string> {
  const digest = createHash('sha256').update(JSON.stringify(value));
  for (let at = 0; at < list.length; at += ITEMS_AT_ONCE) {
    if (at > 0) await setImmediate();
    digest.update(JSON.stringify(list.slice(at, at + ITEMS_AT_ONCE)));
  }
  return digest.digest('base64url');
}
