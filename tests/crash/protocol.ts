/** What a worker is to do in a data folder. */
export type Task = {
  readonly folder: string;
  readonly kind: 'change' | 'update' | 'copy' | 'restore';
  readonly seed: number;
  /** In the names of everything it makes, so that workers do not come in each other's way. */
  readonly name: string;
  /** Copies to put back, one after the other. */
  readonly copies?: readonly string[];
};

/** What a worker says: what it does with something of a name, and what should be known of it then. */
export type Said = {
  readonly opening?: true;
  readonly ready?: true;
  readonly begun?: string;
  readonly done?: string;
  /** What was begun, where it had no name yet. */
  readonly of?: string;
  readonly expected?: string;
  readonly copied?: string;
};

/** A trip whose id is not known yet. */
export const NEW = 'trip';
