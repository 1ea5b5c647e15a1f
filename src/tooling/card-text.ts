import { showDates, showDay } from '../lib/dates.ts';
import { allergenLabel } from '../lib/planning/model/allergens.ts';
import type { CardPouches, TripPlan } from '../lib/planning/model/trip-plan.ts';
import { MEAL_WORDS } from '../lib/planning/model/words.ts';
import { waitText } from '../lib/planning/trail-card/steep-time.ts';
import { friendlyAmount, showPour } from '../lib/planning/units/fractions.ts';
import { show, type UnitSystem } from '../lib/planning/units/show.ts';
import { counted } from './counted.ts';
import { say } from '../lib/texts/say.ts';

/** @returns the trail card as plain text, in the units of `system`. */
export function cardText({ card }: TripPlan, system: UnitSystem): string {
  const when =
    card.startDate === card.endDate
      ? showDay(card.startDate, system)
      : showDates(card.startDate, card.endDate, system);
  const days = card.days.flatMap(({ day, date, altitudeM, boilsAtC, longerSteep, dryCamp, meals }) => [
    '',
    `── Day ${day}, ${showDay(date, system)}${dryCamp ? ', dry camp' : ''}`,
    `Water boils at ${show(boilsAtC, 'temperature', system)} at ${show(altitudeM, 'altitude', system)}${longerSteep ? '; the waiting times are longer for it' : ''}.`,
    ...meals.flatMap(({ meal, boilMl, heatMl, pouches }) => [
      '',
      [
        say(MEAL_WORDS[meal]).toUpperCase(),
        ...(boilMl > 0 ? [`boil ${showPour(boilMl, system)}`] : []),
        ...(heatMl > 0 ? [`heat ${showPour(heatMl, system)}`] : []),
      ].join(', '),
      ...pouches.flatMap((lot) => pouchLines(lot, system)),
    ]),
  ]);
  return [
    `Trail card: ${card.title}, ${when}`,
    ...card.party.flatMap(({ eater, excludes }) =>
      excludes.length > 0 ? [`${eater}: ${excludes.join(', ')}`] : [],
    ),
    '',
    ...card.cautions.map((caution) => `! ${caution}`),
    ...days,
    '',
  ].join('\n');
}

function pouchLines(lot: CardPouches, system: UnitSystem): string[] {
  const { code, recipe, pouches, waterMl, waterMlPerPouch, waterKind, allergens } = lot;
  const each = pouches > 1 ? ' into each' : '';
  const wait = waitText(lot);
  const holds = allergens?.map(allergenLabel).join(', ');
  return [
    `  ${pouches} × ${lot.toCome ? `${code} (${lot.toCome === 'buy' ? 'to buy' : 'to dry'})` : code}  ${recipe}`,
    ...(waterMl > 0
      ? [`      ${showPour(waterMlPerPouch, system)} ${waterKind} water${each}${wait && `, ${wait}`}`]
      : ['      no water']),
    `      allergens: ${holds === undefined ? 'not stated' : holds || 'none, as the cook stated'}`,
    `      servings: ${lot.shares.map(({ eater, servings }) => `${eater} ${friendlyAmount(servings)}`).join(', ')}`,
    ...(lot.leftOverServings > 0 ? [`      left over: ${counted(lot.leftOverServings, 'serving')}`] : []),
    `      in the pack of: ${lot.carriedBy.map((carrier) => `${carrier.eater} ${carrier.pouches}`).join(', ')}`,
  ];
}
