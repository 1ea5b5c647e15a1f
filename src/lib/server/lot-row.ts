import type { z } from 'zod';
import { lotKeys } from '../lot-keys.ts';
import { LotDetails, PouchLot } from '../planning/model/pouch-lot.ts';
import type { LotFields } from './database/tables.ts';
import { parseStored } from './stored-json.ts';
import { say } from '../texts/say.ts';

/** A lot as its row. The count is left out: it belongs into the ledger. */
export function lotFields(lot: PouchLot): LotFields {
  return {
    code: lot.code,
    recipe: lot.recipe,
    mealKinds: JSON.stringify(lot.mealKinds),
    sealedOn: lot.sealedOn,
    bestBefore: lot.bestBefore,
    servingsPerPouch: lot.servingsPerPouch,
    dryWeightG: lot.dryWeightG,
    energyKcal: lot.energyKcal,
    proteinG: lot.proteinG ?? null,
    fatG: lot.fatG ?? null,
    carbohydrateG: lot.carbohydrateG ?? null,
    waterMl: lot.waterMl,
    waterKind: lot.waterKind,
    steepMin: lot.steepMin,
    stirAfterMin: lot.stirAfterMin ?? null,
    tareG: lot.tareG,
    volumeMl: lot.volumeMl ?? null,
    allergens: lot.allergens ? JSON.stringify(lot.allergens) : null,
    diets: JSON.stringify(lot.diets),
    costMinor: lot.costMinor ?? null,
    details: detailsJson(lot),
    withdrawn: lot.withdrawn ?? null,
    note: lot.note,
    ...lotKeys(lot),
  };
}

/** What is said of a lot besides, as JSON; null where nothing is. */
function detailsJson(lot: PouchLot): string | null {
  const said = (Object.keys(LotDetails.shape) as (keyof LotDetails)[]).flatMap((key) =>
    lot[key] === undefined ? [] : [[key, lot[key]] as const],
  );
  return said.length > 0 ? JSON.stringify(Object.fromEntries(said)) : null;
}

const MOST_LISTS_KEPT = 1000;

/** Reads a list as it is stored, each once: a large shelf has the same few lists over and over. */
function readOnce<Word extends string>(
  schema: z.ZodType<Word[]>,
): (json: string, what: () => string) => Word[] {
  const known = new Map<string, readonly Word[]>();
  return (json, what) => {
    const list = known.get(json) ?? parseStored(schema, json, what);
    if (known.size >= MOST_LISTS_KEPT) known.clear();
    known.set(json, list);
    return [...list];
  };
}

const mealKindsOf = readOnce(PouchLot.shape.mealKinds);
const allergensOf = readOnce(PouchLot.shape.allergens.unwrap());
const dietsOf = readOnce(PouchLot.shape.diets);

/**
 * The lot of a row, with the pouches that the ledger says there are.
 *
 * @throws UserError `Unusable` where a list cannot be read
 */
export function lotOf(row: LotFields, pouches: number): PouchLot {
  const what = () => say('The lot "{code}"', { code: row.code });
  return {
    code: row.code,
    recipe: row.recipe,
    mealKinds: mealKindsOf(row.mealKinds, what),
    sealedOn: row.sealedOn,
    bestBefore: row.bestBefore,
    pouches,
    servingsPerPouch: row.servingsPerPouch,
    dryWeightG: row.dryWeightG,
    energyKcal: row.energyKcal,
    ...(row.proteinG !== null && { proteinG: row.proteinG }),
    ...(row.fatG !== null && { fatG: row.fatG }),
    ...(row.carbohydrateG !== null && { carbohydrateG: row.carbohydrateG }),
    waterMl: row.waterMl,
    waterKind: row.waterKind,
    steepMin: row.steepMin,
    ...(row.stirAfterMin !== null && { stirAfterMin: row.stirAfterMin }),
    tareG: row.tareG,
    ...(row.volumeMl !== null && { volumeMl: row.volumeMl }),
    ...(row.allergens !== null && { allergens: allergensOf(row.allergens, what) }),
    diets: dietsOf(row.diets, what),
    ...(row.costMinor !== null && { costMinor: row.costMinor }),
    ...(row.details !== null && parseStored(LotDetails, row.details, what)),
    ...(row.withdrawn !== null && { withdrawn: row.withdrawn }),
    note: row.note,
  };
}
