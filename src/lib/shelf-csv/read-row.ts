import { addDays, addMonths } from '../planning/model/calendar.ts';
import { doubtsOf } from '../planning/model/plausibility.ts';
import { faultText } from '../presentation/fault-words.ts';
import { problemsOf } from '../presentation/problems.ts';
import { StatedLot } from '../planning/model/stated-lot.ts';
import { USUAL_LOT } from '../planning/model/usual-lot.ts';
import { currencyIn } from './currency-words.ts';
import type { CsvRecord } from './csv-records.ts';
import {
  fieldEntry,
  LOT_FIELDS,
  plainWords,
  type FieldEntry,
  type LotField,
  type ShelfField,
} from './fields.ts';
import type { Basis } from './headings.ts';
import { earlierCode, madeCode } from './made-code.ts';
import type { ColumnMapping, Mapping } from './mapping.ts';
import { readCell, readCurrency, type CellRules, type Reading } from './read-cell.ts';
import { RowSorter, type NoLot } from './sort-rows.ts';
import { restore } from './spreadsheet-safe.ts';
import { KIND_VOCABULARY, saysNothing } from './vocabulary.ts';
import { say } from '../texts/say.ts';

/** What is wrong or odd about one cell. `column`: its heading in the file, '' where there is none. */
export type RowProblem = {
  readonly column: string;
  readonly field: string;
  readonly value: string;
  readonly reason: string;
};

/**
 * `question`: something that a lot needs is missing or cannot be read, and has to be said; `refused`: what the row says cannot be true. Both keep what could
 * be read.
 */
export type ReadRow = {
  readonly row: number;
  readonly cells: readonly string[];
  readonly warnings: readonly RowProblem[];
} & (
  | { readonly status: 'lot'; readonly lot: StatedLot }
  | {
      readonly status: 'question' | 'refused';
      readonly lot: Partial<StatedLot>;
      readonly problems: readonly RowProblem[];
    }
  | { readonly status: 'skipped'; readonly why: NoLot }
);

export type RowContext = {
  readonly mapping: Mapping;
  /** ISO 4217 code in which the shelf counts. */
  readonly currency: string;
  /** What stands over the headings, which may name the meal of the rows below. */
  readonly title?: string | undefined;
  /** Some of the file's characters could not be decoded and are U+FFFD. */
  readonly damaged: boolean;
  /** What is stated of the lots on the shelf, by their code: what the file has no column for stays as it is there. */
  readonly shelf: ReadonlyMap<string, StatedLot>;
};

type Values = Partial<Record<LotField, unknown>> & { allergensOpen?: true };
type Draft = {
  readonly cells: readonly string[];
  readonly values: Values;
  readonly problems: (RowProblem & { readonly isUntrue?: true })[];
  readonly warnings: RowProblem[];
  /** What could not be taken and goes into the note, so that it is not lost. */
  readonly kept: string[];
};
type Column = {
  readonly entry: FieldEntry;
  readonly header: string;
  readonly index: number;
  readonly per: Basis | undefined;
  readonly of: readonly string[];
  readonly isOpen: boolean;
  /** No unit is known, so a bare number says nothing. */
  readonly isUnitOpen: boolean;
  readonly rules: CellRules;
  /** What the texts of the column were read as; left out where few come twice. */
  readonly seen?: Map<string, Reading<unknown>>;
};
type Cell = {
  readonly column: Column;
  readonly text: string;
  readonly reading: Exclude<Reading<unknown>, { reason: string }>;
};

const MOST_SEEN = 10_000;
const SELDOM_TWICE: readonly FieldEntry['kind'][] = ['text', 'number', 'cost'];
/** A pouch of at most so much dry food, whose servings nobody says, is taken for one serving, g (rule of thumb). */
const ONE_SERVING_G = 200;
/** More than this is no serving of dry food, g (rule of thumb). */
const MOST_ONE_SERVING_G = 350;
/** Two columns of one figure may differ by so much: the rounding of units and labels. */
const SAME_WITHIN = 0.06;
/** Salt is 2.5 times its sodium (Regulation (EU) 1169/2011, Annex I). */
const SALT_PER_SODIUM = 2.5;
/** The allergens of Regulation (EU) 1169/2011, Annex II: a table that answers for each of them says all. Wheat is a cereal with gluten there. */
export const EU_ALLERGENS: readonly string[] = [
  'milk',
  'egg',
  'fish',
  'crustaceans',
  'nuts',
  'peanut',
  'soy',
  'sesame',
  'gluten',
  'celery',
  'mustard',
  'sulphites',
  'lupin',
  'molluscs',
];
const REQUIRED: readonly LotField[] = ['recipe', 'pouches', 'servingsPerPouch', 'dryWeightG'];
const FIGURES: readonly ShelfField[] = [
  'pouches',
  'servingsPerPouch',
  'dryWeightG',
  'grossWeightG',
  'energyKcal',
  'waterMl',
  'sealedOn',
  'bestBefore',
];

