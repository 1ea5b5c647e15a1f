/** Lowest and highest geopotential altitude for which the troposphere layer of the standard atmosphere is used here, m. */
const ATMOSPHERE_RANGE_M = { from: -5000, to: 11_000 } as const;

/**
 * Air pressure at an altitude in the standard atmosphere, Pa.
 *
 * Source: ISO 2533:1975 / ICAO Doc 7488, troposphere: p = p0 (1 - L h / T0)^(g0 M / (R L)) with p0 = 101325 Pa, T0 = 288.15 K, L = 0.0065 K/m,
 * g0 = 9.80665 m/s², R = 287.05287 J/(kg K), so that the exponent is 5.25588. Real weather moves it by some 3 %.
 *
 * @param altitudeM geopotential altitude, m, -5000 to 11000
 * @throws RangeError outside that range
 */
export function standardPressurePa(altitudeM: number): number {
  if (!(altitudeM >= ATMOSPHERE_RANGE_M.from && altitudeM <= ATMOSPHERE_RANGE_M.to))
    throw new RangeError(
      `altitude ${altitudeM} m is outside ${ATMOSPHERE_RANGE_M.from} to ${ATMOSPHERE_RANGE_M.to} m of the standard atmosphere's lowest layer`,
    );
  return 101_325 * (1 - (0.0065 * altitudeM) / 288.15) ** (9.80665 / (287.05287 * 0.0065));
}
