/**
 * Sources: US Army ERDC, terrain coefficients over snow: settled snow of 0.4 g/cm³ with footprints of 5, 10, 20 cm 1.6, 2.1, 3.9; Soule & Goldman 1972 for other ground; TB MED 507: 3.5 mph
 * on a hard surface is the same class of work as 2.5 mph in loose sand; Tobler 1993: off the path three fifths of the speed; oxygen uptake: Wehrlin & Hallén 2006, Buskirk et al. 1967 (-26 % at
 * 4000 m), MacInnis et al. 2015 (some -50 % at 5300 m); basal rate: Gill & Pugh 1964 (+10 % at 5800 m); Wilderness Medical Society 2024 on ascent.
 */
import { describe, expect, it } from 'vitest';
import { ascentNotices } from '../../src/lib/planning/demand/ascent-notices.ts';
import { altitudeFactor, coldFactor } from '../../src/lib/planning/demand/hard-conditions.ts';
import { resolveTrip } from '../../src/lib/planning/model/resolve-trip.ts';
import { TERRAINS } from '../../src/lib/planning/model/route.ts';
import {
  altitudeTimeFactor,
  snowFactor,
  TERRAIN_FACTOR,
  terrainTimeFactor,
  uptakeLeft,
} from '../../src/lib/planning/route/terrain.ts';
import { exampleTrip } from '../support/examples.ts';

describe('ground', () => {
  it.each([
    [5, 1.6],
    [10, 2.1],
    [20, 3.9],
  ])('settled snow with footprints of %d cm has a factor of %d', (depthCm, factor) =>
    expect(snowFactor(depthCm)).toBeCloseTo(factor, 1),
  );

  it('has the terrain factors of Soule & Goldman 1972', () =>
    expect(TERRAINS.slice(0, 6).map((terrain) => TERRAIN_FACTOR[terrain])).toEqual([
      1.0, 1.1, 1.2, 1.5, 1.8, 2.1,
    ]));

  it('slows in sand as the army does, and in snow no less than off the path', () => {
    expect(terrainTimeFactor('loose-sand')).toBeCloseTo(3.5 / 2.5, 1);
    expect(terrainTimeFactor('deep-snow')).toBeGreaterThan(5 / 3);
    expect(terrainTimeFactor('soft-snow')).toBeLessThan(5 / 3);
    expect(terrainTimeFactor('dirt-road')).toBe(1);
    expect(terrainTimeFactor('blacktop')).toBe(1);
  });
});

describe('height', () => {
  it('takes oxygen uptake as measured', () => {
    expect(uptakeLeft(300)).toBe(1);
    expect(1 - uptakeLeft(1300)).toBeCloseTo(0.063, 3);
    expect(1 - uptakeLeft(4000)).toBeCloseTo(0.26, 2);
    expect(1 - uptakeLeft(5300)).toBeCloseTo(0.5, 2);
  });

  it('slows nobody below 1500 m, and by a quarter to a half at 5000 m', () => {
    expect(altitudeTimeFactor(1500)).toBe(1);
    expect(altitudeTimeFactor(5000)).toBeGreaterThan(1.25);
    expect(altitudeTimeFactor(5000)).toBeLessThan(1.5);
  });

  it('raises the basal rate by a tenth at 5800 m, and cold by no more than that', () => {
    expect(altitudeFactor(1000)).toBe(1);
    expect(altitudeFactor(5800)).toBeCloseTo(1.1, 9);
    expect(coldFactor(15)).toBe(1);
    expect(coldFactor(-50)).toBeLessThanOrEqual(1.1);
  });
});

describe('nights at altitude', () => {
  const codes = (...nightsM: number[]) =>
    ascentNotices(
      resolveTrip(
        exampleTrip({
          dayCount: nightsM.length + 1,
          lastMeal: 'lunch',
          days: nightsM.map((campAltitudeM) => ({ campAltitudeM })),
        }),
      ),
    ).map(({ code }) => code);

  it('within the guideline are not warned of', () => {
    expect(codes(2500, 3000, 3500, 3500, 4000, 4400)).toEqual([]);
    expect(codes(800, 1900, 2600)).toEqual([]);
  });

  it('are warned of where the first is above 2800 m', () =>
    expect(codes(2900, 2900)).toEqual(['ascent-first-night-high']));

  it('are warned of where one rises by more than 500 m above 3000 m', () =>
    expect(codes(2700, 3300)).toEqual(['ascent-too-fast']));

  it('are warned of where 1000 m pass without a day of rest', () =>
    expect(codes(2700, 3100, 3500, 3900, 4200)).toEqual(['ascent-without-rest']));
});
