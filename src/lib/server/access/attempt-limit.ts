import { isIP } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { say } from '../../texts/say.ts';
import { InTurns } from '../in-turns.ts';
import { bareAddress } from './own-origin.ts';

/** So many wrong passphrases are heard from one asker; after each further one it waits twice as long as before, up to the longest. */
const FREE = 5;
const FIRST_WAIT_MS = 30_000;
const LONGEST_WAIT_MS = 15 * 60_000;
/** Who tries nothing for so long begins anew. */
const FORGOTTEN_MS = 24 * 3_600_000;
/** After so many wrong ones of all strangers within this time, they are heard one every few seconds. */
const WINDOW_MS = 15 * 60_000;
const MANY = 30;
const PACE_MS = 2000;
/** Strangers who wait for that, at most; the next one is told to come again. */
const MOST_WAITING = 10;

/** Who wants to sign in. */
export type Asker = {
  /** Attempts under the same one are counted together. */
  readonly key: string;
  /** Neither this machine nor a browser that signed in before: has to stand in line with all others of which that is true. */
  readonly isStranger: boolean;
};

export type Attempt =
  | { readonly outcome: 'right' }
  | { readonly outcome: 'wrong' }
  /** Too many were wrong, so this one was not looked at; `waitS`: seconds until one is. */
  | { readonly outcome: 'later'; readonly waitS: number };

/**
 * Slows attempts to sign in, so that a passphrase cannot be found by trying, and nobody's attempts keep somebody else out. In memory: a restart forgets
 * them. docs/security.md says why it is as it is.
 */
export class AttemptLimit {
  readonly #now: () => number;
  readonly #pause: (ms: number) => Promise<unknown>;
  /** How often each asker was wrong, and when last; the longest ago comes first. */
  readonly #wrong = new Map<string, { readonly times: number; readonly at: number }>();
  /** When strangers were wrong lately. */
  #strangers: readonly number[] = [];
  #heardStrangerAt = -Infinity;
  readonly #line = new InTurns(MOST_WAITING, () =>
    say(
      'too many people are signing in right now; try again in a few seconds, or in a browser that has signed in before',
    ),
  );

  /** @param now ms @param pause waits for so many ms */
  constructor(now: () => number, pause: (ms: number) => Promise<unknown> = sleep) {
    this.#now = now;
    this.#pause = pause;
  }

  /**
   * Looks at an attempt where it is its time. It is counted before, so that many at once count too.
   *
   * @param isRight looks at the passphrase
   * @throws UserError `Busy` where too many strangers wait already; what `isRight` throws
   */
  attempt(asker: Asker, isRight: () => Promise<boolean>): Promise<Attempt> {
    if (!asker.isStranger) return this.#counted(asker, isRight);
    return this.#line.enter((turn) =>
      this.#counted(asker, async () => await turn(() => this.#inItsPace(isRight))),
    );
  }

  async #counted({ key }: Asker, isRight: () => Promise<boolean>): Promise<Attempt> {
    const now = this.#now();
    for (const [old, { at }] of this.#wrong) if (at <= now - FORGOTTEN_MS) this.#wrong.delete(old);
    const before = this.#wrong.get(key) ?? { times: 0, at: now };
    const waitMs = before.at + waitAfter(before.times) - now;
    if (waitMs > 0) return { outcome: 'later', waitS: Math.ceil(waitMs / 1000) };
    this.#wrong.delete(key);
    this.#wrong.set(key, { times: before.times + 1, at: now });
    if (!(await isRight())) return { outcome: 'wrong' };
    this.#wrong.delete(key); // whoever knows it may have mistyped it before
    return { outcome: 'right' };
  }

  async #inItsPace(isRight: () => Promise<boolean>): Promise<boolean> {
    this.#strangers = this.#strangers.filter((at) => at > this.#now() - WINDOW_MS);
    const waitMs = this.#heardStrangerAt + PACE_MS - this.#now();
    if (this.#strangers.length >= MANY && waitMs > 0) await this.#pause(waitMs);
    this.#heardStrangerAt = this.#now();
    const right = await isRight();
    if (!right) this.#strangers = [...this.#strangers, this.#now()];
    return right;
  }
}

/** @param times how many were wrong @returns ms */
const waitAfter = (times: number): number =>
  times < FREE ? 0 : Math.min(FIRST_WAIT_MS * 2 ** (times - FREE), LONGEST_WAIT_MS);

/** @returns the part of an address that one household or host has: all of IPv4, the first 64 bits of IPv6 */
export function networkOf(address: string): string {
  const bare = bareAddress(address.split('%')[0] ?? '');
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
