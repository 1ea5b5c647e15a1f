import type { CsvRecord } from './csv-records.ts';
import { fieldEntry, plainWords, type ColumnUnit, type FieldEntry, type ShelfField } from './fields.ts';
import { headingMeanings, headingParts, isAboutElse, type Basis, type Meaning } from './headings.ts';
import type { ColumnMapping } from './mapping.ts';
import {
  readCell,
  readDate,
  readNumber,
  type CellRules,
  type DateOrder,
  type DecimalMark,
} from './read-cell.ts';
import { restore } from './spreadsheet-safe.ts';
import { ALLERGEN_VOCABULARY, markOf, MEAL_VOCABULARY, saysNothing, WATER_VOCABULARY } from './vocabulary.ts';

/*
 * What each column holds, by its heading and by what stands in it. A heading proposes, the content decides between the proposals, and how the columns
 * go together tells for what weights and figures are stated. What none of it tells stays open and is asked.
 */

export type FileRules = { readonly decimalMark: DecimalMark; readonly dateOrder: DateOrder };

/** Between what most values of a column lie, in the unit of the core and for one serving or one pouch: to tell columns apart, not to judge a lot. */
const USUAL: Partial<Record<ShelfField, readonly [low: number, high: number]>> = {
  pouches: [0, 150],
  servingsPerPouch: [0.25, 12],
  dryWeightG: [8, 4000],
  grossWeightG: [10, 4500],
  energyKcal: [20, 9000],
  proteinG: [0, 600],
  fatG: [0, 600],
  carbohydrateG: [0, 1200],
  fibreG: [0, 200],
  sugarsG: [0, 600],
  sodiumMg: [0, 20_000],
  saltG: [0, 60],
  waterMl: [0, 4000],
  steepMin: [0, 1440],
  stirAfterMin: [0.5, 120],
  tareG: [1, 60],
  volumeMl: [30, 8000],
  pieces: [1, 60],
  keepsMonths: [0.5, 360],
};
const WHOLE: ReadonlySet<ShelfField> = new Set(['pouches', 'pieces']);
/** Which units a column may be in where nothing says it: those of its field that everyday tables leave out. */
const UNSAID: Partial<Record<ShelfField, readonly ColumnUnit[]>> = {
  dryWeightG: ['g', 'oz', 'kg', 'lb'],
  grossWeightG: ['g', 'oz', 'kg', 'lb'],
  energyKcal: ['kcal', 'kJ'],
  waterMl: ['ml', 'cup', 'l', 'dl', 'fl oz'],
};

type Column = { readonly index: number; readonly heading: string; readonly cells: readonly string[] };

const said = (cells: readonly string[]): string[] =>
  cells.filter((cell) => cell !== '' && !saysNothing(cell));
const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

function columnsOf(header: readonly string[], sample: readonly CsvRecord[]): Column[] {
  return header.map((heading, index) => ({
    index,
    heading,
    cells: sample.map(({ cells }) => restore((cells[index] ?? '').trim())),
  }));
}

/** Guesses what each column holds. What no content tells has no `unit` or no `per` where one is needed. */
export function guessColumns(
  header: readonly string[],
  sample: readonly CsvRecord[],
  rules: FileRules,
): ColumnMapping[] {
  const columns = columnsOf(header, sample);
  const isBare = header.every((heading) => heading.trim() === '');
  const chosen = new Map<number, Meaning>();
  const takers = new Map<string, { readonly index: number; readonly score: number }[]>();
  const proposals = columns
    .flatMap((column) => {
      const meanings = [...headingMeanings(column.heading), ...contentMeanings(column, rules, isBare)];
      return meanings.map((meaning) => ({
        column,
        meaning,
        score: meaning.sure * fit(meaning, column, rules, columns),
      }));
    })
    .filter(({ score }) => score > 0.28)
    .sort((one, other) => other.score - one.score || one.column.index - other.column.index);
  for (const { column, meaning, score } of proposals) {
    if (chosen.has(column.index)) continue;
    const key = meaning.of ? `${meaning.field} ${meaning.of}` : meaning.field;
    const others = takers.get(key) ?? [];
    if (
      others.length > 0 &&
      !mayComeTwice(meaning, score, others[0]!.score, column, columns[others[0]!.index]!)
    )
      continue;
    chosen.set(column.index, meaning);
    takers.set(key, [...others, { index: column.index, score }]);
  }
  // A heading that nothing in its column goes with says less than the cells themselves.
  for (const column of columns) {
    if (chosen.has(column.index)) continue;
    const meaning = unitMeaning(column, rules);
    if (meaning && !takers.has(meaning.field)) {
      chosen.set(column.index, meaning);
      takers.set(meaning.field, [{ index: column.index, score: meaning.sure }]);
    }
  }
  findDates(columns, chosen);
  tellDatesApart(columns, chosen, rules);
  tellCountsApart(columns, chosen, header);
  const guessed = columns.map(({ index, heading }): ColumnMapping => {
    const meaning = chosen.get(index);
    if (!meaning) return { header: heading, field: null };
    const entry = fieldEntry(meaning.field);
    const unit =
      meaning.unit && entry.units?.includes(meaning.unit) ? meaning.unit : fluidOunce(meaning, entry);
    return {
      header: heading,
      field: meaning.field,
      ...(entry.units && unit && { unit }),
      ...(entry.perServing && meaning.per && { per: meaning.per }),
      ...(meaning.field === 'servingsPerPouch' && meaning.per === 'lot' && { per: 'lot' as const }),
      ...(meaning.of && { of: meaning.of }),
    };
  });
  return settleUnits(guessed, columns, rules);
}

