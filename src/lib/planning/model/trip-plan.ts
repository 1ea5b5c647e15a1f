import { z } from 'zod';
import {
  Allergen,
  CalendarDate,
  CookAfter,
  DayKind,
  Diet,
  FuelKind,
  LotKind,
  MealKind,
  MealStop,
  ServingStyle,
  WaterKind,
} from './kinds.ts';
import { ESTIMABLE } from './lot-estimate.ts';
import { Notice } from './notices.ts';
import { EaterNutrition } from './nutrition.ts';
import { Reason } from './reasons.ts';
import { PlannedLot, PlannedWay } from './planned-lot.ts';
import { DishStyle } from './trip.ts';
import { LEG_BASES, RESUPPLY_KINDS } from './words.ts';
import { Term } from './terms.ts';
import { Why } from './why.ts';

/*
 * The result of planTrip. Amounts are in the unit of the name: G grams, Ml millilitres, Kcal, KJ, C, M, H, Min.
 * A day is its number from 1, an eater is their name, a lot is its code.
 */

const Day = z.int().min(1);
const EaterName = z.string();
const LotCode = z.string();
const Amount = z.number().nonnegative();
/** On rows of lots that are not there yet. */
const ToCome = PlannedWay.optional().describe(
  'It is not there yet: to buy, or to dry; left out: it is there',
);

/** A figure with the range it may turn out in, and the terms it came from. */
export const Estimate = z.strictObject({ value: Amount, low: Amount, high: Amount, terms: z.array(Term) });
export type Estimate = z.infer<typeof Estimate>;

// route

/** A day's walk: from the route, from a leg entered by hand, or level ground for the hours entered. */
export const LegSummary = z.strictObject({
  day: Day,
  basis: z.enum(LEG_BASES),
  fromM: Amount.describe('Where it begins along the route'),
  distanceM: Amount,
  climbM: Amount,
  descentM: Amount,
  highestM: z.number(),
  walkingH: Amount.describe('With rests'),
  movingH: Amount,
  endsAt: z.string().optional(),
  sources: z
    .array(z.strictObject({ name: z.string(), atH: Amount, atM: Amount }))
    .describe('Sources on the way that are counted on'),
});
export type LegSummary = z.infer<typeof LegSummary>;

// demand

export const EaterDayDemand = z.strictObject({
  eater: EaterName,
  basis: z.enum(['entered', 'adult body', 'minor body']),
  need: Estimate.describe('Energy spent on the full day, kcal'),
  deficitKcal: Amount.describe('Planned deficit of the full day'),
  targetKcal: Amount.describe('What the meals of this day should bring'),
  mealKcal: z.partialRecord(MealKind, Amount).describe('The target by meal'),
  walkingRateW: Amount.describe('Mean metabolic rate on the move'),
  walkingLoadG: Amount.describe('Mean load on the move'),
});
export type EaterDayDemand = z.infer<typeof EaterDayDemand>;
export const DayDemand = z.strictObject({
  day: Day,
  date: CalendarDate,
  kind: DayKind.optional().describe('What is different on it; left out: a day of walking'),
  meals: z.array(MealKind),
  eaters: z.array(EaterDayDemand),
});
export type DayDemand = z.infer<typeof DayDemand>;

// menu

/** Which figures of a lot nobody has stated, so that what a plan says of it is an estimate. */
const Estimated = z
  .array(z.enum(ESTIMABLE))
  .min(1)
  .optional()
  .describe('Figures of the lot that are estimates');

/** Pouches opened at a meal. A lot that is both handed out and in a pot stands here twice, once for each style. */
export const MenuPouches = z.strictObject({
  code: LotCode,
  recipe: z.string(),
  role: LotKind,
  style: DishStyle,
  pouches: z.int().positive(),
  servings: Amount.describe('Servings in the opened pouches'),
  energyKcal: Amount.describe('Energy in the opened pouches'),
  waterMl: Amount.describe(
    'Water to add at this meal; of food that keeps when opened, only to what is eaten',
  ),
  waterKind: WaterKind,
  estimated: Estimated,
  reason: Reason.describe('Why it stands here'),
  locked: z.boolean().describe('Its dish is kept when the menu is planned again'),
  toCome: ToCome,
});
export type MenuPouches = z.infer<typeof MenuPouches>;

