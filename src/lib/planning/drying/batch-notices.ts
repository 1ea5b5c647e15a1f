import type { Batch } from '../model/batch.ts';
import type { CompositionDoubt } from '../model/composition-doubts.ts';
import type { Kitchen } from '../model/kitchen.ts';
import type { NoticeSeverity } from '../model/words.ts';
import type { BatchFigures } from './batch-figures.ts';
import type { DrynessDoubts } from './dryness.ts';
import type { FillSheet } from './fill-pouches.ts';
import { containerMl, isEatenFrom, type ContainerName } from './portioning.ts';
import type { RecipeProblem } from './recipe-totals.ts';
import { hasMeat, type SafetyStep } from './safety-steps.ts';
import { trueVolumeMl } from './true-volume.ts';
import { CONTROLLED_FROM } from './water-activity.ts';

type TrayFigure = { readonly number: number; readonly value: number };

/** What each notice of a batch says, in the units of the core. `presentation/batch-words.ts` words them. */
export type BatchNoticeParams = DrynessDoubts & {
  'recipe-problem': RecipeProblem;
  'composition-doubt': { readonly food: string; readonly doubt: CompositionDoubt };
  'high-in-fat': { readonly share: number };
  'cooked-in-future': { readonly date: string };
  'no-price': { readonly foods: readonly string[] };
  'more-on-trays-than-cooked': { readonly wetG: number; readonly cookedG: number };
  'dish-not-weighed': { readonly cookedG: number; readonly wetG: number; readonly share: number };
  'trays-too-heavy': { readonly mostG: number; readonly trays: readonly TrayFigure[] };
  'trays-too-deep': { readonly mostMm: number; readonly trays: readonly TrayFigure[] };
  'too-few-trays': {
    readonly cookedG: number;
    readonly needed: number;
    readonly dryer: string;
    readonly count: number;
  };
  'volume-estimated': object;
  'cup-too-heavy': object;
  'stir-outside-wait': { readonly stirMin: number; readonly waitMin: number };
  'more-packed-than-dry': { readonly packedG: number; readonly dryG: number };
  'no-pouch-size': object;
  'serving-too-large': { readonly servingMl: number };
  'more-in-pouches': { readonly inPouches: number; readonly servings: number };
  'servings-left': { readonly left: number; readonly servings: number };
  'pouch-overfull': { readonly servings: number; readonly pouch: ContainerName; readonly fits: number };
  'pouch-overflows': {
    readonly servings: number;
    readonly pouch: ContainerName;
    readonly fullMl: number;
    readonly pouchMl: number;
  };
  'no-headspace': { readonly servings: number; readonly pouch: ContainerName; readonly fits: number };
  'no-absorber': { readonly pouch: ContainerName };
  'absorber-too-small': {
    readonly pouch: ContainerName;
    readonly oxygenMl: number;
    readonly neededMl: number;
    readonly absorbedMl: number;
  };
  'germs-can-grow': { readonly waterActivity: number; readonly measured: boolean; readonly limit: number };
  'raw-meat-in-warm-air': object;
  'allergens-undeclared': { readonly foods: readonly string[] };
};
export type BatchNoticeCode = keyof BatchNoticeParams;

/** Each with its severity and the step of the sheet where it matters; what needs attention keeps a batch from being sealed. */
const KINDS: Readonly<Record<BatchNoticeCode, readonly [NoticeSeverity, SafetyStep | 'portion']>> = {
  'recipe-problem': ['attention', 'cook'],
  'composition-doubt': ['check', 'cook'],
  'high-in-fat': ['caution', 'cook'],
  'cooked-in-future': ['attention', 'cook'],
  'no-price': ['note', 'cook'],
  'more-on-trays-than-cooked': ['attention', 'load'],
  'dish-not-weighed': ['note', 'load'],
  'trays-too-heavy': ['caution', 'load'],
  'trays-too-deep': ['caution', 'load'],
  'too-few-trays': ['caution', 'load'],
  'lighter-than-dry-matter': ['check', 'dry'],
  'wetter-than-others': ['caution', 'dry'],
  'volume-estimated': ['note', 'portion'],
  'cup-too-heavy': ['attention', 'portion'],
  'stir-outside-wait': ['note', 'portion'],
  'more-packed-than-dry': ['attention', 'portion'],
  'no-pouch-size': ['attention', 'portion'],
  'serving-too-large': ['attention', 'portion'],
  'more-in-pouches': ['attention', 'portion'],
  'servings-left': ['caution', 'portion'],
  'pouch-overfull': ['attention', 'portion'],
  'pouch-overflows': ['attention', 'portion'],
  'no-headspace': ['caution', 'portion'],
  'no-absorber': ['caution', 'seal'],
  'absorber-too-small': ['caution', 'seal'],
  'germs-can-grow': ['warning', 'seal'],
  'raw-meat-in-warm-air': ['warning', 'cook'],
  'allergens-undeclared': ['warning', 'seal'],
};

