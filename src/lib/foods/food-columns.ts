import type { Composition, CookingClass, Food } from '../planning/model/composition.ts';
import { COOKING_CLASSES } from '../planning/model/words.ts';
import { plainWords, type ColumnUnit, type FieldEntry } from '../shelf-csv/fields.ts';
import { headingParts } from '../shelf-csv/headings.ts';
import { vocabulary, type Vocabulary } from '../shelf-csv/vocabulary.ts';
import { text, type Text } from '../texts/say.ts';

/** What a column of a table of foods can hold; `totalCarbohydrateG` is with fibre, `energyOfKj` is energy from a column in kJ, in kcal. */
export type FoodField =
  keyof Composition | Exclude<keyof Food, 'composition'> | 'totalCarbohydrateG' | 'energyOfKj';

export type FoodColumn = {
  readonly field: FoodField;
  readonly label: Text;
  readonly kind: Extract<FieldEntry['kind'], 'text' | 'number' | 'allergens' | 'diets'> | 'cooking class';
  /** Heading in a written file; without one, the column is read only. */
  readonly heading?: string;
  /** Headings it is known by, without unit and "per 100 g", as `plainWords` gives them. */
  readonly names: readonly string[];
  /** Units that its figures may be in, the usual one of its column first. */
  readonly units?: readonly ColumnUnit[];
};

const G: readonly ColumnUnit[] = ['g'];

/** In the order of a written file. Other names in English, German and French. */
export const FOOD_COLUMNS: readonly FoodColumn[] = [
  {
    field: 'name',
    label: text('Name'),
    kind: 'text',
    heading: 'name',
    names: [
      'name',
      'food',
      'food name',
      'ingredient',
      'description',
      'lebensmittel',
      'zutat',
      'aliment',
      'nom',
    ],
  },
  {
    field: 'waterG',
    label: text('Water'),
    kind: 'number',
    heading: 'water g',
    names: ['water', 'moisture', 'wasser', 'wassergehalt', 'eau'],
    units: G,
  },
  {
    field: 'proteinG',
    label: text('Protein'),
    kind: 'number',
    heading: 'protein g',
    names: ['protein', 'proteins', 'eiweiss', 'proteine', 'proteines'],
    units: G,
  },
  {
    field: 'fatG',
    label: text('Fat'),
    kind: 'number',
    heading: 'fat g',
    names: [
      'fat',
      'fats',
      'total fat',
      'lipid',
      'lipids',
      'total lipid fat',
      'fett',
      'lipides',
      'matieres grasses',
    ],
    units: G,
  },
  {
    field: 'carbohydrateG',
    label: text('Carbohydrate'),
    kind: 'number',
    heading: 'carbohydrate g',
    names: [
      'carbohydrate',
      'carbohydrates',
      'carbs',
      'available carbohydrate',
      'carbohydrate available',
      'net carbs',
      'kohlenhydrate',
      'glucides',
    ],
    units: G,
  },
  {
    field: 'totalCarbohydrateG',
    label: text('Total carbohydrate'),
    kind: 'number',
    names: [
      'total carbohydrate',
      'total carbohydrates',
      'carbohydrate total',
      'carbohydrate by difference',
      'total carbs',
    ],
    units: G,
  },
  {
    field: 'fibreG',
    label: text('Fibre'),
    kind: 'number',
    heading: 'fibre g',
    names: [
      'fibre',
      'fiber',
      'dietary fibre',
      'dietary fiber',
      'fiber total dietary',
      'total dietary fibre',
      'total dietary fiber',
      'ballaststoffe',
      'fibres',
      'fibres alimentaires',
    ],
    units: G,
  },
  {
    field: 'alcoholG',
    label: text('Alcohol'),
    kind: 'number',
    heading: 'alcohol g',
    names: ['alcohol', 'alcohol ethyl', 'ethanol', 'alkohol', 'alcool'],
    units: G,
  },
  {
    field: 'energyKcal',
    label: text('Energy'),
    kind: 'number',
    heading: 'energy kcal',
    names: ['energy', 'calories', 'energie', 'brennwert', 'kalorien', 'valeur energetique'],
    units: ['kcal', 'kJ'],
  },
  { field: 'energyOfKj', label: text('Energy'), kind: 'number', names: [], units: ['kcal', 'kJ'] },
  {
    field: 'allergens',
    label: text('Allergens'),
    kind: 'allergens',
    heading: 'allergens',
    names: ['allergens', 'allergen', 'contains', 'allergene', 'allergenes'],
  },
  {
    field: 'diets',
    label: text('Diets'),
    kind: 'diets',
    heading: 'diets',
    names: ['diets', 'diet', 'suitable for', 'ernahrung', 'regimes'],
  },
  {
    field: 'cookingClass',
    label: text('Cook as'),
    kind: 'cooking class',
    heading: 'cook as',
    names: ['cook as', 'cooking class'],
  },
  {
    field: 'gPerMl',
    label: text('g per ml'),
    kind: 'number',
    heading: 'g per ml',
    names: ['g per ml', 'g ml', 'density', 'dichte', 'densite', 'g pro ml', 'g par ml'],
  },
  {
    field: 'gPerPiece',
    label: text('g per piece'),
    kind: 'number',
    heading: 'g per piece',
    names: [
      'g per piece',
      'piece',
      'piece weight',
      'weight per piece',
      'g pro stuck',
      'stuckgewicht',
      'g par piece',
    ],
  },
  {
    field: 'source',
    label: text('Source'),
    kind: 'text',
    heading: 'source',
    names: ['source', 'reference', 'quelle'],
  },
  {
    field: 'number',
    label: text('Number in the source'),
    kind: 'text',
    heading: 'number',
    names: ['number', 'ndb no', 'ndb number', 'food code', 'nummer', 'numero'],
  },
  {
    field: 'sugarsG',
    label: text('Sugars'),
    kind: 'number',
    heading: 'sugars g',
    names: ['sugars', 'sugar', 'total sugars', 'of which sugars', 'zucker', 'davon zucker', 'sucres'],
    units: G,
  },
  {
    field: 'sodiumMg',
    label: text('Sodium (mg)'),
    kind: 'number',
    heading: 'sodium mg',
    names: ['sodium mg', 'natrium mg'],
  },
  {
    field: 'potassiumMg',
    label: text('Potassium (mg)'),
    kind: 'number',
    heading: 'potassium mg',
    names: ['potassium mg', 'kalium mg'],
  },
];

