import { problemsOf } from '$lib/presentation/problems.ts';
import { Settings, type MenuCosts } from '$lib/planning/model/settings.ts';
import { MEAL_KINDS, type MealKind } from '$lib/planning/model/words.ts';
import { FUEL_WORDS, MEAL_WORDS, ALLERGEN_WORDS, DIET_WORDS } from '$lib/presentation/code-words.ts';
import { moneyFieldValue } from '$lib/presentation/money.ts';
import { fieldValue, type Quantity } from '$lib/presentation/show.ts';
import { say, text, type Text } from '$lib/texts/say.ts';
import { atLines, keptLines } from './lines.ts';
import { withoutUndefined, type Entered, type FormReader } from './read-form.ts';

/** The parts of the settings page; each is saved and reset by itself. */
export const SETTINGS_PARTS = {
  units: ['unitSystem', 'currency'],
  shares: ['mealShares'],
  menu: ['repeatAfterDays', 'dryOpenDays', 'proteinFloorG'],
  costs: ['menuCosts'],
  water: ['waterAtRestMl', 'drinkPerWalkingHourMl', 'hotWaterC', 'insulatedSteep'],
  fuel: ['fuelContainers'],
  staples: ['staples'],
} as const satisfies Record<string, readonly (keyof Settings)[]>;
export type SettingsPart = keyof typeof SETTINGS_PARTS;

/** What each figure measures; the others are bare numbers. */
const QUANTITIES = {
  repeatAfterDays: undefined,
  dryOpenDays: undefined,
  proteinFloorG: undefined,
  waterAtRestMl: 'water',
  drinkPerWalkingHourMl: 'pour',
  hotWaterC: 'temperature',
} as const satisfies Partial<Record<keyof Settings, Quantity | undefined>>;
type FigureName = keyof typeof QUANTITIES;

const FIGURE_LABELS: Readonly<Record<FigureName, Text>> = {
  repeatAfterDays: text('Days before a recipe repeats'),
  dryOpenDays: text('Days that opened dry food keeps'),
  proteinFloorG: text('Min protein per 1,000 kcal'),
  waterAtRestMl: text('Daily water at rest, including water in food'),
  drinkPerWalkingHourMl: text('Extra per walking hour'),
  hotWaterC: text('"Hot" water is heated to'),
};
/** The costs of a menu, in the order of the form: what is paid for, and what a cost of so many points means. */
export const COST_FIELDS: readonly {
  readonly cost: keyof MenuCosts;
  readonly label: Text;
  readonly hint: Text;
}[] = [
  {
    cost: 'missingKcal',
    label: text('One kcal short on a day'),
    hint: text('The measure for all the others.'),
  },
  {
    cost: 'leftOverKcal',
    label: text('One kcal opened but not eaten'),
    hint: text('At 0.3, throwing away 100 kcal is as bad as 30 kcal of hunger.'),
  },
  {
    cost: 'secondDish',
    label: text('A second dish to cook at a meal'),
    hint: text('At 40, a second pot is cooked only if it saves someone 40 kcal of hunger.'),
  },
  {
    cost: 'repeat',
    label: text('A recipe repeated too soon, per person'),
    hint: text('At 15, someone would miss 15 kcal to avoid it. 0 if no one minds.'),
  },
  {
    cost: 'disliked',
    label: text('A plate that someone would rather not have'),
    hint: text('At 20, someone would miss 20 kcal to avoid it.'),
  },
  {
    cost: 'carriedKgH',
    label: text('A kilogram carried for an hour'),
    hint: text('Raise it for lighter packs: heavy pouches first, thirsty ones near water.'),
  },
  {
    cost: 'fuelG',
    label: text('A gram of fuel'),
    hint: text('Raise it for food that needs less hot water.'),
  },
  {
    cost: 'shelfLifeYear',
    label: text('One year of shelf life given up'),
    hint: text('Raise it to use older pouches first.'),
  },
  {
    cost: 'proteinG',
    label: text('A gram of protein short'),
    hint: text('Per person and day, for food that declares its protein.'),
  },
];