/** Whether cells with a unit of energy, of weight or of water are anything like those of a pouch. */
function unitMeaning(column: Column, rules: FileRules): Meaning | undefined {
  if (isAboutElse(column.heading)) return undefined;
  const cells = said(column.cells);
  const { per } = headingParts(column.heading);
  const all = (pattern: RegExp): boolean =>
    cells.length > 1 && cells.filter((cell) => pattern.test(cell)).length >= 0.8 * cells.length;
  const field: ShelfField | undefined = all(/\d\s*(?:kcal|cals?|kj)\b/i)
    ? 'energyKcal'
    : all(/\d\s*(?:g|grams?|oz|kg|lbs?)\.?$/i)
      ? 'dryWeightG'
      : undefined;
  if (!field) return undefined;
  const meaning: Meaning = { field, sure: 0.5, per };
  // Parts of food are weighed as well; those of a pouch are heavier.
  return plausible(meaning, cells, rules) > 0.8 && (field !== 'dryWeightG' || heaviest(cells, rules) > 40)
    ? meaning
    : undefined;
}

const heaviest = (cells: readonly string[], rules: FileRules): number =>
  Math.max(
    0,
    ...cells.map((cell) => {
      const read = readCell(fieldEntry('dryWeightG'), cell, { ...rules, unit: 'g', currency: 'XXX' });
      return 'value' in read ? (read.value as number) : 0;
    }),
  );

const fluidOunce = ({ unit }: Meaning, { units }: FieldEntry): ColumnUnit | undefined =>
  unit === 'oz' && units?.includes('fl oz') && !units.includes('oz') ? 'fl oz' : undefined;

/** Two columns of one meaning are read together where both headings say it plainly; a count or a name stands once. */
function mayComeTwice(
  meaning: Meaning,
  score: number,
  first: number,
  column: Column,
  other: Column,
): boolean {
  if (
    ['recipe', 'code', 'pouches', 'servingsPerPouch', 'mealKinds', 'waterKind', 'kind'].includes(
      meaning.field,
    )
  )
    return false;
  if (meaning.field === 'note') return score > 0.5;
  if (meaning.field === 'sealedOn' || meaning.field === 'bestBefore')
    return score > 0.8 && column.heading !== other.heading && first > 0.8;
  return score > 0.6 && meaning.sure > 0.65;
}

/** How well the cells of a column go with a meaning, 0 to 1. An empty column says nothing against it. */
function fit(meaning: Meaning, column: Column, rules: FileRules, columns: readonly Column[]): number {
  const entry = fieldEntry(meaning.field);
  const cells = said(column.cells);
  if (cells.length === 0) return column.heading === '' ? 0 : 0.9;
  const readable = (kind: FieldEntry): number => {
    const cellRules: CellRules = { ...rules, unit: meaning.unit, currency: 'XXX', year: 2000 };
    return cells.filter((cell) => 'value' in readCell(kind, cell, cellRules)).length / cells.length;
  };
  switch (entry.kind) {
    case 'number': {
      const share = readable(entry);
      if (share < 0.5) return 0;
      return share * plausible(meaning, cells, rules);
    }
    case 'cost':
      return cells.filter((cell) => /\d/.test(cell) && cell.length < 15).length / cells.length;
    case 'date': {
      const dates = cells.filter((cell) => isDateLike(cell)).length / cells.length;
      return dates >= 0.5 ? 0.5 + dates / 2 : dates;
    }
    case 'text': {
      const marks =
        cells.filter((cell) => markOf(cell) !== undefined && !/^\d+$/.test(cell)).length / cells.length;
      const numbers =
        cells.filter((cell) => /^[~≈]?[\d.,\s/½¼¾⅓⅔-]+(?:\p{L}{1,4}\.?)?$/u.test(cell)).length / cells.length;
      const distinct = new Set(cells.map(plainWords)).size / cells.length;
      if (meaning.field === 'recipe') {
        if (numbers > 0.3 || marks > 0.5) return 0.05;
        const meals = cells.filter((cell) => MEAL_VOCABULARY.meaning(cell)).length / cells.length;
        // Words of meals again and again are no names of dishes.
        const isName = /recipe|rezept|dish|gericht|name|food|recette|plat|speise/.test(
          plainWords(column.heading),
        );
        return (meals > 0.7 && distinct < 0.8 && !isName ? 0.1 : 1) * (0.6 + 0.4 * distinct);
      }
      if (meaning.field === 'code') {
        const short =
          cells.filter((cell) => cell.length <= 24 && !/\d\s*(?:g|kg|oz|ml|kcal|kj)\b/i.test(cell)).length /
          cells.length;
        const running = isRunning(cells);
        // A running number is no code that is on a pouch, unless it is called one.
        if (
          running &&
          !/code|batch|lot|label|tag|bag|pouch|charge|los|etikett|beutel|kennung|kurzel/.test(
            plainWords(column.heading),
          )
        )
          return 0.3;
        // "Number" over figures that are neither in order nor apart is how many there are.
        if (
          numbers > 0.8 &&
          !running &&
          /^(?:no|nr|number|nummer|num|numero)$/.test(plainWords(column.heading.replaceAll('#', ' no ')))
        )
          return 0.4;
        return (
          short *
          (distinct > 0.9 ? 1 : distinct > 0.5 ? 0.7 : 0.3) *
          (numbers > 0.8 && !running && distinct < 0.95 ? 0.3 : 1)
        );
      }
      if (meaning.field === 'place')
        return numbers > 0.8 &&
          !/box|bin|shelf|crate|tote|kiste|regal|fach|freezer|drawer/.test(plainWords(column.heading))
          ? 0.3
          : 1;
      return marks > 0.8 && meaning.field === 'note' ? 0.7 : 1;
    }
    case 'meals':
      return readable(entry) >= 0.5 ? readable(entry) : readable(entry) * 0.5;
    case 'allergens':
      return Math.max(
        readable(entry),
        cells.filter((cell) => cell.split(/[,;/]/).some((part) => ALLERGEN_VOCABULARY.meaning(part))).length /
          cells.length,
      );
    case 'allergen mark':
    case 'diet mark':
    case 'yes or no': {
      const share = cells.filter((cell) => markOf(cell) !== undefined).length / cells.length;
      // A column of milk in grams is no column of yes and no.
      const counts = cells.filter((cell) => /^\d+$/.test(cell) && cell !== '0' && cell !== '1').length;
      return counts > 0 ? 0 : share >= 0.6 ? share : 0;
    }
    case 'currency':
      return cells.filter((cell) => /^(?:[A-Z]{3}|\p{Sc})$/iu.test(cell)).length / cells.length;
    default:
      void columns;
      return cells.filter((cell) => isPlainlyRead(entry, cell, rules)).length / cells.length;
  }
}

