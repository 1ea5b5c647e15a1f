import type { ShownIn } from '$lib/forms/lot-form.ts';
import { atLines, keptLines } from '$lib/forms/lines.ts';
import type { Entered, FormReader } from '$lib/forms/read-form.ts';
import { asWritten } from '$lib/kitchen-views/batch.ts';
import { FAT_LIMITS } from '$lib/planning/drying/recipe-totals.ts';
import {
  AbsorberSize,
  defaultKitchen,
  Dryer,
  Kitchen,
  LoggedRun,
  PouchSize,
  type Process,
  type ProcessFigures,
  type StorageRule,
} from '$lib/planning/model/kitchen.ts';
import { BARRIERS, FAT_CLASSES, PROCESSES } from '$lib/planning/model/words.ts';
import {
  BARRIER_WORDS,
  FAT_CLASS_WORDS,
  PROCESS_WORDS,
  WEEKDAY_WORDS,
} from '$lib/presentation/code-words.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { moneyFieldValue } from '$lib/presentation/money.ts';
import { fieldValue, shownUnit, type Quantity } from '$lib/presentation/show.ts';
import { say, sayPercent, type Text, text } from '$lib/texts/say.ts';

/** The parts of the equipment page; each is saved and reset by itself. */
export const KITCHEN_PARTS = {
  dryers: ['dryers'],
  processes: ['processes', 'scaleStepG'],
  pouches: ['pouches', 'headspaceShare'],
  absorbers: ['absorbers', 'absorberReserve'],
  keeping: ['storage', 'storageTemperatureC'],
  costs: ['electricityMinorPerKwh', 'shopServingMinor'],
  calendar: ['cookDays', 'readyDaysBefore', 'conditioningDays'],
  runs: ['runs'],
} as const satisfies Record<string, readonly (keyof Kitchen)[]>;
export type KitchenPart = keyof typeof KITCHEN_PARTS;

/** How a field of the model stands in the form. */
export type FormField = {
  readonly label: Text;
  /** `box`: ticked or not; `dryer`: one of the kitchen. */
  readonly kind: 'text' | 'date' | 'number' | 'money' | 'choice' | 'box' | 'dryer';
  /** What a number measures, where people read it in a unit of their own. */
  readonly quantity?: Quantity;
  /** The unit of any other number; of money, what it is paid for. */
  readonly unit?: string;
  /** What can be chosen, and how it is called. */
  readonly words?: Readonly<Record<string, Text>>;
  /** The words beside a box. */
  readonly box?: Text;
  /** An unticked box says nothing, rather than no. */
  readonly isOptional?: true;
  readonly hint?: Text;
};
type FieldsOf<Model> = Readonly<Record<keyof Model & string, FormField>>;

const PROCESS_FIELD: FormField = { label: text('Way of drying'), kind: 'choice', words: PROCESS_WORDS };
const BARRIER_FIELD: FormField = { label: text('Barrier'), kind: 'choice', words: BARRIER_WORDS };
const PRICE_OF_ONE: FormField = { label: text('Price of one'), kind: 'money' };

const DRYER_FIELDS: FieldsOf<Dryer> = {
  name: { label: text('Name'), kind: 'text', hint: text('Past runs are matched by this name.') },
  process: PROCESS_FIELD,
  trayCount: { label: text('Trays'), kind: 'number' },
  trayAreaCm2: {
    label: text('Area of a tray'),
    kind: 'number',
    unit: 'cm²',
    hint: text('Length times width inside the rim.'),
  },
  trayLimitG: {
    label: text('Max wet food per tray'),
    kind: 'number',
    quantity: 'food',
    hint: text("The manufacturer's limit, or the most that has dried well so far."),
  },
  depthLimitMm: {
    label: text('Max layer depth'),
    kind: 'number',
    unit: 'mm',
    hint: text('A thicker layer dries slowly and may stay damp inside.'),
  },
  meanPowerW: {
    label: text('Average power'),
    kind: 'number',
    unit: 'W',
    hint: text('Used until you have metered a run.'),
  },
  turnaroundH: {
    label: text('Time between runs'),
    kind: 'number',
    unit: 'h',
    hint: text('To defrost, change oil or filter, and clean. Optional.'),
  },
  turnaroundKwh: {
    label: text('Electricity between runs'),
    kind: 'number',
    unit: 'kWh',
    hint: text('For that. Optional.'),
  },
  priceMinor: { label: text('Price of the machine'), kind: 'money' },
  expectedBatches: {
    label: text('Expected life in batches'),
    kind: 'number',
    hint: text('The price is spread over this many batches.'),
  },
};

