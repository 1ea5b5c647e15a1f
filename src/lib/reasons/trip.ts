import { ADULT_FROM_Y, DIGESTION, MET, SLEEP_H, SPREAD } from '$lib/planning/demand/energy-need.ts';
import { KCAL_PER_KG_BODY } from '$lib/planning/demand/day-demand.ts';
import { CAMP_SOURCE_WITHIN_M } from '$lib/planning/route/trip-legs.ts';
import { DIN } from '$lib/planning/route/walking-time.ts';
import { show, type UnitSystem } from '$lib/presentation/show.ts';
import { tripLabel } from '$lib/trip-forms/trip-fields.ts';
import type { UsualName, UsualValue } from '$lib/trip-forms/usual-values.ts';
import { MEAL_STOP_WORDS } from '$lib/presentation/code-words.ts';
import { waterLabel } from '$lib/trip-forms/water-and-fuel.ts';
import { say, sayNumber } from '$lib/texts/say.ts';
import type { Reason, ReasonList, Reasons } from './reason.ts';

type UsualValues = Readonly<Record<UsualName, UsualValue>>;

const usualOf = (usual: UsualValues, names: readonly UsualName[]): Record<string, Reason> =>
  Object.fromEntries(
    names.map((name) => {
      const { text: value, reason: why, isLearned } = usual[name];
      return [name, { label: tripLabel(name) ?? waterLabel(name) ?? name, value, why, isLearned }];
    }),
  );

const percent = (share: number) => show(share, 'share', 'metric');

const copyStart = () => ({
  label: say('Start date of the copy'),
  why: say(
    'whole years of 52 weeks after the trip, so that the weekday stays; its own date if that is still ahead',
  ),
});

/** What a new trip begins with, and what it is planned with until somebody says otherwise. */
export function newTripReasons(usual: UsualValues): Reasons {
  return {
    start: {
      of: {
        partySize: { label: say('People'), value: '2', why: say('the smallest group that shares its packs') },
        dayCount: { label: say('Days'), value: '3', why: say('a long weekend') },
        startDate: { label: say('Start date'), why: say('today, so that only dates have to be changed') },
        group: {
          label: say('Group'),
          value: say('new people, as many as entered'),
          why: say('a group of an earlier trip brings its people along'),
        },
        trip: { label: say('Trip'), why: say('templates first, then the latest trips') },
        copyStart: copyStart(),
        name: { label: say('Name of the trip'), why: say('from the start date; it can be changed later') },
        ...usualOf(usual, [
          'energyKcal',
          'firstMeal',
          'lastMeal',
          'maxLoadG',
          'baseLoadG',
          'waterCapacityMl',
          'walkingH',
          'campAltitudeM',
          'airTemperatureC',
          'waterTemperatureC',
          'humidityShare',
          'wind',
          'terrain',
          'sun',
          'acclimatised',
          'campWater',
          'waterEveryH',
          'treatment',
          'stove.fuel',
          'stove.gas',
          'stove.efficiency',
          'stove.reserve',
          'stove.potG',
          'stove.potMl',
        ]),
      },
    },
  };
}

/** What an estimate of the need from body data takes for granted. */
const bodyReasons = (): ReasonList => ({
  method: 'energy',
  of: {
    resting: {
      label: say('Resting energy'),
      value: `± ${percent(SPREAD.rest)}`,
      why: say('Mifflin & St Jeor 1990; the range is a rule of thumb, measuring your own would replace it'),
    },
    sleep: {
      label: say('Sleep'),
      value: `${SLEEP_H} h`,
      why: say('at {met} times the resting rate (Compendium of Physical Activities 2011)', {
        met: sayNumber(MET.sleep, { maximumFractionDigits: 2 }),
      }),
    },
    camp: {
      label: say('At camp'),
      value: `± ${percent(SPREAD.camp)}`,
      why: say('at {met} times the resting rate: a quarter work, three quarters sitting (rule of thumb)', {
        met: sayNumber(MET.camp),
      }),
    },
    digesting: {
      label: say('Digesting'),
      value: percent(DIGESTION),
      why: say('of what is spent at rest and at camp (rule of thumb)'),
    },
    walking: {
      label: say('Walking'),
      value: `± ${percent(Math.hypot(SPREAD.walkEquation, SPREAD.walkPace))}`,
      why: say(
        'Looney et al. 2022 with the load that is carried; people differ, and so do pace and ground (rule of thumb)',
      ),
    },
    minors: {
      label: say('Under {age} years', { age: ADULT_FROM_Y }),
      value: `± ${percent(SPREAD.minor)}`,
      why: say('the requirement of NASEM 2023 for their age; a professional must advise'),
    },
    bodyMass: {
      label: say('A kilogram of body mass'),
      value: `${sayNumber(KCAL_PER_KG_BODY)} kcal`,
      why: say('Wishnofsky 1958; real losses differ'),
    },
  },
});

