import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { USUAL_LOT } from '../planning/model/usual-lot.ts';
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

/** What a column can hold: a field of a pouch lot, or the currency of the cost. */
export type ShelfField = keyof PouchLot | 'currency';
export type ColumnUnit = MassUnit | EnergyUnit | VolumeUnit | DurationUnit;

type Kind = 'text' | 'number' | 'date' | 'meals' | 'water kind' | 'allergens' | 'diets' | 'cost' | 'currency';

export type FieldEntry = {
  readonly field: ShelfField;
  readonly label: Text;
  readonly kind: Kind;
  /** Heading in an exported file. */
  readonly heading: string;
  /** Other headings it is known by, in English, German and French; compared by `plainWords`. */
  readonly alsoCalled: readonly string[];
  /** Units a column may be in; the first is that of the core. */
  readonly units?: readonly ColumnUnit[];
  /** Stated for one serving, so a column may hold it for a whole pouch instead. */
  readonly perServing?: true;
  readonly required?: true;
  /** May be one value for the whole file, where there is no column or a cell is empty; the text is the usual value, '' if there is none. */
  readonly sameForAll?: string;
};

const MASS = Object.keys(MASS_G) as MassUnit[];
const ENERGY = Object.keys(ENERGY_KCAL) as EnergyUnit[];
const VOLUME = Object.keys(VOLUME_ML) as VolumeUnit[];
const DURATION = Object.keys(DURATION_MIN) as DurationUnit[];
/** Water is weighed as often as it is measured: 1 g is 1 ml. */
const WATER: readonly ColumnUnit[] = [...VOLUME, 'g', 'kg'];

