import type { Batch } from '../model/batch.ts';
import type { Barrier, FatClass, Process } from '../model/kitchen.ts';
import { faultsOf, type Fault } from '../model/faults.ts';
import { doubtsOf } from '../model/plausibility.ts';
import { PouchLot } from '../model/pouch-lot.ts';
import type { BatchNotice } from './batch-notices.ts';
import type { BatchFigures } from './batch-figures.ts';
import type { FillSheet } from './fill-pouches.ts';
import { lotOfFill } from './lot-of-fill.ts';
import type { ContainerName } from './portioning.ts';
import { markUnmeasured } from './quick-batch.ts';

/** What keeps a batch from being sealed at all. */
export type SealingBlock =
  | BatchNotice
  | { readonly code: 'no-tray-weighed' | 'no-pouch-chosen' }
  | {
      readonly code: 'no-shelf-life';
      readonly process: Process;
      readonly fatClass: FatClass;
      readonly pouch: ContainerName;
      readonly barrier: Barrier;
      readonly absorber: boolean;
    }
  | { readonly code: 'best-before-sealing'; readonly bestBefore: string; readonly sealedOn: string }
  | {
      readonly code: 'lot-problem';
      readonly lot: string;
      readonly field: string;
      readonly fault: Fault;
    };

/** Warnings of what must not be sealed, whoever says so. */
const FORBIDS_SEALING: readonly BatchNotice['code'][] = ['germs-can-grow', 'raw-meat-in-warm-air'];

/**
 * The lots that sealing a batch writes, or why it cannot be sealed at all.
 *
 * @param sealedOn calendar date
 */
export function sealedLots(
  batch: Batch,
  figures: BatchFigures,
  fills: readonly FillSheet[],
  notices: readonly BatchNotice[],
  sealedOn: string,
): { lots: PouchLot[]; blocks: SealingBlock[] } {
  const { recipe, dryer, bestBefore } = batch;
  const blocks: SealingBlock[] = [];
  if (batch.trays.length === 0 && !batch.quick) blocks.push({ code: 'no-tray-weighed' });
  blocks.push(
    ...notices.filter(({ severity, code }) => severity === 'attention' || FORBIDS_SEALING.includes(code)),
  );
  if (batch.fills?.length === 0) blocks.push({ code: 'no-pouch-chosen' });
  if (bestBefore === undefined)
    for (const { fill, name, isOxygenFree, keeping } of fills)
      if (!keeping)
        blocks.push({
          code: 'no-shelf-life',
          process: dryer.process,
          fatClass: figures.totals.fatClass,
          pouch: name,
          barrier: fill.pouch.barrier,
          absorber: isOxygenFree,
        });
  if (bestBefore !== undefined && bestBefore < sealedOn)
    blocks.push({ code: 'best-before-sealing', bestBefore, sealedOn });
  if (blocks.length > 0) return { lots: [], blocks };

  const marked = batch.quick ? markUnmeasured : (lot: PouchLot) => lot;
  const lots = fills.map(({ fill, keeping: kept, code }) =>
    marked(
      lotOfFill(recipe, figures, fill, {
        code,
        sealedOn,
        bestBefore: bestBefore ?? kept?.bestBefore ?? sealedOn,
        pouches: fill.pouches,
        place: batch.place,
        note: batch.note,
      }),
    ),
  );
  const wrong = lots.flatMap(whatIsWrongWith);
  return wrong.length > 0 ? { lots: [], blocks: wrong } : { lots, blocks };
}

/** What the shelf would refuse of a lot. */
function whatIsWrongWith(lot: PouchLot): SealingBlock[] {
  const parsed = PouchLot.safeParse(lot, { reportInput: true });
  const faults = parsed.success
    ? doubtsOf(lot).filter(({ severity }) => severity === 'refuse')
    : faultsOf(parsed.error);
  return faults.map((fault) => ({
    code: 'lot-problem',
    lot: lot.code,
    field: parsed.success ? '' : fault.field,
    fault: { code: fault.code, params: fault.params } as Fault,
  }));
}
