import type { ShownIn } from '$lib/forms/lot-form.ts';
import { BATCH_LABELS } from '$lib/kitchen-forms/batch-form.ts';
import {
  FIGURES,
  kitchenFields,
  kitchenLabel,
  PROCESS_FIELDS,
  withUnit,
} from '$lib/kitchen-forms/equipment-form.ts';
import { INGREDIENT_LABELS, RECIPE_LABELS } from '$lib/kitchen-forms/recipe-form.ts';
import { hoursText } from '$lib/kitchen-views/batch.ts';
import { LEAST_INTERVAL_H, MOISTURE_UNSURE } from '$lib/planning/drying/dryness.ts';
import { USUAL_BULK } from '$lib/planning/drying/dry-food.ts';
import { LEAST_RUNS, USUAL_H } from '$lib/planning/drying/expect-run.ts';
import { HALVED_BY_C, TABLE_C } from '$lib/planning/drying/storage.ts';
import { defaultKitchen, type Kitchen } from '$lib/planning/model/kitchen.ts';
import { PROCESSES } from '$lib/planning/model/words.ts';
import { MEAL_WORDS, PROCESS_WORDS, WATER_WORDS } from '$lib/presentation/code-words.ts';
import { show, shownFixed } from '$lib/presentation/show.ts';
import { say, sayList, sayNumber, text, type Text } from '$lib/texts/say.ts';
import type { Reason, ReasonList, Reasons } from './reason.ts';

/** Why the figures of a way of drying are what they are. */
const PROCESS_WHY: Readonly<Record<keyof typeof PROCESS_FIELDS, Text>> = {
  residualShare: text('freeze drying takes out nearly all water, warm air leaves more (rule of thumb)'),
  mostResidualShare: text('a little above what is expected (rule of thumb); damper food may spoil'),
  lossBoundPerH: text('about the smallest loss a kitchen scale can show (rule of thumb)'),
  waterShare: text('a little less than all of it: you can add more, but not take any away (rule of thumb)'),
  steepMin: text('one wait with a stir half-way; food dried in warm air takes longer (rule of thumb)'),
  stirAfterMin: text('half-way, when the dry middle can be reached (rule of thumb)'),
};

const FIGURE_WHY: Readonly<Record<keyof typeof FIGURES, Text>> = {
  headspaceShare: text('a fifth leaves room to stir in and to seal (rule of thumb)'),
  absorberReserve: text('air hides in the food, and absorbers age (rule of thumb)'),
  scaleStepG: text('that of a usual kitchen scale (rule of thumb)'),
  storageTemperatureC: text('room temperature (rule of thumb); use that of a warm week'),
  electricityMinorPerKwh: text('only an example; use the price on your bill'),
  shopServingMinor: text('nothing is taken for it'),
  conditioningDays: text('the least of 4 to 10 days (Utah State and Michigan State University Extension)'),
  readyDaysBefore: text('time for a run that takes longer (rule of thumb)'),
};

