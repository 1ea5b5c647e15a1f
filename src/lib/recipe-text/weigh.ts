import type { Food } from '../planning/model/composition.ts';
import { kitchenFoods, measuresOf } from '../foods/kitchen-foods.ts';
import { volumeOf, type HouseholdMeasure } from '../foods/sr26.ts';
import type { Amount, CountName, Unit } from './amounts.ts';

/** Weight of what a line states, g, with the range that it may have. */
export type Grams = { readonly value: number; readonly low: number; readonly high: number };

export type Size = 'small' | 'medium' | 'large';

const times = (amount: Amount, one: Grams): Grams => ({
  value: amount.value * one.value,
  low: amount.low * one.low,
  high: amount.high * one.high,
});
const around = (value: number, share: number): Grams => ({
  value,
  low: value * (1 - share),
  high: value * (1 + share),
});
const within = (value: number, low: number, high: number): Grams => ({ value, low, high });

/** Household measures of weights of things differ by so much (common practice). */
const PIECE_SPREAD = 0.2;
const CUP_SPREAD = 0.05;

type Things = Partial<Record<CountName | Size | 'whole', Grams>>;

/** Rules of thumb where the table has no measure: g of one, by the number of the food. */
const THINGS: Readonly<Record<string, Things>> = {
  '11215': {
    whole: within(40, 25, 60),
    head: within(40, 25, 60),
    bulb: within(40, 25, 60),
    small: within(2, 2, 3),
    large: within(5, 4, 6),
  },
  '11216': {
    whole: within(25, 15, 50),
    piece: within(15, 8, 25),
    thumb: within(15, 10, 20),
    knob: within(20, 10, 30),
    inch: within(12, 8, 16),
    cm: within(5, 3, 7),
  },
  '11677': { whole: within(25, 15, 45), large: within(45, 35, 60), small: within(15, 10, 20) },
  '11282': { whole: within(110, 70, 150) },
  '11291': { bunch: within(100, 75, 125), stalk: within(15, 10, 25) },
  '11297': { bunch: within(50, 25, 70), handful: within(15, 8, 25) },
  '11165': { bunch: within(40, 25, 100), handful: within(15, 8, 25) },
  '11156': { bunch: within(25, 15, 30), handful: within(10, 5, 15) },
  '02044': {
    bunch: within(30, 20, 60),
    handful: within(12, 8, 20),
    leaf: within(0.5, 0.3, 0.8),
    sprig: within(2, 1, 3),
  },
  '02049': { sprig: within(0.8, 0.5, 1.5), bunch: within(20, 15, 30) },
  '02063': { sprig: within(2, 1, 4), bunch: within(20, 15, 30) },
  '02064': {
    bunch: within(30, 20, 60),
    handful: within(10, 5, 20),
    sprig: within(1.5, 1, 3),
    leaf: within(0.3, 0.1, 0.5),
  },
  '02045': { packet: within(20, 15, 30), bunch: within(25, 15, 40), sprig: within(1, 0.5, 2) },
  '02004': { whole: within(0.2, 0.1, 0.5), leaf: within(0.2, 0.1, 0.5) },
  '02038': { leaf: within(0.5, 0.2, 1), whole: within(0.5, 0.2, 1) },
  '02010': { stick: within(3, 2, 5), whole: within(3, 2, 5) },
  '02002': { whole: within(1.5, 1, 2) },
  '02011': { whole: within(0.1, 0.05, 0.2) },
  '02006': { whole: within(0.2, 0.1, 0.4) },
  '02025': { whole: within(5, 4, 7) },
  '11143': {
    whole: within(40, 17, 64),
    stick: within(40, 17, 64),
    bunch: within(400, 300, 600),
    head: within(400, 300, 600),
  },
  '11141': { whole: within(500, 300, 800), bulb: within(500, 300, 800) },
  '11124': { bunch: within(300, 250, 500) },
  '11352': { whole: within(170, 100, 250) },
  '11507': { whole: within(200, 130, 300), large: within(300, 230, 400), medium: within(200, 130, 250) },
  '11821': { whole: within(119, 74, 164) },
  '11819': { whole: within(20, 5, 45), small: within(5, 2, 10), large: within(45, 30, 60) },
  '11670': { whole: within(20, 5, 45), small: within(5, 2, 10) },
  '11962': { whole: within(1, 0.5, 3) },
  '11209': {
    whole: within(300, 200, 500),
    large: within(450, 350, 550),
    medium: within(300, 250, 400),
    small: within(200, 150, 250),
  },
  '11109': { head: within(908, 700, 1250), whole: within(908, 700, 1250) },
  '11112': { head: within(839, 567, 1134), whole: within(839, 567, 1134) },
  '11114': { head: within(700, 500, 1000), whole: within(700, 500, 1000) },
  '11090': { head: within(350, 250, 600), whole: within(350, 250, 600) },
  '11135': { whole: within(575, 265, 840) },
  '11233': { bunch: within(250, 150, 350), handful: within(30, 20, 50), leaf: within(25, 15, 40) },
  '11457': { handful: within(30, 20, 50), bag: within(200, 150, 300) },
  '11246': { whole: within(120, 89, 200), stalk: within(150, 89, 200) },
  '11957': { whole: within(234, 180, 300), bulb: within(234, 180, 300) },
  '11972': { whole: within(15, 10, 25), stalk: within(15, 10, 25) },
  '11485': { whole: within(900, 600, 1300) },
  '11643': { whole: within(1000, 700, 1500) },
  '11422': { whole: within(1500, 1000, 3000) },
  '11205': { whole: within(300, 200, 400) },
  '11167': { whole: within(102, 73, 143) },
  '11260': { handful: within(70, 50, 100), whole: within(18, 10, 23) },
  '11937': {
    jar: within(360, 190, 400),
    whole: within(65, 35, 135),
    small: within(15, 8, 35),
  },
  '11268': { whole: within(3.6, 2, 6) },
  '09156': { whole: within(6, 3, 9) },
  '09216': { whole: within(6, 4, 10) },
  '09150': { whole: within(58, 58, 84) },
  '09152': { whole: within(48, 30, 60) },
  '09160': { whole: within(30, 20, 44) },
  '09206': { whole: within(86, 60, 110) },
  '09037': { whole: within(150, 130, 201) },
  '09266': { whole: within(905, 700, 1100), slice: within(84, 56, 120) },
  '05062': {
    whole: within(170, 120, 272),
    breast: within(170, 120, 272),
    fillet: within(170, 120, 230),
    large: within(230, 190, 280),
    small: within(120, 100, 150),
    piece: within(170, 120, 272),
  },
  '05096': {
    whole: within(90, 70, 120),
    thigh: within(90, 70, 120),
    fillet: within(90, 70, 120),
    piece: within(90, 70, 120),
  },
  '05091': { whole: within(115, 90, 150), thigh: within(115, 90, 150) },
  '05066': { whole: within(75, 60, 100), drumstick: within(75, 60, 100) },
  '05006': { whole: within(1100, 800, 1400) },
  '10123': {
    whole: within(28, 15, 35),
    rasher: within(28, 15, 35),
    slice: within(28, 15, 35),
    strip: within(28, 15, 35),
  },
  '10062': { whole: within(170, 120, 220), chop: within(170, 120, 220) },
  '13929': { whole: within(220, 170, 300), steak: within(220, 170, 300) },
  '07063': { whole: within(60, 25, 100), link: within(60, 25, 100) },
  '07036': { whole: within(100, 85, 115), link: within(100, 85, 115) },
  '07013': { whole: within(100, 80, 130), link: within(100, 80, 130) },
  '07970': { whole: within(370, 250, 400), link: within(110, 80, 150) },
  '07019': { whole: within(60, 50, 110), link: within(60, 50, 110) },
  '15236': { whole: within(150, 115, 198), fillet: within(150, 115, 198) },
  '15268': { whole: within(150, 115, 200), fillet: within(150, 115, 200) },
  '15002': { whole: within(4, 3, 5), fillet: within(4, 3, 5), tin: within(30, 25, 35) },
  '15121': { tin: within(112, 95, 142) },
  '15119': { tin: within(112, 95, 142) },
  '15088': { tin: within(90, 80, 110) },
  '15260': { tin: within(160, 120, 300) },
  '11172': { tin: within(265, 150, 300) },
  '16145': { tin: within(240, 230, 270) },
  '16358': { tin: within(240, 230, 260), jar: within(230, 200, 450) },
  ...Object.fromEntries(
    ['16070', '16015', '16050', '16025', '16072', '16020', '16038', '16146'].map((number) => [
      number,
      { tin: within(240, 220, 270) },
    ]),
  ),
  '11546': { tin: within(150, 70, 200) },
  '11547': {
    jar: within(690, 500, 700),
    bottle: within(690, 500, 700),
    carton: within(500, 400, 700),
    packet: within(500, 400, 700),
  },
  '12118': { tin: within(400, 385, 415) },
  '01214': { tin: within(400, 340, 410) },
  '01095': { tin: within(397, 380, 400) },
  '13348': { tin: within(340, 200, 340) },
  '11241': { whole: within(250, 150, 400) },
  '11264': { tin: within(160, 110, 230) },
  '01145': { knob: within(15, 10, 25), stick: within(113, 113, 113) },
  '01001': { knob: within(15, 10, 25), stick: within(113, 113, 113), piece: within(15, 10, 25) },
  '01026': { ball: within(125, 110, 150), whole: within(125, 110, 150) },
  '01009': { slice: within(25, 20, 30) },
  '01017': { packet: within(226, 180, 280), block: within(226, 180, 280), tub: within(200, 180, 280) },
  '01019': { packet: within(200, 170, 225), block: within(200, 170, 225) },
  '16426': { block: within(400, 280, 450), packet: within(400, 280, 450) },
  '18375': { packet: within(7, 7, 7.5), sachet: within(7, 7, 7.5) },
  '18374': { cube: within(42, 40, 42), packet: within(42, 40, 42) },
  '18369': { packet: within(15, 15, 17), sachet: within(15, 15, 17) },
  '19335': { packet: within(8, 8, 10), sachet: within(8, 8, 10), cube: within(4, 3, 5) },
  '19177': {
    leaf: within(1.7, 1.6, 2),
    sheet: within(1.7, 1.6, 2),
    packet: within(7, 7, 9),
    sachet: within(7, 7, 9),
  },
  '19904': { bar: within(100, 90, 100), packet: within(100, 90, 100) },
  '19080': { bar: within(100, 90, 100), packet: within(200, 170, 340), bag: within(340, 200, 340) },
  '20109': { nest: within(60, 50, 70) },
  '20420': { packet: within(500, 400, 500), handful: within(100, 60, 120) },
  '20499': {
    packet: within(500, 400, 500),
    sheet: within(20, 16, 24),
    whole: within(20, 16, 24),
    box: within(454, 400, 500),
    handful: within(60, 40, 90),
  },
  '20133': { packet: within(250, 200, 400), nest: within(50, 40, 60) },
  '02075': { packet: within(28, 25, 35), sachet: within(28, 25, 35) },
  '02076': { packet: within(35, 28, 40), sachet: within(35, 28, 40) },
  '11463': { packet: within(284, 250, 450), box: within(284, 250, 450), cube: within(30, 25, 50) },
  '12087': { handful: within(30, 20, 40) },
  '18069': { slice: within(28, 20, 40), whole: within(28, 20, 40) },
  '18075': { slice: within(32, 25, 45), whole: within(32, 25, 45) },
  '18029': { slice: within(30, 20, 60), whole: within(250, 200, 300) },
  '18364': { whole: within(49, 30, 72), small: within(30, 25, 35), large: within(72, 60, 90) },
};

