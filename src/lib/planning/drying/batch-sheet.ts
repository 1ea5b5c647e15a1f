import { ALLERGENS, type Allergen } from '../model/allergens.ts';
import type { Batch, PouchFill } from '../model/batch.ts';
import type { Kitchen, Process } from '../model/kitchen.ts';
import { doubtsOf } from '../model/plausibility.ts';
import { PouchLot } from '../model/pouch-lot.ts';
import { problemsOf } from '../model/problems.ts';
import { chooseAbsorbers, oxygenInPouchMl, ruleOfThumbMl } from './absorbers.ts';
import { batchCost, type BatchCost } from './costs.ts';
import { judgeDryness, type Dryness } from './dryness.ts';
import { expectRun, type ExpectedRun, type Run } from './expect-run.ts';
import { trayCapacityG, trayLoads, traysFor, type TrayLoad } from './load-trays.ts';
import { dryWeightG, moistureAt } from './mass-balance.ts';
import { containerMl, containerName, containerTareG, proposePouches, servingsThatFit } from './portioning.ts';
import { recipeTotals, scaleParts, type Parts, type RecipeTotals } from './recipe-totals.ts';
import { waterShareOf, waterToAddMl, type WaterShare } from './rehydration.ts';
import { openChecks, safetyChecks, whyCheckOpen, type SafetyCheck, type SafetyStep } from './safety-steps.ts';
import { keeping, type Keeping } from './storage.ts';
import { trueVolumeMl } from './true-volume.ts';

/** `wrong` needs mending, `caution` needs care, `note` explains. */
export type SheetNotice = {
  readonly level: 'wrong' | 'caution' | 'note';
  readonly step: SafetyStep | 'portion';
  readonly text: string;
};

/** The dry food and one serving of it. */
export type DryFood = {
  /** On the trays, g. */
  readonly dryG: number;
  /** Into pouches, g. */
  readonly packedG: number;
  readonly residual: number;
  /** Whether it was weighed dry; else it is what is expected. */
  readonly weighed: boolean;
  readonly servings: number;
  readonly servingG: number;
  readonly servingKcal: number;
  readonly servingParts: Parts;
  /** Water that drying took from one serving, g. */
  readonly servingRemovedG: number;
  /** Weight of one millilitre of the dry food, g, and whether a cup of it was weighed. */
  readonly bulkGPerMl: number;
  readonly bulkWeighed: boolean;
  readonly servingMl: number;
};

export type FillSheet = {
  readonly fill: PouchFill;
  readonly name: string;
  /** Servings that fit with the headspace. */
  readonly fits: number;
  readonly oxygenMl: number;
  readonly neededMl: number;
  readonly absorbedMl: number;
  /** Whether its absorbers take up all the oxygen, with or without the reserve. */
  readonly isOxygenFree: boolean;
  readonly ruleOfThumb: { readonly low: number; readonly high: number };
  readonly keeping: Keeping | undefined;
  readonly code: string;
};

export type BatchSheet = {
  readonly totals: RecipeTotals;
  readonly load: {
    readonly trays: readonly TrayLoad[];
    readonly wetG: number;
    /** What the trays of the dryer take together, g. */
    readonly capacityG: number;
    /** Trays that the cooked food fills, and how much then goes on each, g. */
    readonly traysNeeded: number;
    readonly evenlyG: number;
    /** On the trays, of what was cooked, share. */
    readonly share: number;
  };
  readonly expected: { readonly dryG: number; readonly waterG: number; readonly run: ExpectedRun };
  readonly dryness: Dryness;
  readonly dry: DryFood;
  readonly water: WaterShare & { readonly servingMl: number };
  readonly steep: { readonly steepMin: number; readonly stirAfterMin?: number };
  readonly fills: readonly FillSheet[];
  readonly cost: BatchCost;
  readonly checks: readonly (SafetyCheck & { readonly open: string | undefined })[];
  readonly allergens: readonly Allergen[] | undefined;
  readonly notices: readonly SheetNotice[];
  /** Why it cannot be sealed at all. */
  readonly blocks: readonly string[];
  /** Why it is not let onto the shelf unless the cook says so and why. */
  readonly holds: readonly string[];
  /** What sealing writes. */
  readonly lots: readonly PouchLot[];
};