/** Read, and whole: a list of diets leaves out with a doubt what it does not know. */
function isPlainlyRead(entry: FieldEntry, cell: string, rules: FileRules): boolean {
  const read = readCell(entry, cell, { ...rules, unit: undefined, currency: 'XXX' });
  return 'value' in read && read.doubt === undefined;
}

const isDateLike = (cell: string): boolean => {
  if (!/\d|\p{L}{3}/u.test(cell)) return false;
  const read = readDate(cell, 'day-first', { side: 'end', year: 2000 });
  return 'value' in read || 'value' in readDate(cell, 'month-first', { year: 2000 });
};

const isRunning = (cells: readonly string[]): boolean => {
  const numbers = cells.map((cell) => (/^\d+\.?$/.test(cell) ? Number.parseInt(cell, 10) : Number.NaN));
  return (
    numbers.length > 2 && numbers.every((number, index) => index === 0 || number === numbers[index - 1]! + 1)
  );
};

/** How many of the figures are as they are elsewhere, in whichever unit and for whatever they may be stated. */
function plausible(meaning: Meaning, cells: readonly string[], rules: FileRules): number {
  const range = USUAL[meaning.field];
  const entry = fieldEntry(meaning.field);
  if (!range) return 1;
  const units =
    meaning.unit && entry.units?.includes(meaning.unit)
      ? [meaning.unit]
      : (UNSAID[meaning.field] ?? entry.units?.slice(0, 1) ?? [undefined]);
  const share = (unit: ColumnUnit | undefined): number => {
    const values = cells.flatMap((cell) => {
      const read = readCell(entry, cell, { ...rules, unit, currency: 'XXX' });
      return 'value' in read && typeof read.value === 'number' ? [read.value] : [];
    });
    if (values.length === 0) return 0;
    const whole = WHOLE.has(meaning.field)
      ? values.filter((value) => Number.isInteger(value)).length / values.length
      : 1;
    const inside = values.filter((value) => value >= range[0] && value <= range[1]).length / values.length;
    const middle = median(values);
    // Many servings in a pouch are rather pouches, and more than a few dozen pouches rather a weight.
    const odd =
      (meaning.field === 'servingsPerPouch' && middle > 8) ||
      (meaning.field === 'pouches' && middle > 60) ||
      (meaning.field === 'dryWeightG' && middle < 15);
    return inside * whole * whole * (odd ? 0.4 : 1);
  };
  return Math.max(...units.map(share));
}

