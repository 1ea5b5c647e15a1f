import { addDays } from './calendar.ts';
import { wholeBody, type Body, type BodyData } from './body.ts';
import { meaningOf, rulesOfDays } from './day-kinds.ts';
import { isMinor } from './minors.ts';
import type { PlannedLot } from './planned-lot.ts';
import { inOrder } from './resupply.ts';
import type { Terrain, WalkingTimeMethod } from './route.ts';
import { TRIP_DEFAULTS, usualLoads, type Default } from './trip-defaults.ts';
import type { CookGroup, DayConditions, Eater, MealRule, Resupply, StartedContainer, Trip } from './trip.ts';
import type { CanisterGas, DayKind, FuelKind, MainMeal, ServingStyle } from './words.ts';
import type { Why } from './why.ts';

/** One value that a plan rests on although nobody entered it; `field` is its path in the trip, such as `days.0.walkingH`. */
export type Assumption = { readonly field: string; readonly value: string | number; readonly why: Why };

/** A need is either entered, kcal per full day, or estimated from body data, times a learned appetite. */
export type Need =
  | { readonly kind: 'entered'; readonly kcal: number }
  | { readonly kind: 'body'; readonly body: Body; readonly appetite: number };

export type ResolvedEater = Pick<Eater, 'name' | 'allergens' | 'diets' | 'portion' | 'tastes'> & {
  readonly need: Need;
  /** What is known of it. */
  readonly body: BodyData;
  readonly isMinor: boolean;
  /** Whether its need was entered for this eater, or follows from their body. */
  readonly isNeedOwn: boolean;
  readonly maxLoadG: number;
  readonly baseLoadG: number;
  readonly waterCapacityMl: number;
};
export type ResolvedDay = {
  readonly day: number;
  readonly date: string;
  readonly kind?: DayKind;
  readonly walkingH: number;
  readonly campAltitudeM: number;
  readonly airTemperatureC: number;
  readonly humidityShare: number;
  readonly sun: NonNullable<DayConditions['sun']>;
  readonly wind: NonNullable<DayConditions['wind']>;
  readonly terrain: Terrain;
  readonly waterTemperatureC: number;
  readonly campWater: NonNullable<DayConditions['campWater']>;
  readonly waterEveryH: number;
};
/** How a party walks: `partyFactor` times the hours of the method, and `restShare` of that in rests besides. */
export type Pace = {
  readonly method: WalkingTimeMethod;
  /** 1 as the method has it, 1.2 for a party that takes a fifth longer. */
  readonly partyFactor: number;
  /** 0.2 for twelve minutes of rest to each hour of walking. */
  readonly restShare: number;
};
export type ResolvedTrip = {
  readonly name: string;
  readonly firstMeal: MainMeal;
  readonly lastMeal: MainMeal;
  readonly party: readonly ResolvedEater[];
  readonly planFor: NonNullable<Trip['planFor']>;
  readonly deficitShare: number;
  readonly days: readonly ResolvedDay[];
  readonly isAcclimatised: boolean;
  readonly treatment: NonNullable<Trip['treatment']>;
  readonly stove: {
    readonly fuel: FuelKind;
    readonly gas: CanisterGas;
    /** Missing: as measured by the user, or usual for the fuel. */
    readonly efficiency: number | undefined;
    readonly reserve: number;
    readonly potG: number;
    readonly potMl: number;
    readonly started: readonly StartedContainer[];
  };
  readonly cookGroups: readonly CookGroup[];
  readonly servingStyle: ServingStyle;
  readonly animalContainerMl: number | undefined;
  readonly withdrawn: NonNullable<Trip['withdrawn']>;
  readonly mealRules: readonly MealRule[];
  readonly reserveMeals: number;
  /** In the order of the way. */
  readonly resupplies: readonly Resupply[];
  readonly planned: readonly PlannedLot[];
  readonly menu: Trip['menu'];
  readonly assumptions: readonly Assumption[];
};

/** What a route or a leg says of a day, where there is one. */
export type KnownDay = {
  readonly walkingH: number;
  readonly campAltitudeM: number | undefined;
  readonly campWater: 'source' | 'dry' | undefined;
};

/** What earlier trips put in the place of the defaults; a figure that somebody entered stands. */
export type LearnedDefaults = {
  /** Times the target of an eater of that name. */
  appetiteOf(eater: string): Default<number> | undefined;
  /** Dishes that an eater of that name liked or did not. */
  tastesOf(eater: string): NonNullable<Eater['tastes']>;
  readonly partyFactor: Default<number> | undefined;
};
export const NOTHING_LEARNED: LearnedDefaults = {
  appetiteOf: () => undefined,
  tastesOf: () => [],
  partyFactor: undefined,
};

