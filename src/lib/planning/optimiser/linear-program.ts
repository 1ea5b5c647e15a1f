/** A row of a program: lower <= sum of terms <= upper. Terms are pairs of a column and its coefficient. */
export type ProgramRow = {
  readonly lower: number;
  readonly upper: number;
  readonly terms: readonly (readonly [column: number, coefficient: number])[];
};
/** A column of a program, from 0 to `upper`. Terms are pairs of a row and the coefficient there. */
export type ProgramColumn = {
  readonly cost: number;
  readonly upper: number;
  readonly terms: readonly (readonly [row: number, coefficient: number])[];
};
/** What a linear program comes to. `prices`: what one more on a row's side would cost. */
export type ProgramSolution = {
  readonly points: number;
  readonly values: ArrayLike<number>;
  readonly prices: ArrayLike<number>;
};

/** A linear program that grows; each solution starts from the one before. */
export type GrowingProgram = {
  addRows(rows: readonly ProgramRow[]): void;
  addColumns(columns: readonly ProgramColumn[]): void;
  /** Bounds a column anew. */
  bound(columns: readonly number[], lower: number, upper: number): void;
  solve(): ProgramSolution;
  /**
   * The program with some columns whole.
   *
   * @param nodes of the tree to look at
   * @returns the best values found, and a bound that no solution is under
   */
  solveWhole(
    whole: readonly number[],
    nodes: number,
  ): { readonly values: ArrayLike<number> | undefined; readonly bound: number };
  close(): void;
};

/** Opens an empty program; handed in, since the core itself loads no solver. */
export type OpenProgram = () => GrowingProgram;