/** Rules of thumb for any food, g of one. A tin is the usual one of Europe. */
const ANY: Things = {
  tin: within(400, 380, 425),
  handful: within(30, 15, 50),
  sprig: within(1.5, 0.5, 3),
  rasher: within(28, 15, 35),
  tub: within(200, 150, 250),
  fillet: within(150, 100, 200),
  steak: within(200, 150, 250),
  chop: within(170, 120, 220),
  link: within(60, 25, 100),
  ball: within(125, 100, 150),
  floret: within(15, 8, 30),
  scoop: within(30, 25, 35),
  wedge: within(10, 6, 35),
};
/** A tin of what is drained before it is used: what is left of its net weight (common practice). */
const DRAINED_SHARE = within(0.6, 0.55, 0.67);

/** Foods whose row is what is left when the liquid is poured off. */
export const isDrainedRow = (food: Food): boolean =>
  /drained/i.test(food.name) ||
  (kitchenFoods().groups.get(food) === 'Legumes and Legume Products' && /cooked, boiled/i.test(food.name));

/**
 * Food from a tin whose net weight is stated: all of it, or what drains leaves where the row is of drained food.
 *
 * @param netG net weight of the tins, g
 */
export const ofTin = (food: Food, netG: Amount): Grams =>
  isDrainedRow(food) ? times(netG, DRAINED_SHARE) : { ...netG };

