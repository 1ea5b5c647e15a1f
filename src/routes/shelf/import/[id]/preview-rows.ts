import type { ShownIn } from '$lib/forms/lot-form.ts';
import { completeLot, type KnownToHousehold } from '$lib/planning/model/complete-lot.ts';
import type { Estimable } from '$lib/planning/model/lot-estimate.ts';
import type { StatedLot } from '$lib/planning/model/stated-lot.ts';
import { fieldValue, show, shownUnit, type Quantity } from '$lib/presentation/show.ts';
import { allergenLabel, MEAL_WORDS, WATER_WORDS } from '$lib/presentation/code-words.ts';
import { say, sayList } from '$lib/texts/say.ts';
import { fieldEntry, type ColumnUnit, type LotField } from '$lib/shelf-csv/fields.ts';
import { WHY_NO_LOT } from '$lib/shelf-csv/read-table.ts';
import type { RowProblem } from '$lib/shelf-csv/read-row.ts';
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
  /** Cells that can be put right in place. */
  readonly repairs: readonly {
    readonly column: number;
    readonly label: string;
    readonly value: string;
    readonly reason: string;
  }[];
};

/** @returns the row with its figures in the units of the household. */
export function previewRow(
  judged: JudgedRow,
  mapping: Mapping,
  shown: ShownIn,
  known: KnownToHousehold,
): PreviewRow {
  const { row, fate, cells } = judged;
  const cell = (field: 'code' | 'recipe') =>
    cells[mapping.columns.findIndex((column) => column.field === field)]?.trim() ?? '';
  const warnings = judged.warnings.map(problemText);
  if (judged.fate === 'skipped')
    return {
      row,
      fate,
      code: '',
      recipe: cells.find((text) => text.trim() !== '')?.trim() ?? '',
      lines: [say(WHY_NO_LOT[judged.why])],
      warnings,
      repairs: [],
    };
  if (judged.fate === 'refused' || judged.fate === 'question')
    return {
      row,
      fate,
      code: cell('code'),
      recipe: cell('recipe'),
      lines: judged.problems.map(problemText),
      warnings,
      repairs: repairsOf(judged.problems, cells, mapping),
    };
  const { lot } = judged;
  const lines =
    judged.fate === 'changed'
      ? judged.changed.map(
          (field) =>
            `${say(fieldEntry(field).label)}: ${shownField(judged.before, field, shown)} → ${shownField(lot, field, shown)}`,
        )
      : [summary(lot, shown, known)];
  // What was left out can be put right as well, or left open.
  const repairs =
    judged.fate === 'unchanged'
      ? []
      : repairsOf(
          judged.warnings.filter(({ reason }) => isLeftOut(reason)),
          cells,
          mapping,
        );
  return { row, fate, code: lot.code, recipe: lot.recipe, lines, warnings, repairs };
}

const isLeftOut = (reason: string): boolean =>
  reason.startsWith(say('left out and kept in the note: {reason}', { reason: '' }).trimEnd());

/** The cells that problems are about, once each; a problem without a column is answered for the whole file. */
function repairsOf(
  problems: readonly RowProblem[],
  cells: readonly string[],
  mapping: Mapping,
): PreviewRow['repairs'] {
  const found = new Map<number, PreviewRow['repairs'][number]>();
  for (const { column: header, field, reason } of problems) {
    const column = mapping.columns.findIndex(
      (known) =>
        known.field !== null &&
        known.header === header &&
        (header !== '' || say(fieldEntry(known.field).label) === field),
    );
    if (column >= 0 && !found.has(column))
      found.set(column, { column, label: header || field, value: cells[column]?.trim() ?? '', reason });
  }
  return [...found.values()];
}

function summary(stated: StatedLot, { unitSystem }: ShownIn, known: KnownToHousehold): string {
  const lot = completeLot(stated, known);
  /** What nobody has said is an estimate, and says so. */
  const said = (field: Estimable, text: string): string =>
    lot.estimated?.[field] ? say('{value} (estimate)', { value: text }) : text;
  const water =
    lot.waterKind === 'none'
      ? say('no water')
      : say('{amount} {kind} water', {
          amount: show(lot.waterMl, 'pour', unitSystem),
          kind: say(WATER_WORDS[lot.waterKind]),
        });
  const allergens =
    lot.allergens === undefined
      ? lot.contains
        ? say('contains {allergens}, others not declared', {
            allergens: lot.contains.map(allergenLabel).join(', '),
          })
        : say('allergens not declared')
      : lot.allergens.length === 0
        ? say('declared free of allergens')
        : say('contains {allergens}', { allergens: lot.allergens.map(allergenLabel).join(', ') });
  return [
    say(
      '{pouches, plural, one {# pouch} other {# pouches}} of {servings, plural, one {# serving} other {# servings}}',
      { pouches: lot.pouches, servings: lot.servingsPerPouch },
    ),
    said(
      'mealKinds',
      sayList(
        lot.mealKinds.map((meal) => say(MEAL_WORDS[meal])),
        'disjunction',
      ),
    ),
    say('each {weight}, {energy}, {water}', {
      weight: show(lot.dryWeightG, 'food', unitSystem),
      energy: said('energyKcal', show(lot.energyKcal, 'energy', unitSystem)),
      water: said('waterMl', water),
    }),
    said('bestBefore', say('best before {date}', { date: lot.bestBefore })),
    allergens,
  ].join('; ');
}

/** How a figure is shown is decided by the unit it has in the core. */
const QUANTITY: Partial<Record<ColumnUnit, Quantity>> = { g: 'food', kcal: 'energy', ml: 'pour' };

function shownField(lot: StatedLot, field: LotField, { unitSystem, currency }: ShownIn): string {
  const value = lot[field];
  const unit = fieldEntry(field).units?.[0];
  const quantity = unit && QUANTITY[unit];
  if (typeof value === 'number' && quantity)
    return `${fieldValue(value, quantity, unitSystem)} ${shownUnit(quantity, unitSystem)}`;
  const text = cellOf(lot, field, currency);
  if (text === '') {
    if (field === 'allergens') return say('not declared');
    return field === 'note' || field === 'diets' ? say('nothing') : say('not entered');
  }
  return unit ? `${text} ${unit}` : text;
}
