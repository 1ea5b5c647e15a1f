import type { Food } from '../planning/model/composition.ts';
import { plainWords } from '../shelf-csv/fields.ts';
import { foodWords } from './food-words.ts';
import { keyOf, kitchenFoods, type KitchenName } from './kitchen-foods.ts';

/** Words that say how a food is cut, how good it is or where it stands, and not which food it is. */
const SAYS_NOTHING = new Set(
  foodWords(
    `a an the some few little bit chopped sliced diced cubed cut shredded crushed mashed grated peeled pitted stoned seeded deseeded cored
    trimmed halved quartered finely roughly coarsely thinly thickly lightly freshly fresh fine coarse large small medium big extra good quality
    best ripe firm soft organic free range natural cold warm room temperature softened melted beaten whisked drained rinsed washed cleaned
    separated divided optional packed heaped heaping level scant generous about approximately approx ca circa plus more taste serve serving
    garnish needed required desired preferably ideally your choice favourite favorite such like piece pieces chunk chunks cube cubes strip strips slice
    slices ring rings wedge wedges florets bite sized size thick thin inch cm mm each whole half quarter leaves stalks stems stem sprigs
    bunch head heads clove cloves only part parts for on to in into and with at if from it them then more of as well very ready use
    frozen thawed defrosted unwaxed unpeeled skin skinned boneless skinless lean trimmed minced torn picked
    gehackt gehackte gehackter gehacktes gewurfelt gewurfelte geschnitten geschnittene gerieben geriebene geriebener fein feine feiner grob grobe
    gross grosse grosser grosses klein kleine kleiner kleines mittelgross mittelgrosse mittlere mittlerer mittelgrosser frisch frische frischer frisches reif reife gepresst gepresste
    geschalt geschalte abgetropft abgetropfte zum zur nach geschmack belieben bedarf etwas wenig evtl eventuell optional bio aus der dem
    im in scheiben wurfel wurfeln stucke stucken streifen ringe weich weiche zimmerwarm kalt kalte kalter lauwarm warme
    zerlassen zerdruckt entkernt entkernte gut gute guter gehauft gehaufte gestrichen fur und mit ohne stiele ungesalzen ungesalzene unbehandelt unbehandelte braten
    servieren garnieren anbraten ausgepresst abgerieben gewaschen geputzt gehobelt gehobelte
    frying cooking brushing greasing drizzling dusting sprinkling topping finishing thinking juiced zested toasted roasted crumbled flaked
    separate soaked overnight seasonal julienned matchstick peeling deveined shelled hulled hot spare additional new store bought homemade leftover plain regular standard normal pure real dry dried raw uncooked unsalted roh`,
  ),
);
/** Some of them say which food it is after all, where a name has them. */
const CHANGES_DRIED = new Set(['dry', 'dried', 'getrocknete', 'getrockneter', 'getrocknet', 'trocken']);
/** Food with less water is dry as it is sold, g per 100 g. */
const DRY_FOOD_G = 20;
const CHANGES_ROASTED = new Set(['toasted', 'roasted', 'mashed', 'frozen', 'thawed']);
const FREEZABLE = new Set([
  'Vegetables and Vegetable Products',
  'Fruits and Fruit Juices',
  'Finfish and Shellfish Products',
  'Poultry Products',
  'Beef Products',
  'Pork Products',
  'Lamb, Veal, and Game Products',
]);
const SPICES = 'Spices and Herbs';

/** Whether a word that is in no name leaves the food what it is. */
function leavesAs(word: string, food: Food): boolean {
  if (/^\d+$/.test(word)) return true;
  const group = kitchenFoods().groups.get(food);
  if (CHANGES_DRIED.has(word)) return food.composition.waterG < DRY_FOOD_G;
  if (word === 'ground')
    return (
      group === SPICES || group === 'Vegetables and Vegetable Products' || group === 'Nut and Seed Products'
    );
  if (word === 'frozen' || word === 'thawed') return group !== undefined && FREEZABLE.has(group);
  if (word === 'roasted' || word === 'toasted') return group === 'Nut and Seed Products' || group === SPICES;
  if (CHANGES_ROASTED.has(word))
    return group === 'Fruits and Fruit Juices' || group === 'Vegetables and Vegetable Products';
  return SAYS_NOTHING.has(word);
}

