import { ALLERGENS, type Allergen } from '../planning/model/allergens.ts';
import { DIETS, type Diet } from '../planning/model/diets.ts';
import type { Wish } from '../planning/menu/wishes.ts';
import type {
  ResupplyKind,
  APPETITES,
  BARRIERS,
  COOKING_CLASSES,
  CanisterGas,
  CookAfter,
  DayKind,
  FAT_CLASSES,
  FillPreference,
  FuelKind,
  KITCHEN_UNITS,
  LEG_BASES,
  LotKind,
  MealKind,
  MealStop,
  PROCESSES,
  PlannedWay,
  PortionSize,
  ServingStyle,
  TRAIL_NOTE_KINDS,
  Verdict,
  TRAY_FEELS,
  Taste,
  WATER_FINDINGS,
  WEEKDAYS,
  WaterKind,
} from '../planning/model/words.ts';
import { say, text, type Text } from '../texts/say.ts';

/* How the codes of the core are called. */

/** How each meal is called. */
export const MEAL_WORDS: Readonly<Record<MealKind, Text>> = {
  breakfast: text('breakfast'),
  lunch: text('lunch'),
  snack: text('snack'),
  dinner: text('dinner'),
  drink: text('drink'),
};

/** How the water of each kind is called. */
export const WATER_WORDS: Readonly<Record<WaterKind, Text>> = {
  boiling: text('boiling'),
  hot: text('hot'),
  cold: text('cold'),
  none: text('none'),
};

/** How each is called. */
export const CANISTER_GAS_WORDS: Readonly<Record<CanisterGas, Text>> = {
  isobutane: text('isobutane with propane'),
  butane: text('butane, with or without propane'),
};

/** How each fuel is called. */
export const FUEL_WORDS: Readonly<Record<FuelKind, Text>> = {
  'canister-gas': text('canister gas'),
  naphtha: text('white gas (naphtha)'),
  kerosene: text('kerosene'),
  ethanol: text('alcohol (ethanol)'),
};

/** How each way of drying is called. */
export const PROCESS_WORDS: Readonly<Record<(typeof PROCESSES)[number], Text>> = {
  'freeze-dried': text('freeze-dried'),
  dehydrated: text('dehydrated'),
};

/** How each barrier is called. */
export const BARRIER_WORDS: Readonly<Record<(typeof BARRIERS)[number], Text>> = {
  'foil pouch': text('foil pouch'),
  'plastic pouch': text('plastic pouch'),
  'jar or can': text('jar or can'),
};

/** How each class is called. */
export const FAT_CLASS_WORDS: Readonly<Record<(typeof FAT_CLASSES)[number], Text>> = {
  lean: text('lean'),
  middling: text('medium-fat'),
  fatty: text('high-fat'),
};

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

/** How each finding is called. */
export const WATER_FINDING_WORDS: Readonly<Record<(typeof WATER_FINDINGS)[number], Text>> = {
  'much liquid left': text('much liquid left'),
  'some liquid left': text('some liquid left'),
  'just right': text('just right'),
  'a little dry': text('a little dry'),
  'too dry': text('too dry'),
};

/** How each finding is called. */
export const TRAY_FEEL_WORDS: Readonly<Record<(typeof TRAY_FEELS)[number], Text>> = {
  'not felt': text('not checked'),
  'dry through': text('dry all the way through'),
  'cold spot': text('cold spot'),
  'damp or soft spot': text('damp or soft spot'),
};

/** How each answer is called. */
export const APPETITE_WORDS: Readonly<Record<(typeof APPETITES)[number], Text>> = {
  'too little': text('too little'),
  right: text('about right'),
  'too much': text('too much'),
};

/** How each verdict on a dish is called. */
export const VERDICT_WORDS: Readonly<Record<Verdict, Text>> = {
  liked: text('liked'),
  'not liked': text('not liked'),
  'too wet': text('too wet'),
  'too dry': text('too dry'),
  'too little': text('not enough'),
  'too much': text('too much'),
};

/** How each is called. */
export const TRAIL_NOTE_WORDS: Readonly<Record<(typeof TRAIL_NOTE_KINDS)[number], Text>> = {
  eaten: text('eaten'),
  'left over': text('left over'),
  'brought home': text('brought home'),
  bought: text('bought'),
  'bought, label read': text('bought, label read'),
  ...VERDICT_WORDS,
};

/** How each is called. */
export const LEG_BASIS_WORDS: Readonly<Record<(typeof LEG_BASES)[number], Text>> = {
  route: text('route'),
  'by hand': text('by hand'),
  'hours only': text('hours only'),
};

