import { LOT_LABELS, type ShownIn } from '$lib/forms/lot-form.ts';
import { ONE_SERVING_G, QUICK_LABELS } from '$lib/forms/quick-words.ts';
import { show } from '$lib/presentation/show.ts';
import { USUAL_LOT } from '$lib/planning/model/usual-lot.ts';
import { say } from '$lib/texts/say.ts';
import type { ReasonList, Reasons } from './reason.ts';

/** What a lot is usually like, as the form of a new one and the import begin with it. */
function usualLot({ unitSystem }: Pick<ShownIn, 'unitSystem'>): ReasonList['of'] {
  const label = (name: string) => (LOT_LABELS[name] ? say(LOT_LABELS[name]) : name);
  return {
    servingsPerPouch: {
      label: label('servingsPerPouch'),
      value: '1',
      why: say('most meals are sealed singly, so that a menu can fit any group (rule of thumb)'),
    },
    tareG: {
      label: label('tareG'),
      value: show(USUAL_LOT.tareG, 'food', unitSystem),
      why: say('a foil pouch of about a litre with one absorber (rule of thumb); weigh yours'),
    },
    ...Object.fromEntries(
      ['mealKinds', 'energyKcal', 'waterKind', 'waterMl'].map((name) => [
        name,
        {
          label: label(name),
          why: say('your recipe of that name, else another lot of that name, else the kind of dish'),
        },
      ]),
    ),
    bestBefore: {
      label: label('bestBefore'),
      why: say('how long food from your dryer keeps, from six months ago where no date is known'),
    },
    steepMin: {
      label: label('steepMin'),
      value: `${USUAL_LOT.steepMin} min`,
      why: say(
        'between what freeze-dried and what dehydrated dishes take (rule of thumb); try one and note yours',
      ),
    },
  };
}

export function newLotReasons(shown: ShownIn): Reasons {
  return {
    lot: {
      method: 'plausibility-of-a-lot',
      of: {
        sealedOn: {
          label: say(LOT_LABELS['sealedOn']!),
          why: say('today: most lots are entered when they are sealed'),
        },
        pouches: {
          label: say(LOT_LABELS['pouches']!),
          why: say('the least a lot can have; enter your count'),
        },
        ...usualLot(shown),
        allergensStated: {
          label: say('Allergens not stated'),
          why: say(
            'only someone who knows the food can say it contains none; until then it is not served to anyone who avoids an allergen',
          ),
        },
      },
    },
  };
}

/** What the quick entry takes where a field is left blank. */
export function quickLotReasons({ unitSystem }: ShownIn): Reasons {
  const food = (grams: number) => show(grams, 'food', unitSystem);
  return {
    quick: {
      method: 'plausibility-of-a-lot',
      of: {
        weighed: {
          label: say('Weighed'),
          value: say('without the pouch'),
          why: say('most people weigh the food when they fill it in (rule of thumb)'),
        },
        tareG: {
          label: say('Empty pouch with absorber'),
          value: food(USUAL_LOT.tareG),
          why: say('a foil pouch of about a litre with one absorber (rule of thumb); weigh yours'),
        },
        servingsPerPouch: {
          label: say(QUICK_LABELS['servingsPerPouch']!),
          value: '1',
          why: say('a pouch of up to {weight} is one serving (rule of thumb)', {
            weight: food(ONE_SERVING_G),
          }),
        },
        energyKcal: {
          label: say('Energy, water and meals'),
          why: say('your recipe of that name, else another lot of that name, else the kind of dish'),
        },
        sealedOn: {
          label: say(QUICK_LABELS['sealedOn']!),
          why: say('today: most lots are entered when they are sealed'),
        },
        bestBefore: {
          label: say(QUICK_LABELS['bestBefore']!),
          why: say('how long food from your dryer keeps, from six months ago where no date is known'),
        },
        code: { label: say(QUICK_LABELS['code']!), why: say('made from the name') },
        allergens: {
          label: say(QUICK_LABELS['allergens']!),
          why: say('never estimated: only the cook can declare them'),
        },
      },
    },
  };
}

/** Why the import takes the columns of a file as it does. */
export function importReasons(): Reasons {
  return {
    columns: {
      of: {
        'columns.field': {
          label: say('Column contents'),
          why: say(
            'its heading is a common name for it in English, German or French; an earlier file with the same columns overrides that',
          ),
        },
        'columns.unit': {
          label: say('Unit of a column'),
          why: say('as its heading says, else the metric one in which lots are kept'),
        },
        'columns.per': {
          label: say('Stated for'),
          why: say('a serving, as in a file that this program wrote, unless the heading names a pouch'),
        },
        decimalMark: {
          label: say('Decimal mark'),
          why: say(
            'from the first rows; if they leave it open, you are asked about any cell that can be read two ways',
          ),
        },
        dateOrder: {
          label: say('Order of dates'),
          why: say(
            'from the first rows; if they leave it open, you are asked about any cell that can be read two ways',
          ),
        },
      },
    },
    lot: { method: 'plausibility-of-a-lot', of: usualLot({ unitSystem: 'metric' }) },
  };
}

/** How the user's own table of foods is read. */
export const foodsImportReasons = (): Reasons => ({
  foods: {
    method: 'foods',
    of: {
      decimalMark: {
        label: say('Decimal mark'),
        why: say('the cells of the whole file mostly show it; choose it where they leave it open'),
      },
    },
  },
});

/** What the form for pouches eaten at home begins with. */
export const eatenReasons = (): Reasons => ({
  eaten: {
    of: {
      eaten: {
        label: say('Pouches'),
        value: '1',
        why: say('most meals at home are one pouch (rule of thumb)'),
      },
    },
  },
});