/** @returns why the usual values of the equipment are what they are, by part of the page. */
export function equipmentReasons(shown: ShownIn): Reasons {
  const usual = kitchenFields(defaultKitchen(), shown);
  const figure = (name: keyof typeof FIGURES): Record<string, Reason> => ({
    [name]: {
      label: kitchenLabel(name),
      value: withUnit(usual[name]?.[0] ?? '', FIGURES[name], shown),
      why: say(FIGURE_WHY[name]),
    },
  });
  const price = { label: say('Prices'), why: say('only examples; enter what you paid') };
  const byProcess = (name: keyof typeof PROCESS_FIELDS): [string, Reason] => [
    name,
    {
      label: say(PROCESS_FIELDS[name].label),
      value: PROCESSES.map((process) =>
        withUnit(usual[`processes.${process}.${name}`]?.[0] ?? '', PROCESS_FIELDS[name], shown),
      ).join(' / '),
      why: say(PROCESS_WHY[name]),
    },
  ];
  return {
    dryers: {
      method: 'kitchen',
      of: {
        dryers: {
          label: say('Starting list of dryers'),
          why: say('rules of thumb in round figures: put in yours, and keep to its manual'),
        },
        'dryers.priceMinor': {
          label: say('Price of the machine'),
          why: say('nothing until you enter what you paid; then it is spread over the batches'),
        },
        turnaroundH: {
          label: say('Time between runs'),
          why: say('a few hours to defrost, one to clean trays (rule of thumb)'),
        },
        turnaroundKwh: {
          label: say('Electricity between runs'),
          why: say('a heater or a fan for that time (rule of thumb)'),
        },
        expectedBatches: {
          label: say('Expected life in batches'),
          value: '300',
          why: say('about one a week for six years (rule of thumb)'),
        },
      },
    },
    processes: {
      method: 'kitchen',
      of: {
        ...Object.fromEntries(
          (Object.keys(PROCESS_FIELDS) as (keyof typeof PROCESS_FIELDS)[]).map(byProcess),
        ),
        ...figure('scaleStepG'),
      },
    },
    pouches: {
      method: 'kitchen',
      of: {
        pouches: {
          label: say('The pouches listed to start with'),
          why: say('rules of thumb in round figures: weigh and fill yours'),
        },
        'pouches.priceMinor': price,
        ...figure('headspaceShare'),
      },
    },
    absorbers: {
      method: 'kitchen',
      of: {
        absorbers: {
          label: say('The absorbers listed to start with'),
          why: say('rules of thumb in round figures: put in yours'),
        },
        'absorbers.tareG': {
          label: say('Weight of one'),
          value: show(2, 'food', shown.unitSystem),
          why: say('a small one (rule of thumb)'),
        },
        'absorbers.priceMinor': price,
        ...figure('absorberReserve'),
      },
    },
    keeping: {
      method: 'kitchen',
      of: {
        'storage.months': {
          label: say('Months in the table'),
          why: say(
            'freeze-dried: a rule of thumb; dehydrated: University of Georgia Extension, and meat dried in warm air keeps two weeks. Your local rules override them',
          ),
        },
        ...figure('storageTemperatureC'),
      },
    },
    costs: { method: 'kitchen', of: figure('electricityMinorPerKwh') },
    calendar: {
      method: 'drying-plan',
      of: {
        cookDays: {
          label: say('Cooking and unloading days'),
          value: say('all days'),
          why: say('no days have been ruled out yet'),
        },
        ...figure('readyDaysBefore'),
        ...figure('conditioningDays'),
      },
    },
    runs: {
      of: {
        'runs.dryer': { label: say('Dryer'), why: say('the first of your list') },
      },
    },
  };
}

const recipeLabel = (name: string) => (RECIPE_LABELS[name] ? say(RECIPE_LABELS[name]) : name);

/** Why a new recipe begins as it does, and what it is planned with where fields stay empty. */
function dishReasons(shown: ShownIn): ReasonList {
  const { processes } = defaultKitchen();
  const byProcess = (value: (figures: Kitchen['processes']['dehydrated']) => string) =>
    PROCESSES.map((process) => `${value(processes[process])} ${say(PROCESS_WORDS[process])}`);
  return {
    method: 'kitchen',
    of: {
      mealKinds: {
        label: recipeLabel('mealKinds'),
        value: say(MEAL_WORDS.dinner),
        why: say('most dried meals are cooked for the evening (rule of thumb)'),
      },
      cookingYield: {
        label: recipeLabel('cookingYield'),
        value: show(1, 'share', shown.unitSystem),
        why: say('what goes into the pot is in the dish, until you have weighed one'),
      },
      fatDrainedG: {
        label: recipeLabel('fatDrainedG'),
        value: show(0, 'food', shown.unitSystem),
        why: say('fat shortens shelf life, so only fat you weighed is deducted'),
      },
      bulkGPerMl: {
        label: recipeLabel('bulkGPerMl'),
        value: '1 g',
        why: say('as water, as most wet dishes (rule of thumb)'),
      },
      energyFactors: {
        label: recipeLabel('energyFactors'),
        value: say('EU factors'),
        why: say('Regulation (EU) 1169/2011, Annex XIV; those of US labels differ by what fibre gives'),
      },
      driedRaw: {
        label: recipeLabel('driedRaw'),
        why: say('most dishes are cooked before they are dried, and are then ready to eat'),
      },
      waterKind: {
        label: recipeLabel('waterKind'),
        value: say(WATER_WORDS.boiling),
        why: say('it softens dried food soonest (rule of thumb)'),
      },
      waterShare: {
        label: recipeLabel('waterShare'),
        value: sayList(byProcess(({ waterShare }) => show(waterShare, 'share', shown.unitSystem))),
        why: say('a little less than all of it: you can add more, but not take any away (rule of thumb)'),
      },
      steepMin: {
        label: recipeLabel('steepMin'),
        value: sayList(byProcess(({ steepMin }) => `${steepMin} min`)),
        why: say('one wait with a stir half-way; food dried in warm air takes longer (rule of thumb)'),
      },
    },
  };
}

