import type { CardMeal, CardPouches, TripPlan } from '../planning/model/trip-plan.ts';

export type CardShare = { readonly eater: string; readonly servings: number; readonly energyKcal: number };
export type CardLine = Omit<CardPouches, 'shares'> & { readonly shares: readonly CardShare[] };
export type CardMealView = Omit<CardMeal, 'pouches'> & { readonly pouches: readonly CardLine[] };
export type CardDayView = Omit<TripPlan['card']['days'][number], 'meals'> & {
  readonly meals: readonly CardMealView[];
};

/** The trail card as it is shown: each share has its energy. */
export type CardView = Omit<TripPlan['card'], 'days'> & { readonly days: readonly CardDayView[] };

export const cardView = (plan: TripPlan): CardView => ({ ...plan.card, days: cardDays(plan) });

function cardDays(plan: TripPlan): CardDayView[] {
  return plan.card.days.map((day) => ({
    ...day,
    meals: day.meals.map((meal) => {
      const served = plan.menu.meals.find((other) => other.day === day.day && other.meal === meal.meal);
      const energyOf = (eater: string, code: string) =>
        served?.portions.find((portion) => portion.eater === eater && portion.code === code)?.energyKcal ?? 0;
      return {
        ...meal,
        pouches: meal.pouches.map((lot) => ({
          ...lot,
          shares: lot.shares.map((share) => ({ ...share, energyKcal: energyOf(share.eater, lot.code) })),
        })),
      };
    }),
  }));
}

/** @returns the day of the card that is wanted on a date: that date's own, else the first before the trip and the last after it */
export function dayToOpen(days: readonly CardDayView[], date: string): number | undefined {
  return (days.findLast((day) => day.date <= date) ?? days[0])?.day;
}

/** @returns servings that the pouches of a line hold: what is eaten and what is left over by plan */
export const servingsOf = ({ shares, leftOverServings }: CardLine): number =>
  shares.reduce((sum, { servings }) => sum + servings, leftOverServings);
