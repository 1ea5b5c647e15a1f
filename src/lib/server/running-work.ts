/** A piece of work that runs. */
export type Piece<Told> = {
  /** How far it is, told by the work itself. */
  told: Told;
  readonly stop: AbortController;
};

/** Long pieces of work by their keys, one at a time for each, with how far they are. All in memory. */
export class RunningWork<Told extends object> {
  readonly #running = new Map<
    string,
    { readonly piece: Piece<Told>; readonly startedAt: number; readonly outcome: Promise<unknown> }
  >();

  /**
   * Does a piece of work. Where the one of that key runs already, its outcome is waited for instead, so the same work is not done
   * twice at once: a key stands for one kind of work.
   */
  run<T>(key: string, told: Told, work: (piece: Piece<Told>) => Promise<T>): Promise<T> {
    const other = this.#running.get(key);
    if (other) return other.outcome as Promise<T>;
    const piece = { told, stop: new AbortController() };
    const outcome = Promise.resolve(piece)
      .then(work)
      .finally(() => this.#running.delete(key));
    this.#running.set(key, { piece, startedAt: performance.now(), outcome });
    return outcome;
  }

  /** @returns how far the work of a key is, where it runs */
  running(key: string): (Told & { elapsedMs: number }) | undefined {
    const found = this.#running.get(key);
    return found && { ...found.piece.told, elapsedMs: performance.now() - found.startedAt };
  }

  /** Asks the work of a key to end early. @returns whether there was any */
  stop(key: string): boolean {
    const found = this.#running.get(key);
    found?.piece.stop.abort();
    return found !== undefined;
  }

  /** Asks the work of a key to end early, and waits until it has, whatever came of it. */
  async end(key: string): Promise<void> {
    const found = this.#running.get(key);
    found?.piece.stop.abort();
    await found?.outcome.catch(() => undefined);
  }
}