/** What a column is by its content alone, where its heading is missing or says nothing. */
function contentMeanings(
  { heading, cells: all, index }: Column,
  rules: FileRules,
  isBare: boolean,
): Meaning[] {
  const cells = said(all);
  if (cells.length === 0) return [];
  const known = headingMeanings(heading).length > 0;
  if (known) return [];
  const share = (test: (cell: string) => boolean): number => cells.filter(test).length / cells.length;
  const meanings: Meaning[] = [];
  const parts = headingParts(heading);
  if (share((cell) => /^[BLDS](?:\s?[/,+&]\s?[BLDS])*$/i.test(cell)) > 0.9 && new Set(cells).size > 1)
    meanings.push({ field: 'mealKinds', sure: 0.6 });
  if (share((cell) => cell.length > 3 && WATER_VOCABULARY.meaning(cell) !== undefined) > 0.8)
    meanings.push({ field: 'waterKind', sure: 0.6 });
  // A heading that is known to be about something else is not overruled.
  if (heading !== '' && !/^(?:column|spalte|feld|field)?\s*\w{0,3}$/i.test(heading)) {
    if (share((cell) => /\d\s*(?:kcal|cals?|kj)\b/i.test(cell)) > 0.7)
      meanings.push({ field: 'energyKcal', sure: 0.6, per: parts.per });
    return meanings;
  }
  if (share((cell) => /\d\s*(?:kcal|cals?|kj)\b/i.test(cell)) > 0.7)
    meanings.push({ field: 'energyKcal', sure: 0.7 });
  if (share((cell) => /\d\s*(?:g|oz|kg|lbs?)\.?$/i.test(cell)) > 0.7)
    meanings.push({ field: 'dryWeightG', sure: 0.6 });
  if (share((cell) => /\d\s*(?:ml|cl|dl|l|cups?)\b/i.test(cell)) > 0.7)
    meanings.push({ field: 'waterMl', sure: 0.6 });
  if (share((cell) => /\d\s*mins?\b/i.test(cell)) > 0.7) meanings.push({ field: 'steepMin', sure: 0.6 });
  if (share((cell) => isDateLike(cell) && !/^\d{1,3}$/.test(cell)) > 0.7)
    meanings.push({ field: 'sealedOn', sure: 0.55 }, { field: 'bestBefore', sure: 0.5 });
  if (share((cell) => MEAL_VOCABULARY.meaning(cell) !== undefined && cell.length > 1) > 0.7)
    meanings.push({ field: 'mealKinds', sure: 0.6 });
  const numbers = share((cell) => /^\d+$/.test(cell));
  if (share((cell) => /\p{L}{3}/u.test(cell)) > 0.8 && numbers < 0.1 && meanings.length === 0)
    meanings.push({ field: 'recipe', sure: 0.55 - 0.01 * index });
  if (isBare && numbers > 0.8 && meanings.length === 0) {
    // Rows as they are typed: a name, how many, what one weighs, how many it serves.
    const values = cells.map(Number);
    if (median(values) >= 25) meanings.push({ field: 'dryWeightG', sure: 0.5, per: 'pouch' });
    else
      meanings.push(
        { field: 'pouches', sure: 0.5 - 0.02 * index },
        { field: 'servingsPerPouch', sure: 0.45 },
      );
  }
  void rules;
  return meanings;
}

/** Compounds that name a date of packing, of which there are too many to list: "Abpackdatum", "drying date". */
const PACKING = /datum|date|pack|full|seal|dry|trock|made|herst|prod|process|koch|cook|versieg|vakuum/;
const LATER = /halt|mhd|ablauf|verfall|verbrauch|exp|until|bis|best|check|kontroll|kauf|bought|birth/;

function findDates(columns: readonly Column[], chosen: Map<number, Meaning>): void {
  if ([...chosen.values()].some(({ field }) => field === 'sealedOn')) return;
  for (const column of columns) {
    const words = plainWords(column.heading);
    const cells = said(column.cells);
    if (
      chosen.has(column.index) ||
      cells.length === 0 ||
      !PACKING.test(words) ||
      LATER.test(words) ||
      isAboutElse(column.heading)
    )
      continue;
    if (cells.filter(isDateLike).length < 0.8 * cells.length) continue;
    chosen.set(column.index, { field: 'sealedOn', sure: 0.8 });
    return;
  }
}

/** Of two columns of dates without a plain heading, the later dates are those of best-before. */
function tellDatesApart(columns: readonly Column[], chosen: Map<number, Meaning>, rules: FileRules): void {
  const dated = [...chosen].filter(([, { field }]) => field === 'sealedOn' || field === 'bestBefore');
  if (dated.length !== 2) return;
  const [[oneAt, one], [otherAt, other]] = dated as [[number, Meaning], [number, Meaning]];
  const datesOf = (at: number) =>
    columns[at]!.cells.map((cell) => {
      const read = readDate(cell, rules.dateOrder === 'iso' ? 'day-first' : rules.dateOrder);
      return 'value' in read && read.value !== '' ? read.value : undefined;
    });
  const [ones, others] = [datesOf(oneAt), datesOf(otherAt)];
  let oneLater = 0;
  let pairs = 0;
  ones.forEach((date, index) => {
    const second = others[index];
    if (date === undefined || second === undefined || date === second) return;
    pairs++;
    if (date > second) oneLater++;
  });
  if (pairs === 0) return;
  const later = oneLater > pairs / 2 ? oneAt : otherAt;
  if (one.field === other.field || (one.sure < 0.9 && other.sure < 0.9)) {
    chosen.set(oneAt, { ...one, field: later === oneAt ? 'bestBefore' : 'sealedOn' });
    chosen.set(otherAt, { ...other, field: later === otherAt ? 'bestBefore' : 'sealedOn' });
  }
}

const GONE =
  /(?:^| )(?:eaten|used|gone|consumed|taken|given away|gegessen|verbraucht|entnommen|weg|verzehrt|aufgegessen)(?: |$)/;
