import { fail, redirect } from '@sveltejs/kit';
import { ifctFoods } from '$lib/foods/ifct.ts';
import type { FoodsCsv } from '$lib/foods/read-foods-csv.ts';
import { isCalled, searchFoods } from '$lib/foods/find-food.ts';
import { offerUndo, sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { foodRow } from '$lib/kitchen-views/foods.ts';
import { DAYS_IN_BIN } from '$lib/server/bin.ts';
import { foodTables } from '$lib/server/food-tables.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { UnreadableFile } from '$lib/shelf-csv/text-encoding.ts';
import { say, sayNumber } from '$lib/texts/say.ts';
import { foodsImportReasons } from '$lib/reasons/lot.ts';
import type { Actions, PageServerLoad } from './$types';

const MOST_RESULTS = 50;
/** More own foods than these are found by the search. */
const MOST_OWN = 100;
const MAX_FILE_BYTES = 2_000_000;
/** Remarks on more rows than these are counted, not shown. */
const MOST_REMARKS = 200;
const tooLarge = () =>
  say(
    'The file is larger than {inMB} MB, the most that is taken at once. Is it the right file? A longer table can be imported in parts.',
    { inMB: sayNumber(MAX_FILE_BYTES / 1_000_000) },
  );

export const load: PageServerLoad = async ({ locals: { app }, url }) => {
  const words = url.searchParams.get('q')?.trim().slice(0, 200) ?? '';
  const [{ own, all }, { refused }] = await Promise.all([foodTables(app), ifctFoods()]);
  const records = new Map(own.map((record) => [record.value, record]));
  const found = searchFoods(all, words, MOST_RESULTS + 1);
  return {
    words,
    daysInBin: DAYS_IN_BIN,
    results: found.slice(0, MOST_RESULTS).map((food) => foodRow(food, records.get(food))),
    /** No food has the words: what was found is only near to them. */
    isNear: !found.some((food) => isCalled(food, words)),
    isCut: found.length > MOST_RESULTS,
    own: own.slice(0, MOST_OWN).map((record) => foodRow(record.value, record)),
    ownCount: own.length,
    tableCount: all.length - own.length,
    leftOut: refused,
    maxBytes: MAX_FILE_BYTES,
    reasons: foodsImportReasons(),
  };
};

type Refusal = RefusedForm & { readonly of: 'import' | 'delete' };

/** What became of a file: all of it, but of many remarks the first ones. */
const imported = (
  fileName: string,
  { refused, warnings, passedOver }: FoodsCsv,
  counts: { readonly added: number; readonly replaced: number },
) => ({
  of: 'imported' as const,
  fileName,
  ...counts,
  refused: refused.slice(0, MOST_REMARKS),
  refusedCount: refused.length,
  warnings: warnings.slice(0, MOST_REMARKS),
  warningCount: warnings.length,
  passedOver,
});

export const actions: Actions = {
  import: async ({ request, locals }) => {
    const { app } = locals;
    const refuse = (status: number, message: string, read?: FormReader) =>
      fail<Refusal>(status, {
        entered: read?.entered ?? {},
        problems: [{ field: '', message }],
        of: 'import',
      });
    return app.incoming
      .form(request, MAX_FILE_BYTES, async ({ form, file }) => {
        const read = new FormReader(form, 'metric');
        if (!file) return refuse(422, say('No file was chosen. Choose a CSV file first.'), read);
        if (file.bytes > MAX_FILE_BYTES) return refuse(413, tooLarge(), read);
        const mark = read.text('decimalMark');
        try {
          const decimalMark = mark === '.' || mark === ',' ? mark : undefined;
          const table = await app.apart.do({ kind: 'foods', source: file, decimalMark });
          return imported(file.name, table, await app.kitchen.foods.putAll(table.foods));
        } catch (caught) {
          if (caught instanceof UnreadableFile) return refuse(422, caught.message, read);
          const status = addUserError(read, caught);
          return fail<Refusal>(status, { ...read.refused(), of: 'import' });
        }
      })
      .catch(toHttpError);
  },

  delete: async ({ request, locals: { app }, cookies, url }) => {
    const read = new FormReader(await request.formData(), 'metric');
    try {
      offerUndo(cookies, await app.kitchen.foods.delete(read.text('id') ?? '', read.number('version') ?? 0));
    } catch (caught) {
      const status = addUserError(read, caught);
      return fail<Refusal>(status, { ...read.refused(), of: 'delete' });
    }
    sayDone(cookies, 'food-deleted');
    const words = url.searchParams.get('q');
    redirect(303, `/kitchen/foods${words ? `?${new URLSearchParams({ q: words })}` : ''}`);
  },
};
