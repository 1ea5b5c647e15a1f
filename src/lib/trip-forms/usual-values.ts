import { learnedDefaults, learnedEfficiency, whyEfficiency } from '$lib/planning/learning/learned-figures.ts';
import {
  hasOwnFigure,
  NOTHING_LEARNED,
  usualWalkingH,
  type LearnedDefaults,
} from '$lib/planning/model/resolve-trip.ts';
import { defaultSettings, type Settings } from '$lib/planning/model/settings.ts';
import { TRIP_DEFAULTS, usualLoads, type Default } from '$lib/planning/model/trip-defaults.ts';
import type { Trip } from '$lib/planning/model/trip.ts';
import type { DayKind, FuelKind } from '$lib/planning/model/words.ts';
import {
  CANISTER_GAS_WORDS,
  FUEL_WORDS,
  MEAL_WORDS,
  SERVING_STYLE_WORDS,
} from '$lib/presentation/code-words.ts';
import { knownDays, knownLegs } from '$lib/planning/route/trip-legs.ts';
import { baseEfficiency } from '$lib/planning/stove/plan-fuel.ts';
import { fieldValue, show, type Quantity, type UnitSystem } from '$lib/presentation/show.ts';
import { whyText } from '$lib/presentation/why-words.ts';
import { say, sayNumber, type Text } from '$lib/texts/say.ts';
import {
  ACCLIMATISED_WORDS,
  CAMP_WATER_WORDS,
  PLAN_FOR_WORDS,
  SUN_WORDS,
  TERRAIN_WORDS,
  TREATMENT_WORDS,
  WALKING_TIME_WORDS,
  WIND_WORDS,
} from './choice-words.ts';

/** A default as a person reads it. `typed` is what would be typed in its field; `isLearned` says that earlier trips put it there. */
export type UsualValue = {
  readonly text: string;
  readonly typed: string;
  readonly reason: string;
  readonly isLearned?: boolean;
};

export type UsualName =
  | Exclude<
      keyof typeof TRIP_DEFAULTS,
      'paceMethod' | 'partyFactor' | 'restShare' | 'fuel' | 'gas' | 'reserve' | 'potG' | 'potMl'
    >
  | `pace.${'method' | 'partyFactor' | 'restShare'}`
  | `stove.${'fuel' | 'gas' | 'efficiency' | 'reserve' | 'potG' | 'potMl'}`;

/**
 * What holds where a field is left empty, and why.
 *
 * @param fuel the fuel whose efficiency is meant
 * @param settings with what was measured and learned; left out: nothing was
 */
export function usualValues(
  system: UnitSystem,
  fuel: FuelKind,
  settings: Settings = defaultSettings(),
): Readonly<Record<UsualName, UsualValue>> {
  const base = baseEfficiency(fuel, settings);
  const efficiency = learnedEfficiency(settings.learned, fuel, base.value);
  const { partyFactor } = learnedDefaults(settings.learned);
  const measured = ({ value, why }: Default<number>, quantity: Quantity, digits = 0): UsualValue => ({
    text: show(value, quantity, system),
    typed: fieldValue(value, quantity, system, digits),
    reason: whyText(why),
  });
  const factor = ({ value, why }: Default<number>): UsualValue => ({
    text: sayNumber(value, { maximumFractionDigits: 3 }),
    typed: String(value),
    reason: whyText(why),
  });
  const hours = ({ value, why }: Default<number>): UsualValue => ({
    text: `${sayNumber(value, { maximumFractionDigits: 3 })} h`,
    typed: String(value),
    reason: whyText(why),
  });
  const words = (word: Text, { value, why }: Default<string>): UsualValue => ({
    text: say(word),
    typed: value,
    reason: whyText(why),
  });
  return {
    firstMeal: words(MEAL_WORDS[TRIP_DEFAULTS.firstMeal.value], TRIP_DEFAULTS.firstMeal),
    lastMeal: words(MEAL_WORDS[TRIP_DEFAULTS.lastMeal.value], TRIP_DEFAULTS.lastMeal),
    energyKcal: measured(TRIP_DEFAULTS.energyKcal, 'energy'),
    maxLoadG: measured(TRIP_DEFAULTS.maxLoadG, 'pack', 1),
    baseLoadG: measured(TRIP_DEFAULTS.baseLoadG, 'pack', 1),
    waterCapacityMl: measured(TRIP_DEFAULTS.waterCapacityMl, 'water', 1),
    planFor: words(PLAN_FOR_WORDS[TRIP_DEFAULTS.planFor.value], TRIP_DEFAULTS.planFor),
    deficitShare: measured(TRIP_DEFAULTS.deficitShare, 'share'),
    servingStyle: words(SERVING_STYLE_WORDS[TRIP_DEFAULTS.servingStyle.value], TRIP_DEFAULTS.servingStyle),
    reserveMeals: {
      text: say('none'),
      typed: String(TRIP_DEFAULTS.reserveMeals.value),
      reason: whyText(TRIP_DEFAULTS.reserveMeals.why),
    },
    treatment: words(TREATMENT_WORDS[TRIP_DEFAULTS.treatment.value], TRIP_DEFAULTS.treatment),
    'pace.method': words(WALKING_TIME_WORDS[TRIP_DEFAULTS.paceMethod.value], TRIP_DEFAULTS.paceMethod),
    'pace.partyFactor': {
      ...factor(partyFactor ?? TRIP_DEFAULTS.partyFactor),
      ...(partyFactor && { isLearned: true }),
    },
    'pace.restShare': measured(TRIP_DEFAULTS.restShare, 'share'),
    walkingH: hours(TRIP_DEFAULTS.walkingH),
    campAltitudeM: measured(TRIP_DEFAULTS.campAltitudeM, 'altitude'),
    airTemperatureC: measured(TRIP_DEFAULTS.airTemperatureC, 'temperature'),
    waterTemperatureC: measured(TRIP_DEFAULTS.waterTemperatureC, 'temperature'),
    humidityShare: measured(TRIP_DEFAULTS.humidityShare, 'share'),
    sun: words(SUN_WORDS[TRIP_DEFAULTS.sun.value], TRIP_DEFAULTS.sun),
    acclimatised: words(ACCLIMATISED_WORDS[TRIP_DEFAULTS.acclimatised.value], TRIP_DEFAULTS.acclimatised),
    wind: words(WIND_WORDS[TRIP_DEFAULTS.wind.value], TRIP_DEFAULTS.wind),
    terrain: words(TERRAIN_WORDS[TRIP_DEFAULTS.terrain.value], TRIP_DEFAULTS.terrain),
    campWater: words(CAMP_WATER_WORDS[TRIP_DEFAULTS.campWater.value], TRIP_DEFAULTS.campWater),
    waterEveryH: hours(TRIP_DEFAULTS.waterEveryH),
    'stove.gas': words(CANISTER_GAS_WORDS[TRIP_DEFAULTS.gas.value], TRIP_DEFAULTS.gas),
    'stove.fuel': words(FUEL_WORDS[TRIP_DEFAULTS.fuel.value], TRIP_DEFAULTS.fuel),
    'stove.efficiency': efficiency
      ? {
          ...measured({ value: efficiency.value, why: whyEfficiency(efficiency) }, 'share'),
          isLearned: true,
        }
      : measured(base, 'share'),
    'stove.reserve': measured(TRIP_DEFAULTS.reserve, 'share'),
    'stove.potG': measured(TRIP_DEFAULTS.potG, 'food', 1),
    'stove.potMl': measured(TRIP_DEFAULTS.potMl, 'water', 1),
  };
}