/** Reads the records of one file, from the first to the last: it remembers the codes it has seen and the heading it is under. */
export class RowReader {
  readonly #context: RowContext;
  readonly #columns: readonly Column[];
  readonly #columnsOf: ReadonlyMap<ShelfField, readonly Column[]>;
  readonly #withoutColumn: readonly LotField[];
  readonly #sorter: RowSorter;
  /** The currency that the heading of the costs names, where it is another one than that of the shelf. */
  readonly #foreignCosts: string | undefined;
  /** A column that is not read seems to say how many are fed. */
  readonly #saysServings: boolean;
  readonly #byCode = new Map<string, { row: number; identity: string; content: string }>();

  constructor(context: RowContext) {
    const { mapping, currency } = context;
    this.#context = context;
    this.#columns = mapping.columns.flatMap((column, index) =>
      column.field ? [columnOf(column, index, mapping, currency)] : [],
    );
    this.#columnsOf = Map.groupBy(this.#columns, ({ entry }) => entry.field);
    const stands = (field: LotField): boolean =>
      this.#columnsOf.has(field) || (STANDS_FOR[field] ?? []).some((other) => this.#columnsOf.has(other));
    this.#withoutColumn = LOT_FIELDS.filter((field) => field !== 'code' && !stands(field));
    const at = (fields: readonly ShelfField[]): number[] =>
      this.#columns.filter(({ entry }) => fields.includes(entry.field)).map(({ index }) => index);
    this.#sorter = new RowSorter(
      mapping.columns.map(({ header }) => header),
      at(['recipe'])[0] ?? -1,
      at(FIGURES),
      this.#columns
        .filter(({ entry }) => entry.field !== 'note' && entry.field !== 'recipe')
        .map(({ index }) => index),
    );
    const costs = this.#columnsOf.get('costMinor')?.[0]?.header ?? '';
    const stated = currencyIn(costs);
    const reading = stated === undefined ? undefined : readCurrency(stated, currency);
    this.#saysServings = mapping.columns.some(
      ({ field, header }) =>
        field === null && /serv|portion|person|people|feeds|pax|personen/.test(plainWords(header)),
    );
    this.#sorter.readTitle(context.title ?? '');
    this.#foreignCosts = reading && 'reason' in reading ? reading.reason : undefined;
  }

  /** @returns what was said of a lot by a record, or what has to be asked, or why it is no lot */
  read(record: CsvRecord): ReadRow {
    const { row, fault } = record;
    const cells = this.#withoutOverhang(record.cells);
    const why = fault ? undefined : this.#sorter.sort(cells);
    if (why) return { row, cells, warnings: [], status: 'skipped', why };
    const draft: Draft = { cells, values: {}, problems: [], warnings: [], kept: [] };
    this.#checkShape(draft, fault);
    if (draft.problems.length === 0) {
      this.#readAll(draft);
      const lot = this.#validLot(draft, row);
      if (lot && draft.problems.length === 0)
        return { row, cells, warnings: draft.warnings, status: 'lot', lot };
    }
    const { values, warnings } = draft;
    const problems = draft.problems.map(({ isUntrue: _, ...problem }) => problem);
    const status = draft.problems.some(({ isUntrue }) => isUntrue) ? 'refused' : 'question';
    return { row, cells, warnings, status, lot: values as Partial<StatedLot>, problems };
  }

  /** A remark at the end of a row may hold the delimiter without quotation marks. */
  #withoutOverhang(cells: readonly string[]): readonly string[] {
    const width = this.#context.mapping.columns.length;
    const last = this.#context.mapping.columns.at(-1);
    // A list of allergens that was cut in two would leave out what is behind the cut.
    const hasLists = ['allergens', 'diets', 'mealKinds'].some((field) =>
      this.#columnsOf.has(field as ShelfField),
    );
    if (
      cells.length <= width ||
      hasLists ||
      last?.field !== 'note' ||
      cells.slice(width).every((cell) => cell.trim() === '')
    )
      return cells;
    if (cells.slice(width).some((cell) => /^\s*[\d.,]+\s*$/.test(cell))) return cells;
    return [
      ...cells.slice(0, width - 1),
      cells
        .slice(width - 1)
        .map((cell) => cell.trim())
        .join(', '),
    ];
  }

  #checkShape({ cells, problems }: Draft, fault: string | undefined): void {
    const whole = { column: '', field: '', isUntrue: true } as const;
    const width = this.#context.mapping.columns.length;
    if (fault) problems.push({ ...whole, value: cells.at(-1)?.slice(0, 80) ?? '', reason: fault });
    const extra = cells.length > width ? cells.slice(width).find((cell) => cell.trim() !== '') : undefined;
    if (extra !== undefined)
      problems.push({
        ...whole,
        value: extra,
        reason: say(
          'this row has {cells} cells but the header has {width}. Put quotation marks around any text that contains the delimiter',
          { cells: String(cells.length), width: String(width) },
        ),
      });
  }

  #readAll(draft: Draft): void {
    const { values } = draft;
    const cells = this.#readCells(draft);
    this.#takeTexts(draft, cells);
    this.#takeMeals(draft, cells);
    this.#takeCounts(draft, cells);
    this.#takeWeight(draft, cells);
    for (const field of [
      'energyKcal',
      'proteinG',
      'fatG',
      'carbohydrateG',
      'fibreG',
      'sugarsG',
      'sodiumMg',
      'waterMl',
      'costMinor',
    ] as const)
      this.#takeFigure(draft, cells, field);
    const salt = this.#figure(draft, cells, 'saltG');
    if (salt !== undefined && values.sodiumMg === undefined)
      values.sodiumMg = tidy((salt * 1000) / SALT_PER_SODIUM);
    for (const field of ['steepMin', 'stirAfterMin', 'tareG', 'volumeMl', 'pieces'] as const)
      this.#takePlain(draft, cells, field);
    this.#takeWaterKind(draft, cells);
    this.#takeDates(draft, cells);
    this.#takeAllergens(draft, cells);
    this.#takeDiets(draft, cells);
    this.#impliedByNoWater(values);
    this.#takeNote(draft, cells);
    this.#nameWithoutCode(draft);
    this.#fillWhatHasNoColumn(draft);
  }

  #readCells(draft: Draft): Map<ShelfField, Cell[]> {
    const read = new Map<ShelfField, Cell[]>();
    for (const column of this.#columns) {
      const { field } = column.entry;
      // It is looked at with the cost.
      if (field === 'currency') continue;
      let text = textAt(draft.cells, column);
      if (text === '') {
        const constant = this.#context.mapping.constants[field]?.trim();
        if (!constant) continue;
        draft.warnings.push(
          this.#about(
            field,
            '',
            say('is empty; "{constant}" was taken, as chosen for this file', { constant }),
            column,
          ),
        );
        text = constant;
      }
      if (this.#context.damaged && text.includes('\uFFFD')) {
        draft.problems.push(
          this.#about(
            field,
            text,
            say('has a character that could not be read; save the file again as UTF-8'),
            column,
          ),
        );
        continue;
      }
      const reading = readOften(column, text);
      if ('reason' in reading) {
        this.#leaveOut(draft, column, text, reading.reason);
        continue;
      }
      if (reading.value === undefined) {
        if (saysNothing(text) && /\p{L}/u.test(text) && field === 'allergens')
          draft.kept.push(`${column.header}: ${text}`);
        continue;
      }
      if (column.isUnitOpen && isBare(text)) {
        this.#leaveOut(draft, column, text, say('has no unit; say for the file which one is meant'));
        continue;
      }
      if (reading.doubt) draft.warnings.push(this.#about(field, text, reading.doubt, column));
      const cell: Cell = { column, text, reading };
      read.set(field, [...(read.get(field) ?? []), cell]);
    }
    return read;
  }

  /** What a lot needs is asked for; anything else is left open, and its text kept in the note. */
  #leaveOut(draft: Draft, column: Column, text: string, reason: string): void {
    const { field } = column.entry;
    if (REQUIRED.includes(field as LotField) || field === 'grossWeightG' || field === 'code') {
      draft.problems.push(this.#about(field, text, reason, column));
      return;
    }
    draft.warnings.push(
      this.#about(field, text, say('left out and kept in the note: {reason}', { reason }), column),
    );
    draft.kept.push(`${column.header || say(column.entry.label)}: ${text}`);
  }

  #takeTexts({ values }: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    for (const field of [
      'code',
      'recipe',
      'place',
      'withdrawn',
      'kind',
      'cookAfter',
      'pouchTakesBoilingWater',
      'eatFromPouch',
      'pouchStands',
      'weighedDry',
      'bought',
    ] as const) {
      const cell = cells.get(field)?.[0];
      if (!cell) continue;
      values[field] =
        typeof cell.reading.value === 'string' && field !== 'code'
          ? cell.reading.value.replace(/[\n\r\t]+ */g, ' ')
          : cell.reading.value;
    }
  }

  #takeMeals({ values }: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    const cell = cells.get('mealKinds')?.[0];
    if (cell) {
      values.mealKinds = cell.reading.value;
      const kinds = new Set(
        cell.text.split(/[;,/|+&]/).flatMap((part) => KIND_VOCABULARY.meaning(part) ?? []),
      );
      const [kind] = kinds;
      // Meals tell extras and drinks by themselves.
      if (kinds.size === 1 && kind === 'side') values.kind ??= kind;
    } else if (this.#sorter.meals) values.mealKinds = [...this.#sorter.meals];
  }

  #takeCounts(draft: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    const { values } = draft;
    const pouches = cells.get('pouches')?.[0];
    if (pouches) values.pouches = pouches.reading.value;
    const servings = cells.get('servingsPerPouch')?.[0];
    if (servings && servings.column.isOpen && values.pouches !== 1)
      draft.problems.push(
        this.#about(
          'servingsPerPouch',
          servings.text,
          say('are these the servings of one pouch or of all? Say it for the column.'),
          servings.column,
        ),
      );
    else if (servings?.column.per === 'lot') {
      if (typeof values.pouches === 'number' && values.pouches > 0)
        values.servingsPerPouch = tidy((servings.reading.value as number) / values.pouches);
    } else if (servings) values.servingsPerPouch = servings.reading.value;
    const besides = cells.get('dryWeightG')?.find(({ reading }) => reading.also?.servings !== undefined);
    values.servingsPerPouch ??= besides?.reading.also?.servings;
  }

  /** The dry weight of a serving, from whatever was weighed; servings that nobody says, from two weights or from a small pouch. */
  #takeWeight(draft: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    const { values, warnings } = draft;
    const net = cells.get('dryWeightG')?.filter(({ reading }) => !reading.gross) ?? [];
    const gross = [
      ...(cells.get('dryWeightG')?.filter(({ reading }) => reading.gross) ?? []),
      ...(cells.get('grossWeightG') ?? []),
    ];
    const [first] = net.length > 0 ? net : gross;
    const constantServings = this.#constant('servingsPerPouch');
    values.servingsPerPouch ??= constantServings;
    const weights = (per: Basis): number | undefined =>
      net.find((cell) => basisOf(cell) === per)?.reading.value as number | undefined;
    if (values.servingsPerPouch === undefined && first) {
      const [serving, pouch] = [weights('serving'), weights('pouch')];
      const ratio = serving && pouch ? pouch / serving : undefined;
      if (ratio !== undefined && Math.abs(ratio * 2 - Math.round(ratio * 2)) < 0.2 && ratio >= 0.9) {
        values.servingsPerPouch = Math.round(ratio * 2) / 2;
        warnings.push(
          this.#about('servingsPerPouch', '', say('worked out of the weights of a pouch and of a serving')),
        );
      } else if (
        !this.#columnsOf.has('servingsPerPouch') ||
        textOf(draft.cells, this.#columnsOf.get('servingsPerPouch')) === ''
      ) {
        const grams = (first.reading.value as number) - (net.length > 0 ? 0 : USUAL_LOT.tareG);
        if (basisOf(first) === 'pouch' && grams <= ONE_SERVING_G && !this.#saysServings) {
          values.servingsPerPouch = 1;
          warnings.push(
            this.#about(
              'servingsPerPouch',
              '',
              say('is not said; a pouch of this weight was taken for one serving'),
            ),
          );
        }
      }
    }
    const servings = values.servingsPerPouch;
    const count = typeof servings === 'number' && servings > 0 ? servings : undefined;
    const ofEach = cells.get('pouches')?.[0]?.reading.also?.pouchG;
    if (ofEach !== undefined && !first && (count !== undefined || ofEach <= ONE_SERVING_G)) {
      values.servingsPerPouch ??= 1;
      values.dryWeightG = tidy(ofEach / (count ?? 1));
      if (count === undefined)
        warnings.push(
          this.#about(
            'servingsPerPouch',
            '',
            say('is not said; a pouch of this weight was taken for one serving'),
          ),
        );
      return;
    }
    const tare = (cells.get('tareG')?.[0]?.reading.value ?? this.#constant('tareG')) as number | undefined;
    if (gross.length > 0 && net.length === 0 && tare === undefined)
      warnings.push(
        this.#about(
          'grossWeightG',
          gross[0]!.text,
          say('was weighed with its packaging; {tare} g were taken off for that', {
            tare: String(USUAL_LOT.tareG),
          }),
          gross[0]!.column,
        ),
      );
    const found = [...net, ...gross].flatMap((cell) => {
      const off = net.includes(cell) ? 0 : (tare ?? USUAL_LOT.tareG);
      const per = basisOf(cell);
      const value = cell.reading.value as number;
      // Of a pouch for one, weight of serving and pouch are the same; what no serving weighs is of something else.
      if (per === undefined && count === 1 && value <= MOST_ONE_SERVING_G)
        return [{ cell, grams: value - off }];
      if (per === undefined || (count === undefined && per !== 'serving')) return [];
      if (per === 'serving') return [{ cell, grams: value - (off > 0 && count ? off / count : 0) }];
      if (per === 'lot')
        return typeof values.pouches === 'number' && values.pouches > 0
          ? [{ cell, grams: value / values.pouches / count! - off / count! }]
          : [];
      return per === 'pouch' ? [{ cell, grams: (value - off) / count! }] : [];
    });
    const [taken, ...others] = found;
    if (taken) {
      const differing = others.find(({ cell, grams }) => net.includes(cell) && differ(taken.grams, grams));
      if (differing) draft.problems.push(this.#twoValues('dryWeightG', taken.cell, differing.cell));
      else
        values.dryWeightG =
          basisOf(taken.cell) === 'serving' && net.includes(taken.cell) ? taken.grams : tidy(taken.grams);
      const whole = gross.find((cell) => basisOf(cell) === 'pouch');
      if (net.includes(taken.cell) && whole && count && values.tareG === undefined && tare === undefined) {
        const packaging = tidy((whole.reading.value as number) - taken.grams * count);
        if (packaging >= 2 && packaging <= 60) values.tareG = packaging;
      }
    } else if (first && values.servingsPerPouch !== undefined)
      draft.problems.push(
        this.#about(
          'dryWeightG',
          first.text,
          say('is it the weight of a serving or of a whole pouch? Say it for the column.'),
          first.column,
        ),
      );
  }

  /** A figure of one serving, from a column for a serving, a pouch, a lot or 100 g. */
  #figure(
    draft: Draft,
    cells: ReadonlyMap<ShelfField, readonly Cell[]>,
    field: ShelfField,
  ): number | undefined {
    const { values } = draft;
    const count =
      typeof values.servingsPerPouch === 'number' && values.servingsPerPouch > 0
        ? values.servingsPerPouch
        : undefined;
    const grams =
      typeof values.dryWeightG === 'number' && values.dryWeightG > 0 ? values.dryWeightG : undefined;
    const perServing = (cell: Cell): number | undefined => {
      const value = cell.reading.value as number;
      const per = basisOf(cell) ?? (value === 0 || count === 1 ? 'serving' : undefined);
      switch (per) {
        case 'serving':
          return value;
        case 'pouch':
          return count && tidy(value / count);
        case 'lot':
          return count && typeof values.pouches === 'number' && values.pouches > 0
            ? tidy(value / values.pouches / count)
            : undefined;
        case '100g':
          return grams && tidy((value * grams) / 100);
        default:
          return undefined;
      }
    };
    const found = (cells.get(field) ?? []).map((cell) => ({ cell, value: perServing(cell) }));
    for (const { cell, value } of found)
      if (value === undefined && count !== undefined && grams !== undefined && basisOf(cell) === undefined)
        this.#leaveOut(
          draft,
          cell.column,
          cell.text,
          say('is it for a serving or for a whole pouch? Say it for the column.'),
        );
    const [taken, ...others] = found.filter(({ value }) => value !== undefined);
    const differing = taken && others.find((other) => differ(taken.value!, other.value!));
    if (taken && differing) {
      const { reason } = this.#twoValues(field, taken.cell, differing.cell);
      for (const { cell } of [taken, differing]) this.#leaveOut(draft, cell.column, cell.text, reason);
      return undefined;
    }
    return taken?.value;
  }

  #takeFigure(
    draft: Draft,
    cells: ReadonlyMap<ShelfField, readonly Cell[]>,
    field: LotField & ShelfField,
  ): void {
    if (field === 'costMinor' && this.#foreignCosts) {
      for (const { column, text } of cells.get(field) ?? [])
        this.#leaveOut(draft, column, text, this.#foreignCosts);
      return;
    }
    const currency = draft.cells[this.#columnsOf.get('currency')?.[0]?.index ?? -1]?.trim();
    if (field === 'costMinor' && currency) {
      const read = readCurrency(currency, this.#context.currency);
      if ('reason' in read) {
        for (const { column, text } of cells.get(field) ?? [])
          this.#leaveOut(draft, column, `${text} ${currency}`, read.reason);
        return;
      }
    }
    const value = this.#figure(draft, cells, field);
    if (value === undefined) return;
    draft.values[field] = field === 'costMinor' ? Math.round(value) : value;
  }

  #takePlain(
    { values }: Draft,
    cells: ReadonlyMap<ShelfField, readonly Cell[]>,
    field: LotField & ShelfField,
  ): void {
    const cell = cells.get(field)?.[0];
    if (cell) values[field] ??= cell.reading.value;
  }

  #takeWaterKind({ values }: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    const water = cells.get('waterMl')?.[0];
    const byHeading = /(?:^| )(hot|boiling|cold|kochend\w*|heiss\w*|kalt\w*)(?: |$)/.exec(
      plainWords(water?.column.header ?? ''),
    )?.[1];
    const named = byHeading?.startsWith('k')
      ? byHeading.startsWith('kalt')
        ? 'cold'
        : 'boiling'
      : byHeading?.startsWith('heiss')
        ? 'hot'
        : byHeading;
    const kind =
      cells.get('waterKind')?.[0]?.reading.value ??
      water?.reading.waterKind ??
      (water && water.reading.value !== 0 ? named : undefined);
    if (kind !== undefined) values.waterKind = kind;
  }

  #takeDates(draft: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    const { values } = draft;
    for (const field of ['sealedOn', 'bestBefore'] as const) {
      const dates = (cells.get(field) ?? []).filter(({ reading }) => reading.keepsMonths === undefined);
      const [first] = dates;
      if (!first) continue;
      const other = dates.find(({ reading }) => reading.value !== first.reading.value);
      // Of two dates the careful one: sealed first, eaten first.
      values[field] = other
        ? [first.reading.value as string, other.reading.value as string].sort()[0]
        : first.reading.value;
      if (other)
        draft.warnings.push({
          ...this.#twoValues(field, first, other),
          reason: say('"{one}" and "{other}" differ; the earlier was taken', {
            one: first.text,
            other: other.text,
          }),
        });
    }
    const keeps =
      cells.get('bestBefore')?.find(({ reading }) => reading.keepsMonths !== undefined) ??
      cells.get('keepsMonths')?.[0];
    if (!keeps || values.bestBefore !== undefined) return;
    const months = keeps.reading.keepsMonths ?? (keeps.reading.value as number);
    if (typeof values.sealedOn !== 'string') {
      this.#leaveOut(
        draft,
        keeps.column,
        keeps.text,
        say('counts from the sealing date, which is not known'),
      );
      return;
    }
    values.bestBefore = Number.isInteger(tidy(months))
      ? addMonths(values.sealedOn, Math.round(months))
      : addDays(values.sealedOn, Math.round(months * 30.44));
  }

  /** Columns of yes and no say something of the allergens they name, and nothing of the others. */
  #takeAllergens(draft: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    const { values, warnings } = draft;
    const lists = cells.get('allergens') ?? [];
    const marks = cells.get('oneAllergen') ?? [];
    if (lists.length === 0 && marks.length === 0) return;
    const listed = lists.flatMap(({ reading }) => reading.value as string[]);
    const yes = marks.filter(({ reading }) => reading.value === true).flatMap(({ column }) => column.of);
    const no = marks.filter(({ reading }) => reading.value === false).flatMap(({ column }) => column.of);
    const contained = [...new Set([...listed, ...yes])];
    const answered = new Set([...no, ...yes]);
    const allAnswered = EU_ALLERGENS.every((code) => answered.has(code));
    const isOpen = lists.some(({ reading }) => reading.open);
    const isListComplete = lists.length > 0 && !isOpen;
    const contrary = listed.find((code) => no.includes(code));
    if (contrary !== undefined && lists[0])
      warnings.push(
        this.#about(
          'allergens',
          lists[0].text,
          say('a column says that it does not contain {allergen}; it counts as contained', {
            allergen: contrary,
          }),
          lists[0].column,
        ),
      );
    if (isListComplete || allAnswered || this.#context.mapping.allergensComplete) {
      values.allergens = contained;
      return;
    }
    if (contained.length === 0) return;
    values.allergens = contained;
    values.allergensOpen = true;
    if (marks.length > 0)
      warnings.push(
        this.#about(
          'oneAllergen',
          '',
          say('the columns do not name every allergen, so the others count as not declared'),
          marks[0]?.column,
        ),
      );
  }

  #takeDiets({ values, warnings }: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    const listed = (cells.get('diets') ?? []).flatMap(({ reading }) => reading.value as string[]);
    const marked = (cells.get('oneDiet') ?? [])
      .filter(({ reading }) => reading.value === true)
      .flatMap(({ column }) => column.of);
    const denied = (cells.get('oneDiet') ?? [])
      .filter(({ reading }) => reading.value === false)
      .flatMap(({ column }) => column.of);
    const diets = [...new Set([...listed, ...marked])].filter((diet) => !denied.includes(diet));
    if (diets.length < new Set([...listed, ...marked]).size)
      warnings.push(
        this.#about('diets', '', say('two columns differ; a diet that one of them denies was left out')),
      );
    if (diets.length > 0) values.diets = diets;
  }

  /** Where nothing is poured on, nobody states the kind of water or the waiting time. */
  #impliedByNoWater(values: Values): void {
    if (values.waterKind === 'none') values.waterMl ??= 0;
    if (values.waterMl !== 0) return;
    values.waterKind ??= 'none';
    values.steepMin ??= 0;
  }

  #takeNote({ values, kept }: Draft, cells: ReadonlyMap<ShelfField, readonly Cell[]>): void {
    const notes = [
      ...(cells.get('note') ?? []).map(({ reading }) => reading.value as string),
      ...new Set(kept),
    ];
    const text = [...new Set(notes)].join('; ');
    if (text !== '') values.note = text.slice(0, 2000);
  }

  #nameWithoutCode({ values, warnings }: Draft): void {
    if (values.code !== undefined) return;
    const lot = values as Partial<StatedLot>;
    const earlier = earlierCode(lot);
    const made = earlier !== undefined && this.#context.shelf.has(earlier) ? earlier : madeCode(lot);
    if (made === undefined) return;
    values.code = made;
    if (this.#columnsOf.has('code'))
      warnings.push(this.#about('code', '', say('is empty; "{made}" was made for it', { made })));
  }

  /** As it is on the shelf; for a new lot, the value that was given for all rows. */
  #fillWhatHasNoColumn(draft: Draft): void {
    const { shelf } = this.#context;
    const { values } = draft;
    const known = typeof values.code === 'string' ? shelf.get(values.code) : undefined;
    for (const field of this.#withoutColumn) {
      const constant = this.#constant(field);
      if (known) {
        if (known[field] !== undefined) values[field] = known[field];
        if (field === 'allergens' && known.allergensOpen) values.allergensOpen = true;
      } else if (constant !== undefined) values[field] ??= constant;
    }
  }

  #constant(field: LotField): unknown {
    const { mapping, currency } = this.#context;
    const text = this.#columnsOf.has(field) ? undefined : mapping.constants[field]?.trim();
    if (!text) return undefined;
    const read = readCell(fieldEntry(field), text, { ...mapping, unit: undefined, currency });
    return 'value' in read ? read.value : undefined;
  }

  #validLot(draft: Draft, row: number): StatedLot | undefined {
    const { values, problems, warnings } = draft;
    const parsed = StatedLot.safeParse(values, { reportInput: true });
    if (!parsed.success) {
      for (const { field: path, message } of problemsOf(parsed.error)) {
        const field = /^\w+/.exec(path)![0] as LotField;
        // A cell that could not be read has its reason already.
        if (problems.some((problem) => problem.field === say(fieldEntry(field).label))) continue;
        if (
          field === 'dryWeightG' &&
          values.dryWeightG === undefined &&
          problems.some(
            (problem) =>
              problem.field === say(fieldEntry('servingsPerPouch').label) ||
              problem.field === say(fieldEntry('grossWeightG').label),
          )
        )
          continue;
        // Without a name there is no code to be made of it.
        if (field === 'code' && values.code === undefined) continue;
        const isMissing = values[field] === undefined;
        const hasColumn =
          this.#columnsOf.has(field) || (STANDS_FOR[field] ?? []).some((other) => this.#columnsOf.has(other));
        const missing = hasColumn ? say('is empty') : say('has no column in this file');
        problems.push({
          ...this.#about(
            field,
            textOf(draft.cells, this.#columnsOf.get(field)),
            isMissing ? missing : message,
          ),
          ...(!isMissing && { isUntrue: true as const }),
        });
      }
      return undefined;
    }
    const lot = parsed.data;
    for (const { field, severity, ...fault } of doubtsOf(lot)) {
      const about = this.#about(
        field as LotField,
        textOf(draft.cells, this.#columnsOf.get(field as LotField)),
        faultText(fault),
      );
      if (severity === 'refuse') problems.push({ ...about, isUntrue: true });
      else warnings.push(about);
    }
    return problems.length > 0 ? undefined : this.#withOwnCode(draft, lot, row);
  }

  /** Another lot of the same code gets signs added; the same lot twice is asked about. */
  #withOwnCode(draft: Draft, lot: StatedLot, row: number): StatedLot | undefined {
    const identity = [plainWords(lot.recipe), lot.sealedOn, lot.bestBefore, lot.servingsPerPouch].join('|');
    const content = draft.cells.map((cell) => cell.trim()).join('|');
    const isMade = textOf(draft.cells, this.#columnsOf.get('code')) === '';
    for (let turn = 0; ; turn++) {
      const code =
        turn === 0
          ? lot.code
          : isMade
            ? (madeCode(lot, 0) ?? lot.code) + `-${turn + 1}`
            : `${lot.code.slice(0, 36)}-${turn + 1}`;
      const earlier = this.#byCode.get(code);
      if (!earlier) {
        if (turn > 0 && !isMade)
          draft.warnings.push(
            this.#about(
              'code',
              lot.code,
              say('row {row} has this code already, for another lot; "{code}" was made of it', {
                row: String(this.#byCode.get(lot.code)!.row),
                code,
              }),
            ),
          );
        this.#byCode.set(code, { row, identity, content });
        return { ...lot, code };
      }
      if (earlier.content === content || (!isMade && turn === 0 && earlier.identity === identity)) {
        draft.problems.push(
          this.#about(
            'code',
            isMade ? '' : lot.code,
            say('row {row} already has this lot; add up their pouches, or leave one of them out', {
              row: String(earlier.row),
            }),
          ),
        );
        return undefined;
      }
    }
  }

  #twoValues(field: ShelfField, one: Cell, other: Cell): RowProblem {
    return this.#about(
      field,
      one.text,
      say('"{one}" and "{other}" ({column}) do not go together; which one is right?', {
        one: one.text,
        other: other.text,
        column: other.column.header,
      }),
      one.column,
    );
  }

  #about(
    field: ShelfField,
    value: string,
    reason: string,
    column: Column | undefined = this.#columnsOf.get(field)?.[0],
  ): RowProblem {
    return { column: column?.header ?? '', field: say(fieldEntry(field).label), value, reason };
  }
}

