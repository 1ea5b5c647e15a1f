import type { CarryPlan, DayLoad } from '../planning/model/trip-plan.ts';
import { show, type UnitSystem } from '../presentation/show.ts';
import { say, sayList } from '../texts/say.ts';
import { LOAD_PARTS, peakLoads } from './loads.ts';

type PartKey = (typeof LOAD_PARTS)[number]['key'];

/** A pack by day as bars, in units of its drawing; y grows downwards. */
export type PackDrawing = {
  readonly eater: string;
  /** What the drawing says. */
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly bars: readonly {
    readonly day: number;
    readonly x: number;
    readonly width: number;
    readonly middle: number;
    readonly parts: readonly { readonly key: PartKey; readonly y: number; readonly height: number }[];
    readonly peakY: number;
    readonly isOver: boolean;
    /** The heaviest of the day in words. */
    readonly text: string;
  }[];
  /** Of the carry limit. */
  readonly limitY: number;
};

type Size = { readonly width: number; readonly height: number };

/** Share of a day's room that its bar takes. */
const BAR_SHARE = 0.7;
/** Room above the highest mark. */
const HEADROOM = 1.08;

/**
 * Draws all packs of a trip to one scale, so that they can be compared.
 *
 * @param size of each, in units of the drawing
 */
export function drawPacks(carry: CarryPlan, system: UnitSystem, size: Size): PackDrawing[] {
  const topG = HEADROOM * Math.max(1, ...carry.loads.flatMap(({ peakG, limitG }) => [peakG, limitG]));
  const peaks = new Map(peakLoads(carry).map((peak) => [peak.eater, peak]));
  return carry.packs.flatMap(({ eater }) => {
    const peak = peaks.get(eater);
    const days = carry.loads.filter((load) => load.eater === eater);
    return peak ? [drawPack(days, peak, topG, system, size)] : [];
  });
}

function drawPack(
  days: readonly DayLoad[],
  peak: DayLoad,
  topG: number,
  system: UnitSystem,
  size: Size,
): PackDrawing {
  const high = (g: number) => (g / topG) * size.height;
  const room = size.width / days.length;
  return {
    ...size,
    eater: peak.eater,
    title: packTitle(peak, system),
    limitY: size.height - high(peak.limitG),
    bars: days.map((load, index) => {
      let under = 0;
      return {
        day: load.day,
        x: (index + (1 - BAR_SHARE) / 2) * room,
        width: BAR_SHARE * room,
        middle: (index + 0.5) * room,
        parts: LOAD_PARTS.flatMap(({ key }) => {
          if (load[key] <= 0) return [];
          under += load[key];
          return [{ key, y: size.height - high(under), height: high(load[key]) }];
        }),
        peakY: size.height - high(load.peakG),
        isOver: load.overG > 0,
        text: say('Day {day}: {load}.', { day: load.day, load: show(load.peakG, 'pack', system) }),
      };
    }),
  };
}

/** @returns the heaviest moment of a pack beside its limit. */
export function packTitle(
  { eater, day, peakG, limitG, overG }: Pick<DayLoad, 'eater' | 'day' | 'peakG' | 'limitG' | 'overG'>,
  system: UnitSystem,
): string {
  const words = {
    eater,
    day,
    load: show(peakG, 'pack', system),
    limit: show(limitG, 'pack', system),
    over: show(overG, 'pack', system),
  };
  return overG > 0
    ? say('{eater}: {load} on day {day}, {over} over the limit of {limit}', words)
    : say('{eater}: {load} at most, on day {day}; limit {limit}', words);
}

/** @returns what all packs together say: who is over their limit, or which is the heaviest; empty where nobody carries anything. */
export function packsTitle(carry: CarryPlan, system: UnitSystem): string {
  const peaks = peakLoads(carry);
  const over = peaks.filter(({ overG }) => overG > 0).map(({ eater }) => eater);
  if (over.length > 0) return say('Over the carry limit: {people}', { people: sayList(over) });
  const [first, ...rest] = peaks;
  if (!first) return '';
  const heaviest = rest.reduce((most, peak) => (peak.peakG > most.peakG ? peak : most), first);
  return say("No pack is over its limit. The heaviest is {eater}'s: {load} on day {day}", {
    eater: heaviest.eater,
    load: show(heaviest.peakG, 'pack', system),
    day: heaviest.day,
  });
}
