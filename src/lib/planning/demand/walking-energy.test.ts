import { describe, expect, it } from 'vitest';
import type { DayLeg } from '../route/day-legs.ts';
import { walkingRateW } from './load-carriage.ts';
import { walkingEnergy } from './walking-energy.ts';

const leg = (grades: { lengthM: number; grade: number }[], movingH: number): DayLeg => ({
  day: 1,
  fromM: 0,
  toM: 0,
  distanceM: grades.reduce((sum, piece) => sum + piece.lengthM, 0),
  climbM: 0,
  descentM: 0,
  highestM: 0,
  campAltitudeM: 0,
  grades: grades.map((piece) => ({ ...piece, altitudeM: 0 })),
  movingH,
  walkingH: movingH,
  sources: [],
  endsAt: undefined,
});

describe('walkingEnergy', () => {
  it('on the level is rate times time', () => {
    const rateW = walkingRateW({
      massG: 80_000,
      loadG: 20_000,
      speedMs: 12_000 / (3 * 3600),
      grade: 0,
      terrain: 1,
    });
    const walked = walkingEnergy(leg([{ lengthM: 12_000, grade: 0 }], 3), {
      massG: 80_000,
      loadG: 20_000,
      terrain: 1,
    });
    expect(walked.meanW).toBeCloseTo(rateW, 9);
    expect(walked.kcal).toBeCloseTo((rateW * 3 * 3600) / 4184, 6);
  });

  it('does not depend on how a grade is cut into pieces', () => {
    const whole = walkingEnergy(leg([{ lengthM: 6000, grade: 0.1 }], 3), {
      massG: 70_000,
      loadG: 12_000,
      terrain: 1.1,
    });
    const cut = walkingEnergy(
      leg(
        Array.from({ length: 60 }, () => ({ lengthM: 100, grade: 0.1 })),
        3,
      ),
      { massG: 70_000, loadG: 12_000, terrain: 1.1 },
    );
    expect(cut.kcal).toBeCloseTo(whole.kcal, 6);
  });

  it('is more for a leg up than for the same leg flat, and more with a load', () => {
    const up = walkingEnergy(leg([{ lengthM: 6000, grade: 0.15 }], 3), {
      massG: 70_000,
      loadG: 12_000,
      terrain: 1.1,
    }).kcal;
    expect(up).toBeGreaterThan(
      walkingEnergy(leg([{ lengthM: 6000, grade: 0 }], 3), { massG: 70_000, loadG: 12_000, terrain: 1.1 })
        .kcal,
    );
    expect(up).toBeGreaterThan(
      walkingEnergy(leg([{ lengthM: 6000, grade: 0.15 }], 3), { massG: 70_000, loadG: 5000, terrain: 1.1 })
        .kcal,
    );
  });

  it('bears grades of ± 60 %, and a day without walking', () => {
    for (const grade of [-0.6, 0.6]) {
      const { kcal } = walkingEnergy(leg([{ lengthM: 1500, grade }], 3), {
        massG: 70_000,
        loadG: 12_000,
        terrain: 1,
      });
      expect(kcal).toBeGreaterThan(200);
      expect(kcal).toBeLessThan(3000);
    }
    expect(walkingEnergy(leg([], 0), { massG: 70_000, loadG: 12_000, terrain: 1 })).toEqual({
      kcal: 0,
      meanW: 0,
      beyondM: 0,
    });
  });
});