/** Whether somebody entered what an eater needs: for them, or for everybody of the trip who gave no body data. */
export const hasOwnFigure = (eater: Eater, trip: Trip): boolean =>
  eater.energyKcal !== undefined || (trip.energyKcal !== undefined && !wholeBody(eater.body));

/** Hours of a day of which neither a route nor a leg says any. */
export function usualWalkingH(kind: DayKind | undefined): Default<number> {
  const { walkingShare } = meaningOf(kind);
  const { walkingH } = TRIP_DEFAULTS;
  return kind && walkingShare !== 1
    ? { value: walkingShare * walkingH.value, why: { code: 'kind of day', kind } }
    : walkingH;
}

/** The pace of the party, with the defaults for what is left out. */
export function paceOf(trip: Trip, learned: LearnedDefaults): Pace {
  return {
    method: trip.pace.method ?? TRIP_DEFAULTS.paceMethod.value,
    partyFactor: trip.pace.partyFactor ?? (learned.partyFactor ?? TRIP_DEFAULTS.partyFactor).value,
    restShare: trip.pace.restShare ?? TRIP_DEFAULTS.restShare.value,
  };
}

/**
 * Fills in what the user left out and lists every value filled in, so that a plan can show its defaults as such.
 *
 * @param trip a valid trip
 * @param known by day, what the route or a leg entered by hand says
 * @param learned from earlier trips
 */
