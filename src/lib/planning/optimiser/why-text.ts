import { COST_WORDS, writtenWhy } from '../menu/why.ts';
import type { WhyHere } from './explain-menu.ts';
import type { MenuModel } from './menu-model.ts';

/** Why pouches stand where they do, as it is stored. */
export function whyText(model: MenuModel, { instead }: WhyHere): string {
  const lot = instead && model.lots[instead.lot]?.lot;
  if (!instead || !lot) return writtenWhy('only');
  const next = { lot: lot.code, recipe: lot.recipe };
  if (instead.points < 0.05) return writtenWhy('asGood', next);
  return writtenWhy('nextBest', {
    ...next,
    points: instead.points.toFixed(1),
    cost: COST_WORDS[instead.term],
  });
}
