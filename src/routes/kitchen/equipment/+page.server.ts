import { partActions, versionsOf } from '$lib/forms/part-actions.ts';
import {
  dryerNames,
  KITCHEN_PARTS,
  kitchenChoices,
  kitchenFields,
  kitchenLabel,
  readKitchenPart,
  usualOfLines,
} from '$lib/kitchen-forms/equipment-form.ts';
import { defaultKitchen } from '$lib/planning/model/kitchen.ts';
import { equipmentReasons } from '$lib/reasons/kitchen.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { app }, parent }) => {
  const [{ shown }, kitchen] = await Promise.all([parent(), app.settings.getKitchen()]);
  return {
    fields: kitchenFields(kitchen, shown),
    usual: kitchenFields(defaultKitchen(), shown),
    usualOfLines: usualOfLines(shown),
    dryers: dryerNames(kitchen),
    versions: versionsOf(KITCHEN_PARTS, kitchen),
    reasons: equipmentReasons(shown),
  };
};

export const actions = partActions({
  address: '/kitchen/equipment',
  parts: KITCHEN_PARTS,
  saved: 'equipment-saved',
  get: (app) => app.settings.getKitchen(),
  savePart: (app, ...part) => app.settings.saveKitchenPart(...part),
  fields: kitchenFields,
  label: kitchenLabel,
  choices: kitchenChoices,
  usual: defaultKitchen,
  read: readKitchenPart,
}) satisfies Actions;
