import { withoutUndefined, type Entered, type FormReader } from '$lib/forms/read-form.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { StoveRun, type Settings } from '$lib/planning/model/settings.ts';
import { StartedContainer, Trip } from '$lib/planning/model/trip.ts';
import { efficiencyOfRun } from '$lib/planning/stove/calibrate-stove.ts';
import { fieldValue, type UnitSystem } from '$lib/presentation/show.ts';
import { say, sayPercent, type Text, text } from '$lib/texts/say.ts';

const LABELS: Readonly<Record<string, Text>> = {
  treatment: text('Water treatment'),
  'stove.potG': text('Pot with its lid'),
  'stove.potMl': text('Water per potful'),
  'stove.started': text('Containers you already have'),
  'started.label': text('Which one'),
  'started.fuel': text('Fuel'),
  'started.grossG': text('Weight on the scale'),
  'started.tareG': text('Weight when empty'),
  'run.date': text('Date'),
  'run.fuel': text('Fuel'),
  'run.grossBeforeG': text('Weight before'),
  'run.grossAfterG': text('Weight after'),
  'run.waterMl': text('Water boiled'),
  'run.fromC': text('Water before'),
  'run.altitudeM': text('Altitude'),
};

/** @returns the label of a field of the page on water and fuel. */
export function waterLabel(field: string): string | undefined {
  const label = LABELS[field.replace(/^cookGroups\[\d+\]/, 'stove')];
  return label && say(label);
}

type Pot = Pick<Trip['stove'], 'potG' | 'potMl'>;

const potFields = ({ potG, potMl }: Pot, at: string, system: UnitSystem): Entered => ({
  [`${at}.potG`]: [potG === undefined ? '' : fieldValue(potG, 'food', system)],
  [`${at}.potMl`]: [potMl === undefined ? '' : fieldValue(potMl, 'water', system)],
});

const readPot = (read: FormReader, stored: Pot, at: string) => ({
  potG: read.number(`${at}.potG`, { quantity: 'food', stored: stored.potG }),
  potMl: read.number(`${at}.potMl`, { quantity: 'water', stored: stored.potMl }),
});

/** @returns what the form of treatment and pots is filled with. */
export function waterFields({ treatment, stove, cookGroups = [] }: Trip, system: UnitSystem): Entered {
  return Object.assign(
    { treatment: [treatment ?? ''], ...potFields(stove, 'stove', system) },
    ...cookGroups.map((group, index) => potFields(group, `cookGroups[${index}]`, system)),
  ) as Entered;
}

/** @returns the trip with treatment and pots as entered, or `undefined` where `read.problems` says what has to be mended. */
export function readWater(read: FormReader, trip: Trip): Trip | undefined {
  const { stove } = trip;
  return checked(
    read,
    Trip.safeParse(
      withoutUndefined({
        ...trip,
        treatment: read.text('treatment'),
        stove: withoutUndefined({
          ...stove,
          ...readPot(read, stove, 'stove'),
        }),
        cookGroups: trip.cookGroups?.map((group, index) =>
          withoutUndefined({ ...group, ...readPot(read, group, `cookGroups[${index}]`) }),
        ),
      }),
      { reportInput: true },
    ),
  );
}

/** @returns a trip as it is now with the treatment and the pots of another; a cook group that is gone meanwhile takes its pot with it. */
export function withWater(now: Trip, { treatment, stove, cookGroups }: Trip): Trip {
  const { treatment: _, ...others } = now;
  const withPot = <Of extends Pot>({ potG: _potG, potMl: _potMl, ...rest }: Of, pot: Pot) => ({
    ...rest,
    ...withoutUndefined({ potG: pot.potG, potMl: pot.potMl }),
  });
  return {
    ...others,
    ...(treatment && { treatment }),
    stove: withPot(now.stove, stove),
    ...(now.cookGroups && {
      cookGroups: now.cookGroups.map((group) =>
        withPot(group, cookGroups?.find(({ name }) => name === group.name) ?? group),
      ),
    }),
  };
}

/**
 * Reads a part-full container from home.
 *
 * @param trip the trip it is for, whose containers have to be told apart
 * @returns the container, or `undefined` where `read.problems` says what has to be mended
 */
export function readStarted(read: FormReader, trip: Trip): StartedContainer | undefined {
  const number = (name: string) => read.number(`started.${name}`, { quantity: 'food' });
  const input = {
    label: read.text('started.label'),
    fuel: read.text('started.fuel'),
    grossG: number('grossG'),
    tareG: number('tareG'),
  };
  if (trip.stove.started.some(({ label }) => label === input.label))
    read.add([
      {
        field: 'started.label',
        message: say('"{label}" is on the list already; tell them apart, for instance by a mark on each', {
          label: input.label ?? '',
        }),
      },
    ]);
  if (trip.stove.started.length >= 20)
    read.add([
      {
        field: 'started.label',
        message: say('is one too many: at most {most} containers can be listed', { most: 20 }),
      },
    ]);
  return checked(
    read,
    StartedContainer.safeParse(withoutUndefined(input), { reportInput: true }),
    'started.',
  );
}

/**
 * Reads a measured boil and checks that it can be.
 *
 * @returns the boil, or `undefined` where `read.problems` says what has to be mended
 */
export function readStoveRun(read: FormReader, settings: Settings): StoveRun | undefined {
  const run = checked(
    read,
    StoveRun.safeParse(
      withoutUndefined({
        date: read.text('run.date'),
        fuel: read.text('run.fuel'),
        grossBeforeG: read.number('run.grossBeforeG', { quantity: 'food' }),
        grossAfterG: read.number('run.grossAfterG', { quantity: 'food' }),
        waterMl: read.number('run.waterMl', { quantity: 'water' }),
        fromC: read.number('run.fromC', { quantity: 'temperature' }),
        altitudeM: read.number('run.altitudeM', { quantity: 'altitude' }),
      }),
      { reportInput: true },
    ),
    'run.',
  );
  if (!run) return undefined;
  const refusal = refusalOf(run);
  if (refusal) read.add([{ field: 'run.grossAfterG', message: refusal }]);
  if (settings.stoveRuns.length >= 200)
    read.add([
      {
        field: 'run.date',
        message: say('is one too many: {most} boils are kept; remove old ones first', { most: 200 }),
      },
    ]);
  return read.problems.length === 0 ? run : undefined;
}

/** @returns why a boil cannot have been as entered; `undefined` where it can. */
export function refusalOf(run: StoveRun): string | undefined {
  const efficiency = efficiencyOfRun(run);
  const percent = sayPercent(efficiency);
  if (efficiency > 0.95)
    return say(
      'impossible: {percent} of the heat in so little fuel would have reached the water, and no stove is more than 95% efficient; check both weights, the water and the fuel',
      { percent },
    );
  if (efficiency < 0.05)
    return say(
      'cannot be: only {percent} of the heat of so much fuel would be in the water, and every stove that boils brings at least 5%; check both weights, the water and the fuel',
      { percent },
    );
  return undefined;
}

type Parsed<T> =
  | { readonly success: true; readonly data: T }
  | { readonly success: false; readonly error: Parameters<typeof problemsOf>[0] };

function checked<T>(read: FormReader, result: Parsed<T>, at = ''): T | undefined {
  if (!result.success)
    read.add(problemsOf(result.error).map((problem) => ({ ...problem, field: `${at}${problem.field}` })));
  return result.success && read.problems.length === 0 ? result.data : undefined;
}