/** Figures of a way of drying. */
export const PROCESS_FIELDS: FieldsOf<ProcessFigures> = {
  residualShare: {
    label: text('Expected residual moisture'),
    kind: 'number',
    quantity: 'share',
    hint: text('Of the dry food.'),
  },
  mostResidualShare: {
    label: text('Max residual moisture'),
    kind: 'number',
    quantity: 'share',
    hint: text('Wetter food is not released to the shelf.'),
  },
  lossBoundPerH: {
    label: text('Dry when hourly loss is below'),
    kind: 'number',
    quantity: 'share',
    hint: text('Of the food on a tray, from one weighing to the next.'),
  },
  waterShare: {
    label: text('Water to add'),
    kind: 'number',
    quantity: 'share',
    hint: text('Of the water removed.'),
  },
  steepMin: {
    label: text('Rehydration time'),
    kind: 'number',
    unit: 'min',
    hint: text('At sea level.'),
  },
  stirAfterMin: {
    label: text('Stir after'),
    kind: 'number',
    unit: 'min',
    hint: text('Counted from pouring in the water. 0 = no stirring.'),
  },
};

const POUCH_FIELDS: FieldsOf<PouchSize> = {
  label: { label: text('Name'), kind: 'text' },
  barrier: BARRIER_FIELD,
  volumeMl: {
    label: text('Volume when filled and sealed'),
    kind: 'number',
    quantity: 'pour',
    hint: text('Fill one with water and measure the water.'),
  },
  tareG: { label: text('Empty weight'), kind: 'number', quantity: 'food' },
  priceMinor: PRICE_OF_ONE,
  canBeCut: { label: text('Cutting'), kind: 'box', box: text('One can be cut and sealed as two halves') },
  noBoilingWater: {
    label: text('Water'),
    kind: 'box',
    box: text('Takes no boiling water'),
    isOptional: true,
  },
  noEating: { label: text('Eating'), kind: 'box', box: text('Not to be eaten from'), isOptional: true },
  stands: { label: text('Standing'), kind: 'box', box: text('Stands up on its own'), isOptional: true },
};

const ABSORBER_FIELDS: FieldsOf<AbsorberSize> = {
  label: { label: text('Name'), kind: 'text' },
  oxygenMl: {
    label: text('Oxygen capacity of one'),
    kind: 'number',
    unit: 'ml',
    hint: text('The same as cc.'),
  },
  tareG: { label: text('Weight of one'), kind: 'number', quantity: 'food' },
  priceMinor: PRICE_OF_ONE,
};

const RUN_FIELDS: FieldsOf<LoggedRun> = {
  date: { label: text('Date'), kind: 'date' },
  dryer: { label: text('Dryer'), kind: 'dryer' },
  waterRemovedG: {
    label: text('Water removed'),
    kind: 'number',
    quantity: 'food',
    hint: text('All trays: loaded weight minus dry weight.'),
  },
  hours: { label: text('Time'), kind: 'number', unit: 'h' },
  energyKwh: {
    label: text('Electricity'),
    kind: 'number',
    unit: 'kWh',
    hint: text('From an energy meter. Optional.'),
  },
  preFrozen: { label: text('Loading'), kind: 'box', box: text('The trays went in frozen hard') },
};

/** The lists of the page, with the fields of a line in the order of the form. */
export const LINE_FIELDS = {
  dryers: DRYER_FIELDS,
  pouches: POUCH_FIELDS,
  absorbers: ABSORBER_FIELDS,
  runs: RUN_FIELDS,
} as const;
export type KitchenList = keyof typeof LINE_FIELDS;
const LINE_LABELS = {
  dryers: text('Dryer {number}'),
  pouches: text('Pouch {number}'),
  absorbers: text('Absorber {number}'),
  runs: text('Run {number}'),
} as const;

