import type { ShownIn } from '$lib/forms/lot-form.ts';
import { atLines, linesOf } from '$lib/forms/lines.ts';
import { bareField, withoutUndefined, type Entered, type FormReader } from '$lib/forms/read-form.ts';
import { recipeTotals } from '$lib/planning/drying/recipe-totals.ts';
import { quickBatch } from '$lib/planning/drying/quick-batch.ts';
import { SAFETY_STEPS, safetyChecks, type SafetyStep } from '$lib/planning/drying/safety-steps.ts';
import { Batch, PouchesByWeight, Weighing, type PouchFill } from '$lib/planning/model/batch.ts';
import { COOKING_CLASSES } from '$lib/planning/model/words.ts';
import { COOKING_CLASS_WORDS } from '$lib/presentation/code-words.ts';
import { batchesBeside, freeTrays, runOf, type KeptBatch } from '$lib/planning/drying/shared-run.ts';
import type { Dryer, Kitchen } from '$lib/planning/model/kitchen.ts';
import type { Problem } from '$lib/presentation/problems.ts';
import type { Recipe } from '$lib/planning/model/recipe.ts';
import { fieldValue, type Quantity } from '$lib/presentation/show.ts';
import type { Stored } from '$lib/server/records.ts';
import { say, text, type Text } from '$lib/texts/say.ts';

/** The label of every field of the batch sheet but those of trays and pouches. */
export const BATCH_LABELS: Readonly<Record<string, Text>> = {
  code: text('Lot code'),
  recipe: text('Recipe'),
  timesCooked: text('Batch size (× recipe)'),
  cookedOn: text('Cooked on'),
  cookedG: text('Cooked weight'),
  dryer: text('Dryer'),
  sharesRunOf: text('In the dryer together with'),
  conditionedFrom: text('Conditioned since'),
  preFrozen: text('Pre-frozen'),
  trays: text('Trays'),
  afterH: text('Hours of drying'),
  energyKwh: text('Electricity used, metered'),
  packedG: text('Dry food to pack'),
  'cup.volumeMl': text('Size of the cup'),
  'cup.netG': text('weight of a full cup'),
  servings: text('Servings'),
  netG: text('Food in each pouch'),
  restG: text('Food in one more pouch'),
  pouches: text('Number of pouches'),
  container: text('Pouch'),
  absorber: text('Absorber'),
  absorbers: text('Absorbers each'),
  mostPerPouch: text('Max servings per pouch'),
  fills: text('Pouches'),
  allergens: text('Allergens'),
  allergensStated: text('Allergens of the batch'),
  bestBefore: text('Best before'),
  place: text('Place'),
  note: text('Note for the lots'),
  waterActivity: text('Water activity, measured'),
  releasedBecause: text('Reason for releasing it anyway'),
};
const TRAY_LABELS: Readonly<Record<string, Text>> = {
  tareG: text('Tray {number}, empty'),
  loadedG: text('Tray {number}, with wet food'),
  grossG: text('Tray {number}, now'),
  feel: text('Tray {number}, feel'),
};
const FILL_LABELS: Readonly<Record<string, Text>> = {
  container: text('Pouches, line {number}, pouch'),
  servings: text('Pouches, line {number}, servings'),
  pouches: text('Pouches, line {number}, how many'),
  absorbers: text('Pouches, line {number}, absorbers'),
};

/** @returns the label of a field, of a tray or line of pouches too. */
export function batchLabel(field: string): string | undefined {
  const [, list, index, part = ''] = /^(trays|weighed|fills)\[(\d+)\](?:\.(\w+))?/.exec(field) ?? [];
  if (list !== undefined) {
    const number = Number(index) + 1;
    const label = (list === 'fills' ? FILL_LABELS : TRAY_LABELS)[part];
    if (label) return say(label, { number });
    return list === 'fills' ? say('Pouches, line {number}', { number }) : say('Tray {number}', { number });
  }
  const [, check] = /^reading\.(.*)$/.exec(field) ?? [];
  if (check === 'dryer air') return say('Temperature of the air in the dryer');
  if (check !== undefined) return say('Temperature, cooked {what}', { what: cookedWord(check) });
  const label = BATCH_LABELS[field];
  return label && say(label);
}

