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
    [
      'spelt, durum, durum wheat, semolina, couscous, bulgur, bulgar wheat, farro, emmer, einkorn, freekeh, seitan, wheat gluten, wheat germ, khorasan, khorasan wheat, oriental wheat, triticum turanicum, triticale',
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
      'gluten cereals, cereals containing gluten, cereal containing gluten, barley, barley malt, malt, rye, oats, oat, glutenhaltiges getreide, glutenhaltige getreide, gerste, gerstenmehl, roggenmehl, hafermehl, gerstenmalz, malz, roggen, hafer, haferflocken, orge, malt d’orge, seigle, avoine, céréales contenant du gluten',
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
