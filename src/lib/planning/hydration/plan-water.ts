import { say } from '../../texts/say.ts';
import type { ResolvedDay, ResolvedTrip } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import { notice, type Notice } from '../model/notices.ts';
import type {
  DayDemand,
  DayHeat,
  DayWater,
  FromOpen,
  MenuMeal,
  MenuPlan,
  WaterLoad,
  WaterPlan,
  WaterStretch,
} from '../model/trip-plan.ts';
import type { MealKind } from '../model/words.ts';
import type { PlannedLeg } from '../route/trip-legs.ts';
import { drinkOfDay, type Drinking } from './drinking.ts';
import { heatNotices } from './heat-notices.ts';
import { treatmentNotices } from './treatment-notices.ts';
import { wetBulbGlobeC } from './heat-stress.ts';
import { lunchStretch } from './lunch-stretch.ts';

/** Of what is drunk apart from walking, this share is drunk at camp, from arriving to leaving; the rest on the way (common practice). */
export const AT_CAMP_SHARE = 0.5;

type Use = { readonly eachMl: readonly number[]; readonly groupMl: number };
/**
 * The trip is a line of moments. At each, water is used until the next one, and there may be water to take up: what has to be carried past
 * a moment is all that is used until the next source.
 */
type Moment = {
  readonly day: number;
  readonly place: 'breakfast' | 'walk' | 'camp';
  readonly name: string;
  readonly source: 'water' | 'snow' | undefined;
  readonly use: Use;
  readonly fromH: number;
  readonly toH: number;
  readonly fromM: number;
  readonly toM: number;
};

/**
 * Water to drink, to cook with and to carry, stretch by stretch.
 *
 * The trip starts at a source. Lunch is cooked half-way, from water carried since the last source. At a dry camp, dinner, breakfast and the night's drinking
 * have been carried there, and so has what is drunk until the next source; at a snow camp they are melted.
 */
export function planWater(
  trip: ResolvedTrip,
  legs: readonly PlannedLeg[],
  demand: readonly DayDemand[],
  heat: readonly DayHeat[],
  menu: MenuPlan,
  settings: Settings,
): { water: WaterPlan; notices: Notice[] } {
  const drinking = trip.days.map((day, index) =>
    trip.party.map((eater) => {
      const work = demand[index]?.eaters.find((row) => row.eater === eater.name)?.walkingRateW ?? 0;
      return drinkOfDay(
        eater,
        day,
        legs[index]?.walkingH ?? 0,
        work,
        foodWaterMl(menu, day.day, eater.name),
        settings,
      );
    }),
  );
  const moments = trip.days.flatMap((day, index) => momentsOf(trip, day, legs, drinking[index] ?? [], menu));

  const days = trip.days.map((day, index): DayWater => {
    const own = moments.flatMap((moment, at) => (moment.day === day.day ? [{ moment, at }] : []));
    const camp = own.find(({ moment }) => moment.place === 'camp')?.moment;
    const walks = own.filter(({ moment }) => moment.place === 'walk');
    const stretches = walks.map(({ moment, at }, position): WaterStretch => ({
      from: moment.name,
      fromH: moment.fromH,
      toH: moment.toH,
      fromM: moment.fromM,
      toM: moment.toM,
      refilled: moment.source !== undefined,
      toDryCamp: position === walks.length - 1 && camp !== undefined && camp.source === undefined,
      start: loadOf(trip, usedUntilSource(moments, at)),
      drunkEach: trip.party.map((eater, eaterIndex) => ({
        eater: eater.name,
        ml: moment.use.eachMl[eaterIndex] ?? 0,
      })),
    }));
    const taken = own
      .filter(({ moment }) => moment.source !== undefined)
      .map(({ moment, at }) => ({ moment, ml: loadOf(trip, usedUntilSource(moments, at)).totalMl }));
    const drinks = drinking[index] ?? [];
    return {
      day: day.day,
      wbgtC: wetBulbGlobeC(day.airTemperatureC, day.humidityShare),
      heat: heatOf(heat, index),
      drink: trip.party.map((eater, eaterIndex) => {
        const drink = drinks[eaterIndex];
        if (!drink) throw new RangeError(`no drinking figure for ${eater.name} on day ${day.day}`);
        return { eater: eater.name, ml: drink.total };
      }),
      drinkMl: drinks.reduce((sum, drink) => sum + drink.total.value, 0),
      cookMl: cookMl(menu, day.day, ['breakfast', 'lunch', 'snack', 'dinner', 'drink']),
      stretches,
      peakMl: Math.max(0, ...stretches.map((stretch) => stretch.start.totalMl)),
      meltMl: taken.filter(({ moment }) => moment.source === 'snow').reduce((sum, { ml }) => sum + ml, 0),
      treatMl: taken.reduce((sum, { ml }) => sum + ml, 0),
    };
  });
  const peak = days.reduce((most, day) => (day.peakMl > most.peakMl ? day : most));
  const water = {
    days,
    drinkMl: days.reduce((sum, day) => sum + day.drinkMl, 0),
    cookMl: days.reduce((sum, day) => sum + day.cookMl, 0),
    peakMl: peak.peakMl,
    peakDay: peak.day,
  };
  return {
    water,
    notices: [
      ...heatNotices(trip, heat),
      ...drinking.flatMap((drinks, index) => overdrinkNotices(trip, index, drinks)),
      ...treatmentNotices(trip, days),
      ...capacityNotices(trip, water),
    ],
  };
}

