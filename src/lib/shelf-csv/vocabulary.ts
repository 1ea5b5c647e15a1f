import type { Allergen } from '../planning/model/allergens.ts';
import type { Diet } from '../planning/model/diets.ts';
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
import { ALLERGEN_CHOICES, DIET_CHOICES } from '../presentation/code-words.ts';

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
  ALLERGEN_CHOICES.map(({ code }) => code),
  [
    ...ALLERGEN_CHOICES.map(({ code, label }) => [label, code] as const),
    [
      'dairy, lactose, milk product, milk products, cheese, butter, ghee, cream, yogurt, yoghurt, curd, buttermilk, whey, casein, caseinate, caseinates, sodium caseinate, calcium caseinate, lactalbumin',
      'milk',
    ],
    [
      'milch, milchpulver, vollmilch, vollmilchpulver, magermilch, magermilchpulver, milchprodukte, milcherzeugnisse, laktose, käse, sahne, rahm, schmand, quark, joghurt, jogurt, butterschmalz, molke, molkenpulver, molkeneiweiß, kasein, kaseinat, milcheiweiß',
      'milk',
    ],
    [
      'lait, produits laitiers, produit laitier, fromage, beurre, crème, crème fraîche, yaourt, lactosérum, petit-lait, caséine, caséinate, caséinates',
      'milk',
    ],
    [
      'eggs, ei, eier, eiern, eigelb, eiklar, hühnerei, hühnereier, œuf, œufs, albumen, albumin, egg white, egg whites, egg yolk, egg yolks, mayonnaise, blanc d’œuf, jaune d’œuf',
      'egg',
    ],
    [
      'fisch, fische, fischen, poisson, poissons, tuna, salmon, cod, trout, mackerel, haddock, anchovy, anchovies, fish sauce, lachs, thunfisch, kabeljau, forelle, makrele, hering, sardellen, saumon, thon, cabillaud, truite, maquereau, hareng, anchois',
      'fish',
    ],
    [
      'crustacean, crustaceans shellfish, shrimp, shrimps, prawn, prawns, crab, lobster, crayfish, langoustine, langoustines, krebstiere, krebstieren, krustentiere, krebse, garnele, garnelen, krabben, hummer, crustacés, crevette, crevettes, crabe, homard, langouste, écrevisses',
      'crustaceans',
    ],
    ['shellfish, seafood, meeresfrüchte, fruits de mer', 'crustaceans', 'molluscs'],
    [
      'nut, nuts, tree nut, treenuts, almond, almonds, hazelnut, hazelnuts, filbert, filberts, walnut, walnuts, cashew, cashews, cashew nut, cashew nuts, pecan, pecans, pecan nuts, pistachio, pistachios, pistachio nuts, brazil nut, brazil nuts, macadamia, macadamias, macadamia nut, macadamia nuts, queensland nut, queensland nuts, marzipan, praline',
      'nuts',
    ],
    [
      'nuss, nüsse, nüssen, schalenfrucht, schalenfrüchte, schalenfrüchten, mandel, mandeln, mandelmehl, mandelmus, haselnussmus, nussmus, haselnuss, haselnüsse, haselnüssen, walnuss, walnüsse, walnüssen, cashewkerne, cashewnuss, cashewnüsse, kaschunuss, kaschunüsse, pekannuss, pekannüsse, pecannüsse, paranuss, paranüsse, pistazie, pistazien, macadamianuss, macadamianüsse, queenslandnuss, queenslandnüsse, nougat',
      'nuts',
    ],
    [
      'fruit à coque, fruits à coque, noix, amande, amandes, noisette, noisettes, cajou, noix de cajou, noix de pécan, pacane, pacanes, noix du brésil, pistache, pistaches, noix de macadamia, noix du queensland, noix de grenoble',
      'nuts',
    ],
    [
      'peanuts, groundnut, groundnuts, monkey nuts, peanut butter, erdnuss, erdnüsse, erdnüssen, erdnussbutter, arachide, arachides, cacahuète, cacahuètes, beurre de cacahuète',
      'peanut',
    ],
    ['weizen, weizenmehl, weizenstärke, weizenkleie, blé', 'wheat'],
    ['grieß', 'wheat', 'gluten'],
    ['milk powder, parmesan', 'milk'],
    [
      'spelt, durum, durum wheat, semolina, couscous, bulgur, bulgar wheat, farro, emmer, einkorn, freekeh, seitan, wheat gluten, wheat germ, khorasan, khorasan wheat, kamut, oriental wheat, triticum turanicum, triticale',
      'wheat',
      'gluten',
    ],
    [
      'dinkel, grünkern, hartweizen, hartweizengrieß, weizengrieß, khorasan-weizen, khorasanweizen, épeautre, blé dur, semoule, boulgour, amidonnier, engrain, petit épeautre, blé de khorasan, blé khorasan',
      'wheat',
      'gluten',
    ],
    [
      'soya, soybean, soybeans, soy bean, soy beans, soya bean, soya beans, soybean products, soy sauce, soya sauce, soy lecithin, soya lecithin, tofu, tempeh, miso, edamame, soja, sojamehl, sojaöl, sojaeiweiß, sojabohne, sojabohnen, sojasauce, sojasoße, sojalecithin, graine de soja, graines de soja, sauce soja, lécithine de soja',
      'soy',
    ],
    [
      'sesame seed, sesame seeds, sesame oil, tahini, tahina, tahin, sesam, sesamöl, sesamsamen, sesampaste, sésame, graine de sésame, graines de sésame',
      'sesame',
    ],
    [
      'gluten cereals, cereals with gluten, cereals containing gluten, cereal containing gluten, barley, barley malt, malt, rye, oats, oat, glutenhaltiges getreide, glutenhaltige getreide, gerste, gerstenmehl, roggenmehl, hafermehl, gerstenmalz, malz, roggen, hafer, haferflocken, orge, malt d’orge, seigle, avoine, céréales contenant du gluten',
      'gluten',
    ],
    [
      'celeriac, celery seed, celery salt, sellerie, knollensellerie, stangensellerie, selleriesalz, céleri, céleri-rave, sel de céleri',
      'celery',
    ],
    ['senf, senfkörner, senfsamen, mustard seed, mustard seeds, moutarde, graines de moutarde', 'mustard'],
    [
      'sulfites, sulphite, sulfite, sulphur dioxide, sulfur dioxide, so2, sulfit, schwefeldioxid, dioxyde de soufre, anhydride sulfureux, metabisulphite, metabisulfite, sodium metabisulphite, sodium metabisulfite, e220, e221, e222, e223, e224, e226, e227, e228',
      'sulphites',
    ],
    ['lupine, lupins, lupinen, lupinenmehl, lupin flour, farine de lupin', 'lupin'],
    [
      'mollusc, mollusks, mollusk, mussel, mussels, clam, clams, oyster, oysters, scallop, scallops, snail, snails, squid, cuttlefish, octopus, calamari, abalone, weichtier, weichtiere, weichtieren, muschel, muscheln, austern, tintenfisch, schnecken, mollusque, mollusques, moules, huîtres, palourdes, calamars, escargots, seiche, coquilles saint-jacques',
      'molluscs',
    ],
  ],
);

