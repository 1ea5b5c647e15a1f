import type { CardMeal, CardPouches, TripPlan } from '../planning/model/trip-plan.ts';

export type CardLine = CardPouches;
export type CardMealView = CardMeal;
export type CardDayView = TripPlan['card']['days'][number];
/** The trail card as it is shown: of one cook group, or of all. */
export type CardView = TripPlan['card'];

/** @param group of whom; left out: of all */
export const cardView = ({ card }: Pick<TripPlan, 'card'>, group?: string): CardView => ({
  ...card,
  days: card.days.map((day) => ({
    ...day,
    meals: day.meals.filter((meal) => group === undefined || meal.group === group),
  })),
});

/** @returns the day of the card that is wanted on a date: that date's own, else the first before the trip and the last after it */
export function dayToOpen(days: readonly CardDayView[], date: string): number | undefined {
  return (days.findLast((day) => day.date <= date) ?? days[0])?.day;
}

/** @returns servings that the pouches of a line hold: what is eaten, what stays open and what is left over by plan */
export const servingsOf = ({
  shares,
  leftOverServings,
  staysOpenServings,
}: Pick<CardLine, 'leftOverServings' | 'staysOpenServings'> & {
  readonly shares: readonly { readonly servings: number }[];
}): number => shares.reduce((sum, { servings }) => sum + servings, leftOverServings + staysOpenServings);