function heatOf(heat: readonly DayHeat[], index: number): DayHeat {
  const of = heat[index];
  if (!of) throw new RangeError(`no heat for day ${index + 1}`);
  return of;
}

/** Where sweat asks for more than may be drunk, drinking is no answer to the heat. */
function overdrinkNotices(trip: ResolvedTrip, index: number, drinks: readonly Drinking[]): Notice[] {
  const over = trip.party.filter((_, eater) => drinks[eater]?.isCapped);
  return over.length === 0
    ? []
    : [notice('sweat-above-drinking-limit', { eaters: over.map(({ name }) => name) }, { day: index + 1 })];
}

/** Water in the packs where a stretch begins, as one load. */
function loadOf(trip: ResolvedTrip, { eachMl, groupMl }: Use): WaterLoad {
  return {
    own: trip.party.map((eater, index) => ({ eater: eater.name, ml: eachMl[index] ?? 0 })),
    groupMl,
    totalMl: eachMl.reduce((sum, ml) => sum + ml, groupMl),
  };
}

function usedUntilSource(moments: readonly Moment[], start: number): Use {
  let groupMl = 0;
  let eachMl: number[] = [];
  for (let index = start; index < moments.length; index++) {
    const moment = moments[index];
    if (!moment || (index > start && moment.source !== undefined)) break;
    eachMl = moment.use.eachMl.map((ml, eater) => ml + (eachMl[eater] ?? 0));
    groupMl += moment.use.groupMl;
  }
  return { eachMl, groupMl };
}