const NOW_LEFT =
  /(?:^| )(?:left|remaining|now|rest|noch|ubrig|have|stock|hand|bestand|vorrat|vorratig|inventory|vorhanden|verbleibend)(?: |$)/;
const AT_FIRST =
  /(?:^| )(?:made|packed|sealed|produced|initial|start|originally|gemacht|hergestellt|verpackt|gepackt|anfangs|ursprunglich)(?: |$)/;

/** Where one column counts what was made and another what is left, the one that is left counts. */
function tellCountsApart(
  columns: readonly Column[],
  chosen: Map<number, Meaning>,
  header: readonly string[],
): void {
  const counted = [...chosen].find(([, { field }]) => field === 'pouches');
  if (!counted) return;
  const words = (index: number) => plainWords(header[index] ?? '');
  const [at, meaning] = counted;
  if (NOW_LEFT.test(words(at))) return;
  for (const column of columns) {
    if (column.index === at) continue;
    const other = headingMeanings(column.heading).find(({ field }) => field === 'pouches');
    if (!other || !NOW_LEFT.test(words(column.index))) continue;
    if (said(column.cells).every((cell) => 'value' in readNumber(cell, 'either'))) {
      chosen.set(column.index, { ...meaning, ...other });
      if (AT_FIRST.test(words(at)) || chosen.get(at)?.field === 'pouches') chosen.delete(at);
      return;
    }
  }
  // What was made and what was eaten of it: nobody says whether the first still counts what the second has taken.
  const gone = columns.find(
    ({ index, heading, cells }) =>
      index !== at && GONE.test(plainWords(heading)) && said(cells).some((cell) => /^\d+$/.test(cell)),
  );
  if (gone) chosen.delete(at);
}

// units and bases

type Figures = ReadonlyMap<number, readonly (number | undefined)[]>;

/** Logarithm of how likely positive figures are that scatter around a usual value, with the spread of dishes and that of a whole shelf: a normal of logarithms. */
export function logLikelihood(
  values: readonly number[],
  usual: number,
  spread: number,
  shift: number,
): number {
  const logs = values.filter((value) => value > 0).map((value) => Math.log(value / usual));
  const n = Math.min(logs.length, MOST_COUNTED);
  if (n === 0) return 0;
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const scatter = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / logs.length;
  const variance = spread ** 2;
  return (
    -0.5 *
    (n * Math.log(variance) +
      (n * scatter) / variance +
      Math.log(1 + (n * shift ** 2) / variance) +
      (n * mean ** 2) / (variance + n * shift ** 2))
  );
}
/** Rows of one household are alike, so that more of them say little more. */
const MOST_COUNTED = 8;
/** How much likelier the best answer must be than the next, to be taken without asking. */
const CLEAR = Math.log(9);

/** Rules of thumb for the dry food of one serving, no source: usual value, spread of dishes, shift of whole shelves, as logarithms. */
const OF_A_SERVING = {
  weightG: [105, 0.4, 0.3],
  energyKcal: [450, 0.4, 0.3],
  kcalPerG: [4.3, 0.2, 0.14],
  waterPerG: [2.6, 0.4, 0.3],
} as const;

/** Beyond these the middle of a column is for something else than a serving. */
const PLAUSIBLE_G = [15, 350] as const;
const PLAUSIBLE_KCAL_PER_G = [1.5, 8] as const;

const isDefined = <T>(value: T | undefined): value is T => value !== undefined;

/** Finds the unit and the basis of each column of figures that its heading leaves open. */
function settleUnits(
  guessed: ColumnMapping[],
  columns: readonly Column[],
  rules: FileRules,
): ColumnMapping[] {
  let mapping = guessed.map((column, index) => withUnit(column, columns[index]!, guessed, rules));
  mapping = settleBases(mapping, columns, rules);
  return mapping;
}

/** The unit of the heading or of the cells; else that in which the figures are usual ones. */
function withUnit(
  column: ColumnMapping,
  { cells: all }: Column,
  mapping: readonly ColumnMapping[],
  rules: FileRules,
): ColumnMapping {
  if (!column.field || column.unit) return column;
  const { field } = column;
  const { units } = fieldEntry(field);
  if (!units) return column;
  const candidates = UNSAID[field];
  if (!candidates) return { ...column, unit: units[0]! };
  const bare = said(all).filter((cell) => /^[~≈]?(?:ca\.?)?[\d.,\s/½¼¾⅓⅔]+$/.test(cell));
  if (bare.length === 0) return { ...column, unit: units[0]! };
  const values = bare.flatMap((cell) => {
    const read = readNumber(cell.replace(/^[~≈]|^ca\.?\s*/, ''), rules.decimalMark);
    return 'value' in read ? [read.value] : [];
  });
  const middle = median(values);
  const isAmerican = mapping.some(
    ({ unit }) => unit === 'oz' || unit === 'lb' || unit === 'cup' || unit === 'fl oz',
  );
  const unit =
    field === 'dryWeightG' || field === 'grossWeightG'
      ? middle >= 25
        ? 'g'
        : middle >= 1.2 && middle <= 20 && isAmerican
          ? 'oz'
          : undefined
      : field === 'waterMl'
        ? middle >= 60
          ? 'ml'
          : middle <= 6 && middle >= 0.5 && isAmerican
            ? 'cup'
            : undefined
        : undefined;
  // Energy is told apart from its weight, below.
  return unit ? { ...column, unit } : column;
}