export type FoodMatch = {
  readonly food: Food;
  /** The name that was found in the words; a user's own food has its own. */
  readonly name: string;
  /** Whether all other words leave the food what it is; otherwise it is a guess that a person has to look at. */
  readonly sure: boolean;
};

/** Position of the last word of a name among the words; the later, the more it is the noun that counts in English. */
const lastAt = (words: readonly string[], name: readonly string[]): number =>
  Math.max(...name.map((word) => words.lastIndexOf(word)));

let byFirstWord: Map<string, KitchenName[]> | undefined;
/** The names that hold a word, so that not all are looked through. */
function namesWith(word: string): readonly KitchenName[] {
  if (!byFirstWord) {
    byFirstWord = new Map();
    for (const name of kitchenFoods().names)
      for (const each of new Set(name.words)) {
        const list = byFirstWord.get(each);
        if (list) list.push(name);
        else byFirstWord.set(each, [name]);
      }
  }
  return byFirstWord.get(word) ?? [];
}

/**
 * What food a cook's words mean: "2 large onions, chopped" without the amount, "tinned tomatoes", "rote Linsen".
 *
 * A user's own food of that name goes first, then the names of `kitchen-names.ts`, the longest that is in the words; then a
 * description of the table that has all words. Words that no name has, and that change the food ("vegan feta"), make it a guess.
 *
 * @param own foods of the user, by their names
 * @returns `undefined` where nothing is like it
 */
export function matchFood(text: string, own: readonly Food[] = []): FoodMatch | undefined {
  const words = foodWords(text);
  if (words.length === 0) return undefined;
  const key = keyOf(words);
  const mine = own.find(({ name }) => keyOf(foodWords(name)) === key);
  if (mine) return { food: mine, name: mine.name, sure: true };
  const { byKey } = kitchenFoods();
  const exact = byKey.get(key);
  if (exact) return { food: exact.food, name: exact.name, sure: true };

  const has = new Set(words);
  const candidates = new Set(words.flatMap((word) => namesWith(word)));
  let best: { name: KitchenName; sure: boolean; left: number; count: number; at: number } | undefined;
  for (const name of candidates) {
    if (!name.words.every((word) => has.has(word))) continue;
    const own = new Set(name.words);
    const rest = words.filter((word) => !own.has(word) && !leavesAs(word, name.food));
    const found = {
      name,
      sure: rest.length === 0,
      left: rest.length,
      count: own.size,
      at: lastAt(words, name.words),
    };
    if (
      !best ||
      found.left < best.left ||
      (found.left === best.left &&
        (found.count > best.count || (found.count === best.count && found.at > best.at)))
    )
      best = found;
  }
  if (best?.sure) return { food: best.name.food, name: best.name.name, sure: true };
  const described = byDescription(words);
  if (described) return described;
  return best && { food: best.name.food, name: best.name.name, sure: false };
}

/** Words that many descriptions begin with before they name the food. */
const HEADINGS = new Set(
  foodWords(
    'spices fish nuts seeds crustaceans mollusks oil cheese game meat beverages candies crackers cereals',
  ),
);

/** Words of descriptions that a cook leaves out. */
const NEUTRAL = new Set(
  foodWords(
    `raw fresh whole all common mature uncooked dry unprepared mixed species separable lean fat only and includes with skin red
    without salt ripe varieties commercial type european atlantic pacific wild farmed domesticated composite cuts drained solids liquids
    cooked boiled fluid table flesh vegetable immature year round average`,
  ),
);

let descriptions: { food: Food; words: ReadonlySet<string>; first: string }[] | undefined;

/** The plainest description of the table that has all words and begins with one of them. */
function byDescription(words: readonly string[]): FoodMatch | undefined {
  descriptions ??= kitchenFoods().foods.map((food) => {
    const own = foodWords(food.name);
    return { food, words: new Set(own), first: own.find((word) => !HEADINGS.has(word)) ?? own[0] ?? '' };
  });
  const fits = descriptions.filter(
    ({ food, words: own, first }) =>
      words.includes(first) && words.every((word) => own.has(word) || leavesAs(word, food)),
  );
  if (fits.length === 0) return undefined;
  const plainness = ({ food, words: own }: (typeof fits)[number]) =>
    own.size - (/\braw\b|\bdry\b/i.test(food.name) ? 2 : 0);
  const best = fits.reduce((so, each) => (plainness(each) < plainness(so) ? each : so));
  const isPlain = [...best.words].every(
    (word) => words.includes(word) || NEUTRAL.has(word) || HEADINGS.has(word),
  );
  return { food: best.food, name: best.food.name, sure: isPlain };
}

