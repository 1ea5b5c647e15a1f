/** The meals of a day, in the order in which they are eaten. */
export const MEAL_KINDS = ['breakfast', 'lunch', 'snack', 'dinner', 'drink'] as const;
export type MealKind = (typeof MEAL_KINDS)[number];
/** The meals a trip can begin or end with. A snack goes with lunch, a drink with dinner. */
export const MAIN_MEALS = ['breakfast', 'lunch', 'dinner'] as const;
export type MainMeal = (typeof MAIN_MEALS)[number];

/** What is poured on a serving: boiling, hot (below the boil), cold, or nothing at all. */
export const WATER_KINDS = ['boiling', 'hot', 'cold', 'none'] as const;
export type WaterKind = (typeof WATER_KINDS)[number];
/** What is in a canister besides propane; it sets how much cold the stove takes. */
export const CANISTER_GASES = ['isobutane', 'butane'] as const;
export type CanisterGas = (typeof CANISTER_GASES)[number];
export const FUEL_KINDS = ['canister-gas', 'naphtha', 'kerosene', 'ethanol'] as const;
export type FuelKind = (typeof FUEL_KINDS)[number];
export const PROCESSES = ['freeze-dried', 'dehydrated'] as const;
export const BARRIERS = ['foil pouch', 'plastic pouch', 'jar or can'] as const;
export const FAT_CLASSES = ['lean', 'middling', 'fatty'] as const;
export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
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
/** How a rehydrated serving turned out, from far too wet to far too dry. */
export const WATER_FINDINGS = [
  'much liquid left',
  'some liquid left',
  'just right',
  'a little dry',
  'too dry',
] as const;
/** What a finger finds in the middle of a tray, since weight alone does not tell where the water sits. */
export const TRAY_FEELS = ['not felt', 'dry through', 'cold spot', 'damp or soft spot'] as const;
/** How the food of a trip was to one eater. */
export const APPETITES = ['too little', 'right', 'too much'] as const;
/** Whether a dish was liked by one who ate it. */
export const LIKINGS = ['liked', 'not liked'] as const;
export type Liking = (typeof LIKINGS)[number];
/** How a dish was, noted right after it was eaten; these notes move no pouches. */
export const VERDICTS = [...LIKINGS, 'too wet', 'too dry', 'too little', 'too much'] as const;
export type Verdict = (typeof VERDICTS)[number];
/**
 * What became of pouches on the trail: opened and eaten, so much of what was opened thrown away, or carried home unopened; and of planned food in the shop: bought,
 * with or without a look whether its label lists the allergens that were planned with; and how a dish was.
 */
export const TRAIL_NOTE_KINDS = [
  'eaten',
  'left over',
  'brought home',
  'bought',
  'bought, label read',
  ...VERDICTS,
] as const;
/** @returns whether a note says how a dish was, and moves nothing. */
export const isVerdict = (kind: (typeof TRAIL_NOTE_KINDS)[number]): kind is Verdict =>
  (VERDICTS as readonly string[]).includes(kind);
/** How much a notice matters, the gravest for the plan first: it cannot work so, somebody can be hurt, look at it, doubtful data, information. */
export const NOTICE_SEVERITIES = ['attention', 'warning', 'caution', 'check', 'note'] as const;
export type NoticeSeverity = (typeof NOTICE_SEVERITIES)[number];

/** The pages of a trip on which something can be done about a notice. */
export const NOTICE_PAGES = ['party', 'route', 'menu', 'loads', 'water', 'missing'] as const;
export type NoticePage = (typeof NOTICE_PAGES)[number];

/** What a leg is known from. */
export const LEG_BASES = ['route', 'by hand', 'hours only'] as const;
/** Where food and fuel come from on the way. */
export const RESUPPLY_KINDS = ['box', 'shop', 'cache'] as const;
export type ResupplyKind = (typeof RESUPPLY_KINDS)[number];
/** How food that is not there yet comes to a trip. */
export const PLANNED_WAYS = ['buy', 'dry'] as const;
export type PlannedWay = (typeof PLANNED_WAYS)[number];
/** What goes first where all that is missing is filled at once. */
export const FILL_PREFERENCES = ['dry first', 'buy only', 'cheapest', 'lightest'] as const;
export type FillPreference = (typeof FILL_PREFERENCES)[number];
/** What a lot is on a plate: the dish of a meal, something beside it, what is counted in pieces or spoons and needs no cooking, or something to drink. */
export const LOT_KINDS = ['main', 'side', 'extra', 'drink'] as const;
export type LotKind = (typeof LOT_KINDS)[number];
/** What has to be done with food after its water has gone in, before anyone eats it. */
export const COOK_AFTER = ['cook', 'boil hard'] as const;
export type CookAfter = (typeof COOK_AFTER)[number];
/** How food comes to people: each from a pouch of their own, all from one pot, or whichever costs less. */
export const SERVING_STYLES = ['own pouch', 'shared pot', 'mixed'] as const;
export type ServingStyle = (typeof SERVING_STYLES)[number];
/** What of food is told for each day, besides its energy. */
export const NUTRIENTS = ['protein', 'carbohydrate', 'fat', 'fibre', 'sodium'] as const;
export type Nutrient = (typeof NUTRIENTS)[number];
/** How a nutrient stands beside a published range; unknown where too little of the food states it. */
export const NUTRIENT_STANDINGS = ['below', 'within', 'above', 'unknown', 'no range'] as const;
export type NutrientStanding = (typeof NUTRIENT_STANDINGS)[number];
/** Who published the ranges; `nutrition/nutrient-ranges.ts` has them. */
export const RANGE_SOURCES = ['IOM 2005', 'IOM 2006', 'ACSM 2009'] as const;
export type RangeSource = (typeof RANGE_SOURCES)[number];
/** Days that are not walked like the others: no walking, half of it, a night in a hut that serves dinner and breakfast, a day in a town, on a plane, or with open fire forbidden. */
export const DAY_KINDS = ['rest', 'short', 'hut night', 'town', 'flight', 'fire ban'] as const;
export type DayKind = (typeof DAY_KINDS)[number];
/** What a meal has to do with: a stove, cold water only, or no stop at all. */
export const MEAL_STOPS = ['stove', 'no stove', 'no stop'] as const;
export type MealStop = (typeof MEAL_STOPS)[number];
/** How much a person takes from a pot, beside others. */
export const PORTION_SIZES = ['child', 'small', 'usual', 'large'] as const;
export type PortionSize = (typeof PORTION_SIZES)[number];
/** What a person says to a dish or an ingredient. */
export const TASTES = ['never', 'rather not', 'gladly'] as const;
export type Taste = (typeof TASTES)[number];
