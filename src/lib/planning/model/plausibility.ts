import { atwaterKcal } from './energy-factors.ts';
import type { Fault, FaultCode, FaultParams } from './faults.ts';
import type { PouchLot } from './pouch-lot.ts';
import type { StatedLot } from './stated-lot.ts';

export type Doubt = Fault & {
  readonly field: keyof PouchLot;
  /** `refuse`: cannot be true, so the lot is not taken in. `warn`: possible but worth a second look. */
  readonly severity: 'refuse' | 'warn';
};

/** Pure fat gives 9 kcal/g (Atwater general factor, USDA Agriculture Handbook 74); 9.3 leaves room for rounding. */
const MAX_KCAL_PER_G = 9.3;
/** Dry meals rarely take more than some four times their weight in water; ten times is a slip of a unit (common practice). */
const MAX_WATER_PER_DRY = 10;
/** Labels and Atwater's 4-4-9 differ by up to about a fifth, from fibre, polyols and rounding (21 CFR 101.9(g) allows 20 %). */
const ENERGY_TOLERANCE = 0.25;

/**
 * Checks that need more than one field of a lot, which a schema of single fields cannot see. What nobody has said is not doubted.
 *
 * @returns doubts in the order of the fields; empty where the lot is plausible.
 */
export function doubtsOf(lot: StatedLot | PouchLot): Doubt[] {
  const doubts: Doubt[] = [];
  const doubt =
    (severity: Doubt['severity']) =>
    <Code extends FaultCode>(field: keyof PouchLot, code: Code, params: FaultParams[Code]) =>
      doubts.push({ field, severity, code, params } as Doubt);
  const refuse = doubt('refuse');
  const warn = doubt('warn');

  if (lot.bestBefore !== undefined && lot.sealedOn !== undefined && lot.bestBefore < lot.sealedOn)
    refuse('bestBefore', 'best-before-sealing', { bestBefore: lot.bestBefore, sealedOn: lot.sealedOn });

  const kcalPerG = lot.energyKcal === undefined ? undefined : lot.energyKcal / lot.dryWeightG;
  if (kcalPerG === undefined) {
    // Nothing to compare.
  } else if (kcalPerG > MAX_KCAL_PER_G) refuse('energyKcal', 'lot-richer-than-fat', { kcalPerG });
  else if (lot.energyKcal === 0 && !lot.mealKinds?.includes('drink')) warn('energyKcal', 'no-energy', {});
  else if (kcalPerG < 1 && kcalPerG > 0) warn('energyKcal', 'little-energy', { kcalPerG });

  const macrosG = (lot.proteinG ?? 0) + (lot.fatG ?? 0) + (lot.carbohydrateG ?? 0);
  if (macrosG > lot.dryWeightG * 1.02)
    refuse('dryWeightG', 'parts-over-dry-weight', { partsG: macrosG, dryG: lot.dryWeightG });
  if (
    lot.energyKcal !== undefined &&
    lot.proteinG !== undefined &&
    lot.fatG !== undefined &&
    lot.carbohydrateG !== undefined
  ) {
    const byFactorsKcal = atwaterKcal({
      proteinG: lot.proteinG,
      fatG: lot.fatG,
      carbohydrateG: lot.carbohydrateG,
    });
    const larger = Math.max(byFactorsKcal, lot.energyKcal);
    if (larger > 20 && Math.abs(byFactorsKcal - lot.energyKcal) > ENERGY_TOLERANCE * larger)
      warn('energyKcal', 'energy-unlike-parts', { statedKcal: lot.energyKcal, byPartsKcal: byFactorsKcal });
  }

  if (lot.waterMl !== undefined && lot.waterMl > MAX_WATER_PER_DRY * lot.dryWeightG)
    warn('waterMl', 'much-water', { waterMl: lot.waterMl, dryG: lot.dryWeightG });
  if (lot.waterKind === 'none' && lot.waterMl !== undefined && lot.waterMl > 0)
    refuse('waterKind', 'water-of-no-kind', { waterMl: lot.waterMl });
  if (lot.waterKind !== undefined && lot.waterKind !== 'none' && lot.waterMl === 0)
    warn('waterMl', 'no-water', { waterKind: lot.waterKind });
  if (lot.stirAfterMin !== undefined && lot.steepMin !== undefined && lot.stirAfterMin >= lot.steepMin)
    refuse('stirAfterMin', 'stir-outside-wait', { stirMin: lot.stirAfterMin, waitMin: lot.steepMin });
  return doubts;
}
