import { z } from 'zod';
import { wrong } from './faults.ts';
import {
  Allergen,
  CalendarDate,
  DayKind,
  Diet,
  FuelKind,
  LotKind,
  MainMeal,
  MealKind,
  MealStop,
  PortionSize,
  ServingStyle,
  ShortText,
  Taste,
} from './kinds.ts';
import { BodyData } from './body.ts';
import { PlannedLot } from './planned-lot.ts';
import { LotCode } from './pouch-lot.ts';
import { Reason } from './reasons.ts';
import { Route, Terrain, WalkingTimeMethod } from './route.ts';
import { CANISTER_GASES, RESUPPLY_KINDS } from './words.ts';

const DailyEnergyKcal = z
  .number(wrong('not-kcal'))
  .min(500, wrong('under', { least: 500, unit: 'kcal/d' }))
  .max(12_000, wrong('over', { most: 12_000, unit: 'kcal/d' }));
const LoadG = z
  .number(wrong('not-a-weight'))
  .nonnegative(wrong('negative'))
  .max(80_000, wrong('over', { most: 80, unit: 'kg' }));

/** One person of the party. What is left out takes the default of `trip-defaults.ts`. */
export const Eater = z.strictObject({
  name: ShortText.describe('Name, unique in the party'),
  energyKcal: DailyEnergyKcal.optional().describe(
    'Energy target of this eater, kcal per full day; left out: from the body data, or that of the trip',
  ),
  body: BodyData.optional().describe(
    'Age and mass for loads and water; with sex and height the need too, where no energy target is given',
  ),
  allergens: z.array(Allergen).default([]).describe('Allergens this eater must not be served'),
  diets: z
    .array(Diet)
    .default([])
    .describe('Diets that everything served to this eater must be stated to meet'),
  maxLoadG: LoadG.optional().describe('The most this eater may carry, g'),
  baseLoadG: LoadG.optional().describe('Pack without food, fuel and water, g'),
  waterCapacityMl: z
    .number(wrong('not-a-volume'))
    .nonnegative(wrong('negative'))
    .max(40_000, wrong('over', { most: 40, unit: 'l' }))
    .optional()
    .describe('What the water bottles and bags of this eater hold together, ml'),
  portion: PortionSize.optional().describe(
    'How much this eater takes from a pot, beside others; left out: by the energy target',
  ),
  tastes: z
    .array(
      z.strictObject({
        food: ShortText.describe('A dish by its name, or an ingredient by a word of such names'),
        taste: Taste,
      }),
    )
    .max(200, wrong('too-many', { most: 200 }))
    .optional()
    .describe('Dishes and ingredients that this eater never, rather not or gladly eats'),
});
export type Eater = z.infer<typeof Eater>;

