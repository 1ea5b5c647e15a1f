import type { ShownIn } from '$lib/forms/lot-form.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { fieldValue, show, unitOf, type Quantity } from '$lib/planning/units/show.ts';
import { allergenLabel } from '$lib/planning/model/allergens.ts';
import { MEAL_WORDS, WATER_WORDS } from '$lib/planning/model/words.ts';
import { say, sayList } from '$lib/texts/say.ts';
import { fieldEntry, type ColumnUnit } from '$lib/shelf-csv/fields.ts';
import type { Mapping } from '$lib/shelf-csv/mapping.ts';
import type { Fate, JudgedRow } from '$lib/shelf-csv/preview-import.ts';
import { cellOf, problemText } from '$lib/shelf-csv/write-shelf-csv.ts';

/** A row of the preview as a person reads it. */
export type PreviewRow = {
  readonly row: number;
  readonly fate: Fate;
  readonly code: string;
  readonly recipe: string;
  /** What is in the lot, what changes, or why it is refused. */
  readonly lines: readonly string[];
  readonly warnings: readonly string[];
};

/** @returns the row with its figures in the units of the household. */
export function previewRow(judged: JudgedRow, mapping: Mapping, shown: ShownIn): PreviewRow {
  const { row, fate, cells } = judged;
  const cell = (field: 'code' | 'recipe') =>
    cells[mapping.columns.findIndex((column) => column.field === field)]?.trim() ?? '';
  const warnings = judged.warnings.map(problemText);
  if (judged.fate === 'refused')
    return {
      row,
      fate,
      code: cell('code'),
      recipe: cell('recipe'),
      lines: judged.problems.map(problemText),
      warnings,
    };
  const { lot } = judged;
  const lines =
    judged.fate === 'changed'
      ? judged.changed.map(
          (field) =>
            `${say(fieldEntry(field).label)}: ${shownField(judged.before, field, shown)} → ${shownField(lot, field, shown)}`,
        )
      : [summary(lot, shown)];
  return { row, fate, code: lot.code, recipe: lot.recipe, lines, warnings };
}

function summary(lot: PouchLot, { unitSystem }: ShownIn): string {
  const water =
    lot.waterKind === 'none'
      ? say('no water')
      : say('{amount} {kind} water', {
          amount: show(lot.waterMl, 'pour', unitSystem),
          kind: say(WATER_WORDS[lot.waterKind]),
        });
  const allergens =
    lot.allergens === undefined
      ? say('allergens not stated')
      : lot.allergens.length === 0
        ? say('stated to hold no allergens')
        : say('holds {allergens}', { allergens: lot.allergens.map(allergenLabel).join(', ') });
  return [
    say(
      '{pouches, plural, one {# pouch} other {# pouches}} of {servings, plural, one {# serving} other {# servings}}',
      { pouches: lot.pouches, servings: lot.servingsPerPouch },
    ),
    sayList(
      lot.mealKinds.map((meal) => say(MEAL_WORDS[meal])),
      'disjunction',
    ),
    say('each {weight}, {energy}, {water}', {
      weight: show(lot.dryWeightG, 'food', unitSystem),
      energy: show(lot.energyKcal, 'energy', unitSystem),
      water,
    }),
    say('best before {date}', { date: lot.bestBefore }),
    allergens,
  ].join('; ');
}

/** How a figure is shown is decided by the unit it has in the core. */
const QUANTITY: Partial<Record<ColumnUnit, Quantity>> = { g: 'food', kcal: 'energy', ml: 'pour' };

function shownField(lot: PouchLot, field: keyof PouchLot, { unitSystem, currency }: ShownIn): string {
  const value = lot[field];
  const unit = fieldEntry(field).units?.[0];
  const quantity = unit && QUANTITY[unit];
  if (typeof value === 'number' && quantity)
    return `${fieldValue(value, quantity, unitSystem)} ${unitOf(quantity, unitSystem)}`;
  const text = cellOf(lot, field, currency);
  if (text === '') return field === 'note' || field === 'diets' ? say('nothing') : say('not stated');
  return unit ? `${text} ${unit}` : text;
}