/** Weight of a millilitre of dry dish, crumbled, before a cup of it is weighed, g (common practice: a serving of some 110 g fills about 1 1/4 cups). */
const USUAL_BULK: Readonly<Record<Process, number>> = { 'freeze-dried': 0.37, dehydrated: 0.45 };
/** Scales and spoons lose or add so much, share. */
const WEIGHING_SLACK = 0.02;

/**
 * The spine of the kitchen: all that is known of a batch, from the ingredients to the lots that sealing would write. Pure.
 *
 * Dry matter and energy are those of the cooked dish, in the share of it that went onto the trays and from there into pouches; only water is lost in between.
 *
 * @param runs finished runs of all dryers
 * @param today calendar date, for what is not sealed yet
 */
export function batchSheet(batch: Batch, kitchen: Kitchen, runs: readonly Run[], today: string): BatchSheet {
  const { recipe, dryer, trays } = batch;
  const figures = kitchen.processes[dryer.process];
  const totals = recipeTotals(recipe, batch.timesCooked, batch.cookedG);
  const notices: SheetNotice[] = [];
  const say = (level: SheetNotice['level'], step: SheetNotice['step'], text: string) =>
    notices.push({ level, step, text });

  // on the trays
  const loads = trayLoads(batch);
  const onTraysG = loads.reduce((sum, { wetG }) => sum + wetG, 0);
  const wetG = trays.length > 0 ? onTraysG : totals.cookedG;
  const share = totals.cookedG > 0 ? wetG / totals.cookedG : 0;
  const trayG = trayCapacityG(dryer, recipe.bulkGPerMl);
  const capacityG = dryer.trayCount * trayG;
  const traysNeeded = traysFor(totals.cookedG, dryer, recipe.bulkGPerMl);

  // in the dryer
  const dryness = judgeDryness(batch, totals.moisture, figures);
  const expectedDryG = dryWeightG(wetG, totals.moisture, figures.residualShare);
  const expectedWaterG = Math.max(0, wetG - expectedDryG);
  const run = expectRun(dryer, batch.preFrozen, expectedWaterG, capacityG > 0 ? wetG / capacityG : 0, runs);

  // dry
  const weighed = dryness.trays.length > 0 && dryness.trays.every(({ residual }) => residual !== undefined);
  const dryG = weighed ? dryness.nowG : expectedDryG;
  const residual = dryG > 0 ? Math.max(0, moistureAt(wetG, totals.moisture, dryG)) : 0;
  const packedG = batch.packedG ?? dryG;
  const servings =
    batch.servings ?? Math.max(1, Math.round(recipe.servings * batch.timesCooked * Math.min(1, share)));
  const packedShare = dryG > 0 ? packedG / dryG : 0;
  const perServing = (share * packedShare) / servings;
  const servingG = packedG / servings;
  const bulkGPerMl = batch.cup ? batch.cup.netG / batch.cup.volumeMl : USUAL_BULK[dryer.process];
  const servingParts = {
    ...scaleParts(totals.parts, perServing),
    waterG: Math.max(0, servingG - totals.solidsG * perServing),
  };
  const dry: DryFood = {
    dryG,
    packedG,
    residual,
    weighed,
    servings,
    servingG,
    servingKcal: totals.energyKcal * perServing,
    servingParts,
    servingRemovedG: (Math.max(0, wetG - dryG) * packedShare) / servings,
    bulkGPerMl,
    bulkWeighed: batch.cup !== undefined,
    servingMl: servingG / bulkGPerMl,
  };

  // water back
  const waterShare = waterShareOf(recipe, figures);
  const takesWater = recipe.waterKind !== 'none';
  const water = {
    ...waterShare,
    servingMl: takesWater ? waterToAddMl(dry.servingRemovedG, waterShare.share) : 0,
  };
  const steepMin = takesWater ? (recipe.steepMin ?? figures.steepMin) : 0;
  const stirAfterMin =
    recipe.stirAfterMin ?? (recipe.steepMin === undefined ? figures.stirAfterMin : undefined);
  const isStirred = stirAfterMin !== undefined && stirAfterMin > 0 && stirAfterMin < steepMin;
  const steep = isStirred ? { steepMin, stirAfterMin } : { steepMin };

  // into pouches
  const sealedOn = batch.sealed?.on ?? today;
  const wholeServings = Math.max(1, Math.floor(servings + 1e-9));
  const gasOf = (container: Pick<PouchFill, 'pouch' | 'half' | 'servings'>) =>
    oxygenInPouchMl(containerMl(container), trueVolumeMl(scaleParts(servingParts, container.servings)));
  const portioned =
    dry.servingMl > 0
      ? proposePouches(
          wholeServings,
          dry.servingMl,
          kitchen.pouches,
          kitchen.headspaceShare,
          batch.mostPerPouch,
        )
      : [];
  const proposed = portioned?.map((portions): PouchFill => {
    const choice = chooseAbsorbers(gasOf(portions), kitchen.absorberReserve, kitchen.absorbers);
    return choice ? { ...portions, ...choice } : { ...portions, absorbers: 0 };
  });
  const chosen = batch.fills ?? proposed ?? [];
  const fills = chosen.map((fill, index): FillSheet => {
    const oxygenMl = gasOf(fill);
    const neededMl = oxygenMl * (1 + kitchen.absorberReserve);
    const absorbedMl = fill.absorbers * (fill.absorber?.oxygenMl ?? 0);
    const isOxygenFree = absorbedMl > 0 && absorbedMl >= oxygenMl;
    return {
      fill,
      name: containerName(fill),
      fits: servingsThatFit(fill, dry.servingMl, kitchen.headspaceShare),
      oxygenMl,
      neededMl,
      absorbedMl,
      isOxygenFree,
      ruleOfThumb: ruleOfThumbMl(containerMl(fill)),
      keeping: keeping(
        {
          process: dryer.process,
          fatClass: totals.fatClass,
          residual,
          barrier: fill.pouch.barrier,
          absorber: isOxygenFree,
          sealedOn,
        },
        kitchen,
      ),
      code: chosen.length === 1 ? batch.code : `${batch.code}-${index + 1}`,
    };
  });
  const inPouches = fills.reduce((sum, { fill }) => sum + fill.servings * fill.pouches, 0);

  const pouchPieces = (of: (fill: PouchFill) => number) =>
    fills.reduce((sum, { fill }) => sum + of(fill) * fill.pouches, 0);
  const cost = batchCost({
    ingredientsMinor: totals.costMinor * Math.min(1, share),
    energyKwh: batch.energyKwh ?? run.energyKwh.value,
    minorPerKwh: kitchen.electricityMinorPerKwh,
    pouchesMinor: pouchPieces(({ pouch, half }) => pouch.priceMinor * (half ? 0.5 : 1)),
    absorbersMinor: pouchPieces(({ absorber, absorbers }) => (absorber?.priceMinor ?? 0) * absorbers),
    machineMinor: dryer.priceMinor,
    expectedBatches: dryer.expectedBatches,
    servings: inPouches > 0 ? inPouches : servings,
    energyKcal: dry.servingKcal * (inPouches > 0 ? inPouches : servings),
    shopServingMinor: batch.shopServingMinor ?? kitchen.shopServingMinor,
  });

  const checks = safetyChecks(recipe).map((check) => ({ ...check, open: whyCheckOpen(check, batch.checks) }));
  const allergens = allergensOf(totals, batch.allergens);

  // what the cook should know, where it matters
  totals.doubts.forEach(({ food, reason }) => say('caution', 'cook', `${food}: ${reason}.`));
  if (totals.fatClass === 'fatty')
    say(
      'caution',
      'cook',
      `Fat is ${percent(totals.parts.fatG / totals.solidsG)} of the dry matter. Fat neither dries nor keeps: it turns rancid first and can leave the tray wet. Pour or rinse it off, choose leaner pieces, or plan to eat it soon.`,
    );
  if (totals.unpriced.length > 0)
    say('note', 'cook', `No price is known of ${totals.unpriced.join(', ')}, so the cost is too low.`);
  if (trays.length > 0 && share > 1 + WEIGHING_SLACK)
    say(
      'wrong',
      'load',
      `There are ${grams(wetG)} on the trays, more than the ${grams(totals.cookedG)} that were cooked. Weigh the cooked dish, or check the trays' own weights.`,
    );
  else if (trays.length > 0 && share < 1 - WEIGHING_SLACK && batch.cookedG === undefined)
    say(
      'note',
      'load',
      `The dish was not weighed when cooked. By its cooking yield it came to ${grams(totals.cookedG)}, so the ${grams(wetG)} on the trays count as ${percent(share)} of it. If all of it is on the trays, enter its weight.`,
    );
  loads.forEach(({ tooHeavy, tooDeep, wetG: trayWetG, depthMm }, index) => {
    if (tooHeavy)
      say(
        'caution',
        'load',
        `Tray ${index + 1} holds ${grams(trayWetG)}, more than the ${grams(dryer.trayLimitG)} that it takes. It will dry late or not through.`,
      );
    else if (tooDeep)
      say(
        'caution',
        'load',
        `Tray ${index + 1} lies ${depthMm.toFixed(0)} mm deep, more than ${dryer.depthLimitMm} mm. It will dry late or not through.`,
      );
  });
  if (trays.length === 0 && traysNeeded > dryer.trayCount)
    say(
      'caution',
      'load',
      `${grams(totals.cookedG)} fill ${traysNeeded} trays; "${dryer.name}" has ${dryer.trayCount}. What does not fit is eaten, chilled or frozen at once, and dried in another batch.`,
    );
  dryness.doubts.forEach((text) => say('caution', 'dry', text));
  if (!dry.bulkWeighed)
    say(
      'note',
      'portion',
      'No cup of the dry food has been weighed, so its volume is a usual one. Weigh one before you choose pouches.',
    );
  if (takesWater && recipe.stirAfterMin && !isStirred)
    say(
      'note',
      'portion',
      `Stirring after ${recipe.stirAfterMin} min does not fall within the steep time of ${steepMin} min, so the lots do not say it.`,
    );
  if (batch.packedG !== undefined && batch.packedG > dryG * (1 + WEIGHING_SLACK))
    say(
      'wrong',
      'portion',
      `${grams(batch.packedG)} of dry food to be packed are more than the ${grams(dryG)} on the trays.`,
    );
  if (!proposed && !batch.fills)
    say(
      'wrong',
      'portion',
      kitchen.pouches.length === 0
        ? 'The equipment lists no pouch or jar yet. Add one to it.'
        : `A serving fills ${dry.servingMl.toFixed(0)} ml, and no pouch of the kitchen holds one with its headspace. Add a larger pouch to the equipment, or divide into more servings.`,
    );
  if (Math.abs(inPouches - servings) > 1e-6 && fills.length > 0)
    say(
      inPouches > servings ? 'wrong' : 'caution',
      'portion',
      inPouches > servings
        ? `The pouches hold more servings than there are, ${tidy(inPouches)} against ${tidy(servings)}. Take fewer pouches, or divide into more servings.`
        : `${tidy(servings - inPouches)} of ${tidy(servings)} servings are in no pouch.`,
    );
  fills.forEach(({ fill, name, fits, neededMl, absorbedMl, oxygenMl }) => {
    if (fill.servings > fits)
      say(
        'caution',
        'portion',
        `${tidy(fill.servings)} to a pouch do not fit into ${name} with the headspace; servings that fit: ${fits}.`,
      );
    if (absorbedMl < neededMl)
      say(
        'caution',
        'seal',
        absorbedMl === 0
          ? `${name} is sealed without an oxygen absorber, so it keeps for less long.`
          : `${name} shuts in about ${oxygenMl.toFixed(0)} ml of oxygen; with the reserve ${neededMl.toFixed(0)} ml are to be taken up, and its absorbers take ${absorbedMl.toFixed(0)} ml.`,
      );
  });
  if (totals.allergensUnstated.length > 0 && batch.allergens === undefined)
    say(
      'caution',
      'seal',
      `Nobody has stated the allergens of ${totals.allergensUnstated.join(', ')}. State them in the recipe, or for the whole batch below; else the lots go to the shelf with allergens not stated, and nobody who avoids one is served from them.`,
    );

  const missingKeeping = fills.filter((fill) => !fill.keeping && batch.bestBefore === undefined);
  const blocks = [
    ...totals.problems.map(
      ({ field, message }) => `The recipe, ${FIELD_WORDS[field] ?? field}: it ${message}.`,
    ),
    ...(trays.length === 0 ? ['No tray has been weighed in yet.'] : []),
    ...notices.filter(({ level }) => level === 'wrong').map(({ text }) => text),
    ...(batch.fills?.length === 0 ? ['No pouch is chosen.'] : []),
    ...missingKeeping.map(
      ({ fill, name, isOxygenFree }) =>
        `The storage table has no line for ${dryer.process}, ${totals.fatClass} food in ${name} (${fill.pouch.barrier}, ${isOxygenFree ? 'with' : 'without'} enough absorber). Add one to the equipment, or enter a best-before date.`,
    ),
    ...(batch.bestBefore !== undefined && batch.bestBefore < sealedOn
      ? [`The best-before date ${batch.bestBefore} lies before the sealing date ${sealedOn}.`]
      : []),
  ];
  const holds = [
    ...dryness.trays.flatMap(({ open }, index) => open.map((reason) => `Tray ${index + 1}: ${reason}.`)),
    ...openChecks(batch).map(({ check, why }) => `${check.text} – ${why}.`),
  ];

  const written = fills.map(({ fill, keeping: kept, code }): PouchLot => ({
    code,
    recipe: recipe.name,
    mealKinds: recipe.mealKinds,
    sealedOn,
    bestBefore: batch.bestBefore ?? kept?.bestBefore ?? sealedOn,
    pouches: fill.pouches,
    servingsPerPouch: fill.servings,
    dryWeightG: rounded(dry.servingG, 2),
    energyKcal: rounded(dry.servingKcal, 1),
    proteinG: rounded(servingParts.proteinG, 2),
    fatG: rounded(servingParts.fatG, 2),
    carbohydrateG: rounded(servingParts.carbohydrateG, 2),
    waterMl: rounded(water.servingMl, 0),
    waterKind: recipe.waterKind,
    ...steep,
    tareG: rounded(containerTareG(fill) + fill.absorbers * (fill.absorber?.tareG ?? 0), 1),
    volumeMl: rounded(containerMl(fill), 0),
    ...(allergens && { allergens: [...allergens] }),
    diets: [...totals.diets],
    ...(totals.unpriced.length === 0 && { costMinor: Math.round(cost.perServingMinor) }),
    note: batch.note,
  }));
  if (blocks.length === 0) blocks.push(...written.flatMap(whatIsWrongWith));
  const lots = blocks.length > 0 ? [] : written;

  return {
    totals,
    load: {
      trays: loads,
      wetG,
      capacityG,
      traysNeeded,
      evenlyG: Math.min(trayG, totals.cookedG / Math.max(1, Math.min(traysNeeded, dryer.trayCount))),
      share,
    },
    expected: { dryG: expectedDryG, waterG: expectedWaterG, run },
    dryness,
    dry,
    water,
    steep,
    fills,
    cost,
    checks,
    allergens,
    notices,
    blocks,
    holds,
    lots,
  };
}