/** Conditions of one day of the trip, from waking up to falling asleep at that evening's camp. */
export const DayConditions = z.strictObject({
  kind: DayKind.optional().describe(
    'What is different on this day: it sets the walk, meals that are served, and the stove, where nothing else says them; left out: a day of walking',
  ),
  walkingH: z
    .number(wrong('not-hours'))
    .min(0, wrong('negative'))
    .max(20, wrong('over', { most: 20, unit: 'h' }))
    .optional()
    .describe('Walking time with rests, h; left out: from the route or the leg'),
  distanceM: z
    .number(wrong('not-a-distance'))
    .min(0, wrong('negative'))
    .max(150_000, wrong('over', { most: 150, unit: 'km/d' }))
    .optional()
    .describe('Length of the leg where there is no route, m'),
  climbM: z
    .number(wrong('not-a-height'))
    .min(0, wrong('negative'))
    .max(9000, wrong('over', { most: 9000, unit: 'm/d' }))
    .optional()
    .describe('Climb of the leg, m'),
  descentM: z
    .number(wrong('not-a-height'))
    .min(0, wrong('negative'))
    .max(9000, wrong('over', { most: 9000, unit: 'm/d' }))
    .optional()
    .describe('Descent of the leg, m'),
  endsAt: ShortText.optional().describe(
    'Waypoint of the route where this day ends; the one of the day before makes a rest day',
  ),
  terrain: Terrain.optional().describe('Ground underfoot'),
  campAltitudeM: z
    .number(wrong('not-an-altitude'))
    .min(-430, wrong('under', { least: -430, unit: 'm' }))
    .max(8848, wrong('over', { most: 8848, unit: 'm' }))
    .optional()
    .describe("Altitude of the day's highest stove stop, m; left out: from the route"),
  airTemperatureC: z
    .number(wrong('not-a-temperature'))
    .min(-50, wrong('under', { least: -50, unit: '°C' }))
    .max(55, wrong('over', { most: 55, unit: '°C' }))
    .optional()
    .describe('Air temperature at midday, °C'),
  humidityShare: z
    .number(wrong('not-a-share'))
    .min(0, wrong('negative'))
    .max(1, wrong('over', { most: 100, unit: '%' }))
    .optional()
    .describe('Relative humidity at midday, 0 to 1'),
  sun: z
    .enum(['sun', 'mixed', 'shade'])
    .optional()
    .describe('Full sun, some of both, or full shade on the way'),
  wind: z.enum(['calm', 'breezy', 'windy']).optional().describe('Wind at the stove, behind its shield'),
  waterTemperatureC: z
    .number(wrong('not-a-temperature'))
    .min(-40, wrong('under', { least: -40, unit: '°C' }))
    .max(60, wrong('over', { most: 60, unit: '°C' }))
    .optional()
    .describe('Temperature of the water before it is heated, °C; below 0 it is ice or snow'),
  campWater: z
    .enum(['source', 'dry', 'snow'])
    .optional()
    .describe('At the camp of this night: a water source, none (dry camp), or snow to melt'),
  waterEveryH: z
    .number(wrong('not-hours'))
    .min(0.25, wrong('under', { least: 15, unit: 'min' }))
    .max(48, wrong('over', { most: 48, unit: 'h' }))
    .optional()
    .describe('Walking time between water sources on the way, h; not used where the route has sources'),
});
export type DayConditions = z.infer<typeof DayConditions>;

export const FuelContainer = z.strictObject({
  label: ShortText.describe('What it is called on the packing list'),
  fuel: FuelKind,
  netG: z
    .number(wrong('not-a-weight'))
    .min(1, wrong('under', { least: 1, unit: 'g' }))
    .max(10_000, wrong('over', { most: 10_000, unit: 'g' }))
    .describe('Fuel in it when full, g'),
  tareG: z
    .number(wrong('not-a-weight'))
    .nonnegative(wrong('negative'))
    .max(5_000, wrong('over', { most: 5000, unit: 'g' }))
    .describe('Weight of the empty canister or bottle, g'),
});
export type FuelContainer = z.infer<typeof FuelContainer>;

/** A canister or bottle that is at home already, by the scale. */
export const StartedContainer = z
  .strictObject({
    label: ShortText.describe('Which one it is'),
    fuel: FuelKind,
    grossG: z
      .number(wrong('not-a-weight'))
      .nonnegative(wrong('negative'))
      .max(15_000, wrong('over', { most: 15, unit: 'kg' }))
      .describe('Weight on the scale, g'),
    tareG: z
      .number(wrong('not-a-weight'))
      .nonnegative(wrong('negative'))
      .max(5_000, wrong('over', { most: 5, unit: 'kg' }))
      .describe('Weight when empty, g'),
  })
  .refine((container) => container.grossG >= container.tareG, {
    path: ['grossG'],
    error: wrong('lighter-than-empty'),
  });
export type StartedContainer = z.infer<typeof StartedContainer>;