/** @returns what is cooked through, from the id of its check. */
export function cookedWord(checkId: string): string {
  if (checkId === 'dryer air') return say('air in the dryer');
  const name = COOKING_CLASSES.find((other) => checkId === `cooked ${other}`);
  return name ? say(COOKING_CLASS_WORDS[name]) : checkId;
}

const grams = (value: number | undefined, { unitSystem }: ShownIn, quantity: Quantity = 'food'): string[] => [
  value === undefined ? '' : fieldValue(value, quantity, unitSystem),
];
/** The value of a container in a list to choose from: its label, and whether it is half of one. */
export const containerValue = ({ pouch, half }: Pick<PouchFill, 'pouch' | 'half'>): string =>
  `${half ? 'half' : 'whole'} ${pouch.label}`;

/** @returns the pouches that a batch can be packed into, whole and cut, with those that it was packed into before. */
export const containerOptions = (
  { pouches }: Pick<Kitchen, 'pouches'>,
  { fills = [] }: Pick<Batch, 'fills'>,
): { value: string; label: string }[] =>
  [...pouches, ...fills.map(({ pouch }) => pouch)]
    .filter((pouch, index, all) => all.findIndex(({ label: other }) => other === pouch.label) === index)
    .flatMap((pouch) => [
      { value: containerValue({ pouch, half: false }), label: pouch.label },
      ...(pouch.canBeCut
        ? [
            {
              value: containerValue({ pouch, half: true }),
              label: say('half of {pouch}', { pouch: pouch.label }),
            },
          ]
        : []),
    ]);

export const absorberOptions = ({
  absorbers,
}: Pick<Kitchen, 'absorbers'>): { value: string; label: string }[] => [
  { value: '', label: say('{of, select, other {none}}', { of: 'absorber' }) },
  ...absorbers.map(({ label }) => ({ value: label, label })),
];

/** @returns what the forms of the sheet are filled with. */
export function batchFields(batch: Batch, fills: readonly PouchFill[], shown: ShownIn): Entered {
  return {
    timesCooked: bareField(batch.timesCooked),
    cookedOn: [batch.cookedOn],
    cookedG: grams(batch.cookedG, shown),
    sharesRunOf: [batch.sharesRunOf ?? ''],
    conditionedFrom: [batch.conditionedFrom ?? ''],
    preFrozen: batch.preFrozen ? ['yes'] : [],
    ...Object.fromEntries(
      batch.trays.flatMap(({ tareG, loadedG }, index) => [
        [`trays[${index}].tareG`, grams(tareG, shown)],
        [`trays[${index}].loadedG`, grams(loadedG, shown)],
      ]),
    ),
    ...Object.fromEntries(
      batch.checks.flatMap(({ id, readingC }) => [
        [`check.${id}`, ['yes']],
        [`reading.${id}`, grams(readingC, shown, 'temperature')],
      ]),
    ),
    energyKwh: bareField(batch.energyKwh),
    packedG: grams(batch.packedG, shown),
    'cup.volumeMl': grams(batch.cup?.volumeMl, shown, 'pour'),
    'cup.netG': grams(batch.cup?.netG, shown),
    servings: bareField(batch.servings),
    mostPerPouch: bareField(batch.mostPerPouch),
    ...Object.fromEntries(
      fills.flatMap((fill, index) => [
        [`fills[${index}].container`, [containerValue(fill)]],
        [`fills[${index}].servings`, bareField(fill.servings)],
        [`fills[${index}].pouches`, bareField(fill.pouches)],
        [`fills[${index}].absorber`, [fill.absorber?.label ?? '']],
        [`fills[${index}].absorbers`, bareField(fill.absorbers)],
      ]),
    ),
    code: [batch.code],
    allergensStated: [batch.allergens ? 'yes' : 'ingredients'],
    allergens: batch.allergens ?? [],
    bestBefore: [batch.bestBefore ?? ''],
    place: [batch.place ?? ''],
    note: [batch.note],
    releasedBecause: [batch.releasedBecause ?? ''],
    waterActivity: bareField(batch.waterActivity),
  };
}

