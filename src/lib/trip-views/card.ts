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
    elsewhere: day.elsewhere.filter((meal) => group === undefined || meal.group === group),
  })),
});

/** @returns a card for each cook group, with its people only */
export const cardsByGroup = (card: CardView): { readonly group: string; readonly card: CardView }[] =>
  card.groups.map(({ name, eaters }) => ({
    group: name,
    card: {
      ...cardView({ card }, name),
      party: card.party.filter(({ eater }) => eaters.includes(eater)),
    },
  }));

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

/** A dish of a card: one line, or those of several lots in one pot, whose portions are of the whole pot. */
export type CardDish = Pick<CardLine, 'shares' | 'staysOpenServings' | 'leftOverServings'> & {
  readonly lines: readonly CardLine[];
};

/** @returns the dishes of a meal, in the order in which they are made */
export function cardDishes({ pouches }: Pick<CardMealView, 'pouches'>): CardDish[] {
  const inPot = Map.groupBy(pouches, (line) =>
    line.style === 'shared pot' ? `pot ${line.role} ${line.recipe}` : line,
  );
  return [...inPot.values()].map((lines) => {
    const rows = Map.groupBy(
      lines.flatMap(({ shares }) => shares),
      ({ eater }) => eater,
    );
    const total = (of: (line: CardLine) => number) => lines.reduce((sum, line) => sum + of(line), 0);
    return {
      lines,
      shares:
        lines.length === 1
          ? (lines[0]?.shares ?? [])
          : [...rows].map(([eater, own]) => ({
              eater,
              servings: own.reduce((sum, { servings }) => sum + servings, 0),
              energyKcal: own.reduce((sum, { energyKcal }) => sum + energyKcal, 0),
            })),
      staysOpenServings: total(({ staysOpenServings }) => staysOpenServings),
      leftOverServings: total(({ leftOverServings }) => leftOverServings),
    };
  });
}