export const newRecipeReasons = (shown: ShownIn): Reasons => ({ dish: dishReasons(shown) });

const ingredientLabel = (name: string) => (INGREDIENT_LABELS[name] ? say(INGREDIENT_LABELS[name]) : name);

export const recipeReasons = (shown: ShownIn): Reasons => ({
  ingredient: {
    method: 'foods',
    of: {
      'quantity.unit': {
        label: ingredientLabel('quantity.unit'),
        why: say('a weight needs no table; cups and pieces need the weight of one'),
      },
      trimmedShare: {
        label: ingredientLabel('trimmedShare'),
        value: show(1, 'share', shown.unitSystem),
        why: say('nothing is trimmed off until you say so'),
      },
      'price.paidFor.unit': {
        label: ingredientLabel('price.paidFor.unit'),
        why: say('prices are mostly stated for it'),
      },
      'food.allergensStated': {
        label: say('Allergens and diets'),
        value: say('as known'),
        why: say(
          'filled in where the food itself settles it; where products differ it is left open, so check the package',
        ),
      },
    },
  },
  water: {
    method: 'kitchen',
    of: {
      date: { label: say('Date'), why: say('today') },
      finding: {
        label: say('Rehydration notes'),
        why: say('"just right" changes nothing, so a remark alone leaves the water as it is'),
      },
    },
  },
  dish: dishReasons(shown),
});

const batchLabel = (name: string) => (BATCH_LABELS[name] ? say(BATCH_LABELS[name]) : name);

export const newBatchReasons = (): Reasons => ({
  batch: {
    method: 'kitchen',
    of: {
      recipe: { label: batchLabel('recipe'), why: say('the one you came from, otherwise the first by name') },
      timesCooked: { label: batchLabel('timesCooked'), value: '1', why: say('the recipe as it is written') },
      dryer: { label: batchLabel('dryer'), why: say('the first of your equipment') },
      cookedOn: { label: batchLabel('cookedOn'), why: say('today') },
      code: { label: batchLabel('code'), why: say('made from the date; the first that no other batch has') },
      preFrozen: {
        label: say('Not frozen before'),
        why: say('the longer estimate is used, so that no plan is too late'),
      },
    },
  },
});

/** Why a batch that skips its steps begins as it does. */
export function quickBatchReasons(kitchen: Kitchen): Reasons {
  const { seal } = batchReasons(kitchen);
  return {
    quick: {
      method: 'kitchen',
      of: {
        ...seal?.of,
        servings: {
          label: say('Servings in each pouch'),
          why: say('those of the recipe, times cooked, shared by weight'),
        },
        container: { label: batchLabel('container'), why: say('the first of your equipment') },
        absorber: {
          label: batchLabel('absorber'),
          why: say('none until you choose one: without it food is taken to keep less long'),
        },
        absorbers: { label: batchLabel('absorbers'), value: '1', why: say('one is usual (rule of thumb)') },
        dryness: {
          label: say('Dryness'),
          why: say('food that was not weighed counts as damp as the limit allows, so it keeps less long'),
        },
      },
    },
  };
}

