import type { Batch, TrayFeel } from '../model/batch.ts';
import type { ProcessFigures } from '../model/kitchen.ts';
import { showBoth } from '../units/both.ts';
import { dryWeightG, moistureAt } from './mass-balance.ts';
import { say, sayNumber } from '../../texts/say.ts';
import { shownFixed } from '../units/show.ts';

export type TrayDryness = {
  readonly wetG: number;
  /** Food on the tray at its last weighing, g; the wet food before any. */
  readonly nowG: number;
  readonly expectedDryG: number;
  /** Water over all at the last weighing, share; `undefined` before any. */
  readonly residual: { readonly value: number; readonly low: number; readonly high: number } | undefined;
  /** Loss from the weighing before to the last, as a share of its weight in an hour; `undefined` before two weighings. */
  readonly lossPerH: number | undefined;
  readonly feel: TrayFeel;
  /** Why the tray does not count as dry; empty: dry. */
  readonly open: readonly string[];
};

export type Dryness = {
  readonly trays: readonly TrayDryness[];
  /** All food on the trays now, g. */
  readonly nowG: number;
  readonly expectedDryG: number;
  readonly hours: number;
  /** Every tray is dry. */
  readonly dry: boolean;
  readonly doubts: readonly string[];
};

/** Two weighings closer than this show nothing, h (common practice). */
export const LEAST_INTERVAL_H = 1;
/** Water of a cooked dish is known from tables to about this, share of its weight (common practice: foods vary). */
export const MOISTURE_UNSURE = 0.015;
/** A tray with so much more residual moisture than the driest stands out. */
const STANDS_OUT = 0.03;

/**
 * Whether the food of each tray is dry: its weight has come to a stand, what is left of its water is within bounds, and it feels dry through.
 *
 * @param moisture of the food when it was loaded, share
 */
export function judgeDryness(
  { trays, weighings }: Pick<Batch, 'trays' | 'weighings'>,
  moisture: number,
  figures: ProcessFigures,
): Dryness {
  const doubts: string[] = [];
  const judged = trays.map((tray, index): TrayDryness => {
    const wetG = tray.loadedG - tray.tareG;
    const weighed = weighings.flatMap(({ afterH, trays: lines }) => {
      const grossG = lines[index]?.grossG;
      return grossG === undefined ? [] : [{ afterH, netG: grossG - tray.tareG }];
    });
    const last = weighed.at(-1);
    const before = weighed.at(-2);
    const feel = weighings.at(-1)?.trays[index]?.feel ?? 'not felt';
    const nowG = last?.netG ?? wetG;
    const lossPerH =
      last && before ? (before.netG - last.netG) / (last.afterH - before.afterH) / last.netG : undefined;
    const at = (wetMoisture: number) =>
      Math.max(0, moistureAt(wetG, Math.min(1, Math.max(0, wetMoisture)), nowG));
    const residual = last && {
      value: at(moisture),
      low: at(moisture - MOISTURE_UNSURE),
      high: at(moisture + MOISTURE_UNSURE),
    };

    const open: string[] = [];
    if (!last) open.push(say('it has not been weighed yet'));
    else if (!before || lossPerH === undefined)
      open.push(say('it needs a second weighing, an hour or more later'));
    else if (last.afterH - before.afterH < LEAST_INTERVAL_H)
      open.push(
        say('its last two weighings lie less than {hours} h apart', { hours: sayNumber(LEAST_INTERVAL_H) }),
      );
    else if (lossPerH > figures.lossBoundPerH)
      open.push(
        say('it still loses {loss} of its weight in an hour; the bound is {bound}', {
          loss: percent(lossPerH),
          bound: percent(figures.lossBoundPerH),
        }),
      );
    else if (lossPerH < -figures.lossBoundPerH)
      open.push(
        say('it has gained weight since the weighing before: damp air, or the scale; dry on and weigh again'),
      );
    if (residual && residual.value > figures.mostResidualShare)
      open.push(
        say('by its weight it still holds {share} water; at most {most} is let through', {
          share: percent(residual.value),
          most: percent(figures.mostResidualShare),
        }),
      );
    if (last && feel === 'not felt') open.push(say('nobody has felt it through'));
    if (feel === 'cold spot') open.push(say('a cold spot was felt: ice or water is left there'));
    if (feel === 'damp or soft spot') open.push(say('a damp or soft spot was felt'));
    if (last && moistureAt(wetG, moisture, nowG) < -MOISTURE_UNSURE / (1 - moisture)) {
      open.push(say('it weighs less than its dry matter can, so its weight shows nothing'));
      doubts.push(
        say(
          "Tray {number} weighs {weight}, less than the dry matter that the recipe gives it, {solids}. Check the tray's own weight, the scale, and the water of the ingredients.",
          {
            number: index + 1,
            weight: showBoth(nowG, 'food'),
            solids: showBoth(wetG * (1 - moisture), 'food'),
          },
        ),
      );
    }
    return {
      wetG,
      nowG,
      expectedDryG: dryWeightG(wetG, moisture, figures.residualShare),
      residual,
      lossPerH,
      feel,
      open,
    };
  });

  const known = judged.flatMap(({ residual }) => (residual ? [residual.value] : []));
  judged.forEach(({ residual }, index) => {
    if (residual && residual.value > Math.min(...known) + STANDS_OUT)
      doubts.push(
        say(
          'Tray {number} holds more water than the driest tray, {share} against {least}: a cold place in the dryer, or a thicker layer. Turn or swap it.',
          { number: index + 1, share: percent(residual.value), least: percent(Math.min(...known)) },
        ),
      );
  });
  return {
    trays: judged,
    nowG: judged.reduce((sum, tray) => sum + tray.nowG, 0),
    expectedDryG: judged.reduce((sum, tray) => sum + tray.expectedDryG, 0),
    hours: weighings.at(-1)?.afterH ?? 0,
    dry: judged.length > 0 && judged.every(({ open }) => open.length === 0),
    doubts,
  };
}

const percent = (value: number): string => `${shownFixed(value * 100, 1)} %`;