const PotG = z
  .number(wrong('not-a-weight'))
  .nonnegative(wrong('negative'))
  .max(5000, wrong('over', { most: 5, unit: 'kg' }));
const PotMl = z
  .number(wrong('not-a-volume'))
  .min(100, wrong('under', { least: 0.1, unit: 'l' }))
  .max(20_000, wrong('over', { most: 20, unit: 'l' }));

export const Stove = z.strictObject({
  fuel: FuelKind.optional().describe('Fuel it burns'),
  gas: z.enum(CANISTER_GASES).optional().describe('What its canisters hold besides propane'),
  efficiency: z
    .number(wrong('not-a-share'))
    .min(0.05, wrong('under', { least: 5, unit: '%' }))
    .max(0.95, wrong('over', { most: 95, unit: '%' }))
    .optional()
    .describe('Share of the heat of the fuel that ends up in the water'),
  reserve: z
    .number(wrong('not-a-share'))
    .min(0, wrong('negative'))
    .max(3, wrong('over', { most: 300, unit: '%' }))
    .optional()
    .describe('Fuel taken above the need, as a share of the need'),
  potG: PotG.optional().describe('Weight of the pot and lid that is heated each time, g'),
  potMl: PotMl.optional().describe('Water boiled at a time, ml'),
  started: z
    .array(StartedContainer)
    .max(20)
    .default([])
    .describe('Part-full containers at home that may be taken'),
});
export type Stove = z.infer<typeof Stove>;

/** People who cook and eat together, with their own stove and pot. */
export const CookGroup = z.strictObject({
  name: ShortText.describe('Name, unique on the trip'),
  eaters: z.array(ShortText).min(1, wrong('no-eater')).max(40).describe('Names of the party'),
  potG: PotG.optional().describe('Weight of their pot and lid, g; left out: as the stove says'),
  potMl: PotMl.optional().describe('Water that they boil at a time, ml; left out: as the stove says'),
});
export type CookGroup = z.infer<typeof CookGroup>;

/** How some meals of the trip are taken. Where two rules say something of the same meal, the later one counts. */
export const MealRule = z.strictObject({
  days: z
    .union([z.array(z.int().min(1)).min(1).max(90), z.literal('rest days')])
    .optional()
    .describe('Days of the trip, from 1, or its rest days; left out: every day'),
  meals: z.array(MealKind).min(1).optional().describe('Left out: every meal'),
  style: ServingStyle.optional().describe('How the food comes to people'),
  stop: MealStop.optional().describe('With the stove, without a stove, or without a stop'),
  elsewhere: z
    .union([z.literal('everyone'), z.literal('no one'), z.array(ShortText).min(1)])
    .optional()
    .describe('Who eats elsewhere, such as in a hut or a village'),
  extras: z.boolean().optional().describe('Extras make the meal, up to what is planned for it'),
  dish: ShortText.optional().describe('The dish that these meals have'),
});
export type MealRule = z.infer<typeof MealRule>;

/** How a dish comes to people. */
export const DishStyle = z.enum(['own pouch', 'shared pot']);
export type DishStyle = z.infer<typeof DishStyle>;

export const OpenedLot = z.strictObject({
  code: LotCode,
  pouches: z
    .int(wrong('not-whole'))
    .positive(wrong('under', { least: 1 }))
    .max(1000)
    .describe('Pouches opened'),
  why: z
    .string()
    .max(400)
    .optional()
    .describe('The rule by which a planner of before put it here, in words; read, and written no more'),
  reason: Reason.optional().describe('Why the planner put it here; left out where it was not the planner'),
  role: LotKind.optional().describe('What it is on the plates; left out: what its lot is'),
  style: DishStyle.optional().describe('How it comes to people; left out: as fits'),
  locked: z.boolean().optional().describe('Kept, with its dish, when the menu is planned again'),
});
export type OpenedLot = z.infer<typeof OpenedLot>;

