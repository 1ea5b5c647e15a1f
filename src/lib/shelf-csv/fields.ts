import type { StatedLot } from '../planning/model/stated-lot.ts';
import {
  DURATION_MIN,
  ENERGY_KCAL,
  MASS_G,
  VOLUME_ML,
  type DurationUnit,
  type EnergyUnit,
  type MassUnit,
  type VolumeUnit,
} from '../planning/units/convert.ts';
import { text, type Text } from '../texts/say.ts';

/** What a lot is made of in a table: what was said of it. */
export type LotField = Exclude<keyof StatedLot, 'allergensOpen'>;
/**
 * What a column can hold: a field of a lot, or what one is worked out from: the currency of the cost, the weight of a pouch together with its
 * packaging, how long it keeps, salt, and a yes or no to one allergen or one diet.
 */
export type ShelfField =
  LotField | 'currency' | 'grossWeightG' | 'keepsMonths' | 'saltG' | 'oneAllergen' | 'oneDiet';
export type ColumnUnit =
  MassUnit | EnergyUnit | VolumeUnit | DurationUnit | 'mg' | 'week' | 'month' | 'year' | 'day';

type Kind =
  | 'text'
  | 'number'
  | 'date'
  | 'meals'
  | 'water kind'
  | 'allergens'
  | 'diets'
  | 'cost'
  | 'currency'
  | 'lot kind'
  | 'cook after'
  | 'yes or no'
  | 'allergen mark'
  | 'diet mark';

export type FieldEntry = {
  readonly field: ShelfField;
  readonly label: Text;
  readonly kind: Kind;
  /** Heading in an exported file; left out where an export has no such column. */
  readonly heading?: string;
  /** Units a column may be in; the first is that of the core. */
  readonly units?: readonly ColumnUnit[];
  /** Stated for one serving, so a column may hold it for a whole pouch instead. */
  readonly perServing?: true;
  /** Where it is not known, there is no lot. */
  readonly required?: true;
  /** May be one value for the whole file, where there is no column or a cell is empty. */
  readonly sameForAll?: true;
};

const MASS = Object.keys(MASS_G) as MassUnit[];
const ENERGY = Object.keys(ENERGY_KCAL) as EnergyUnit[];
const VOLUME = Object.keys(VOLUME_ML) as VolumeUnit[];
const DURATION = Object.keys(DURATION_MIN) as DurationUnit[];
const SMALL_MASS: readonly ColumnUnit[] = ['mg', 'g'];
/** Water is weighed as often as it is measured: 1 g is 1 ml. */
const WATER: readonly ColumnUnit[] = [...VOLUME, 'g', 'kg'];

