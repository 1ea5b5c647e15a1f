import { completeLot, type KnownToHousehold } from '$lib/planning/model/complete-lot.ts';
import { doubtsOf } from '$lib/planning/model/plausibility.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { StatedLot } from '$lib/planning/model/stated-lot.ts';
import { USUAL_LOT } from '$lib/planning/model/usual-lot.ts';
import { unitOf } from '$lib/presentation/show.ts';
import { faultText } from '$lib/presentation/fault-words.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { fieldEntry, type ColumnUnit, type ShelfField } from '$lib/shelf-csv/fields.ts';
import { madeCode } from '$lib/shelf-csv/made-code.ts';
import { readCell, type Reading } from '$lib/shelf-csv/read-cell.ts';
import { writesDayFirst, writesDecimalComma } from '$lib/texts/locale.ts';
import { say } from '$lib/texts/say.ts';
import { keptLines } from './lines.ts';
import type { ShownIn } from './lot-form.ts';
import { ONE_SERVING_G } from './quick-words.ts';
import { withoutUndefined, type FormReader } from './read-form.ts';

/** Codes with a number behind them that are tried before a longer one is made. */
const MOST_TURNS = 99;

/** A row that can go onto the shelf. */
export type QuickLot = {
  /** Which line of the form it is. */
  readonly line: number;
  readonly lot: PouchLot;
  /** What is odd about it and wants a second look. */
  readonly warnings: readonly string[];
};

/**
 * Reads the rows of the quick entry. Cells are read as those of a table that people keep: "~12", "140 g", "March 2027", "milk, egg". Rows that are blank are passed over; what is
 * wrong with the others is in `read.problems`, at the fields `lots[0].pouches` and so on.
 *
 * @param known what the rest is estimated from
 * @param taken the codes that lots on the shelf have
 */
export function readQuickLots(
  read: FormReader,
  shown: ShownIn,
  known: KnownToHousehold,
  taken: ReadonlySet<string>,
): QuickLot[] {
  const codes = new Set(taken);
  return keptLines(read, 'lots', []).flatMap((line) => {
    const row = readRow(read, shown, line);
    if (!row) return [];
    const own = row.code === undefined ? freeCode(row, codes) : row.code;
    const parsed = StatedLot.safeParse({ ...row, code: own }, { reportInput: true });
    const at = (field: string) => `lots[${line}].${field === 'dryWeightG' ? 'pouchG' : field}`;
    if (!parsed.success) {
      read.add(problemsOf(parsed.error).map((problem) => ({ ...problem, field: at(problem.field) })));
      return [];
    }
    if (row.code !== undefined && codes.has(row.code)) {
      read.add([
        { field: at('code'), message: say('"{code}" is taken; choose another one', { code: row.code }) },
      ]);
      return [];
    }
    codes.add(own ?? '');
    const doubts = doubtsOf(parsed.data);
    const refused = doubts.filter(({ severity }) => severity === 'refuse');
    read.add(refused.map((doubt) => ({ field: at(doubt.field), message: faultText(doubt) })));
    if (refused.length > 0) return [];
    const warnings = [
      ...doubts.filter(({ severity }) => severity === 'warn').map(faultText),
      ...twinOf(parsed.data, known),
    ];
    return [{ line, lot: completeLot(parsed.data, known), warnings }];
  });
}

/** A code that no other lot has, made of the name. */
function freeCode(lot: Partial<StatedLot>, codes: ReadonlySet<string>): string | undefined {
  const made = madeCode(lot);
  if (made === undefined || !codes.has(made)) return made;
  for (let turn = 2; turn <= MOST_TURNS; turn++) if (!codes.has(`${made}-${turn}`)) return `${made}-${turn}`;
  return madeCode(lot, 4);
}

/** The same pouches twice are mostly one form sent twice. */
function twinOf(lot: StatedLot, known: KnownToHousehold): string[] {
  const twin = [...(known.lots?.values() ?? [])]
    .flat()
    .find(
      (other) =>
        other.recipe.trim().toLowerCase() === lot.recipe.trim().toLowerCase() &&
        other.pouches === lot.pouches &&
        other.servingsPerPouch === lot.servingsPerPouch &&
        other.sealedOn === lot.sealedOn &&
        Math.abs(other.dryWeightG - lot.dryWeightG) < 0.01,
    );
  return twin
    ? [
        say('lot {code} on the shelf has the same name, count and weight; is this another one?', {
          code: twin.code,
        }),
      ]
    : [];
}

