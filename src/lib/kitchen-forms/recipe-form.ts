import { searchFoods, findFood } from '$lib/foods/find-food.ts';
import type { ShownIn } from '$lib/forms/lot-form.ts';
import { bareField, withoutUndefined, type Entered, type FormReader } from '$lib/forms/read-form.ts';
import type { Food } from '$lib/planning/model/composition.ts';
import { Ingredient, Recipe, WaterNote } from '$lib/planning/model/recipe.ts';
import { moneyFieldValue } from '$lib/presentation/money.ts';
import { fieldValue, type Quantity } from '$lib/presentation/show.ts';
import { say, sayNumber, text, type Text } from '$lib/texts/say.ts';

/** The label of every field of a recipe, in the order of the form. */
export const RECIPE_LABELS: Readonly<Record<string, Text>> = {
  name: text('Name'),
  mealKinds: text('Meals'),
  servings: text('Servings per batch'),
  ingredients: text('Ingredients'),
  cookingYield: text('Cooking yield'),
  fatDrainedG: text('Fat poured or rinsed off'),
  energyFactors: text('Energy by'),
  bulkGPerMl: text('Weight of 1 ml on the tray'),
  driedRaw: text('Dried raw'),
  waterKind: text('Water type'),
  steepMin: text('Rehydration time'),
  stirAfterMin: text('Stir after'),
  waterShare: text('Water to add, of the water removed'),
  note: text('Method'),
};

/** The label of every field of an ingredient. */
export const INGREDIENT_LABELS: Readonly<Record<string, Text>> = {
  'food.name': text('Food'),
  'quantity.amount': text('Amount'),
  'quantity.unit': text('Unit'),
  trimmedShare: text('Left after trimming'),
  'price.paidMinor': text('Price paid'),
  'price.paidFor.amount': text('For this amount'),
  'price.paidFor.unit': text('Bought in'),
  'food.composition.waterG': text('Water'),
  'food.composition.proteinG': text('Protein'),
  'food.composition.fatG': text('Fat'),
  'food.composition.carbohydrateG': text('Carbohydrate'),
  'food.composition.fibreG': text('Fibre'),
  'food.composition.alcoholG': text('Alcohol'),
  'food.composition.sugarsG': text('Sugars'),
  'food.composition.sodiumMg': text('Sodium'),
  'food.composition.energyKcal': text('Energy on the label'),
  'food.source': text('Where the figures come from'),
  'food.cookingClass': text('If raw, cook as'),
  'food.gPerMl': text('Weight of 1 ml'),
  'food.gPerPiece': text('Weight of one piece'),
  'food.allergensStated': text('Allergens stated'),
  'food.allergens': text('Allergens'),
  'food.diets': text('Diets'),
};

const RECIPE_NUMBERS = {
  servings: undefined,
  cookingYield: 'share',
  fatDrainedG: 'food',
  bulkGPerMl: undefined,
  steepMin: undefined,
  stirAfterMin: undefined,
  waterShare: 'share',
} as const satisfies Partial<Record<keyof Recipe, Quantity | undefined>>;
const RECIPE_NUMBER_NAMES = Object.keys(RECIPE_NUMBERS) as (keyof typeof RECIPE_NUMBERS)[];

const GRAMS = ['waterG', 'proteinG', 'fatG', 'carbohydrateG', 'fibreG', 'alcoholG'] as const;
const PARTS = [...GRAMS, 'sugarsG', 'sodiumMg', 'energyKcal'] as const;

/** Names offered where a food is not known. */
const MOST_LIKE = 6;

/** @returns what the form of a recipe is filled with; of a new one what is usual. */
export function recipeFields(recipe: Partial<Recipe>, { unitSystem }: ShownIn): Entered {
  return {
    name: [recipe.name ?? ''],
    mealKinds: recipe.mealKinds ?? [],
    ...Object.fromEntries(
      RECIPE_NUMBER_NAMES.map((name) => {
        const quantity = RECIPE_NUMBERS[name];
        const value = recipe[name];
        return [
          name,
          value !== undefined && quantity ? [fieldValue(value, quantity, unitSystem)] : bareField(value),
        ];
      }),
    ),
    energyFactors: [recipe.energyFactors ?? 'eu'],
    driedRaw: [recipe.driedRaw ? 'yes' : 'no'],
    waterKind: [recipe.waterKind ?? 'boiling'],
    note: [recipe.note ?? ''],
  };
}

/**
 * Reads the form of a recipe: all but its ingredients and notes, which are kept.
 *
 * @returns `undefined` where `read.problems` says what has to be mended
 */
export function readRecipe(read: FormReader, stored: Partial<Recipe>): Recipe | undefined {
  return read.accept(
    Recipe.safeParse(
      withoutUndefined({
        name: read.text('name'),
        mealKinds: read.choices('mealKinds'),
        ...Object.fromEntries(
          RECIPE_NUMBER_NAMES.map((name) => {
            const quantity = RECIPE_NUMBERS[name];
            return [name, read.number(name, { stored: stored[name], ...(quantity && { quantity }) })];
          }),
        ),
        energyFactors: read.text('energyFactors'),
        driedRaw: read.text('driedRaw') === 'yes',
        waterKind: read.text('waterKind'),
        note: read.text('note'),
        ingredients: stored.ingredients,
        toSettle: stored.toSettle,
        waterNotes: stored.waterNotes,
        ...(stored.portionNotes && { portionNotes: stored.portionNotes }),
      }),
      { reportInput: true },
    ),
  );
}

/**
 * @returns what the form of an ingredient is filled with. What is known of the food stays empty: the form shows it beside the field, and what is entered
 * there goes over it.
 */