/** Reads the figures of a column in the unit of the core. */
function figuresOf(column: ColumnMapping, { cells }: Column, rules: FileRules): (number | undefined)[] {
  const entry = fieldEntry(column.field!);
  return cells.map((cell) => {
    if (cell === '') return undefined;
    const read = readCell(entry, cell, { ...rules, unit: column.unit, currency: 'XXX' });
    return 'value' in read && typeof read.value === 'number' && read.value > 0 ? read.value : undefined;
  });
}

type Guess = {
  readonly weight: Basis | undefined;
  readonly energy: Basis | undefined;
  readonly kJ: boolean;
  readonly isOfAll: boolean;
};

function settleBases(
  mapping: ColumnMapping[],
  columns: readonly Column[],
  rules: FileRules,
): ColumnMapping[] {
  const columnOf = (field: ShelfField, open = false): number =>
    mapping.findIndex((column) => column.field === field && (!open || column.per === undefined));
  const figures: Figures = new Map(
    mapping.flatMap((column, index) =>
      column.field && fieldEntry(column.field).kind === 'number'
        ? [[index, figuresOf(column, columns[index]!, rules)] as const]
        : [],
    ),
  );
  const servingsAt = columnOf('servingsPerPouch');
  const pouchesAt = columnOf('pouches');
  let isOfAll = mapping[servingsAt]?.per === 'lot';
  const servings = (row: number): number | undefined => {
    if (servingsAt < 0) return 1;
    const value = figures.get(servingsAt)?.[row];
    const count = isOfAll ? figures.get(pouchesAt)?.[row] : 1;
    return value === undefined || count === undefined ? undefined : value / count;
  };
  const hasServings = servingsAt >= 0;
  const rows = columns[0]?.cells.length ?? 0;
  const allRows = Array.from({ length: rows }, (_, row) => row);
  const set = (index: number, change: Partial<ColumnMapping>) => {
    if (index >= 0) mapping = mapping.map((column, at) => (at === index ? { ...column, ...change } : column));
  };
  // A pouch with its packaging is weighed as a whole.
  mapping.forEach((column, index) => {
    if (column.field === 'grossWeightG' && column.per === undefined) set(index, { per: 'pouch' });
  });
  const pouches = (row: number) => figures.get(pouchesAt)?.[row];
  splitTwins(mapping, figures, { servings, pouches }, allRows).forEach(([index, per]) => set(index, { per }));

  const weightAt = mapping.findIndex(({ field }) => field === 'dryWeightG');
  const grossAt = mapping.findIndex(({ field }) => field === 'grossWeightG');
  const energyAt = columnOf('energyKcal');
  const perServingG = (row: number, basis: Basis | undefined): number | undefined => {
    const at = weightAt >= 0 ? weightAt : grossAt;
    const value = figures.get(at)?.[row];
    const count = servings(row);
    if (value === undefined || count === undefined) return undefined;
    const food = at === grossAt ? value - 12 : value;
    if (basis === 'lot') {
      const pouches = figures.get(pouchesAt)?.[row];
      return pouches && food / pouches / count;
    }
    return basis === 'pouch' ? food / count : food;
  };
  const perServingKcal = (
    row: number,
    basis: Basis | undefined,
    weight: Basis | undefined,
    kJ: boolean,
  ): number | undefined => {
    const value = figures.get(energyAt)?.[row];
    const count = servings(row);
    if (value === undefined || count === undefined) return undefined;
    const kcal = kJ ? value / 4.184 : value;
    if (basis === 'pouch') return kcal / count;
    if (basis !== '100g') return kcal;
    const grams = perServingG(row, weight);
    return grams === undefined ? undefined : (kcal * grams) / 100;
  };

  const weightColumn = mapping[weightAt >= 0 ? weightAt : grossAt];
  const energyColumn = energyAt >= 0 ? mapping[energyAt] : undefined;
  const weights: (Basis | undefined)[] =
    weightColumn === undefined
      ? [undefined]
      : weightColumn.per
        ? [weightColumn.per]
        : ['serving', 'pouch', ...(pouchesAt >= 0 ? (['lot'] as const) : [])];
  const energies: (Basis | undefined)[] =
    energyColumn === undefined
      ? [undefined]
      : energyColumn.per
        ? [energyColumn.per]
        : ['serving', 'pouch', '100g'];
  const isUnitOpen = energyColumn !== undefined && energyColumn.unit === undefined;
  const guesses: { readonly guess: Guess; readonly log: number }[] = [];
  const mayBeOfAll =
    !isOfAll &&
    servingsAt >= 0 &&
    pouchesAt >= 0 &&
    areMultiples(figures.get(servingsAt)!, figures.get(pouchesAt)!);
  for (isOfAll of mayBeOfAll ? [false, true] : [isOfAll])
    for (const weight of weights)
      for (const energy of energies)
        for (const kJ of isUnitOpen ? [false, true] : [false]) {
          const grams = allRows.map((row) => perServingG(row, weight));
          const kcal = allRows.map((row) => perServingKcal(row, energy, weight, kJ));
          const rich = allRows.map((row) => (grams[row] && kcal[row] ? kcal[row] / grams[row] : undefined));
          let log = 0;
          if (weightColumn) log += logLikelihood(grams.filter(isDefined), ...OF_A_SERVING.weightG);
          if (energyColumn)
            log +=
              logLikelihood(kcal.filter(isDefined), ...OF_A_SERVING.energyKcal) * (weightColumn ? 0.5 : 1);
          if (weightColumn && energyColumn)
            log += logLikelihood(rich.filter(isDefined), ...OF_A_SERVING.kcalPerG);
          // What is weighed is rather the pouch, what is looked up rather a serving.
          if (weights.length > 1)
            log += Math.log(weight === 'pouch' ? 0.68 : weight === 'serving' ? 0.29 : 0.03);
          if (energies.length > 1)
            log += Math.log(energy === 'serving' ? 0.5 : energy === 'pouch' ? 0.4 : 0.1);
          if (isUnitOpen) log += Math.log(kJ ? 0.15 : 0.85);
          if (mayBeOfAll) log += Math.log(isOfAll ? 0.1 : 0.9);
          guesses.push({ guess: { weight, energy, kJ, isOfAll }, log });
        }
  const total = guesses.reduce((sum, { log }) => sum + Math.exp(log - guesses[0]!.log), 0);
  /** An answer is taken where it is clearly likelier than all others together, whatever the other questions are answered with. */
  const clear = <T>(of: (guess: Guess) => T): T | undefined => {
    const shares = new Map<T, number>();
    for (const { guess, log } of guesses)
      shares.set(of(guess), (shares.get(of(guess)) ?? 0) + Math.exp(log - guesses[0]!.log) / total);
    const best = [...shares].sort((one, other) => other[1] - one[1])[0];
    return best && best[1] / (1 - best[1] + 1e-12) >= Math.exp(CLEAR) ? best[0] : undefined;
  };
  if (mayBeOfAll) {
    const all = clear((guess) => guess.isOfAll);
    isOfAll = all === true;
    if (all === undefined) set(servingsAt, { open: true });
    else if (all) set(servingsAt, { per: 'lot' });
  }
  const isSingle = hasServings && allRows.every((row) => servings(row) === undefined || servings(row) === 1);
  if (isUnitOpen) {
    const kJ = clear((guess) => guess.kJ);
    if (kJ !== undefined && said(columns[energyAt]!.cells).length > 0)
      set(energyAt, { unit: kJ ? 'kJ' : 'kcal' });
  }
  if (weightColumn && weightColumn.per === undefined) {
    const weight = isSingle ? 'pouch' : hasServings ? clear((guess) => guess.weight) : 'pouch';
    const grams = median(allRows.map((row) => perServingG(row, weight)).filter(isDefined));
    // All pouches together may have been fewer or more when they were weighed, and what no serving weighs is asked about.
    if (weight && weight !== 'lot' && (!hasServings || (grams >= PLAUSIBLE_G[0] && grams <= PLAUSIBLE_G[1])))
      set(weightAt >= 0 ? weightAt : grossAt, { per: weight });
  }
  if (energyColumn && energyColumn.per === undefined) {
    const is100g = clear((guess) => guess.energy === '100g');
    const energy =
      (isSingle || !hasServings) && is100g === false ? 'serving' : clear((guess) => guess.energy);
    const weight = mapping[weightAt >= 0 ? weightAt : grossAt]?.per;
    const rich = median(
      allRows.flatMap((row) => {
        const [kcal, grams] = [
          perServingKcal(row, energy, weight, mapping[energyAt]!.unit === 'kJ' && isUnitOpen),
          weight && perServingG(row, weight),
        ];
        return kcal && grams ? [kcal / grams] : [];
      }),
    );
    const isRich = Number.isNaN(rich) || (rich >= PLAUSIBLE_KCAL_PER_G[0] && rich <= PLAUSIBLE_KCAL_PER_G[1]);
    if (energy && isRich && mapping[energyAt]!.unit !== undefined) set(energyAt, { per: energy });
  }

  const weightPer = mapping[weightAt >= 0 ? weightAt : grossAt]?.per;
  const energyPer = energyAt >= 0 ? mapping[energyAt]!.per : undefined;
  settleParts(mapping, figures, allRows, { energyAt, energyPer }, set);
  const waterAt = columnOf('waterMl', true);
  if (waterAt >= 0 && mapping[waterAt]!.unit !== undefined) {
    if (isSingle || !hasServings) set(waterAt, { per: weightPer === 'serving' ? 'serving' : 'pouch' });
    else if (weightPer) {
      const logs = (['serving', 'pouch'] as const).map((per) => {
        const ratios = allRows.map((row) => {
          const [water, grams, count] = [
            figures.get(waterAt)?.[row],
            perServingG(row, weightPer),
            servings(row),
          ];
          return water && grams && count ? (per === 'pouch' ? water / count : water) / grams : undefined;
        });
        return logLikelihood(ratios.filter(isDefined), ...OF_A_SERVING.waterPerG);
      });
      // Water is poured into what was weighed; where no heading says for what anything is, a row tells of one thing.
      const isOneThing = weights.length > 1 && energies.length > 1 && weightPer === energyPer;
      const bound = Math.log(isOneThing ? 8 : 3);
      const lead = logs[0]! - logs[1]! + (weightPer === 'pouch' ? -bound : bound);
      if (Math.abs(lead) >= CLEAR) set(waterAt, { per: lead > 0 ? 'serving' : 'pouch' });
    }
  }
  const others = mapping
    .map((column, index) => ({ column, index }))
    .filter(({ column }) => column.field && fieldEntry(column.field).perServing && column.per === undefined);
  for (const { index } of others) if (isSingle) set(index, { per: 'pouch' });
  return mapping;
}

