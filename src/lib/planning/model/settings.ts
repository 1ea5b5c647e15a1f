import { z } from 'zod';
import { say, text, type Text } from '../../texts/say.ts';
import { wrong } from './faults.ts';
import { Allergen, CalendarDate, Diet, FuelKind, MealKind, ShortText } from './kinds.ts';
import { Observation } from './observation.ts';
import { FuelContainer } from './trip.ts';

const Share = z
  .number(wrong('not-a-share'))
  .min(0, wrong('negative'))
  .max(1, wrong('over', { most: 100, unit: '%' }));

/** Food that a shop sells anywhere, to fill what the shelf lacks. */
export const Staple = z.strictObject({
  name: ShortText,
  meals: z.array(MealKind).min(1, wrong('no-meal')),
  kcalPer100G: z
    .number(wrong('not-kcal'))
    .positive(wrong('not-positive'))
    .max(930, wrong('richer-than-fat', { most: 930 }))
    .describe('Energy as bought, kcal per 100 g'),
  allergens: z.array(Allergen).default([]),
  diets: z.array(Diet).default([]),
  portionG: z
    .number(wrong('not-a-weight'))
    .min(1, wrong('under', { least: 1, unit: 'g' }))
    .max(1000, wrong('over', { most: 1, unit: 'kg' }))
    .optional()
    .describe('What one person takes of it at a meal, g; left out: as usual for such food'),
  packetG: z
    .number(wrong('not-a-weight'))
    .min(1, wrong('under', { least: 1, unit: 'g' }))
    .max(50_000, wrong('over', { most: 50, unit: 'kg' }))
    .optional()
    .describe('Food in one packet as shops sell it, g; left out: as usual for such food'),
  packetCostMinor: z
    .int(wrong('not-minor-units'))
    .nonnegative(wrong('negative'))
    .max(100_000_000, wrong('over', { most: 100_000_000, unit: 'minor' }))
    .optional()
    .describe('Price of one packet in minor units of the currency; left out: not known'),
});
export type Staple = z.infer<typeof Staple>;

const container = (label: Text, fuel: FuelContainer['fuel'], netG: number, tareG: number): FuelContainer => ({
  label: say(label),
  fuel,
  netG,
  tareG,
});

/**
 * Usual sizes of screw-on gas canisters and of fuel bottles, with the empty weight of a usual one (common practice; weigh your own).
 * Fuel in a bottle: 0.70 g/ml naphtha, 0.80 g/ml kerosene, 0.79 g/ml ethanol (rule of thumb; the data sheet of the fuel would replace it).
 */
const usualContainers = (): FuelContainer[] => [
  container(text('small canister, 100 g'), 'canister-gas', 100, 95),
  container(text('medium canister, 230 g'), 'canister-gas', 230, 150),
  container(text('large canister, 450 g'), 'canister-gas', 450, 210),
  container(text('bottle of 0.3 l'), 'naphtha', 210, 80),
  container(text('bottle of 0.6 l'), 'naphtha', 420, 125),
  container(text('bottle of 0.9 l'), 'naphtha', 630, 165),
  container(text('bottle of 0.3 l'), 'kerosene', 240, 80),
  container(text('bottle of 0.6 l'), 'kerosene', 480, 125),
  container(text('bottle of 0.9 l'), 'kerosene', 720, 165),
  container(text('plastic bottle of 0.25 l'), 'ethanol', 198, 20),
  container(text('plastic bottle of 0.5 l'), 'ethanol', 395, 30),
  container(text('plastic bottle of 1 l'), 'ethanol', 790, 50),
];

