import type { CostTerm, WhyHere } from './explain-menu.ts';
import type { MenuModel } from './menu-model.ts';

/** What each cost of a menu is about, in a word or two. */
export const COST_WORDS: Readonly<Record<CostTerm, string>> = {
  missingKcal: 'energy missing to a day',
  smallMealKcal: 'a meal too small',
  leftOverKcal: 'food left over',
  aboveCeilingKcal: 'more than is eaten in a day',
  repeat: 'the same recipe again',
  carriedKgH: 'weight to carry',
  fuelG: 'fuel',
  shelfLifeYear: 'a pouch that would keep longer',
  proteinG: 'little protein',
};

/** Why pouches stand where they do, in a sentence. */
export function whyText(model: MenuModel, { instead }: WhyHere): string {
  const lot = instead && model.lots[instead.lot]?.lot;
  if (!instead || !lot) return 'least cost in all: nothing else that is free may stand in for it here';
  if (instead.points < 0.05) return `least cost in all; ${lot.code} (${lot.recipe}) would do as well`;
  return `least cost in all: next best here, ${lot.code} (${lot.recipe}), costs ${instead.points.toFixed(1)} points more, for ${COST_WORDS[instead.term]}`;
}
