import { say, text, type Text } from '$lib/texts/say.ts';

/* What the page of the quick entry needs to know of its rows. */

/** What a row asks for, in the order of a pasted table. */
export const QUICK_COLUMNS = ['recipe', 'pouches', 'pouchG', 'servingsPerPouch'] as const;
/** What is estimated, or left open, where it stays blank. */
export const QUICK_DETAILS = [
  'energyKcal',
  'waterMl',
  'steepMin',
  'mealKinds',
  'sealedOn',
  'bestBefore',
  'allergens',
  'code',
  'place',
] as const;

/** The label of every field of a row. */
export const QUICK_LABELS: Readonly<Record<string, Text>> = {
  recipe: text('Name'),
  pouches: text('Pouches'),
  pouchG: text('Weight of a pouch'),
  servingsPerPouch: text('Servings in a pouch'),
  energyKcal: text('Energy of a serving'),
  waterMl: text('Water for a serving'),
  steepMin: text('Rehydration time'),
  mealKinds: text('Meals'),
  sealedOn: text('Sealed on'),
  bestBefore: text('Best before'),
  allergens: text('Allergens'),
  code: text('Lot code'),
  place: text('Place'),
};

/** A pouch of at most so much dry food, whose servings are left blank, is one serving, g (rule of thumb). */
export const ONE_SERVING_G = 200;

/** @returns the label of a field with its row, such as "Row 2, Pouches" */
export function quickLabel(field: string): string | undefined {
  const [, line, name] = /^lots\[(\d+)\]\.(\w+)/.exec(field) ?? [];
  const label = name === undefined ? undefined : QUICK_LABELS[name];
  return label && say('Row {row}, {field}', { row: String(Number(line) + 1), field: say(label) });
}

/** Rows as a spreadsheet gives them to the clipboard: cells parted by tabs, or by semicolons where there are none. */
export function pastedRows(pasted: string): string[][] {
  const rows = pasted
    .replace(/\r\n?/g, '\n')
    .split('\n')
    .filter((row) => row.trim() !== '');
  const mark = rows.some((row) => row.includes('\t')) ? '\t' : ';';
  return rows.map((row) => row.split(mark).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1')));
}
