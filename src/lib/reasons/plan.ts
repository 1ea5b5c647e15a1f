import { USUAL_ML_PER_G } from '$lib/planning/carry/food-volume.ts';
import { USUAL_MASS_G } from '$lib/planning/demand/day-demand.ts';
import { LEAST_DRUNK_AT_REST_ML } from '$lib/planning/hydration/drinking.ts';
import {
  INDIVIDUAL_PER_HOUR_ML,
  MOST_PER_DAY_ML,
  MOST_PER_HOUR_ML,
} from '$lib/planning/hydration/fluid-replacement.ts';
import { AT_CAMP_SHARE } from '$lib/planning/hydration/plan-water.ts';
import { MEAL_FREE_FROM, MEAL_FREE_TO, SITTING_SHARE } from '$lib/planning/menu/menu-costs.ts';
import { FED_SHARE } from '$lib/planning/menu/hunger-notices.ts';
import type { Kitchen } from '$lib/planning/model/kitchen.ts';
import type { Settings } from '$lib/planning/model/settings.ts';
import { SETTLED_KCAL } from '$lib/planning/plan-trip.ts';
import { STEPS_PER_COOKING } from '$lib/planning/shortfall/fill-dryer.ts';
import {
  COLD_LOSS_PER_DEGREE,
  ENTERED_SPREAD,
  MELTED_C,
  MILD_C,
  ROLLING_BOIL_KW,
  WIND_FACTOR,
} from '$lib/planning/stove/plan-fuel.ts';
import { safeBoilMin } from '$lib/planning/stove/safe-boil.ts';
import { INSULATED_SHARE } from '$lib/planning/trail-card/steep-time.ts';
import { LOT_KIND_WORDS } from '$lib/presentation/code-words.ts';
import { show, type UnitSystem } from '$lib/presentation/show.ts';
import { say, sayList, sayNumber, sayPercent } from '$lib/texts/say.ts';
import type { ReasonList } from './reason.ts';

/* What pages that show results take for granted. */

const percent = (share: number) => show(share, 'share', 'metric');

export const waterAssumptions = (system: UnitSystem, settings: Settings): ReasonList => ({
  method: 'water',
  of: {
    atRest: {
      label: say('A day at rest'),
      value: show(settings.waterAtRestMl, 'water', system),
      why: say(
        'including the water in food, by age and sex; the default is the middle of EFSA 2010, and you can change it in Settings',
      ),
    },
    leastDrunk: {
      label: say('Least drunk at rest'),
      value: show(LEAST_DRUNK_AT_REST_ML, 'water', system),
      why: say('however much water is in the food (rule of thumb)'),
    },
    onTheMove: {
      label: say('An hour of walking'),
      value: say('{water} or more', { water: show(settings.drinkPerWalkingHourMl, 'pour', system) }),
      why: say('by heat and effort, from the TB MED 507 table, ± {spread} between people', {
        spread: show(INDIVIDUAL_PER_HOUR_ML, 'pour', system),
      }),
    },
    mostDrunk: {
      label: say('Most drunk'),
      value: say('{perHour} in an hour, {perDay} in a day', {
        perHour: show(MOST_PER_HOUR_ML, 'water', system),
        perDay: show(MOST_PER_DAY_ML, 'water', system),
      }),
      why: say('TB MED 507: more than that is dangerous'),
    },
    drunkAtCamp: {
      label: say('Drunk at camp'),
      value: percent(AT_CAMP_SHARE),
      why: say('of what is drunk apart from walking (rule of thumb); the rest on the way'),
    },
    work: {
      label: say('Without body data'),
      value: show(USUAL_MASS_G, 'pack', system),
      why: say('of body mass, for how hard the walk is: about the mean of the trials (rule of thumb)'),
    },
    heat: {
      label: say('Heat of the day'),
      why: say('from air and humidity for sun and light wind (Australian Bureau of Meteorology)'),
    },
    startSource: {
      label: say('Start of the trip'),
      why: say('bottles are filled there: a trip usually starts at a tap (rule of thumb)'),
    },
  },
});

export const fuelAssumptions = (system: UnitSystem): ReasonList => ({
  method: 'stove-and-fuel',
  of: {
    windAtStove: {
      label: say('Wind at the stove'),
      value: say('{breezy} or {windy} less efficiency', {
        breezy: percent(1 - WIND_FACTOR.breezy),
        windy: percent(1 - WIND_FACTOR.windy),
      }),
      why: say('breezy or windy, behind a shield (rule of thumb)'),
    },
    enteredEfficiency: {
      label: say('An efficiency that was entered'),
      value: `± ${percent(ENTERED_SPREAD)}`,
      why: say('of it (rule of thumb); one measured over several boils has the range that these show'),
    },
    cold: {
      label: say('Cold air'),
      value: say('{share} less for each °C', { share: sayPercent(COLD_LOSS_PER_DEGREE, 1) }),
      why: say('below {temperature} the pot loses more (rule of thumb)', {
        temperature: show(MILD_C, 'temperature', system),
      }),
    },
    rollingBoil: {
      label: say('Making water safe by boiling'),
      value: say('{low} min, above {altitude} {high} min', {
        low: safeBoilMin(0),
        high: safeBoilMin(2001),
        altitude: show(2000, 'altitude', system),
      }),
      why: say('after the CDC, at about {power} kW (rule of thumb)', { power: sayNumber(ROLLING_BOIL_KW) }),
    },
    melted: {
      label: say('Melted snow to drink'),
      value: show(MELTED_C, 'temperature', system),
      why: say('no warmer than it has to be (rule of thumb)'),
    },
    heatInFuel: {
      label: say('Heat in the fuel'),
      why: say(
        'net calorific values, a rule of thumb that the data sheet of the fuel would replace; canister gas is treated as 80% isobutane and 20% propane, alcohol as 93% ethanol',
      ),
    },
    pot: {
      label: say('Heat of the pot'),
      why: say('of aluminium (handbook value); steel and titanium take less, so fuel is rather left over'),
    },
    wholeContainers: {
      label: say('Containers'),
      why: say('full containers are taken whole: canisters cannot be part-filled'),
    },
  },
});