/** In the order of an exported file. The usual values are common practice for home-dried meals. */
export const SHELF_FIELDS: readonly FieldEntry[] = [
  {
    field: 'code',
    label: text('Code'),
    kind: 'text',
    heading: 'code',
    alsoCalled: [
      'lot',
      'lot code',
      'batch',
      'batch code',
      'id',
      'no',
      'nr',
      'number',
      'label',
      'pouch code',
      'nummer',
      'charge',
      'etikett',
      'numero',
      'lot no',
      'lot number',
    ],
  },
  {
    field: 'recipe',
    label: text('Recipe'),
    kind: 'text',
    heading: 'recipe',
    required: true,
    alsoCalled: [
      'recipe name',
      'name',
      'meal name',
      'dish',
      'title',
      'food',
      'product',
      'what',
      'rezept',
      'gericht',
      'speise',
      'bezeichnung',
      'recette',
      'plat',
      'nom',
    ],
  },
  {
    field: 'mealKinds',
    label: text('Meals'),
    kind: 'meals',
    heading: 'meals',
    required: true,
    sameForAll: 'dinner',
    alsoCalled: [
      'meal',
      'meal kind',
      'meal kinds',
      'meal type',
      'kind',
      'type',
      'category',
      'mahlzeit',
      'mahlzeiten',
      'repas',
      'type de repas',
    ],
  },
  {
    field: 'sealedOn',
    label: text('Sealed'),
    kind: 'date',
    heading: 'sealed',
    required: true,
    sameForAll: '',
    alsoCalled: [
      'sealed on',
      'sealing date',
      'date sealed',
      'packed',
      'packed on',
      'pack date',
      'date packed',
      'made',
      'made on',
      'date made',
      'production date',
      'date',
      'versiegelt',
      'versiegelt am',
      'eingeschweisst',
      'eingeschweisst am',
      'verpackt am',
      'abgepackt am',
      'hergestellt am',
      'scelle',
      'scelle le',
      'emballe le',
      'date de scellage',
    ],
  },
  {
    field: 'bestBefore',
    label: text('Best before'),
    kind: 'date',
    heading: 'best before',
    required: true,
    sameForAll: '',
    alsoCalled: [
      'best before date',
      'bb',
      'bbd',
      'use by',
      'use before',
      'expires',
      'expires on',
      'expiry',
      'expiry date',
      'expiration',
      'expiration date',
      'mhd',
      'haltbar bis',
      'mindestens haltbar bis',
      'mindesthaltbarkeit',
      'ddm',
      'a consommer avant',
      'a consommer avant le',
      'date limite',
    ],
  },
  {
    field: 'pouches',
    label: text('Pouches'),
    kind: 'number',
    heading: 'pouches',
    required: true,
    sameForAll: '',
    alsoCalled: [
      'pouch count',
      'number of pouches',
      'count',
      'quantity',
      'qty',
      'stock',
      'on hand',
      'packs',
      'packets',
      'bags',
      'sachets',
      'pieces',
      'anzahl',
      'stuck',
      'bestand',
      'beutel',
      'anzahl beutel',
      'quantite',
      'nombre',
      'nombre de sachets',
    ],
  },
  {
    field: 'servingsPerPouch',
    label: text('Servings per pouch'),
    kind: 'number',
    heading: 'servings per pouch',
    required: true,
    sameForAll: '1',
    alsoCalled: [
      'servings',
      'serves',
      'portions',
      'portions per pouch',
      'servings pouch',
      'servings per bag',
      'portionen',
      'portionen pro beutel',
      'portionen je beutel',
      'portions par sachet',
      'parts',
    ],
  },
  {
    field: 'dryWeightG',
    label: text('Dry weight'),
    kind: 'number',
    heading: 'dry weight g',
    units: MASS,
    perServing: true,
    required: true,
    alsoCalled: [
      'dry weight',
      'weight',
      'weight dry',
      'net weight',
      'mass',
      'dry mass',
      'trockengewicht',
      'gewicht',
      'gewicht trocken',
      'nettogewicht',
      'poids',
      'poids sec',
      'poids net',
    ],
  },
  {
    field: 'energyKcal',
    label: text('Energy'),
    kind: 'number',
    heading: 'energy kcal',
    units: ENERGY,
    perServing: true,
    required: true,
    alsoCalled: [
      'energy',
      'energy content',
      'calories',
      'cals',
      'calorie',
      'energie',
      'brennwert',
      'kalorien',
      'valeur energetique',
    ],
  },
  {
    field: 'proteinG',
    label: text('Protein'),
    kind: 'number',
    heading: 'protein g',
    units: MASS,
    perServing: true,
    alsoCalled: ['protein', 'proteins', 'eiweiss', 'proteine', 'proteines'],
  },
  {
    field: 'fatG',
    label: text('Fat'),
    kind: 'number',
    heading: 'fat g',
    units: MASS,
    perServing: true,
    alsoCalled: ['fat', 'fats', 'total fat', 'fett', 'lipides', 'matieres grasses'],
  },
  {
    field: 'carbohydrateG',
    label: text('Carbohydrate'),
    kind: 'number',
    heading: 'carbohydrate g',
    units: MASS,
    perServing: true,
    alsoCalled: [
      'carbohydrate',
      'carbohydrates',
      'carbs',
      'total carbohydrate',
      'kohlenhydrate',
      'kh',
      'glucides',
    ],
  },
  {
    field: 'waterMl',
    label: text('Water'),
    kind: 'number',
    heading: 'water ml',
    units: WATER,
    perServing: true,
    required: true,
    sameForAll: '',
    alsoCalled: [
      'water',
      'water to add',
      'add water',
      'water amount',
      'amount of water',
      'rehydration water',
      'wasser',
      'wassermenge',
      'wasser zugeben',
      'eau',
      'eau a ajouter',
      'quantite d eau',
    ],
  },
  {
    field: 'waterKind',
    label: text('Water kind'),
    kind: 'water kind',
    heading: 'water kind',
    required: true,
    sameForAll: 'boiling',
    alsoCalled: [
      'kind of water',
      'water type',
      'water temperature',
      'water temp',
      'hot or cold',
      'wasserart',
      'wassertemperatur',
      'type d eau',
      'temperature de l eau',
    ],
  },
  {
    field: 'steepMin',
    label: text('Steep time'),
    kind: 'number',
    heading: 'steep min',
    units: DURATION,
    required: true,
    sameForAll: String(USUAL_LOT.steepMin),
    alsoCalled: [
      'steep',
      'steep time',
      'steeping time',
      'soak',
      'soak time',
      'soaking time',
      'rehydration time',
      'rehydrate time',
      'wait',
      'waiting time',
      'wait time',
      'stand time',
      'standing time',
      'time',
      'ziehzeit',
      'einweichzeit',
      'wartezeit',
      'quellzeit',
      'temps de trempage',
      'temps d attente',
      'trempage',
    ],
  },
  {
    field: 'stirAfterMin',
    label: text('Stir after'),
    kind: 'number',
    heading: 'stir after min',
    units: DURATION,
    alsoCalled: [
      'stir after',
      'stir',
      'stir time',
      'stir at',
      'umruhren nach',
      'umruhren',
      'remuer apres',
      'remuer',
    ],
  },
  {
    field: 'tareG',
    label: text('Packaging'),
    kind: 'number',
    heading: 'packaging g',
    units: MASS,
    required: true,
    sameForAll: String(USUAL_LOT.tareG),
    alsoCalled: [
      'packaging',
      'packaging weight',
      'packaging tare',
      'tare',
      'tare weight',
      'pouch weight',
      'empty pouch',
      'empty pouch weight',
      'bag weight',
      'verpackung',
      'verpackungsgewicht',
      'leergewicht',
      'tara',
      'emballage',
      'poids de l emballage',
    ],
  },
  {
    field: 'volumeMl',
    label: text('Volume'),
    kind: 'number',
    heading: 'volume ml',
    units: VOLUME,
    alsoCalled: ['volume', 'pack volume', 'packed volume', 'pouch volume', 'volumen', 'packvolumen'],
  },
  {
    field: 'allergens',
    label: text('Allergens'),
    kind: 'allergens',
    heading: 'allergens',
    alsoCalled: [
      'allergen',
      'allergy',
      'allergies',
      'contains',
      'allergy advice',
      'allergene',
      'allergenes',
      'enthalt',
      'contient',
    ],
  },
  {
    field: 'diets',
    label: text('Diets'),
    kind: 'diets',
    heading: 'diets',
    alsoCalled: [
      'diet',
      'diet notes',
      'dietary',
      'dietary notes',
      'suitable for',
      'ernahrung',
      'diat',
      'kostform',
      'regime',
      'regimes',
    ],
  },
  {
    field: 'costMinor',
    label: text('Cost'),
    kind: 'cost',
    heading: 'cost',
    perServing: true,
    alsoCalled: ['costs', 'price', 'preis', 'kosten', 'prix', 'cout'],
  },
  {
    field: 'currency',
    label: text('Currency'),
    kind: 'currency',
    heading: 'currency',
    alsoCalled: ['wahrung', 'devise', 'monnaie'],
  },
  {
    field: 'note',
    label: text('Note'),
    kind: 'text',
    heading: 'note',
    alsoCalled: [
      'notes',
      'comment',
      'comments',
      'remark',
      'remarks',
      'notiz',
      'notizen',
      'bemerkung',
      'bemerkungen',
      'remarque',
      'remarques',
      'commentaire',
    ],
  },
];

/** The fields of a lot, without the currency. */
export const LOT_FIELDS: readonly (keyof PouchLot)[] = SHELF_FIELDS.map(({ field }) => field).filter(
  (field) => field !== 'currency',
);

/** Fields that may be one value for the whole file. */
export const SAME_FOR_ALL: readonly FieldEntry[] = SHELF_FIELDS.filter(
  ({ sameForAll }) => sameForAll !== undefined,
);

/** The header of an exported file. */
export const EXPORT_HEADER: readonly string[] = SHELF_FIELDS.map(({ heading }) => heading);

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
