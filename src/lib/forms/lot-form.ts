import { doubtsOf, type Doubt } from '$lib/planning/model/plausibility.ts';
import { completeLot, type KnownToHousehold } from '$lib/planning/model/complete-lot.ts';
import { LotDetails, type PouchLot } from '$lib/planning/model/pouch-lot.ts';
import { faultText } from '$lib/presentation/fault-words.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import type { Settings } from '$lib/planning/model/settings.ts';
import { statedOf, StatedLot } from '$lib/planning/model/stated-lot.ts';
import { moneyFieldValue } from '$lib/presentation/money.ts';
import { fieldValue, type Quantity } from '$lib/presentation/show.ts';
import { madeCode } from '$lib/shelf-csv/made-code.ts';
import { say, text, type Text } from '$lib/texts/say.ts';
import { MEAL_WORDS, WATER_WORDS, ALLERGEN_WORDS, DIET_WORDS } from '$lib/presentation/code-words.ts';
import { type FieldWords } from './differences.ts';
import { withoutUndefined, type Entered, type FormReader } from './read-form.ts';

/** In which units and money a form is filled in. */
export type ShownIn = Pick<Settings, 'unitSystem' | 'currency'>;

/** The label of every field of a lot, in the order of the form. */
export const LOT_LABELS: Readonly<Record<string, Text>> = {
  code: text('Lot code'),
  recipe: text('Recipe'),
  mealKinds: text('Meals'),
  sealedOn: text('Sealed on'),
  bestBefore: text('Best before'),
  pouches: text('Pouches'),
  servingsPerPouch: text('Servings per pouch'),
  tareG: text('Empty pouch with absorber'),
  volumeMl: text('Volume of a sealed pouch'),
  dryWeightG: text('Dry weight'),
  energyKcal: text('Energy'),
  proteinG: text('Protein'),
  fatG: text('Fat'),
  carbohydrateG: text('Carbohydrate'),
  fibreG: text('Fibre'),
  sugarsG: text('Sugars'),
  sodiumMg: text('Sodium (mg)'),
  waterKind: text('Water'),
  waterMl: text('Water to add'),
  steepMin: text('Rehydration time'),
  stirAfterMin: text('Stir after'),
  allergensStated: text('Allergens stated'),
  allergens: text('Allergens'),
  diets: text('Diets'),
  costMinor: text('Cost'),
  pouch: text('Its pouch'),
  place: text('Place'),
  note: text('Note'),
};

/** The answers to whether the allergens of a lot are known. */
export const ALLERGENS_STATED_WORDS = {
  no: text('not declared'),
  some: text('it contains those ticked below; the others are not declared'),
  yes: text('only those ticked below'),
} as const;

/** What can be ticked of a pouch, each with the detail of the lot and its value that it stands for. */
const POUCH_BOXES = {
  'no boiling water': { detail: 'pouchTakesBoilingWater', value: false },
  'not eaten from': { detail: 'eatFromPouch', value: false },
  stands: { detail: 'pouchStands', value: true },
} as const satisfies Record<string, { detail: keyof LotDetails; value: boolean }>;
type PouchBox = keyof typeof POUCH_BOXES;
export const POUCH_BOX_WORDS: Readonly<Record<PouchBox, Text>> = {
  'no boiling water': text('takes no boiling water'),
  'not eaten from': text('not to be eaten from'),
  stands: text('stands up on its own'),
};

/** @returns what is ticked of the pouch of a lot. */
export const pouchBoxes = (lot: Partial<LotDetails>): PouchBox[] =>
  (Object.keys(POUCH_BOXES) as PouchBox[]).filter(
    (box) => lot[POUCH_BOXES[box].detail] === POUCH_BOXES[box].value,
  );

/** The details of a pouch by its boxes; one that is not ticked stays as it was, unless it says what the box says. */
function pouchDetails(read: FormReader, stored: Partial<LotDetails> = {}): Partial<LotDetails> {
  if (!('pouch' in read.entered)) return {};
  const ticked = read.choices('pouch');
  return Object.fromEntries(
    Object.entries(POUCH_BOXES).map(([box, { detail, value }]) => [
      detail,
      ticked.includes(box) ? value : stored[detail] === value ? undefined : stored[detail],
    ]),
  );
}

/** Fields that hold a number, with what is measured; the others are bare numbers. */
const NUMBERS = {
  servingsPerPouch: undefined,
  tareG: 'food',
  volumeMl: 'pour',
  dryWeightG: 'food',
  energyKcal: 'energy',
  proteinG: 'food',
  fatG: 'food',
  carbohydrateG: 'food',
  fibreG: 'food',
  sugarsG: 'food',
  sodiumMg: undefined,
  waterMl: 'pour',
  steepMin: undefined,
  stirAfterMin: undefined,
} as const satisfies Partial<Record<keyof PouchLot, Quantity | undefined>>;
type NumberName = keyof typeof NUMBERS;
const NUMBER_NAMES = Object.keys(NUMBERS) as NumberName[];

/** What the form of a new lot starts from: what nobody says is estimated, so it stays blank. */
export const newLotFields = (today: string, shown: ShownIn): Entered =>
  fieldsOf({ sealedOn: today, pouches: 1, servingsPerPouch: 1 }, shown);

/** @returns what the form of a lot is filled with; what is an estimate stays blank. */
export const lotFields = (lot: PouchLot, shown: ShownIn): Entered => fieldsOf(statedOf(lot), shown);