const VEGAN: Staple['diets'] = ['vegan'];
/** Energy figures are rules of thumb in round values; the packet in the shop decides, for allergens too. */
const usualStaples = (): Staple[] => [
  {
    name: say('certified gluten-free oats'),
    meals: ['breakfast'],
    kcalPer100G: 375,
    allergens: [],
    diets: VEGAN,
  },
  {
    name: say('muesli with raisins'),
    meals: ['breakfast'],
    kcalPer100G: 365,
    allergens: ['gluten', 'wheat', 'nuts'],
    diets: VEGAN,
  },
  {
    name: say('crispbread'),
    meals: ['lunch'],
    kcalPer100G: 350,
    allergens: ['gluten', 'wheat'],
    diets: VEGAN,
  },
  { name: say('rice cakes'), meals: ['lunch', 'snack'], kcalPer100G: 385, allergens: [], diets: VEGAN },
  {
    name: say('hard cheese'),
    meals: ['lunch', 'snack'],
    kcalPer100G: 400,
    allergens: ['milk'],
    diets: ['vegetarian'],
  },
  { name: say('mixed tree nuts'), meals: ['snack'], kcalPer100G: 610, allergens: ['nuts'], diets: VEGAN },
  { name: say('sunflower seeds'), meals: ['snack'], kcalPer100G: 580, allergens: [], diets: VEGAN },
  {
    name: say('raisins'),
    meals: ['snack', 'breakfast'],
    kcalPer100G: 300,
    allergens: ['sulphites'],
    diets: VEGAN,
  },
  { name: say('dates'), meals: ['snack', 'breakfast'], kcalPer100G: 280, allergens: [], diets: VEGAN },
  { name: say('instant rice'), meals: ['dinner'], kcalPer100G: 360, allergens: [], diets: VEGAN },
  {
    name: say('potato flakes'),
    meals: ['dinner'],
    kcalPer100G: 355,
    allergens: ['sulphites', 'milk'],
    diets: ['vegetarian'],
  },
  {
    name: say('couscous'),
    meals: ['dinner', 'lunch'],
    kcalPer100G: 360,
    allergens: ['gluten', 'wheat'],
    diets: VEGAN,
  },
  { name: say('olive oil'), meals: ['dinner'], kcalPer100G: 880, allergens: [], diets: VEGAN },
  {
    name: say('whole milk powder'),
    meals: ['drink', 'breakfast'],
    kcalPer100G: 490,
    allergens: ['milk'],
    diets: ['vegetarian'],
  },
  { name: say('cocoa powder with sugar'), meals: ['drink'], kcalPer100G: 390, allergens: [], diets: VEGAN },
];

/** One boil measured at home or on the trail: from it comes the efficiency of this stove and pot. */
export const StoveRun = z
  .strictObject({
    date: CalendarDate,
    fuel: FuelKind,
    grossBeforeG: z
      .number(wrong('not-a-weight'))
      .positive(wrong('not-positive'))
      .max(20_000, wrong('over', { most: 20, unit: 'kg' }))
      .describe('Canister or bottle before, g'),
    grossAfterG: z
      .number(wrong('not-a-weight'))
      .positive(wrong('not-positive'))
      .max(20_000, wrong('over', { most: 20, unit: 'kg' }))
      .describe('The same after, g'),
    waterMl: z
      .number(wrong('not-a-volume'))
      .min(50, wrong('under', { least: 50, unit: 'ml' }))
      .max(20_000, wrong('over', { most: 20, unit: 'l' }))
      .describe('Water brought to the boil, ml'),
    fromC: z
      .number(wrong('not-a-temperature'))
      .min(0, wrong('under', { least: 0, unit: '°C' }))
      .max(60, wrong('over', { most: 60, unit: '°C' }))
      .describe('Temperature of the water before, °C'),
    altitudeM: z
      .number(wrong('not-an-altitude'))
      .min(-430, wrong('under', { least: -430, unit: 'm' }))
      .max(8848, wrong('over', { most: 8848, unit: 'm' }))
      .describe('Where it was boiled, m'),
  })
  .refine((run) => run.grossAfterG < run.grossBeforeG, {
    path: ['grossAfterG'],
    error: wrong('no-fuel-burnt'),
  });
export type StoveRun = z.infer<typeof StoveRun>;

const points = (what: string) =>
  z
    .number(wrong('not-points'))
    .min(0, wrong('negative'))
    .max(10_000, wrong('over', { most: 10_000, unit: 'points' }))
    .describe(what);

/**
 * What a menu costs, in points: the less, the better the menu. One point is one kcal missing to a person's day, and the others say for what of theirs one would
 * give up as much. Not physics but taste (rule of thumb).
 */
export const MenuCosts = z.strictObject({
  missingKcal: points("Each kcal missing to a person's day").default(1),
  leftOverKcal: points('Each kcal opened and not eaten').default(0.3),
  secondDish: points('A second dish to cook at one meal').default(40),
  repeat: points('Each time that a person eats a dish again too soon').default(15),
  disliked: points('Each plate of a dish that its eater would rather not have').default(20),
  carriedKgH: points(
    'Each kilogram of pouches, or of water for them, carried for an hour of walking',
  ).default(1),
  fuelG: points('Each gram of fuel burnt for the meals').default(0.1),
  shelfLifeYear: points(
    'Each year of shelf life that an opened pouch would still have had, up to two',
  ).default(2),
  proteinG: points("Each gram of protein that a person's day falls short of the floor").default(0.1),
});
export type MenuCosts = z.infer<typeof MenuCosts>;

