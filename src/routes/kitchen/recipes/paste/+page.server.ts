import { setImmediate } from 'node:timers/promises';
import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import {
  corrected,
  ingredientsOf,
  pastedLine,
  readPasted,
  scaleFactor,
  SCALES,
  type LineFields,
  type PastedLine,
} from '$lib/kitchen-forms/pasted-recipe.ts';
import { looksLikeJsonLd } from '$lib/recipe-text/json-ld.ts';
import type { IngredientLine } from '$lib/recipe-text/read-line.ts';
import { Recipe } from '$lib/planning/model/recipe.ts';
import { reportOf, type ReportTotals } from '$lib/recipe-text/report.ts';
import { foodTables } from '$lib/server/food-tables.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions } from './$types';

const USUAL_SERVINGS = 4;
/** The most of a method that a recipe keeps. */
const LONGEST_NOTE = 5000;
/** Wet food on a tray where no dryer is known, g (common practice). */
const USUAL_TRAY_G = 1000;

/** A recipe that was read, to be looked through and saved. */
type Reading = {
  readonly step: 'read';
  readonly name: string;
  readonly servings: string;
  readonly method: string;
  readonly lines: readonly PastedLine[];
  readonly left: number;
  readonly totals: ReportTotals;
  readonly perServing: ReportTotals;
  readonly entered: RefusedForm['entered'];
  readonly problems: RefusedForm['problems'];
};

/** A recipe has no more ingredients than these, those left to settle included, nor more characters. */
const MOST_INGREDIENTS = 200;
const LONGEST_RECIPE = 20_000;

/** Whether a text is longer than any recipe; a saved page counts by its ingredients. */
const isTooLong = (text: string): boolean => text.length > LONGEST_RECIPE && !looksLikeJsonLd(text);
const tooLong = () =>
  say(
    'This is too long for one recipe: at most {ingredients} ingredients and {letters, number} characters. Paste one recipe at a time.',
    { ingredients: MOST_INGREDIENTS, letters: LONGEST_RECIPE },
  );

const linesOf = (form: FormData): LineFields[] => {
  const all = (name: string) => form.getAll(name).map((value) => (typeof value === 'string' ? value : ''));
  const [texts, foods, grams] = [all('line'), all('food'), all('grams')];
  return texts
    .slice(0, MOST_INGREDIENTS)
    .flatMap((text, index) =>
      text.trim() === '' ? [] : [{ text: text.trim(), food: foods[index] ?? '', grams: grams[index] ?? '' }],
    );
};

async function pastedText(form: FormData): Promise<string> {
  const file = form.get('file');
  if (file instanceof File && file.size > 0) return file.text();
  const text = form.get('text');
  return typeof text === 'string' ? text : '';
}

async function reading(
  { locals: { app } }: Pick<Parameters<NonNullable<Actions['read']>>[0], 'locals'>,
  fields: readonly LineFields[],
  head: { name: string; servings: string; method: string },
  read: FormReader,
): Promise<Reading> {
  const { own, all } = await foodTables(app);
  const mine = own.map(({ value }) => value);
  const servings = Number(head.servings.replace(',', '.')) || undefined;
  const lines: IngredientLine[] = [];
  const shown: PastedLine[] = [];
  for (const each of fields) {
    const line = corrected(each, all, mine, servings);
    lines.push(line);
    shown.push(pastedLine(line, each, all));
    // Foods are looked for line by line; others are answered in between.
    await setImmediate();
  }
  const { totals, perServing } = reportOf({
    lines,
    method: [],
    servings: servings ?? USUAL_SERVINGS,
  });
  return {
    step: 'read',
    ...head,
    lines: shown,
    left: lines.filter(({ unsettled }) => unsettled !== undefined).length,
    totals,
    perServing,
    entered: read.entered,
    problems: read.problems,
  };
}

export const actions: Actions = {
  paste: async ({ request, locals }) => {
    const form = await request.formData();
    const text = await pastedText(form);
    const read = new FormReader(form, 'metric');
    const { own } = await foodTables(locals.app);
    const recipe = isTooLong(text)
      ? undefined
      : readPasted(
          text,
          own.map(({ value }) => value),
        );
    if (isTooLong(text) || (recipe && recipe.lines.length > MOST_INGREDIENTS)) {
      read.add([{ field: 'text', message: tooLong() }]);
      return fail(422, { step: 'paste' as const, ...read.refused() });
    }
    if (!recipe || recipe.lines.length === 0) {
      read.add([
        {
          field: 'text',
          message:
            text.trim() === ''
              ? say('Paste the recipe, or choose a file.')
              : say('No ingredient found. Put each on a line of its own, such as "200 g rice".'),
        },
      ]);
      return fail(422, { step: 'paste' as const, ...read.refused() });
    }
    return reading(
      { locals },
      recipe.lines.map(({ text: line }) => ({ text: line, food: '', grams: '' })),
      {
        name: recipe.name ?? '',
        servings: String(recipe.servings ?? ''),
        method: recipe.method.join('\n').slice(0, LONGEST_NOTE),
      },
      read,
    );
  },

  read: async ({ request, locals }) => {
    const form = await request.formData();
    const read = new FormReader(form, 'metric');
    return reading({ locals }, linesOf(form), headOf(read), read);
  },

  save: async ({ request, locals, cookies }) => {
    const form = await request.formData();
    const read = new FormReader(form, 'metric');
    const fields = linesOf(form);
    const head = headOf(read);
    const servings = Number(head.servings.replace(',', '.')) || USUAL_SERVINGS;
    const [{ own, all }, kitchen] = await Promise.all([
      foodTables(locals.app),
      locals.app.settings.getKitchen(),
    ]);
    const mine = own.map(({ value }) => value);
    const lines = fields.map((each) => corrected(each, all, mine, servings));
    const factor = scaleFactor(
      lines,
      {
        scale: SCALES.find((scale) => scale === read.text('scale')) ?? 'servings',
        amount: read.number('scaleTo'),
      },
      { servings, gPerMl: 1, trayG: kitchen.dryers[0]?.trayLimitG ?? USUAL_TRAY_G },
    );
    const { ingredients, toSettle } = ingredientsOf(lines, factor);
    const recipe = read.accept(
      Recipe.safeParse(
        {
          name: head.name,
          mealKinds: read.choices('mealKinds'),
          servings: Number((servings * factor).toPrecision(6)),
          ingredients,
          ...(toSettle.length > 0 && { toSettle }),
          note: head.method.slice(0, LONGEST_NOTE),
        },
        { reportInput: true },
      ),
    );
    if (!recipe || read.problems.length > 0) return fail(422, await reading({ locals }, fields, head, read));
    let id: string;
    try {
      ({ id } = await locals.app.kitchen.recipes.create(recipe));
    } catch (caught) {
      const status = addUserError(read, caught, 'name');
      return fail(status, await reading({ locals }, fields, head, read));
    }
    sayDone(cookies, 'recipe-saved');
    redirect(303, `/kitchen/recipes/${id}`);
  },
};

const headOf = (read: FormReader) => ({
  name: read.text('name') ?? '',
  servings: read.text('servings') ?? '',
  method: read.text('method') ?? '',
});