/** What is eaten at a meal from pouches that were opened before. */
export const FromOpen = z.strictObject({
  code: LotCode,
  recipe: z.string(),
  role: LotKind,
  servings: Amount,
  sinceDay: Day.describe('Day on which its pouch was opened'),
  waterMl: Amount,
  waterKind: WaterKind,
  estimated: Estimated,
  toCome: ToCome,
});
export type FromOpen = z.infer<typeof FromOpen>;

/** Servings on a plate. Those of a pot are quarters by lot, and carry the energy of the mean of the pot. */
export const Portion = z.strictObject({
  eater: EaterName,
  code: LotCode,
  role: LotKind,
  style: DishStyle,
  servings: Amount,
  pieces: Amount.optional().describe('The same in pieces, where the lot is counted in pieces'),
  energyKcal: Amount,
  waterMl: Amount.describe('Water that was added to it'),
});
export type Portion = z.infer<typeof Portion>;

export const LotServings = z.strictObject({ code: LotCode, servings: Amount, energyKcal: Amount });
export type LotServings = z.infer<typeof LotServings>;

/** A meal of one cook group. What is opened and what comes from open pouches is eaten, stays open, or is left over. */
export const MenuMeal = z.strictObject({
  day: Day,
  date: CalendarDate,
  meal: MealKind,
  group: z.string().describe('Cook group'),
  style: ServingStyle.describe('How the food was to come to people'),
  stop: MealStop,
  eaters: z.array(EaterName).describe('Who eats it with the group'),
  elsewhere: z.array(EaterName).describe('Who of the group eats elsewhere'),
  locked: z.boolean(),
  lockedPlates: z.array(EaterName),
  byHand: z.boolean(),
  opened: z.array(MenuPouches),
  fromOpen: z.array(FromOpen),
  portions: z.array(Portion),
  staysOpen: z
    .array(z.strictObject({ code: LotCode, servings: Amount, untilDay: Day }))
    .describe('Still to be eaten of, later, from pouches that are open now'),
  leftOver: z.array(LotServings).describe('Opened and not eaten, by lot'),
  targetKcal: Amount,
  eatenKcal: Amount,
  leftOverServings: Amount.describe('Opened and not eaten; rehydrated food is not kept'),
  leftOverKcal: Amount,
});
export type MenuMeal = z.infer<typeof MenuMeal>;

/** Pouches that are carried and not planned to be eaten. */
export const ReservePouches = z.strictObject({
  code: LotCode,
  recipe: z.string(),
  pouches: z.int().positive(),
  servings: Amount,
  energyKcal: Amount,
  toCome: ToCome,
});
export type ReservePouches = z.infer<typeof ReservePouches>;

export const EaterDayEnergy = z.strictObject({
  day: Day,
  eater: EaterName,
  targetKcal: Amount,
  eatenKcal: Amount,
  missingKcal: Amount,
  aboveKcal: Amount,
});
export type EaterDayEnergy = z.infer<typeof EaterDayEnergy>;

export const MenuPlan = z.strictObject({
  planner: z.string().describe('Which planner chose the meals that were not given'),
  groups: z
    .array(z.strictObject({ name: z.string(), eaters: z.array(EaterName) }))
    .describe('Who cooks and eats together'),
  meals: z.array(MenuMeal).describe('One for each day, meal and cook group'),
  energy: z.array(EaterDayEnergy),
  reserve: z.array(ReservePouches).describe('Carried and not planned to be eaten'),
});
export type MenuPlan = z.infer<typeof MenuPlan>;

// water

/** Water in the packs at one moment: each eater's own, and the group's for its food. */
export const WaterLoad = z.strictObject({
  own: z.array(z.strictObject({ eater: EaterName, ml: Amount })),
  groupMl: Amount,
  totalMl: Amount,
});
export type WaterLoad = z.infer<typeof WaterLoad>;

/** The way from one source, or from camp, to the next source or camp. */
export const WaterStretch = z.strictObject({
  from: z.string(),
  fromH: Amount,
  toH: Amount,
  fromM: Amount.describe('Along the route'),
  toM: Amount,
  refilled: z.boolean().describe('Water is taken up where it begins'),
  toDryCamp: z.boolean().describe('It leads to a camp without water'),
  start: WaterLoad.describe('Carried where it begins'),
  drunkEach: z.array(z.strictObject({ eater: EaterName, ml: Amount })),
});
export type WaterStretch = z.infer<typeof WaterStretch>;