/** @returns a code that no batch has: B and the date, with a letter from the second of a day on. */
export function freeBatchCode(today: string, taken: readonly string[]): string {
  const code = `B${today.slice(2).replaceAll('-', '')}`;
  const letters = ['', ...'bcdefghijklmnopqrstuvwxyz'];
  const free = letters.find((letter) => !taken.includes(code + letter));
  return free === undefined ? `${code}-${taken.length + 1}` : code + free;
}

/** Reads the form of a new batch. */
export function readNewBatch(
  read: FormReader,
  recipe: Stored<Recipe> | undefined,
  kitchen: Kitchen,
  run: RunChoice = runChoice([]),
): Batch | undefined {
  const sharesRunOf = readRun(read, run, undefined, 0);
  const dryer =
    run.joinable.find(({ id }) => id === sharesRunOf)?.value.dryer ??
    kitchen.dryers.find(({ name }) => name === read.text('dryer'));
  if (!recipe)
    read.add([{ field: 'recipe', message: say('choose a recipe; the one you chose no longer exists') }]);
  if (!dryer) read.add([{ field: 'dryer', message: say('choose one of the dryers of your equipment') }]);
  if (recipe && recipeTotals(recipe.value).problems.length > 0)
    read.add([
      {
        field: 'recipe',
        message: say('"{recipe}" is incomplete; see its page for what to fix first', {
          recipe: recipe.value.name,
        }),
      },
    ]);
  return checked(read, {
    code: read.text('code'),
    recipeId: recipe?.id,
    recipe: recipe?.value,
    timesCooked: read.number('timesCooked'),
    cookedOn: read.text('cookedOn'),
    dryer,
    sharesRunOf,
    preFrozen: read.choices('preFrozen').length > 0,
  });
}

/**
 * What a step of the sheet reads from its form: the batch with that step changed. `undefined` where `read.problems` says what has to be mended.
 */
export type ReadStep = (
  read: FormReader,
  batch: Batch,
  kitchen: Kitchen,
  today: string,
  run?: RunChoice,
) => Batch | undefined;

/** The run that a batch lies in, and those that it could join. */
export type RunChoice = {
  readonly beside: readonly KeptBatch[];
  /** Batches with a run of their own, not sealed, whose dryer has trays left; empty where others joined this one. */
  readonly joinable: readonly KeptBatch[];
  readonly all: readonly KeptBatch[];
};

/** @param batch left out: one that is begun now */
export function runChoice(all: readonly KeptBatch[], batch?: KeptBatch): RunChoice {
  const beside = batch ? batchesBeside(batch, all) : [];
  const isJoined = batch !== undefined && all.some(({ value }) => value.sharesRunOf === batch.id);
  const joinable = isJoined
    ? []
    : all.filter(
        ({ id, value }) =>
          id !== batch?.id &&
          !value.sealed &&
          value.sharesRunOf === undefined &&
          freeTrays(value.dryer, inRunOf(id, all, batch)) > 0,
      );
  return { beside, joinable, all };
}

/** The batches in the run of one, but for a batch that is looked at. */
const inRunOf = (id: string, all: readonly KeptBatch[], but?: KeptBatch): Batch[] =>
  all.filter((other) => runOf(other) === id && other.id !== but?.id).map(({ value }) => value);

/** @returns what a batch can be loaded together with, to choose from. */
export const runOptions = ({ joinable, all }: RunChoice): { value: string; label: string }[] => [
  { value: '', label: say('a run of its own') },
  ...joinable.map(({ id, value }) => ({
    value: id,
    label: say('{code} {recipe}, {dryer}: {free, plural, one {# tray} other {# trays}} free', {
      code: value.code,
      recipe: value.recipe.name,
      dryer: value.dryer.name,
      free: freeTrays(value.dryer, inRunOf(id, all)),
    }),
  })),
];

