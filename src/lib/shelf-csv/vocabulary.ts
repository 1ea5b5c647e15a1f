import { ALLERGEN_LIST, type Allergen } from '../planning/model/allergens.ts';
import { DIET_LIST, type Diet } from '../planning/model/diets.ts';
import {
  COOK_AFTER,
  LOT_KINDS,
  MEAL_KINDS,
  WATER_KINDS,
  type CookAfter,
  type LotKind,
  type MealKind,
  type WaterKind,
} from '../planning/model/words.ts';
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
    meaning(given) {
      const plain = plainWords(given);
      // "Spuren von Nüssen": the dative of German.
      return (
        meanings.get(plain) ??
        (plain.length > 4 && plain.endsWith('n') ? meanings.get(plain.slice(0, -1)) : undefined)
      );
    },
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
  [
    'breakfasts, breakfast food, brekkie, brekky, brekkies, bkfst, brkfst, bfast, bf, b, morning, mornings, am, frühstück, früh, morgens, morgen, zum frühstück, fs, petit déjeuner',
    'breakfast',
  ],
  [
    'lunches, l, midday, noon, lunchtime, mittag, mittags, mittagessen, zu mittag, brotzeit, déjeuner',
    'lunch',
  ],
  [
    'snacks, s, trail snack, trail food, nibbles, on the go, between meals, elevenses, zwischenmahlzeit, zwischendurch, für zwischendurch, imbiss, knabberei, knabbern, jause, collation, goûter, en-cas',
    'snack',
  ],
  [
    'dinners, d, supper, suppers, evening, evenings, evening meal, pm, night, tea time, abend, abends, abendessen, abendbrot, nachtessen, znacht, dîner, souper',
    'dinner',
  ],
  [
    'drinks, beverage, beverages, hot drink, hot drinks, to drink, getränk, getränke, heißgetränk, trinken, boisson',
    'drink',
  ],
  [
    'main meal, main meals, main, mains, main dish, main course, entree, entrees, hauptgericht, hauptgerichte, hauptspeise, hauptmahlzeit, hauptmahlzeiten, warme mahlzeit, plat principal, soup, soups, suppe, suppen, eintopf, eintöpfe, stew, stews, lunch or dinner, mittag oder abend',
    'lunch',
    'dinner',
  ],
  ['side, sides, side dish, side dishes, beilage, beilagen, zur beilage', 'lunch', 'dinner'],
  [
    'dessert, desserts, pudding, puddings, sweet, afters, nachtisch, nachspeise, dessert abends, süßspeise',
    'dinner',
  ],
]);

/** What a word for a meal says of the place of a dish on the plate. */
export const KIND_VOCABULARY: Vocabulary<LotKind> = vocabulary(text('kind of dish'), LOT_KINDS, [
  [
    'mains, main dish, main course, main meal, entree, hauptgericht, hauptspeise, hauptmahlzeit, plat principal',
    'main',
  ],
  [
    'sides, side dish, side dishes, beilage, beilagen, dessert, desserts, pudding, puddings, afters, nachtisch, nachspeise, süßspeise',
    'side',
  ],
  ['extras, snack, snacks, zugabe, zwischenmahlzeit', 'extra'],
  ['drinks, beverage, getränk, boisson', 'drink'],
]);

export const COOK_AFTER_VOCABULARY: Vocabulary<CookAfter> = vocabulary(text('kind of cooking'), COOK_AFTER, [
  ['cook after, yes, kochen, nachkochen, ja', 'cook'],
  ['boil, boil hard 10 min, sprudelnd kochen', 'boil hard'],
]);

export const WATER_VOCABULARY: Vocabulary<WaterKind> = vocabulary(text('kind of water'), WATER_KINDS, [
  [
    'boil, boiled, just boiled, freshly boiled, off the boil, kochend, kochendes, kochend heiß, sprudelnd, bouillante, bouillant',
    'boiling',
  ],
  ['warm, h, very hot, lukewarm, heiß, heißes, warmes, chaude, chaud', 'hot'],
  ['cool, c, cold soak, room temp, kalt, kaltes, froide, froid', 'cold'],
  [
    'no, no water, dry, eat dry, eaten dry, eat as is, as is, nothing, nil, kein, keins, kein wasser, ohne, ohne wasser, trocken, trocken essen, pur, aucune, aucun, sans eau',
    'none',
  ],
]);

