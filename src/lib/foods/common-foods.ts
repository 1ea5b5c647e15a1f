import type { CookingClass, Food } from '../planning/model/composition.ts';
import type { Allergen } from '../planning/model/allergens.ts';
import type { Diet } from '../planning/model/diets.ts';

/** name, then g per 100 g: water, protein, fat, available carbohydrate, fibre; then kcal per 100 g, and what else is known. */
type Row = readonly [
  name: string,
  waterG: number,
  proteinG: number,
  fatG: number,
  carbohydrateG: number,
  fibreG: number,
  energyKcal: number | undefined,
  more?: { alcoholG?: number; gPerMl?: number; gPerPiece?: number; cookingClass?: CookingClass },
];

/** What the rows of one block have in common. Left-out allergens: makers differ, so nobody can state them but the label. */
type Common = {
  readonly diets: readonly Diet[];
  readonly allergens?: readonly Allergen[];
  readonly cookingClass?: CookingClass;
};

const SOURCE = 'USDA FoodData Central values, memory';

const rows = (common: Common, table: readonly Row[]): Food[] =>
  table.map(([name, waterG, proteinG, fatG, carbohydrateG, fibreG, energyKcal, more = {}]) => {
    const { alcoholG = 0, ...rest } = more;
    return {
      name,
      composition: {
        waterG,
        proteinG,
        fatG,
        carbohydrateG,
        fibreG,
        alcoholG,
        ...(energyKcal !== undefined && { energyKcal }),
      },
      source: SOURCE,
      diets: [...common.diets],
      ...(common.allergens && { allergens: [...common.allergens] }),
      cookingClass: common.cookingClass ?? 'other',
      ...rest,
    };
  });

const NO_ALCOHOL: readonly Diet[] = ['no-alcohol'];
const VEGAN: readonly Diet[] = ['vegan', ...NO_ALCOHOL];
const VEGETARIAN: readonly Diet[] = ['vegetarian', ...NO_ALCOHOL];
const NEITHER_PORK_NOR_BEEF: readonly Diet[] = ['no-pork', 'no-beef', ...NO_ALCOHOL];
const BEEF: readonly Diet[] = ['no-pork', ...NO_ALCOHOL];
const PORK: readonly Diet[] = ['no-beef', ...NO_ALCOHOL];
/** Rennet may come from a calf's stomach. */
const RENNET: readonly Diet[] = ['no-pork', ...NO_ALCOHOL];
/** The table states less than the parts give, for acids or fibre: energy is left to the factors. */
const UNSTATED = undefined;

/**
 * Common ingredients of home cooking, raw unless the name says otherwise, of the part that is eaten; per 100 g.
 *
 * Source: round values of USDA FoodData Central, from memory: carbohydrate is that table's carbohydrate by difference less fibre,
 * energy is what it states. Cups hold 236.6 ml. Allergens and diets are those of the food itself; cross-contact and recipes of makers are
 * for the label. Pine nuts count as nuts, as US law has them; dried apricots, apples and tomatoes as sulphited. Wine and beer state
 * no diet: what they were fined with is not known.
 */