/** What holds for every trip of a household until it is changed. */
export const SettingsFields = z.strictObject({
  unitSystem: z.enum(['metric', 'us']).default('metric').describe('Units shown: metric or US customary'),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/, wrong('not-a-currency'))
    .default('EUR')
    .describe('ISO 4217 code'),
  mealShares: z
    .strictObject({ breakfast: Share, lunch: Share, snack: Share, dinner: Share, drink: Share })
    .default({ breakfast: 0.22, lunch: 0.22, snack: 0.16, dinner: 0.35, drink: 0.05 })
    .refine(
      (shares) => Math.abs(Object.values(shares).reduce((sum, share) => sum + share, 0) - 1) < 0.0005,
      wrong('not-a-whole'),
    )
    .describe('Share of the energy of a full day that each meal brings'),
  repeatAfterDays: z
    .int(wrong('not-whole-days'))
    .min(0, wrong('negative'))
    .max(14, wrong('over', { most: 14, unit: 'd' }))
    .default(1)
    .describe('Days for which another recipe is preferred before the same one comes again'),
  dryOpenDays: z
    .int(wrong('not-whole-days'))
    .min(1, wrong('under', { least: 1, unit: 'd' }))
    .max(14, wrong('over', { most: 14, unit: 'd' }))
    .default(3)
    .describe('Days on which an opened pouch of food that is eaten dry may be eaten of'),
  proteinFloorG: z
    .number(wrong('not-grams'))
    .min(0, wrong('negative'))
    .max(100, wrong('over', { most: 100, unit: 'g' }))
    .default(20)
    .describe('Least protein in the food opened on a day, g per 1000 kcal, where it is known'),
  menuCosts: MenuCosts.prefault({}),
  waterAtRestMl: z
    .number(wrong('not-a-volume'))
    .min(1000, wrong('under', { least: 1000, unit: 'ml' }))
    .max(8000, wrong('over', { most: 8000, unit: 'ml' }))
    .default(2250)
    .describe('Water of a day at rest, ml per eater, the water in the food included'),
  drinkPerWalkingHourMl: z
    .number(wrong('not-a-volume'))
    .min(0, wrong('negative'))
    .max(1400, wrong('over', { most: 1400, unit: 'ml' }))
    .default(400)
    .describe('Least drinking water for each hour of walking, ml per eater; heat and hard work raise it'),
  hotWaterC: z
    .number()
    .min(40, wrong('under', { least: 40, unit: '°C' }))
    .max(95, wrong('over', { most: 95, unit: '°C' }))
    .default(70)
    .describe('Temperature that "hot" water is heated to, °C'),
  insulatedSteep: z.boolean().default(false).describe('Pouches steep in an insulating cover'),
  stoveRuns: z
    .array(StoveRun)
    .max(200)
    .default([])
    .describe('Measured boils: the stove weighed before and after'),
  learned: z
    .array(Observation)
    .max(2000, wrong('too-many', { most: 2000 }))
    .default([])
    .describe('What finished trips taught: appetites, fuel burnt, hours walked'),
  fuelContainers: z
    .array(FuelContainer)
    .min(1, wrong('no-size'))
    .max(60, wrong('too-many', { most: 60 }))
    .default(usualContainers),
  photosForReaders: z
    .boolean()
    .default(false)
    .describe('Whether photos of food are shown to those who only read'),
  staples: z
    .array(Staple)
    .max(200, wrong('too-many', { most: 200 }))
    .default(usualStaples),
  shopPrices: z
    .array(
      z.strictObject({
        recipe: ShortText.describe('Name of the dish'),
        servingMinor: z
          .int(wrong('not-minor-units'))
          .nonnegative(wrong('negative'))
          .max(100_000_000, wrong('over', { most: 100_000_000, unit: 'minor' }))
          .describe('What a serving of such a dish costs ready-made, in minor units of the currency'),
      }),
    )
    .max(1000, wrong('too-many', { most: 1000 }))
    .default([])
    .describe('Prices of bought dishes, to compare the home-dried ones with'),
});
/** Rules of menus that there are no more, from settings as they were stored before. */
const RETIRED = ['maxRecipesPerMeal', 'openFromShare', 'eatUpToShare', 'mealFloorShare'];
/** A repeat was counted once for a whole party, of about four. */
const OLD_REPEAT_SHARE = 1 / 4;

/** Settings of before as they are now; anything else as it is. */
function takenOver(settings: unknown): unknown {
  if (typeof settings !== 'object' || settings === null) return settings;
  const now = Object.fromEntries(Object.entries(settings).filter(([name]) => !RETIRED.includes(name)));
  const costs: unknown = now['menuCosts'];
  if (typeof costs !== 'object' || costs === null || !('smallMealKcal' in costs)) return now;
  const {
    smallMealKcal: _small,
    aboveCeilingKcal: _above,
    repeat,
    ...kept
  } = costs as Record<string, unknown>;
  return {
    ...now,
    menuCosts: { ...kept, ...(typeof repeat === 'number' && { repeat: repeat * OLD_REPEAT_SHARE }) },
  };
}

export const Settings = z.preprocess(takenOver, SettingsFields);
export type Settings = z.infer<typeof SettingsFields>;

export const defaultSettings = (): Settings => Settings.parse({});
