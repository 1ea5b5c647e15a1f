import { say, sayNumber } from '../texts/say.ts';
import { ALLERGENS } from '../planning/model/allergens.ts';
import type { PouchLot } from '../planning/model/pouch-lot.ts';
import { pouchEnergyKcal, pouchFoodG } from '../planning/model/pouch-totals.ts';
import { allergenLabel, dietLabel, COOK_AFTER_WORDS } from './code-words.ts';
import { canBePlate, kindOf } from '../planning/menu/lot-rules.ts';
import { waitText } from './wait-words.ts';
import { POUR_WORDS } from './pour-words.ts';
import { showPour } from './fractions.ts';
import { aboutWhere } from './about.ts';
import { show, type UnitSystem } from './show.ts';

/** What a pouch says about itself, in words and with units. What is `undefined` is not known, or is not done with it. */
export type Label = {
  readonly name: string;
  readonly code: string;
  /** "2 servings" */
  readonly servings: string;
  /** Other than one serving is in the pouch. */
  readonly isShared: boolean;
  readonly water:
    | {
        /** "boiling water" */
        readonly kind: string;
        /** Into the whole pouch, in both unit systems: "700 ml (3 cups)". */
        readonly pouch: string;
        readonly serving: string;
      }
    | undefined;
  /** That its pouch takes no boiling water or is no plate. */
  readonly bowl: string | undefined;
  /** Waiting time at sea level, with the stirring: "wait 6 min, stir, wait 6 min more". */
  readonly steep: string | undefined;
  readonly energy: { readonly pouch: string; readonly serving: string };
  /** Of one serving. */
  readonly protein: string | undefined;
  /** Dry food in the pouch, without packaging. */
  readonly netWeight: string;
  /** A sentence: what it contains, that it contains none of the list, or that nobody has stated it. */
  readonly allergens: string;
  readonly diets: readonly string[];
  /** ISO 8601, as on the shelf. */
  readonly sealedOn: string;
  readonly bestBefore: string;
  /** That nobody weighed whether it is dry. */
  readonly unweighed: string | undefined;
  readonly absorber: string;
  readonly caution: string;
};

/** The label of the pouches of a lot. The unit system asked for comes first; water is given in both, as a mug may be marked in either. */
export function makeLabel(lot: PouchLot, unitSystem: UnitSystem): Label {
  const { servingsPerPouch, waterKind } = lot;
  const other: UnitSystem = unitSystem === 'metric' ? 'us' : 'metric';
  const pour = (ml: number) => `${showPour(ml, unitSystem)} (${showPour(ml, other)})`;
  const isWet = waterKind !== 'none' && lot.waterMl > 0;
  return {
    name: lot.recipe,
    code: lot.code,
    servings: say('{count, plural, one {{shown} serving} other {{shown} servings}}', {
      count: servingsPerPouch,
      shown: sayNumber(servingsPerPouch, { maximumFractionDigits: 2 }),
    }),
    isShared: servingsPerPouch !== 1,
    water: isWet
      ? {
          kind: say(POUR_WORDS[waterKind]),
          pouch: aboutWhere(lot, 'waterMl', pour(lot.waterMl * servingsPerPouch)),
          serving: aboutWhere(lot, 'waterMl', pour(lot.waterMl)),
        }
      : undefined,
    bowl: canBePlate(lot) || kindOf(lot) === 'drink' ? undefined : say('Pour into a bowl'),
    steep: afterWater(lot, isWet),
    energy: {
      pouch: aboutWhere(lot, 'energyKcal', show(pouchEnergyKcal(lot), 'energy', unitSystem)),
      serving: aboutWhere(lot, 'energyKcal', show(lot.energyKcal, 'energy', unitSystem)),
    },
    protein: lot.proteinG === undefined ? undefined : show(lot.proteinG, 'food', unitSystem),
    netWeight: show(pouchFoodG(lot), 'food', unitSystem),
    allergens: allergenSentence(lot),
    diets: lot.diets.map(dietLabel),
    sealedOn: aboutWhere(lot, 'sealedOn', lot.sealedOn),
    bestBefore: aboutWhere(lot, 'bestBefore', lot.bestBefore),
    unweighed:
      lot.weighedDry === false
        ? say('Dryness NOT MEASURED: eat soon, and throw it away if it is damp.')
        : undefined,
    absorber: isWet
      ? say('Remove the oxygen absorber before pouring water.')
      : say('Remove the oxygen absorber before eating.'),
    caution: isWet
      ? say(
          'Puffed up, torn, damp or smells wrong? Do not taste it; throw it away. Once wet, eat right away.',
        )
      : say('Puffed up, torn, damp or smells wrong? Do not taste it; throw it away.'),
  };
}

/** The wait, and what is done with raw food after it. */
function afterWater(lot: PouchLot, isWet: boolean): string | undefined {
  const wait = isWet ? waitText(lot) : '';
  if (!lot.cookAfter) return wait || undefined;
  const what =
    lot.cookAfter === 'cook' && !isWet ? say('cook before eating') : say(COOK_AFTER_WORDS[lot.cookAfter]);
  return wait ? say('{wait}, then {what}', { wait, what }) : what;
}

function allergenSentence({ allergens: held, contains }: PouchLot): string {
  if (held === undefined && contains && contains.length > 0)
    return say('Contains: {allergens}. Others NOT DECLARED: not for anyone who avoids an allergen.', {
      allergens: contains.map(allergenLabel).join(', '),
    });
  if (held === undefined) return say('Allergens NOT DECLARED: not for anyone who avoids an allergen.');
  if (held.length === 0)
    return say('None of the {count} listed allergens, according to the cook.', {
      count: ALLERGENS.length,
    });
  // US law names wheat, EU law the cereals with gluten: whoever looks for one of the two has to find it.
  const words = held.map((allergen) => {
    if (allergen === 'wheat' && !held.includes('gluten'))
      return say('{allergen} (gluten)', { allergen: allergenLabel(allergen) });
    if (allergen === 'gluten' && !held.includes('wheat'))
      return say('{allergen} (may be wheat)', { allergen: allergenLabel(allergen) });
    return allergenLabel(allergen);
  });
  return say('Contains: {allergens}.', { allergens: words.join(', ') });
}
