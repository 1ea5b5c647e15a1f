import type { ShownIn } from '$lib/forms/lot-form.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { fieldValue, show, unitOf, type Quantity } from '$lib/planning/units/show.ts';
import { counted } from '$lib/plural.ts';
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
            `${fieldEntry(field).label}: ${shownField(judged.before, field, shown)} → ${shownField(lot, field, shown)}`,
        )
      : [summary(lot, shown)];
  return { row, fate, code: lot.code, recipe: lot.recipe, lines, warnings };
}

function summary(lot: PouchLot, { unitSystem }: ShownIn): string {
  const water =
    lot.waterKind === 'none' ? 'no water' : `${show(lot.waterMl, 'pour', unitSystem)} ${lot.waterKind} water`;
  const allergens =
    lot.allergens === undefined
      ? 'allergens not stated'
      : lot.allergens.length === 0
        ? 'stated to hold no allergens'
        : `holds ${lot.allergens.join(', ')}`;
  return [
    `${counted(lot.pouches, 'pouch', 'pouches')} of ${counted(lot.servingsPerPouch, 'serving')}`,
    lot.mealKinds.join(' or '),
    `each ${show(lot.dryWeightG, 'food', unitSystem)}, ${show(lot.energyKcal, 'energy', unitSystem)}, ${water}`,
    `best before ${lot.bestBefore}`,
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
  if (text === '') return field === 'note' || field === 'diets' ? 'nothing' : 'not stated';
  return unit ? `${text} ${unit}` : text;
}
