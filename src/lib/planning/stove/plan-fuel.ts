import { waterInto } from '../hydration/plan-water.ts';
import { learnedEfficiency, whyEfficiency } from '../learning/learned-figures.ts';
import type { Assumption, ResolvedDay, ResolvedTrip } from '../model/resolve-trip.ts';
import type { Settings } from '../model/settings.ts';
import { STOVE_EFFICIENCY } from '../model/trip-defaults.ts';
import { meaningOf } from '../model/day-kinds.ts';
import { cookGroupsOf } from '../model/meal-rules.ts';
import { stageAt } from '../model/resupply.ts';
import { notice, type Notice } from '../model/notices.ts';
import type { Boil, FuelPlan, MenuPlan, WaterPlan } from '../model/trip-plan.ts';
import type { FuelKind, MealKind } from '../model/words.ts';
import { boilingPointC } from './boiling-point.ts';
import { calibrateStove } from './calibrate-stove.ts';
import { coldGasNotices } from './canister-gas.ts';
import { chooseContainers } from './choose-containers.ts';
import { NET_CALORIFIC_VALUE } from './fuels.ts';
import { heatForWaterKJ } from './heat-of-water.ts';
import { safeBoilMin } from './safe-boil.ts';
import { stoveStopOf } from './stove-stop.ts';
import type { Why } from '../model/why.ts';

/** Share of the efficiency that is left in wind, behind a shield (common practice). */
export const WIND_FACTOR: Readonly<Record<ResolvedDay['wind'], number>> = {
  calm: 1,
  breezy: 0.85,
  windy: 0.7,
};
/** The pot loses more heat to colder air: 0.4 % of the efficiency for each degree below 20 °C (common practice). */
export const MILD_C = 20;
export const COLD_LOSS_PER_DEGREE = 0.004;
/** Spread of an efficiency that the user entered, as a share of it (common practice). */
export const ENTERED_SPREAD = 0.1;
/** Specific heat of an aluminium pot, kJ/(kg K) (handbook value; steel 0.5 and titanium 0.52 take less). */
const POT_SPECIFIC_HEAT = 0.9;
/** Melted snow is warmed to this to drink, °C (common practice). */
export const MELTED_C = 5;
/** Snow is no warmer than this, however mild the day, °C (common practice). */
const WARMEST_SNOW_C = -1;
/** Heat of the fuel that a burner turned up gives off, kW (rule of thumb; a timed boil would replace it). */
export const BURNER_KW: Readonly<Record<FuelKind, number>> = {
  'canister-gas': 2.5,
  naphtha: 2.5,
  kerosene: 2.5,
  ethanol: 1,
};
/** Keeping a pot at a rolling boil takes about this, kW (common practice). */
export const ROLLING_BOIL_KW = 0.3;

/** The stop with its water as snow, as cold as the air or as the water was said to be. */
const withSnow = (stop: ResolvedDay): ResolvedDay => ({
  ...stop,
  waterTemperatureC: Math.min(WARMEST_SNOW_C, stop.airTemperatureC, stop.waterTemperatureC),
});

/** Whether the water of a meal is snow when the stove is lit: at a snow camp, but not on the way, where it was melted before. */
function cooksWithSnow(trip: ResolvedTrip, day: number, meal: MealKind): boolean {
  const atCamp = meal === 'dinner' || meal === 'drink' || (meal === 'breakfast' && day > 1);
  return atCamp && stoveStopOf(trip, day, meal).campWater === 'snow';
}

/** What is left of an efficiency in the wind and cold of a stop. */
export function efficiencyIn(stop: ResolvedDay, efficiency: number): number {
  return (
    efficiency *
    WIND_FACTOR[stop.wind] *
    (1 - COLD_LOSS_PER_DEGREE * Math.max(0, MILD_C - stop.airTemperatureC))
  );
}

/** The efficiency of a stove in calm mild air, where it comes from, and its range. */
export type StoveEfficiency = {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly basis: FuelPlan['efficiencyBasis'];
  /** For a person. */
  readonly why: Why;
  /**
   * Whether the heat of the pot comes on top. The share measured in boils, or entered, is what reaches the water, so the pot is paid for in it; the usual one is for water and pot.
   */
  readonly potApart: boolean;
};

/** What is planned with where nothing was entered for the trip and nothing learned from others: measured at home, or usual for the fuel. */
export function baseEfficiency(fuel: FuelKind, settings: Settings): StoveEfficiency {
  const measured = calibrateStove(settings.stoveRuns, fuel);
  if (!measured) return { ...STOVE_EFFICIENCY[fuel], basis: 'usual', potApart: true };
  const { efficiency: value, low, high, runs } = measured;
  return { value, low, high, basis: 'measured', why: { code: 'measured', runs }, potApart: false };
}