/** One meal of the menu as it was chosen, by the planner or by hand. */
export const ChosenMeal = z.strictObject({
  day: z
    .int()
    .min(1, wrong('under', { least: 1 }))
    .describe('Day of the trip, from 1'),
  meal: MealKind,
  locked: z.boolean().default(false).describe('Kept as it is when the menu is planned again'),
  byHand: z.boolean().default(false).describe('Changed by hand since it was planned'),
  group: ShortText.optional().describe(
    'Cook group that eats it; left out: the only one, or everyone of them',
  ),
  opened: z.array(OpenedLot).max(50),
  portions: z
    .array(
      z.strictObject({
        eater: ShortText,
        code: LotCode,
        servings: z.number().positive().max(1000).describe('Servings of the lot on this plate'),
        style: DishStyle.optional().describe('Where the lot is both handed out and in a pot: which'),
        role: LotKind.optional().describe('What it is on the plate, where it comes from an open pouch'),
      }),
    )
    .max(2000)
    .optional()
    .describe('Who eats how much of what; left out: shared out anew from the pouches'),
  lockedPlates: z
    .array(ShortText)
    .max(40)
    .optional()
    .describe('Eaters whose plates are kept when the menu is planned again'),
  toFill: z
    .boolean()
    .optional()
    .describe('Only a part of the meal is listed, and the planner sees to the rest; left out: it is whole'),
});
export type ChosenMeal = z.infer<typeof ChosenMeal>;

/** A place on the way where food and fuel are picked up. */
export const Resupply = z.strictObject({
  place: ShortText.describe('Name of the place, unique on the trip'),
  kind: z.enum(RESUPPLY_KINDS).describe('A box that was sent ahead, a shop there, or a cache'),
  day: z
    .int(wrong('not-whole'))
    .min(1, wrong('under', { least: 1 }))
    .describe('Day of the trip, from 1'),
  from: MainMeal.default('dinner').describe('First meal of that day that is eaten from it'),
  postBy: CalendarDate.optional().describe('Last day to post the box, or to leave the cache'),
  boxG: z
    .number(wrong('not-a-weight'))
    .nonnegative(wrong('negative'))
    .max(20_000, wrong('over', { most: 20, unit: 'kg' }))
    .default(0)
    .describe('Empty box with its wrapping, g'),
  label: z
    .string()
    .trim()
    .max(500, wrong('too-long', { most: 500 }))
    .default('')
    .describe('What is written on it'),
});
export type Resupply = z.infer<typeof Resupply>;