/** Reads with which batch another is loaded: the trays of both have to fit in one dryer. */
function readRun(
  read: FormReader,
  { joinable, all, beside }: RunChoice,
  dryer: Dryer | undefined,
  trays: number,
  before?: string,
): string | undefined {
  const wanted = 'sharesRunOf' in read.entered ? read.text('sharesRunOf') : before;
  const first = joinable.find(({ id }) => id === wanted);
  if (wanted !== undefined && !first && wanted !== before)
    read.add([
      { field: 'sharesRunOf', message: say('choose one of the batches listed; that one is gone or full') },
    ]);
  if (first && dryer && first.value.dryer.name !== dryer.name)
    read.add([
      {
        field: 'sharesRunOf',
        message: say('is in "{dryer}"; choose that dryer too', { dryer: first.value.dryer.name }),
      },
    ]);
  const together = beside.map(({ value }) => value);
  const others = wanted === before ? together : first ? inRunOf(first.id, all) : [];
  const free = dryer ? freeTrays(dryer, others) : trays;
  if (others.length > 0 && trays > free)
    read.add([
      {
        field: 'trays',
        message: say(
          'are {trays}, but the other batches of the run left {free}. Load fewer, or choose a run of its own',
          { trays, free },
        ),
      },
    ]);
  return wanted;
}

export const readCook: ReadStep = (read, batch, _, today) =>
  checked(read, {
    ...batch,
    timesCooked: read.number('timesCooked'),
    cookedOn: read.text('cookedOn'),
    cookedG: read.number('cookedG', { quantity: 'food', stored: batch.cookedG }),
    checks: readChecks(read, batch, 'cook', today),
  });

export const readLoad: ReadStep = (read, batch, kitchen, today, run = runChoice([])) => {
  const dryer =
    read.text('dryer') === batch.dryer.name
      ? batch.dryer
      : kitchen.dryers.find(({ name }) => name === read.text('dryer'));
  if (!dryer) read.add([{ field: 'dryer', message: say('choose one of the dryers of your equipment') }]);
  const onForm = linesOf(read.entered, 'trays');
  const rows = onForm.filter((row) => read.text(`trays[${row}].loadedG`) !== undefined);
  const onlyEmpty = onForm.filter((row) => !rows.includes(row) && read.number(`trays[${row}].tareG`));
  if (rows.length > 0)
    read.add(
      onlyEmpty.map((row) => ({
        field: `trays[${row}].loadedG`,
        message: say('weigh it with its food too, or set its empty weight to 0 if you are not using it'),
      })),
    );
  if (rows.length === 0)
    read.add([
      { field: 'trays', message: say('weigh at least one tray with its wet food; none is entered') },
    ]);
  if (batch.weighings.length > 0 && rows.length !== batch.trays.length)
    read.add([
      {
        field: 'trays',
        message: say(
          'are now {now}, but {before} were weighed during drying. Remove those weighings first, or add the trays back',
          { now: rows.length, before: batch.trays.length },
        ),
      },
    ]);
  const sharesRunOf = readRun(read, run, dryer, rows.length, batch.sharesRunOf);
  return checked(
    read,
    {
      ...batch,
      ...(dryer && { dryer }),
      sharesRunOf,
      preFrozen: read.choices('preFrozen').length > 0,
      trays: rows.map((row) => ({
        tareG: read.number(`trays[${row}].tareG`, { quantity: 'food', stored: batch.trays[row]?.tareG }),
        loadedG: read.number(`trays[${row}].loadedG`, {
          quantity: 'food',
          stored: batch.trays[row]?.loadedG,
        }),
      })),
      checks: readChecks(read, batch, 'load', today),
    },
    (problems) => atLines(problems, { trays: rows }),
  );
};

