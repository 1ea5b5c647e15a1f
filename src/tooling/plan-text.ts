import type { PlannedWay } from '../lib/planning/model/words.ts';
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
import { showDates, showDay } from '../lib/texts/locale.ts';
import { exclusionTexts } from '../lib/presentation/exclusion-words.ts';
import { noticeText } from '../lib/presentation/notice-words.ts';
import { whyText } from '../lib/presentation/why-words.ts';
import { SEVERITY_WORDS } from '../lib/presentation/severity.ts';
import { worstFirst } from '../lib/trip-views/standing.ts';
import type { Suggestion, TripPlan } from '../lib/planning/model/trip-plan.ts';
import {
  FUEL_WORDS,
  MEAL_WORDS,
  PLANNED_WAY_WORDS,
  SERVING_STYLE_WORDS,
} from '../lib/presentation/code-words.ts';
import { showPour } from '../lib/presentation/fractions.ts';
import { show, type UnitSystem } from '../lib/presentation/show.ts';
import { say, sayList } from '../lib/texts/say.ts';
import { roundedServings } from '../lib/shown-count.ts';
import { POUR_WORDS } from '../lib/presentation/pour-words.ts';
import { table } from './text-table.ts';

/** @returns the whole plan as plain text, in the units of `system`. */
export function planText(plan: TripPlan, system: UnitSystem): string {
  const { totals } = plan;
  const kcal = (value: number) => show(value, 'energy', system);
  const kg = (value: number) => show(value, 'pack', system);
  const water = (value: number) => show(value, 'water', system);
  const eatenOf = (eaten: number, target: number) =>
    say('{eaten} of {target}', { eaten: kcal(eaten), target: kcal(target) });
  const when =
    plan.startDate === plan.endDate ? showDay(plan.startDate) : showDates(plan.startDate, plan.endDate);

  const menu = plan.demand.flatMap(({ day, date }) => [
    '',
    say('Day {day}, {date}', { day, date: showDay(date) }),
    ...plan.menu.meals
      .filter((meal) => meal.day === day)
      .flatMap((meal) => {
        const group = plan.menu.groups.length > 1 ? ` (${meal.group})` : '';
        const name = `  ${say(MEAL_WORDS[meal.meal]).padEnd(9)}${group}`;
        if (meal.eaters.length === 0) return [`${name}  ${say('eaten elsewhere')}`];
        return [
          `${name}  ${eatenOf(meal.eatenKcal, meal.targetKcal)}`,
          ...(meal.elsewhere.length > 0
            ? [`    ${say('{names}: elsewhere', { names: sayList(meal.elsewhere) })}`]
            : []),
          ...meal.opened.map(
            ({ pouches, code, recipe, waterMl, waterKind, style, role, toCome, estimated }) =>
              [
                `    ${pouches} × ${code}  ${recipe}${toCome ? ` (${toCome === 'buy' ? say('to buy') : say('to dry')})` : ''}`,
                ...(role === 'main' ? [say(SERVING_STYLE_WORDS[style])] : []),
                ...(waterMl > 0 && waterKind !== 'none'
                  ? [
                      `${aboutWhere({ estimated }, 'waterMl', showPour(waterMl, system))} ${say(POUR_WORDS[waterKind])}`,
                    ]
                  : []),
              ].join(', '),
          ),
          ...meal.fromOpen.map(
            ({ code, recipe, sinceDay }) =>
              `    ${say('{code} {recipe}, open since day {day}', { code, recipe, day: sinceDay })}`,
          ),
          ...(meal.opened.length + meal.fromOpen.length === 0
            ? [`    ${say('nothing from the shelf')}`]
            : []),
          ...(meal.leftOverKcal > 0
            ? [`    ${say('left over: {energy}', { energy: kcal(meal.leftOverKcal) })}`]
            : []),
        ];
      }),
  ]);

  const days = plan.demand.map(({ day }) => say('Day {day}', { day }));
  const loads = plan.carry.packs.map(({ eater }) => {
    const own = plan.carry.loads.filter((load) => load.eater === eater);
    const over = own.some(({ overG }) => overG > 0);
    return [
      eater,
      ...own.map(({ totalG, peakG }) => (peakG > totalG ? `${kg(totalG)} (${kg(peakG)})` : kg(totalG))),
      over ? say('over the carry limit') : '',
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
      return low < high
        ? `${kcal(value)} (${say('{from} to {to}', { from: kcal(low), to: kcal(high) })})`
        : kcal(value);
    }),
  ]);

  return [
    plan.tripName,
    say(
      '{when}: {people, plural, one {# person} other {# people}}, {pouches, plural, one {# pouch} other {# pouches}}, {energy}',
      {
        when,
        people: plan.carry.packs.length,
        pouches: totals.pouches,
        energy: eatenOf(totals.eatenKcal, totals.targetKcal),
      },
    ),
    ...section(
      say('Notices'),
      worstFirst(plan.notices).map(
        (notice) => `${say(SEVERITY_WORDS[notice.severity])} ${noticeText(notice, system)}`,
      ),
    ),
    ...section(say('Menu'), menu.slice(1)),
    ...section(
      say('Pack weight leaving camp, in brackets the heaviest of the day where water adds to it'),
      table([['', ...days, ''], ...loads]),
    ),
    ...section(say('Energy used on a full day, with its range'), table([['', ...days], ...needs])),
    ...section(
      say('Room that the food takes leaving camp; * does not fit in the container at night'),
      table([['', ...days], ...rooms]),
    ),
    ...section(
      say('Water of the group'),
      table([
        [
          '',
          say('heat (WBGT)'),
          say('to drink'),
          say('for the food'),
          say('max carried'),
          say('treated'),
          say('melted'),
        ],
        ...plan.water.days.map(({ day, wbgtC, drinkMl, cookMl, peakMl, treatMl, meltMl }) => [
          say('Day {day}', { day }),
          show(wbgtC, 'temperature', system),
          water(drinkMl),
          water(cookMl),
          water(peakMl),
          water(treatMl),
          water(meltMl),
        ]),
      ]),
    ),
    ...section(say('Fuel'), [
      ...plan.fuel.containers.map(({ count, label, started }) =>
        started
          ? say('{count} × {label} (from home)', { count, label })
          : `${count} × ${label} (${say(FUEL_WORDS[plan.fuel.fuel])})`,
      ),
      say('{burnt} burnt, {reserved} with the reserve, {taken} taken', {
        burnt: show(plan.fuel.need.value, 'food', system),
        reserved: show(plan.fuel.withReserveG, 'food', system),
        taken: show(plan.fuel.takenG, 'food', system),
      }),
    ]),
    ...section(
      say('Nutrition against published ranges; no medical advice'),
      table([
        ['', say('Energy'), ...NUTRIENTS.map((nutrient) => say(NUTRIENT_WORDS[nutrient]))],
        ...plan.nutrition.map(({ day, eater, eatenKcal, nutrients }) => [
          say('Day {day}, {eater}', { day, eater }),
          kcal(eatenKcal),
          ...nutrients.map((eaten) => nutrientCell(eaten)),
        ]),
      ]),
    ),
    ...section(
      say('Shortfall'),
      plan.shortfall.missingKcal > 0
        ? [
            ...plan.shortfall.meals.map(({ day, meal, missingKcal, missingServings }) =>
              say(
                'Day {day}, {meal}: {energy}, about {servings, plural, one {# serving} other {# servings}}',
                {
                  day,
                  meal: say(MEAL_WORDS[meal]),
                  energy: kcal(missingKcal),
                  servings: Math.max(0.5, roundedServings(missingServings).servings),
                },
              ),
            ),
            ...plan.shortfall.shopping.flatMap(
              ({ meal, forEaters, exclusions, missingKcal, suggestions }) => [
                '',
                say('For {meal}, {names}: {energy}, one of', {
                  meal: say(MEAL_WORDS[meal]),
                  names: `${sayList(forEaters)}${bracketed(exclusionTexts(exclusions))}`,
                  energy: kcal(missingKcal),
                }),
                ...suggestions.map((suggestion) => `  ${suggested(suggestion, system)}`),
              ],
            ),
          ]
        : [say('nothing')],
    ),
    ...section(
      say('Planned, not there yet'),
      plan.coming.map(({ code, way, recipe, pouches, packets, packetG = 0, by, energyKcal }) =>
        [
          `${code}  ${toGet(way, recipe, pouches, packets, packetG, system)}, ${kcal(energyKcal)}`,
          ...(by === undefined ? [] : [say('cook by {date}', { date: showDay(by) })]),
        ].join(', '),
      ),
    ),
    ...section(
      say('Assumed, because not entered'),
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
  return `${toGet(way, what, pouches, packets, planned.packetG, system)}, ${show(energyKcal, 'energy', system)}`;
}

/** What to buy or to dry, and how much of it. */
function toGet(
  way: PlannedWay,
  what: string,
  pouches: number,
  packets: number | undefined,
  packetG = 0,
  system: UnitSystem,
): string {
  const name = `${say(PLANNED_WAY_WORDS[way])}: ${what}`;
  return packets === undefined
    ? say('{name}, {pouches, plural, one {# pouch} other {# pouches}}', { name, pouches })
    : say('{name}, {packages, plural, one {# package} other {# packages}} of {weight}', {
        name,
        packages: packets,
        weight: show(packetG, 'food', system),
      });
}

const bracketed = (words: readonly string[]): string => (words.length > 0 ? ` (${words.join(', ')})` : '');

/** "92 g, 1.2 g/kg (below 1.2 to 1.7 g/kg)", and how much of the food states it where that is not all. */
function nutrientCell(eaten: EatenNutrient): string {
  if (eaten.statedShare === 0) return say('not stated');
  const remarks = [standingText(eaten), statedText(eaten)].filter((words) => words !== undefined);
  const amounts = [nutrientText(eaten.nutrient, eaten.amount), comparedText(eaten)]
    .filter(Boolean)
    .join(', ');
  return remarks.length > 0 ? `${amounts} (${remarks.join('; ')})` : amounts;
}
