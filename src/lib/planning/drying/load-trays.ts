import type { Batch } from '../model/batch.ts';
import type { Dryer } from '../model/kitchen.ts';

export type TrayLoad = {
  readonly wetG: number;
  /** Depth of the food when spread evenly, mm. */
  readonly depthMm: number;
  readonly tooHeavy: boolean;
  readonly tooDeep: boolean;
};

const depthMm = (wetG: number, bulkGPerMl: number, areaCm2: number): number =>
  (10 * wetG) / bulkGPerMl / areaCm2;

/**
 * What one tray takes, by weight and by depth.
 *
 * @param bulkGPerMl weight of one millilitre of the food on the tray, g
 * @returns g
 */
export function trayCapacityG(dryer: Dryer, bulkGPerMl: number): number {
  return Math.min(dryer.trayLimitG, (dryer.depthLimitMm / 10) * dryer.trayAreaCm2 * bulkGPerMl);
}

/** @returns how many trays so much food fills; may be more than the dryer has. */
export function traysFor(wetG: number, dryer: Dryer, bulkGPerMl: number): number {
  return Math.max(0, Math.ceil(wetG / trayCapacityG(dryer, bulkGPerMl) - 1e-9));
}

/** Each tray of a batch as it was loaded. */
export function trayLoads({ trays, dryer, recipe }: Pick<Batch, 'trays' | 'dryer' | 'recipe'>): TrayLoad[] {
  return trays.map(({ loadedG, tareG }) => {
    const wetG = loadedG - tareG;
    const depth = depthMm(wetG, recipe.bulkGPerMl, dryer.trayAreaCm2);
    return {
      wetG,
      depthMm: depth,
      tooHeavy: wetG > dryer.trayLimitG,
      tooDeep: depth > dryer.depthLimitMm,
    };
  });
}