const TripFields = z.strictObject({
  name: ShortText.describe('Name of the trip'),
  template: z
    .boolean()
    .optional()
    .describe('A trip that others are copied from: no pouches are set aside for it'),
  startDate: CalendarDate.describe('Date of day 1'),
  dayCount: z
    .int(wrong('not-whole-days'))
    .min(1, wrong('under', { least: 1, unit: 'd' }))
    .max(90, wrong('trip-too-long', { most: 90 }))
    .describe('Number of days'),
  firstMeal: MainMeal.optional().describe('First meal of the first day'),
  lastMeal: MainMeal.optional().describe('Last meal of the last day'),
  energyKcal: DailyEnergyKcal.optional().describe(
    'Energy target for every eater without their own, kcal per full day',
  ),
  planFor: z
    .enum(['low', 'middle', 'high'])
    .optional()
    .describe('Point of the range of each estimated need that the plan is made for'),
  deficitShare: z
    .number(wrong('not-a-share'))
    .min(0, wrong('negative'))
    .max(0.4, wrong('over', { most: 40, unit: '%' }))
    .optional()
    .describe('Planned energy deficit, as a share of the need; never applied to minors'),
  acclimatised: z
    .enum(['yes', 'no'])
    .optional()
    .describe('Whether everybody has been active in such heat for the last 10 to 14 days'),
  treatment: z
    .enum(['boil', 'filter', 'chemical', 'none'])
    .optional()
    .describe('How water from the land is made safe to drink'),
  route: Route.optional(),
  pace: z
    .strictObject({
      method: WalkingTimeMethod.optional().describe('How walking time is reckoned'),
      partyFactor: z
        .number(wrong('not-a-factor'))
        .min(0.3, wrong('under', { least: 0.3 }))
        .max(4, wrong('over', { most: 4 }))
        .optional()
        .describe('Time of this party over the time of the method'),
      restShare: z
        .number(wrong('not-a-share'))
        .min(0, wrong('negative'))
        .max(2, wrong('over', { most: 200, unit: '%' }))
        .optional()
        .describe('Rests, as a share of the time on the move'),
    })
    .default({}),
  party: z
    .array(Eater)
    .min(1, wrong('no-eater'))
    .max(40, wrong('too-many', { most: 40 }))
    .describe('Who eats and carries'),
  days: z
    .array(DayConditions)
    .max(90)
    .default([])
    .describe('Conditions day by day; a day that is left out takes the defaults'),
  stove: Stove.default({ started: [] }),
  cookGroups: z
    .array(CookGroup)
    .max(40)
    .optional()
    .describe(
      'Who cooks and eats together; left out: up to six eaters are one group, more are split by a proposal',
    ),
  servingStyle: ServingStyle.optional().describe(
    'How the food comes to people, unless a meal says otherwise',
  ),
  mealRules: z
    .array(MealRule)
    .max(500, wrong('too-many', { most: 500 }))
    .optional()
    .describe('How some meals are taken'),
  reserveMeals: z
    .int(wrong('not-whole-meals'))
    .min(0, wrong('negative'))
    .max(30, wrong('over', { most: 30, unit: 'meals' }))
    .optional()
    .describe('Main meals for everyone that are carried and not planned to be eaten'),
  animalContainerMl: z
    .number(wrong('not-millilitres'))
    .min(500, wrong('under', { least: 0.5, unit: 'l' }))
    .max(50_000, wrong('over', { most: 50, unit: 'l' }))
    .optional()
    .describe(
      'Room of the container in which each keeps food safe from animals at night, ml; left out: none is used',
    ),
  resupplies: z
    .array(Resupply)
    .max(40, wrong('too-many', { most: 40 }))
    .optional()
    .describe('Places on the way where food and fuel are picked up'),
  planned: z
    .array(PlannedLot)
    .max(200, wrong('too-many', { most: 200 }))
    .optional()
    .describe('Food that the trip plans with and that is not there yet: to buy, or to dry'),
  withdrawn: z
    .array(
      z.strictObject({
        code: LotCode,
        recipe: ShortText,
        reason: ShortText.describe('Why it must not be eaten'),
      }),
    )
    .max(200, wrong('too-many', { most: 200 }))
    .optional()
    .describe(
      'Lots that this trip had planned with and that were withdrawn: some may be in its boxes and packs',
    ),
  menu: z
    .array(ChosenMeal)
    .max(6000)
    .default([])
    .describe('Meals already chosen; the planner fills the meals that are not listed'),
});

/** A place chosen for the end of the last day may be this far from the end of the route, m. */
const LAST_DAY_WITHIN_M = 200;