export const FIGURES = {
  headspaceShare: {
    label: text('Headspace'),
    kind: 'number',
    quantity: 'share',
    hint: text('Part of a pouch kept free for stirring and sealing.'),
  },
  absorberReserve: {
    label: text('Reserve of absorber'),
    kind: 'number',
    quantity: 'share',
    hint: text('Spare capacity on top of the oxygen to absorb.'),
  },
  scaleStepG: {
    label: text('Step of the scale for trays'),
    kind: 'number',
    quantity: 'food',
    hint: text('The smallest change that it shows.'),
  },
  storageTemperatureC: {
    label: text('Temperature at the shelf'),
    kind: 'number',
    quantity: 'temperature',
    hint: text('Use the temperature of a warm week.'),
  },
  electricityMinorPerKwh: {
    label: text('Electricity'),
    kind: 'money',
    unit: 'kWh',
    hint: text('From your electricity bill.'),
  },
  shopServingMinor: {
    label: text('Price of a similar serving in a shop'),
    kind: 'money',
    hint: text('Shows what drying saves you. Optional.'),
  },
  conditioningDays: {
    label: text('Dehydrated food is conditioned for'),
    kind: 'number',
    unit: 'days',
    hint: text('In a jar, shaken and checked every day, before it is sealed.'),
  },
  readyDaysBefore: {
    label: text('Sealed this long before departure'),
    kind: 'number',
    unit: 'days',
  },
} as const satisfies Partial<Record<keyof Kitchen, FormField>>;
type FigureName = keyof typeof FIGURES;

type StorageKey = Omit<StorageRule, 'months'>;
/** Every line that the storage table can have, in the order of its fields in the form. */
const STORAGE_KEYS: readonly StorageKey[] = PROCESSES.flatMap((process) =>
  [true, false].flatMap((absorber) =>
    BARRIERS.flatMap((barrier) => FAT_CLASSES.map((fatClass) => ({ process, absorber, barrier, fatClass }))),
  ),
);
const monthsField = (line: number) => `storage[${line}].months`;
/** The storage table by way of drying and absorber: a row for each barrier, with the fields of the classes of fat. */
export const STORAGE_TABLES = PROCESSES.map((process) => ({
  process,
  groups: [true, false].map((absorber) => ({
    absorber,
    rows: BARRIERS.map((barrier) => ({
      barrier,
      fields: STORAGE_KEYS.flatMap((key, line) =>
        key.process === process && key.absorber === absorber && key.barrier === barrier
          ? [monthsField(line)]
          : [],
      ),
    })),
  })),
}));

/** @returns what the classes of fat mean. */
export const fatClassHint = (): string =>
  say('Fat in dry matter: lean up to {lean}, medium up to {middling}, high-fat above.', {
    lean: sayPercent(FAT_LIMITS[0]),
    middling: sayPercent(FAT_LIMITS[1]),
  });

const isList = (name: string): name is KitchenList => Object.hasOwn(LINE_FIELDS, name);
const fieldsOf = (list: KitchenList): Readonly<Record<string, FormField>> => LINE_FIELDS[list];

/** @returns what the choices of a field of the equipment page are called. */
export function kitchenChoices(field: string): Readonly<Record<string, Text>> | undefined {
  const [, list = '', part = ''] = /^(\w+)\[\d+\]\.(\w+)/.exec(field) ?? [];
  if (field === 'cookDays') return WEEKDAY_WORDS;
  const of = isList(list) ? fieldsOf(list)[part] : undefined;
  return of?.kind === 'box' ? { yes: of.box ?? of.label } : of?.words;
}

/** @returns the label of a field of the equipment page, `dryers[1].trayCount` included. */
export function kitchenLabel(field: string): string {
  const [, list = '', index, part = ''] = /^(\w+)\[(\d+)\](?:\.(\w+))?/.exec(field) ?? [];
  if (isList(list) && index !== undefined) {
    const label = fieldsOf(list)[part]?.label;
    return [say(LINE_LABELS[list], { number: Number(index) + 1 }), label ? say(label) : '']
      .filter(Boolean)
      .join(', ');
  }
  const key = list === 'storage' ? STORAGE_KEYS[Number(index)] : undefined;
  if (key)
    return say(
      'Months, {process}, {barrier}, {absorber, select, yes {with} other {without}} absorber, {fatClass}',
      {
        process: say(PROCESS_WORDS[key.process]),
        barrier: say(BARRIER_WORDS[key.barrier]),
        absorber: key.absorber ? 'yes' : 'no',
        fatClass: say(FAT_CLASS_WORDS[key.fatClass]),
      },
    );
  const [, process, figure = ''] = /^processes\.([\w-]+)\.(\w+)$/.exec(field) ?? [];
  if (process !== undefined) {
    const label = PROCESS_FIELDS[figure as keyof ProcessFigures]?.label;
    return `${label ? say(label) : figure}, ${sayOneOf(PROCESS_WORDS, process)}`;
  }
  if (Object.hasOwn(FIGURES, field)) return say(FIGURES[field as FigureName].label);
  return sayOneOf(WHOLE_LABELS, list || field);
}