/** The efficiency that a trip is planned with. One learned from trips keeps the relative range of the one that it takes the place of. */
export function stoveEfficiency(trip: ResolvedTrip, settings: Settings): StoveEfficiency {
  const { fuel, efficiency } = trip.stove;
  if (efficiency !== undefined)
    return {
      value: efficiency,
      low: efficiency * (1 - ENTERED_SPREAD),
      high: Math.min(1, efficiency * (1 + ENTERED_SPREAD)),
      basis: 'entered',
      why: { code: 'entered' },
      potApart: false,
    };
  const base = baseEfficiency(fuel, settings);
  const learned = learnedEfficiency(settings.learned, fuel, base.value);
  if (!learned) return base;
  const { value } = learned;
  return {
    value,
    low: (value * base.low) / base.value,
    high: Math.min(1, (value * base.high) / base.value),
    basis: 'learned',
    why: whyEfficiency(learned),
    // learned in the place of the one at home, by plans that counted the pot as it did
    potApart: base.potApart,
  };
}

/**
 * Fuel for the trip: each meal's water from its temperature to the boil at that altitude (or to "hot"), snow to melt, water to make safe by boiling, with the pot, over the
 * stove's efficiency in that day's wind and cold; plus the reserve, in the lightest set of containers, started ones from home included.
 *
 * Each cook group has a stove, a pot and containers of its own; water to drink is made ready by each for its own people.
 */
export function planFuel(
  trip: ResolvedTrip,
  menu: MenuPlan,
  water: WaterPlan,
  settings: Settings,
): { fuel: FuelPlan; notices: Notice[]; assumptions: Assumption[] } {
  const { fuel, reserve } = trip.stove;
  const { groups } = cookGroupsOf(trip);
  const potOf = (group: string) => {
    const own = groups.find(({ name }) => name === group);
    return { potG: own?.potG ?? trip.stove.potG, potMl: own?.potMl ?? trip.stove.potMl };
  };
  const kJPerG = NET_CALORIFIC_VALUE[fuel];
  const stove = stoveEfficiency(trip, settings);

  const boilOf = (
    stop: ResolvedDay,
    at: Pick<Boil, 'day' | 'purpose' | 'meal' | 'group'>,
    waterMl: number,
    toC: number,
    heldMin = 0,
  ): Boil => {
    const efficiency = efficiencyIn(stop, stove.value);
    const { potG, potMl } = potOf(at.group);
    const potfuls = Math.ceil(waterMl / potMl);
    const potKJ = stove.potApart
      ? potfuls * (potG / 1000) * POT_SPECIFIC_HEAT * Math.max(0, toC - stop.waterTemperatureC)
      : 0;
    const heatingKJ = heatForWaterKJ(waterMl, stop.waterTemperatureC, toC) + potKJ;
    const heatKJ = heatingKJ + ROLLING_BOIL_KW * heldMin * 60 * potfuls;
    return {
      ...at,
      waterMl,
      potfuls,
      fromC: stop.waterTemperatureC,
      toC,
      altitudeM: stop.campAltitudeM,
      heatKJ,
      efficiency,
      fuelG: heatKJ / (kJPerG * efficiency),
      burnMin: heatingKJ / (BURNER_KW[fuel] * efficiency) / 60 + heldMin * potfuls,
    };
  };

  const meals = menu.meals.flatMap((meal): Boil[] => {
    const at = stoveStopOf(trip, meal.day, meal.meal);
    const stop = cooksWithSnow(trip, meal.day, meal.meal) ? withSnow(at) : at;
    const boilC = boilingPointC(stop.campAltitudeM);
    return (['boiling', 'hot'] as const).flatMap((kind) => {
      const waterMl = waterInto(meal)
        .filter((lot) => lot.waterKind === kind)
        .reduce((sum, lot) => sum + lot.waterMl, 0);
      // water that is made safe by boiling is boiled for every meal, and held, however hot it is poured
      const isBoiled = kind === 'boiling' || trip.treatment === 'boil';
      const toC = isBoiled ? boilC : Math.min(settings.hotWaterC, boilC);
      const heldMin = trip.treatment === 'boil' ? safeBoilMin(stop.campAltitudeM) : 0;
      return waterMl === 0
        ? []
        : [
            boilOf(
              stop,
              { day: meal.day, purpose: 'meal', meal: meal.meal, group: meal.group },
              waterMl,
              toC,
              heldMin,
            ),
          ];
    });
  });
  const drinking = trip.days.flatMap((stop): Boil[] => {
    const day = water.days[stop.day - 1];
    if (!day || !meaningOf(stop.kind).stove) return [];
    const boilC = boilingPointC(stop.campAltitudeM);
    const ofDay = meals.filter((boil) => boil.day === stop.day);
    const sumOf = (boils: readonly Boil[]) => boils.reduce((sum, boil) => sum + boil.waterMl, 0);
    const cookedFromSnow = ofDay.filter((boil) => cooksWithSnow(trip, boil.day, boil.meal ?? 'lunch'));
    const meltMl = Math.max(0, day.meltMl - sumOf(cookedFromSnow));
    const coldMl = Math.max(0, day.treatMl - sumOf(ofDay));
    return groups.flatMap(({ name: group, eaters }): Boil[] => {
      const share = eaters.length / trip.party.length;
      if (trip.treatment !== 'boil')
        return meltMl > 0
          ? [boilOf(withSnow(stop), { day: stop.day, purpose: 'melting', group }, share * meltMl, MELTED_C)]
          : [];
      const heldMin = safeBoilMin(stop.campAltitudeM);
      const snowMl = Math.min(coldMl, meltMl);
      return [
        { from: withSnow(stop), ml: share * snowMl },
        { from: stop, ml: share * (coldMl - snowMl) },
      ]
        .filter(({ ml }) => ml > 0)
        .map(({ from, ml }) =>
          boilOf(from, { day: stop.day, purpose: 'making safe', group }, ml, boilC, heldMin),
        );
    });
  });
  const boils = [...meals, ...drinking].sort((a, b) => a.day - b.day);

  const burntG = boils.reduce((sum, boil) => sum + boil.fuelG, 0);
  const withReserveG = burntG * (1 + reserve);
  const stages = [0, ...trip.resupplies.map((_, index) => index + 1)];
  // each stage has containers of its own; those that are started are at home
  const containers = stages.flatMap((stage) =>
    containersByGroup(
      groups.map(({ name }) => ({
        name,
        needG:
          boils
            .filter((boil) => boil.group === name && stageOfBoil(trip, boil) === stage)
            .reduce((sum, boil) => sum + boil.fuelG, 0) *
          (1 + reserve),
      })),
      settings.fuelContainers.filter((size) => size.fuel === fuel),
      stage === 0 ? trip.stove.started.filter((container) => container.fuel === fuel) : [],
    ).map((container) => (stage === 0 ? container : { ...container, stage })),
  );
  const heatKJ = boils.reduce((sum, boil) => sum + boil.heatKJ, 0);
  const waterMl = boils.reduce((sum, boil) => sum + boil.waterMl, 0);
  return {
    fuel: {
      fuel,
      efficiency: stove.value,
      efficiencyBasis: stove.basis,
      boils,
      need: {
        value: burntG,
        low: (burntG * stove.value) / stove.high,
        high: (burntG * stove.value) / stove.low,
        terms: [
          { code: 'water to heat', value: waterMl, unit: 'ml' },
          {
            code: stove.potApart ? 'heat into water and pot' : 'heat into water',
            value: heatKJ,
            unit: 'kJ',
          },
          { code: 'heat in fuel', value: kJPerG, unit: 'kJ/g', fuel },
          {
            code: 'efficiency',
            value: stove.value * 100,
            unit: '%',
            basis: stove.basis,
          },
          {
            code: 'efficiency outside',
            value: burntG > 0 ? (heatKJ / (burntG * kJPerG)) * 100 : stove.value * 100,
            unit: '%',
          },
        ],
      },
      withReserveG,
      containers,
      takenG: containers.reduce((sum, { netG, count }) => sum + netG * count, 0),
      grossG: containers.reduce((sum, { netG, tareG, count }) => sum + (netG + tareG) * count, 0),
    },
    notices: [...flightNotices(trip, withReserveG), ...fuelNotices(trip, withReserveG, containers.length)],
    assumptions:
      stove.basis === 'entered' ? [] : [{ field: 'stove.efficiency', value: stove.value, why: stove.why }],
  };
}