export const packAssumptions = (): ReasonList => ({
  method: 'packs',
  of: {
    dealing: {
      label: say('Who carries what'),
      why: say(
        'each item goes to the pack with the most room left, so that all end up equally full (rule of thumb)',
      ),
    },
    ownWater: {
      label: say('Water'),
      why: say('everyone carries their own to drink; what is cooked with is shared by room'),
    },
    volume: {
      label: say('Volume of a pouch'),
      value: sayList(
        (['main', 'extra', 'drink'] as const).map((kind) =>
          say('{kind} {value} ml/g ({low} to {high})', {
            kind: say(LOT_KIND_WORDS[kind]),
            value: sayNumber(USUAL_ML_PER_G[kind].value),
            low: sayNumber(USUAL_ML_PER_G[kind].low),
            high: sayNumber(USUAL_ML_PER_G[kind].high),
          }),
        ),
      ),
      why: say('where the lot states none; from its dry weight (rule of thumb)'),
    },
    empties: { label: say('Empty pouches and canisters'), why: say('packed out') },
    meanLoad: {
      label: say('Load and need'),
      value: say('to {kcal} kcal', { kcal: SETTLED_KCAL }),
      why: say(
        'the plan repeats until pack weights and energy needs agree this closely, closer than whole pouches allow',
      ),
    },
  },
});

export const menuAssumptions = (settings: Settings): ReasonList => ({
  method: 'menu',
  of: {
    fed: {
      label: say('A day counts as covered'),
      value: percent(FED_SHARE),
      why: say('of its target: labels are no more exact (rule of thumb)'),
    },
    sitting: {
      label: say('Most at one sitting'),
      value: percent(SITTING_SHARE),
      why: say('of what the meal should bring: no one eats much more at once (rule of thumb)'),
    },
    mealSize: {
      label: say('Meal size'),
      value: say('{from} to {to}', { from: percent(MEAL_FREE_FROM), to: percent(MEAL_FREE_TO) }),
      why: say('of what is planned is as good as exact: pouches do not come out even (rule of thumb)'),
    },
    portions: {
      label: say('Portions'),
      why: say('quarters of a serving from a pot, half pouches from the hand (rule of thumb)'),
    },
    openFood: {
      label: say('Opened dry food'),
      value: say('{days, plural, one {# day} other {# days}}', { days: settings.dryOpenDays }),
      why: say('eaten from until then (rule of thumb); the settings have your value'),
    },
    leftOver: {
      label: say('Leftovers'),
      why: say('wasted: rehydrated food is not kept (rule of thumb)'),
    },
    allergens: {
      label: say('Allergens not stated'),
      why: say(
        'such a lot is not served to anyone who avoids an allergen; cereals containing gluten count as wheat, and wheat as cereals containing gluten',
      ),
    },
  },
});

export const pointsAssumptions = (): ReasonList => ({
  method: 'menu',
  of: {
    points: {
      label: say('Points'),
      why: say(
        'a matter of taste: one point is one kcal short in a day, and Settings say how many points everything else costs',
      ),
    },
    trials: { label: say('What would help'), why: say('found by trying; more may be possible') },
  },
});

export const missingAssumptions = (): ReasonList => ({
  method: 'what-is-missing',
  of: {
    fed: {
      label: say('A day counts as covered'),
      value: percent(FED_SHARE),
      why: say('of its target: labels are no more exact (rule of thumb)'),
    },
    serving: { label: say('A serving'), why: say('the mean serving of your shelf for that meal') },
    bought: {
      label: say('Staples to buy'),
      why: say('a rule of thumb; check the package'),
    },
  },
});

export const dryingAssumptions = (kitchen: Kitchen): ReasonList => ({
  method: 'drying-plan',
  of: {
    ready: {
      label: say('Sealed before departure'),
      value: say('{days, plural, one {# day} other {# days}}', { days: kitchen.readyDaysBefore }),
      why: say('time for a run that takes longer (rule of thumb); set yours under Equipment'),
    },
    runHours: {
      label: say('Hours of a run'),
      why: say('the most that it may take, as if nothing went in frozen: rather early than late'),
    },
    quarters: {
      label: say('Amounts cooked'),
      value: `1/${STEPS_PER_COOKING}`,
      why: say('of a recipe is the finest step a kitchen measures well (rule of thumb)'),
    },
    variety: {
      label: say('The same dish'),
      why: say(
        'at most half of a line while another still fits, so that no one eats one dish all week (rule of thumb)',
      ),
    },
  },
});

export const cardAssumptions = (): ReasonList => ({
  method: 'trail-card',
  of: {
    steeping: {
      label: say('Longer waits at altitude'),
      value: say('twice as long for 10 °C less'),
      why: say('a rule of thumb (rule of thumb); published factors lie between 1.5 and 3'),
    },
    cover: {
      label: say('In an insulating cover'),
      value: percent(INSULATED_SHARE),
      why: say('of the extra wait (rule of thumb), where the settings say that there is one'),
    },
    boiling: {
      label: say('Where water boils'),
      why: say(
        'by the standard atmosphere (ISO 2533) and IAPWS R7-97; weather changes it by less than a degree',
      ),
    },
  },
});