export const ALLERGEN_VOCABULARY: Vocabulary<Allergen> = vocabulary(
  text('allergen'),
  ALLERGEN_LIST.map(({ code }) => code),
  [
    ...ALLERGEN_LIST.map(({ code, label }) => [label, code] as const),
    [
      'dairy, lactose, milk products, milk powder, yoghurt, yogurt, whey, parmesan, ghee, käse, sahne, joghurt, molke, milchpulver, cheese, butter, cream, milch, milchprodukte, laktose, lait',
      'milk',
    ],
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
    ['wheat flour, weizenmehl, couscous, bulgur, semolina, grieß', 'wheat', 'gluten'],
    ['spelt, dinkel, épeautre', 'wheat', 'gluten'],
    ['soya, soybean, soybeans, soybean products, soja', 'soy'],
    ['sesame seed, tahini, tahin, sesame seeds, sesam, sésame', 'sesame'],
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
    ['veggie, veggi, veg, vegi, vege, v, vegetarisch, végétarien, végétarienne', 'vegetarian'],
    ['vg, plant based, rein pflanzlich, pflanzlich, végétalien, végane', 'vegan'],
    ['pork free, without pork, ohne schwein, ohne schweinefleisch, kein schwein, sans porc', 'no-pork'],
    ['beef free, without beef, ohne rind, ohne rindfleisch, sans bœuf', 'no-beef'],
    ['alcohol free, without alcohol, ohne alkohol, sans alcool', 'no-alcohol'],
    ['koscher, casher, cacher', 'kosher'],
  ],
);

const plainList = (names: string): string[] => names.split(',').map(plainWords);

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

const UNSTATED = new Set([
  '',
  ...plainList(
    'n a, na, nan, null, unknown, unsure, not sure, no idea, dunno, not stated, not known, not recorded, not weighed, not measured, not given, dont know, don t know, forgot, to do, todo, tbc, tbd, tba, pending, missing, blank, empty, x x, unbekannt, k a, ka, keine angabe, keine angaben, nicht bekannt, nicht gewogen, nicht notiert, weiss nicht, weiss ich nicht, fehlt, offen, n b, nb, inconnu',
  ),
]);
/** Words of a cell of yes and no; traces count as contained, and what is neither says nothing. */
const YES = new Set(
  plainList(
    'y, yes, yep, ja, j, jo, x, xx, 1, true, wahr, contains, enthalten, enthält, oui, ok, tick, check, checked',
  ),
);
const NO = new Set(
  plainList(
    'n, no, nope, nein, 0, false, falsch, none, not, nicht, nicht enthalten, non, kein, keine, free, frei',
  ),
);
const MAYBE = new Set(
  plainList(
    'may, maybe, may contain, traces, trace, possible, possibly, spuren, kann spuren enthalten, evtl, eventuell, vielleicht, traces possible',
  ),
);

/** @returns what a mark says; `undefined` where it says nothing or cannot be read. */
export function markOf(text: string): 'yes' | 'no' | 'traces' | undefined {
  const mark = text.trim();
  if (/^[✓✔☑●•✅🗸]+$/u.test(mark)) return 'yes';
  if (/^[✗✘☒❌⨯]+$/u.test(mark)) return 'no';
  const words = plainWords(mark);
  return YES.has(words) ? 'yes' : NO.has(words) ? 'no' : MAYBE.has(words) ? 'traces' : undefined;
}

/** @returns whether a cell says nothing: empty, a dash, a question mark, "n/a". */
export const saysNothing = (text: string): boolean => text.length < 20 && UNSTATED.has(plainWords(text));
