import type { ColumnUnit } from './fields.ts';

const UNIT_WORDS: Readonly<Record<ColumnUnit, readonly string[]>> = {
  g: ['g', 'gr', 'gm', 'gms', 'gram', 'grams', 'gramm', 'gramme', 'grammes'],
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramm'],
  oz: ['oz', 'ounce', 'ounces', 'unze', 'unzen'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  kcal: ['kcal', 'kcals', 'cal', 'cals', 'calorie', 'calories', 'kalorien', 'kilocalories'],
  kJ: ['kj', 'kilojoule', 'kilojoules'],
  ml: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters', 'cc'],
  cl: ['cl', 'centilitre', 'centilitres', 'centiliter', 'centiliters'],
  dl: ['dl', 'decilitre', 'decilitres', 'deciliter', 'deciliters', 'deziliter'],
  l: ['l', 'lt', 'ltr', 'litre', 'litres', 'liter', 'liters'],
  tsp: ['tsp', 'tsps', 'teaspoon', 'teaspoons', 'tl'],
  tbsp: ['tbsp', 'tbsps', 'tablespoon', 'tablespoons', 'el'],
  cup: ['cup', 'cups', 'c', 'tasse', 'tassen', 'tasses'],
  'fl oz': ['fl oz', 'floz', 'fluid ounce', 'fluid ounces'],
  qt: ['qt', 'qts', 'quart', 'quarts'],
  min: ['min', 'mins', 'minute', 'minutes', 'minuten', 'mn'],
  h: ['h', 'hr', 'hrs', 'hour', 'hours', 'std', 'stunde', 'stunden', 'heure', 'heures'],
};

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