export function resolveTrip(
  trip: Trip,
  known: readonly (KnownDay | undefined)[] = [],
  learned: LearnedDefaults = NOTHING_LEARNED,
): ResolvedTrip {
  const assumptions: Assumption[] = [];
  const orDefault = <T extends string | number>(
    field: string,
    given: T | undefined,
    fallback: Default<T>,
  ): T => {
    if (given !== undefined) return given;
    assumptions.push({ field, value: fallback.value, why: fallback.why });
    return fallback.value;
  };

  const isOnTripsEnergy = (eater: Eater) => eater.energyKcal === undefined && !wholeBody(eater.body);
  const tripKcal = trip.party.some(isOnTripsEnergy)
    ? orDefault('energyKcal', trip.energyKcal, TRIP_DEFAULTS.energyKcal)
    : 0;
  const appetiteOf = (eater: Eater, index: number): number => {
    const appetite = hasOwnFigure(eater, trip) ? undefined : learned.appetiteOf(eater.name);
    return appetite ? orDefault(`party.${index}.appetite`, undefined, appetite) : 1;
  };
  /** What was entered for the trip, and what was learned of other dishes. */
  const tastesOf = ({ name, tastes = [] }: Eater): NonNullable<Eater['tastes']> => {
    const entered = new Set(tastes.map(({ food }) => food.toLocaleLowerCase('en')));
    const learnt = learned
      .tastesOf(name)
      .filter(({ food }) => !entered.has(food.toLocaleLowerCase('en')))
      .map(({ food, taste }) => ({ food, taste }));
    return [...tastes, ...learnt];
  };
  const firstMeal = orDefault('firstMeal', trip.firstMeal, TRIP_DEFAULTS.firstMeal);
  const lastMealDefault =
    trip.dayCount === 1 && firstMeal === 'dinner'
      ? { value: 'dinner' as const, why: { code: 'only dinner' } as const }
      : TRIP_DEFAULTS.lastMeal;
  const lastMeal = orDefault('lastMeal', trip.lastMeal, lastMealDefault);
  const party = trip.party.map((eater, index): ResolvedEater => {
    const body = wholeBody(eater.body);
    const usual = usualLoads(eater.body ?? {});
    return {
      name: eater.name,
      need:
        eater.energyKcal === undefined && body
          ? { kind: 'body', body, appetite: appetiteOf(eater, index) }
          : { kind: 'entered', kcal: eater.energyKcal ?? tripKcal * appetiteOf(eater, index) },
      body: eater.body ?? {},
      isMinor: isMinor(eater.body ?? {}),
      isNeedOwn: eater.energyKcal !== undefined || body !== undefined,
      allergens: eater.allergens,
      diets: eater.diets,
      ...(eater.portion && { portion: eater.portion }),
      ...(tastesOf(eater).length > 0 && { tastes: tastesOf(eater) }),
      maxLoadG: orDefault(`party.${index}.maxLoadG`, eater.maxLoadG, usual.maxLoadG),
      baseLoadG: orDefault(`party.${index}.baseLoadG`, eater.baseLoadG, usual.baseLoadG),
      waterCapacityMl: orDefault(
        `party.${index}.waterCapacityMl`,
        eater.waterCapacityMl,
        usual.waterCapacityMl,
      ),
    };
  });
  const days = Array.from({ length: trip.dayCount }, (_, index): ResolvedDay => {
    const given = trip.days[index] ?? {};
    const leg = known[index];
    const at = (name: string) => `days.${index}.${name}`;
    return {
      day: index + 1,
      date: addDays(trip.startDate, index),
      ...(given.kind && { kind: given.kind }),
      walkingH: orDefault(at('walkingH'), given.walkingH ?? leg?.walkingH, usualWalkingH(given.kind)),
      campAltitudeM: orDefault(
        at('campAltitudeM'),
        given.campAltitudeM ?? leg?.campAltitudeM,
        TRIP_DEFAULTS.campAltitudeM,
      ),
      airTemperatureC: orDefault(at('airTemperatureC'), given.airTemperatureC, TRIP_DEFAULTS.airTemperatureC),
      humidityShare: orDefault(at('humidityShare'), given.humidityShare, TRIP_DEFAULTS.humidityShare),
      sun: orDefault(at('sun'), given.sun, TRIP_DEFAULTS.sun),
      wind: orDefault(at('wind'), given.wind, TRIP_DEFAULTS.wind),
      terrain: orDefault(at('terrain'), given.terrain, TRIP_DEFAULTS.terrain),
      waterTemperatureC: orDefault(
        at('waterTemperatureC'),
        given.waterTemperatureC,
        TRIP_DEFAULTS.waterTemperatureC,
      ),
      campWater: orDefault(at('campWater'), given.campWater ?? leg?.campWater, TRIP_DEFAULTS.campWater),
      waterEveryH: orDefault(at('waterEveryH'), given.waterEveryH, TRIP_DEFAULTS.waterEveryH),
    };
  });
  const fuel = orDefault('stove.fuel', trip.stove.fuel, TRIP_DEFAULTS.fuel);
  if (known.some((leg) => leg !== undefined)) {
    orDefault('pace.method', trip.pace.method, TRIP_DEFAULTS.paceMethod);
    orDefault('pace.partyFactor', trip.pace.partyFactor, learned.partyFactor ?? TRIP_DEFAULTS.partyFactor);
    orDefault('pace.restShare', trip.pace.restShare, TRIP_DEFAULTS.restShare);
  }
  return {
    name: trip.name,
    firstMeal,
    lastMeal,
    party,
    planFor: orDefault('planFor', trip.planFor, TRIP_DEFAULTS.planFor),
    deficitShare: orDefault('deficitShare', trip.deficitShare, TRIP_DEFAULTS.deficitShare),
    days,
    isAcclimatised: orDefault('acclimatised', trip.acclimatised, TRIP_DEFAULTS.acclimatised) === 'yes',
    treatment: orDefault('treatment', trip.treatment, TRIP_DEFAULTS.treatment),
    stove: {
      fuel,
      gas: trip.stove.gas ?? TRIP_DEFAULTS.gas.value,
      efficiency: trip.stove.efficiency,
      reserve: orDefault('stove.reserve', trip.stove.reserve, TRIP_DEFAULTS.reserve),
      potG: orDefault('stove.potG', trip.stove.potG, TRIP_DEFAULTS.potG),
      potMl: orDefault('stove.potMl', trip.stove.potMl, TRIP_DEFAULTS.potMl),
      started: trip.stove.started,
    },
    cookGroups: trip.cookGroups ?? [],
    servingStyle: orDefault('servingStyle', trip.servingStyle, TRIP_DEFAULTS.servingStyle),
    mealRules: [...rulesOfDays(trip.days, trip.dayCount), ...(trip.mealRules ?? [])],
    reserveMeals: orDefault('reserveMeals', trip.reserveMeals, TRIP_DEFAULTS.reserveMeals),
    animalContainerMl: trip.animalContainerMl,
    resupplies: inOrder(trip.resupplies),
    planned: trip.planned ?? [],
    withdrawn: trip.withdrawn ?? [],
    menu: trip.menu,
    assumptions,
  };
}
