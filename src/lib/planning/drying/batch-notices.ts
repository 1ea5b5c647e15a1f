import { say, sayNumber, text, type Text } from '../../texts/say.ts';
import type { Batch } from '../model/batch.ts';
import type { Kitchen } from '../model/kitchen.ts';
import { showBoth } from '../units/both.ts';
import { shownFixed } from '../units/show.ts';
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
  const notice = (level: SheetNotice['level'], step: SheetNotice['step'], text: string) =>
    notices.push({ level, step, text });

  totals.problems.forEach(({ field, message }) =>
    notice('wrong', 'cook', say('The recipe, {field}: it {message}.', { field: fieldWord(field), message })),
  );
  totals.doubts.forEach(({ food, reason }) => notice('caution', 'cook', `${food}: ${reason}.`));
  const fat = fatCaution(totals);
  if (fat) notice('caution', 'cook', fat);
  if (batch.trays.length > 0 && batch.cookedOn > today)
    notice(
      'wrong',
      'cook',
      say('It is on the trays, but cooked on {date}, which is still to come. Check the date.', {
        date: batch.cookedOn,
      }),
    );
  if (totals.unpriced.length > 0)
    notice(
      'note',
      'cook',
      say('No price is known of {foods}, so the cost is too low.', { foods: totals.unpriced.join(', ') }),
    );
  if (batch.trays.length > 0 && load.share > 1 + WEIGHING_SLACK)
    notice(
      'wrong',
      'load',
      say(
        "There are {wet} on the trays, more than the {cooked} that were cooked. Weigh the cooked dish, or check the trays' own weights.",
        { wet: grams(load.wetG), cooked: grams(totals.cookedG) },
      ),
    );
  else if (batch.trays.length > 0 && load.share < 1 - WEIGHING_SLACK && batch.cookedG === undefined)
    notice(
      'note',
      'load',
      say(
        'The dish was not weighed when cooked. By its cooking yield it came to {cooked}, so the {wet} on the trays count as {share} of it. If all of it is on the trays, enter its weight.',
        { cooked: grams(totals.cookedG), wet: grams(load.wetG), share: percent(load.share) },
      ),
    );
  const loads = load.trays.map((tray, index) => ({ ...tray, number: index + 1 }));
  const heavy = loads.filter(({ tooHeavy }) => tooHeavy);
  if (heavy.length > 0)
    notice(
      'caution',
      'load',
      say('More is on a tray than the {most} that it takes: {trays}. It will dry late or not through.', {
        most: grams(dryer.trayLimitG),
        trays: heavy
          .map(({ number, wetG }) => say('tray {number} with {weight}', { number, weight: grams(wetG) }))
          .join(', '),
      }),
    );
  const deep = loads.filter(({ tooDeep, tooHeavy }) => tooDeep && !tooHeavy);
  if (deep.length > 0)
    notice(
      'caution',
      'load',
      say('The food lies deeper than {most} mm: {trays}. It will dry late or not through.', {
        most: sayNumber(dryer.depthLimitMm),
        trays: deep
          .map(({ number, depthMm }) => say('{depth} mm on tray {number}', { depth: whole(depthMm), number }))
          .join(', '),
      }),
    );
  if (batch.trays.length === 0 && load.traysNeeded > dryer.trayCount)
    notice(
      'caution',
      'load',
      say(
        '{cooked} fill {needed} trays; "{dryer}" has {count}. What does not fit is eaten, chilled or frozen at once, and dried in another batch.',
        {
          cooked: grams(totals.cookedG),
          needed: String(load.traysNeeded),
          dryer: dryer.name,
          count: String(dryer.trayCount),
        },
      ),
    );
  dryness.doubts.forEach((text) => notice('caution', 'dry', text));
  if (!dry.bulkWeighed)
    notice(
      'note',
      'portion',
      say(
        'No cup of the dry food has been weighed, so its volume is a usual one. Weigh one before you choose pouches.',
      ),
    );
  else if (dry.servingMl < trueVolumeMl(dry.servingParts))
    notice(
      'wrong',
      'portion',
      say(
        'The cup weighs more than it could if it were filled without any air. Check its weight and its volume.',
      ),
    );
  if (recipe.waterKind !== 'none' && recipe.stirAfterMin && steep.stirAfterMin === undefined)
    notice(
      'note',
      'portion',
      say(
        'Stirring after {stir} min does not fall within the steep time of {steep} min, so the lots do not say it.',
        { stir: String(recipe.stirAfterMin), steep: String(steep.steepMin) },
      ),
    );
  if (batch.packedG !== undefined && batch.packedG > dry.dryG * (1 + WEIGHING_SLACK))
    notice(
      'wrong',
      'portion',
      say('{packed} of dry food to be packed are more than the {dry} on the trays.', {
        packed: grams(batch.packedG),
        dry: grams(dry.dryG),
      }),
    );
  if (fills === undefined)
    notice(
      'wrong',
      'portion',
      kitchen.pouches.length === 0
        ? say('The equipment lists no pouch or jar yet. Add one to it.')
        : say(
            'A serving fills {volume} ml, and no pouch of the kitchen holds one with its headspace. Add a larger pouch to the equipment, or divide into more servings.',
            { volume: whole(dry.servingMl) },
          ),
    );
  if (fills && fills.length > 0 && Math.abs(inPouches - servings) > 1e-6)
    notice(
      inPouches > servings ? 'wrong' : 'caution',
      'portion',
      inPouches > servings
        ? say(
            'The pouches hold more servings than there are, {held} against {servings}. Take fewer pouches, or divide into more servings.',
            { held: tidy(inPouches), servings: tidy(servings) },
          )
        : say('{left} of {servings} servings are in no pouch.', {
            left: tidy(servings - inPouches),
            servings: tidy(servings),
          }),
    );
  fills?.forEach(({ fill, name, fits, neededMl, absorbedMl, oxygenMl }) => {
    const isFull = oxygenMl <= 0;
    if (fill.servings > fits)
      notice(
        isFull ? 'wrong' : 'caution',
        'portion',
        isFull
          ? say('{servings} servings are more than {pouch} can hold; servings that fit: {fits}.', {
              servings: tidy(fill.servings),
              pouch: name,
              fits: String(fits),
            })
          : say(
              '{servings} to a pouch do not fit into {pouch} with the headspace; servings that fit: {fits}.',
              {
                servings: tidy(fill.servings),
                pouch: name,
                fits: String(fits),
              },
            ),
      );
    if (absorbedMl < neededMl)
      notice(
        'caution',
        'seal',
        absorbedMl === 0
          ? say('{pouch} is sealed without an oxygen absorber, so it keeps for less long.', { pouch: name })
          : say(
              '{pouch} shuts in about {oxygen} ml of oxygen; with the reserve {needed} ml are to be taken up, and its absorbers take {absorbed} ml.',
              {
                pouch: name,
                oxygen: whole(oxygenMl),
                needed: whole(neededMl),
                absorbed: whole(absorbedMl),
              },
            ),
      );
  });
  if (totals.allergensUnstated.length > 0 && batch.allergens === undefined)
    notice(
      'caution',
      'seal',
      say(
        'Nobody has stated the allergens of {foods}. State them in the recipe, or for the whole batch below; else the lots go to the shelf with allergens not stated, and nobody who avoids one is served from them.',
        { foods: totals.allergensUnstated.join(', ') },
      ),
    );

  return notices;
}

const FIELD_WORDS: Readonly<Record<string, Text>> = {
  ingredients: text('ingredients'),
  fatDrainedG: text('fat poured off'),
  cookingYield: text('cooking yield'),
  cookedG: text('weight of the cooked dish'),
};
const fieldWord = (field: string): string => {
  const word = FIELD_WORDS[field];
  return word ? say(word) : field;
};

/** Servings in all pouches together. */
export const servingsIn = (fills: readonly FillSheet[]): number =>
  fills.reduce((sum, { fill }) => sum + fill.servings * fill.pouches, 0);

const tidy = (value: number): string => sayNumber(value, { maximumFractionDigits: 2, useGrouping: false });
const whole = (value: number): string => shownFixed(value, 0);
const grams = (value: number): string => showBoth(value, 'food');
const percent = (value: number): string => `${whole(value * 100)} %`;