/** Servings of all pouches are so many times their number, and more than any pouch holds somewhere. */
function areMultiples(
  servings: readonly (number | undefined)[],
  pouches: readonly (number | undefined)[],
): boolean {
  const pairs = servings.flatMap((value, row) =>
    value !== undefined && pouches[row] ? [[value, pouches[row]] as const] : [],
  );
  return (
    pairs.length > 1 &&
    pairs.every(([value, count]) => Number.isInteger((2 * value) / count) && value >= count) &&
    pairs.some(([value]) => value > 4) &&
    pairs.some(([, count]) => count > 1)
  );
}

/** Protein, fat and carbohydrate stand for what makes them go with the energy: 4, 9 and 4 kcal a gram (Atwater). */
function settleParts(
  mapping: readonly ColumnMapping[],
  figures: Figures,
  rows: readonly number[],
  { energyAt, energyPer }: { readonly energyAt: number; readonly energyPer: Basis | undefined },
  set: (index: number, change: Partial<ColumnMapping>) => void,
): void {
  const at = (field: ShelfField) => mapping.findIndex((column) => column.field === field);
  const parts = [at('proteinG'), at('fatG'), at('carbohydrateG')];
  const all = mapping.flatMap((column, index) =>
    column.field &&
    ['proteinG', 'fatG', 'carbohydrateG', 'fibreG', 'sugarsG', 'sodiumMg', 'saltG'].includes(column.field) &&
    column.per === undefined
      ? [index]
      : [],
  );
  if (all.length === 0 || energyPer === undefined) return;
  const named = parts.find((index) => index >= 0 && mapping[index]!.per !== undefined);
  if (named !== undefined) return all.forEach((index) => set(index, { per: mapping[named]!.per }));
  if (parts.some((index) => index < 0)) {
    // Without all three nothing can be compared; they stand beside the energy and are taken for the same.
    return all.forEach((index) => set(index, { per: energyPer }));
  }
  const ratios = rows.flatMap((row) => {
    const [protein, fat, carbohydrate, energy] = [...parts, energyAt].map(
      (index) => figures.get(index)?.[row],
    );
    return energy && (protein || fat || carbohydrate)
      ? [(4 * (protein ?? 0) + 9 * (fat ?? 0) + 4 * (carbohydrate ?? 0)) / energy]
      : [];
  });
  const ratio = median(ratios);
  if (ratio > 0.7 && ratio < 1.3) all.forEach((index) => set(index, { per: energyPer }));
}

