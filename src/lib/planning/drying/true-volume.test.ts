import { describe, expect, it } from 'vitest';
import { trueVolumeMl } from './true-volume.ts';

const NOTHING = { waterG: 0, proteinG: 0, fatG: 0, carbohydrateG: 0, fibreG: 0, ashG: 0 };

describe('the volume of the food itself', () => {
  it('is none of nothing and adds up over its parts', () => {
    expect(trueVolumeMl(NOTHING)).toBe(0);
    const fat = trueVolumeMl({ ...NOTHING, fatG: 50 });
    const ash = trueVolumeMl({ ...NOTHING, ashG: 10 });
    expect(trueVolumeMl({ ...NOTHING, fatG: 50, ashG: 10 })).toBeCloseTo(fat + ash, 9);
  });

  it('is more for fat than for as much sugar', () => {
    expect(trueVolumeMl({ ...NOTHING, fatG: 50 })).toBeGreaterThan(
      trueVolumeMl({ ...NOTHING, carbohydrateG: 50 }),
    );
  });
});