export const COMMON_FOODS: readonly Food[] = [
  ...rows({ diets: VEGAN, allergens: [] }, [
    ['Rice, white, dry', 11.6, 7.1, 0.7, 78.7, 1.3, 365, { gPerMl: 0.78 }],
    ['Rice, white, cooked', 68.4, 2.7, 0.3, 27.8, 0.4, 130, { gPerMl: 0.67 }],
    ['Rice, brown, dry', 10.4, 7.9, 2.9, 73.7, 3.5, 370, { gPerMl: 0.78 }],
    ['Rice, brown, cooked', 73.1, 2.6, 0.9, 21.2, 1.8, 111, { gPerMl: 0.82 }],
    ['Rice noodles, dry', 11.9, 6, 0.6, 78.6, 1.6, 364],
    ['Rice flour', 11.9, 6, 1.4, 77.7, 2.4, 366, { gPerMl: 0.67 }],
    ['Quinoa, dry', 13.3, 14.1, 6.1, 57.2, 7, 368, { gPerMl: 0.72 }],
    ['Quinoa, cooked', 71.6, 4.4, 1.9, 18.5, 2.8, 120, { gPerMl: 0.78 }],
    ['Millet, dry', 8.7, 11, 4.2, 64.4, 8.5, 378, { gPerMl: 0.85 }],
    ['Millet, cooked', 71.4, 3.5, 1, 22.4, 1.3, 119, { gPerMl: 0.74 }],
    ['Buckwheat groats, dry', 8.4, 11.7, 2.7, 64.7, 10.3, 346, { gPerMl: 0.69 }],
    ['Buckwheat groats, cooked', 75.7, 3.4, 0.6, 17.2, 2.7, 92, { gPerMl: 0.71 }],
    ['Polenta, maize meal, dry', 11.2, 7.1, 1.8, 75.5, 3.9, 370, { gPerMl: 0.66 }],
    ['Maize starch', 8.3, 0.3, 0.1, 90.4, 0.9, 381, { gPerMl: 0.54 }],
    ['Maltodextrin', 5, 0, 0, 95, 0, 380, { gPerMl: 0.5 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['wheat', 'gluten'] }, [
    ['Wheat flour, white', 11.9, 10.3, 1, 73.6, 2.7, 364, { gPerMl: 0.53 }],
    ['Wheat flour, wholemeal', 10.7, 13.2, 2.5, 61.3, 10.7, 340, { gPerMl: 0.51 }],
    ['Wheat semolina', 12.7, 12.7, 1.1, 68.9, 3.9, 360, { gPerMl: 0.71 }],
    ['Wheat germ', 11.1, 23.2, 9.7, 38.6, 13.2, 360, { gPerMl: 0.49 }],
    ['Wheat gluten', 8.2, 75.2, 1.9, 13.2, 0.6, 370, { gPerMl: 0.5 }],
    ['Pasta, dry', 9.9, 13, 1.5, 71.5, 3.2, 371],
    ['Pasta, cooked', 62.1, 5.8, 0.9, 29.1, 1.8, 158, { gPerMl: 0.59 }],
    ['Pasta, wholewheat, dry', 8.9, 13.9, 2.9, 64.2, 9.2, 352],
    ['Pasta, wholewheat, cooked', 67.2, 5.3, 0.5, 22, 4.5, 124, { gPerMl: 0.59 }],
    ['Couscous, dry', 8.6, 12.8, 0.6, 72.4, 5, 376, { gPerMl: 0.73 }],
    ['Couscous, cooked', 72.6, 3.8, 0.2, 21.8, 1.4, 112, { gPerMl: 0.66 }],
    ['Bulgur, dry', 9, 12.3, 1.3, 63.4, 12.5, 342, { gPerMl: 0.59 }],
    ['Bulgur, cooked', 77.8, 3.1, 0.2, 14.1, 4.5, 83, { gPerMl: 0.77 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['gluten'] }, [
    ['Oats, rolled', 10.8, 13.2, 6.5, 57.6, 10.1, 379, { gPerMl: 0.34 }],
    ['Oat porridge, cooked in water', 83.6, 2.5, 1.5, 10.3, 1.7, 71, { gPerMl: 0.99 }],
    ['Barley, pearled, dry', 10.1, 9.9, 1.2, 62.1, 15.6, 352, { gPerMl: 0.85 }],
    ['Barley, pearled, cooked', 68.8, 2.3, 0.4, 24.4, 3.8, 123, { gPerMl: 0.66 }],
    ['Rye flour', 9.9, 9.4, 1.8, 62.9, 14.6, 354, { gPerMl: 0.43 }],
  ]),
  ...rows({ diets: VEGETARIAN, allergens: ['wheat', 'gluten', 'egg'] }, [
    ['Egg noodles, dry', 9, 14.2, 4.4, 68, 3.3, 384, { gPerMl: 0.16 }],
    ['Egg noodles, cooked', 67.7, 4.5, 2.1, 24, 1.2, 138, { gPerMl: 0.68 }],
  ]),
  ...rows({ diets: VEGETARIAN }, [
    ['Bread, white', 36.4, 7.6, 3.3, 48.2, 2.4, 266, { gPerPiece: 25 }],
    ['Bread, wholemeal', 38.6, 12.5, 3.5, 36.7, 6, 252, { gPerPiece: 32 }],
    ['Breadcrumbs, dry', 6.5, 13.4, 5.3, 67.5, 4.5, 395, { gPerMl: 0.46 }],
    ['Crispbread, rye', 6.1, 7.9, 1.3, 65.7, 16.5, 366, { gPerPiece: 10 }],
  ]),
  ...rows({ diets: VEGAN, allergens: [] }, [
    ['Lentils, dry', 8.3, 24.6, 1.1, 52.7, 10.7, 352, { gPerMl: 0.81 }],
    ['Lentils, red, dry', 7.8, 23.9, 2.2, 52.3, 10.8, 358, { gPerMl: 0.81 }],
    ['Lentils, cooked', 69.6, 9, 0.4, 12.2, 7.9, 116, { gPerMl: 0.84 }],
    ['Chickpeas, dry', 7.7, 20.5, 6, 50.8, 12.2, 378, { gPerMl: 0.85 }],
    ['Chickpeas, cooked', 60.2, 8.9, 2.6, 19.8, 7.6, 164, { gPerMl: 0.69 }],
    ['Chickpeas, tinned, drained', 66.7, 7.1, 2.8, 16.1, 6.4, 139, { gPerMl: 0.67 }],
    ['Kidney beans, dry', 11.8, 22.5, 1.1, 46.1, 15.2, 337, { gPerMl: 0.78 }],
    ['Kidney beans, cooked', 66.9, 8.7, 0.5, 15.4, 7.4, 127, { gPerMl: 0.75 }],
    ['Kidney beans, tinned, drained', 68, 8, 0.9, 15.5, 6, 121, { gPerMl: 0.75 }],
    ['Black beans, dry', 11, 21.6, 1.4, 46.9, 15.5, 341, { gPerMl: 0.82 }],
    ['Black beans, cooked', 65.7, 8.9, 0.5, 15, 8.7, 132, { gPerMl: 0.73 }],
    ['White beans, dry', 12.1, 22.3, 1.5, 45.5, 15.3, 337, { gPerMl: 0.88 }],
    ['White beans, cooked', 63.8, 8.2, 0.6, 15.6, 10.5, 140, { gPerMl: 0.77 }],
    ['Split peas, dry', 11.3, 24.6, 1.2, 34.9, 25.5, 341, { gPerMl: 0.83 }],
    ['Split peas, cooked', 69.5, 8.3, 0.4, 12.8, 8.3, 118, { gPerMl: 0.83 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['sesame'] }, [
    ['Hummus', 66.6, 7.9, 9.6, 8.3, 6, 166, { gPerMl: 1.04 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['lupin'] }, [
    ['Lupin beans, dry', 10.4, 36.2, 9.7, 21.5, 18.9, 371, { gPerMl: 0.76 }],
    ['Lupin beans, cooked', 71.1, 15.6, 2.9, 7.1, 2.8, 119, { gPerMl: 0.7 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['soy'] }, [
    ['Soya beans, dry', 8.5, 36.5, 19.9, 20.9, 9.3, 446, { gPerMl: 0.79 }],
    ['Soya mince, textured, dry', 7.3, 51.5, 1.2, 16.4, 17.5, 327, { gPerMl: 0.4 }],
    ['Soya drink', 88.1, 3.3, 1.8, 5.7, 0.6, 54, { gPerMl: 1.03 }],
    ['Tofu, firm', 69.8, 17.3, 8.7, 0.5, 2.3, 144],
    ['Tofu, soft', 87.3, 7.2, 3.7, 1, 0.2, 61],
    ['Tempeh', 59.7, 20.3, 10.8, 2.6, 5, 192],
  ]),
  ...rows({ diets: VEGAN, allergens: ['soy', 'gluten'] }, [
    ['Miso', 43, 12.8, 6, 20, 5.4, 198, { gPerMl: 1.16 }],
  ]),
  ...rows({ diets: VEGAN, allergens: [] }, [
    ['Onion', 89.1, 1.1, 0.1, 7.6, 1.7, 40, { gPerPiece: 110 }],
    ['Spring onion', 89.8, 1.8, 0.2, 4.7, 2.6, 32, { gPerPiece: 15 }],
    ['Leek', 83, 1.5, 0.3, 12.4, 1.8, 61, { gPerPiece: 89 }],
    ['Garlic', 58.6, 6.4, 0.5, 31, 2.1, 149, { gPerPiece: 3 }],
    ['Ginger root', 78.9, 1.8, 0.8, 15.8, 2, 80],
    ['Chilli, red', 88, 1.9, 0.4, 7.3, 1.5, 40, { gPerPiece: 45 }],
    ['Carrot', 88.3, 0.9, 0.2, 6.8, 2.8, 41, { gPerPiece: 61 }],
    ['Parsnip', 79.5, 1.2, 0.3, 13.1, 4.9, 75, { gPerPiece: 130 }],
    ['Beetroot', 87.6, 1.6, 0.2, 6.8, 2.8, 43, { gPerPiece: 82 }],
    ['Potato', 79.2, 2.1, 0.1, 15.4, 2.1, 77, { gPerPiece: 170 }],
    ['Potato, boiled', 77.5, 1.7, 0.1, 18.2, 1.8, 86],
    ['Potato flakes, dry', 6.6, 8.3, 0.4, 74.6, 6.6, 354, { gPerMl: 0.25 }],
    ['Sweet potato', 77.3, 1.6, 0.1, 17.1, 3, 86, { gPerPiece: 130 }],
    ['Sweet potato, boiled', 80.1, 1.4, 0.1, 15.2, 2.5, 76],
    ['Tomato', 94.5, 0.9, 0.2, 2.7, 1.2, 18, { gPerPiece: 120 }],
    ['Tomatoes, tinned', 94.7, 0.8, 0.2, 1.6, 1.9, 16, { gPerMl: 1.01 }],
    ['Tomato passata', 87.9, 1.7, 0.2, 7.1, 1.9, 38, { gPerMl: 1.06 }],
    ['Tomato paste', 73.5, 4.3, 0.5, 14.8, 4.1, 82, { gPerMl: 1.11 }],
    ['Bell pepper, red', 92.2, 1, 0.3, 3.9, 2.1, 31, { gPerPiece: 120 }],
    ['Bell pepper, green', 93.9, 0.9, 0.2, 2.9, 1.7, 20, { gPerPiece: 120 }],
    ['Courgette', 94.8, 1.2, 0.3, 2.1, 1, 17, { gPerPiece: 196 }],
    ['Aubergine', 92.3, 1, 0.2, 2.9, 3, 25, { gPerPiece: 450 }],
    ['Pumpkin', 91.6, 1, 0.1, 6, 0.5, 26],
    ['Butternut squash', 86.4, 1, 0.1, 9.7, 2, 45],
    ['Cucumber', 95.2, 0.7, 0.1, 3.1, 0.5, 15, { gPerPiece: 300 }],
    ['Mushrooms, white', 92.5, 3.1, 0.3, 2.3, 1, 22, { gPerPiece: 18 }],
    ['Mushrooms, shiitake, dried', 9.5, 9.6, 1, 63.9, 11.5, 296, { gPerPiece: 3.6 }],
    ['Broccoli', 89.3, 2.8, 0.4, 4, 2.6, 34],
    ['Cauliflower', 92.1, 1.9, 0.3, 3, 2, 25],
    ['Cabbage, white', 92.2, 1.3, 0.1, 3.3, 2.5, 25],
    ['Sauerkraut', 92.5, 0.9, 0.1, 1.4, 2.9, 19, { gPerMl: 0.6 }],
    ['Kale', 89.6, 2.9, 1.5, 0.3, 4.1, 35],
    ['Spinach', 91.4, 2.9, 0.4, 1.4, 2.2, 23],
    ['Spinach, frozen', 90.2, 3.6, 0.6, 1.3, 2.9, 29],
    ['Asparagus', 93.2, 2.2, 0.1, 1.8, 2.1, 20, { gPerPiece: 16 }],
    ['Green beans', 90.3, 1.8, 0.2, 4.3, 2.7, 31],
    ['Peas, green', 78.9, 5.4, 0.4, 8.8, 5.7, 81, { gPerMl: 0.61 }],
    ['Peas, green, frozen', 80, 5.2, 0.4, 9.1, 4.5, 77, { gPerMl: 0.57 }],
    ['Sweetcorn', 76, 3.3, 1.4, 16.7, 2, 86, { gPerMl: 0.61 }],
    ['Sweetcorn, tinned, drained', 76.9, 2.6, 1, 16.6, 2, 81, { gPerMl: 0.69 }],
    ['Olives, black, tinned', 80, 0.8, 10.7, 3.1, 3.2, 115, { gPerPiece: 4 }],
    ['Parsley, fresh', 87.7, 3, 0.8, 3, 3.3, 36],
    ['Basil, fresh', 92.1, 3.2, 0.6, 1.1, 1.6, 23],
    ['Coconut milk, tinned', 72.9, 2, 21.3, 2.8, 0, 197, { gPerMl: 0.95 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['celery'] }, [
    ['Celery', 95.4, 0.7, 0.2, 1.4, 1.6, 14, { gPerPiece: 40 }],
    ['Celeriac', 88, 1.5, 0.3, 7.4, 1.8, 42],
    ['Celery seed', 6, 18.1, 25.3, 29.6, 11.8, 392, { gPerMl: 0.41 }],
  ]),
  ...rows({ diets: VEGAN, allergens: [] }, [
    ['Apple', 85.6, 0.3, 0.2, 11.4, 2.4, 52, { gPerPiece: 182 }],
    ['Apple sauce, unsweetened', 88.2, 0.2, 0.1, 10.2, 1.1, 42, { gPerMl: 1.03 }],
    ['Pear', 84, 0.4, 0.1, 12.1, 3.1, 57, { gPerPiece: 178 }],
    ['Banana', 74.9, 1.1, 0.3, 20.2, 2.6, 89, { gPerPiece: 118 }],
    ['Banana chips, fried', 4.3, 2.3, 33.6, 50.7, 7.7, 519],
    ['Orange', 86.8, 0.9, 0.1, 9.4, 2.4, 47, { gPerPiece: 131 }],
    ['Orange juice', 88.3, 0.7, 0.2, 10.2, 0.2, 45, { gPerMl: 1.05 }],
    ['Lemon juice', 92.3, 0.4, 0.2, 6.6, 0.3, 22, { gPerMl: 1.03 }],
    ['Peach', 88.9, 0.9, 0.3, 8, 1.5, 39, { gPerPiece: 150 }],
    ['Apricot', 86.4, 1.4, 0.4, 9.1, 2, 48, { gPerPiece: 35 }],
    ['Plum', 87.2, 0.7, 0.3, 10, 1.4, 46, { gPerPiece: 66 }],
    ['Cherries', 82.3, 1.1, 0.2, 13.9, 2.1, 63, { gPerPiece: 8 }],
    ['Strawberries', 91, 0.7, 0.3, 5.7, 2, 32, { gPerPiece: 12 }],
    ['Raspberries', 85.8, 1.2, 0.7, 5.4, 6.5, 52, { gPerMl: 0.52 }],
    ['Blueberries', 84.2, 0.7, 0.3, 12.1, 2.4, 57, { gPerMl: 0.63 }],
    ['Grapes', 80.5, 0.7, 0.2, 17.2, 0.9, 69, { gPerPiece: 5 }],
    ['Mango', 83.5, 0.8, 0.4, 13.4, 1.6, 60, { gPerPiece: 336 }],
    ['Pineapple', 86, 0.5, 0.1, 11.7, 1.4, 50],
    ['Kiwi fruit', 83.1, 1.1, 0.5, 11.7, 3, 61, { gPerPiece: 69 }],
    ['Avocado', 73.2, 2, 14.7, 1.8, 6.7, 160, { gPerPiece: 200 }],
    ['Raisins', 15.4, 3.1, 0.5, 75.5, 3.7, 299, { gPerMl: 0.61 }],
    ['Dates, dried', 20.5, 2.5, 0.4, 67, 8, 282, { gPerPiece: 7 }],
    ['Prunes', 30.9, 2.2, 0.4, 56.8, 7.1, 240, { gPerPiece: 9.5 }],
    ['Figs, dried', 30.1, 3.3, 0.9, 54.1, 9.8, 249, { gPerPiece: 8.4 }],
    ['Cranberries, dried, sweetened', 15.8, 0.2, 1.1, 77.5, 5.3, 308, { gPerMl: 0.5 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['sulphites'] }, [
    ['Apricots, dried', 30.9, 3.4, 0.5, 55.3, 7.3, 241, { gPerPiece: 3.5 }],
    ['Apple, dried', 31.8, 0.9, 0.3, 57.2, 8.7, 243, { gPerPiece: 6.4 }],
    ['Tomatoes, dried', 14.6, 14.1, 3, 43.5, 12.3, 258, { gPerMl: 0.23 }],
  ]),
  ...rows({ diets: BEEF, allergens: [] }, [
    ['Beef mince, 15 % fat, raw', 65.5, 18.6, 15, 0, 0, 215, { cookingClass: 'minced meat' }],
    ['Beef mince, 5 % fat, raw', 72.8, 21.4, 5, 0, 0, 137, { cookingClass: 'minced meat' }],
    ['Beef, lean, for stewing, raw', 71.8, 22.5, 4.7, 0, 0, 132, { cookingClass: 'whole meat' }],
    ['Beef mince, browned', 56, 27.7, 15.3, 0, 0, 256],
    ['Beef, cured and dried', 53.8, 31.1, 1.9, 2.8, 0, 153],
  ]),
  ...rows({ diets: PORK, allergens: [] }, [
    ['Pork mince, raw', 61.1, 16.9, 21.2, 0, 0, 263, { cookingClass: 'minced meat' }],
    ['Pork loin, lean, raw', 72.2, 21.4, 5.7, 0, 0, 143, { cookingClass: 'whole meat' }],
    ['Bacon, raw', 45.9, 12.6, 37.1, 1.3, 0, 393, { cookingClass: 'whole meat' }],
  ]),
  ...rows({ diets: PORK }, [
    ['Ham, cooked, sliced', 67.3, 16.6, 8.6, 2.5, 1.3, 163],
    ['Salami, dry', 36.2, 22.6, 33.7, 1.6, 0, 407],
  ]),
  ...rows({ diets: NEITHER_PORK_NOR_BEEF, allergens: [] }, [
    ['Lamb mince, raw', 59.5, 16.6, 23.4, 0, 0, 282, { cookingClass: 'minced meat' }],
    ['Lamb leg, lean, raw', 74, 20.6, 4.5, 0, 0, 128, { cookingClass: 'whole meat' }],
    ['Venison, raw', 73.6, 23, 2.4, 0, 0, 120, { cookingClass: 'whole meat' }],
  ]),
  ...rows({ diets: NEITHER_PORK_NOR_BEEF, allergens: [], cookingClass: 'poultry' }, [
    ['Chicken breast, skinless, raw', 73.9, 22.5, 2.6, 0, 0, 120],
    ['Chicken thigh, skinless, raw', 75.3, 19.7, 4.1, 0, 0, 121],
    ['Chicken mince, raw', 73.2, 17.4, 8.1, 0, 0, 143],
    ['Turkey breast, skinless, raw', 73.8, 23.7, 1.5, 0, 0, 114],
    ['Turkey mince, raw', 71.7, 19.7, 7.7, 0, 0, 148],
    ['Duck, skinless, raw', 73.8, 18.3, 6, 0.9, 0, 135],
  ]),
  ...rows({ diets: NEITHER_PORK_NOR_BEEF, allergens: [] }, [
    ['Chicken breast, roasted', 65.3, 31, 3.6, 0, 0, 165],
    ['Chicken, tinned', 64.4, 25.3, 8.1, 0.9, 0, 185],
  ]),
  ...rows({ diets: NEITHER_PORK_NOR_BEEF, allergens: ['fish'], cookingClass: 'fish' }, [
    ['Cod, raw', 81.2, 17.8, 0.7, 0, 0, 82],
    ['Herring, raw', 72.1, 18, 9, 0, 0, 158],
    ['Mackerel, raw', 63.6, 18.6, 13.9, 0, 0, 205],
    ['Salmon, raw', 64.9, 20.4, 13.4, 0, 0, 208],
    ['Trout, raw', 71.4, 20.8, 6.6, 0, 0, 148],
    ['Cod, dried and salted', 16.1, 62.8, 2.4, 0, 0, 290],
  ]),
  ...rows({ diets: NEITHER_PORK_NOR_BEEF, allergens: ['fish'] }, [
    ['Salmon, tinned, drained', 69.9, 23.1, 5, 0, 0, 138],
    ['Tuna, tinned in water, drained', 78.1, 19.4, 1, 0, 0, 86],
    ['Tuna, tinned in oil, drained', 59.8, 29.1, 8.2, 0, 0, 198],
    ['Sardines, tinned in oil, drained', 59.6, 24.6, 11.5, 0, 0, 208],
    ['Anchovies, tinned in oil, drained', 50.3, 28.9, 9.7, 0, 0, 210, { gPerPiece: 4 }],
    ['Fish sauce', 71.1, 5.1, 0, 3.6, 0, 35, { gPerMl: 1.2 }],
  ]),
  ...rows({ diets: NEITHER_PORK_NOR_BEEF, allergens: ['crustaceans'] }, [
    ['Prawns, raw', 78.5, 20.1, 0.5, 0, 0, 85, { cookingClass: 'fish' }],
    ['Prawns, cooked', 74.3, 24, 0.3, 0.2, 0, 99],
    ['Crab, tinned, drained', 79.7, 17.9, 0.7, 0, 0, 83],
  ]),
  ...rows({ diets: NEITHER_PORK_NOR_BEEF, allergens: ['molluscs'] }, [
    ['Mussels, raw', 80.6, 11.9, 2.2, 3.7, 0, 86, { cookingClass: 'fish' }],
    ['Squid, raw', 78.6, 15.6, 1.4, 3.1, 0, 92, { cookingClass: 'fish' }],
    ['Clams, tinned, drained', 63.6, 25.6, 2, 5.1, 0, 148],
  ]),
  ...rows({ diets: VEGETARIAN, allergens: ['egg'], cookingClass: 'egg' }, [
    ['Egg, raw', 76.2, 12.6, 9.5, 0.7, 0, 143, { gPerPiece: 50 }],
    ['Egg white, raw', 87.6, 10.9, 0.2, 0.7, 0, 52, { gPerPiece: 33 }],
    ['Egg yolk, raw', 52.3, 15.9, 26.5, 3.6, 0, 322, { gPerPiece: 17 }],
    ['Egg powder', 3.1, 47.4, 41, 5, 0, 594, { gPerMl: 0.36 }],
  ]),
  ...rows({ diets: VEGETARIAN, allergens: ['egg'] }, [
    ['Egg, hard-boiled', 74.6, 12.6, 10.6, 1.1, 0, 155, { gPerPiece: 50 }],
  ]),
  ...rows({ diets: VEGETARIAN, allergens: ['milk'] }, [
    ['Milk, whole', 88.1, 3.2, 3.3, 4.8, 0, 61, { gPerMl: 1.03 }],
    ['Milk, semi-skimmed', 89.2, 3.3, 2, 4.8, 0, 50, { gPerMl: 1.03 }],
    ['Milk, skimmed', 90.8, 3.4, 0.1, 5, 0, 34, { gPerMl: 1.03 }],
    ['Milk powder, whole', 2.5, 26.3, 26.7, 38.4, 0, 496, { gPerMl: 0.54 }],
    ['Milk powder, skimmed', 3.2, 36.2, 0.8, 52, 0, 362, { gPerMl: 0.51 }],
    ['Milk, evaporated', 74, 6.8, 7.6, 10, 0, 134, { gPerMl: 1.06 }],
    ['Milk, condensed, sweetened', 27.2, 7.9, 8.7, 54.4, 0, 321, { gPerMl: 1.29 }],
    ['Cream, whipping', 57.7, 2.1, 37, 2.8, 0, 345, { gPerMl: 1 }],
    ['Sour cream', 72.9, 2.4, 19.4, 4.6, 0, 198, { gPerMl: 0.97 }],
    ['Yoghurt, plain', 87.9, 3.5, 3.3, 4.7, 0, 61, { gPerMl: 1.03 }],
    ['Yoghurt, strained', 81.3, 9, 5, 4, 0, 97, { gPerMl: 1.03 }],
    ['Cream cheese', 52.6, 6.2, 34.4, 5.5, 0, 350, { gPerMl: 0.98 }],
    ['Butter', 16.2, 0.9, 81.1, 0.1, 0, 717, { gPerMl: 0.96 }],
    ['Clarified butter', 0.2, 0.3, 99.5, 0, 0, 876, { gPerMl: 0.87 }],
  ]),
  ...rows({ diets: RENNET, allergens: ['milk'] }, [
    ['Cheddar cheese', 36.8, 24.9, 33.1, 1.3, 0, 403, { gPerMl: 0.48 }],
    ['Parmesan cheese', 29.2, 35.8, 25.8, 3.2, 0, 392, { gPerMl: 0.42 }],
    ['Mozzarella cheese', 50, 22.2, 22.4, 2.2, 0, 300, { gPerMl: 0.47 }],
    ['Feta cheese', 55.2, 14.2, 21.3, 4.1, 0, 264, { gPerMl: 0.63 }],
    ['Cottage cheese', 79.8, 11.1, 4.3, 3.4, 0, 98, { gPerMl: 0.95 }],
    ['Ricotta cheese', 71.7, 11.3, 13, 3, 0, 174, { gPerMl: 1.04 }],
  ]),
  ...rows({ diets: VEGAN, allergens: [] }, [
    ['Olive oil', 0, 0, 100, 0, 0, 884, { gPerMl: 0.91 }],
    ['Rapeseed oil', 0, 0, 100, 0, 0, 884, { gPerMl: 0.92 }],
    ['Sunflower oil', 0, 0, 100, 0, 0, 884, { gPerMl: 0.92 }],
    ['Coconut oil', 0, 0, 99.1, 0, 0, 892, { gPerMl: 0.92 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['sesame'] }, [
    ['Sesame oil', 0, 0, 100, 0, 0, 884, { gPerMl: 0.92 }],
    ['Sesame seeds', 4.7, 17.7, 49.7, 11.7, 11.8, 573, { gPerMl: 0.61 }],
    ['Tahini', 3.1, 17, 53.8, 11.9, 9.3, 595, { gPerMl: 1.01 }],
  ]),
  ...rows({ diets: PORK, allergens: [] }, [['Lard', 0, 0, 100, 0, 0, 902, { gPerMl: 0.87 }]]),
  ...rows({ diets: VEGAN, allergens: ['peanut'] }, [
    ['Peanuts', 6.5, 25.8, 49.2, 7.6, 8.5, 567, { gPerMl: 0.62 }],
    ['Peanut butter', 1.8, 25.1, 50.4, 13.6, 6, 588, { gPerMl: 1.09 }],
    ['Peanut oil', 0, 0, 100, 0, 0, 884, { gPerMl: 0.91 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['nuts'] }, [
    ['Almonds', 4.4, 21.2, 49.9, 9.1, 12.5, 579, { gPerMl: 0.6 }],
    ['Brazil nuts', 3.4, 14.3, 67.1, 4.2, 7.5, 659, { gPerMl: 0.56 }],
    ['Cashew nuts', 5.2, 18.2, 43.9, 26.9, 3.3, 553, { gPerMl: 0.58 }],
    ['Hazelnuts', 5.3, 15, 60.8, 7, 9.7, 628, { gPerMl: 0.57 }],
    ['Macadamia nuts', 1.4, 7.9, 75.8, 5.2, 8.6, 718, { gPerMl: 0.57 }],
    ['Pecan nuts', 3.5, 9.2, 72, 4.3, 9.6, 691, { gPerMl: 0.42 }],
    ['Pine nuts', 2.3, 13.7, 68.4, 9.4, 3.7, 673, { gPerMl: 0.57 }],
    ['Pistachio nuts', 4.4, 20.2, 45.3, 16.6, 10.6, 560, { gPerMl: 0.52 }],
    ['Walnuts', 4.1, 15.2, 65.2, 7, 6.7, 654, { gPerMl: 0.42 }],
  ]),
  ...rows({ diets: VEGAN, allergens: [] }, [
    ['Chia seeds', 5.8, 16.5, 30.7, 7.7, 34.4, 486, { gPerMl: 0.68 }],
    ['Coconut, desiccated', 3, 6.9, 64.5, 7.4, 16.3, 660, { gPerMl: 0.36 }],
    ['Linseed', 7, 18.3, 42.2, 1.6, 27.3, 534, { gPerMl: 0.71 }],
    ['Pumpkin seeds', 5.2, 30.2, 49.1, 4.7, 6, 559, { gPerMl: 0.54 }],
    ['Sunflower seeds', 4.7, 20.8, 51.5, 11.4, 8.6, 584, { gPerMl: 0.59 }],
  ]),
  ...rows({ diets: VEGAN, allergens: [] }, [
    ['Sugar, white', 0, 0, 0, 100, 0, 387, { gPerMl: 0.85 }],
    ['Sugar, brown', 1.3, 0.1, 0, 98.1, 0, 380, { gPerMl: 0.93 }],
    ['Maple syrup', 32.4, 0, 0.1, 67, 0, 260, { gPerMl: 1.33 }],
    ['Jam', 30.5, 0.4, 0.1, 67.8, 1.1, 278, { gPerMl: 1.35 }],
    ['Cocoa powder', 3, 19.6, 13.7, 20.9, 37, UNSTATED, { gPerMl: 0.36 }],
    ['Coffee, instant', 3.1, 12.2, 0.5, 75.4, 0, 353, { gPerMl: 0.2 }],
  ]),
  ...rows({ diets: VEGETARIAN, allergens: [] }, [['Honey', 17.1, 0.3, 0, 82.2, 0.2, 304, { gPerMl: 1.42 }]]),
  ...rows({ diets: VEGETARIAN }, [
    ['Chocolate, dark', 1.4, 7.8, 42.6, 35, 10.9, 598],
    ['Chocolate, milk', 1.5, 7.7, 29.7, 56, 3.4, 535],
  ]),
  ...rows({ diets: VEGAN, allergens: [] }, [
    ['Black pepper, ground', 12.5, 10.4, 3.3, 41.2, 25.3, 251, { gPerMl: 0.47 }],
    ['Chilli powder', 8.1, 12, 17.3, 29.4, 27.2, 318, { gPerMl: 0.36 }],
    ['Cinnamon, ground', 10.6, 4, 1.2, 27.5, 53.1, 247, { gPerMl: 0.53 }],
    ['Coriander seed', 8.9, 12.4, 17.8, 13.1, 41.9, 298, { gPerMl: 0.34 }],
    ['Cumin seed', 8.1, 17.8, 22.3, 33.7, 10.5, 375, { gPerMl: 0.43 }],
    ['Garlic powder', 6.5, 16.6, 0.7, 63.7, 9, 331, { gPerMl: 0.63 }],
    ['Ginger, ground', 9.9, 9, 4.2, 57.5, 14.1, 335, { gPerMl: 0.37 }],
    ['Onion powder', 5.4, 10.4, 1, 63.9, 15.2, 341, { gPerMl: 0.49 }],
    ['Paprika', 11.2, 14.1, 12.9, 19.1, 34.9, 282, { gPerMl: 0.47 }],
    ['Turmeric, ground', 12.9, 9.7, 3.3, 44.4, 22.7, 312, { gPerMl: 0.61 }],
    ['Basil, dried', 10.4, 23, 4.1, 10.1, 37.7, 233, { gPerMl: 0.14 }],
    ['Oregano, dried', 9.9, 9, 4.3, 26.4, 42.5, 265, { gPerMl: 0.2 }],
    ['Parsley, dried', 5.9, 26.6, 5.5, 23.9, 26.7, 292, { gPerMl: 0.1 }],
    ['Thyme, dried', 7.8, 9.1, 7.4, 26.9, 37, 276, { gPerMl: 0.28 }],
    ['Yeast, dried', 5.1, 40.4, 7.6, 14.3, 26.9, 325, { gPerMl: 0.8 }],
    ['Salt', 0.2, 0, 0, 0, 0, 0, { gPerMl: 1.22 }],
    ['Water', 100, 0, 0, 0, 0, 0, { gPerMl: 1 }],
  ]),
  ...rows({ diets: VEGAN, allergens: ['mustard'] }, [
    ['Mustard, prepared', 83.4, 3.7, 3.3, 1.8, 4, 60, { gPerMl: 1.01 }],
    ['Mustard seed', 5.3, 26.1, 36.2, 15.9, 12.2, 508, { gPerMl: 0.68 }],
  ]),
  ...rows({ diets: VEGAN }, [
    ['Curry powder', 8.8, 14.3, 14, 2.6, 53.2, 325, { gPerMl: 0.41 }],
    ['Tomato ketchup', 68.5, 1, 0.1, 27.1, 0.3, 101, { gPerMl: 1.15 }],
    ['Vegetable stock', 97.9, 0.2, 0.1, 0.9, 0, 5, { gPerMl: 1 }],
    ['Baked beans in tomato sauce, tinned', 71.9, 4.8, 0.4, 17, 4.1, 94, { gPerMl: 1.07 }],
  ]),
  ...rows({ diets: VEGETARIAN }, [['Mayonnaise', 21.7, 1, 74.9, 0.6, 0, 680, { gPerMl: 0.93 }]]),
  ...rows({ diets: NEITHER_PORK_NOR_BEEF }, [
    ['Chicken stock', 92.2, 2.5, 1.2, 3.5, 0, 36, { gPerMl: 1.01 }],
  ]),
  ...rows({ diets: NO_ALCOHOL }, [['Stock cube', 3.3, 17.3, 4, 16.1, 0, 170, { gPerPiece: 4 }]]),
  ...rows({ diets: NO_ALCOHOL, allergens: [] }, [['Gelatine', 13, 85.6, 0.1, 0, 0, 335]]),
  ...rows({ diets: ['vegan'], allergens: ['soy', 'wheat', 'gluten'] }, [
    ['Soy sauce', 71.2, 8.1, 0.6, 4.1, 0.8, 53, { gPerMl: 1.08 }],
  ]),
  ...rows({ diets: ['vegan'], allergens: [] }, [
    ['Vanilla extract', 52.6, 0.1, 0.1, 12.7, 0, 288, { alcoholG: 34.4, gPerMl: 0.88 }],
    ['Rum', 66.6, 0, 0, 0, 0, 231, { alcoholG: 33.4, gPerMl: 0.94 }],
  ]),
  ...rows({ diets: [], allergens: ['sulphites'] }, [
    ['Wine, red', 86.5, 0.1, 0, 2.6, 0, 85, { alcoholG: 10.6, gPerMl: 0.99 }],
    ['Wine, white', 86.9, 0.1, 0, 2.6, 0, 82, { alcoholG: 10.3, gPerMl: 0.99 }],
    ['Wine vinegar', 94, 0, 0, 0.3, 0, UNSTATED, { gPerMl: 1.01 }],
  ]),
  ...rows({ diets: [], allergens: ['gluten'] }, [
    ['Beer', 92, 0.5, 0, 3.6, 0, 43, { alcoholG: 3.9, gPerMl: 1 }],
  ]),
];