type Row = Partial<StatedLot>;

/** @returns what a row says, or `undefined` where a cell of it cannot be read */
function readRow(read: FormReader, shown: ShownIn, line: number): Row | undefined {
  const before = read.problems.length;
  const at = (name: string) => `lots[${line}].${name}`;
  const said = (name: string, field: ShelfField = name as ShelfField, unit?: ColumnUnit) => {
    const typed = read.text(at(name));
    if (typed === undefined) return undefined;
    const reading = readCell(fieldEntry(field), typed, {
      unit,
      decimalMark: writesDecimalComma() ? ',' : 'either',
      dateOrder: writesDayFirst() ? 'day-first' : 'iso',
      currency: shown.currency,
    });
    if (!('reason' in reading)) return reading;
    read.add([{ field: at(name), message: reading.reason }]);
    return undefined;
  };
  const pouches = said('pouches');
  const weight = said('pouchG', 'dryWeightG', unitOf('food', read.system) as ColumnUnit);
  const servings = said('servingsPerPouch');
  const energy = said('energyKcal', 'energyKcal', 'kcal');
  const water = said('waterMl', 'waterMl', unitOf('pour', read.system) as ColumnUnit);
  const steep = said('steepMin', 'steepMin', 'min');
  const allergens = said('allergens');
  const tareG = read.number('tareG', { quantity: 'food' });
  const row: Row = withoutUndefined({
    code: read.text(at('code')),
    recipe: read.text(at('recipe'))?.replaceAll(/\s+/g, ' '),
    pouches: numberOf(pouches),
    energyKcal: numberOf(energy),
    waterMl: numberOf(water),
    waterKind: waterKindOf(water),
    steepMin: numberOf(steep),
    mealKinds: said('mealKinds')?.value as StatedLot['mealKinds'],
    sealedOn: (said('sealedOn')?.value as string | undefined) ?? read.text('sealedOn'),
    bestBefore: said('bestBefore')?.value as string | undefined,
    allergens: allergens?.value as StatedLot['allergens'],
    allergensOpen: allergens?.open,
    place: read.text(at('place')),
    tareG,
    diets: [],
    note: '',
  });
  takeWeight(read, at, row, { weight, servings, pouches }, tareG);
  return read.problems.length > before ? undefined : row;
}

type Read = Exclude<Reading<unknown>, { reason: string }> | undefined;
const numberOf = (cell: Read): number | undefined =>
  typeof cell?.value === 'number' ? cell.value : undefined;

function waterKindOf(water: Read): StatedLot['waterKind'] {
  if (water?.value === 0) return 'none';
  return water?.waterKind as StatedLot['waterKind'];
}

/** The dry weight of a serving, from the weight of a pouch with or without its packaging. */
function takeWeight(
  read: FormReader,
  at: (name: string) => string,
  row: Row,
  { weight, servings, pouches }: { readonly weight: Read; readonly servings: Read; readonly pouches: Read },
  tareG: number | undefined,
): void {
  const stated = numberOf(weight) ?? pouches?.also?.pouchG;
  if (stated === undefined) {
    read.add([{ field: at('pouchG'), message: say('please fill this in') }]);
    return;
  }
  const isGross = weight?.gross || (read.text('weighed') === 'with' && weight?.per !== 'serving');
  const foodG = isGross ? stated - (tareG ?? USUAL_LOT.tareG) : stated;
  if (foodG <= 0) {
    read.add([
      {
        field: at('pouchG'),
        message: say('nothing is left when the pouch itself is taken off; was it weighed without?'),
      },
    ]);
    return;
  }
  const count = numberOf(servings) ?? (foodG <= ONE_SERVING_G ? 1 : undefined);
  if (count === undefined) {
    read.add([
      {
        field: at('servingsPerPouch'),
        message: say('please fill this in: {grams} g may be for one or for several', {
          grams: String(Math.round(foodG)),
        }),
      },
    ]);
    return;
  }
  row.servingsPerPouch = count;
  if (count > 0) row.dryWeightG = weight?.per === 'serving' ? foodG : Number((foodG / count).toPrecision(12));
}