export const DayHeat = z.strictObject({
  category: z.int().min(0).max(5).describe('Heat category of the tables; 0: below them'),
  work: z
    .enum(['easy', 'moderate', 'hard', 'very hard'])
    .optional()
    .describe('Work of whoever works hardest; missing: nobody walks'),
  workMin: z.int().min(0).max(60).describe('Minutes of walking in an hour'),
  restMin: z.int().min(0).max(60).describe('Minutes of rest in the shade in an hour'),
  avoid: z.boolean().describe('The table says not to walk'),
  neededH: Amount.describe('What the walk takes with these rests'),
  addedRestH: Amount.describe('Rests planned beyond those of the pace'),
});
export type DayHeat = z.infer<typeof DayHeat>;

export const DayWater = z.strictObject({
  day: Day,
  wbgtC: z.number().describe('Wet-bulb globe temperature at midday'),
  heat: DayHeat,
  drink: z.array(z.strictObject({ eater: EaterName, ml: Estimate })),
  drinkMl: Amount.describe('Drinking water of the party'),
  cookMl: Amount.describe('Water added to the food of the day'),
  stretches: z.array(WaterStretch),
  peakMl: Amount.describe('The most that the party carries at once on this day'),
  meltMl: Amount.describe('Water melted from snow at this camp'),
  treatMl: Amount.describe('Water taken up from the land on this day'),
});
export type DayWater = z.infer<typeof DayWater>;
export const WaterPlan = z.strictObject({
  days: z.array(DayWater),
  drinkMl: Amount,
  cookMl: Amount,
  peakMl: Amount,
  peakDay: Day,
});
export type WaterPlan = z.infer<typeof WaterPlan>;

// fuel

export const Boil = z.strictObject({
  day: Day,
  purpose: z.enum(['meal', 'melting', 'making safe']),
  meal: MealKind.optional(),
  group: z.string().describe('Cook group whose stove it is'),
  waterMl: Amount,
  potfuls: z.int().positive().describe('Times that the pot is filled for it'),
  fromC: z.number(),
  toC: z.number(),
  altitudeM: z.number(),
  heatKJ: Amount.describe('Heat that has to reach water and pot'),
  efficiency: z.number().describe('In this wind and cold'),
  fuelG: Amount.describe('Fuel burnt for it, without the reserve'),
  burnMin: Amount.describe('Minutes that the burner is on'),
});
export type Boil = z.infer<typeof Boil>;
export const FuelPlan = z.strictObject({
  fuel: FuelKind,
  efficiency: z.number().describe('In calm mild air'),
  efficiencyBasis: z.enum(['entered', 'learned', 'measured', 'usual']),
  boils: z.array(Boil),
  need: Estimate.describe('Fuel burnt, g'),
  withReserveG: Amount,
  containers: z.array(
    z.strictObject({
      label: z.string(),
      group: z.string().describe('Cook group that burns it'),
      count: z.int().positive(),
      netG: Amount.describe('Fuel in one'),
      tareG: Amount,
      started: z.boolean().describe('From home, part full'),
      stage: z
        .int()
        .positive()
        .optional()
        .describe('Place on the way where it is picked up, from 1; left out: from the start'),
    }),
  ),
  takenG: Amount.describe('Fuel in the containers'),
  grossG: Amount.describe('Fuel and containers'),
});
export type FuelPlan = z.infer<typeof FuelPlan>;

// carry

export const CarriedPouches = z.strictObject({
  code: LotCode,
  recipe: z.string(),
  pouches: z.int().positive(),
  day: Day,
  meal: MealKind,
  group: z.string().describe('Cook group that opens them'),
  grossG: Amount,
  toCome: ToCome,
});
/** Pouches of one lot in a pack or a box, and containers of fuel of one size. */
const PackedLot = z.strictObject({
  code: LotCode,
  recipe: z.string(),
  pouches: z.int().positive(),
  grossG: Amount,
  toCome: ToCome,
});
const PackedContainer = z.strictObject({ label: z.string(), count: z.int().positive(), grossG: Amount });
export const Pack = z.strictObject({
  eater: EaterName,
  pouches: z.array(CarriedPouches),
  reserve: z.array(PackedLot).describe('Pouches that are not planned to be eaten'),
  fuelContainers: z.array(PackedContainer),
  foodG: Amount,
  packagingG: Amount,
  fuelGrossG: Amount,
});
export type Pack = z.infer<typeof Pack>;

