import { text, type Text } from '../../texts/say.ts';

/** The meals of a day, in the order in which they are eaten. */
export const MEAL_KINDS = ['breakfast', 'lunch', 'snack', 'dinner', 'drink'] as const;
export type MealKind = (typeof MEAL_KINDS)[number];
/** How each meal is called. */
export const MEAL_WORDS: Readonly<Record<MealKind, Text>> = {
  breakfast: text('breakfast'),
  lunch: text('lunch'),
  snack: text('snack'),
  dinner: text('dinner'),
  drink: text('drink'),
};

/** The meals a trip can begin or end with. A snack goes with lunch, a drink with dinner. */
export const MAIN_MEALS = ['breakfast', 'lunch', 'dinner'] as const;
export type MainMeal = (typeof MAIN_MEALS)[number];

/** What is poured on a serving: boiling, hot (below the boil), cold, or nothing at all. */
export const WATER_KINDS = ['boiling', 'hot', 'cold', 'none'] as const;
export type WaterKind = (typeof WATER_KINDS)[number];
/** How the water of each kind is called. */
export const WATER_WORDS: Readonly<Record<WaterKind, Text>> = {
  boiling: text('boiling'),
  hot: text('hot'),
  cold: text('cold'),
  none: text('none'),
};

/** What is in a canister besides propane; it sets how much cold the stove takes. */
export const CANISTER_GASES = ['isobutane', 'butane'] as const;
export type CanisterGas = (typeof CANISTER_GASES)[number];
/** How each is called. */
export const CANISTER_GAS_WORDS: Readonly<Record<CanisterGas, Text>> = {
  isobutane: text('isobutane with propane'),
  butane: text('butane, with or without propane'),
};

export const FUEL_KINDS = ['canister-gas', 'naphtha', 'kerosene', 'ethanol'] as const;
export type FuelKind = (typeof FUEL_KINDS)[number];
/** How each fuel is called. */
export const FUEL_WORDS: Readonly<Record<FuelKind, Text>> = {
  'canister-gas': text('canister gas'),
  naphtha: text('white gas (naphtha)'),
  kerosene: text('kerosene'),
  ethanol: text('alcohol (ethanol)'),
};

export const PROCESSES = ['freeze-dried', 'dehydrated'] as const;
/** How each way of drying is called. */
export const PROCESS_WORDS: Readonly<Record<(typeof PROCESSES)[number], Text>> = {
  'freeze-dried': text('freeze-dried'),
  dehydrated: text('dehydrated'),
};

export const BARRIERS = ['foil pouch', 'plastic pouch', 'jar or can'] as const;
/** How each barrier is called. */
export const BARRIER_WORDS: Readonly<Record<(typeof BARRIERS)[number], Text>> = {
  'foil pouch': text('foil pouch'),
  'plastic pouch': text('plastic pouch'),
  'jar or can': text('jar or can'),
};

export const FAT_CLASSES = ['lean', 'middling', 'fatty'] as const;
/** How each class is called. */
export const FAT_CLASS_WORDS: Readonly<Record<(typeof FAT_CLASSES)[number], Text>> = {
  lean: text('lean'),
  middling: text('medium-fat'),
  fatty: text('high-fat'),
};

export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
/** How each day of the week is called. */
export const WEEKDAY_WORDS: Readonly<Record<(typeof WEEKDAYS)[number], Text>> = {
  Mon: text('Mon'),
  Tue: text('Tue'),
  Wed: text('Wed'),
  Thu: text('Thu'),
  Fri: text('Fri'),
  Sat: text('Sat'),
  Sun: text('Sun'),
};

/** What a food has to be cooked to: the classes of the safe minimum internal temperatures (USDA FSIS). */
export const COOKING_CLASSES = [
  'poultry',
  'minced meat',
  'whole meat',
  'fish',
  'egg',
  'leftovers',
  'other',
] as const;
/** How each class is called. */
export const COOKING_CLASS_WORDS: Readonly<Record<(typeof COOKING_CLASSES)[number], Text>> = {
  poultry: text('poultry'),
  'minced meat': text('minced meat'),
  'whole meat': text('whole meat'),
  fish: text('fish'),
  egg: text('egg'),
  leftovers: text('leftovers'),
  other: text('other'),
};

