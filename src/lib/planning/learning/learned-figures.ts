import type { Observation, ObservationOf } from '../model/observation.ts';
import type { LearnedDefaults } from '../model/resolve-trip.ts';
import type { FuelKind, Liking, Taste } from '../model/words.ts';
import type { Why } from '../model/why.ts';

/*
 * What the trips of a household taught. Nothing but observations is stored: each figure is made from them, from the oldest on, so that a
 * trip that is opened again, or a figure that is forgotten, leaves no trace.
 */

/** A figure with the observations it came from, oldest first, each with the value after it. */
export type LearnedFigure<Seen extends Observation> = {
  readonly value: number;
  readonly history: readonly (Seen & { readonly valueAfter: number })[];
};

/** One answer moves an appetite by this share of the usual target, and never further than this (common practice: hunger on one trip may come from its weather or company). */
export const APPETITE_STEP = 0.05;
export const LEAST_APPETITE = 0.8;
export const MOST_APPETITE = 1.25;
/** A party that walks faster or slower than this is told by its hours, not by a factor (common practice). */
export const LEAST_PACE = 0.5;
export const MOST_PACE = 2;
/** Stoves that boil water bring this much of the heat into it (common practice). */
export const LEAST_EFFICIENCY = 0.05;
export const MOST_EFFICIENCY = 0.95;

const within = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));
const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

function ofKind<Kind extends Observation['kind']>(
  observations: readonly Observation[],
  kind: Kind,
): ObservationOf<Kind>[] {
  return observations
    .filter((one): one is ObservationOf<Kind> => one.kind === kind)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

function fold<Seen extends Observation>(
  seen: readonly Seen[],
  valueOf: (soFar: readonly Seen[]) => number,
): LearnedFigure<Seen> | undefined {
  const history = seen.map((one, index) => ({ ...one, valueAfter: valueOf(seen.slice(0, index + 1)) }));
  const last = history.at(-1);
  return last && { value: last.valueAfter, history };
}

/** How many times what a usual target says an eater eats; `undefined` where nothing was said of them. An answer to a target of their own is kept, and moves nothing. */
export function learnedAppetite(
  observations: readonly Observation[],
  eater: string,
): LearnedFigure<ObservationOf<'appetite'>> | undefined {
  const step = ({ answer, ofOwnFigure }: ObservationOf<'appetite'>): number =>
    ofOwnFigure || answer === 'right' ? 0 : answer === 'too little' ? APPETITE_STEP : -APPETITE_STEP;
  return fold(
    ofKind(observations, 'appetite').filter((one) => one.eater === eater),
    (soFar) =>
      soFar.reduce((value, one) => rounded(within(value + step(one), LEAST_APPETITE, MOST_APPETITE), 3), 1),
  );
}

/** The names of everybody of whom something was said, in the order of the alphabet. */
export const eatersLearned = (observations: readonly Observation[]): string[] =>
  [...new Set(ofKind(observations, 'appetite').map(({ eater }) => eater))].sort();

/** What each answer to a dish makes of a taste: a dish is never refused for it. */
export const TASTE_OF: Readonly<Record<Liking, Taste>> = { liked: 'gladly', 'not liked': 'rather not' };

/** What an eater says to dishes by their latest word on each, in the order of the alphabet. */
export function learnedTastes(
  observations: readonly Observation[],
  eater: string,
): { readonly food: string; readonly taste: Taste; readonly said: readonly ObservationOf<'taste'>[] }[] {
  const ofEater = ofKind(observations, 'taste').filter((one) => one.eater === eater);
  return [...Map.groupBy(ofEater, ({ dish }) => dish)]
    .map(([food, said]) => ({ food, taste: TASTE_OF[said.at(-1)!.answer], said }))
    .sort((a, b) => (a.food < b.food ? -1 : 1));
}

/** The names of everybody whose taste was said, in the order of the alphabet. */
export const tastersLearned = (observations: readonly Observation[]): string[] =>
  [...new Set(ofKind(observations, 'taste').map(({ eater }) => eater))].sort();

/**
 * Sum of what was over the sum of what was planned, where the plan itself counts as one more trip that went as planned (common
 * practice): one trip moves half of the way, and many trips decide.
 */
function overPlan(was: readonly number[], planned: readonly number[]): number {
  const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);
  const oneMore = sum(planned) / planned.length;
  return (sum(was) + oneMore) / (sum(planned) + oneMore);
}

/** Hours of the party over those of the method; `undefined` where none were noted. */
export function learnedPace(
  observations: readonly Observation[],
): LearnedFigure<ObservationOf<'pace'>> | undefined {
  return fold(ofKind(observations, 'pace'), (soFar) => {
    const factor = overPlan(
      soFar.map(({ walkedH }) => walkedH),
      soFar.map(({ plannedH }) => plannedH),
    );
    return rounded(within(factor, LEAST_PACE, MOST_PACE), 2);
  });
}

/**
 * Share of the heat of a fuel that reached the water on trips, in calm mild air; `undefined` where no fuel of this kind was weighed.
 *
 * The plan's efficiency times the fuel planned is the heat that was needed, up to the heat in a gram, so plans made with different
 * efficiencies are added up as they are.
 *
 * @param base the efficiency that is planned with where nothing was learned: measured at home, or usual for the fuel
 */
export function learnedEfficiency(
  observations: readonly Observation[],
  fuel: FuelKind,
  base: number,
): LearnedFigure<ObservationOf<'fuel'>> | undefined {
  return fold(
    ofKind(observations, 'fuel').filter((one) => one.fuel === fuel),
    (soFar) => {
      const burnt = overPlan(
        soFar.map(({ burntG }) => burntG),
        soFar.map(({ plannedG, efficiency }) => (plannedG * efficiency) / base),
      );
      return rounded(within(base / burnt, LEAST_EFFICIENCY, MOST_EFFICIENCY), 3);
    },
  );
}

/** @returns what takes the place of a trip's defaults: nothing at all where nothing was learned, or where it comes out as the default. */
export function learnedDefaults(observations: readonly Observation[]): LearnedDefaults {
  const pace = learnedPace(observations);
  return {
    appetiteOf: (eater) => {
      const figure = learnedAppetite(observations, eater);
      if (!figure || figure.value === 1) return undefined;
      return {
        value: figure.value,
        why: { code: 'appetite learned', eater, trips: figure.history.length },
      };
    },
    tastesOf: (eater) => learnedTastes(observations, eater),
    partyFactor:
      pace && pace.value !== 1
        ? {
            value: pace.value,
            why: { code: 'pace learned', trips: pace.history.length },
          }
        : undefined,
  };
}

/** @returns why a learned efficiency is planned with. */
export const whyEfficiency = ({ history }: LearnedFigure<ObservationOf<'fuel'>>): Why => ({
  code: 'efficiency learned',
  trips: history.length,
});