/** @returns by eater of the party, the loads and bottles that hold where nothing is entered, by their age and mass. */
export function usualLoadsOf(
  trip: Trip,
  system: UnitSystem,
): Readonly<Record<'maxLoadG' | 'baseLoadG' | 'waterCapacityMl', UsualValue>>[] {
  const shown = ({ value, why }: Default<number>, quantity: Quantity): UsualValue => ({
    text: show(value, quantity, system),
    typed: fieldValue(value, quantity, system, 1),
    reason: whyText(why),
  });
  return trip.party.map(({ body }) => {
    const { maxLoadG, baseLoadG, waterCapacityMl } = usualLoads(body ?? {});
    return {
      maxLoadG: shown(maxLoadG, 'pack'),
      baseLoadG: shown(baseLoadG, 'pack'),
      waterCapacityMl: shown(waterCapacityMl, 'water'),
    };
  });
}

/** What was learned of an eater, and what it makes of the usual energy where no body data is given. */
export type UsualAppetite = { readonly text: string; readonly energyText: string; readonly reason: string };

/** @returns by eater of the party, what their target is multiplied by; `undefined` where nothing was learned or somebody entered a figure. */
export function usualAppetites(trip: Trip, learned: LearnedDefaults): (UsualAppetite | undefined)[] {
  return trip.party.map((eater) => {
    const appetite = hasOwnFigure(eater, trip) ? undefined : learned.appetiteOf(eater.name);
    return (
      appetite && {
        text: show(appetite.value, 'share', 'metric'),
        energyText: show(TRIP_DEFAULTS.energyKcal.value * appetite.value, 'energy', 'metric'),
        reason: whyText(appetite.why),
      }
    );
  });
}

/** What holds on one day where its fields are left empty, because its way says so. */
export type UsualOnDay = Partial<Readonly<Record<UsualName | 'endsAt', UsualValue>>>;

/** What the kind of a day says where neither a route nor a leg does. */
function usualOfKind(kind: DayKind | undefined): UsualOnDay {
  const { value, why } = usualWalkingH(kind);
  return why.code === 'kind of day'
    ? { walkingH: { text: `${sayNumber(value)} h`, typed: String(value), reason: whyText(why) } }
    : {};
}

/** @returns by day, what the route, the leg entered by hand or else the kind of the day says; empty where none does. */
export function usualByDay(
  trip: Trip,
  system: UnitSystem,
  learned: LearnedDefaults = NOTHING_LEARNED,
): UsualOnDay[] {
  const legs = knownLegs(trip, learned);
  const reason = trip.route ? say('by the route') : say('by the leg');
  return knownDays(trip, legs).map((day, index): UsualOnDay => {
    const leg = legs[index];
    if (!day || !leg) return usualOfKind(trip.days[index]?.kind);
    const hours = Number(day.walkingH.toFixed(1));
    const isLast = index === trip.dayCount - 1;
    return {
      walkingH: { text: `${sayNumber(hours)} h`, typed: String(hours), reason },
      ...(day.campAltitudeM !== undefined && {
        campAltitudeM: {
          text: show(day.campAltitudeM, 'altitude', system),
          typed: fieldValue(day.campAltitudeM, 'altitude', system, 0),
          reason,
        },
      }),
      ...(day.campWater && {
        campWater: { text: say(CAMP_WATER_WORDS[day.campWater]), typed: day.campWater, reason },
      }),
      ...(trip.route && {
        endsAt: {
          text: isLast
            ? say('the end of the route')
            : leg.endsAt === undefined
              ? say('open, at {place}', { place: show(leg.toM, 'distance', system) })
              : say('open'),
          typed: '',
          reason: say('days left open share the distance to the next chosen stop, with equal walking hours'),
        },
      }),
    };
  });
}
