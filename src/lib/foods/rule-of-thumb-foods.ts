import type { Allergen } from '../planning/model/allergens.ts';
import type { Food } from '../planning/model/composition.ts';
import type { Diet } from '../planning/model/diets.ts';

/** The source of round figures of our own. */
export const RULE_OF_THUMB = 'rule of thumb, not from a table';

/** Name; g per 100 g of water, protein, fat, available carbohydrate, fibre; mg of sodium; what else is known; what cooks call it. */
type Row = readonly [
  name: string,
  parts: readonly [waterG: number, proteinG: number, fatG: number, carbohydrateG: number, fibreG: number],
  sodiumMg: number,
  more: {
    readonly allergens?: readonly Allergen[];
    readonly diets?: readonly Diet[];
    readonly alcoholG?: number;
    readonly gPerMl?: number;
    readonly gPerPiece?: number;
  },
  names: string,
];

const VEGAN: readonly Diet[] = ['vegan', 'no-alcohol'];
const VEGETARIAN: readonly Diet[] = ['vegetarian', 'no-alcohol'];
/** Rennet may come from a calf's stomach. */
const CHEESE: readonly Diet[] = ['no-pork', 'no-alcohol'];

/**
 * What kitchens use and the published table does not have. Round figures, common practice; the label decides, for allergens above all,
 * which stay open wherever makers differ.
 */