/** Columns that a field is worked out from. */
const STANDS_FOR: Partial<Record<LotField, readonly ShelfField[]>> = {
  dryWeightG: ['grossWeightG'],
  bestBefore: ['keepsMonths'],
  sodiumMg: ['saltG'],
  allergens: ['oneAllergen'],
  diets: ['oneDiet'],
};

function columnOf(
  { field, header, unit, per, of, open }: ColumnMapping,
  index: number,
  mapping: Mapping,
  currency: string,
): Column {
  const entry = fieldEntry(field!);
  const column: Column = {
    entry,
    header,
    index,
    per,
    of: of?.split(' ') ?? [],
    isOpen: open === true,
    isUnitOpen: entry.units !== undefined && unit === undefined,
    rules: {
      decimalMark: mapping.decimalMark,
      dateOrder: mapping.dateOrder,
      year: mapping.year,
      unit,
      currency,
    },
  };
  return SELDOM_TWICE.includes(entry.kind) ? column : { ...column, seen: new Map() };
}

const basisOf = ({ reading, column }: Cell): Basis | undefined =>
  reading.per ?? (reading.also?.servings === undefined ? column.per : 'pouch');
const isBare = (text: string): boolean =>
  !/\p{L}/u.test(text.replace(/^\s*(?:ca|circa|about|etwa|c|approx)\b\.?/i, ''));
const tidy = (value: number): number => Number(value.toPrecision(12));
const differ = (one: number, other: number): boolean =>
  Math.abs(one - other) > Math.max(SAME_WITHIN * Math.max(Math.abs(one), Math.abs(other)), 1.01);

/** Words and dates come again and again: to look up what they were read as saves a quarter of the time of a long file. */
function readOften({ entry, rules, seen }: Column, text: string): Reading<unknown> {
  if (!seen) return readCell(entry, text, rules);
  let reading = seen.get(text);
  if (reading === undefined) {
    reading = readCell(entry, text, rules);
    if (seen.size < MOST_SEEN) seen.set(text, reading);
  }
  return reading;
}

const textAt = (cells: readonly string[], { index }: Column): string => restore((cells[index] ?? '').trim());
const textOf = (cells: readonly string[], columns: readonly Column[] | undefined): string =>
  columns?.[0] ? textAt(cells, columns[0]) : '';