function fieldsOf(lot: Partial<StatedLot>, { unitSystem, currency }: ShownIn): Entered {
  const numberField = (name: NumberName): string => {
    const value = lot[name];
    const quantity = NUMBERS[name];
    if (value === undefined) return '';
    return quantity ? fieldValue(value, quantity, unitSystem) : String(value);
  };
  return {
    code: [lot.code ?? ''],
    recipe: [lot.recipe ?? ''],
    mealKinds: lot.mealKinds ?? [],
    sealedOn: [lot.sealedOn ?? ''],
    bestBefore: [lot.bestBefore ?? ''],
    pouches: [lot.pouches === undefined ? '' : String(lot.pouches)],
    ...Object.fromEntries(NUMBER_NAMES.map((name) => [name, [numberField(name)]])),
    waterKind: [lot.waterKind ?? ''],
    allergensStated: [lot.allergensOpen ? 'some' : lot.allergens ? 'yes' : 'no'],
    allergens: lot.allergens ?? [],
    diets: lot.diets ?? [],
    costMinor: [lot.costMinor === undefined ? '' : moneyFieldValue(lot.costMinor, currency)],
    pouch: pouchBoxes(lot),
    place: [lot.place ?? ''],
    note: [lot.note ?? ''],
  };
}

/** What is kept of a lot that its form does not ask for, such as whether its pouch takes boiling water. */
function detailsOf(stored: PouchLot | undefined): Partial<StatedLot> {
  const { estimated: _estimated, contains: _contains, ...details } = LotDetails.shape;
  return Object.fromEntries(
    Object.keys(details).map((name) => [name, stored?.[name as keyof typeof details]]),
  );
}

/**
 * Reads the form of a lot. What is left blank and can be estimated is; a code that is left blank is made of the name.
 *
 * @param known what the rest is estimated from
 * @param stored the lot as it was when the form was opened; its count is kept, as pouches are counted elsewhere
 * @returns the lot with what is odd about it, or `undefined` where `read.problems` says what has to be mended
 */
export function readLot(
  read: FormReader,
  shown: ShownIn,
  known: KnownToHousehold,
  stored?: PouchLot,
): { lot: PouchLot; warnings: Doubt[] } | undefined {
  const stated = read.text('allergensStated') ?? 'no';
  const allergens = read.choices('allergens');
  const mealKinds = read.choices('mealKinds');
  const input = withoutUndefined({
    ...detailsOf(stored),
    code: read.text('code'),
    recipe: read.text('recipe'),
    mealKinds: mealKinds.length > 0 ? mealKinds : undefined,
    sealedOn: read.text('sealedOn'),
    bestBefore: read.text('bestBefore'),
    pouches: stored ? stored.pouches : read.number('pouches'),
    ...Object.fromEntries(
      NUMBER_NAMES.map((name) => {
        const quantity = NUMBERS[name];
        return [name, read.number(name, { stored: stored?.[name], ...(quantity && { quantity }) })];
      }),
    ),
    waterKind: read.text('waterKind'),
    allergens: stated === 'no' || (stated === 'some' && allergens.length === 0) ? undefined : allergens,
    allergensOpen: stated === 'some' && allergens.length > 0 ? true : undefined,
    diets: read.choices('diets'),
    costMinor: read.money('costMinor', shown.currency, stored?.costMinor),
    ...pouchDetails(read, stored),
    ...('place' in read.entered && { place: read.text('place') }),
    note: read.text('note'),
  });

  const result = StatedLot.safeParse(
    stored || input.code !== undefined ? input : { ...input, code: madeCode(input as Partial<StatedLot>) },
    { reportInput: true },
  );
  if (!result.success) read.add(problemsOf(result.error));
  if (stated === 'no' && allergens.length > 0)
    read.add([
      {
        field: 'allergens',
        message: say('some are ticked, but "not declared" is also chosen; choose one or the other'),
      },
    ]);
  if (!result.success || read.problems.length > 0) return undefined;

  const doubts = doubtsOf(result.data);
  read.add(
    doubts
      .filter(({ severity }) => severity === 'refuse')
      .map((doubt) => ({ field: doubt.field, message: faultText(doubt) })),
  );
  if (read.problems.length > 0) return undefined;
  return {
    lot: completeLot(result.data, known, stored),
    warnings: doubts.filter(({ severity }) => severity === 'warn'),
  };
}

/** What is odd about a lot and wants a yes, and what the box "save all the same" sends as that yes. */
export type Odd = { readonly reasons: readonly string[]; readonly yes: string };

/** @returns what still wants a yes. A yes holds for the warnings that were shown; other ones are asked about again. */
export function unconfirmed(read: FormReader, warnings: readonly Doubt[]): Odd | undefined {
  const reasons = warnings.map(
    ({ field, ...fault }) => `${LOT_LABELS[field] ? say(LOT_LABELS[field]) : field}: ${faultText(fault)}`,
  );
  const yes = reasons.join(' / ');
  return reasons.length === 0 || read.text('confirmed') === yes ? undefined : { reasons, yes };
}

const CHOICES: Readonly<Record<string, Readonly<Record<string, Text>>>> = {
  mealKinds: MEAL_WORDS,
  waterKind: WATER_WORDS,
  allergensStated: ALLERGENS_STATED_WORDS,
  allergens: ALLERGEN_WORDS,
  diets: DIET_WORDS,
  pouch: POUCH_BOX_WORDS,
};

/** How the fields of a lot are said; its pouches are counted elsewhere. */
export const LOT_WORDS: FieldWords = {
  label: (field) => {
    const label = field === 'pouches' ? undefined : LOT_LABELS[field];
    return label && say(label);
  },
  choices: (field) => CHOICES[field],
};
