/* What the ledger of pouches knows: places, the kinds of its entries, and how far a trip is. */

export type Place = 'outside' | 'shelf' | 'set-aside' | 'packed';

/** From where to where the pouches of each kind of entry go. */
export const ROUTES = {
  sealed: ['outside', 'shelf'],
  imported: ['outside', 'shelf'],
  'set aside': ['shelf', 'set-aside'],
  released: ['set-aside', 'shelf'],
  packed: ['set-aside', 'packed'],
  eaten: ['packed', 'outside'],
  'brought back': ['packed', 'shelf'],
  /** All of a trip that was called off. */
  unpacked: ['packed', 'shelf'],
  /** Counted as eaten when the trip was finished, and back in the packs as it was opened again. */
  reopened: ['outside', 'packed'],
  /** Without a trip. */
  'eaten at home': ['shelf', 'outside'],
  discarded: ['shelf', 'outside'],
  /** A lot that is suspect: not to be eaten. */
  withdrawn: ['shelf', 'outside'],
  reinstated: ['outside', 'shelf'],
  counted: ['outside', 'shelf'],
} as const satisfies Record<string, readonly [from: Place, to: Place]>;
export type EntryKind = keyof typeof ROUTES;

export type Stage = 'open' | 'set aside' | 'packed' | 'finished';

/** @returns whether the pouches are in the packs or were: the menu stays what it is. */
export const hasLeft = (stage: Stage): boolean => stage === 'packed' || stage === 'finished';
