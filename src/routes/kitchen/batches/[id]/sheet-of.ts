import { error } from '@sveltejs/kit';
import { batchSheet, type BatchSheet } from '$lib/planning/drying/batch-sheet.ts';
import { batchesBeside } from '$lib/planning/drying/shared-run.ts';
import type { Batch } from '$lib/planning/model/batch.ts';
import type { Kitchen } from '$lib/planning/model/kitchen.ts';
import { sealingBlockText } from '$lib/presentation/batch-words.ts';
import type { Problem } from '$lib/presentation/problems.ts';
import type { UnitSystem } from '$lib/presentation/show.ts';
import type { App } from '$lib/server/app.ts';
import { knownRuns } from '$lib/server/kitchen-repository.ts';
import type { Stored } from '$lib/server/records.ts';
import { say } from '$lib/texts/say.ts';

export async function batchOf(app: App, id: string): Promise<Stored<Batch>> {
  return (await app.kitchen.batches.get(id)) ?? error(404, say('Batch not found. It may have been deleted.'));
}

export async function sheetOf(app: App, batch: Stored<Batch>, kitchen: Kitchen): Promise<BatchSheet> {
  const others = (await app.kitchen.batches.list()).filter(({ id }) => id !== batch.id);
  const beside = batchesBeside(batch, others);
  const elsewhere = others.filter((other) => !beside.includes(other));
  return batchSheet(
    batch.value,
    kitchen,
    knownRuns(kitchen, elsewhere, app.today()),
    app.today(),
    beside.map(({ value }) => value),
  );
}

/** @returns why a batch is not let onto the shelf: what forbids it, or else what is not confirmed, unless its cook gave a reason. */
export function whyNotSealed(
  { blocks, holds }: BatchSheet,
  { releasedBecause }: Batch,
  units: UnitSystem,
): Problem[] {
  if (blocks.length > 0)
    return blocks.map((block) => ({ field: '', message: sealingBlockText(block, units) }));
  if (holds.length === 0 || releasedBecause !== undefined) return [];
  return [
    {
      field: 'releasedBecause',
      message: say(
        'not everything is confirmed safe and dry ({points} points, listed below). Keep drying, weigh again and tick what is done, or give a reason for releasing it anyway',
        { points: holds.length },
      ),
    },
  ];
}
