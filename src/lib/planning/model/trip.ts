import { z } from 'zod';
import { Allergen } from './allergens.ts';
import { Diet } from './diets.ts';
import { LotCode } from './pouch-lot.ts';
import { CalendarDate, FuelKind, MainMeal, MealKind, ShortText } from './words.ts';

const DailyEnergyKcal = z
  .number('must be a number of kcal')
  .min(500, 'must be at least 500 kcal a day')
  .max(12_000, 'must be at most 12000 kcal a day');
const LoadG = z
  .number('must be a weight')
  .nonnegative('must not be negative')
  .max(80_000, 'must be at most 80 kg');

/** One person of the party. What is left out takes the default of `trip-defaults.ts`. */
export const Eater = z.strictObject({
  name: ShortText.describe('Name, unique in the party'),
  energyKcal: DailyEnergyKcal.optional().describe(
    'Energy target of this eater, kcal per full day; left out: that of the trip',
  ),
  allergens: z.array(Allergen).default([]).describe('Allergens this eater must not be served'),
  diets: z
    .array(Diet)
    .default([])
    .describe('Diets that everything served to this eater must be stated to meet'),
  maxLoadG: LoadG.optional().describe('The most this eater may carry, g'),
  baseLoadG: LoadG.optional().describe('Pack without food, fuel and water, g'),
});
export type Eater = z.infer<typeof Eater>;

/** Conditions of one day of the trip, from waking up to falling asleep at that evening's camp. */
export const DayConditions = z.strictObject({
  walkingH: z
    .number('must be a number of hours')
    .min(0, 'must not be negative')
    .max(20, 'must be at most 20 hours')
    .optional()
    .describe('Walking time, h'),
  campAltitudeM: z
    .number('must be an altitude')
    .min(-430, 'must be at least -430 m')
    .max(8848, 'must be at most 8848 m')
    .optional()
    .describe("Altitude of the day's highest stove stop, m"),
  airTemperatureC: z
    .number('must be a temperature')
    .min(-50, 'must be at least -50 °C')
    .max(55, 'must be at most 55 °C')
    .optional()
    .describe('Air temperature at midday, °C'),
  waterTemperatureC: z
    .number('must be a temperature')
    .min(0, 'must be at least 0 °C')
    .max(60, 'must be at most 60 °C')
    .optional()
    .describe('Temperature of the water before it is heated, °C'),
  campWater: z
    .enum(['source', 'dry'])
    .optional()
    .describe('Water source at the camp of this night, or a dry camp'),
  waterEveryH: z
    .number('must be a number of hours')
    .min(0.25, 'must be at least a quarter of an hour')
    .max(48, 'must be at most 48 hours')
    .optional()
    .describe('Walking time between water sources on the way, h'),
});
export type DayConditions = z.infer<typeof DayConditions>;

export const FuelContainer = z.strictObject({
  label: ShortText.describe('What it is called on the packing list'),
  fuel: FuelKind,
  netG: z
    .number('must be a weight')
    .min(1, 'must be at least 1 g')
    .max(10_000, 'must be at most 10000 g')
    .describe('Fuel in it when full, g'),
  tareG: z
    .number('must be a weight')
    .nonnegative('must not be negative')
    .max(5_000, 'must be at most 5000 g')
    .describe('Weight of the empty canister or bottle, g'),
});
export type FuelContainer = z.infer<typeof FuelContainer>;

export const Stove = z.strictObject({
  fuel: FuelKind.optional().describe('Fuel it burns'),
  efficiency: z
    .number('must be a share')
    .min(0.05, 'must be at least 5 %')
    .max(0.95, 'must be at most 95 %')
    .optional()
    .describe('Share of the heat of the fuel that ends up in the water'),
  reserve: z
    .number('must be a share')
    .min(0, 'must not be negative')
    .max(3, 'must be at most 300 %')
    .optional()
    .describe('Fuel taken above the need, as a share of the need'),
});
export type Stove = z.infer<typeof Stove>;

