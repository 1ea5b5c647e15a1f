import { describe, expect, it } from 'vitest';
import { wetBulbGlobeC } from './heat-stress.ts';

describe('wetBulbGlobeC', () => {
  it('is as worked by hand for 30 °C and 50 %', () => {
    // e = 0.5 × 6.105 × exp(17.27 × 30 / 267.7) = 21.15 hPa; 17.01 + 8.31 + 3.94
    expect(wetBulbGlobeC(30, 0.5)).toBeCloseTo(29.26, 1);
  });
  it('grows with heat and with humidity', () => {
    for (let air = -30; air < 45; air++) {
      expect(wetBulbGlobeC(air + 1, 0.5)).toBeGreaterThan(wetBulbGlobeC(air, 0.5));
      expect(wetBulbGlobeC(air, 0.8)).toBeGreaterThan(wetBulbGlobeC(air, 0.3));
    }
  });
});
