import { showDates, showDay } from '../lib/texts/locale.ts';
import type { TripPlan } from '../lib/planning/model/trip-plan.ts';
import { MEAL_WORDS } from '../lib/presentation/code-words.ts';
import { showPour } from '../lib/presentation/fractions.ts';
import { show, type UnitSystem } from '../lib/presentation/show.ts';
import {
  allergensText,
  carriedText,
  elsewhereText,
  firstForText,
  makingTexts,
  platesTexts,
  takenText,
} from '../lib/presentation/card-words.ts';
import { cardCautions } from '../lib/presentation/card-cautions.ts';
import { exclusionTexts } from '../lib/presentation/exclusion-words.ts';
import { withdrawnText } from '../lib/presentation/withdrawn-words.ts';
import { say } from '../lib/texts/say.ts';
import { lotMark } from '../lib/trip-views/coming.ts';
import { cardDishes, type CardDish } from '../lib/trip-views/card.ts';

/** @returns the trail card as plain text, in the units of `system`. */
export function cardText({ card }: TripPlan, system: UnitSystem): string {
  const when =
    card.startDate === card.endDate ? showDay(card.startDate) : showDates(card.startDate, card.endDate);
  const days = card.days.flatMap(
    ({ day, date, altitudeM, boilsAtC, longerSteep, dryCamp, meals, elsewhere }) => [
      '',
      `── ${say('Day {day}, {date}', { day, date: showDay(date) })}${dryCamp ? `, ${say('dry camp')}` : ''}`,
      say('Stove at {altitude}: water boils at {temperature}.', {
        altitude: show(altitudeM, 'altitude', system),
        temperature: show(boilsAtC, 'temperature', system),
      }),
      ...(longerSteep ? [say('The waiting times are longer for it.')] : []),
      ...meals.flatMap((meal) => [
        '',
        [
          card.groups.length > 1
            ? `${say(MEAL_WORDS[meal.meal]).toUpperCase()} (${meal.group})`
            : say(MEAL_WORDS[meal.meal]).toUpperCase(),
          ...(meal.boilMl > 0 ? [say('boil {water}', { water: showPour(meal.boilMl, system) })] : []),
          ...(meal.heatMl > 0 ? [say('heat {water}', { water: showPour(meal.heatMl, system) })] : []),
        ].join(', '),
        ...(firstForText(meal) ? [`  ! ${firstForText(meal)}`] : []),
        ...cardDishes(meal).flatMap((dish) => dishLines(dish, system)),
      ]),
      ...elsewhere.flatMap((away) => ['', elsewhereText(away, card.groups)]),
    ],
  );
  return [
    `${say('Trail card')}: ${card.title}, ${when}`,
    ...card.party.flatMap(({ eater, excludes }) => {
      const words = exclusionTexts(excludes);
      return words.length > 0 ? [`${eater}: ${words.join(', ')}`] : [];
    }),
    '',
    ...card.withdrawn.map((lot) => `! ${withdrawnText(lot)}`),
    ...cardCautions().map((caution) => `! ${caution}`),
    ...days,
    ...(card.reserve.length > 0
      ? [
          '',
          `── ${say('Reserve, not planned to be eaten')}`,
          ...card.reserve.map(
            ({ pouches, code, recipe, carriedBy }) =>
              `  ${pouches} × ${code} ${recipe}. ${carriedText(carriedBy)}`,
          ),
        ]
      : []),
    '',
  ].join('\n');
}

function dishLines(dish: CardDish, system: UnitSystem): string[] {
  return [
    ...dish.lines.flatMap((line) => [
      `  ${takenText({ ...line, code: lotMark(line) })}`,
      ...makingTexts(line, system).map((words) => `      ${words}`),
      `      ${allergensText(line)} ${carriedText(line.carriedBy)}`,
    ]),
    `      ${platesTexts(dish).join('; ')}`,
  ];
}