export const OpenedLot = z.strictObject({
  code: LotCode,
  pouches: z
    .int('must be a whole number')
    .positive('must be at least 1')
    .max(1000)
    .describe('Pouches opened'),
  why: z
    .string()
    .max(400)
    .optional()
    .describe('The rule by which the planner put it here; left out where it was not the planner'),
});
export type OpenedLot = z.infer<typeof OpenedLot>;

/** One meal of the menu as it was chosen, by the planner or by hand. */
export const ChosenMeal = z.strictObject({
  day: z.int().min(1, 'must be at least 1').describe('Day of the trip, from 1'),
  meal: MealKind,
  locked: z.boolean().default(false).describe('Kept as it is when the menu is planned again'),
  byHand: z.boolean().default(false).describe('Changed by hand since it was planned'),
  opened: z.array(OpenedLot).max(50),
});
export type ChosenMeal = z.infer<typeof ChosenMeal>;

const TripFields = z.strictObject({
  name: ShortText.describe('Name of the trip'),
  startDate: CalendarDate.describe('Date of day 1'),
  dayCount: z
    .int('must be a whole number of days')
    .min(1, 'must be at least 1 day')
    .max(90, 'must be at most 90 days; plan a longer journey as several trips with a resupply between them')
    .describe('Number of days'),
  firstMeal: MainMeal.optional().describe('First meal of the first day'),
  lastMeal: MainMeal.optional().describe('Last meal of the last day'),
  energyKcal: DailyEnergyKcal.optional().describe(
    'Energy target for every eater without their own, kcal per full day',
  ),
  party: z
    .array(Eater)
    .min(1, 'must have at least one eater')
    .max(40, 'must have at most 40 eaters')
    .describe('Who eats and carries'),
  days: z
    .array(DayConditions)
    .max(90)
    .default([])
    .describe('Conditions day by day; a day that is left out takes the defaults'),
  stove: Stove.default({}),
  menu: z
    .array(ChosenMeal)
    .max(600)
    .default([])
    .describe('Meals already chosen; the planner fills the meals that are not listed'),
});

/** A trip as a person enters it. */
export const Trip = TripFields.superRefine((trip, context) => {
  const fail = (path: (string | number)[], message: string) =>
    context.addIssue({ code: 'custom', path, message });

  const names = new Set<string>();
  trip.party.forEach(({ name }, index) => {
    if (names.has(name))
      fail(
        ['party', index, 'name'],
        `"${name}" is in the party twice; tell them apart, for instance by an initial`,
      );
    names.add(name);
  });

  if (trip.days.length > trip.dayCount)
    fail(
      ['days'],
      `holds ${trip.days.length} days, but the trip has only ${trip.dayCount}; remove some or raise the number of days`,
    );

  if (
    trip.dayCount === 1 &&
    trip.firstMeal &&
    trip.lastMeal &&
    MainMeal.options.indexOf(trip.firstMeal) > MainMeal.options.indexOf(trip.lastMeal)
  )
    fail(['lastMeal'], `is ${trip.lastMeal}, before the first meal, ${trip.firstMeal}, of the same day`);

  const meals = new Set<string>();
  trip.menu.forEach(({ day, meal, opened }, index) => {
    if (day > trip.dayCount)
      fail(['menu', index, 'day'], `is day ${day}, but the trip has only ${trip.dayCount} days`);
    const key = `${day} ${meal}`;
    if (meals.has(key)) fail(['menu', index], `lists the ${meal} of day ${day} a second time`);
    meals.add(key);
    const codes = new Set<string>();
    opened.forEach(({ code }, position) => {
      if (codes.has(code))
        fail(
          ['menu', index, 'opened', position, 'code'],
          `lists "${code}" twice at one meal; add up the pouches`,
        );
      codes.add(code);
    });
  });
});
export type Trip = z.infer<typeof Trip>;
export type TripInput = z.input<typeof Trip>;
