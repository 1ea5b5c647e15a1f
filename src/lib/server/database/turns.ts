/** Turns of those who may not do something at the same time, in the order of coming. */
export class Turns {
  readonly #patienceMs: number;
  readonly #tooLong: () => Error;
  /** When all who come before the next one have ended. */
  #allDone: Promise<void> = Promise.resolve();

  /**
   * @param patienceMs how long a turn is waited for
   * @param tooLong makes what is thrown then
   */
  constructor(patienceMs: number, tooLong: () => Error) {
    this.#patienceMs = patienceMs;
    this.#tooLong = tooLong;
  }

  /** @returns what ends the turn */
  async take(): Promise<() => void> {
    const before = this.#allDone;
    const turn = Promise.withResolvers<void>();
    this.#allDone = before.then(() => turn.promise);
    const outOfPatience = Promise.withResolvers<never>();
    const timer = setTimeout(() => outOfPatience.reject(this.#tooLong()), this.#patienceMs);
    try {
      await Promise.race([before, outOfPatience.promise]);
      return turn.resolve;
    } catch (error) {
      turn.resolve();
      throw error;
    } finally {
      clearTimeout(timer);
    }
  }
}