/** How each is called where food is marked as not there yet. */
export const PLANNED_WAY_WORDS: Readonly<Record<PlannedWay, Text>> = {
  buy: text('to buy'),
  dry: text('to dry'),
};

/** How each is called. */
export const FILL_PREFERENCE_WORDS: Readonly<Record<FillPreference, Text>> = {
  'dry first': text('dry first'),
  'buy only': text('buy only'),
  cheapest: text('cheapest'),
  lightest: text('lightest'),
};

/** How each is called. */
export const LOT_KIND_WORDS: Readonly<Record<LotKind, Text>> = {
  main: text('main dish'),
  side: text('side'),
  extra: text('extra'),
  drink: text('drink'),
};

/** How each is called. */
export const COOK_AFTER_WORDS: Readonly<Record<CookAfter, Text>> = {
  cook: text('cook after rehydrating'),
  'boil hard': text('boil hard for 10 minutes'),
};

/** How each is called. */
export const SERVING_STYLE_WORDS: Readonly<Record<ServingStyle, Text>> = {
  'own pouch': text('own pouch'),
  'shared pot': text('shared pot'),
  mixed: text('mixed'),
};

/** How each is called. */
export const MEAL_STOP_WORDS: Readonly<Record<MealStop, Text>> = {
  stove: text('with the stove'),
  'no stove': text('without a stove'),
  'no stop': text('without a stop'),
};

/** How each is called. */
export const DAY_KIND_WORDS: Readonly<Record<DayKind, Text>> = {
  rest: text('rest day'),
  short: text('short day'),
  'hut night': text('hut night'),
  town: text('town day'),
  flight: text('flight day'),
  'fire ban': text('fire ban'),
};

/** What each means. */
export const DAY_KIND_MEANS: Readonly<Record<DayKind, Text>> = {
  rest: text('no walking'),
  short: text('half the walking'),
  'hut night': text('dinner and next breakfast served'),
  town: text('no walking; meals served from lunch to next breakfast'),
  flight: text('no walking, no stove'),
  'fire ban': text('no stove'),
};

/** How each is called. */
export const PORTION_SIZE_WORDS: Readonly<Record<PortionSize, Text>> = {
  child: text('child'),
  small: text('small'),
  usual: text('usual'),
  large: text('large'),
};

/** How each is called. */
export const TASTE_WORDS: Readonly<Record<Taste, Text>> = {
  never: text('never'),
  'rather not': text('rather not'),
  gladly: text('gladly'),
};

/** How each is called. */
export const RESUPPLY_WORDS: Readonly<Record<ResupplyKind, Text>> = {
  box: text('box sent ahead'),
  shop: text('shop there'),
  cache: text('cache left before'),
};

/** How each menu that can be chosen is called. */
export const CHOICE_WORDS: Readonly<Record<Wish | 'best found', Text>> = {
  'best found': text('best found'),
  lightest: text('lightest'),
  'most varied': text('most varied'),
  'oldest first': text('oldest first'),
  'simplest at the stove': text('simplest at the stove'),
  'one dish for all': text('one dish for all'),
  'own pouches': text('own pouches'),
};

export const ALLERGEN_WORDS: Readonly<Record<Allergen, Text>> = {
  milk: text('milk'),
  egg: text('egg'),
  fish: text('fish'),
  crustaceans: text('crustacean shellfish'),
  nuts: text('tree nuts'),
  peanut: text('peanut'),
  wheat: text('wheat'),
  soy: text('soy'),
  sesame: text('sesame'),
  gluten: text('cereals containing gluten'),
  celery: text('celery'),
  mustard: text('mustard'),
  sulphites: text('sulphites'),
  lupin: text('lupin'),
  molluscs: text('molluscs'),
};

export const DIET_WORDS: Readonly<Record<Diet, Text>> = {
  vegetarian: text('vegetarian'),
  vegan: text('vegan'),
  'no-pork': text('no pork'),
  'no-beef': text('no beef'),
  'no-alcohol': text('no alcohol'),
  halal: text('halal (according to the cook)'),
  kosher: text('kosher (according to the cook)'),
};

export const allergenLabel = (code: Allergen): string => say(ALLERGEN_WORDS[code]);
export const dietLabel = (code: Diet): string => say(DIET_WORDS[code]);

/** To choose from, in the order of the laws. */
export const ALLERGEN_CHOICES = ALLERGENS.map((code) => ({ code, label: ALLERGEN_WORDS[code] }));
export const DIET_CHOICES = DIETS.map((code) => ({ code, label: DIET_WORDS[code] }));
