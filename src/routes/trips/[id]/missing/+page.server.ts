import { actAndSay } from '$lib/forms/act-and-say.ts';
import type { FormReader } from '$lib/forms/read-form.ts';
import { FILL_PREFERENCES, MEAL_KINDS, PLANNED_WAYS } from '$lib/planning/model/words.ts';
import { packedWords, plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { changePlannedAmount, fillPlan, linesToFill, takeSuggestion } from '$lib/server/fill-plan.ts';
import { planDryingIfUseful } from '$lib/server/plan-drying-for-trip.ts';
import { dryingAssumptions, missingAssumptions } from '$lib/reasons/plan.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params }) => {
  const { app, readsOnly } = locals;
  const planned = await plannedForPage(locals, params.id);
  const { plan, stored, isOver } = planned;
  const mayChange = !readsOnly && !isOver && packedWords(stored) === undefined;
  const shopping = mayChange ? await linesToFill(app, planned) : plan.shortfall.shopping;
  return {
    shortfall: { ...plan.shortfall, shopping },
    coming: plan.coming,
    shops: (stored.trip.resupplies ?? []).filter(({ kind }) => kind === 'shop').map(({ place }) => place),
    mayChange,
    toDry: await planDryingIfUseful(app, planned),
    reasons: { missing: missingAssumptions(), drying: dryingAssumptions(await app.settings.getKitchen()) },
  };
};

export const actions: Actions = {
  /** One suggestion into the plan. */
  take: ({ request, locals: { app }, params, cookies }) =>
    actAndSay(request, cookies, `/trips/${params.id}/missing`, 'food-planned', async (read) => {
      const meal = MEAL_KINDS.find((kind) => kind === read.text('meal'));
      const way = PLANNED_WAYS.find((kind) => kind === read.text('way'));
      const what = read.text('what');
      const amount = amountIn(read);
      if (read.problems.length > 0) return undefined;
      if (!meal || !way || what === undefined) return read.add([unknownChoice()]);
      return takeSuggestion(app, params.id, {
        meal,
        way,
        what,
        forEaters: read.choices('for'),
        ...amount,
      });
    }),
  /** All that is missing, by a preference. */
  fill: ({ request, locals: { app }, params, cookies }) =>
    actAndSay(request, cookies, `/trips/${params.id}/missing`, 'plan-filled', async (read) => {
      const preference = FILL_PREFERENCES.find((other) => other === read.text('preference'));
      if (!preference) return read.add([unknownChoice()]);
      return fillPlan(app, params.id, preference);
    }),
  amount: ({ request, locals: { app }, params, cookies }) =>
    actAndSay(request, cookies, `/trips/${params.id}/missing`, 'food-planned', async (read) => {
      const amount = amountIn(read);
      if (read.problems.length > 0) return undefined;
      return changePlannedAmount(app, params.id, read.text('code') ?? '', amount);
    }),
  remove: ({ request, locals: { app }, params, cookies }) =>
    actAndSay(request, cookies, `/trips/${params.id}/missing`, 'food-unplanned', (read) =>
      changePlannedAmount(app, params.id, read.text('code') ?? ''),
    ),
};

const MOST = 10_000;
const unknownChoice = () => ({
  field: '',
  message: say('This page sent a choice that is not on it. Open it again and repeat it there.'),
});

/** Packets, pouches and the size of a packet, as far as they were sent; what is no amount is a problem of the form. */
function amountIn(read: FormReader) {
  const amount = (field: string, isWhole: boolean) => {
    if (read.text(field) === undefined) return undefined;
    const value = read.number(field);
    if (value !== undefined && value > 0 && value <= MOST && (!isWhole || Number.isInteger(value)))
      return value;
    if (read.problems.every((problem) => problem.field !== field))
      read.add([
        {
          field,
          message: isWhole
            ? say('must be a whole number from 1 to {most}', { most: MOST })
            : say('must be more than 0 and at most {most}', { most: MOST }),
        },
      ]);
    return undefined;
  };
  return {
    packets: amount('packets', true),
    pouches: amount('pouches', true),
    packetG: amount('packetG', false),
    at: read.entered['at']?.[0],
  };
}