/** In what an ingredient is measured: by weight, by volume, or by the piece. */
export const KITCHEN_UNITS = [
  'g',
  'kg',
  'oz',
  'lb',
  'ml',
  'l',
  'tsp',
  'tbsp',
  'cup',
  'fl oz',
  'qt',
  'piece',
] as const;
/** How each unit is called. */
export const KITCHEN_UNIT_WORDS: Readonly<Record<(typeof KITCHEN_UNITS)[number], Text>> = {
  g: text('g'),
  kg: text('kg'),
  oz: text('oz'),
  lb: text('lb'),
  ml: text('ml'),
  l: text('l'),
  tsp: text('tsp'),
  tbsp: text('tbsp'),
  cup: text('cup'),
  'fl oz': text('fl oz'),
  qt: text('qt'),
  piece: text('piece'),
};

/** How a rehydrated serving turned out, from far too wet to far too dry. */
export const WATER_FINDINGS = [
  'much liquid left',
  'some liquid left',
  'just right',
  'a little dry',
  'too dry',
] as const;
/** How each finding is called. */
export const WATER_FINDING_WORDS: Readonly<Record<(typeof WATER_FINDINGS)[number], Text>> = {
  'much liquid left': text('much liquid left'),
  'some liquid left': text('some liquid left'),
  'just right': text('just right'),
  'a little dry': text('a little dry'),
  'too dry': text('too dry'),
};

/** What a finger finds in the middle of a tray, since weight alone does not tell where the water sits. */
export const TRAY_FEELS = ['not felt', 'dry through', 'cold spot', 'damp or soft spot'] as const;
/** How each finding is called. */
export const TRAY_FEEL_WORDS: Readonly<Record<(typeof TRAY_FEELS)[number], Text>> = {
  'not felt': text('not checked'),
  'dry through': text('dry all the way through'),
  'cold spot': text('cold spot'),
  'damp or soft spot': text('damp or soft spot'),
};

/** How the food of a trip was to one eater. */
export const APPETITES = ['too little', 'right', 'too much'] as const;
/** How each answer is called. */
export const APPETITE_WORDS: Readonly<Record<(typeof APPETITES)[number], Text>> = {
  'too little': text('too little'),
  right: text('about right'),
  'too much': text('too much'),
};

/**
 * What became of pouches on the trail: opened and eaten, so much of what was opened thrown away, or carried home unopened; and of planned food in the shop: bought,
 * with or without a look whether its label lists the allergens that were planned with.
 */
export const TRAIL_NOTE_KINDS = [
  'eaten',
  'left over',
  'brought home',
  'bought',
  'bought, label read',
] as const;
/** How each is called. */
export const TRAIL_NOTE_WORDS: Readonly<Record<(typeof TRAIL_NOTE_KINDS)[number], Text>> = {
  eaten: text('eaten'),
  'left over': text('left over'),
  'brought home': text('brought home'),
  bought: text('bought'),
  'bought, label read': text('bought, label read'),
};

/** How much a notice matters, the gravest for the plan first: it cannot work so, somebody can be hurt, look at it, doubtful data, information. */
export const NOTICE_SEVERITIES = ['attention', 'warning', 'caution', 'check', 'note'] as const;
export type NoticeSeverity = (typeof NOTICE_SEVERITIES)[number];

/** The pages of a trip on which something can be done about a notice. */
export const NOTICE_PAGES = ['party', 'route', 'menu', 'loads', 'water', 'missing'] as const;
export type NoticePage = (typeof NOTICE_PAGES)[number];

/** What a leg is known from. */
export const LEG_BASES = ['route', 'by hand', 'hours only'] as const;
/** How each is called. */
export const LEG_BASIS_WORDS: Readonly<Record<(typeof LEG_BASES)[number], Text>> = {
  route: text('route'),
  'by hand': text('by hand'),
  'hours only': text('hours only'),
};