const ROWS: readonly Row[] = [
  [
    'Beef stock, ready to use',
    [98, 0.8, 0.2, 0.2, 0],
    350,
    { gPerMl: 1 },
    'beef stock, beef broth, hot beef stock, low sodium beef broth, beef bouillon, Rinderbrühe, Fleischbrühe, Rinderfond, Bratenfond',
  ],
  [
    'Chicken stock, ready to use',
    [98, 0.8, 0.2, 0.2, 0],
    350,
    { gPerMl: 1 },
    'chicken stock, chicken broth, hot chicken stock, low sodium chicken broth, chicken bouillon, Hühnerbrühe, Geflügelbrühe, Geflügelfond',
  ],
  [
    'Vegetable stock, ready to use',
    [98.5, 0.2, 0.1, 0.7, 0],
    350,
    { gPerMl: 1 },
    'vegetable stock, vegetable broth, stock, broth, veg stock, hot vegetable stock, low sodium vegetable broth, vegetable bouillon, Gemüsebrühe, Brühe, Bouillon, Gemüsefond, Suppe klar',
  ],
  ['Fish stock, ready to use', [98, 1, 0.2, 0.2, 0], 350, { gPerMl: 1 }, 'fish stock, fish broth, Fischfond'],
  [
    'Stock cube',
    [4, 10, 17, 20, 0],
    20_000,
    { gPerPiece: 10 },
    'stock cube, bouillon cube, beef stock cube, chicken stock cube, vegetable stock cube, veg stock cube, Brühwürfel, Suppenwürfel, Gemüsebrühwürfel, beef bouillon cube, chicken bouillon cube, vegetable bouillon cube, stock pot',
  ],
  [
    'Stock powder',
    [4, 10, 8, 25, 0],
    18_000,
    { gPerMl: 0.8 },
    'stock powder, bouillon powder, vegetable stock powder, chicken stock powder, vegetable bouillon powder, beef stock powder, Gemüsebrühe Pulver, Brühpulver, Instantbrühe, gekörnte Brühe',
  ],
  [
    'Wine, red',
    [87, 0, 0, 2.5, 0],
    5,
    { alcoholG: 10.5, gPerMl: 0.99, allergens: ['sulphites'], diets: [] },
    'red wine, dry red wine, wine, Rotwein, Wein',
  ],
  [
    'Wine, white',
    [87, 0, 0, 2.5, 0],
    5,
    { alcoholG: 10.5, gPerMl: 0.99, allergens: ['sulphites'], diets: [] },
    'white wine, dry white wine, Weisswein',
  ],
  [
    'Rice wine for cooking',
    [75, 0.3, 0, 12, 0],
    500,
    { alcoholG: 10, gPerMl: 1.03, diets: [] },
    'rice wine, mirin, shaoxing wine, shaoxing rice wine, chinese rice wine, sake',
  ],
  [
    'Fortified wine',
    [70, 0, 0, 10, 0],
    10,
    { alcoholG: 16, gPerMl: 1, allergens: ['sulphites'], diets: [] },
    'sherry, dry sherry, port, marsala, madeira, Sherry, Portwein',
  ],
  [
    'Beer',
    [92, 0.5, 0, 3.5, 0],
    5,
    { alcoholG: 4, gPerMl: 1, allergens: ['gluten', 'wheat'], diets: [] },
    'beer, ale, lager, stout, Bier',
  ],
  [
    'Spirits, 40 % by volume',
    [67, 0, 0, 0, 0],
    1,
    { alcoholG: 33, gPerMl: 0.95, diets: [] },
    'rum, brandy, whisky, whiskey, vodka, cognac, bourbon, Rum, Weinbrand, tequila, gin',
  ],
  [
    'Fish sauce',
    [71, 5, 0, 4, 0],
    7500,
    { gPerMl: 1.2, allergens: ['fish'], diets: ['no-pork', 'no-beef', 'no-alcohol'] },
    'fish sauce, nam pla, nuoc mam, Fischsauce',
  ],
  ['Oyster sauce', [60, 2, 0, 25, 0], 3500, { gPerMl: 1.2, diets: [] }, 'oyster sauce, Austernsauce'],
  [
    'Worcestershire sauce',
    [75, 1, 0, 20, 0],
    1000,
    { gPerMl: 1.15, diets: [] },
    'worcestershire sauce, worcester sauce, Worcestersauce',
  ],
  [
    'Hot chilli sauce',
    [85, 1, 0.5, 8, 1],
    2000,
    { gPerMl: 1.05, diets: [] },
    'hot sauce, chilli sauce, hot pepper sauce, chili garlic sauce, sriracha style sauce, hot chilli sauce, Chilisauce, scharfe Sauce',
  ],
  [
    'Sweet chilli sauce',
    [45, 0.5, 0.5, 50, 1],
    1000,
    { gPerMl: 1.2, diets: [] },
    'sweet chilli sauce, süsse Chilisauce',
  ],
  [
    'Hoisin sauce',
    [45, 3, 3, 42, 3],
    1600,
    { gPerMl: 1.2, diets: [] },
    'hoisin sauce, hoisin, teriyaki sauce',
  ],
  ['Barbecue sauce', [55, 1, 0.5, 38, 1], 1000, { gPerMl: 1.15, diets: [] }, 'barbecue sauce, bbq sauce'],
  [
    'Curry paste',
    [60, 3, 12, 10, 5],
    1500,
    { gPerMl: 1.05, diets: [] },
    'curry paste, thai curry paste, red curry paste, green curry paste, thai red curry paste, thai green curry paste, yellow curry paste, tikka paste, tikka masala paste, korma paste, madras paste, balti paste, rote Currypaste, Currypaste, grüne Currypaste',
  ],
  [
    'Chilli paste',
    [65, 3, 5, 12, 4],
    1500,
    { gPerMl: 1.1, diets: [] },
    'harissa, harissa paste, chilli paste, sambal oelek, sambal, chipotle paste, chipotle in adobo, chipotle chili in adobo, gochujang, chipotle pepper in adobo sauce, Sambal Oelek, Harissa, Ajvar',
  ],
  ['Pesto', [35, 5, 42, 6, 2], 1000, { gPerMl: 1, diets: [] }, 'pesto, basil pesto, green pesto, red pesto'],
  ['Kimchi', [92, 1.5, 0.5, 2.5, 2], 600, { gPerMl: 0.65, diets: [] }, 'kimchi'],
  [
    'Mixed dried herbs',
    [9, 12, 6, 30, 32],
    60,
    { diets: VEGAN, gPerMl: 0.2 },
    'mixed herbs, dried mixed herbs, italian herbs, italian seasoning, herbes de provence, mixed dried herb, dried italian herbs, bouquet garni, Kräuter der Provence, italienische Kräuter, gemischte Kräuter',
  ],
  [
    'Mixed ground spices',
    [9, 12, 13, 30, 25],
    80,
    { diets: VEGAN, gPerMl: 0.42 },
    'garam masala, ras el hanout, five spice, chinese five spice, chinese five spice powder, za atar, berbere, baharat, five spice powder, Garam Masala',
  ],
  [
    'Seasoning salt blend',
    [4, 6, 3, 20, 8],
    20_000,
    { diets: [], gPerMl: 0.8 },
    'cajun seasoning, seasoned salt, all purpose seasoning, creole seasoning, old bay style seasoning, jerk seasoning, bbq rub, Kräutersalz, Würzmischung, seasoning',
  ],
  ['Sumac', [10, 5, 15, 30, 30], 80, { allergens: [], diets: VEGAN, gPerMl: 0.5 }, 'sumac'],
  ['Asafoetida', [12, 4, 1, 65, 4], 30, { diets: VEGAN, gPerMl: 0.6 }, 'asafoetida, hing'],
  [
    'Juniper berries, dried',
    [15, 5, 15, 30, 30],
    20,
    { allergens: [], diets: VEGAN, gPerMl: 0.4 },
    'juniper berry, Wacholderbeeren, Wacholder',
  ],
  [
    'Curry or lime leaves',
    [65, 6, 1, 15, 7],
    5,
    { allergens: [], diets: VEGAN, gPerMl: 0.1, gPerPiece: 0.3 },
    'curry leaf, kaffir lime leaf, makrut lime leaf, lime leaf, Curryblätter, Limettenblätter',
  ],
  [
    'Nutritional yeast',
    [6, 48, 5, 15, 22],
    100,
    { diets: VEGAN, gPerMl: 0.25 },
    'nutritional yeast, yeast flake, nutritional yeast flake, Hefeflocken',
  ],
  [
    'Soya mince, textured, dry',
    [8, 50, 1.5, 17, 17],
    10,
    { allergens: ['soy'], diets: VEGAN, gPerMl: 0.4 },
    'soya mince, tvp, textured vegetable protein, soy mince, soya chunk, textured soy protein, soya mince textured dry, soya protein mince, dried soya mince, Sojagranulat, Sojaschnetzel, Sojahack',
  ],
  ['Seitan', [60, 25, 2, 8, 1], 500, { diets: VEGAN }, 'seitan'],
  ['Maltodextrin', [5, 0, 0, 95, 0], 20, { allergens: [], diets: VEGAN, gPerMl: 0.5 }, 'maltodextrin'],
  [
    'Potato starch',
    [15, 0.2, 0.1, 84, 0.2],
    10,
    { diets: VEGAN, gPerMl: 0.7 },
    'potato starch, Kartoffelstärke, Kartoffelmehl',
  ],
  [
    'Quark, low in fat',
    [82, 12, 0.3, 4, 0],
    40,
    { allergens: ['milk'], diets: CHEESE, gPerMl: 1.03 },
    'quark, Magerquark, Quark, Topfen, Speisequark',
  ],
  [
    'Mascarpone',
    [45, 4.5, 45, 4, 0],
    50,
    { allergens: ['milk'], diets: VEGETARIAN, gPerMl: 1 },
    'mascarpone',
  ],
  [
    'Crème fraîche',
    [62, 2.5, 31, 3, 0],
    35,
    { allergens: ['milk'], diets: VEGETARIAN, gPerMl: 1 },
    'creme fraiche, Creme fraiche',
  ],
  [
    'Yoghurt, strained',
    [80, 7, 8, 4.5, 0],
    45,
    { allergens: ['milk'], diets: VEGETARIAN, gPerMl: 1.03 },
    'greek yoghurt, greek style yoghurt, yoghurt strained, full fat greek yoghurt, thick yoghurt, greek yogurt, plain greek yogurt, griechischer Joghurt',
  ],
  [
    'Halloumi',
    [48, 22, 26, 2, 0],
    1100,
    { allergens: ['milk'], diets: CHEESE },
    'halloumi, halloumi cheese, Halloumi, Grillkäse',
  ],
  ['Paneer', [52, 19, 23, 4, 0], 30, { allergens: ['milk'], diets: CHEESE }, 'paneer, paneer cheese, Paneer'],
  [
    'Cheese powder',
    [4, 28, 35, 25, 0],
    2500,
    { diets: [], gPerMl: 0.4 },
    'cheese powder, powdered cheese, cheddar powder, cheddar cheese powder, dried cheese',
  ],
  [
    'Cream powder',
    [3, 12, 50, 32, 0],
    250,
    { diets: [], gPerMl: 0.5 },
    'cream powder, Sahnepulver, sour cream powder',
  ],
  [
    'Butter powder',
    [3, 8, 75, 12, 0],
    500,
    { diets: [], gPerMl: 0.5 },
    'butter powder, powdered butter, dried butter',
  ],
  [
    'Coconut milk powder',
    [3, 7, 60, 26, 3],
    150,
    { diets: [], gPerMl: 0.45 },
    'coconut milk powder, coconut powder, powdered coconut milk, Kokosmilchpulver',
  ],
  [
    'Oat drink',
    [90, 0.8, 1.5, 6.5, 0.8],
    40,
    { allergens: ['gluten'], diets: VEGAN, gPerMl: 1.03 },
    'oat milk, oat drink, Hafermilch, Haferdrink',
  ],
  ['Golden syrup', [18, 0.3, 0, 80, 0], 250, { diets: VEGAN, gPerMl: 1.4 }, 'golden syrup'],
  [
    'Elderflower or fruit syrup',
    [35, 0, 0, 65, 0],
    5,
    { diets: VEGAN, gPerMl: 1.3 },
    'fruit syrup, elderflower cordial, cordial, squash drink, Sirup, Holundersirup',
  ],
  [
    'Custard powder',
    [10, 0.5, 0.3, 87, 1],
    100,
    { diets: [], gPerMl: 0.6 },
    'custard powder, pudding powder, Puddingpulver, Vanillepuddingpulver',
  ],
  [
    'Protein powder, whey',
    [5, 78, 6, 7, 0],
    250,
    { allergens: ['milk'], diets: [], gPerMl: 0.4 },
    'protein powder, whey protein, whey protein powder, vanilla protein powder, Proteinpulver, Molkenprotein',
  ],
  [
    'Tamarind paste',
    [45, 2, 0.5, 45, 4],
    30,
    { diets: VEGAN, gPerMl: 1.15 },
    'tamarind paste, tamarind concentrate',
  ],
  ['Mango chutney', [40, 0.5, 0.5, 56, 1.5], 1200, { diets: [], gPerMl: 1.25 }, 'mango chutney, chutney'],
  [
    'Meat-free mince, chilled',
    [65, 17, 6, 6, 5],
    500,
    { diets: [] },
    'veggie mince, meat free mince, vegan mince, vegetarian mince, plant based mince, plant based ground, vegetarisches Hack, veganes Hack',
  ],
  [
    'Minced meat, pork and beef, raw',
    [63, 18, 18, 0, 0],
    65,
    { allergens: [], diets: ['no-alcohol'] },
    'Hackfleisch, gemischtes Hackfleisch, Hack, Hackfleisch gemischt, Faschiertes, mixed minced meat, mixed mince',
  ],
  [
    'Spätzle, fresh',
    [55, 7, 3, 32, 2],
    300,
    { diets: [] },
    'spätzle, Spätzle, Schupfnudeln, gnocchi, potato gnocchi, Gnocchi',
  ],
  [
    'Dumplings, fresh, filled pasta',
    [40, 11, 8, 38, 2],
    450,
    { diets: [] },
    'tortellini, ravioli, cheese tortellini, fresh tortellini, Tortellini, Ravioli, Maultaschen',
  ],
  [
    'Ramen noodles, fried block',
    [6, 10, 18, 62, 3],
    600,
    { diets: [], gPerPiece: 80 },
    'ramen noodle, instant noodle, instant ramen, ramen, Instantnudeln, Ramen',
  ],
  [
    'Udon noodles, cooked',
    [68, 4, 0.5, 26, 1],
    150,
    { diets: [] },
    'udon, udon noodle, Udonnudeln, straight to wok noodle',
  ],
  [
    'Banana chips, fried',
    [4, 2, 33, 50, 8],
    10,
    { diets: VEGAN, gPerMl: 0.4 },
    'banana chips, banana chip, banana chips fried, Bananenchips',
  ],
  [
    'Salsa, tomato',
    [90, 1.5, 0.2, 5, 1.5],
    600,
    { diets: VEGAN, gPerMl: 1.05, gPerPiece: 450 },
    'salsa, tomato salsa, salsa verde, picante sauce',
  ],
  [
    'Soup vegetables, with celeriac',
    [88, 1.3, 0.3, 6, 3],
    50,
    { allergens: ['celery'], diets: VEGAN, gPerPiece: 400 },
    'suppengrün, Suppengrün, soup vegetable, Wurzelgemüse',
  ],
  [
    'Rice paper',
    [12, 3, 0.5, 83, 1],
    600,
    { diets: VEGAN, gPerPiece: 8 },
    'rice paper, rice paper wrapper, Reispapier',
  ],
];

const COOKED_AS: Readonly<Record<string, Food['cookingClass']>> = {
  'Minced meat, pork and beef, raw': 'minced meat',
};

/** @returns the foods with round figures of our own, and what cooks call each. */
export function ruleOfThumbFoods(): { readonly food: Food; readonly names: readonly string[] }[] {
  return ROWS.map(([name, [waterG, proteinG, fatG, carbohydrateG, fibreG], sodiumMg, more, names]) => ({
    food: {
      name,
      composition: {
        waterG,
        proteinG,
        fatG,
        carbohydrateG,
        fibreG,
        alcoholG: more.alcoholG ?? 0,
        sodiumMg,
      },
      source: RULE_OF_THUMB,
      ...(more.allergens && { allergens: [...more.allergens] }),
      diets: [...(more.diets ?? ['no-alcohol'])],
      cookingClass: COOKED_AS[name] ?? 'other',
      ...(more.gPerMl !== undefined && { gPerMl: more.gPerMl }),
      ...(more.gPerPiece !== undefined && { gPerPiece: more.gPerPiece }),
    },
    names: names.split(', '),
  }));
}