/** One more weighing of all trays. */
export const readWeighing: ReadStep = (read, batch, _, today) => {
  const at = batch.weighings.length;
  if (batch.trays.length === 0)
    read.add([{ field: '', message: say('No trays weighed yet. Do that first, under Load.') }]);
  const trays = batch.trays.map((_tray, index) =>
    withoutUndefined({
      grossG: read.number(`weighed[${index}].grossG`, { quantity: 'food' }),
      feel: read.text(`weighed[${index}].feel`),
    }),
  );
  if (
    batch.trays.length > 0 &&
    trays.every(({ grossG }) => grossG === undefined) &&
    read.problems.length === 0
  )
    read.add([{ field: 'weighed[0].grossG', message: say('weigh at least one tray') }]);
  const onForm = (field: string) => field.replace(/^trays/, 'weighed');
  const weighing = Weighing.safeParse(withoutUndefined({ afterH: read.number('afterH'), trays }), {
    reportInput: true,
  });
  read.accept(weighing, (problems) => renamed(problems, onForm));
  if (!weighing.success) return undefined;
  return checked(
    read,
    {
      ...batch,
      weighings: [...batch.weighings, weighing.data],
      checks: readChecks(read, batch, 'dry', today),
    },
    (problems) =>
      renamed(problems, (field) =>
        field.startsWith(`weighings[${at}].`) ? onForm(field.slice(`weighings[${at}].`.length)) : field,
      ),
  );
};

export const readPortions: ReadStep = (read, batch) => {
  const volumeMl = read.number('cup.volumeMl', { quantity: 'pour', stored: batch.cup?.volumeMl });
  const netG = read.number('cup.netG', { quantity: 'food', stored: batch.cup?.netG });
  if ((volumeMl === undefined) !== (netG === undefined) && read.problems.length === 0)
    read.add([
      {
        field: volumeMl === undefined ? 'cup.volumeMl' : 'cup.netG',
        message: say('enter both the volume and the weight of the cup, or neither'),
      },
    ]);
  return checked(read, {
    ...batch,
    energyKwh: read.number('energyKwh'),
    packedG: read.number('packedG', { quantity: 'food', stored: batch.packedG }),
    cup: volumeMl === undefined && netG === undefined ? undefined : withoutUndefined({ volumeMl, netG }),
    servings: read.number('servings'),
    mostPerPouch: read.number('mostPerPouch'),
    // what was chosen fitted the servings before
    fills: undefined,
  });
};

/** The pouch of a line and its absorbers, of the equipment or as they were chosen before. @param at what the names of the fields of the line begin with */
function readContainer(read: FormReader, { fills = [] }: Batch, kitchen: Kitchen, at: string) {
  const [, part = '', label = ''] = /^(\w+) (.*)$/s.exec(read.text(`${at}container`) ?? '') ?? [];
  const pouch = [...kitchen.pouches, ...fills.map((fill) => fill.pouch)].find((size) => size.label === label);
  if (!pouch)
    read.add([{ field: `${at}container`, message: say('choose one of the pouches of your equipment') }]);
  const absorber = [...kitchen.absorbers, ...fills.flatMap((fill) => fill.absorber ?? [])].find(
    (size) => size.label === read.text(`${at}absorber`),
  );
  const count = read.number(`${at}absorbers`) ?? 0;
  return {
    pouch,
    half: part === 'half',
    ...(absorber && count > 0 && { absorber }),
    absorbers: absorber ? count : 0,
  };
}

export const readFills: ReadStep = (read, batch, kitchen) => {
  const lines = linesOf(read.entered, 'fills').filter(
    (line) => read.text(`fills[${line}].pouches`) !== undefined,
  );
  const fills = lines.map((line) =>
    withoutUndefined({
      ...readContainer(read, batch, kitchen, `fills[${line}].`),
      servings: read.number(`fills[${line}].servings`),
      pouches: read.number(`fills[${line}].pouches`),
    }),
  );
  if (fills.length === 0)
    read.add([{ field: 'fills', message: say('enter at least one line, or take what is proposed') }]);
  return checked(read, { ...batch, fills }, (problems) =>
    atLines(
      renamed(problems, (field) => field.replace(/\.pouch$/, '.container')),
      { fills: lines },
    ),
  );
};