export function ingredientFields(ingredient: Ingredient | undefined, shown: ShownIn): Entered {
  const price = ingredient?.price;
  return {
    'food.name': [ingredient?.food.name ?? ''],
    'quantity.amount': bareField(ingredient?.quantity.amount),
    'quantity.unit': [ingredient?.quantity.unit ?? (shown.unitSystem === 'us' ? 'oz' : 'g')],
    trimmedShare: [fieldValue(ingredient?.trimmedShare ?? 1, 'share', shown.unitSystem)],
    'price.paidMinor': [price ? moneyFieldValue(price.paidMinor, shown.currency) : ''],
    'price.paidFor.amount': bareField(price?.paidFor.amount),
    'price.paidFor.unit': [price?.paidFor.unit ?? (shown.unitSystem === 'us' ? 'lb' : 'kg')],
    'food.allergensStated': ['as known'],
  };
}

/**
 * Reads the form of an ingredient. Of a food that this ingredient or the tables know, the name is enough; what is entered of it goes over what is known.
 *
 * @param tables foods in the order of trust
 * @param stored the ingredient as it was
 */
export function readIngredient(
  read: FormReader,
  shown: ShownIn,
  tables: readonly Food[],
  stored?: Ingredient,
): Ingredient | undefined {
  // A suggestion that was picked goes over what was typed.
  const name = read.text('food.pick') ?? read.text('food.name');
  const known = name === undefined ? undefined : findFood(stored ? [stored.food, ...tables] : tables, name);
  const typed = withoutUndefined(
    Object.fromEntries(PARTS.map((part) => [part, read.number(`food.composition.${part}`)])),
  );
  const isTyped = Object.keys(typed).length > 0;
  if (name !== undefined && !known && !isTyped) {
    const like = namesLike(tables, name).map((food) => say('"{food}"', { food }));
    read.add([
      {
        field: 'food.name',
        message:
          like.length > 0
            ? say(
                'no table has "{name}". Did you mean {like}? Choose another name, or enter its values per 100 g below',
                { name, like: like.join(', ') },
              )
            : say('no table has "{name}". Choose another name, or enter its values per 100 g below', {
                name,
              }),
      },
    ]);
  }
  if (isTyped && typed['waterG'] === undefined && !known)
    read.add([{ field: 'food.composition.waterG', message: noWater(typed) }]);

  const paidMinor = read.money('price.paidMinor', shown.currency, stored?.price?.paidMinor);
  const paidAmount = read.number('price.paidFor.amount');
  if (paidMinor !== undefined && paidAmount === undefined)
    read.add([{ field: 'price.paidFor.amount', message: say('enter how much this price was for') }]);
  const statedAllergens = read.text('food.allergensStated');
  return read.accept(
    Ingredient.safeParse(
      withoutUndefined({
        food: withoutUndefined({
          ...known,
          name: known?.name ?? name,
          composition: { ...known?.composition, ...typed },
          source: read.text('food.source') ?? (known && !isTyped ? known.source : 'as typed in'),
          cookingClass: read.text('food.cookingClass') ?? known?.cookingClass,
          gPerMl: read.number('food.gPerMl') ?? known?.gPerMl,
          gPerPiece: read.number('food.gPerPiece') ?? known?.gPerPiece,
          ...(statedAllergens === 'yes' || statedAllergens === 'no'
            ? {
                allergens: statedAllergens === 'yes' ? read.choices('food.allergens') : undefined,
                diets: read.choices('food.diets'),
              }
            : {}),
        }),
        quantity: withoutUndefined({
          amount: read.number('quantity.amount'),
          unit: read.text('quantity.unit'),
        }),
        trimmedShare: read.number('trimmedShare', { quantity: 'share', stored: stored?.trimmedShare }),
        price:
          paidMinor === undefined
            ? undefined
            : withoutUndefined({
                paidMinor,
                paidFor: withoutUndefined({ amount: paidAmount, unit: read.text('price.paidFor.unit') }),
              }),
      }),
      { reportInput: true },
    ),
    // of a food that nobody knows, one message is enough
    (problems) => problems.filter(({ field }) => known || isTyped || !field.startsWith('food.composition')),
  );
}

/** Names that hold all the words, or else any of them. */
export function namesLike(tables: readonly Food[], name: string): string[] {
  const whole = searchFoods(tables, name, MOST_LIKE);
  const found =
    whole.length > 0 ? whole : name.split(/[\s,]+/).flatMap((word) => searchFoods(tables, word, MOST_LIKE));
  return [...new Set(found.map((food) => food.name))].slice(0, MOST_LIKE);
}

/** Says that the water is missing, and what it would be if the other parts were all there is. */
function noWater(typed: Readonly<Record<string, number>>): string {
  const othersG = GRAMS.filter((part) => part !== 'waterG').reduce(
    (sum, part) => sum + (typed[part] ?? 0),
    0,
  );
  return say(
    'the water content is missing, and without it the dry weight cannot be worked out. 100 g minus the other values leaves {rest} g. Labels do not list water; food tables do',
    { rest: sayNumber(Math.max(0, 100 - othersG), { maximumFractionDigits: 0 }) },
  );
}

/** Reads a note of how the water turned out. */
export function readWaterNote(read: FormReader): WaterNote | undefined {
  return read.accept(
    WaterNote.safeParse(
      withoutUndefined({
        date: read.text('date'),
        finding: read.text('finding'),
        note: read.text('waterNote'),
      }),
      { reportInput: true },
    ),
    (problems) =>
      problems.map((problem) => (problem.field === 'note' ? { ...problem, field: 'waterNote' } : problem)),
  );
}
