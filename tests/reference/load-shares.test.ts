/**
 * Sources: Brackley & Stevenson 2004, Spine 29:2184: 10 to 15 % of the body mass as a limit for children's bags; American Academy of Pediatrics: 20 % at the very most;
 * Langmuir 2004: mountaineers not above a third; US Army ADP 3-90: 30 % keeps soldiers agile; US Army FM 3-21.8: above 45 % is an emergency load.
 */
import { describe, expect, it } from 'vitest';
import { loadStepOf } from '../../src/lib/planning/carry/body-loads.ts';
import { resolveTrip } from '../../src/lib/planning/model/resolve-trip.ts';
import type { BodyData } from '../../src/lib/planning/model/body.ts';
import { exampleTrip } from '../support/examples.ts';

const eaterOf = (body: BodyData) => {
  const [eater] = resolveTrip(exampleTrip({ party: [{ name: 'Ada', body }] })).party;
  if (!eater) throw new Error('no eater');
  return eater;
};

describe('warnings', () => {
  it('of a child of 30 kg begin above 10, 15 and 20 %', () =>
    expect([2900, 3100, 4400, 4600, 5900, 6100].map((g) => loadStepOf(g, 30_000, true))).toEqual([
      undefined,
      'load-noticeable',
      'load-noticeable',
      'load-heavy',
      'load-heavy',
      'load-harmful',
    ]));

  it('of an adult of 70 kg: 30 % is warned of, a third always, 45 % strongly', () =>
    expect([20_900, 21_100, 23_400, 31_400, 31_600].map((g) => loadStepOf(g, 70_000, false))).toEqual([
      'load-noticeable',
      'load-heavy',
      'load-heavy',
      'load-heavy',
      'load-harmful',
    ]));
});

describe('limits where nothing is entered', () => {
  it('an eight-year-old of 26 kg may carry 10 to 15 %, gear and all', () => {
    const child = eaterOf({ ageY: 8, massG: 26_000 });
    expect(child.maxLoadG).toBeLessThanOrEqual(0.15 * 26_000);
    expect(child.baseLoadG).toBeLessThan(0.1 * 26_000);
  });

  it('a child without a mass carries a small bag and nothing else', () => {
    const child = eaterOf({ ageY: 8 });
    expect(child.maxLoadG).toBe(child.baseLoadG);
    expect(child.maxLoadG).toBeLessThanOrEqual(1000);
  });

  it.each([45_000, 60_000, 80_000, 110_000])('an adult of %d g stays below the 30 %', (massG) => {
    expect(eaterOf({ massG }).maxLoadG).toBeLessThanOrEqual(0.3 * massG);
    expect(eaterOf({ massG }).baseLoadG).toBeLessThan(eaterOf({ massG }).maxLoadG);
  });
});