export const readSeal: ReadStep = (read, batch, _, today) =>
  checked(read, {
    ...batch,
    code: read.text('code'),
    allergens: read.text('allergensStated') === 'yes' ? read.choices('allergens') : undefined,
    bestBefore: read.text('bestBefore'),
    place: read.text('place'),
    note: read.text('note') ?? '',
    releasedBecause: read.text('releasedBecause'),
    waterActivity: read.number('waterActivity'),
    checks: readChecks(read, batch, 'seal', today),
  });

/** All that a batch needs that skips its steps: its pouches by weight, and the checks of every step. */
export const readQuick: ReadStep = (read, batch, kitchen, today) => {
  const said = read.accept(
    PouchesByWeight.safeParse(
      withoutUndefined({
        pouches: read.number('pouches'),
        netG: read.number('netG', { quantity: 'food' }),
        restG: read.number('restG', { quantity: 'food' }),
        servings: read.number('servings'),
      }),
      { reportInput: true },
    ),
  );
  const how = readContainer(read, batch, kitchen, '');
  const sealed = readSeal(read, batch, kitchen, today);
  if (!said || !how.pouch || !sealed) return undefined;
  const checks = SAFETY_STEPS.flatMap((step) => checksOfStep(read, batch, step, today));
  return checked(read, quickBatch({ ...sealed, checks }, said, { ...how, pouch: how.pouch }), (problems) =>
    renamed(problems, (field) => field.replace(/^fills\[\d+\]\./, '').replace('packedG', 'netG')),
  );
};

/** Since when dehydrated food is conditioned. */
export const readConditioning: ReadStep = (read, batch) =>
  checked(read, { ...batch, conditionedFrom: read.text('conditionedFrom') });

/** The checks of a step as they are ticked on the form, or have their temperature entered; those of the other steps as they were. */
function readChecks(read: FormReader, batch: Batch, step: SafetyStep, today: string): Batch['checks'] {
  const ofStep = safetyChecks(batch.recipe, batch.dryer.process).filter((check) => check.step === step);
  const others = batch.checks.filter(({ id }) => !ofStep.some((check) => check.id === id));
  return [...others, ...checksOfStep(read, batch, step, today)];
}

function checksOfStep(read: FormReader, batch: Batch, step: SafetyStep, today: string): Batch['checks'] {
  const ofStep = safetyChecks(batch.recipe, batch.dryer.process).filter((check) => check.step === step);
  const ticked = ofStep.flatMap(({ id, leastC }) => {
    if (read.choices(`check.${id}`).length === 0 && read.text(`reading.${id}`) === undefined) return [];
    const before = batch.checks.find((check) => check.id === id);
    const readingC =
      leastC === undefined
        ? undefined
        : read.number(`reading.${id}`, { quantity: 'temperature', stored: before?.readingC });
    return [withoutUndefined({ id, on: before?.on ?? today, readingC, note: before?.note ?? '' })];
  });
  return ticked;
}

const renamed = (problems: readonly Problem[], name: (field: string) => string): Problem[] =>
  problems.map((problem) => ({ ...problem, field: name(problem.field) }));

function checked(
  read: FormReader,
  input: { [Field in keyof Batch]?: unknown },
  place: (problems: readonly Problem[]) => readonly Problem[] = (problems) => problems,
): Batch | undefined {
  const reading = (field: string) => {
    const [, at] = /^checks\[(\d+)\]\.readingC$/.exec(field) ?? [];
    const check = at === undefined ? undefined : (input.checks as Batch['checks'])[Number(at)];
    return check ? `reading.${check.id}` : field;
  };
  return read.accept(
    Batch.safeParse(
      {
        ...withoutUndefined(input),
        ...(Array.isArray(input.trays) && {
          trays: input.trays.map((tray: object) => withoutUndefined(tray)),
        }),
      },
      { reportInput: true },
    ),
    (problems) => place(renamed(problems, reading)),
  );
}
