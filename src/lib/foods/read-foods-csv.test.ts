import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ALLERGENS } from '../planning/model/allergens.ts';
import { Food } from '../planning/model/composition.ts';
import { COOKING_CLASSES } from '../planning/model/words.ts';
import { DIETS } from '../planning/model/diets.ts';
import { kitchenFoods } from './kitchen-foods.ts';
import { readFoodsCsv } from './read-foods-csv.ts';
import { writeFoodsCsv } from './write-foods-csv.ts';

const read = (text: string) => readFoodsCsv(new TextEncoder().encode(text));
const HEADER = 'name,water g,protein g,fat g,carbohydrate g';

describe('readFoodsCsv', () => {
  it('reads a table with all columns', async () => {
    const file = await read(
      'name,water g,protein g,fat g,carbohydrate g,fibre g,alcohol g,energy kcal,allergens,diets,cook as,g per ml,g per piece,source\n' +
        'My granola,4,10,15,60,8,0,430,"oats, nuts",vegetarian,other,0.4,,packet\n',
    );
    expect(file).toEqual({
      foods: [
        {
          name: 'My granola',
          composition: {
            waterG: 4,
            proteinG: 10,
            fatG: 15,
            carbohydrateG: 60,
            fibreG: 8,
            alcoholG: 0,
            energyKcal: 430,
          },
          source: 'packet',
          allergens: ['gluten', 'nuts'],
          diets: ['vegetarian'],
          cookingClass: 'other',
          gPerMl: 0.4,
        },
      ],
      refused: [],
      warnings: [],
      passedOver: [],
    });
  });

  it.each([
    [
      'a spreadsheet of another land',
      'Lebensmittel;Wasser (g/100 g);Eiweiß;Fett g;Kohlenhydrate pro 100g;Brennwert (kJ)\nNudeln;9,9;13,0;1,5;71,5;1552\n',
    ],
    [
      'a table of an agency',
      'Food,Moisture,PROTEIN (g),Total lipid (fat) g,"Carbohydrate, by difference (g)",Energy kJ per 100 g,"Fiber, total dietary"\nNudeln,9.9,13.0,1.5,74.7,1552,3.2\n',
    ],
    ['units in the cells', `${HEADER},energy\nNudeln,9.9 g,13 g,1.5 g,71.5 g,1552 kJ\n`],
    ['nothing but a unit above the energy', `${HEADER},kJ\nNudeln,9.9,13,1.5,71.5,1552\n`],
  ])('understands %s', async (_, text) => {
    const { foods, refused } = await read(text);
    expect(refused).toEqual([]);
    expect(foods[0]).toMatchObject({
      name: 'Nudeln',
      composition: { waterG: 9.9, proteinG: 13, fatG: 1.5, carbohydrateG: 71.5 },
    });
    expect(foods[0]!.composition.energyKcal).toBeCloseTo(1552 / 4.184, 8);
  });

  it('reads an encoding other than UTF-8', async () => {
    const text = Buffer.from(`${HEADER}\nCrème,60,2,36,2\n`, 'latin1');
    expect((await readFoodsCsv(text)).foods[0]!.name).toBe('Crème');
  });

  it('takes a mark in grams for a decimal mark where nothing else shows it', async () => {
    const { foods } = await read(
      'name;water g;protein g;fat g;carbohydrate g\nA;10,125;20,250;30,375;35,5\n',
    );
    expect(foods[0]!.composition).toMatchObject({ waterG: 10.125, fatG: 30.375 });
    const alone = await read('name;water g;protein g;fat g;carbohydrate g\nA;10,125;20;30;35\n');
    expect(alone.foods[0]!.composition.waterG).toBe(10.125);
  });

  it('refuses a figure that can be read in two ways until the mark is given', async () => {
    const text = 'name;water g;protein g;fat g;carbohydrate g;energy kJ\nA;4;6;80;5;3,250\n';
    expect((await read(text)).refused[0]!.reason).toContain('3250 or 3.25');
    const told = await readFoodsCsv(new TextEncoder().encode(text), '.');
    expect(told.foods[0]!.composition.energyKcal).toBeCloseTo(3250 / 4.184, 8);
  });

  it('refuses a row without water, saying what 100 g less the other parts would be', async () => {
    const { foods, refused } = await read(`${HEADER},fibre g\nA,,10,5,60.5,8\nB,10,10,5,65,8\n`);
    expect(foods.map(({ name }) => name)).toEqual(['B']);
    expect(refused).toEqual([
      { row: 2, reason: expect.stringMatching(/^Water: missing.*leaves 16\.5 g/) as string },
    ]);
  });

  it('refuses a row without water where the whole column is missing', async () => {
    const { refused } = await read('name,protein g,fat g,carbohydrate g\nA,10,5,60\n');
    expect(refused[0]!.reason).toMatch(/leaves 25\.0 g/);
  });

  it('tells "none" from nothing stated', async () => {
    const { foods } = await read(`${HEADER},allergens\nA,10,10,5,65,none\nB,10,10,5,65,\n`);
    expect(foods.map(({ allergens }) => allergens)).toEqual([[], undefined]);
  });

  it.each([
    ['A,10,10,,65', 'Fat: is empty'],
    ['A,10,x,5,65', 'protein g: "x" is not a number'],
    ['A,10,-1,5,65', 'Protein: must not be negative'],
    ['A,110,1,5,65', 'Water: must be at most 100 g in 100 g'],
    [',10,10,5,65', 'Name: is empty'],
    ['A,10,10,5,65,7,7', 'this row has 7 cells but the header has 5'],
  ])('refuses %s', async (row, reason) => {
    const { foods, refused } = await read(`${HEADER}\nGood,10,10,5,65\n${row}\n`);
    expect(foods).toHaveLength(1);
    expect(refused).toHaveLength(1);
    expect(refused[0]!.row).toBe(3);
    expect(refused[0]!.reason).toContain(reason);
  });

  it('refuses an unknown allergen and an unknown way of cooking, with what is meant perhaps', async () => {
    const { refused } = await read(`${HEADER},allergens,cook as\nA,10,10,5,65,pistacio,poultri\n`);
    expect(refused[0]!.reason).toMatch(/did you mean nuts.*did you mean poultry/s);
  });

  it('refuses a name that an earlier row has', async () => {
    const { foods, refused } = await read(`${HEADER}\nA,10,10,5,65\nA,20,10,5,65\n`);
    expect(foods).toHaveLength(1);
    expect(refused).toEqual([{ row: 3, reason: 'row 2 already has the name "A"; give each food its own' }]);
  });

  it('takes traces as 0, and says so', async () => {
    const { foods, warnings } = await read(`${HEADER}\nA,90,<0.5,tr,9\n`);
    expect(foods[0]!.composition).toMatchObject({ proteinG: 0, fatG: 0 });
    expect(warnings.map(({ reason }) => reason)).toEqual([
      'protein g: "<0.5" was taken as 0',
      'fat g: "tr" was taken as 0',
    ]);
  });

  it('takes fibre out of total carbohydrate, and says where it cannot', async () => {
    const header = 'name,water,protein,fat,total carbohydrate,fibre';
    const { foods, warnings, refused } = await read(
      `${header}\nA,10,10,5,70,8\nB,10,10,5,70,\nC,10,10,5,7,8\n`,
    );
    expect(foods.map(({ composition }) => composition.carbohydrateG)).toEqual([62, 70]);
    expect(warnings).toEqual([{ row: 3, reason: expect.stringContaining('free of fibre') as string }]);
    expect(refused[0]!.reason).toContain('8 g of fibre is more than');
  });

  it('takes the kcal of a label that has both, and warns where the kJ are others', async () => {
    const { foods, warnings } = await read(
      `${HEADER},energy kJ,energy kcal\nA,10,10,5,70,1545,365\nB,10,10,5,70,365,365\nC,10,10,5,70,1545,\n`,
    );
    expect(foods.map(({ composition }) => Math.round(composition.energyKcal!))).toEqual([365, 365, 369]);
    expect(warnings).toEqual([{ row: 3, reason: expect.stringContaining('kcal were taken') as string }]);
  });

  it('warns of a doubtful row', async () => {
    const { foods, warnings } = await read(`${HEADER},energy kcal\nA,10,10,5,70,1545\nB,60,10,5,70,365\n`);
    expect(foods.map(({ name }) => name)).toEqual(['B']);
    expect(warnings).toEqual([
      { row: 3, reason: expect.stringContaining('parts come to 145.0 g') as string },
    ]);
  });

  it('names the columns it passed over: unknown ones, and figures for another amount or in another unit', async () => {
    const { passedOver } = await read(
      `${HEADER},salt g,fibre g per serving,alcohol oz\nA,10,10,5,70,1,2,3\n`,
    );
    expect(passedOver).toEqual(['salt g', 'fibre g per serving', 'alcohol oz']);
  });

  it('refuses a table that lacks a column, naming those it has', async () => {
    await expect(read('name,water,fett\nA,1,2\n')).rejects.toThrow(
      /no column for protein, carbohydrate\. Its columns are: name, water, fett/,
    );
    await expect(read('')).rejects.toThrow('empty');
  });
});

