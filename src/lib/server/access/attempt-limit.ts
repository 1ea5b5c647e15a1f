import { isIP } from 'node:net';

/** Within this time, so many wrong passphrases are heard from one network, and from all. */
const WINDOW_MS = 15 * 60_000;
const MOST_OF_ONE = 5;
const MOST_OF_ALL = 30;

/** Counts attempts to sign in, so that a passphrase cannot be found by trying. In memory: a restart forgets them. */
export class AttemptLimit {
  readonly #now: () => number;
  #counted: { readonly at: number; readonly network: string }[] = [];

  /** @param now ms */
  constructor(now: () => number) {
    this.#now = now;
  }

  /**
   * Counts an attempt before it is looked at, so that many at once count too.
   *
   * @returns `undefined` where it may be looked at; else how long to wait, s
   */
  begin(address: string): number | undefined {
    const now = this.#now();
    const network = networkOf(address);
    this.#counted = this.#counted.filter(({ at }) => at > now - WINDOW_MS);
    const ofOne = this.#counted.filter((attempt) => attempt.network === network);
    const full = [ofOne.at(-MOST_OF_ONE), this.#counted.at(-MOST_OF_ALL)].flatMap((oldest) => oldest ?? []);
    if (full.length > 0) return Math.ceil((Math.max(...full.map(({ at }) => at)) + WINDOW_MS - now) / 1000);
    this.#counted.push({ at: now, network });
    return undefined;
  }

  /** Takes back what was counted for an address: whoever knows the passphrase may have mistyped it before. */
  succeeded(address: string): void {
    const network = networkOf(address);
    this.#counted = this.#counted.filter((attempt) => attempt.network !== network);
  }
}

/** @returns the part of an address that one household or host has: all of IPv4, the first 64 bits of IPv6 */
export function networkOf(address: string): string {
  const bare = (address.split('%')[0] ?? '').replace(/^::ffff:(?=\d+\.)/i, '');
  if (isIP(bare) !== 6) return isIP(bare) === 4 ? bare : 'unknown';
  const [head = '', tail = ''] = bare.split('::');
  const [before, after] = [head, tail].map((groups) => (groups === '' ? [] : groups.split(':')));
  const zeros = 8 - (before?.length ?? 0) - (after?.length ?? 0);
  const groups = [...(before ?? []), ...Array<string>(Math.max(zeros, 0)).fill('0'), ...(after ?? [])];
  return groups
    .slice(0, 4)
    .map((group) => Number.parseInt(group, 16).toString(16))
    .join(':');
}
