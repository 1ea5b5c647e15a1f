import { say, text, type Text } from '../../texts/say.ts';
import type { Batch, CheckDone } from '../model/batch.ts';
import type { CookingClass } from '../model/composition.ts';
import type { Recipe } from '../model/recipe.ts';
import { showBoth } from '../units/both.ts';
import { fromCore, toCore } from '../units/convert.ts';
import { shownFixed } from '../units/show.ts';

export const SAFETY_STEPS = ['cook', 'load', 'dry', 'seal'] as const;
export type SafetyStep = (typeof SAFETY_STEPS)[number];

export type SafetyCheck = {
  readonly id: string;
  readonly step: SafetyStep;
  readonly text: string;
  readonly source: string;
  /** A temperature has to be read, and to be at least this, °C. */
  readonly leastC?: number;
};

const FSIS = text('USDA FSIS, safe minimum internal temperatures');

/**
 * Safe minimum internal temperatures, °C, with the rest they need. Source: USDA FSIS, 165, 160 and 145 °F or 74, 71 and 63 °C: who reads either
 * figure off the thermometer has reached it, so the bound is the lower of the two.
 */
export const SAFE_INTERNAL_C: Readonly<
  Record<
    Exclude<CookingClass, 'other'>,
    { readonly leastC: number; readonly what: Text; readonly rest?: Text }
  >
> = {
  poultry: { leastC: toCore(165, '°F'), what: text('poultry') },
  'minced meat': { leastC: 71, what: text('minced meat') },
  'whole meat': {
    leastC: toCore(145, '°F'),
    what: text('whole cuts of meat'),
    rest: text('then a rest of 3 minutes'),
  },
  fish: { leastC: toCore(145, '°F'), what: text('fish') },
  egg: { leastC: 71, what: text('eggs and egg dishes') },
  leftovers: { leastC: toCore(165, '°F'), what: text('what is reheated') },
};

/**
 * The checks that stand in a batch sheet, each at the step where it is done. Local guidance goes before them.
 * Sources: USDA FSIS; extension guidance on home drying (National Center for Home Food Preservation, memory); 21 CFR 114 for botulism.
 */
export function safetyChecks(recipe: Recipe): SafetyCheck[] {
  const classes = new Set(recipe.ingredients.map(({ food }) => food.cookingClass));
  const heated = (Object.keys(SAFE_INTERNAL_C) as (keyof typeof SAFE_INTERNAL_C)[]).filter((name) =>
    classes.has(name),
  );
  return [
    {
      id: 'hands',
      step: 'cook',
      text: say('Hands, boards, knives, trays and surfaces washed before and after.'),
      source: say('USDA FSIS, basics of handling food safely'),
    },
    ...(heated.length > 0
      ? [
          {
            id: 'apart',
            step: 'cook' as const,
            text: say(
              'Raw meat, fish and egg kept apart from what is ready to eat, on boards and trays of their own.',
            ),
            source: say('USDA FSIS, basics of handling food safely'),
          },
        ]
      : []),
    ...heated.map((name): SafetyCheck => {
      const { leastC, what, rest } = SAFE_INTERNAL_C[name];
      return {
        id: `cooked ${name}`,
        step: 'cook',
        text: rest
          ? say(
              'Cooked through before drying: {what} to at least {least} in the middle, {rest}. Drying does not kill germs.',
              { what: say(what), least: showBoth(leastC, 'temperature'), rest: say(rest) },
            )
          : say(
              'Cooked through before drying: {what} to at least {least} in the middle. Drying does not kill germs.',
              { what: say(what), least: showBoth(leastC, 'temperature') },
            ),
        source: say(FSIS),
        leastC,
      };
    }),
    {
      id: 'two hours',
      step: 'load',
      text: say(
        'Not more than 2 hours above {warm} from the stove to the fridge, the freezer or the running dryer; 1 hour where it is above {hot}.',
        {
          warm: showBoth(toCore(40, '°F'), 'temperature'),
          hot: showBoth(toCore(90, '°F'), 'temperature'),
        },
      ),
      source: say('USDA FSIS, the two-hour rule'),
    },
    {
      id: 'dry through',
      step: 'seal',
      text: say(
        'The thickest pieces of every tray broken open: dry to the middle, nothing cold, damp, soft or bendy where it should be crisp.',
      ),
      source: say('extension guidance, common practice'),
    },
    {
      id: 'low oxygen',
      step: 'seal',
      text: say(
        'Only dry food goes in with an oxygen absorber: without oxygen and not dry, the bacterium of botulism can grow, which neither smell nor taste gives away.',
      ),
      source: say('21 CFR 114 and 117: water activity at most 0.85'),
    },
    {
      id: 'seams',
      step: 'seal',
      text: say(
        'Seams flat, whole and tight; absorbers out of their bag for minutes only. Pouches looked at again after a day: one that is loose or puffed up is not kept.',
      ),
      source: say('common practice'),
    },
  ];
}

/** A reading just below its bound must not look like it. */
const reading = (valueC: number): string =>
  `${shownFixed(valueC, 1)} °C (${shownFixed(fromCore(valueC, '°F'), 1)} °F)`;

/** Why a check does not count as done, by its last entry; `undefined`: done. */
export function whyCheckOpen(check: SafetyCheck, done: readonly CheckDone[]): string | undefined {
  const entry = done.findLast(({ id }) => id === check.id);
  if (!entry) return say('it is not ticked');
  if (check.leastC === undefined) return undefined;
  if (entry.readingC === undefined) return say('no temperature is entered');
  return entry.readingC < check.leastC
    ? say('{reading} is below the {least} that are needed', {
        reading: reading(entry.readingC),
        least: showBoth(check.leastC, 'temperature'),
      })
    : undefined;
}

/** The checks of a batch that are still open, with why. */
export function openChecks(batch: Pick<Batch, 'recipe' | 'checks'>): { check: SafetyCheck; why: string }[] {
  return safetyChecks(batch.recipe).flatMap((check) => {
    const why = whyCheckOpen(check, batch.checks);
    return why ? [{ check, why }] : [];
  });
}
