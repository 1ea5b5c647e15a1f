import { say, text, type Text } from '../../texts/say.ts';
import type { Batch } from '../model/batch.ts';
import { BARRIER_WORDS, FAT_CLASS_WORDS, PROCESS_WORDS } from '../model/words.ts';
import { doubtsOf } from '../model/plausibility.ts';
import { PouchLot } from '../model/pouch-lot.ts';
import { problemsOf } from '../model/problems.ts';
import type { SheetNotice } from './batch-notices.ts';
import type { BatchFigures } from './batch-sheet.ts';
import type { FillSheet } from './fill-pouches.ts';
import { containerMl, containerTareG } from './portioning.ts';

/**
 * The lots that sealing a batch writes, or why it cannot be sealed at all.
 *
 * @param sealedOn calendar date
 */
export function sealedLots(
  batch: Batch,
  figures: BatchFigures,
  fills: readonly FillSheet[],
  notices: readonly SheetNotice[],
  sealedOn: string,
): { lots: PouchLot[]; blocks: string[] } {
  const { recipe, dryer } = batch;
  const { totals, dry, water, steep, allergens, cost } = figures;
  const missingKeeping = fills.filter((fill) => !fill.keeping && batch.bestBefore === undefined);
  const blocks = [
    ...(batch.trays.length === 0 ? [say('No tray has been weighed in yet.')] : []),
    ...notices.filter(({ level }) => level === 'wrong').map(({ text }) => text),
    ...(batch.fills?.length === 0 ? [say('No pouch is chosen.')] : []),
    ...missingKeeping.map(({ fill, name, isOxygenFree }) =>
      say(
        'The storage table has no line for {process}, {fat} food in {pouch} ({barrier}, {absorber, select, yes {with} other {without}} enough absorber). Add one to the equipment, or enter a best-before date.',
        {
          process: say(PROCESS_WORDS[dryer.process]),
          fat: say(FAT_CLASS_WORDS[totals.fatClass]),
          pouch: name,
          barrier: say(BARRIER_WORDS[fill.pouch.barrier]),
          absorber: isOxygenFree ? 'yes' : 'no',
        },
      ),
    ),
    ...(batch.bestBefore !== undefined && batch.bestBefore < sealedOn
      ? [
          say('The best-before date {bestBefore} lies before the sealing date {sealedOn}.', {
            bestBefore: batch.bestBefore,
            sealedOn,
          }),
        ]
      : []),
  ];
  if (blocks.length > 0) return { lots: [], blocks };

  const lots = fills.map(({ fill, keeping: kept, code }): PouchLot => ({
    code,
    recipe: recipe.name,
    mealKinds: recipe.mealKinds,
    sealedOn,
    bestBefore: batch.bestBefore ?? kept?.bestBefore ?? sealedOn,
    pouches: fill.pouches,
    servingsPerPouch: fill.servings,
    dryWeightG: rounded(dry.servingG, 2),
    energyKcal: rounded(dry.servingKcal, 1),
    proteinG: rounded(dry.servingParts.proteinG, 2),
    fatG: rounded(dry.servingParts.fatG, 2),
    carbohydrateG: rounded(dry.servingParts.carbohydrateG, 2),
    waterMl: rounded(water.servingMl, 0),
    waterKind: recipe.waterKind,
    ...steep,
    tareG: rounded(containerTareG(fill) + fill.absorbers * (fill.absorber?.tareG ?? 0), 1),
    volumeMl: rounded(containerMl(fill), 0),
    ...(allergens && { allergens: [...allergens] }),
    diets: [...totals.diets],
    ...(totals.unpriced.length === 0 && { costMinor: Math.round(cost.perServingMinor) }),
    note: batch.note,
  }));
  const wrong = lots.flatMap(whatIsWrongWith);
  return wrong.length > 0 ? { lots: [], blocks: wrong } : { lots, blocks };
}

/** Fields of a lot whose messages do not name them. */
const LOT_WORDS: Readonly<Record<string, Text>> = {
  energyKcal: text('energy of a serving'),
  waterMl: text('water of a serving'),
  costMinor: text('cost of a serving'),
  bestBefore: text('best-before'),
};

/** What the shelf would refuse of a lot. */
function whatIsWrongWith(lot: PouchLot): string[] {
  const parsed = PouchLot.safeParse(lot, { reportInput: true });
  const problems = parsed.success
    ? doubtsOf(lot)
        .filter(({ severity }) => severity === 'refuse')
        .map(({ reason }) => reason)
    : problemsOf(parsed.error).map(({ field, message }) => {
        const word = LOT_WORDS[field];
        return word ? `${say(word)} ${message}` : message;
      });
  return problems.map((problem) =>
    say('Lot {code} would not be right: {problem}. Check amounts, weights and servings.', {
      code: lot.code,
      problem,
    }),
  );
}

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));
