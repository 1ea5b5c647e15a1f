import type { Food } from '../planning/model/composition.ts';
import { energyKcalOf } from '../planning/model/energy-factors.ts';
import { ingredientG, type Recipe } from '../planning/model/recipe.ts';
import { readLine } from './read-line.ts';
import { servingsOf, type RecipeText } from './read-recipe-text.ts';

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
type JsonObject = { readonly [key: string]: Json };

const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const listOf = (value: Json | undefined): readonly Json[] =>
  value === undefined || value === null ? [] : Array.isArray(value) ? (value as readonly Json[]) : [value];

/** Deeper than this nothing of a recipe stands, lines longer than this are none. */
const DEEPEST = 12;
const LONGEST_LINE = 2000;
const MOST_INGREDIENTS = 300;

const isRecipe = (value: JsonObject): boolean =>
  listOf(value['@type']).some((type) => typeof type === 'string' && /(?:^|[/:#])Recipe$/.test(type));

function recipesIn(value: Json, depth = 0): JsonObject[] {
  if (depth > DEEPEST) return [];
  if (Array.isArray(value)) return (value as readonly Json[]).flatMap((each) => recipesIn(each, depth + 1));
  if (!isObject(value)) return [];
  return isRecipe(value)
    ? [value]
    : ['@graph', 'mainEntity', 'mainEntityOfPage', 'itemListElement', 'item', 'hasPart', 'about'].flatMap(
        (key) => recipesIn(value[key] ?? null, depth + 1),
      );
}

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  deg: '°',
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  ndash: '-',
  mdash: '-',
  eacute: 'é',
  egrave: 'è',
  ecirc: 'ê',
  ntilde: 'ñ',
  auml: 'ä',
  ouml: 'ö',
  uuml: 'ü',
  Auml: 'Ä',
  Ouml: 'Ö',
  Uuml: 'Ü',
  szlig: 'ß',
  rsquo: "'",
  lsquo: "'",
};
/** Text without marks of HTML, which pages put into their data. */
function bare(value: Json | undefined): string {
  if (typeof value === 'number') return String(value);
  if (typeof value !== 'string') return '';
  return value
    .slice(0, LONGEST_LINE)
    .replace(/<[^<>]*>/g, ' ')
    .replace(
      /&(?:#(\d{1,6})|#x([0-9a-f]{1,5})|([a-z0-9]{2,8}));/gi,
      (whole, decimal?: string, hex?: string, name?: string) => {
        const code = decimal ? Number(decimal) : hex ? parseInt(hex, 16) : undefined;
        if (code !== undefined)
          return code > 31 && code < 0x110000 && (code < 0xd800 || code > 0xdfff)
            ? String.fromCodePoint(code)
            : ' ';
        return ENTITIES[name ?? ''] ?? whole;
      },
    )
    .replace(/\s+/g, ' ')
    .trim();
}

function stepsOf(value: Json | undefined, depth = 0): string[] {
  if (depth > DEEPEST) return [];
  return listOf(value).flatMap((step) => {
    if (!isObject(step)) return bare(step) === '' ? [] : [bare(step)];
    const inner = stepsOf(step['itemListElement'], depth + 1);
    if (inner.length > 0) return inner;
    const said = bare(step['text']) || bare(step['name']);
    return said === '' ? [] : [said];
  });
}

/** A page may be read for what stands in its scripts of JSON-LD, and for nothing else. */
function* scriptsOf(page: string): Generator<string> {
  const low = page.toLowerCase();
  for (let at = low.indexOf('<script'); at >= 0; at = low.indexOf('<script', at + 7)) {
    const open = low.indexOf('>', at);
    if (open < 0) return;
    const close = low.indexOf('</script', open);
    if (close < 0) return;
    if (low.slice(at, open).includes('application/ld+json')) yield page.slice(open + 1, close);
  }
}

function parsed(text: string): Json | undefined {
  try {
    return JSON.parse(
      text.replace(/^\s*(?:<!--|\/\/<!\[CDATA\[)/, '').replace(/(?:-->|\/\/\]\]>)\s*$/, ''),
    ) as Json;
  } catch {
    return undefined;
  }
}

const yieldOf = (value: Json | undefined): number | undefined => {
  for (const each of listOf(value)) {
    const said = bare(each);
    const number = Number(said);
    if (said !== '' && Number.isFinite(number) && number > 0 && number <= 1000) return number;
    const servings = servingsOf(said) ?? servingsOf(`Serves ${said}`);
    if (servings !== undefined) return servings;
  }
  return undefined;
};

/** @returns whether a text is a page or data rather than a recipe as one types it */
export const looksLikeJsonLd = (text: string): boolean =>
  /^\s*[<[{]/.test(text) && /ld\+json|"@type"|schema\.org/i.test(text);

/**
 * Reads a recipe in the open format of schema.org, as JSON-LD or in a saved web page, of which only the JSON-LD is read. Nothing is fetched.
 *
 * Source: schema.org, type Recipe: name, recipeYield, recipeIngredient, recipeInstructions.
 *
 * @returns `undefined` where there is no recipe in it
 */
export function readJsonLd(text: string, own: readonly Food[] = []): RecipeText | undefined {
  const data = /^\s*</.test(text) ? [...scriptsOf(text)].map(parsed) : [parsed(text)];
  const recipe = data.flatMap((value) => (value === undefined ? [] : recipesIn(value)))[0];
  if (!recipe) return undefined;
  const servings = yieldOf(recipe['recipeYield']) ?? yieldOf(recipe['yield']);
  const name = bare(recipe['name']).slice(0, 120);
  const lines = listOf(recipe['recipeIngredient'] ?? recipe['ingredients'])
    .slice(0, MOST_INGREDIENTS)
    .map(bare)
    .filter((line) => line !== '');
  return {
    ...(name !== '' && { name }),
    ...(servings !== undefined && { servings }),
    lines: lines.map((line) => readLine(line, own, servings)),
    method: stepsOf(recipe['recipeInstructions']),
  };
}

/**
 * A recipe in the open format of schema.org. Energy is that of one serving, as the tables state it.
 *
 * @example JSON.stringify(jsonLdOf(recipe)) // {"@context":"https://schema.org","@type":"Recipe","name":"Dal",…}
 */
export function jsonLdOf(recipe: Recipe): Record<string, unknown> {
  const kcal = recipe.ingredients.reduce((sum, ingredient) => {
    const { composition } = ingredient.food;
    const per100 = composition.energyKcal ?? energyKcalOf(composition, 'eu');
    return sum + (ingredientG(ingredient) * ingredient.trimmedShare * per100) / 100;
  }, 0);
  const steps = recipe.note.split('\n').filter((line) => line.trim() !== '');
  return {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: recipe.name,
    recipeYield: `${recipe.servings} servings`,
    recipeIngredient: [
      ...recipe.ingredients.map(
        ({ food, quantity, text }) =>
          text ?? `${quantity.amount} ${quantity.unit === 'piece' ? '' : `${quantity.unit} `}${food.name}`,
      ),
      ...(recipe.toSettle ?? []),
    ],
    ...(steps.length > 0 && {
      recipeInstructions: steps.map((text) => ({ '@type': 'HowToStep', text })),
    }),
    ...(recipe.ingredients.length > 0 && {
      nutrition: {
        '@type': 'NutritionInformation',
        servingSize: '1 serving',
        calories: `${Math.round(kcal / recipe.servings)} kcal`,
      },
    }),
  };
}