const LoadParts = {
  baseG: Amount,
  foodG: Amount.describe('Dry food still to be eaten'),
  packagingG: Amount.describe('Pouches and absorbers, full and empty: the empty ones are carried out'),
  fuelG: Amount.describe('Fuel and containers'),
  waterG: Amount,
  totalG: Amount,
};
export const DayLoad = z.strictObject({
  day: Day,
  eater: EaterName,
  ...LoadParts,
  peakG: Amount.describe('Heaviest pack of the day'),
  peakWaterG: Amount.describe('Water in it'),
  peakWhen: z.string().describe('Where the heaviest pack is shouldered'),
  meanWalkingG: Amount.describe('Mean load on the move'),
  stretches: z.array(
    z.strictObject({ from: z.string(), fromM: Amount, toM: Amount, startG: Amount, endG: Amount }),
  ),
  limitG: Amount,
  overG: Amount.describe('Peak above what this eater may carry'),
});
export type DayLoad = z.infer<typeof DayLoad>;
/** A volume, ml, with its range where it is estimated. */
export const VolumeRange = z.strictObject({ value: Amount, low: Amount, high: Amount });
export type VolumeRange = z.infer<typeof VolumeRange>;
export const FoodVolume = z.strictObject({
  day: Day,
  eater: EaterName,
  stage: z.int().nonnegative().describe('Places on the way whose food is in the pack when leaving camp'),
  leavingMl: VolumeRange.describe('Food in the pack when leaving camp'),
  nightMl: VolumeRange.optional().describe('Food in the pack at night; left out: the trip is over'),
  overMl: Amount.describe('Of the night, above what their container takes'),
});
export type FoodVolume = z.infer<typeof FoodVolume>;
/** What is picked up on the way, and into which packs it goes. */
export const PickUp = z.strictObject({
  place: z.string(),
  kind: z.enum(RESUPPLY_KINDS),
  day: Day,
  from: MealKind.describe('First meal that is eaten from it'),
  untilDay: Day.describe('Last day that it feeds'),
  postBy: CalendarDate.optional(),
  label: z.string(),
  bestBefore: CalendarDate.optional().describe('Of the food in it that expires first'),
  pouches: z.array(PackedLot).describe('Food in it, lot by lot'),
  fuelContainers: z.array(PackedContainer),
  foodG: Amount,
  packagingG: Amount,
  fuelGrossG: Amount,
  boxG: Amount.describe('The empty box'),
  totalG: Amount.describe('The box as it is sent'),
  packs: z.array(Pack).describe('Where it goes, for each eater'),
});
export type PickUp = z.infer<typeof PickUp>;
export const CarryPlan = z.strictObject({
  packs: z.array(Pack).describe('What each carries from the start'),
  pickUps: z.array(PickUp).describe('What comes into the packs on the way, in order'),
  loads: z.array(DayLoad),
  volumes: z.array(FoodVolume).describe('Room that the food takes'),
  volumeStatedShare: z
    .number()
    .min(0)
    .max(1)
    .describe('Share of the pouches whose volume is stated; that of the others is a rule of thumb'),
});
export type CarryPlan = z.infer<typeof CarryPlan>;

// shortfall

export const MissingMeal = z.strictObject({
  day: Day,
  date: CalendarDate,
  meal: MealKind,
  missingKcal: Amount,
  missingServings: Amount,
  eaters: z.array(z.strictObject({ eater: EaterName, missingKcal: Amount })),
});
export type MissingMeal = z.infer<typeof MissingMeal>;