const WHOLE_LABELS: Readonly<Record<string, Text>> = {
  dryers: text('Dryers'),
  pouches: text('Pouches'),
  absorbers: text('Absorbers'),
  runs: text('Runs'),
  storage: text('Months'),
  cookDays: text('Cooking and unloading days'),
};

/** @returns the words for a code, or the code itself where the table has none. */
export function sayOneOf(words: Readonly<Record<string, Text>>, code: string): string {
  const word = words[code];
  return word ? say(word) : code;
}

/** @returns the unit beside a field, if it has one. */
export function unitOfField(
  { kind, quantity, unit }: FormField,
  { unitSystem, currency }: ShownIn,
): string | undefined {
  if (kind === 'money') return unit ? `${currency}/${unit}` : currency;
  return quantity ? shownUnit(quantity, unitSystem) : unit === 'days' ? say('days') : unit;
}

/** @returns the value of a field, as it stands in the form, as a person reads it: with its unit. */
export function withUnit(value: string, field: FormField, shown: ShownIn): string {
  return [asWritten(value), unitOfField(field, shown)].filter(Boolean).join(' ');
}

/** Asked for when they are needed, so that a page that only shows labels loads no schema. */
const lineShapes = () => ({
  dryers: Dryer.shape,
  pouches: PouchSize.shape,
  absorbers: AbsorberSize.shape,
  runs: LoggedRun.shape,
});

/** @returns what a field of a line holds when it is left empty, with its unit; `undefined` where it has to be filled in or may stay empty. */
export function usualOfLine(list: KitchenList, name: string, shown: ShownIn): string | undefined {
  const shape: Readonly<Record<string, { safeParse(value: unknown): { data?: unknown } }>> =
    lineShapes()[list];
  const usual = shape[name]?.safeParse(undefined).data;
  const field = fieldsOf(list)[name];
  if (!field || usual === undefined || field.kind === 'box') return undefined;
  return withUnit(shownValues(usual, field, shown)[0] ?? '', field, shown);
}

/** @returns by `dryers.expectedBatches` and the like, what a field of a line holds when it is left empty. */
export const usualOfLines = (shown: ShownIn): Readonly<Record<string, string | undefined>> =>
  Object.fromEntries(
    (Object.keys(LINE_FIELDS) as KitchenList[]).flatMap((list) =>
      Object.keys(fieldsOf(list)).map((name) => [`${list}.${name}`, usualOfLine(list, name, shown)]),
    ),
  );

/** @returns what the forms of the equipment page are filled with. */
export function kitchenFields(kitchen: Kitchen, shown: ShownIn): Entered {
  const fields: Record<string, readonly string[]> = { cookDays: kitchen.cookDays };
  const fill = (at: string, values: Readonly<Record<string, unknown>>, of: Record<string, FormField>) => {
    for (const [name, field] of Object.entries(of))
      fields[`${at}${name}`] = shownValues(values[name], field, shown);
  };
  fill('', kitchen, FIGURES);
  for (const process of PROCESSES) fill(`processes.${process}.`, kitchen.processes[process], PROCESS_FIELDS);
  for (const list of Object.keys(LINE_FIELDS) as KitchenList[])
    kitchen[list].forEach((line, index) => fill(`${list}[${index}].`, line, fieldsOf(list)));
  STORAGE_KEYS.forEach((key, line) => {
    const months = storageRule(kitchen, key)?.months;
    fields[monthsField(line)] = [months === undefined ? '' : String(months)];
  });
  return fields;
}

function storageRule({ storage }: Kitchen, key: StorageKey): StorageRule | undefined {
  return storage.find((rule) =>
    (['process', 'absorber', 'barrier', 'fatClass'] as const).every((part) => rule[part] === key[part]),
  );
}

function shownValues(value: unknown, { kind, quantity }: FormField, shown: ShownIn): string[] {
  if (kind === 'box') return value ? ['yes'] : [];
  if (typeof value !== 'number') return [String(value ?? '')];
  if (kind === 'money') return [moneyFieldValue(value, shown.currency)];
  return [quantity ? fieldValue(value, quantity, shown.unitSystem) : String(value)];
}

