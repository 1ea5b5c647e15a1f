import { describe, expect, it } from 'vitest';
import { defaultKitchen, PouchSize } from '../model/kitchen.ts';
import { containerMl, containerName, containerTareG, proposePouches, servingsThatFit } from './portioning.ts';

const pouch = (volumeMl: number, canBeCut = false) =>
  PouchSize.parse({ label: `${volumeMl} ml`, barrier: 'foil pouch', volumeMl, tareG: 10, canBeCut });
const proposed = (servings: number, servingMl: number, pouches: readonly PouchSize[], most?: number) =>
  proposePouches(servings, { dryMl: servingMl, wetMl: 0 }, pouches, 0.2, most)?.map(
    (portions) =>
      `${portions.pouches} × ${portions.servings} in ${portions.half ? 'half of ' : ''}${portions.pouch.label}`,
  );

describe('half a pouch', () => {
  it('weighs half and holds a good third', () => {
    const half = { pouch: pouch(1000, true), half: true };
    expect(containerTareG(half)).toBe(5);
    expect(containerMl(half)).toBeCloseTo(353.6, 1);
    expect(containerName(half)).toEqual({ label: '1000 ml', half: true });
  });
});

describe('servings that fit', () => {
  it('leave the headspace', () => {
    const whole = { pouch: pouch(1000), half: false };
    expect(servingsThatFit(whole, 200, 0.2)).toBe(4);
    expect(servingsThatFit(whole, 201, 0.2)).toBe(3);
    expect(servingsThatFit(whole, 900, 0.2)).toBe(0);
  });

  it('are a hundred at most, however small', () => {
    expect(servingsThatFit({ pouch: pouch(50_000), half: false }, 1e-6, 0)).toBe(100);
  });
});

describe('a proposal', () => {
  it('leaves the least room empty', () => {
    expect(proposed(4, 200, [pouch(1000), pouch(250)])).toEqual(['1 × 4 in 1000 ml']);
    expect(proposed(5, 200, [pouch(1000), pouch(250)])).toEqual(['1 × 4 in 1000 ml', '1 × 1 in 250 ml']);
    expect(proposed(3, 200, [pouch(1000), pouch(250)])).toEqual(['3 × 1 in 250 ml']);
  });

  it('then takes the fewest pouches, half ones as halves', () => {
    expect(proposed(4, 200, [pouch(250), pouch(500)])).toEqual(['2 × 2 in 500 ml']);
    expect(proposed(1, 280, [pouch(1000, true)])).toEqual(['1 × 1 in half of 1000 ml']);
    expect(proposed(1, 280, [pouch(1000)])).toEqual(['1 × 1 in 1000 ml']);
    const asLargeAsHalf = pouch(1000 * 0.5 ** 1.5);
    expect(proposed(1, 280, [asLargeAsHalf, pouch(1000, true)])).toEqual(['1 × 1 in half of 1000 ml']);
  });

  it('puts no more into a pouch than it is told to', () => {
    expect(proposed(4, 200, [pouch(1000)], 2)).toEqual(['2 × 2 in 1000 ml']);
    expect(proposed(5, 200, [pouch(1000)], 2)).toEqual(['2 × 2 in 1000 ml', '1 × 1 in 1000 ml']);
  });

  it('is none where no pouch is large enough, or there is none', () => {
    expect(proposed(2, 2000, defaultKitchen().pouches)).toBeUndefined();
    expect(proposed(2, 200, [])).toBeUndefined();
  });
});

describe('a meal that is eaten from its pouch', () => {
  const size = (label: string, volumeMl: number, more: Partial<PouchSize> = {}): PouchSize => ({
    label,
    barrier: 'foil pouch',
    volumeMl,
    tareG: 10,
    priceMinor: 20,
    canBeCut: false,
    ...more,
  });
  const small = size('half a litre', 500);
  const large = size('a litre', 1000);
  /** 150 ml dry, 600 ml with its water. */
  const meal = { dryMl: 150, wetMl: 600 };

  it('needs the room of its water too, and is for one or two', () => {
    expect(proposePouches(4, meal, [small, large], 0.2)).toEqual([
      { pouch: large, half: false, servings: 1, pouches: 4 },
    ]);
    expect(proposePouches(4, { dryMl: 50, wetMl: 200 }, [large], 0.2)).toEqual([
      { pouch: large, half: false, servings: 2, pouches: 2 },
    ]);
    expect(proposePouches(4, meal, [small], 0.2)).toBeUndefined();
  });

  it('takes its dry room only where it is poured into a bowl', () => {
    const bowl = size('half a litre', 500, { noEating: true });
    expect(proposePouches(4, meal, [bowl], 0.2)).toEqual([
      { pouch: bowl, half: false, servings: 2, pouches: 2 },
    ]);
  });
});