export const Suggestion = z.strictObject({
  way: z.enum(['dry', 'buy']).describe('Dry more of a recipe, or buy from a shop'),
  what: z.string(),
  pouches: z.int().positive().optional().describe('Of bought food: bags of one portion'),
  packets: z.int().positive().optional().describe('Packets as shops sell them that fill these bags'),
  weightG: Amount,
  energyKcal: Amount,
  allergens: z.array(Allergen).optional(),
  planned: PlannedLot.describe('As it is written into the `planned` of the trip, with a code of its own'),
});
export type Suggestion = z.infer<typeof Suggestion>;

/** What somebody avoids and keeps to. */
export const Exclusions = z.strictObject({ allergens: z.array(Allergen), diets: z.array(Diet) });
export type Exclusions = z.infer<typeof Exclusions>;

/** What is missing over the whole trip for one kind of meal and one set of exclusions, with ways to fill it. */
export const ShoppingLine = z.strictObject({
  meal: MealKind,
  forEaters: z.array(EaterName),
  exclusions: Exclusions,
  missingKcal: Amount,
  missingServings: Amount,
  plates: z.int().positive().describe('Days and people that lack something here'),
  suggestions: z
    .array(Suggestion)
    .describe('Foods that fill the line, or as much of it as one would eat of one food'),
});
export type ShoppingLine = z.infer<typeof ShoppingLine>;
export const Shortfall = z.strictObject({
  missingKcal: Amount,
  missingServings: Amount,
  meals: z.array(MissingMeal),
  shopping: z.array(ShoppingLine),
});
export type Shortfall = z.infer<typeof Shortfall>;

/** Food of the plan that is not there yet. */
export const ComingLot = z.strictObject({
  code: LotCode,
  recipe: z.string(),
  way: PlannedWay,
  at: z.string().optional().describe('The shop on the way where it is bought; left out: before departure'),
  by: CalendarDate.optional().describe('Last day to begin; left out: in time for departure'),
  pouches: z.int().nonnegative().describe('To come; of bought food, bags of one portion'),
  needed: z.int().nonnegative().describe('Of these, in the menu and the reserve'),
  packets: z.int().positive().optional().describe('Packets to buy'),
  packetG: Amount.optional().describe('Food in one packet'),
  weightG: Amount.describe('Food to come, without its packaging'),
  energyKcal: Amount,
  allergens: z.array(Allergen).optional().describe('As usual or expected; the label decides'),
  costMinor: Amount.optional(),
  eaters: z.array(EaterName).describe('Who eats of it'),
});
export type ComingLot = z.infer<typeof ComingLot>;

// trail card

export const CardPouches = z.strictObject({
  code: LotCode,
  recipe: z.string(),
  role: LotKind,
  style: DishStyle,
  pouches: z.int().nonnegative().describe('Opened at this meal; none where it comes from an open pouch'),
  openSinceDay: Day.optional().describe('Day on which the pouch was opened that is eaten of'),
  waterMl: Amount.describe('Water to add to all of these pouches together'),
  waterMlPerPouch: Amount.describe('Into each pouch; for each serving where no pouch is opened'),
  waterKind: WaterKind,
  steepMin: Amount.describe('Waiting time at this altitude'),
  steepSeaLevelMin: Amount,
  stirAfterMin: Amount.optional().describe(
    'Part of the waiting time at this altitude after which to stir; missing: none is stated',
  ),
  estimated: Estimated,
  allergens: z.array(Allergen).optional().describe('Missing: nobody has stated them'),
  cookAfter: CookAfter.optional().describe('What has to be done after the wait, before anyone eats'),
  pourIntoPot: z.boolean().describe('Its pouch takes no boiling water, or is no plate: pour it out first'),
  carriedBy: z.array(z.strictObject({ eater: EaterName, pouches: z.int().positive() })),
  shares: z.array(
    z.strictObject({
      eater: EaterName,
      servings: Amount,
      pieces: Amount.optional(),
      pouches: Amount.optional().describe('Whole or half pouches, where each has their own'),
      energyKcal: Amount,
    }),
  ),
  staysOpenServings: Amount,
  leftOverServings: Amount,
  toCome: ToCome,
});
export type CardPouches = z.infer<typeof CardPouches>;
export const CardMeal = z.strictObject({
  meal: MealKind,
  group: z.string(),
  boilMl: Amount,
  heatMl: Amount,
  potfuls: z.int().nonnegative(),
  fuelG: Amount,
  pouches: z.array(CardPouches).describe('In the order in which they are made'),
  firstFor: z
    .array(EaterName)
    .describe('Avoiders whose dish is made first, with its own spoon; empty where all may eat everything'),
});
export type CardMeal = z.infer<typeof CardMeal>;
export const CardDay = z.strictObject({
  day: Day,
  date: CalendarDate,
  altitudeM: z.number(),
  boilsAtC: z.number(),
  longerSteep: z.boolean().describe('Waiting times are longer than at sea level'),
  dryCamp: z.boolean(),
  heat: DayHeat,
  meals: z.array(CardMeal),
  elsewhere: z
    .array(z.strictObject({ meal: MealKind, group: z.string(), eaters: z.array(EaterName) }))
    .describe('Who of a cook group eats a meal elsewhere'),
});
export type CardDay = z.infer<typeof CardDay>;
export const TrailCard = z.strictObject({
  title: z.string(),
  startDate: CalendarDate,
  endDate: CalendarDate,
  party: z.array(z.strictObject({ eater: EaterName, excludes: Exclusions })),
  groups: z.array(z.strictObject({ name: z.string(), eaters: z.array(EaterName) })),
  days: z.array(CardDay),
  reserve: z
    .array(
      z.strictObject({
        code: LotCode,
        recipe: z.string(),
        pouches: z.int().positive(),
        carriedBy: z.array(z.strictObject({ eater: EaterName, pouches: z.int().positive() })),
      }),
    )
    .describe('Carried for everyone and not planned to be eaten'),
  withdrawn: z
    .array(z.strictObject({ code: LotCode, recipe: z.string(), reason: z.string() }))
    .describe('Lots that must not be eaten, some of whose pouches may be in the packs'),
});
export type TrailCard = z.infer<typeof TrailCard>;