export function partyReasons(usual: UsualValues): Reasons {
  return {
    trip: {
      method: 'energy',
      of: {
        ...usualOf(usual, ['firstMeal', 'lastMeal', 'energyKcal', 'planFor', 'deficitShare']),
        copyStart: copyStart(),
      },
    },
    party: { method: 'packs', of: usualOf(usual, ['maxLoadG', 'baseLoadG', 'waterCapacityMl']) },
    body: bodyReasons(),
    meals: {
      method: 'menu',
      of: {
        ...usualOf(usual, ['servingStyle', 'reserveMeals']),
        'party.portion': {
          label: say('Portion from a pot'),
          value: say('by energy'),
          why: say('who needs more, takes more; a portion lies within a quarter serving of that'),
        },
        'mealRules.stop': {
          label: say('Stop'),
          value: say(MEAL_STOP_WORDS.stove),
          why: say('every meal has the stove unless a line says otherwise'),
        },
        'mealRules.style': {
          label: say('Serving style'),
          value: say('as on the whole trip'),
          why: say('so that it has to be said once only'),
        },
        'mealRules.extras': {
          label: say('Made of'),
          value: say('a main dish'),
          why: say('breakfast, lunch and dinner are a dish; snacks are extras'),
        },
      },
    },
    days: {
      method: 'route',
      of: {
        kind: {
          label: tripLabel('kind') ?? '',
          value: say('walking day'),
          why: say(
            'a kind of day sets walking, meals and stove until you enter them; a line under Other meals overrides it',
          ),
        },
        endsAt: {
          label: tripLabel('endsAt') ?? '',
          why: say('days left open share the distance to the next chosen stop, with equal walking hours'),
        },
        ...usualOf(usual, [
          'walkingH',
          'campAltitudeM',
          'airTemperatureC',
          'campWater',
          'terrain',
          'sun',
          'acclimatised',
          'humidityShare',
          'wind',
          'waterTemperatureC',
          'waterEveryH',
          'pace.method',
          'pace.partyFactor',
          'pace.restShare',
        ]),
      },
    },
    stove: {
      method: 'stove-and-fuel',
      of: usualOf(usual, ['stove.fuel', 'stove.gas', 'stove.efficiency', 'stove.reserve']),
    },
  };
}

/** What the page on water and fuel begins its forms with. */
export const waterFormReasons = (usual: UsualValues): Reasons => ({
  treatment: {
    method: 'water',
    of: {
      ...usualOf(usual, ['treatment', 'stove.potG', 'stove.potMl']),
      cookGroups: {
        label: say('Pots of the cook groups'),
        value: say('as above'),
        why: say('each group has a stove and a pot of its own, alike until you say otherwise'),
      },
    },
  },
  started: { of: { 'started.fuel': { label: say('Fuel'), why: say('that of this trip') } } },
  run: {
    method: 'stove-and-fuel',
    of: {
      'run.date': { label: say('Date'), why: say('today') },
      'run.fuel': { label: say('Fuel'), why: say('that of this trip') },
    },
  },
});

export const routeReasons = (system: UnitSystem): Reasons => ({
  way: {
    method: 'route',
    of: {
      level: {
        label: say('Without a route'),
        value: say('{speed} an hour', { speed: show(DIN.flatMPerH, 'distance', system) }),
        why: say('level ground, by DIN 33466'),
      },
      climb: {
        label: say('Climb and descent'),
        why: say(
          'counted after smoothing, because track altitudes jitter and every jitter would count as climb',
        ),
      },
      campSource: {
        label: say('Source near a camp'),
        value: show(CAMP_SOURCE_WITHIN_M, 'distance', system),
        why: say('so near it is the source of the camp: a short walk with a bag (rule of thumb)'),
      },
      ends: {
        label: say('Ends of days left open'),
        why: say('days left open share the distance to the next chosen stop, with equal walking hours'),
      },
    },
  },
  waypoints: {
    method: 'route',
    of: {
      'route.waypoints': {
        label: say('Waypoints'),
        why: say('name and place along the way as the file has them, until you change them'),
      },
      'route.waypoints.water': {
        label: say('Water'),
        why: say('guessed from names and symbols in the file; ask locally before you rely on any'),
      },
    },
  },
});

/** What is taken for the fuel containers before the trip. */
export const afterwardsReasons = (): Reasons => ({
  fuel: {
    of: {
      'fuel.beforeG': {
        label: say('Containers before the trip'),
        why: say('full ones by their size, started ones as they were weighed for the plan'),
      },
    },
  },
});
