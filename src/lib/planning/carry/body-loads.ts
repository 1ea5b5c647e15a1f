import { notice, type Notice } from '../model/notices.ts';
import type { ResolvedEater } from '../model/resolve-trip.ts';
import type { DayLoad } from '../model/trip-plan.ts';

/**
 * Loads to be looked at, warned of and warned of strongly, as shares of the body mass.
 *
 * Minors: 10 to 15 % is what evidence justifies as a limit (Brackley & Stevenson 2004, Spine 29:2184); 20 % is the most that the American Academy of Pediatrics has named. Both
 * are for school bags: no guideline for days on the trail is known. Adults: a third of the body mass is the most for mountaineers (Langmuir 2004), 30 % keeps soldiers agile
 * (US Army ADP 3-90), above 45 % is an emergency load (US Army FM 3-21.8). The first step is a rule of thumb.
 */
export const LOAD_STEPS = {
  minor: { 'load-noticeable': 0.1, 'load-heavy': 0.15, 'load-harmful': 0.2 },
  adult: { 'load-noticeable': 0.25, 'load-heavy': 0.3, 'load-harmful': 0.45 },
} as const;

export type LoadStep = keyof (typeof LOAD_STEPS)['adult'];

/** @returns the step that a load reaches; `undefined` below the first */
export function loadStepOf(loadG: number, massG: number, isMinor: boolean): LoadStep | undefined {
  const steps = Object.entries(LOAD_STEPS[isMinor ? 'minor' : 'adult']) as [LoadStep, number][];
  return steps.findLast(([, share]) => loadG / massG > share)?.[0];
}

/** What the heaviest pack of each eater is of their body mass, where that is known and the pack is heavy for it. */
export function bodyLoadNotices(party: readonly ResolvedEater[], loads: readonly DayLoad[]): Notice[] {
  return party.flatMap(({ name, body: { massG }, isMinor }): Notice[] => {
    const own = loads.filter((load) => load.eater === name);
    const [first] = own;
    if (!massG || !first) return [];
    const worst = own.reduce((most, load) => (load.peakG > most.peakG ? load : most), first);
    const step = loadStepOf(worst.peakG, massG, isMinor);
    const params = { share: worst.peakG / massG, minor: isMinor };
    return step ? [notice(step, params, { eater: name, day: worst.day })] : [];
  });
}

/** Adults carry what a child does not: gear that nobody has entered weighs nothing in the plan. */
export function gearNotices(party: readonly ResolvedEater[]): Notice[] {
  const minors = party.filter(({ isMinor }) => isMinor).map(({ name }) => name);
  return minors.length === 0 ? [] : [notice('gear-of-minors', { eaters: minors })];
}
