import { setImmediate } from 'node:timers/promises';
import { UserError } from './errors.ts';

/** Lets few in at a time, and one after the other work, so that a crowd is told to come again instead of keeping everybody waiting. */
export class InTurns {
  readonly #most: number;
  readonly #full: () => string;
  #inside = 0;
  #last: Promise<unknown> = Promise.resolve();

  /** @param most how many may be inside, waiting or at work @param full what is said to the others */
  constructor(most: number, full: () => string) {
    this.#most = most;
    this.#full = full;
  }

  /**
   * @param visit gets `turn`, which runs work that holds the processor when it is its turn; between two of them other requests are looked at
   * @throws UserError `Busy` where too many are inside; what `visit` throws
   */
  async enter<Result>(
    visit: (turn: <Made>(work: () => Made) => Promise<Made>) => Promise<Result>,
  ): Promise<Result> {
    if (this.#inside >= this.#most) throw new UserError('Busy', this.#full());
    this.#inside += 1;
    try {
      return await visit((work) => {
        const turn = this.#last.then(() => setImmediate()).then(work);
        this.#last = turn.catch(() => undefined);
        return turn;
      });
    } finally {
      this.#inside -= 1;
    }
  }
}
