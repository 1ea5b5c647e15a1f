import { readQuickLots, type QuickLot } from '$lib/forms/quick-lots.ts';
import type { ShownIn } from '$lib/forms/lot-form.ts';
import { keptLines } from '$lib/forms/lines.ts';
import type { FormReader } from '$lib/forms/read-form.ts';
import { allergenLabel } from '$lib/presentation/code-words.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import type { UnitSystem } from '$lib/presentation/show.ts';
import { show } from '$lib/presentation/show.ts';
import { aboutWhere } from '$lib/presentation/about.ts';
import { blankFields, shownEstimates } from '$lib/presentation/lot-estimates.ts';
import type { App } from '$lib/server/app.ts';
import { knownToHousehold } from '$lib/server/known-to-household.ts';
import { say } from '$lib/texts/say.ts';

/** What a row comes to, in words. */
export type QuickEstimate = {
  readonly code: string;
  /** The lot in one line; what nobody said is marked. */
  readonly summary: string;
  readonly allergens: string;
  /** What the fields take that are left blank, by field. */
  readonly blank: Readonly<Record<string, string>>;
};
/** By the line of the form. */
export type QuickEstimates = Readonly<Record<number, QuickEstimate>>;

/** Reads the rows with what the household knows of such dishes. */
export async function readRows(app: App, read: FormReader, shown: ShownIn): Promise<QuickLot[]> {
  const names = keptLines(read, 'lots', []).flatMap((line) => read.text(`lots[${line}].recipe`) ?? []);
  const [codes, alike] = await Promise.all([app.shelf.codes(), app.shelf.lotsCalled(names)]);
  return readQuickLots(read, shown, await knownToHousehold(app, alike), codes);
}

export const estimatesOf = (rows: readonly QuickLot[], unitSystem: UnitSystem): QuickEstimates =>
  Object.fromEntries(rows.map(({ line, lot }) => [line, estimateOf(lot, unitSystem)]));

function estimateOf(lot: PouchLot, unitSystem: UnitSystem): QuickEstimate {
  const estimates = shownEstimates(lot, unitSystem);
  const shownWater =
    estimates.find(({ field }) => field === 'waterMl')?.value ?? show(lot.waterMl, 'pour', unitSystem);
  const shownEnergy =
    estimates.find(({ field }) => field === 'energyKcal')?.value ??
    show(lot.energyKcal, 'energy', unitSystem);
  return {
    code: lot.code,
    summary: [
      say(
        '{pouches, plural, one {# pouch} other {# pouches}} of {servings, plural, one {# serving} other {# servings}}',
        { pouches: lot.pouches, servings: lot.servingsPerPouch },
      ),
      say('a serving: {weight} dry, {energy}, {water}', {
        weight: show(lot.dryWeightG, 'food', unitSystem),
        energy: aboutWhere(lot, 'energyKcal', shownEnergy),
        water:
          lot.waterKind === 'none'
            ? say('no water')
            : say('{amount} water', { amount: aboutWhere(lot, 'waterMl', shownWater) }),
      }),
      say('best before {date}', { date: aboutWhere(lot, 'bestBefore', lot.bestBefore) }),
    ].join('; '),
    allergens: allergensInWords(lot),
    blank: { code: lot.code, ...blankFields(lot, unitSystem) },
  };
}

function allergensInWords({ allergens, contains }: PouchLot): string {
  const named = (list: readonly Parameters<typeof allergenLabel>[0][]) => list.map(allergenLabel).join(', ');
  if (allergens === undefined)
    return contains && contains.length > 0
      ? say('Contains: {allergens}. Others NOT DECLARED: not for anyone who avoids an allergen.', {
          allergens: named(contains),
        })
      : say('Allergens NOT DECLARED: not for anyone who avoids an allergen.');
  return allergens.length > 0
    ? say('Contains: {allergens}.', { allergens: named(allergens) })
    : say('None of the listed allergens, according to you.');
}
