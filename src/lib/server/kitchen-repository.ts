import type { Run } from '../planning/drying/expect-run.ts';
import { batchSheet } from '../planning/drying/batch-sheet.ts';
import { runOf } from '../planning/drying/shared-run.ts';
import { Batch } from '../planning/model/batch.ts';
import { Food } from '../planning/model/composition.ts';
import type { Kitchen } from '../planning/model/kitchen.ts';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { Recipe } from '../planning/model/recipe.ts';
import type { Database } from './database/open-database.ts';
import { UserError } from './errors.ts';
import { Records, type Stored } from './records.ts';
import { takeDried } from './planned-lots.ts';
import { sealLot } from './shelf-repository.ts';
import { say } from '../texts/say.ts';

/** What is cooked and dried before it comes to the shelf. */
export class KitchenRepository {
  readonly recipes: Records<typeof Recipe>;
  readonly batches: Records<typeof Batch>;
  /** The user's own composition table. */
  readonly foods: Records<typeof Food>;

  constructor(db: Database, now: () => string) {
    this.recipes = new Records(db, now, {
      kind: 'recipe',
      schema: Recipe,
      nameOf: ({ name }) => name,
    });
    this.batches = new Records(db, now, {
      kind: 'batch',
      schema: Batch,
      nameOf: ({ code }) => code,
    });
    this.foods = new Records(db, now, {
      kind: 'food',
      schema: Food,
      nameOf: ({ name }) => name,
    });
  }

  /**
   * Seals a batch: its lots go onto the shelf, take the place of what trips plan to dry of it, and it is closed; all or nothing.
   *
   * @throws UserError `NotFound`, `StaleVersion`, `Conflict` where a code is taken, `Refused` where it is sealed already or has no lots
   */
  async sealBatch(
    { id, version, value }: Stored<Batch>,
    lots: readonly PouchLot[],
    on: string,
  ): Promise<Stored<Batch>> {
    if (value.sealed)
      throw new UserError(
        'Refused',
        say('Batch "{code}" was sealed on {date} already; its lots are on the shelf.', {
          code: value.code,
          date: value.sealed.on,
        }),
      );
    if (lots.length === 0)
      throw new UserError('Refused', say('Batch "{code}" has no pouches to seal yet.', { code: value.code }));
    const sealed = { ...value, sealed: { on, lots: lots.map(({ code }) => code) } };
    return this.batches.update(id, sealed, version, async (trx, at) => {
      for (const lot of lots) await sealLot(trx, at, lot, say('batch {code}', { code: value.code }), id);
      await takeDried(trx, at, lots);
    });
  }
}

/** Every run that is known: noted by hand, and of batches that are sealed. */
export function knownRuns(kitchen: Kitchen, batches: readonly Stored<Batch>[], today: string): Run[] {
  const ofBatches = [...Map.groupBy(batches, runOf).values()].flatMap((together): Run[] => {
    const hours = together.flatMap(({ value }) => value.weighings.at(-1)?.afterH ?? []);
    const first = together.at(0)?.value;
    if (!first || hours.length === 0 || !together.every(({ value }) => value.sealed)) return [];
    const removedG = together.map(({ value }) => {
      const { dry, load } = batchSheet(value, kitchen, [], today);
      return Math.max(0, load.wetG - dry.dryG);
    });
    const metered = together.find(({ value }) => value.energyKwh !== undefined)?.value.energyKwh;
    return [
      {
        dryer: first.dryer.name,
        preFrozen: together.every(({ value }) => value.preFrozen),
        waterRemovedG: removedG.reduce((sum, each) => sum + each, 0),
        hours: Math.max(...hours),
        ...(metered !== undefined && { energyKwh: metered }),
      },
    ];
  });
  return [...kitchen.runs, ...ofBatches];
}