function momentsOf(
  trip: ResolvedTrip,
  day: ResolvedDay,
  legs: readonly PlannedLeg[],
  drinking: readonly Drinking[],
  menu: MenuPlan,
): Moment[] {
  const leg = legs[day.day - 1];
  if (!leg) throw new RangeError(`no leg for day ${day.day}`);
  const walks = leg.walkingH > 0;
  const none = drinking.map(() => 0);
  const atCampMl = drinking.map((drink) => (walks ? drink.restMl * AT_CAMP_SHARE : drink.total.value));
  const onWayMl = drinking.map((drink, eater) => drink.total.value - (atCampMl[eater] ?? 0));
  const lunchMl = cookMl(menu, day.day, ['lunch', 'snack']);
  const yesterday = trip.days[day.day - 2]?.campWater;
  const before =
    day.day === 1 || yesterday === 'source' ? 'water' : yesterday === 'snow' ? 'snow' : undefined;
  const place = { fromH: 0, toH: 0, fromM: leg.fromM, toM: leg.fromM };

  const breakfast: Moment = {
    day: day.day,
    place: 'breakfast',
    name: say('camp'),
    source: before,
    use: { eachMl: none, groupMl: cookMl(menu, day.day, ['breakfast']) + (walks ? 0 : lunchMl) },
    ...place,
  };
  const starts: { name: string; atH: number; atM: number; source: Moment['source'] }[] = [
    { name: day.day === 1 ? say('the start') : say('camp'), atH: 0, atM: leg.fromM, source: before },
    ...leg.sources
      .filter((source) => source.atH > 1e-6 && source.atH < leg.walkingH - 1e-6)
      .map((source) => ({ ...source, source: 'water' as const })),
  ];
  const lunchAt = lunchStretch(
    starts.map((start) => start.atH),
    leg.walkingH,
  );
  const walking = walks
    ? starts.map((start, index): Moment => {
        const toH = starts[index + 1]?.atH ?? leg.walkingH;
        return {
          day: day.day,
          place: 'walk',
          name: start.name,
          source: start.source,
          use: {
            eachMl: onWayMl.map((ml) => (ml * (toH - start.atH)) / leg.walkingH),
            groupMl: index === lunchAt ? lunchMl : 0,
          },
          fromH: start.atH,
          toH,
          fromM: start.atM,
          toM: starts[index + 1]?.atM ?? leg.toM,
        };
      })
    : [];
  const goesHome = day.day === trip.days.length && trip.lastMeal !== 'dinner';
  const camp: Moment = {
    day: day.day,
    place: 'camp',
    name: say('camp'),
    source: goesHome || day.campWater === 'source' ? 'water' : day.campWater === 'snow' ? 'snow' : undefined,
    use: { eachMl: atCampMl, groupMl: cookMl(menu, day.day, ['dinner', 'drink']) },
    fromH: leg.walkingH,
    toH: leg.walkingH,
    fromM: leg.toM,
    toM: leg.toM,
  };
  return [breakfast, ...walking, camp];
}

function cookMl(menu: MenuPlan, day: number, meals: readonly MealKind[]): number {
  return menu.meals
    .filter((meal) => meal.day === day && meals.includes(meal.meal))
    .reduce((sum, meal) => sum + waterInto(meal).reduce((water, lot) => water + lot.waterMl, 0), 0);
}

/** What has water added to it at a meal: pouches opened there, and food from pouches that were open. */
export const waterInto = ({
  opened,
  fromOpen,
}: Pick<MenuMeal, 'opened' | 'fromOpen'>): readonly Pick<FromOpen, 'waterMl' | 'waterKind'>[] => [
  ...opened,
  ...fromOpen,
];

/** Water added to what one eater eats on a day, ml. */
const foodWaterMl = (menu: MenuPlan, day: number, eater: string): number =>
  menu.meals
    .filter((meal) => meal.day === day)
    .flatMap(({ portions }) => portions)
    .filter((portion) => portion.eater === eater)
    .reduce((sum, portion) => sum + portion.waterMl, 0);

function capacityNotices(trip: ResolvedTrip, water: WaterPlan): Notice[] {
  const capacityMl = trip.party.reduce((sum, eater) => sum + eater.waterCapacityMl, 0);
  const notices: Notice[] = [];
  for (const day of water.days) {
    const worst = day.stretches.reduce<WaterStretch | undefined>(
      (most, stretch) => (most && most.start.totalMl >= stretch.start.totalMl ? most : stretch),
      undefined,
    );
    if (!worst || worst.start.totalMl <= capacityMl + 1) continue;
    notices.push(
      notice(
        'too-little-water-capacity',
        { place: worst.from, waterMl: worst.start.totalMl, capacityMl, toDryCamp: worst.toDryCamp },
        { day: day.day },
      ),
    );
  }
  return notices;
}
