import { createHmac, timingSafeEqual } from 'node:crypto';
import type { StoredPassphrase } from './passphrase.ts';
import { newToken } from './token.ts';

/*
 * A browser that signed in once bears a mark of its own, and is told from strangers by it when it signs in again. The mark lets nobody in. It is signed with
 * what is stored of the passphrase, so that it ends with that, and nothing has to be stored of it.
 */

const seal = (stored: StoredPassphrase, id: string): Buffer =>
  createHmac('sha256', stored.hash).update(`signed in before: ${id}`).digest();

/** @returns a mark for a browser that has just signed in */
export function newMark(stored: StoredPassphrase): string {
  const id = newToken();
  return `${id}.${seal(stored, id).toString('base64url')}`;
}

/** @returns which browser a mark belongs to; `undefined` where it is none that was given out with this passphrase */
export function deviceOf(mark: string | undefined, stored: StoredPassphrase): string | undefined {
  const [id = '', sealed = ''] = mark?.split('.') ?? [];
  const [given, right] = [Buffer.from(sealed, 'base64url'), seal(stored, id)];
  return given.length === right.length && timingSafeEqual(given, right) ? id : undefined;
}
