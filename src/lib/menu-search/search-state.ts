/** A search that runs now. */
export type Running = {
  readonly phase: 'search' | 'compare';
  /** Share of the search's budget used. */
  readonly done: number;
  /** The best so far and what no menu is under, points, once known. */
  readonly points: number | undefined;
  readonly bound: number | undefined;
  readonly elapsedMs: number;
};
/** What a search for a better menu than the one that stands came to. */
export type Searched = {
  readonly before: number;
  readonly after: number;
  /** Nothing better was found, so the menu stays. */
  readonly stays: boolean;
  readonly stopped: boolean;
  readonly elapsedMs: number;
  /** The best that comparing with other menus came upon, points, where that is better still. */
  readonly betterInComparison: number | undefined;
};
