import { learnedDefaults } from '../learning/learned-figures.ts';
import { wholeBody } from '../model/body.ts';
import { resolveTrip } from '../model/resolve-trip.ts';
import type { Stock } from '../model/pouch-lot.ts';
import type { Settings } from '../model/settings.ts';
import type { TripPlan } from '../model/trip-plan.ts';
import type { Trip } from '../model/trip.ts';
import { planTrip } from '../plan-trip.ts';
import { knownDays, knownLegs } from '../route/trip-legs.ts';
import { stoveEfficiency } from '../stove/plan-fuel.ts';

/** The figures that are watched: all packs together on the first morning, fuel with its reserve, water drunk and cooked with, and the energy that is planned for. */
export type Watched = {
  readonly packsG: number;
  readonly fuelG: number;
  readonly waterMl: number;
  readonly energyKcal: number;
};

/** What a plan is made of, and may be moved by. */
export const INPUTS = [
  'energy target',
  'body mass',
  'base load',
  'walking hours',
  'altitude of the camps',
  'air temperature',
  'water temperature',
  'energy of the pouches',
  'dry weight of the pouches',
  'water the pouches take',
  'water of a day at rest',
  'drinking for each hour of walking',
  'efficiency of the stove',
  'fuel reserve',
] as const;
export type Input = (typeof INPUTS)[number];

export type Influence = {
  readonly input: Input;
  /** Its step, °C; left out: a tenth of itself. */
  readonly stepC?: number;
  /** The watched figures with the input a step lower and a step higher. */
  readonly lower: Watched;
  readonly higher: Watched;
  /** The largest change of any watched figure, as a share of it. */
  readonly largestShare: number;
};
export type Sensitivity = { readonly base: Watched; readonly influences: readonly Influence[] };

type Inputs = { readonly trip: Trip; readonly stock: Stock; readonly settings: Settings };
type Knob = {
  readonly input: Input;
  readonly stepC?: number;
  readonly turn: (inputs: Inputs, sign: -1 | 1) => Inputs;
};

/** The step of every input but temperatures, as a share of it. */
export const STEP = 0.1;
const STEP_C = 3;
const share = (sign: -1 | 1) => 1 + sign * STEP;

/**
 * What moves a plan most: each input a tenth down and up (temperatures by 3 °C), the plan made again, locked meals kept.
 * Whole pouches and containers make small steps jump; that is how the packs will behave too.
 *
 * @returns influences, the strongest first
 */
export function sensitivityOf(trip: Trip, stock: Stock, settings: Settings): Sensitivity {
  const inputs: Inputs = { trip: withEverything(trip, settings), stock, settings };
  const base = watch(planTrip(inputs.trip, stock, settings));
  const influences = knobsFor(inputs.trip).map(({ input, stepC, turn }): Influence => {
    const planned = (sign: -1 | 1) => {
      const turned = turn(inputs, sign);
      return watch(planTrip(turned.trip, turned.stock, turned.settings));
    };
    const lower = planned(-1);
    const higher = planned(1);
    const largestShare = Math.max(
      ...(Object.keys(base) as (keyof Watched)[]).flatMap((key) =>
        base[key] > 0 ? [Math.abs(lower[key] / base[key] - 1), Math.abs(higher[key] / base[key] - 1)] : [],
      ),
      0,
    );
    return { input, ...(stepC !== undefined && { stepC }), lower, higher, largestShare };
  });
  return {
    base,
    influences: [...influences].sort(
      (a, b) => b.largestShare - a.largestShare || (a.input < b.input ? -1 : 1),
    ),
  };
}

function watch(plan: TripPlan): Watched {
  return {
    packsG: plan.carry.loads.filter((load) => load.day === 1).reduce((sum, load) => sum + load.totalG, 0),
    fuelG: plan.fuel.withReserveG,
    waterMl: plan.water.drinkMl + plan.water.cookMl,
    energyKcal: plan.totals.targetKcal,
  };
}

/** The trip with every default written out, so that a step of an input that was left out is a step too; only locked meals stay on the menu. */
function withEverything(trip: Trip, settings: Settings): Trip {
  const learned = learnedDefaults(settings.learned);
  const resolved = resolveTrip(trip, knownDays(trip, knownLegs(trip, learned)), learned);
  const stove = stoveEfficiency(resolved, settings);
  return {
    ...trip,
    menu: trip.menu.filter((meal) => meal.locked),
    party: trip.party.map((eater, index) => {
      const full = resolved.party[index];
      return full
        ? {
            ...eater,
            baseLoadG: full.baseLoadG,
            ...(full.need.kind === 'entered' ? { energyKcal: full.need.kcal } : {}),
          }
        : eater;
    }),
    days: resolved.days.map(
      ({ walkingH, campAltitudeM, airTemperatureC, waterTemperatureC, campWater }, index) => ({
        ...trip.days[index],
        walkingH,
        campAltitudeM,
        airTemperatureC,
        waterTemperatureC,
        campWater,
      }),
    ),
    stove: {
      ...trip.stove,
      reserve: resolved.stove.reserve,
      ...(stove.basis === 'usual' || stove.basis === 'learned' ? { efficiency: stove.value } : {}),
    },
  };
}