const FIELD_WORDS: Readonly<Record<string, string>> = {
  ingredients: 'ingredients',
  fatDrainedG: 'fat poured off',
  cookingYield: 'cooking yield',
  cookedG: 'weight of the cooked dish',
};

/** Fields of a lot whose messages do not name them. */
const LOT_WORDS: Readonly<Record<string, string>> = {
  energyKcal: 'energy of a serving',
  waterMl: 'water of a serving',
  costMinor: 'cost of a serving',
  bestBefore: 'best-before',
};

/** What the shelf would refuse of a lot. */
function whatIsWrongWith(lot: PouchLot): string[] {
  const parsed = PouchLot.safeParse(lot, { reportInput: true });
  const problems = parsed.success
    ? doubtsOf(lot)
        .filter(({ severity }) => severity === 'refuse')
        .map(({ reason }) => reason)
    : problemsOf(parsed.error).map(({ field, message }) => `${LOT_WORDS[field] ?? ''} ${message}`.trim());
  return problems.map(
    (problem) => `Lot ${lot.code} would not be right: ${problem}. Check amounts, weights and servings.`,
  );
}

/** From the ingredients and from the cook; `undefined` where neither knows of all. */
function allergensOf(totals: RecipeTotals, stated: readonly Allergen[] | undefined): Allergen[] | undefined {
  if (totals.allergensUnstated.length > 0 && stated === undefined) return undefined;
  const all = new Set([...totals.allergens, ...(stated ?? [])]);
  return ALLERGENS.filter((allergen) => all.has(allergen));
}

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));
const tidy = (value: number): string => String(rounded(value, 2));
const grams = (value: number): string => `${value.toFixed(0)} g`;
const percent = (value: number): string => `${(value * 100).toFixed(0)} %`;