/** Labels of the fields of one line of a list. */
export const LINE_LABELS = {
  label: text('Name'),
  name: text('Name'),
  fuel: text('Fuel'),
  netG: text('Fuel when full'),
  tareG: text('Empty weight'),
  meals: text('Meals'),
  kcalPer100G: text('Energy as bought'),
  portionG: text('Portion'),
  packetG: text('Package size'),
  packetCostMinor: text('Price of a package'),
  allergens: text('Allergens'),
  diets: text('Diets'),
} as const;
const LINE_NAMES: Readonly<Record<string, Text>> = {
  fuelContainers: text('Container {number}'),
  staples: text('Food {number}'),
};

export const UNIT_SYSTEM_WORDS = {
  metric: text('metric: g, kg, ml, l, °C, m'),
  us: text('US customary: oz, lb, fl oz, qt, °F, ft'),
} as const;

const OTHER_LABELS = {
  unitSystem: text('Units'),
  currency: text('Currency'),
  insulatedSteep: text('Pouches steep in an insulating cover'),
  mealShares: text('Shares'),
  fuelContainers: text('Containers'),
  staples: text('Foods'),
} as const;

/** @returns the label of a field of the settings page, `fuelContainers[1].netG` included. */
export function settingsLabel(field: string): string {
  const [, list, index, part] = /^(\w+)\[(\d+)\](?:\.(\w+))?/.exec(field) ?? [];
  if (list !== undefined)
    return [
      say(LINE_NAMES[list] ?? text('Line {number}'), { number: Number(index) + 1 }),
      ...(part !== undefined && Object.hasOwn(LINE_LABELS, part)
        ? [say(LINE_LABELS[part as keyof typeof LINE_LABELS])]
        : []),
    ].join(', ');
  const [, meal] = /^mealShares\.(\w+)$/.exec(field) ?? [];
  if (meal !== undefined) return say(MEAL_WORDS[meal as MealKind]);
  const [, cost] = /^menuCosts\.(\w+)$/.exec(field) ?? [];
  if (cost !== undefined) {
    const label = COST_FIELDS.find((other) => other.cost === cost)?.label;
    return label ? say(label) : cost;
  }
  if (Object.hasOwn(FIGURE_LABELS, field)) return say(FIGURE_LABELS[field as FigureName]);
  return Object.hasOwn(OTHER_LABELS, field) ? say(OTHER_LABELS[field as keyof typeof OTHER_LABELS]) : field;
}

/** The words beside the one box of a field that is ticked or not. */
const YES: Readonly<Record<string, Text>> = { yes: text('yes') };
const CHOICES: Readonly<Record<string, Readonly<Record<string, Text>>>> = {
  unitSystem: UNIT_SYSTEM_WORDS,
  insulatedSteep: YES,
  fuel: FUEL_WORDS,
  meals: MEAL_WORDS,
  allergens: ALLERGEN_WORDS,
  diets: DIET_WORDS,
};

/** @returns what the choices of a field of the settings page are called, of a line of a list by its part. */
export const settingsChoices = (field: string): Readonly<Record<string, Text>> | undefined =>
  CHOICES[field.slice(field.indexOf('.') + 1)];

/** @returns what the forms of the settings page are filled with. */
export function settingsFields(settings: Settings): Entered {
  const system = settings.unitSystem;
  const shown = (value: number, quantity: Quantity | undefined) =>
    quantity ? fieldValue(value, quantity, system) : String(value);
  const fields: Record<string, readonly string[]> = {
    unitSystem: [settings.unitSystem],
    currency: [settings.currency],
    insulatedSteep: settings.insulatedSteep ? ['yes'] : [],
  };
  for (const meal of MEAL_KINDS) fields[`mealShares.${meal}`] = [shown(settings.mealShares[meal], 'share')];
  for (const { cost } of COST_FIELDS) fields[`menuCosts.${cost}`] = [String(settings.menuCosts[cost])];
  for (const name of Object.keys(QUANTITIES) as FigureName[])
    fields[name] = [shown(settings[name], QUANTITIES[name])];
  settings.fuelContainers.forEach((container, index) => {
    const at = `fuelContainers[${index}]`;
    fields[`${at}.label`] = [container.label];
    fields[`${at}.fuel`] = [container.fuel];
    fields[`${at}.netG`] = [shown(container.netG, 'food')];
    fields[`${at}.tareG`] = [shown(container.tareG, 'food')];
  });
  settings.staples.forEach((staple, index) => {
    const at = `staples[${index}]`;
    fields[`${at}.name`] = [staple.name];
    fields[`${at}.meals`] = staple.meals;
    fields[`${at}.kcalPer100G`] = [shown(staple.kcalPer100G, 'labelRichness')];
    fields[`${at}.portionG`] = [staple.portionG === undefined ? '' : shown(staple.portionG, 'food')];
    fields[`${at}.packetG`] = [staple.packetG === undefined ? '' : shown(staple.packetG, 'food')];
    fields[`${at}.packetCostMinor`] = [
      staple.packetCostMinor === undefined ? '' : moneyFieldValue(staple.packetCostMinor, settings.currency),
    ];
    fields[`${at}.allergens`] = staple.allergens;
    fields[`${at}.diets`] = staple.diets;
  });
  return fields;
}

