import { ALLERGEN_LIST, type Allergen } from '../planning/model/allergens.ts';
import { DIET_LIST, type Diet } from '../planning/model/diets.ts';
import { MEAL_KINDS, WATER_KINDS, type MealKind, type WaterKind } from '../planning/model/words.ts';
import { closest } from './closest.ts';
import { plainWords } from './fields.ts';
import { say, sayList, text, type Text } from '../texts/say.ts';

/** The words a controlled list is known by, in English, German and French; a word may stand for several entries. */
export type Vocabulary<T extends string> = {
  readonly what: Text;
  readonly codes: readonly T[];
  /** @returns the entries a text names; `undefined` where it names none. */
  meaning(text: string): readonly T[] | undefined;
  /** @returns the reason why a text is refused, with the known words and the one that is most like it. */
  unknown(text: string): string;
};

/** @param words each a text with comma-separated names, and the codes that they stand for */
export function vocabulary<T extends string>(
  what: Text,
  codes: readonly T[],
  words: readonly (readonly [string, ...T[]])[],
): Vocabulary<T> {
  const meanings = new Map<string, readonly T[]>();
  for (const code of codes) meanings.set(plainWords(code), [code]);
  for (const [names, ...meant] of words)
    for (const name of names.split(',')) meanings.set(plainWords(name), meant);
  return {
    what,
    codes,
    meaning: (given) => meanings.get(plainWords(given)),
    unknown(given) {
      const like = closest(plainWords(given), meanings.keys());
      const said = { text: given, what: say(what), codes: codes.join(', ') };
      return like
        ? say('"{text}" is not a known {what}; did you mean {like}? Known: {codes}', {
            ...said,
            like: sayList(meanings.get(like)!),
          })
        : say('"{text}" is not a known {what}. Known: {codes}', said);
    },
  };
}

export const MEAL_VOCABULARY: Vocabulary<MealKind> = vocabulary(text('meal'), MEAL_KINDS, [
  ['breakfasts, frühstück, petit déjeuner', 'breakfast'],
  ['lunches, mittag, mittagessen, déjeuner', 'lunch'],
  ['snacks, trail snack, zwischenmahlzeit, imbiss, collation, goûter, en-cas', 'snack'],
  ['dinners, supper, evening meal, main meal, abendessen, abendbrot, dîner, souper', 'dinner'],
  ['drinks, beverage, getränk, boisson', 'drink'],
]);

export const WATER_VOCABULARY: Vocabulary<WaterKind> = vocabulary(text('kind of water'), WATER_KINDS, [
  ['boil, boiled, kochend, kochend heiß, bouillante, bouillant', 'boiling'],
  ['warm, heiß, chaude, chaud', 'hot'],
  ['cool, kalt, froide, froid', 'cold'],
  ['no, no water, dry, eat dry, nothing, kein, keins, ohne, aucune, aucun, sans eau', 'none'],
]);

export const ALLERGEN_VOCABULARY: Vocabulary<Allergen> = vocabulary(
  text('allergen'),
  ALLERGEN_LIST.map(({ code }) => code),
  [
    ...ALLERGEN_LIST.map(({ code, label }) => [label, code] as const),
    ['dairy, lactose, milk products, cheese, butter, cream, milch, milchprodukte, laktose, lait', 'milk'],
    ['eggs, ei, eier, œuf, œufs', 'egg'],
    ['fisch, poisson, poissons, tuna, salmon, cod, anchovy, anchovies', 'fish'],
    [
      'crustacean, shrimp, shrimps, prawn, prawns, crab, lobster, krebstiere, krustentiere, crustacés',
      'crustaceans',
    ],
    ['shellfish, seafood', 'crustaceans', 'molluscs'],
    [
      'nut, tree nut, treenuts, almond, almonds, hazelnut, hazelnuts, walnut, walnuts, cashew, cashews, pecan, pecans, pistachio, pistachios, brazil nuts, macadamia',
      'nuts',
    ],
    ['nüsse, schalenfrüchte, fruits à coque, noix', 'nuts'],
    [
      'peanuts, groundnut, groundnuts, erdnuss, erdnüsse, arachide, arachides, cacahuète, cacahuètes',
      'peanut',
    ],
    ['weizen, blé', 'wheat'],
    ['spelt, dinkel, épeautre', 'wheat', 'gluten'],
    ['soya, soybean, soybeans, soybean products, soja', 'soy'],
    ['sesame seed, sesame seeds, sesam, sésame', 'sesame'],
    [
      'gluten cereals, cereals containing gluten, barley, rye, oats, oat, glutenhaltiges getreide, gerste, roggen, hafer, orge, seigle, avoine',
      'gluten',
    ],
    ['celeriac, sellerie, céleri', 'celery'],
    ['senf, moutarde', 'mustard'],
    [
      'sulfites, sulphite, sulfite, sulphur dioxide, sulfur dioxide, so2, sulfit, schwefeldioxid, e220',
      'sulphites',
    ],
    ['lupine, lupins, lupinen', 'lupin'],
    [
      'mollusc, mollusks, mollusk, mussels, clams, oysters, squid, octopus, weichtiere, mollusques',
      'molluscs',
    ],
  ],
);

export const DIET_VOCABULARY: Vocabulary<Diet> = vocabulary(
  text('diet'),
  DIET_LIST.map(({ code }) => code),
  [
    ...DIET_LIST.map(({ code, label }) => [label.split(',')[0]!, code] as [string, Diet]),
    ['veggie, veg, vegetarisch, végétarien, végétarienne', 'vegetarian'],
    ['végétalien, végane', 'vegan'],
    ['pork free, without pork, ohne schwein, ohne schweinefleisch, kein schwein, sans porc', 'no-pork'],
    ['beef free, without beef, ohne rind, ohne rindfleisch, sans bœuf', 'no-beef'],
    ['alcohol free, without alcohol, ohne alkohol, sans alcool', 'no-alcohol'],
    ['koscher, casher, cacher', 'kosher'],
  ],
);

const NONE = new Set([
  'none',
  'no',
  'nil',
  'nothing',
  'no allergens',
  'free of allergens',
  'keine',
  'keins',
  'aucun',
  'aucune',
  'sans',
]);
/** @returns whether a cell states that there is nothing to list. */
export const saysNone = (text: string): boolean => NONE.has(plainWords(text));

const UNSTATED = new Set(['', 'n a', 'na', 'unknown', 'not stated', 'unbekannt', 'inconnu']);
/** @returns whether a cell says nothing: empty, a dash, a question mark, "n/a". */
export const saysNothing = (text: string): boolean => text.length < 20 && UNSTATED.has(plainWords(text));