function knobsFor(trip: Trip): Knob[] {
  const eaters =
    (turn: (eater: Trip['party'][number], factor: number) => Trip['party'][number]): Knob['turn'] =>
    (inputs, sign) => ({
      ...inputs,
      trip: { ...inputs.trip, party: inputs.trip.party.map((eater) => turn(eater, share(sign))) },
    });
  const days =
    (turn: (day: Trip['days'][number], sign: -1 | 1) => Trip['days'][number]): Knob['turn'] =>
    (inputs, sign) => ({
      ...inputs,
      trip: { ...inputs.trip, days: inputs.trip.days.map((day) => turn(day, sign)) },
    });
  const lots =
    (turn: (lot: Stock[number], factor: number) => Stock[number]): Knob['turn'] =>
    (inputs, sign) => ({ ...inputs, stock: inputs.stock.map((lot) => turn(lot, share(sign))) });
  const settings =
    (turn: (settings: Settings, factor: number) => Partial<Settings>): Knob['turn'] =>
    (inputs, sign) => ({
      ...inputs,
      settings: { ...inputs.settings, ...turn(inputs.settings, share(sign)) },
    });
  const hasBody = trip.party.some((eater) => wholeBody(eater.body) && eater.energyKcal === undefined);
  const hasEntered = trip.party.some((eater) => eater.energyKcal !== undefined);
  const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));

  return [
    ...(hasEntered
      ? [
          {
            input: 'energy target' as const,
            turn: eaters((eater, factor) =>
              eater.energyKcal === undefined ? eater : { ...eater, energyKcal: eater.energyKcal * factor },
            ),
          },
        ]
      : []),
    ...(hasBody
      ? [
          {
            input: 'body mass' as const,
            turn: eaters((eater, factor) =>
              eater.body?.massG
                ? { ...eater, body: { ...eater.body, massG: eater.body.massG * factor } }
                : eater,
            ),
          },
        ]
      : []),
    {
      input: 'base load',
      turn: eaters((eater, factor) => ({ ...eater, baseLoadG: (eater.baseLoadG ?? 0) * factor })),
    },
    {
      input: 'walking hours',
      turn: days((day, sign) => ({ ...day, walkingH: within((day.walkingH ?? 0) * share(sign), 0, 20) })),
    },
    {
      input: 'altitude of the camps',
      turn: days((day, sign) => ({
        ...day,
        campAltitudeM: within((day.campAltitudeM ?? 0) * share(sign), -430, 8848),
      })),
    },
    {
      input: 'air temperature',
      stepC: STEP_C,
      turn: days((day, sign) => ({
        ...day,
        airTemperatureC: within((day.airTemperatureC ?? 0) + sign * STEP_C, -50, 55),
      })),
    },
    {
      input: 'water temperature',
      stepC: STEP_C,
      turn: days((day, sign) => ({
        ...day,
        waterTemperatureC: within((day.waterTemperatureC ?? 0) + sign * STEP_C, -40, 60),
      })),
    },
    {
      input: 'energy of the pouches',
      turn: lots((lot, factor) => ({ ...lot, energyKcal: lot.energyKcal * factor })),
    },
    {
      input: 'dry weight of the pouches',
      turn: lots((lot, factor) => ({ ...lot, dryWeightG: lot.dryWeightG * factor })),
    },
    {
      input: 'water the pouches take',
      turn: lots((lot, factor) => ({ ...lot, waterMl: lot.waterMl * factor })),
    },
    {
      input: 'water of a day at rest',
      turn: settings((all, factor) => ({ waterAtRestMl: all.waterAtRestMl * factor })),
    },
    {
      input: 'drinking for each hour of walking',
      turn: settings((all, factor) => ({ drinkPerWalkingHourMl: all.drinkPerWalkingHourMl * factor })),
    },
    {
      input: 'efficiency of the stove',
      turn: (inputs, sign) => {
        const efficiency = inputs.trip.stove.efficiency;
        return efficiency === undefined
          ? {
              ...inputs,
              settings: {
                ...inputs.settings,
                stoveRuns: inputs.settings.stoveRuns.map((run) => ({
                  ...run,
                  waterMl: run.waterMl * share(sign),
                })),
              },
            }
          : {
              ...inputs,
              trip: {
                ...inputs.trip,
                stove: { ...inputs.trip.stove, efficiency: Math.min(0.95, efficiency * share(sign)) },
              },
            };
      },
    },
    {
      input: 'fuel reserve',
      turn: (inputs, sign) => ({
        ...inputs,
        trip: {
          ...inputs.trip,
          stove: { ...inputs.trip.stove, reserve: (inputs.trip.stove.reserve ?? 0) * share(sign) },
        },
      }),
    },
  ];
}
