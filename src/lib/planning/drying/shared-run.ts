import type { Batch } from '../model/batch.ts';

/** A batch as it is kept, with its id. */
export type KeptBatch = { readonly id: string; readonly value: Batch };

/** @returns what names the run of the dryer in which a batch lies: the id of the batch that was loaded first. */
export const runOf = ({ id, value }: KeptBatch): string => value.sharesRunOf ?? id;

/** @returns the other batches in the same run, each with trays of its own. */
export const batchesBeside = <Kept extends KeptBatch>(batch: KeptBatch, all: readonly Kept[]): Kept[] =>
  all.filter((other) => other.id !== batch.id && runOf(other) === runOf(batch));

/** @returns trays of a dryer on which nothing lies yet of the batches in it. */
export const freeTrays = (
  { trayCount }: Pick<Batch['dryer'], 'trayCount'>,
  beside: readonly Pick<Batch, 'trays'>[],
): number => Math.max(0, trayCount - beside.reduce((sum, { trays }) => sum + trays.length, 0));
