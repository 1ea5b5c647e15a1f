import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { pastedRows, QUICK_COLUMNS } from '$lib/forms/quick-words.ts';
import { linesOf } from '$lib/forms/lines.ts';
import { FormReader, type Entered, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { lotHref } from '$lib/lot-href.ts';
import { quickLotReasons } from '$lib/reasons/lot.ts';
import { say } from '$lib/texts/say.ts';
import { estimatesOf, readRows, type QuickEstimates } from './quick-entry.ts';
import type { Actions, PageServerLoad } from './$types';

/** A longer table is for the import. */
const MOST_ROWS = 200;
const MORE_ROWS = 5;

export const load: PageServerLoad = async ({ locals, parent }) => {
  const { shown } = await parent();
  return { today: locals.app.today(), reasons: quickLotReasons(shown) };
};

/** What an action hands back: the rows as they were typed, what they come to, and what is odd about them. */
type Answer = RefusedForm & {
  readonly estimates?: QuickEstimates;
  readonly rowCount?: number;
  readonly odd?: { readonly reasons: readonly string[]; readonly yes: string };
};

export const actions: Actions = {
  add: async ({ request, locals: { app }, cookies }) => {
    const shown = await app.settings.get();
    const read = new FormReader(await request.formData(), shown.unitSystem);
    const rows = await readRows(app, read, shown);
    if (rows.length === 0 && read.problems.length === 0)
      read.add([{ field: 'lots[0].recipe', message: say('please fill this in') }]);
    const estimates = estimatesOf(rows, read.system);
    if (read.problems.length > 0) return fail<Answer>(422, { ...read.refused(), estimates });
    const reasons = rows.flatMap(({ lot, warnings }) =>
      warnings.map((reason) => say('{recipe}: {reason}', { recipe: lot.recipe, reason })),
    );
    const yes = reasons.join(' / ');
    if (reasons.length > 0 && read.text('confirmed') !== yes)
      return fail<Answer>(422, { ...read.refused(), estimates, odd: { reasons, yes } });
    try {
      await app.shelf.addLots(rows.map(({ lot }) => lot));
    } catch (caught) {
      const status = addUserError(read, caught);
      return fail<Answer>(status, { ...read.refused(), estimates });
    }
    sayDone(cookies, rows.length === 1 ? 'lot-added' : 'lots-added');
    redirect(303, rows.length === 1 ? lotHref(rows[0]!.lot.code) : '/shelf');
  },

  /** What the rows come to, where no script asks for it. */
  estimate: async ({ request, locals: { app } }) => {
    const shown = await app.settings.get();
    const read = new FormReader(await request.formData(), shown.unitSystem);
    const rows = await readRows(app, read, shown);
    const answer: Answer = { ...read.refused(), estimates: estimatesOf(rows, read.system) };
    return read.problems.length > 0 ? fail<Answer>(422, answer) : answer;
  },

  /** More rows, and in them what was pasted, where no script takes it into the cells. */
  rows: async ({ request, locals: { app } }) => {
    const { unitSystem } = await app.settings.get();
    const read = new FormReader(await request.formData(), unitSystem);
    const entered: Record<string, readonly string[]> = { ...read.entered };
    const free = freeLines(entered);
    const pasted = pastedRows(read.text('pasted') ?? '').slice(0, MOST_ROWS);
    for (const [row, cells] of pasted.entries())
      for (const [column, name] of QUICK_COLUMNS.entries())
        if (cells[column]) entered[`lots[${free + row}].${name}`] = [cells[column]];
    delete entered['pasted'];
    const rowCount = Math.min(free + pasted.length + MORE_ROWS, MOST_ROWS + MORE_ROWS);
    return { entered, problems: [], rowCount } satisfies Answer;
  },
};

/** @returns the first line behind those that were filled in */
function freeLines(entered: Entered): number {
  const filled = Object.fromEntries(Object.entries(entered).filter(([, [value]]) => value?.trim()));
  return (linesOf(filled, 'lots').at(-1) ?? -1) + 1;
}