/** The columns of a written file. */
export const WRITTEN_COLUMNS = FOOD_COLUMNS.filter(
  (column): column is FoodColumn & { heading: string } => column.heading !== undefined,
);

export const COOKING_VOCABULARY: Vocabulary<CookingClass> = vocabulary(
  text('cooking class'),
  COOKING_CLASSES,
  [
    ['mince, minced, ground meat, ground beef, hackfleisch, viande hachee', 'minced meat'],
    ['meat, whole cut, fleisch, viande', 'whole meat'],
    ['chicken, turkey, geflugel, volaille', 'poultry'],
    ['seafood, shellfish, fisch, poisson', 'fish'],
    ['eggs, ei, oeuf', 'egg'],
    ['none, no', 'other'],
  ],
);

/** Parts of headings that say what all figures are for anyway. */
const PER_100_G = /\b(?:per|pro|je|pour)?[\s/]*100\s*(?:g|gr|grams?|gramm|grammes)\b/gi;

const columnCalled = (words: string) => FOOD_COLUMNS.find(({ names }) => names.includes(words));

/**
 * @returns what a heading stands for and the unit of its figures: "Protein (g/100 g)", "energy kJ", "Moisture"; `undefined` for a heading
 * that is not known, or that is in a unit or for an amount which these figures are not in
 */
export function columnOf(
  heading: string,
): { readonly column: FoodColumn; readonly unit: ColumnUnit | undefined } | undefined {
  const bare = heading.replace(PER_100_G, ' ');
  const whole = columnCalled(plainWords(bare));
  if (whole) return { column: whole, unit: whole.units?.[0] };
  const { words, unit, per } = headingParts(bare);
  const energyAlone = words === '' && (unit === 'kcal' || unit === 'kJ');
  const column = energyAlone ? columnCalled('energy') : columnCalled(words);
  if (!column || per || (unit && column.kind !== 'number')) return undefined;
  if (unit === 'kJ' && column.field === 'energyKcal')
    return { column: FOOD_COLUMNS.find(({ field }) => field === 'energyOfKj')!, unit };
  if (unit && !(column.units ?? G).includes(unit)) return undefined;
  return { column, unit: unit ?? column.units?.[0] };
}