const SIZE_WORDS: Readonly<Record<Size, RegExp>> = {
  small: /\bsmall\b/i,
  medium: /\bmedium\b/i,
  large: /\blarge\b/i,
};
/** Measures that are part of a thing, or many of it. */
const NOT_WHOLE =
  /slice|ring|wedge|strip|cup|tbsp|tsp|tablespoon|teaspoon|oz|lb|package|serving|crust|yield|sprigs|without|bag|can\b|box|packet|pat\b|stick/i;

/** Things that come off a machine, all alike. */
const PACKED: ReadonlySet<CountName> = new Set(['packet', 'sachet', 'tin', 'bar', 'box', 'block']);

/** One of the things that the table weighs, of the asked size. */
function tablePiece(food: Food, name: CountName | undefined, size: Size | undefined): Grams | undefined {
  const measures = measuresOf(food);
  const of = (pattern: RegExp): readonly HouseholdMeasure[] =>
    measures.filter((measure) => pattern.test(measure.name) && volumeOf(measure) === undefined);
  const group =
    name === undefined
      ? measures.filter((measure) => volumeOf(measure) === undefined && !NOT_WHOLE.test(measure.name))
      : of(
          new RegExp(
            `\\b${name === 'tin' ? 'can' : name === 'rasher' ? 'slice' : name}(?:s|es)?\\b|^${name === 'leaf' ? 'leaves' : name}`,
            'i',
          ),
        );
  if (group.length === 0) return undefined;
  const sized = size && group.find((measure) => SIZE_WORDS[size].test(measure.name));
  if (sized) return around(sized.grams, 0.1);
  if (name && PACKED.has(name)) return around(group[0]!.grams, 0.02);
  const middle =
    group.find((measure) => SIZE_WORDS.medium.test(measure.name)) ??
    group.find((measure) => !/small|large|thin|thick|extra|jumbo/i.test(measure.name)) ??
    group[0]!;
  const ends = group
    .filter(({ name: words }) => /small|large/i.test(words) && !/extra/i.test(words))
    .map(({ grams }) => grams);
  return ends.length > 1
    ? within(middle.grams, Math.min(middle.grams, ...ends), Math.max(middle.grams, ...ends))
    : around(middle.grams, PIECE_SPREAD);
}