describe('writeFoodsCsv', () => {
  it('is read back to the same foods', async () => {
    const { foods, refused, warnings, passedOver } = await read(writeFoodsCsv(kitchenFoods().foods));
    expect(foods).toEqual(kitchenFoods().foods);
    expect([refused, warnings, passedOver]).toEqual([[], [], []]);
  });

  it('writes no cell that a spreadsheet runs', async () => {
    const food = { ...kitchenFoods().foods[0]!, name: '=cmd()', source: '@here' };
    const text = writeFoodsCsv([food]);
    expect(text).toContain("'=cmd()");
    expect(text).toContain("'@here");
    expect((await read(text)).foods).toEqual([food]);
  });

  it('brings back any food', async () => {
    const grams = fc.double({ min: 0, max: 100, noNaN: true });
    const text = fc
      .string({ unit: 'binary', minLength: 1, maxLength: 40 })
      .filter((value) => /^[^\p{Cc}\p{Cs}]*$/u.test(value) && value.trim() !== '' && value.isWellFormed())
      .map((value) => value.trim());
    const any = fc
      .record(
        {
          name: text,
          source: text,
          composition: fc.record(
            {
              waterG: grams,
              proteinG: grams,
              fatG: grams,
              carbohydrateG: grams,
              fibreG: grams,
              alcoholG: grams,
              energyKcal: fc.double({ min: 0, max: 930, noNaN: true }),
              sugarsG: grams,
              sodiumMg: fc.double({ min: 0, max: 100_000, noNaN: true }),
              potassiumMg: fc.double({ min: 0, max: 100_000, noNaN: true }),
            },
            { requiredKeys: ['waterG', 'proteinG', 'fatG', 'carbohydrateG', 'fibreG', 'alcoholG'] },
          ),
          allergens: fc.uniqueArray(fc.constantFrom(...ALLERGENS)),
          diets: fc.uniqueArray(fc.constantFrom(...DIETS)),
          cookingClass: fc.constantFrom(...COOKING_CLASSES),
          gPerMl: fc.double({ min: 1e-9, max: 25, noNaN: true }),
          number: fc.stringMatching(/^[0-9]{5}$/),
          gPerPiece: fc.double({ min: 1e-9, max: 20_000, noNaN: true }),
        },
        { requiredKeys: ['name', 'source', 'composition', 'diets', 'cookingClass'] },
      )
      .map((food) => Food.parse(food));
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(any, { minLength: 1, maxLength: 4, selector: ({ name }) => name }),
        async (foods) => {
          const back = await read(writeFoodsCsv(foods));
          expect(back.refused).toEqual([]);
          expect(back.foods).toEqual(foods);
        },
      ),
    );
  });
});