export type BatchNotice = {
  readonly [Code in BatchNoticeCode]: {
    readonly code: Code;
    readonly params: BatchNoticeParams[Code];
    readonly severity: NoticeSeverity;
    readonly step: SafetyStep | 'portion';
  };
}[BatchNoticeCode];

const notice = <Code extends BatchNoticeCode>(code: Code, params: BatchNoticeParams[Code]): BatchNotice => {
  const [severity, step] = KINDS[code];
  return { code, params, severity, step } as BatchNotice;
};

/** Scales and spoons lose or add so much, share. */
const WEIGHING_SLACK = 0.02;

/**
 * What the cook should know, at the step where it matters.
 *
 * @param fills `undefined` where no pouch holds a serving
 * @param today calendar date
 */
export function batchNotices(
  batch: Batch,
  kitchen: Kitchen,
  figures: BatchFigures,
  fills: readonly FillSheet[] | undefined,
  today: string,
): BatchNotice[] {
  return [
    ...ofCooking(batch, figures, today),
    ...ofLoading(batch, figures),
    ...figures.dryness.doubts.map(({ code, params }) => notice(code, params)),
    ...ofPortions(batch, figures),
    ...ofSafety(batch, figures),
    ...(fills ? ofPouches(fills, figures) : [noPouchFor(kitchen, figures)]),
    ...(figures.totals.allergensUnstated.length > 0 && batch.allergens === undefined
      ? [notice('allergens-undeclared', { foods: figures.totals.allergensUnstated })]
      : []),
  ];
}

function ofCooking(batch: Batch, { totals }: BatchFigures, today: string): BatchNotice[] {
  const notices = [
    ...totals.problems.map((problem) => notice('recipe-problem', problem)),
    ...totals.doubts.map((doubt) => notice('composition-doubt', doubt)),
  ];
  if (totals.fatClass === 'fatty' && totals.solidsG > 0)
    notices.push(notice('high-in-fat', { share: totals.parts.fatG / totals.solidsG }));
  if (batch.trays.length > 0 && batch.cookedOn > today)
    notices.push(notice('cooked-in-future', { date: batch.cookedOn }));
  if (totals.unpriced.length > 0) notices.push(notice('no-price', { foods: totals.unpriced }));
  return notices;
}

function ofLoading(batch: Batch, { totals, load, run }: BatchFigures): BatchNotice[] {
  const { dryer } = batch;
  const { cookedG } = totals;
  if (batch.trays.length === 0) {
    const { name } = dryer;
    const { freeTrays: count } = run;
    return load.traysNeeded > count
      ? [notice('too-few-trays', { cookedG, needed: load.traysNeeded, dryer: name, count })]
      : [];
  }
  const notices: BatchNotice[] = [];
  const { wetG, share } = load;
  if (share > 1 + WEIGHING_SLACK) notices.push(notice('more-on-trays-than-cooked', { wetG, cookedG }));
  else if (share < 1 - WEIGHING_SLACK && batch.cookedG === undefined)
    notices.push(notice('dish-not-weighed', { cookedG, wetG, share }));
  const trays = load.trays.map((tray, index) => ({ ...tray, number: index + 1 }));
  const heavy = trays.filter(({ tooHeavy }) => tooHeavy);
  if (heavy.length > 0)
    notices.push(
      notice('trays-too-heavy', {
        mostG: dryer.trayLimitG,
        trays: heavy.map(({ number, wetG: value }) => ({ number, value })),
      }),
    );
  const deep = trays.filter(({ tooDeep, tooHeavy }) => tooDeep && !tooHeavy);
  if (deep.length > 0)
    notices.push(
      notice('trays-too-deep', {
        mostMm: dryer.depthLimitMm,
        trays: deep.map(({ number, depthMm: value }) => ({ number, value })),
      }),
    );
  return notices;
}