/** In the order of an exported file. */
export const SHELF_FIELDS: readonly FieldEntry[] = [
  {
    field: 'code',
    label: text('Lot code'),
    kind: 'text',
    heading: 'code',
  },
  {
    field: 'recipe',
    label: text('Recipe'),
    kind: 'text',
    heading: 'recipe',
    required: true,
  },
  {
    field: 'mealKinds',
    label: text('Meals'),
    kind: 'meals',
    heading: 'meals',
    sameForAll: true,
  },
  {
    field: 'sealedOn',
    label: text('Sealed'),
    kind: 'date',
    heading: 'sealed',
    sameForAll: true,
  },
  {
    field: 'bestBefore',
    label: text('Best before'),
    kind: 'date',
    heading: 'best before',
    sameForAll: true,
  },
  {
    field: 'pouches',
    label: text('Pouches'),
    kind: 'number',
    heading: 'pouches',
    required: true,
    sameForAll: true,
  },
  {
    field: 'servingsPerPouch',
    label: text('Servings per pouch'),
    kind: 'number',
    heading: 'servings per pouch',
    required: true,
    sameForAll: true,
  },
  {
    field: 'dryWeightG',
    label: text('Dry weight'),
    kind: 'number',
    heading: 'dry weight g',
    units: MASS,
    perServing: true,
    required: true,
  },
  {
    field: 'energyKcal',
    label: text('Energy'),
    kind: 'number',
    heading: 'energy kcal',
    units: ENERGY,
    perServing: true,
  },
  {
    field: 'proteinG',
    label: text('Protein'),
    kind: 'number',
    heading: 'protein g',
    units: MASS,
    perServing: true,
  },
  {
    field: 'fatG',
    label: text('Fat'),
    kind: 'number',
    heading: 'fat g',
    units: MASS,
    perServing: true,
  },
  {
    field: 'carbohydrateG',
    label: text('Carbohydrate'),
    kind: 'number',
    heading: 'carbohydrate g',
    units: MASS,
    perServing: true,
  },
  {
    field: 'waterMl',
    label: text('Water'),
    kind: 'number',
    heading: 'water ml',
    units: WATER,
    perServing: true,
    sameForAll: true,
  },
  {
    field: 'waterKind',
    label: text('Water type'),
    kind: 'water kind',
    heading: 'water kind',
    sameForAll: true,
  },
  {
    field: 'steepMin',
    label: text('Rehydration time'),
    kind: 'number',
    heading: 'steep min',
    units: DURATION,
    sameForAll: true,
  },
  {
    field: 'stirAfterMin',
    label: text('Stir after'),
    kind: 'number',
    heading: 'stir after min',
    units: DURATION,
  },
  {
    field: 'tareG',
    label: text('Packaging'),
    kind: 'number',
    heading: 'packaging g',
    units: MASS,
    sameForAll: true,
  },
  {
    field: 'volumeMl',
    label: text('Volume'),
    kind: 'number',
    heading: 'volume ml',
    units: VOLUME,
  },
  {
    field: 'allergens',
    label: text('Allergens'),
    kind: 'allergens',
    heading: 'allergens',
  },
  {
    field: 'diets',
    label: text('Diets'),
    kind: 'diets',
    heading: 'diets',
  },
  {
    field: 'costMinor',
    label: text('Cost'),
    kind: 'cost',
    heading: 'cost',
    perServing: true,
  },
  {
    field: 'currency',
    label: text('Currency'),
    kind: 'currency',
    heading: 'currency',
  },
  {
    field: 'note',
    label: text('Note'),
    kind: 'text',
    heading: 'note',
  },
  { field: 'kind', label: text('Kind of dish'), kind: 'lot kind', heading: 'kind' },
  { field: 'pieces', label: text('Pieces in a pouch'), kind: 'number', heading: 'pieces' },
  { field: 'place', label: text('Place'), kind: 'text', heading: 'place', sameForAll: true },
  {
    field: 'fibreG',
    label: text('Fibre'),
    kind: 'number',
    heading: 'fibre g',
    units: MASS,
    perServing: true,
  },
  {
    field: 'sugarsG',
    label: text('Sugars'),
    kind: 'number',
    heading: 'sugars g',
    units: MASS,
    perServing: true,
  },
  {
    field: 'sodiumMg',
    label: text('Sodium'),
    kind: 'number',
    heading: 'sodium mg',
    units: SMALL_MASS,
    perServing: true,
  },
  {
    field: 'pouchTakesBoilingWater',
    label: text('Pouch takes boiling water'),
    kind: 'yes or no',
    heading: 'boiling water in pouch',
  },
  {
    field: 'eatFromPouch',
    label: text('Eaten from the pouch'),
    kind: 'yes or no',
    heading: 'eat from pouch',
  },
  { field: 'pouchStands', label: text('Pouch stands up'), kind: 'yes or no', heading: 'pouch stands' },
  { field: 'cookAfter', label: text('Cook after rehydrating'), kind: 'cook after', heading: 'cook after' },
  { field: 'withdrawn', label: text('Withdrawn because'), kind: 'text', heading: 'withdrawn' },
  { field: 'weighedDry', label: text('Weighed dry'), kind: 'yes or no', heading: 'weighed dry' },
  { field: 'bought', label: text('Bought'), kind: 'yes or no', heading: 'bought' },
  {
    field: 'grossWeightG',
    label: text('Weight with packaging'),
    kind: 'number',
    units: MASS,
    perServing: true,
  },
  {
    field: 'keepsMonths',
    label: text('Shelf life'),
    kind: 'number',
    units: ['month', 'year', 'week', 'day'],
  },
  { field: 'saltG', label: text('Salt'), kind: 'number', units: ['g', 'mg'], perServing: true },
  { field: 'oneAllergen', label: text('One allergen, yes or no'), kind: 'allergen mark' },
  { field: 'oneDiet', label: text('One diet, yes or no'), kind: 'diet mark' },
];

/** The columns of an exported file. */
export const EXPORT_FIELDS = SHELF_FIELDS.filter(
  (entry): entry is FieldEntry & { heading: string } => entry.heading !== undefined,
);

/** The fields of a lot, without the currency. */
export const LOT_FIELDS: readonly LotField[] = EXPORT_FIELDS.flatMap(({ field }) =>
  field === 'currency' ? [] : [field as LotField],
);

/** Fields that may be one value for the whole file. */
export const SAME_FOR_ALL: readonly FieldEntry[] = SHELF_FIELDS.filter(({ sameForAll }) => sameForAll);

/** The header of an exported file. */
export const EXPORT_HEADER: readonly string[] = EXPORT_FIELDS.map(({ heading }) => heading);
/** How many of its columns files of earlier versions have. */
export const EARLIER_COLUMNS = EXPORT_HEADER.indexOf('note') + 1;

/** Heading of the column that is put behind the cells of refused rows. */
export const REASON_HEADING = 'reason';

/** @returns a header without the column of reasons, which a file of refused rows has when it comes back mended. */
export function withoutReason(header: readonly string[]): readonly string[] {
  return header.at(-1) === REASON_HEADING ? header.slice(0, -1) : header;
}

const BY_FIELD = new Map(SHELF_FIELDS.map((entry) => [entry.field, entry]));
export function fieldEntry(field: ShelfField): FieldEntry {
  return BY_FIELD.get(field)!;
}

/** @returns a text as people mean it: small letters without accents, words apart by one blank, nothing else. */
export function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('œ', 'oe')
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
