import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { addUserError } from '$lib/forms/user-error.ts';
import { dishName } from '$lib/planning/model/complete-lot.ts';
import { Settings } from '$lib/planning/model/settings.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { partVersion } from '$lib/server/settings-repository.ts';
import { costView, dishPrices } from '$lib/trip-views/costs.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params }) => {
  const { plan, lots, settings } = await plannedForPage(locals, params.id);
  return {
    view: costView(plan),
    costs: { home: plan.costs.home, bought: plan.costs.bought, compared: plan.costs.compared },
    dishes: dishPrices(plan, lots, settings),
    version: partVersion(settings, ['shopPrices']),
  };
};

export const actions: Actions = {
  /** Prices of dishes that are not on this menu stay. */
  prices: async ({ request, locals: { app }, params, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const settings = await app.settings.get();
    const dishes = read.entered['recipe'] ?? [];
    const entered = dishes.flatMap((recipe, index) => {
      const servingMinor = read.money(`price[${index}]`, settings.currency);
      return servingMinor === undefined ? [] : [{ recipe, servingMinor }];
    });
    const named = new Set(dishes.map(dishName));
    const others = settings.shopPrices.filter(({ recipe }) => !named.has(dishName(recipe)));
    const changed = Settings.safeParse(
      { ...settings, shopPrices: [...others, ...entered] },
      { reportInput: true },
    );
    if (!changed.success) read.add(problemsOf(changed.error));
    if (!changed.success || read.problems.length > 0) return fail<RefusedForm>(422, read.refused());
    try {
      await app.settings.savePart(['shopPrices'], read.text('version') ?? '', changed.data);
    } catch (caught) {
      return fail<RefusedForm>(addUserError(read, caught), read.refused());
    }
    sayDone(cookies, 'prices-saved');
    redirect(303, `/trips/${params.id}/costs`);
  },
};