/** What must not be sealed. Tables know the water of a dish too roughly to forbid by, unless even the dry end of the range is too wet; a meter's reading counts as it is. */
function ofSafety(batch: Batch, { dry, waterActivity }: BatchFigures): BatchNotice[] {
  const notices: BatchNotice[] = [];
  const activity = batch.waterActivity ?? waterActivity?.low;
  if ((dry.weighed || batch.quick) && activity !== undefined && activity >= CONTROLLED_FROM)
    notices.push(
      notice('germs-can-grow', {
        waterActivity: activity,
        measured: batch.waterActivity !== undefined,
        limit: CONTROLLED_FROM,
      }),
    );
  if (batch.dryer.process === 'dehydrated' && batch.recipe.driedRaw && hasMeat(batch.recipe))
    notices.push(notice('raw-meat-in-warm-air', {}));
  return notices;
}

function ofPortions({ recipe, packedG }: Batch, { dry, steep }: BatchFigures): BatchNotice[] {
  const notices: BatchNotice[] = [];
  if (!dry.bulkWeighed) notices.push(notice('volume-estimated', {}));
  else if (dry.servingMl < trueVolumeMl(dry.servingParts)) notices.push(notice('cup-too-heavy', {}));
  if (recipe.waterKind !== 'none' && recipe.stirAfterMin && steep.stirAfterMin === undefined)
    notices.push(notice('stir-outside-wait', { stirMin: recipe.stirAfterMin, waitMin: steep.steepMin }));
  if (packedG !== undefined && packedG > dry.dryG * (1 + WEIGHING_SLACK))
    notices.push(notice('more-packed-than-dry', { packedG, dryG: dry.dryG }));
  return notices;
}

const noPouchFor = (kitchen: Kitchen, { dry, water }: BatchFigures): BatchNotice =>
  kitchen.pouches.length === 0
    ? notice('no-pouch-size', {})
    : notice('serving-too-large', { servingMl: Math.max(dry.servingMl, water.rehydratedMl) });

function ofPouches(fills: readonly FillSheet[], { dry: { servings } }: BatchFigures): BatchNotice[] {
  const notices: BatchNotice[] = [];
  const inPouches = servingsIn(fills);
  if (fills.length > 0 && Math.abs(inPouches - servings) > 1e-6)
    notices.push(
      inPouches > servings
        ? notice('more-in-pouches', { inPouches, servings })
        : notice('servings-left', { left: servings - inPouches, servings }),
    );
  for (const { fill, name: pouch, fits, fullMl, neededMl, absorbedMl, oxygenMl } of fills) {
    const { servings: inOne } = fill;
    if (oxygenMl <= 0) notices.push(notice('pouch-overfull', { servings: inOne, pouch, fits }));
    else if (isEatenFrom(fill) && fullMl > containerMl(fill))
      notices.push(notice('pouch-overflows', { servings: inOne, pouch, fullMl, pouchMl: containerMl(fill) }));
    else if (inOne > fits) notices.push(notice('no-headspace', { servings: inOne, pouch, fits }));
    if (absorbedMl < neededMl)
      notices.push(
        absorbedMl === 0
          ? notice('no-absorber', { pouch })
          : notice('absorber-too-small', { pouch, oxygenMl, neededMl, absorbedMl }),
      );
  }
  return notices;
}

/** Servings in all pouches together. */
export const servingsIn = (fills: readonly FillSheet[]): number =>
  fills.reduce((sum, { fill }) => sum + fill.servings * fill.pouches, 0);