// the whole

const CostOfKind = z.strictObject({
  minor: Amount.describe('What the servings with a known price cost, minor units'),
  servings: Amount.describe('Servings opened'),
  pricedServings: Amount.describe('Of these, with a known price'),
});
export const FoodCosts = z.strictObject({
  rows: z
    .array(z.strictObject({ day: Day, eater: EaterName, homeMinor: Amount, boughtMinor: Amount }))
    .describe('Per person and day, what is left over included; nothing where nothing has a price'),
  home: CostOfKind.describe('Food that was made at home'),
  bought: CostOfKind,
  compared: z
    .strictObject({ servings: Amount, ownMinor: Amount, shopMinor: Amount })
    .optional()
    .describe('Home-made servings of dishes with a shop price: their cost, and what they would cost bought'),
});
export type FoodCosts = z.infer<typeof FoodCosts>;

export const Totals = z.strictObject({
  pouches: z.int().nonnegative(),
  servingsOpened: Amount,
  servingsLeftOver: Amount,
  targetKcal: Amount,
  eatenKcal: Amount,
  missingKcal: Amount,
  foodG: Amount,
  packagingG: Amount,
  fuelGrossG: Amount,
  costMinor: z
    .int()
    .nonnegative()
    .optional()
    .describe('Cost of the opened pouches; missing where no opened lot states a cost'),
  costKnownShare: z.number().min(0).max(1).describe('Share of the opened servings whose cost is known'),
});
export type Totals = z.infer<typeof Totals>;

export const TripPlan = z.strictObject({
  tripName: z.string(),
  startDate: CalendarDate,
  endDate: CalendarDate,
  assumptions: z.array(
    z.strictObject({ field: z.string(), value: z.union([z.string(), z.number()]), why: Why }),
  ),
  notices: z.array(Notice),
  legs: z.array(LegSummary),
  coupling: z
    .strictObject({ steps: z.int().positive(), changeKcal: Amount, settled: z.boolean() })
    .describe('Rounds until the loads that make the need and the food that makes the loads agreed'),
  demand: z.array(DayDemand),
  menu: MenuPlan,
  water: WaterPlan,
  fuel: FuelPlan,
  nutrition: z.array(EaterNutrition).describe('What the food of each day brings each person'),
  carry: CarryPlan,
  shortfall: Shortfall,
  coming: z.array(ComingLot).describe('Planned food that is not there yet'),
  card: TrailCard,
  totals: Totals,
  costs: FoodCosts,
});
export type TripPlan = z.infer<typeof TripPlan>;
