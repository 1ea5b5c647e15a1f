import { say } from '../../texts/say.ts';
import { shownExactly, shownFixed } from '../units/show.ts';
import { atwaterKcal } from './energy-factors.ts';
import type { PouchLot } from './pouch-lot.ts';
import type { StatedLot } from './stated-lot.ts';
import { WATER_WORDS } from './words.ts';

export type Doubt = {
  readonly field: keyof PouchLot;
  /** `refuse`: cannot be true, so the lot is not taken in. `warn`: possible but worth a second look. */
  readonly severity: 'refuse' | 'warn';
  readonly reason: string;
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
  const refuse = (field: keyof PouchLot, reason: string) =>
    doubts.push({ field, severity: 'refuse', reason });
  const warn = (field: keyof PouchLot, reason: string) => doubts.push({ field, severity: 'warn', reason });

  if (lot.bestBefore !== undefined && lot.sealedOn !== undefined && lot.bestBefore < lot.sealedOn)
    refuse(
      'bestBefore',
      say('best-before {best} is before the sealing date {sealed}', {
        best: lot.bestBefore,
        sealed: lot.sealedOn,
      }),
    );

  const kcalPerG = lot.energyKcal === undefined ? undefined : lot.energyKcal / lot.dryWeightG;
  if (kcalPerG === undefined) {
    // Nothing to compare.
  } else if (kcalPerG > MAX_KCAL_PER_G)
    refuse(
      'energyKcal',
      say(
        '{richness} kcal per gram of dry weight is more than pure fat gives; check kJ or kcal, and per serving or per pouch',
        { richness: shownFixed(kcalPerG, 1) },
      ),
    );
  else if (lot.energyKcal === 0 && !lot.mealKinds?.includes('drink'))
    warn('energyKcal', say('no energy is stated'));
  else if (kcalPerG < 1 && kcalPerG > 0)
    warn(
      'energyKcal',
      say('{richness} kcal per gram is little for dry food; is the weight the wet weight?', {
        richness: shownFixed(kcalPerG, 1),
      }),
    );

  const macrosG = (lot.proteinG ?? 0) + (lot.fatG ?? 0) + (lot.carbohydrateG ?? 0);
  if (macrosG > lot.dryWeightG * 1.02)
    refuse(
      'dryWeightG',
      say('protein, fat and carbohydrate come to {parts} g, more than the dry weight of {dry} g', {
        parts: shownFixed(macrosG, 0),
        dry: shownExactly(lot.dryWeightG),
      }),
    );
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
      warn(
        'energyKcal',
        say(
          'the stated {stated} kcal is far from the {reckoned} kcal that its protein, fat and carbohydrate give',
          { stated: shownFixed(lot.energyKcal, 0), reckoned: shownFixed(byFactorsKcal, 0) },
        ),
      );
  }

  if (lot.waterMl !== undefined && lot.waterMl > MAX_WATER_PER_DRY * lot.dryWeightG)
    warn(
      'waterMl',
      say(
        '{water} ml on {dry} g of dry food is more than ten times its weight; check the unit, and per serving or per pouch',
        { water: shownFixed(lot.waterMl, 0), dry: shownExactly(lot.dryWeightG) },
      ),
    );
  if (lot.waterKind === 'none' && lot.waterMl !== undefined && lot.waterMl > 0)
    refuse(
      'waterKind',
      say('water kind "none" does not go with {water} ml of water', { water: shownFixed(lot.waterMl, 0) }),
    );
  if (lot.waterKind !== undefined && lot.waterKind !== 'none' && lot.waterMl === 0)
    warn(
      'waterMl',
      say('water kind "{kind}" but no amount of water', { kind: say(WATER_WORDS[lot.waterKind]) }),
    );
  if (lot.stirAfterMin !== undefined && lot.steepMin !== undefined && lot.stirAfterMin >= lot.steepMin)
    refuse(
      'stirAfterMin',
      say('stirring after {stir} min does not fall within the steep time of {steep} min', {
        stir: shownExactly(lot.stirAfterMin),
        steep: shownExactly(lot.steepMin),
      }),
    );
  return doubts;
}