/** Where food and fuel come from on the way. */
export const RESUPPLY_KINDS = ['box', 'shop', 'cache'] as const;
export type ResupplyKind = (typeof RESUPPLY_KINDS)[number];
/** How each is called. */
export const RESUPPLY_WORDS: Readonly<Record<ResupplyKind, Text>> = {
  box: text('box sent ahead'),
  shop: text('shop there'),
  cache: text('cache left before'),
};

/** How food that is not there yet comes to a trip. */
export const PLANNED_WAYS = ['buy', 'dry'] as const;
export type PlannedWay = (typeof PLANNED_WAYS)[number];
/** How each is called where food is marked as not there yet. */
export const PLANNED_WAY_WORDS: Readonly<Record<PlannedWay, Text>> = {
  buy: text('to buy'),
  dry: text('to dry'),
};

/** What goes first where all that is missing is filled at once. */
export const FILL_PREFERENCES = ['dry first', 'buy only', 'cheapest', 'lightest'] as const;
export type FillPreference = (typeof FILL_PREFERENCES)[number];
/** How each is called. */
export const FILL_PREFERENCE_WORDS: Readonly<Record<FillPreference, Text>> = {
  'dry first': text('dry first'),
  'buy only': text('buy only'),
  cheapest: text('cheapest'),
  lightest: text('lightest'),
};

/** What a lot is on a plate: the dish of a meal, something beside it, what is counted in pieces or spoons and needs no cooking, or something to drink. */
export const LOT_KINDS = ['main', 'side', 'extra', 'drink'] as const;
export type LotKind = (typeof LOT_KINDS)[number];
/** How each is called. */
export const LOT_KIND_WORDS: Readonly<Record<LotKind, Text>> = {
  main: text('main dish'),
  side: text('side'),
  extra: text('extra'),
  drink: text('drink'),
};

/** What has to be done with food after its water has gone in, before anyone eats it. */
export const COOK_AFTER = ['cook', 'boil hard'] as const;
export type CookAfter = (typeof COOK_AFTER)[number];
/** How each is called. */
export const COOK_AFTER_WORDS: Readonly<Record<CookAfter, Text>> = {
  cook: text('cook after rehydrating'),
  'boil hard': text('boil hard for 10 minutes'),
};

/** How food comes to people: each from a pouch of their own, all from one pot, or whichever costs less. */
export const SERVING_STYLES = ['own pouch', 'shared pot', 'mixed'] as const;
export type ServingStyle = (typeof SERVING_STYLES)[number];
/** How each is called. */
export const SERVING_STYLE_WORDS: Readonly<Record<ServingStyle, Text>> = {
  'own pouch': text('own pouch'),
  'shared pot': text('shared pot'),
  mixed: text('mixed'),
};

/** What a meal has to do with: a stove, cold water only, or no stop at all. */
export const MEAL_STOPS = ['stove', 'no stove', 'no stop'] as const;
export type MealStop = (typeof MEAL_STOPS)[number];
/** How each is called. */
export const MEAL_STOP_WORDS: Readonly<Record<MealStop, Text>> = {
  stove: text('with the stove'),
  'no stove': text('without a stove'),
  'no stop': text('without a stop'),
};

/** How much a person takes from a pot, beside others. */
export const PORTION_SIZES = ['child', 'small', 'usual', 'large'] as const;
export type PortionSize = (typeof PORTION_SIZES)[number];
/** How each is called. */
export const PORTION_SIZE_WORDS: Readonly<Record<PortionSize, Text>> = {
  child: text('child'),
  small: text('small'),
  usual: text('usual'),
  large: text('large'),
};

/** What a person says to a dish or an ingredient. */
export const TASTES = ['never', 'rather not', 'gladly'] as const;
export type Taste = (typeof TASTES)[number];
/** How each is called. */
export const TASTE_WORDS: Readonly<Record<Taste, Text>> = {
  never: text('never'),
  'rather not': text('rather not'),
  gladly: text('gladly'),
};