/** A large hen's egg where nothing is said is what US recipes mean, a medium one what others do: both are in the range. */
const EGG = within(50, 44, 56);

/** @returns weight of one thing of a food, g; `undefined` where neither the table nor a rule of thumb says it */
export function pieceG(food: Food, name: CountName | undefined, size: Size | undefined): Grams | undefined {
  if (food.number === '01123' && (name === undefined || name === 'piece') && size === undefined) return EGG;
  const own = food.number === undefined ? undefined : THINGS[food.number];
  const plain = name === 'piece' || name === 'half' ? undefined : name;
  const asked: readonly (Grams | undefined)[] = [
    name === undefined && size ? own?.[size] : undefined,
    name === undefined && size ? tablePiece(food, undefined, size) : undefined,
    name && own?.[name],
    plain === undefined ? own?.whole : undefined,
    name === 'tin' ? ANY.tin : undefined,
    tablePiece(food, plain, size),
    name === 'rasher' ? own?.slice : undefined,
    name === 'sachet' ? (own?.packet ?? tablePiece(food, 'packet', size)) : undefined,
    food.number === undefined && plain === undefined && food.gPerPiece !== undefined
      ? around(food.gPerPiece, PIECE_SPREAD)
      : undefined,
    food.number === undefined &&
    (plain === 'cube' ||
      plain === 'leaf' ||
      plain === 'packet' ||
      plain === 'sheet' ||
      plain === 'bunch' ||
      plain === 'jar') &&
    food.gPerPiece !== undefined
      ? around(food.gPerPiece, PIECE_SPREAD)
      : undefined,
    plain && ANY[plain],
  ];
  const one = asked.find(Boolean);
  if (one && size && name !== undefined) {
    // A large tin or a small bunch: the end of the range that it is nearer to.
    if (size === 'large') return within(one.high, one.value, one.high * 1.2);
    if (size === 'small') return within(one.low, one.low * 0.8, one.value);
  }
  return one;
}

/** Words of a line that name a sort of a food, by how the table's measure of one begins. */
const SORTS: readonly (readonly [words: RegExp, measure: RegExp])[] = [
  [/\bcherry|\bgrape tom|kirschtom|cherrytom|cocktailtom/i, /^cherry/i],
  [/\bplum tom|\broma\b|\bsan marzano|eiertom|flaschentom/i, /^plum tomato/i],
];

