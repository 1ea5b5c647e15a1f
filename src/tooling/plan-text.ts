import type { EatenNutrient } from '../lib/planning/model/nutrition.ts';
import { NUTRIENTS } from '../lib/planning/model/words.ts';
import {
  comparedText,
  NUTRIENT_WORDS,
  nutrientText,
  standingText,
  statedText,
} from '../lib/presentation/nutrition-words.ts';
import { aboutWhere } from '../lib/presentation/about.ts';
import { showDates, showDay } from '../lib/dates.ts';
import { exclusionTexts } from '../lib/presentation/exclusion-words.ts';
import { noticeText } from '../lib/presentation/notice-words.ts';
import { whyText } from '../lib/presentation/why-words.ts';
import { SEVERITY_WORDS } from '../lib/presentation/severity.ts';
import { worstFirst } from '../lib/trip-views/standing.ts';
import type { Suggestion, TripPlan } from '../lib/planning/model/trip-plan.ts';
import { MEAL_WORDS } from '../lib/presentation/code-words.ts';
import { showPour } from '../lib/presentation/fractions.ts';
import { show, type UnitSystem } from '../lib/presentation/show.ts';
import { counted } from './counted.ts';
import { say } from '../lib/texts/say.ts';
import { table } from './text-table.ts';

/** @returns the whole plan as plain text, in the units of `system`. */
export function planText(plan: TripPlan, system: UnitSystem): string {
  const { totals } = plan;
  const kcal = (value: number) => show(value, 'energy', system);
  const kg = (value: number) => show(value, 'pack', system);
  const water = (value: number) => show(value, 'water', system);
  const when =
    plan.startDate === plan.endDate
      ? showDay(plan.startDate, system)
      : showDates(plan.startDate, plan.endDate, system);

  const menu = plan.demand.flatMap(({ day, date }) => [
    '',
    `Day ${day}, ${showDay(date, system)}`,
    ...plan.menu.meals
      .filter((meal) => meal.day === day)
      .flatMap((meal) => {
        const group = plan.menu.groups.length > 1 ? ` (${meal.group})` : '';
        const name = `  ${say(MEAL_WORDS[meal.meal]).padEnd(9)}${group}`;
        if (meal.eaters.length === 0) return [`${name}  eaten elsewhere`];
        return [
          `${name}  ${kcal(meal.eatenKcal)} of ${kcal(meal.targetKcal)}`,
          ...(meal.elsewhere.length > 0 ? [`    elsewhere: ${meal.elsewhere.join(', ')}`] : []),
          ...meal.opened.map(
            ({ pouches, code, recipe, waterMl, waterKind, style, role, toCome, estimated }) =>
              `    ${pouches} × ${code}  ${recipe}${toCome ? ` (${toCome === 'buy' ? 'to buy' : 'to dry'})` : ''}${role === 'main' ? `, ${style}` : ''}${waterMl > 0 ? `, ${aboutWhere({ estimated }, 'waterMl', showPour(waterMl, system))} ${waterKind} water` : ''}`,
          ),
          ...meal.fromOpen.map(
            ({ code, recipe, sinceDay }) => `    ${code}  ${recipe}, open since day ${sinceDay}`,
          ),
          ...(meal.opened.length + meal.fromOpen.length === 0 ? ['    nothing from the shelf'] : []),
          ...(meal.leftOverKcal > 0 ? [`    left over: ${kcal(meal.leftOverKcal)}`] : []),
        ];
      }),
  ]);

  const days = plan.demand.map(({ day }) => day);
  const loads = plan.carry.packs.map(({ eater }) => {
    const own = plan.carry.loads.filter((load) => load.eater === eater);
    const over = own.some(({ overG }) => overG > 0);
    return [
      eater,
      ...own.map(({ totalG, peakG }) => (peakG > totalG ? `${kg(totalG)} (${kg(peakG)})` : kg(totalG))),
      over ? 'above what they may carry' : '',
    ];
  });

  const rooms = plan.carry.packs.map(({ eater }) => [
    eater,
    ...plan.carry.volumes
      .filter((row) => row.eater === eater)
      .map(({ leavingMl, overMl }) => `${water(leavingMl.value)}${overMl > 0 ? ' *' : ''}`),
  ]);

  const needs = plan.carry.packs.map(({ eater }) => [
    eater,
    ...plan.demand.map(({ eaters }) => {
      const own = eaters.find((row) => row.eater === eater);
      if (!own) return '';
      const { value, low, high } = own.need;
      return low < high ? `${kcal(value)} (${kcal(low)} to ${kcal(high)})` : kcal(value);
    }),
  ]);

  return [
    plan.tripName,
    `${when}: ${counted(plan.carry.packs.length, 'eater')}, ${counted(totals.pouches, 'pouch', 'pouches')}, ${kcal(totals.eatenKcal)} of ${kcal(totals.targetKcal)}`,
    ...section(
      'To know',
      worstFirst(plan.notices).map(
        (notice) => `${say(SEVERITY_WORDS[notice.severity])} ${noticeText(notice, system)}`,
      ),
    ),
    ...section('Menu', menu.slice(1)),
    ...section(
      'Pack weight leaving camp; in brackets the heaviest of the day where water makes it heavier',
      table([['', ...days.map((day) => `day ${day}`), ''], ...loads]),
    ),
    ...section(
      'Room that the food takes leaving camp; * does not fit in the container at night',
      table([['', ...days.map((day) => `day ${day}`)], ...rooms]),
    ),
    ...section(
      'Energy spent on a full day, with the range it may turn out in',
      table([['', ...days.map((day) => `day ${day}`)], ...needs]),
    ),
    ...section(
      'Water of the party',
      table([
        ['', 'heat (WBGT)', 'to drink', 'into the food', 'carried at most', 'taken up', 'melted'],
        ...plan.water.days.map(({ day, wbgtC, drinkMl, cookMl, peakMl, treatMl, meltMl }) => [
          `day ${day}`,
          show(wbgtC, 'temperature', system),
          water(drinkMl),
          water(cookMl),
          water(peakMl),
          water(treatMl),
          water(meltMl),
        ]),
      ]),
    ),
    ...section('Fuel', [
      ...plan.fuel.containers.map(
        ({ count, label, started }) =>
          `${count} × ${label} (${plan.fuel.fuel}${started ? ', from home' : ''})`,
      ),
      `${show(plan.fuel.need.value, 'food', system)} burnt, ${show(plan.fuel.withReserveG, 'food', system)} with the reserve, ${show(plan.fuel.takenG, 'food', system)} taken`,
    ]),
    ...section(
      'What it nourishes: published ranges, no medical advice',
      table([
        ['', 'energy', ...NUTRIENTS.map((nutrient) => say(NUTRIENT_WORDS[nutrient]))],
        ...plan.nutrition.map(({ day, eater, eatenKcal, nutrients }) => [
          `day ${day} ${eater}`,
          kcal(eatenKcal),
          ...nutrients.map((eaten) => nutrientCell(eaten)),
        ]),
      ]),
    ),
    ...section(
      'Missing',
      plan.shortfall.missingKcal > 0
        ? [
            ...plan.shortfall.meals.map(
              ({ day, meal, missingKcal, missingServings }) =>
                `day ${day} ${say(MEAL_WORDS[meal])}: ${kcal(missingKcal)}, about ${counted(missingServings, 'serving')}`,
            ),
            ...plan.shortfall.shopping.flatMap(
              ({ meal, forEaters, exclusions, missingKcal, suggestions }) => [
                '',
                `For ${say(MEAL_WORDS[meal])}, ${forEaters.join(', ')}${bracketed(exclusionTexts(exclusions))}: ${kcal(missingKcal)}, any one of`,
                ...suggestions.map((suggestion) => `  ${suggested(suggestion, system)}`),
              ],
            ),
          ]
        : ['nothing'],
    ),
    ...section(
      'Planned, not there yet',
      plan.coming.map(
        ({ code, way, recipe, pouches, packets, packetG = 0, by, energyKcal }) =>
          `${code}  ${way} ${packets === undefined ? counted(pouches, 'pouch', 'pouches') : `${counted(packets, 'packet')} of ${show(packetG, 'food', system)}`} of ${recipe}, ${kcal(energyKcal)}${by === undefined ? '' : `, cook by ${showDay(by, system)}`}`,
      ),
    ),
    ...section(
      'Assumed, as nobody entered it',
      plan.assumptions.map(({ field, value, why }) => `${field} = ${value}: ${whyText(why)}`),
    ),
    '',
  ].join('\n');
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length > 0 ? ['', `── ${title}`, ...lines] : [];
}

function suggested(
  { way, what, pouches = 0, packets, planned, energyKcal }: Suggestion,
  system: UnitSystem,
): string {
  const amount =
    packets === undefined
      ? counted(pouches, 'pouch', 'pouches')
      : `${counted(packets, 'packet')} of ${show(planned.packetG ?? 0, 'food', system)}`;
  return `${way} ${amount} of ${what}, ${show(energyKcal, 'energy', system)}`;
}

const bracketed = (words: readonly string[]): string => (words.length > 0 ? ` (${words.join(', ')})` : '');

/** "92 g, 1.2 g/kg (below 1.2 to 1.7 g/kg)", and how much of the food states it where that is not all. */
function nutrientCell(eaten: EatenNutrient): string {
  if (eaten.statedShare === 0) return 'not stated';
  const remarks = [standingText(eaten), statedText(eaten)].filter((words) => words !== undefined);
  const amounts = [nutrientText(eaten.nutrient, eaten.amount), comparedText(eaten)]
    .filter(Boolean)
    .join(', ');
  return remarks.length > 0 ? `${amounts} (${remarks.join('; ')})` : amounts;
}