/**
 * Reads one part of the equipment page; the other parts stay as they are, but runs follow a dryer to its new name. A figure left empty
 * takes its usual value; a cell of the storage table left empty says that nobody knows.
 *
 * @returns the whole kitchen, or `undefined` where `read.problems` says what has to be mended
 */
export function readKitchenPart(
  read: FormReader,
  part: KitchenPart,
  current: Kitchen,
  shown: ShownIn,
): Kitchen | undefined {
  const value = (at: string, { kind, quantity, isOptional }: FormField, stored: unknown): unknown => {
    const before = typeof stored === 'number' ? stored : undefined;
    switch (kind) {
      case 'box':
        return read.choices(at).includes('yes') || (isOptional ? undefined : false);
      case 'money':
        return read.money(at, shown.currency, before);
      case 'number':
        return read.number(at, { stored: before, ...(quantity && { quantity }) });
      case 'text':
      case 'date':
      case 'choice':
      case 'dryer':
        return read.text(at);
    }
  };
  const kept: Record<string, readonly number[]> = {};
  const lines = (list: KitchenList) => {
    const fields = Object.entries(fieldsOf(list));
    const chosen = fields.flatMap(([name, { kind }]) =>
      kind === 'choice' || kind === 'dryer' ? [name] : [],
    );
    kept[list] = keptLines(read, list, chosen);
    return kept[list].map((line) => {
      const stored: Readonly<Record<string, unknown>> = current[list][line] ?? {};
      return Object.fromEntries(
        fields.map(([name, field]) => [name, value(`${list}[${line}].${name}`, field, stored[name])]),
      );
    });
  };
  const figures = (names: readonly FigureName[]) =>
    Object.fromEntries(names.map((name) => [name, value(name, FIGURES[name], current[name])]));

  const changed = ((): object => {
    switch (part) {
      case 'dryers':
      case 'runs':
        return { [part]: lines(part) };
      case 'pouches':
        return { pouches: lines('pouches'), ...figures(['headspaceShare']) };
      case 'absorbers':
        return { absorbers: lines('absorbers'), ...figures(['absorberReserve']) };
      case 'processes': {
        const usual = defaultKitchen().processes;
        const figuresOf = (process: Process) =>
          Object.fromEntries(
            Object.entries(PROCESS_FIELDS).map(([name, field]) => {
              const at = `processes.${process}.${name}`;
              const figure = name as keyof ProcessFigures;
              return [
                name,
                read.text(at) === undefined
                  ? usual[process][figure]
                  : value(at, field, current.processes[process][figure]),
              ];
            }),
          );
        return {
          processes: Object.fromEntries(PROCESSES.map((process) => [process, figuresOf(process)])),
          ...figures(['scaleStepG']),
        };
      }
      case 'keeping': {
        kept['storage'] = STORAGE_KEYS.flatMap((_, line) =>
          read.text(monthsField(line)) === undefined ? [] : [line],
        );
        return {
          storage: kept['storage'].map((line) => ({
            ...STORAGE_KEYS[line],
            months: read.number(monthsField(line)),
          })),
          ...figures(['storageTemperatureC']),
        };
      }
      case 'costs':
        return figures(['electricityMinorPerKwh', 'shopServingMinor']);
      case 'calendar':
        return { cookDays: read.choices('cookDays'), ...figures(['readyDaysBefore']) };
    }
  })();

  const result = Kitchen.safeParse({ ...current, ...changed }, { reportInput: true });
  if (!result.success) read.add(atLines(problemsOf(result.error), kept));
  if (!result.success || read.problems.length > 0) return undefined;
  return part === 'dryers' ? withRenamedRuns(result.data, current, kept['dryers'] ?? []) : result.data;
}

/** Runs are found by the name of their dryer, so they take its new one. */
function withRenamedRuns(kitchen: Kitchen, before: Kitchen, lines: readonly number[]): Kitchen {
  const names = new Map(
    kitchen.dryers.map(({ name }, index) => [before.dryers[lines[index] ?? -1]?.name, name]),
  );
  return {
    ...kitchen,
    runs: kitchen.runs.map((run) => ({ ...run, dryer: names.get(run.dryer) ?? run.dryer })),
  };
}

/** @returns the dryers that a run can be of: those of the kitchen, and those of runs whose dryer is gone. */
export function dryerNames({ dryers, runs }: Kitchen): string[] {
  return [...new Set([...dryers.map(({ name }) => name), ...runs.map(({ dryer }) => dryer)])];
}
