/** Source: Canadian Forces Health Services (Kingston), Annex B, work and rest by WBGT, °C: light, moderate, heavy, very heavy work; people not used to the heat. 0: avoid. */
import { describe, expect, it } from 'vitest';
import { fluidReplacementMl, WORK_RATES } from '../../src/lib/planning/hydration/fluid-replacement.ts';
import { workRestOf } from '../../src/lib/planning/hydration/work-rest.ts';

const TABLE = [
  [20, [60, 60, 40, 30]],
  [25.4, [60, 60, 40, 30]],
  [25.5, [50, 40, 30, 20]],
  [26.5, [40, 30, 20, 10]],
  [29.4, [40, 30, 20, 10]],
  [29.5, [30, 20, 10, 0]],
  [31, [20, 10, 0, 0]],
  [31.9, [20, 10, 0, 0]],
  [32, [10, 0, 0, 0]],
  [40, [10, 0, 0, 0]],
] as const;

describe.each(TABLE)('at a WBGT of %d °C', (wbgtC, minutes) => {
  it('people not used to the heat work as the table says', () =>
    expect(
      WORK_RATES.map((work) => {
        const { workMin, avoid } = workRestOf(wbgtC, work, false);
        return avoid ? 0 : workMin;
      }),
    ).toEqual([...minutes]));

  it('whoever is used to it is told to avoid the same work', () =>
    expect(WORK_RATES.map((work) => workRestOf(wbgtC, work, true).avoid)).toEqual(
      minutes.map((workMin) => workMin === 0),
    ));
});

it('below 20 °C sets no limit', () =>
  expect(WORK_RATES.map((work) => workRestOf(19.9, work, false))).toEqual(
    WORK_RATES.map(() => ({ workMin: 60, avoid: false })),
  ));

it('asks for 1/2, 3/4 and 3/4 l an hour in its first row, as we do within 60 ml', () =>
  [500, 750, 750].forEach((ml, index) =>
    expect(Math.abs(fluidReplacementMl(22, WORK_RATES[index] ?? 'easy') - ml)).toBeLessThan(60),
  ));