/** The stage whose fuel a boil burns: drinking water is made at camp, after dinner. */
export const stageOfBoil = (
  { resupplies }: Pick<ResolvedTrip, 'resupplies'>,
  { day, meal = 'drink' }: Pick<Boil, 'day' | 'meal'>,
): number => stageAt(resupplies, { day, meal });

/** Containers for each group's own stove. Started ones from home go to the groups in turn, to whoever burns most first. */
function containersByGroup(
  groups: readonly { readonly name: string; readonly needG: number }[],
  sizes: Settings['fuelContainers'],
  started: ResolvedTrip['stove']['started'],
): FuelPlan['containers'] {
  const atHome = [...started];
  const byNeed = [...groups].sort((a, b) => b.needG - a.needG);
  const chosen = new Map(
    byNeed.map(({ name, needG }) => {
      const containers = chooseContainers(needG, sizes, atHome);
      for (const taken of containers)
        if (taken.started)
          atHome.splice(
            atHome.findIndex(
              ({ label, grossG, tareG }) => label === taken.label && grossG - tareG === taken.netG,
            ),
            1,
          );
      return [name, containers];
    }),
  );
  return groups.flatMap(({ name }) =>
    (chosen.get(name) ?? []).map((container) => ({ ...container, group: name })),
  );
}

/** Airlines carry no stove fuel, so what is burnt on the trip is bought after the flight. */
const flightNotices = ({ days }: ResolvedTrip, withReserveG: number): Notice[] =>
  withReserveG > 0
    ? days.filter(({ kind }) => kind === 'flight').map(({ day }) => notice('fuel-not-flown', {}, { day }))
    : [];

function fuelNotices(trip: ResolvedTrip, withReserveG: number, containers: number): Notice[] {
  if (withReserveG === 0) return [];
  const notices: Notice[] = [];
  const { fuel } = trip.stove;
  if (containers === 0) notices.push(notice('no-fuel-container', { fuel }));
  if (fuel === 'canister-gas') notices.push(...coldGasNotices(trip));
  notices.push(notice('stove-safety', {}));
  return notices;
}