/**
 * Reads one part of the settings page; the other parts stay as they are. A figure left empty takes its usual value.
 *
 * @returns the whole settings, or `undefined` where `read.problems` says what has to be mended
 */
export function readSettingsPart(
  read: FormReader,
  part: SettingsPart,
  current: Settings,
): Settings | undefined {
  const numbers = (names: readonly FigureName[]) =>
    Object.fromEntries(
      names.map((name) => {
        const quantity = QUANTITIES[name];
        return [name, read.number(name, { stored: current[name], ...(quantity && { quantity }) })];
      }),
    );
  // The fuel of a line is always chosen.
  const kept = {
    fuelContainers: keptLines(read, 'fuelContainers', ['fuel']),
    staples: keptLines(read, 'staples', []),
  };

  const changed = ((): object => {
    switch (part) {
      case 'units':
        return { unitSystem: read.text('unitSystem'), currency: read.text('currency') };
      case 'shares':
        return {
          mealShares: Object.fromEntries(
            MEAL_KINDS.map((meal) => [
              meal,
              read.number(`mealShares.${meal}`, { quantity: 'share', stored: current.mealShares[meal] }),
            ]),
          ),
        };
      case 'menu':
        return numbers(SETTINGS_PARTS.menu);
      case 'costs':
        return {
          ...numbers(['proteinFloorG']),
          menuCosts: Object.fromEntries(
            COST_FIELDS.map(({ cost }) => [cost, read.number(`menuCosts.${cost}`)]),
          ),
        };
      case 'water':
        return {
          ...numbers(['waterAtRestMl', 'drinkPerWalkingHourMl', 'hotWaterC']),
          insulatedSteep: read.choices('insulatedSteep').includes('yes'),
        };
      case 'fuel':
        return {
          fuelContainers: kept.fuelContainers.map((line) => {
            const at = `fuelContainers[${line}]`;
            const stored = current.fuelContainers[line];
            return {
              label: read.text(`${at}.label`),
              fuel: read.text(`${at}.fuel`),
              netG: read.number(`${at}.netG`, { quantity: 'food', stored: stored?.netG }),
              tareG: read.number(`${at}.tareG`, { quantity: 'food', stored: stored?.tareG }),
            };
          }),
        };
      case 'staples':
        return {
          staples: kept.staples.map((line) => {
            const at = `staples[${line}]`;
            const stored = current.staples[line];
            return withoutUndefined({
              name: read.text(`${at}.name`),
              meals: read.choices(`${at}.meals`),
              kcalPer100G: read.number(`${at}.kcalPer100G`, {
                quantity: 'labelRichness',
                stored: stored?.kcalPer100G,
              }),
              portionG: read.number(`${at}.portionG`, { quantity: 'food', stored: stored?.portionG }),
              packetG: read.number(`${at}.packetG`, { quantity: 'food', stored: stored?.packetG }),
              packetCostMinor: read.money(`${at}.packetCostMinor`, current.currency, stored?.packetCostMinor),
              allergens: read.choices(`${at}.allergens`),
              diets: read.choices(`${at}.diets`),
            });
          }),
        };
    }
  })();

  const result = Settings.safeParse({ ...current, ...changed }, { reportInput: true });
  if (!result.success) read.add(atLines(problemsOf(result.error), kept));
  return result.success && read.problems.length === 0 ? result.data : undefined;
}