/** Words beside the name of an allergen that change nothing about it. */
const BESIDE_ALLERGENS = new Set(
  plainWords(
    'powder powdered flour rolled protein proteins oil starch milk milks paste butter seed seeds kernel kernels flake flakes meal bran germ raw dried roasted toasted ground chopped sliced salted whole skimmed skim semi full fat organic solids product products derivative derivatives pulver mehl eiweiß öl stärke paste mus samen kerne kern flocken kleie roh getrocknet getrocknete getrockneten geröstet geröstete gerösteten gemahlen gemahlene gemahlenen gehackt gehackte gehackten gesalzen gesalzene ganz ganze ganzen bio mager voll fettarm erzeugnisse en poudre farine protéine protéines huile amidon pâte graine graines flocons son cru crue séché séchée grillé grillée grillées moulu moulue concassé entier entière écrémé bio de du des d la le les und and et with mit avec in aus of',
  ).split(' '),
);
/** Longest name of an allergen, words. */
const LONGEST_NAME = 4;

/**
 * The allergens that a text names, with words around the names that change nothing: "skimmed milk powder", "gemahlene Mandeln".
 *
 * @returns `undefined` where it names none, or has a word that is neither
 */
export function allergensNamed(given: string): readonly Allergen[] | undefined {
  const whole = ALLERGEN_VOCABULARY.meaning(given);
  if (whole) return whole;
  const words = plainWords(given)
    .replace(/\be (?=\d{3})/g, 'e')
    .split(' ')
    .filter(Boolean);
  const found = new Set<Allergen>();
  for (let at = 0; at < words.length;) {
    const length = Array.from({ length: LONGEST_NAME }, (_, less) => LONGEST_NAME - less).find((count) =>
      ALLERGEN_VOCABULARY.meaning(words.slice(at, at + count).join(' ')),
    );
    const meant = length && ALLERGEN_VOCABULARY.meaning(words.slice(at, at + length).join(' '));
    if (meant) meant.forEach((code) => found.add(code));
    else if (!BESIDE_ALLERGENS.has(words[at] ?? '')) return undefined;
    at += length ?? 1;
  }
  return found.size > 0 ? [...found] : undefined;
}

export const DIET_VOCABULARY: Vocabulary<Diet> = vocabulary(
  text('diet'),
  DIET_CHOICES.map(({ code }) => code),
  [
    ...DIET_CHOICES.map(({ code, label }) => [label.split(' (')[0]!, code] as [string, Diet]),
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