/**
 * @returns the food of this name: as it is written in the tables, case and outer blanks aside; else what cooks call so, where the tables
 * have that food.
 */
export function findFood(tables: readonly Food[], name: string): Food | undefined {
  const loose = (text: string) => text.trim().toLowerCase();
  const written =
    tables.find((food) => food.name === name) ?? tables.find((food) => loose(food.name) === loose(name));
  if (written) return written;
  const meant = matchFood(name);
  return meant?.sure && tables.includes(meant.food) ? meant.food : undefined;
}

const singular = (word: string): string => word.replace(/(?<=o)es$|(?<=[^s])s$/, '');

/** How well a name fits, 0 best: it starts with what is looked for; its words do, in any order; it holds it anywhere. */
function rankOf(name: string, wanted: string): number | undefined {
  const each = wanted.split(' ');
  // Most names have none of the words, not even without their plural.
  if (!each.every((word) => name.includes(singular(word)))) return undefined;
  const words = name.split(' ');
  const starts = (word: string) =>
    words.some((own) => own.startsWith(word) || singular(own) === singular(word));
  if (name.startsWith(wanted)) return 0;
  if (each.every(starts)) return starts(each[0]!) && singular(words[0]!) === singular(each[0]!) ? 1 : 2;
  return each.every((word) => name.includes(word)) ? 3 : undefined;
}

const plainByFood = new WeakMap<Food, string>();
/** `plainWords` of the food's name, made once. */
function plainNameOf(food: Food): string {
  let name = plainByFood.get(food);
  if (name === undefined) {
    name = plainWords(food.name);
    plainByFood.set(food, name);
  }
  return name;
}

let plainNames: { readonly name: string; readonly food: Food }[] | undefined;

const plainKitchenNames = () =>
  (plainNames ??= kitchenFoods().names.map(({ name, food }) => ({ name: plainWords(name), food })));

/** Whether the words are in a name of the food, or surely mean it; otherwise a search that finds it has guessed. */
export function isCalled(food: Food, words: string): boolean {
  const wanted = plainWords(words);
  const meant = matchFood(words);
  return (
    (meant?.sure === true && meant.food === food) ||
    rankOf(plainNameOf(food), wanted) !== undefined ||
    plainKitchenNames().some((of) => of.food === food && rankOf(of.name, wanted) !== undefined)
  );
}

/**
 * Looks for foods by words: by their own names and by what cooks call them, accents, case, order and an English plural aside.
 *
 * @param limit the most foods wanted
 * @returns the best first: what the words mean to a cook; names that start with the words, then those with words that do; shorter
 * names before longer ones, then by the alphabet, then in the order of the tables. Nothing for no words.
 */
export function searchFoods(tables: readonly Food[], words: string, limit: number): Food[] {
  const wanted = plainWords(words);
  if (wanted === '') return [];
  const meant = matchFood(words);
  const called = new Map<Food, { rank: number; length: number }>();
  for (const { name, food } of plainKitchenNames()) {
    const rank = rankOf(name, wanted);
    const was = called.get(food);
    if (rank !== undefined && (!was || rank < was.rank || (rank === was.rank && name.length < was.length)))
      called.set(food, { rank, length: name.length });
  }
  return tables
    .flatMap((food) => {
      const name = plainNameOf(food);
      const own = rankOf(name, wanted);
      const byName = called.get(food);
      if (own === undefined && !byName && food !== meant?.food) return [];
      const best =
        byName && (own === undefined || byName.rank <= own)
          ? byName
          : { rank: own ?? 4, length: name.length };
      const rank = meant?.sure && food === meant.food ? -1 : best.rank;
      return [{ food, name, rank, length: best.length }];
    })
    .sort(
      (a, b) => a.rank - b.rank || a.length - b.length || (a.name < b.name ? -1 : Number(a.name > b.name)),
    )
    .slice(0, limit)
    .map(({ food }) => food);
}