/** A trip as a person enters it. */
export const Trip = TripFields.superRefine((trip, context) => {
  const fail = (path: (string | number)[], message: string, params?: { missing: true }) =>
    context.addIssue({ code: 'custom', path, message, ...(params && { params }) });

  const names = new Set<string>();
  trip.party.forEach(({ name }, index) => {
    if (names.has(name)) fail(['party', index, 'name'], wrong('eater-twice', { name }));
    names.add(name);
  });

  if (trip.days.length > trip.dayCount)
    fail(['days'], wrong('more-days-than-trip', { days: trip.days.length, most: trip.dayCount }));

  if (
    trip.dayCount === 1 &&
    trip.firstMeal &&
    trip.lastMeal &&
    MainMeal.options.indexOf(trip.firstMeal) > MainMeal.options.indexOf(trip.lastMeal)
  )
    fail(['lastMeal'], wrong('last-meal-before-first', { last: trip.lastMeal, first: trip.firstMeal }));

  trip.days.forEach(({ distanceM, climbM, descentM }, index) => {
    const heightM = (climbM ?? 0) + (descentM ?? 0);
    if (heightM > 0 && distanceM === undefined && !trip.route)
      fail(['days', index, 'distanceM'], wrong('leg-without-length'), {
        missing: true,
      });
    else if (distanceM !== undefined && heightM > distanceM)
      fail(['days', index, 'climbM'], wrong('leg-too-steep'));
  });

  const routeEndM = trip.route?.profile.at(-1)?.distanceM ?? 0;
  let endM = 0;
  trip.days.forEach(({ endsAt }, index) => {
    if (endsAt === undefined) return;
    const waypoint = trip.route?.waypoints.find((other) => other.name === endsAt);
    if (!waypoint) fail(['days', index, 'endsAt'], wrong('no-such-waypoint', { place: endsAt }));
    else if (waypoint.distanceM < endM)
      fail(['days', index, 'endsAt'], wrong('day-ends-before-last', { place: endsAt }));
    else if (index === trip.dayCount - 1 && routeEndM - waypoint.distanceM > LAST_DAY_WITHIN_M)
      fail(['days', index, 'endsAt'], wrong('last-day-ends-early', { place: endsAt }));
    else endM = waypoint.distanceM;
  });

  const groupOf = new Map<string, string>();
  const groupNames = new Set<string>();
  trip.cookGroups?.forEach(({ name, eaters }, index) => {
    if (groupNames.has(name)) fail(['cookGroups', index, 'name'], wrong('group-twice', { name }));
    groupNames.add(name);
    eaters.forEach((eater, position) => {
      const path = ['cookGroups', index, 'eaters', position];
      if (!names.has(eater)) fail(path, wrong('not-in-party', { name: eater }));
      else if (groupOf.has(eater)) fail(path, wrong('in-two-groups', { name: eater }));
      groupOf.set(eater, name);
    });
  });
  if (trip.cookGroups && trip.cookGroups.length > 0)
    trip.party.forEach(({ name }) => {
      if (!groupOf.has(name)) fail(['cookGroups'], wrong('in-no-group', { name }));
    });

  const places = new Set<string>();
  trip.resupplies?.forEach(({ place, day }, index) => {
    if (day > trip.dayCount)
      fail(['resupplies', index, 'day'], wrong('day-after-trip', { day, most: trip.dayCount }));
    if (places.has(place)) fail(['resupplies', index, 'place'], wrong('place-twice', { place }));
    places.add(place);
  });

  const planned = new Set<string>();
  trip.planned?.forEach(({ lot: { code } }, index) => {
    if (planned.has(code)) fail(['planned', index, 'lot', 'code'], wrong('code-twice', { lot: code }));
    planned.add(code);
  });

  const meals = new Set<string>();
  trip.menu.forEach(({ day, meal, group, opened }, index) => {
    if (day > trip.dayCount)
      fail(['menu', index, 'day'], wrong('day-after-trip', { day, most: trip.dayCount }));
    const key = `${day} ${meal} ${group ?? ''}`;
    if (meals.has(key)) fail(['menu', index], wrong('meal-twice', { day, meal }));
    meals.add(key);
    const codes = new Set<string>();
    opened.forEach(({ code, style = '' }, position) => {
      const key = `${style} ${code}`;
      if (codes.has(key))
        fail(['menu', index, 'opened', position, 'code'], wrong('lot-twice-at-meal', { lot: code }));
      codes.add(key);
    });
  });
});
export type Trip = z.infer<typeof Trip>;
export type TripInput = z.input<typeof Trip>;
