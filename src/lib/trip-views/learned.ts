import {
  eatersLearned,
  learnedAppetite,
  learnedEfficiency,
  learnedPace,
  learnedTastes,
  TASTE_OF,
  tastersLearned,
  type LearnedFigure,
} from '../planning/learning/learned-figures.ts';
import type { Observation, ObservationOf } from '../planning/model/observation.ts';
import { FUEL_KINDS } from '../planning/model/words.ts';
import { APPETITE_WORDS, FUEL_WORDS, TASTE_WORDS, VERDICT_WORDS } from '../presentation/code-words.ts';
import type { Settings } from '../planning/model/settings.ts';
import { whyText } from '../presentation/why-words.ts';
import { baseEfficiency } from '../planning/stove/plan-fuel.ts';
import { show, type UnitSystem } from '../presentation/show.ts';
import { say, sayList, sayNumber } from '../texts/say.ts';

/** What one trip added to a figure. */
export type LearnedLine = {
  readonly tripId: string | undefined;
  readonly trip: string;
  readonly date: string;
  readonly said: string;
  readonly valueAfter: string;
};
/** A learned figure as a person reads it. */
export type LearnedView = {
  /** Names the figure in a form, as `isOfFigure` reads it. */
  readonly key: string;
  readonly name: string;
  readonly value: string;
  /** What holds where it is forgotten. */
  readonly usual: string;
  readonly history: readonly LearnedLine[];
};

const keyOf = (observation: Observation): string =>
  observation.kind === 'appetite' || observation.kind === 'taste'
    ? `${observation.kind} ${observation.eater}`
    : observation.kind === 'fuel'
      ? `fuel ${observation.fuel}`
      : 'pace';

/** @returns what tells the observations of the figure of this key. */
export const isOfFigure =
  (key: string) =>
  (observation: Observation): boolean =>
    keyOf(observation) === key;

/** The tastes of one eater, dish by dish. */
function tastesView(learned: readonly Observation[], eater: string): LearnedView[] {
  const tastes = learnedTastes(learned, eater);
  const [first] = tastes.flatMap(({ said }) => said);
  if (!first) return [];
  return [
    {
      key: keyOf(first),
      name: say('Tastes of {eater}', { eater }),
      value: sayList(tastes.map(({ food, taste }) => `${food}: ${say(TASTE_WORDS[taste])}`)),
      usual: say('no taste known'),
      history: tastes.flatMap(({ said }) =>
        said.map(({ tripId, trip, date, dish, answer }) => ({
          tripId,
          trip,
          date,
          said: `${dish}: ${say(VERDICT_WORDS[answer])}`,
          valueAfter: say(TASTE_WORDS[TASTE_OF[answer]]),
        })),
      ),
    },
  ];
}

/** @returns every figure that trips taught, in the order: appetites, tastes, stoves, pace. */
export function learnedViews(settings: Settings, system: UnitSystem): LearnedView[] {
  const { learned } = settings;
  const share = (value: number) => show(value, 'share', system);
  const view = <Seen extends Observation>(
    figure: LearnedFigure<Seen> | undefined,
    name: string,
    usual: string,
    shown: (value: number) => string,
    said: (seen: Seen) => string,
  ): LearnedView[] => {
    const [first] = figure?.history ?? [];
    if (!figure || !first) return [];
    return [
      {
        key: keyOf(first),
        name,
        value: shown(figure.value),
        usual,
        history: figure.history.map((seen) => ({
          tripId: seen.tripId,
          trip: seen.trip,
          date: seen.date,
          said: said(seen),
          valueAfter: shown(seen.valueAfter),
        })),
      },
    ];
  };
  const answered = ({ answer, ofOwnFigure }: ObservationOf<'appetite'>) =>
    ofOwnFigure
      ? say('{answer}; you entered this value yourself, so nothing changes', {
          answer: say(APPETITE_WORDS[answer]),
        })
      : say(APPETITE_WORDS[answer]);
  const grams = (g: number) => show(g, 'food', system);

  return [
    ...eatersLearned(learned).flatMap((eater) =>
      view(
        learnedAppetite(learned, eater),
        say('Appetite of {eater}', { eater }),
        say('as estimated'),
        (value) => say('{share} of the usual need', { share: share(value) }),
        answered,
      ),
    ),
    ...tastersLearned(learned).flatMap((eater) => tastesView(learned, eater)),
    ...FUEL_KINDS.flatMap((fuel) => {
      const base = baseEfficiency(fuel, settings);
      return view(
        learnedEfficiency(learned, fuel, base.value),
        say('Efficiency of the stove, {fuel}', { fuel: say(FUEL_WORDS[fuel]) }),
        `${share(base.value)}: ${whyText(base.why)}`,
        share,
        ({ plannedG, burntG }) =>
          say('{burnt} burnt, {planned} planned', { burnt: grams(burntG), planned: grams(plannedG) }),
      );
    }),
    ...view(
      learnedPace(learned),
      say('Group pace'),
      say('1, as fast as the method'),
      (value) => say('pace factor {value}', { value: sayNumber(value, { maximumFractionDigits: 3 }) }),
      ({ plannedH, walkedH }) =>
        say(
          '{walked, plural, one {# hour} other {# hours}} walked, {planned, plural, one {# hour} other {# hours}} by the method',
          { walked: walkedH, planned: plannedH },
        ),
    ),
  ];
}
