import type { Batch, PouchFill } from '../model/batch.ts';
import type { FatClass, Kitchen } from '../model/kitchen.ts';
import { chooseAbsorbers, oxygenInPouchMl, ruleOfThumbMl } from './absorbers.ts';
import type { DryFood } from './dry-food.ts';
import {
  containerMl,
  containerName,
  proposePouches,
  roomMl,
  servingsThatFit,
  type ContainerName,
  type ServingVolume,
} from './portioning.ts';
import { scaleParts } from './recipe-totals.ts';
import { hasMeat } from './safety-steps.ts';
import { keeping, type Keeping } from './storage.ts';
import { trueVolumeMl } from './true-volume.ts';

export type FillSheet = {
  readonly fill: PouchFill;
  readonly name: ContainerName;
  /** Servings that fit with the headspace, and with their water where they are eaten from the pouch. */
  readonly fits: number;
  /** Volume of all its servings as they are in it when it is fullest, ml. */
  readonly fullMl: number;
  readonly oxygenMl: number;
  readonly neededMl: number;
  readonly absorbedMl: number;
  /** Whether its absorbers take up all the oxygen, with or without the reserve. */
  readonly isOxygenFree: boolean;
  readonly ruleOfThumb: { readonly low: number; readonly high: number };
  readonly keeping: Keeping | undefined;
  readonly code: string;
};

/**
 * The pouches of a batch, as chosen or else as proposed, each with its oxygen, absorbers, keeping and the code of its lot.
 *
 * @param wetMl volume of a serving with its water, ml
 * @returns `undefined` where none is chosen and no pouch of the kitchen holds a serving
 */
export function fillPouches(
  batch: Batch,
  kitchen: Kitchen,
  dry: DryFood,
  fatClass: FatClass,
  sealedOn: string,
  wetMl: number,
): FillSheet[] | undefined {
  const volume: ServingVolume = { dryMl: dry.servingMl, wetMl };
  const oxygenOf = (container: Pick<PouchFill, 'pouch' | 'half' | 'servings'>) =>
    oxygenInPouchMl(containerMl(container), trueVolumeMl(scaleParts(dry.servingParts, container.servings)));
  const chosen = batch.fills ?? proposeFills(batch, kitchen, dry, volume, oxygenOf);
  return chosen?.map((fill, index): FillSheet => {
    const oxygenMl = oxygenOf(fill);
    const neededMl = oxygenMl * (1 + kitchen.absorberReserve);
    const absorbedMl = fill.absorbers * (fill.absorber?.oxygenMl ?? 0);
    const isOxygenFree = absorbedMl > 0 && absorbedMl >= oxygenMl;
    return {
      fill,
      name: containerName(fill),
      fits: servingsThatFit(fill, roomMl(fill, volume), kitchen.headspaceShare),
      fullMl: fill.servings * roomMl(fill, volume),
      oxygenMl,
      neededMl,
      absorbedMl,
      isOxygenFree,
      ruleOfThumb: ruleOfThumbMl(containerMl(fill)),
      keeping: keeping(
        {
          process: batch.dryer.process,
          fatClass,
          residual: dry.residual,
          barrier: fill.pouch.barrier,
          absorber: isOxygenFree,
          sealedOn,
          hasMeat: hasMeat(batch.recipe),
        },
        kitchen,
      ),
      code: chosen.length === 1 ? batch.code : `${batch.code}-${index + 1}`,
    };
  });
}

function proposeFills(
  batch: Batch,
  kitchen: Kitchen,
  dry: DryFood,
  volume: ServingVolume,
  oxygenOf: (container: Pick<PouchFill, 'pouch' | 'half' | 'servings'>) => number,
): PouchFill[] | undefined {
  if (dry.servingMl <= 0) return [];
  const wholeServings = Math.max(1, Math.floor(dry.servings + 1e-9));
  return proposePouches(
    wholeServings,
    volume,
    kitchen.pouches,
    kitchen.headspaceShare,
    batch.mostPerPouch,
  )?.map((portions): PouchFill => {
    const choice = chooseAbsorbers(oxygenOf(portions), kitchen.absorberReserve, kitchen.absorbers);
    return choice ? { ...portions, ...choice } : { ...portions, absorbers: 0 };
  });
}
