import type { ColumnUnit } from './fields.ts';

const UNIT_WORDS: Readonly<Record<ColumnUnit, readonly string[]>> = {
  g: ['g', 'gr', 'gm', 'gms', 'gram', 'grams', 'gramm', 'gramme', 'grammes'],
  mg: ['mg', 'milligram', 'milligrams', 'milligramm'],
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramm'],
  oz: ['oz', 'ounce', 'ounces', 'unze', 'unzen'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  kcal: ['kcal', 'kcals', 'cal', 'cals', 'calorie', 'calories', 'kalorien', 'kilokalorien', 'kilocalories'],
  kJ: ['kj', 'kilojoule', 'kilojoules'],
  ml: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters', 'cc'],
  cl: ['cl', 'centilitre', 'centilitres', 'centiliter', 'centiliters'],
  dl: ['dl', 'decilitre', 'decilitres', 'deciliter', 'deciliters', 'deziliter'],
  l: ['l', 'lt', 'ltr', 'litre', 'litres', 'liter', 'liters'],
  tsp: ['tsp', 'tsps', 'teeloffel', 'teaspoon', 'teaspoons', 'tl'],
  tbsp: ['tbsp', 'tbsps', 'tbs', 'tblsp', 'essloffel', 'tablespoon', 'tablespoons', 'el'],
  cup: ['cup', 'cups', 'c', 'tasse', 'tassen', 'tasses'],
  'fl oz': ['fl oz', 'floz', 'fluid ounce', 'fluid ounces'],
  qt: ['qt', 'qts', 'quart', 'quarts'],
  min: ['min', 'mins', 'minute', 'minutes', 'minuten', 'mn'],
  h: ['h', 'hr', 'hrs', 'hour', 'hours', 'std', 'stunde', 'stunden', 'heure', 'heures'],
  day: ['d', 'day', 'days', 'tag', 'tage', 'tagen', 'jours'],
  week: ['wk', 'wks', 'week', 'weeks', 'woche', 'wochen', 'wo', 'semaines'],
  month: ['mo', 'mos', 'mth', 'mths', 'mon', 'month', 'months', 'monat', 'monate', 'monaten', 'mois'],
  year: ['y', 'yr', 'yrs', 'year', 'years', 'jahr', 'jahre', 'jahren', 'ans'],
};

/** Every unit that is known. */
export const UNIT_LIST = Object.keys(UNIT_WORDS) as ColumnUnit[];

const BY_WORD = new Map<string, ColumnUnit>();
for (const [unit, words] of Object.entries(UNIT_WORDS))
  for (const word of words) BY_WORD.set(word, unit as ColumnUnit);

/**
 * @param words a text as `plainWords` gives it: "fl oz", "cups"
 * @param among the units that can be meant; where only volumes can, an ounce is a fluid ounce
 */
export function unitCalled(words: string, among: readonly ColumnUnit[]): ColumnUnit | undefined {
  const unit = BY_WORD.get(words);
  if (unit === 'oz' && !among.includes('oz') && among.includes('fl oz')) return 'fl oz';
  return unit && among.includes(unit) ? unit : undefined;
}

/** @returns whether the words name any unit at all. */
export const isUnit = (words: string): boolean => BY_WORD.has(words);
