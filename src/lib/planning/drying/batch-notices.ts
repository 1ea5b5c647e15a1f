import type { Batch } from '../model/batch.ts';
import type { Kitchen } from '../model/kitchen.ts';
import { showBoth } from '../units/both.ts';
import type { BatchFigures } from './batch-sheet.ts';
import type { FillSheet } from './fill-pouches.ts';
import { fatCaution } from './recipe-totals.ts';
import type { SafetyStep } from './safety-steps.ts';
import { trueVolumeMl } from './true-volume.ts';

/** `wrong` needs mending, `caution` needs care, `note` explains. */
export type SheetNotice = {
  readonly level: 'wrong' | 'caution' | 'note';
  readonly step: SafetyStep | 'portion';
  readonly text: string;
};

/** Scales and spoons lose or add so much, share. */
const WEIGHING_SLACK = 0.02;

/**
 * What the cook should know, at the step where it matters.
 *
 * @param fills `undefined` where no pouch holds a serving
 * @param today calendar date
 */
export function batchNotices(
  batch: Batch,
  kitchen: Kitchen,
  { totals, load, dryness, dry, steep }: BatchFigures,
  fills: readonly FillSheet[] | undefined,
  today: string,
): SheetNotice[] {
  const { recipe, dryer } = batch;
  const { servings } = dry;
  const inPouches = servingsIn(fills ?? []);
  const notices: SheetNotice[] = [];
  const say = (level: SheetNotice['level'], step: SheetNotice['step'], text: string) =>
    notices.push({ level, step, text });

  totals.problems.forEach(({ field, message }) =>
    say('wrong', 'cook', `The recipe, ${FIELD_WORDS[field] ?? field}: it ${message}.`),
  );
  totals.doubts.forEach(({ food, reason }) => say('caution', 'cook', `${food}: ${reason}.`));
  const fat = fatCaution(totals);
  if (fat) say('caution', 'cook', fat);
  if (batch.trays.length > 0 && batch.cookedOn > today)
    say(
      'wrong',
      'cook',
      `It is on the trays, but cooked on ${batch.cookedOn}, which is still to come. Check the date.`,
    );
  if (totals.unpriced.length > 0)
    say('note', 'cook', `No price is known of ${totals.unpriced.join(', ')}, so the cost is too low.`);
  if (batch.trays.length > 0 && load.share > 1 + WEIGHING_SLACK)
    say(
      'wrong',
      'load',
      `There are ${grams(load.wetG)} on the trays, more than the ${grams(totals.cookedG)} that were cooked. Weigh the cooked dish, or check the trays' own weights.`,
    );
  else if (batch.trays.length > 0 && load.share < 1 - WEIGHING_SLACK && batch.cookedG === undefined)
    say(
      'note',
      'load',
      `The dish was not weighed when cooked. By its cooking yield it came to ${grams(totals.cookedG)}, so the ${grams(load.wetG)} on the trays count as ${percent(load.share)} of it. If all of it is on the trays, enter its weight.`,
    );
  const loads = load.trays.map((tray, index) => ({ ...tray, number: index + 1 }));
  const heavy = loads.filter(({ tooHeavy }) => tooHeavy);
  if (heavy.length > 0)
    say(
      'caution',
      'load',
      `More is on a tray than the ${grams(dryer.trayLimitG)} that it takes: ${heavy.map(({ number, wetG }) => `tray ${number} with ${grams(wetG)}`).join(', ')}. It will dry late or not through.`,
    );
  const deep = loads.filter(({ tooDeep, tooHeavy }) => tooDeep && !tooHeavy);
  if (deep.length > 0)
    say(
      'caution',
      'load',
      `The food lies deeper than ${dryer.depthLimitMm} mm: ${deep.map(({ number, depthMm }) => `${depthMm.toFixed(0)} mm on tray ${number}`).join(', ')}. It will dry late or not through.`,
    );
  if (batch.trays.length === 0 && load.traysNeeded > dryer.trayCount)
    say(
      'caution',
      'load',
      `${grams(totals.cookedG)} fill ${load.traysNeeded} trays; "${dryer.name}" has ${dryer.trayCount}. What does not fit is eaten, chilled or frozen at once, and dried in another batch.`,
    );
  dryness.doubts.forEach((text) => say('caution', 'dry', text));
  if (!dry.bulkWeighed)
    say(
      'note',
      'portion',
      'No cup of the dry food has been weighed, so its volume is a usual one. Weigh one before you choose pouches.',
    );
  else if (dry.servingMl < trueVolumeMl(dry.servingParts))
    say(
      'wrong',
      'portion',
      'The cup weighs more than it could if it were filled without any air. Check its weight and its volume.',
    );
  if (recipe.waterKind !== 'none' && recipe.stirAfterMin && steep.stirAfterMin === undefined)
    say(
      'note',
      'portion',
      `Stirring after ${recipe.stirAfterMin} min does not fall within the steep time of ${steep.steepMin} min, so the lots do not say it.`,
    );
  if (batch.packedG !== undefined && batch.packedG > dry.dryG * (1 + WEIGHING_SLACK))
    say(
      'wrong',
      'portion',
      `${grams(batch.packedG)} of dry food to be packed are more than the ${grams(dry.dryG)} on the trays.`,
    );
  if (fills === undefined)
    say(
      'wrong',
      'portion',
      kitchen.pouches.length === 0
        ? 'The equipment lists no pouch or jar yet. Add one to it.'
        : `A serving fills ${dry.servingMl.toFixed(0)} ml, and no pouch of the kitchen holds one with its headspace. Add a larger pouch to the equipment, or divide into more servings.`,
    );
  if (fills && fills.length > 0 && Math.abs(inPouches - servings) > 1e-6)
    say(
      inPouches > servings ? 'wrong' : 'caution',
      'portion',
      inPouches > servings
        ? `The pouches hold more servings than there are, ${tidy(inPouches)} against ${tidy(servings)}. Take fewer pouches, or divide into more servings.`
        : `${tidy(servings - inPouches)} of ${tidy(servings)} servings are in no pouch.`,
    );
  fills?.forEach(({ fill, name, fits, neededMl, absorbedMl, oxygenMl }) => {
    const isFull = oxygenMl <= 0;
    if (fill.servings > fits)
      say(
        isFull ? 'wrong' : 'caution',
        'portion',
        isFull
          ? `${tidy(fill.servings)} servings are more than ${name} can hold; servings that fit: ${fits}.`
          : `${tidy(fill.servings)} to a pouch do not fit into ${name} with the headspace; servings that fit: ${fits}.`,
      );
    if (absorbedMl < neededMl)
      say(
        'caution',
        'seal',
        absorbedMl === 0
          ? `${name} is sealed without an oxygen absorber, so it keeps for less long.`
          : `${name} shuts in about ${oxygenMl.toFixed(0)} ml of oxygen; with the reserve ${neededMl.toFixed(0)} ml are to be taken up, and its absorbers take ${absorbedMl.toFixed(0)} ml.`,
      );
  });
  if (totals.allergensUnstated.length > 0 && batch.allergens === undefined)
    say(
      'caution',
      'seal',
      `Nobody has stated the allergens of ${totals.allergensUnstated.join(', ')}. State them in the recipe, or for the whole batch below; else the lots go to the shelf with allergens not stated, and nobody who avoids one is served from them.`,
    );

  return notices;
}

const FIELD_WORDS: Readonly<Record<string, string>> = {
  ingredients: 'ingredients',
  fatDrainedG: 'fat poured off',
  cookingYield: 'cooking yield',
  cookedG: 'weight of the cooked dish',
};

/** Servings in all pouches together. */
export const servingsIn = (fills: readonly FillSheet[]): number =>
  fills.reduce((sum, { fill }) => sum + fill.servings * fill.pouches, 0);

const tidy = (value: number): string => String(Number(value.toFixed(2)));
const grams = (value: number): string => showBoth(value, 'food');
const percent = (value: number): string => `${(value * 100).toFixed(0)} %`;