/** Why a batch is reckoned with as it is, by step. */
export function batchReasons(kitchen: Kitchen): Reasons {
  const hours = PROCESSES.map((process) => {
    const [low, , high] = USUAL_H[process].plain;
    return say('{process} {low} to {high}', {
      process: say(PROCESS_WORDS[process]),
      low: sayNumber(low),
      high: hoursText({ value: high }),
    });
  });
  return {
    load: {
      method: 'kitchen',
      of: {
        'trays.tareG': {
          label: say('Empty tray'),
          value: '0',
          why: say('most scales are set to zero with the empty tray on them (rule of thumb)'),
        },
        preFrozen: {
          label: say('Not frozen before'),
          why: say('the longer estimate is used, so that no plan is too late'),
        },
        hours: {
          label: say('Hours of a run'),
          value: sayList(hours),
          why: say(
            'for a full load while no run of this dryer is known (rule of thumb); from {runs, plural, one {# run} other {# runs}} on, a line through your own',
            { runs: LEAST_RUNS },
          ),
        },
        dryWeight: {
          label: say('Target dry weight'),
          why: say('the dry matter stays and the expected residual moisture is added (conservation of mass)'),
        },
      },
    },
    dry: {
      method: 'kitchen',
      of: {
        'weighed.feel': {
          label: say('Feel in the middle'),
          value: say('not checked'),
          why: say('a tray counts as dry only when someone has checked it by feel'),
        },
        moisture: {
          label: say('Range of the water left'),
          value: say('± {points} points', { points: sayNumber(MOISTURE_UNSURE * 100) }),
          why: say('of the moisture of the wet dish, the accuracy of food tables (rule of thumb)'),
        },
        interval: {
          label: say('Between two weighings'),
          value: `${LEAST_INTERVAL_H} h`,
          why: say('or more: any closer and a scale shows nothing (rule of thumb)'),
        },
      },
    },
    portion: {
      method: 'kitchen',
      of: {
        servings: {
          label: batchLabel('servings'),
          why: say('those of the recipe, times cooked, by the share that went onto the trays'),
        },
        mostPerPouch: { label: batchLabel('mostPerPouch'), why: say('fewer pouches weigh and cost less') },
        bulk: {
          label: say('A serving by volume'),
          value: PROCESSES.map(
            (process) => `${shownFixed(USUAL_BULK[process], 2)} g/ml ${say(PROCESS_WORDS[process])}`,
          ).join(', '),
          why: say('crumbled dry dish, until you weigh a cup of it (rule of thumb)'),
        },
        'fills.container': {
          label: say('Pouches'),
          why: say('those that leave the least empty space, then the fewest'),
        },
        'fills.servings': {
          label: say('Servings each'),
          why: say('whole ones that fit with the headspace'),
        },
        'fills.pouches': { label: say('How many'), why: say('until all servings have their pouch') },
        'fills.absorber': {
          label: say('Absorber'),
          why: say(
            'the size of which the fewest take up the oxygen; in a new line the first of your equipment',
          ),
        },
        'fills.absorbers': {
          label: say('Absorbers each'),
          why: say(
            'oxygen of the air in the pouch, with a reserve of {reserve} for air in the food (rule of thumb)',
            {
              reserve: show(kitchen.absorberReserve, 'share', 'metric'),
            },
          ),
        },
      },
    },
    seal: {
      method: 'kitchen',
      of: {
        allergensStated: {
          label: batchLabel('allergensStated'),
          value: say('those of its ingredients'),
          why: say(
            'if any ingredient is undeclared, so is the dish, and it is not served to anyone who avoids an allergen',
          ),
        },
        code: {
          label: batchLabel('code'),
          why: say('made from the date; the first that no other batch has'),
        },
        waterActivity: {
          label: batchLabel('waterActivity'),
          why: say(
            'below 0.60 nothing grows (Beuchat 1981), at 0.85 and more bacteria can (21 CFR 114); the estimate from the weight is a rule of thumb, a meter tells',
          ),
        },
        bestBefore: {
          label: batchLabel('bestBefore'),
          why: say(
            'from the shelf-life table for {temperature}, halved for each {step} °C more (University of Georgia Extension). It shows quality, not safety',
            { temperature: show(TABLE_C, 'temperature', 'metric'), step: shownFixed(HALVED_BY_C, 0) },
          ),
        },
      },
    },
  };
}