/** @returns weight of one thing of the sort that the line names, g: a cherry tomato is no tomato */
function sortG(food: Food, words: string): Grams | undefined {
  const sort = SORTS.find(([named]) => named.test(words))?.[1];
  const measure = sort && measuresOf(food).find(({ name }) => sort.test(name));
  return measure && around(measure.grams, PIECE_SPREAD);
}

/** Words of a line that choose among the cups of the table. */
const CUTS = [
  'chopped',
  'diced',
  'sliced',
  'slices',
  'grated',
  'shredded',
  'mashed',
  'cubes',
  'cubed',
  'whole',
  'halves',
  'crumbled',
  'ground',
  'pureed',
  'packed',
  'unpacked',
  'melted',
  'sifted',
  'unsifted',
  'pieces',
  'drained',
  'cherry',
  'sections',
  'crumbs',
  'leaves',
  'slivered',
] as const;

/** Density where the table has no volume, g per ml (common practice). */
function usualDensity(food: Food): Grams {
  const group = kitchenFoods().groups.get(food) ?? '';
  if (food.gPerMl !== undefined) return around(food.gPerMl, CUP_SPREAD);
  if (group === 'Fats and Oils') return around(0.92, 0.05);
  if (food.composition.waterG > 85 && /juice|milk|water|stock|sauce|vinegar|wine|beer|cream/i.test(food.name))
    return around(1, 0.05);
  if (group === 'Spices and Herbs')
    return /dried|leaf/i.test(food.name) ? within(0.2, 0.1, 0.3) : within(0.45, 0.3, 0.6);
  if (/Vegetables|Fruits/.test(group)) return within(0.55, 0.35, 0.8);
  if (/Beef|Pork|Poultry|Lamb|Fish|Finfish|Sausages/.test(group)) return within(0.6, 0.5, 0.95);
  return within(0.65, 0.4, 0.95);
}

/** @returns g of one ml of the food as it is measured in a cup, by the cut that the words of the line name */
export function densityOf(food: Food, words: string): Grams {
  const cups = measuresOf(food).flatMap((measure) => {
    const ml = volumeOf(measure);
    return ml === undefined || /yield|before|whipped/i.test(measure.name)
      ? []
      : [{ name: measure.name, gPerMl: measure.grams / ml, ml }];
  });
  if (cups.length === 0) return usualDensity(food);
  const largest = Math.max(...cups.map(({ ml }) => ml));
  const of = cups.filter(({ ml }) => ml >= Math.min(largest, 200));
  const cut = CUTS.filter((word) => new RegExp(`\\b${word}`, 'i').test(words));
  const sugar = /brown/i.test(food.name) ? ['packed'] : [];
  const chosen = [...sugar, ...cut]
    .map((word) =>
      of.find(
        ({ name }) =>
          new RegExp(`\\b${word.replace(/d$|s$/, '')}`, 'i').test(name) &&
          !(word === 'packed' && /unpacked/i.test(name)),
      ),
    )
    .find(Boolean);
  const plain = of.find(({ name }) => !/,| [a-z]/i.test(name.split('(')[0]!.trim()));
  const best = chosen ?? plain ?? of[0]!;
  const all = of.map(({ gPerMl }) => gPerMl);
  return chosen || of.length === 1
    ? around(best.gPerMl, CUP_SPREAD)
    : within(best.gPerMl, Math.min(...all), Math.max(...all));
}

/**
 * Weighs an amount of a food.
 *
 * @param words the line, whose words choose among the table's cups ("chopped", "grated")
 * @param size the size that the line names
 * @returns g with their range; `undefined` where nobody can say what one of the unit weighs
 */
export function weigh(
  food: Food,
  amount: Amount,
  unit: Unit | undefined,
  { words, size, fullness = 1 }: { words: string; size?: Size | undefined; fullness?: number },
): Grams | undefined {
  if (unit?.kind === 'mass') return times(amount, within(unit.g, unit.g, unit.g));
  if (unit?.kind === 'volume') {
    const density = densityOf(food, words);
    const ml = within(
      unit.ml * fullness,
      (unit.low ?? unit.ml) * fullness,
      (unit.high ?? unit.ml) * fullness,
    );
    return times(amount, within(ml.value * density.value, ml.low * density.low, ml.high * density.high));
  }
  const one = (unit === undefined ? sortG(food, words) : undefined) ?? pieceG(food, unit?.name, size);
  return one && times(amount, one);
}