/** Two columns of one figure, one of which is the other times the servings, or times the pouches: that one is for a pouch, or for all of them. */
function splitTwins(
  mapping: readonly ColumnMapping[],
  figures: Figures,
  counts: { readonly [count in 'servings' | 'pouches']: (row: number) => number | undefined },
  rows: readonly number[],
): (readonly [number, Basis])[] {
  const found: (readonly [number, Basis])[] = [];
  for (const [one, column] of mapping.entries()) {
    if (!column.field || !fieldEntry(column.field).perServing) continue;
    for (let other = one + 1; other < mapping.length; other++) {
      if (
        mapping[other]!.field !== column.field ||
        (column.per !== undefined && mapping[other]!.per !== undefined)
      )
        continue;
      const power = (count: (row: number) => number | undefined): number => {
        const checks = rows.flatMap((row) => {
          const [first, second, n] = [figures.get(one)?.[row], figures.get(other)?.[row], count(row)];
          return first && second && n && n !== 1 ? [Math.log(first / second) / Math.log(n)] : [];
        });
        return checks.length > 0 ? median(checks) : 0;
      };
      const isOne = (exponent: number): boolean => Math.abs(Math.abs(exponent) - 1) < 0.15;
      const larger = (exponent: number): readonly [number, number] =>
        exponent > 0 ? [one, other] : [other, one];
      const [ofServings, ofPouches] = [power(counts.servings), power(counts.pouches)];
      if (isOne(ofServings)) {
        const [ofPouch, ofServing] = larger(ofServings);
        found.push([ofPouch, 'pouch'], [ofServing, 'serving']);
      } else if (isOne(ofPouches)) {
        const [ofAll, ofPouch] = larger(ofPouches);
        if (mapping[ofAll]!.per === undefined && mapping[ofPouch]!.per !== 'serving')
          found.push([ofAll, 'lot'], [ofPouch, 'pouch']);
      }
    }
  }
  return found;
}
