import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FuelContainer } from '../model/trip.ts';
import { chooseContainers } from './choose-containers.ts';

const size = (netG: number, tareG: number): FuelContainer => ({
  label: `${netG}/${tareG}`,
  fuel: 'canister-gas',
  netG,
  tareG,
});
const usual = [size(100, 95), size(230, 150), size(450, 210)];
const counts = (needG: number) =>
  chooseContainers(needG, usual).map(({ netG, count }) => `${count} × ${netG}`);

/** Every set of up to `most` of each size, by trying them all. */
function lightestByTrying(needG: number, sizes: readonly FuelContainer[], most: number): number {
  const [first, ...others] = sizes;
  if (!first) return needG <= 1e-9 ? 0 : Infinity;
  let best = Infinity;
  for (let count = 0; count <= most; count++)
    best = Math.min(
      best,
      count * (first.netG + first.tareG) +
        lightestByTrying(Math.max(0, needG - count * first.netG), others, most),
    );
  return best;
}

describe('chooseContainers', () => {
  it('takes the lightest whole set', () => {
    expect(counts(0)).toEqual([]);
    expect(counts(90)).toEqual(['1 × 100']);
    expect(counts(101)).toEqual(['1 × 230']);
    expect(counts(231)).toEqual(['1 × 100', '1 × 230']);
    expect(counts(331)).toEqual(['1 × 450']);
    expect(counts(460)).toEqual(['2 × 230']);
  });

  it('takes nothing where there is no size', () => expect(chooseContainers(100, [])).toEqual([]));

  it('is as light as the best of all sets, and holds what is needed', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 900 }),
        fc.array(fc.tuple(fc.integer({ min: 60, max: 500 }), fc.integer({ min: 0, max: 250 })), {
          minLength: 1,
          maxLength: 3,
        }),
        (needG, sizes) => {
          const list = sizes.map(([netG, tareG]) => size(netG, tareG));
          const chosen = chooseContainers(needG, list);
          const grossG = chosen.reduce((sum, { netG, tareG, count }) => sum + count * (netG + tareG), 0);
          expect(chosen.reduce((sum, { netG, count }) => sum + count * netG, 0)).toBeGreaterThanOrEqual(
            needG,
          );
          expect(grossG).toBeCloseTo(lightestByTrying(needG, list, 15), 6);
        },
      ),
      { numRuns: 200, seed: 3 },
    ));
});
