import { standardPressurePa } from './standard-atmosphere.ts';

/** Coefficients n1 to n10 of IAPWS R7-97 (2012), table 34. */
const N = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/**
 * Temperature at which water boils under a pressure, K.
 *
 * Source: IAPWS R7-97 (2012), region 4, backward equation 31.
 *
 * @param pressurePa 611.213 Pa to 22.064 MPa
 * @throws RangeError outside that range
 */
export function saturationTemperatureK(pressurePa: number): number {
  if (!(pressurePa >= 611.213 && pressurePa <= 22.064e6))
    throw new RangeError(
      `pressure ${pressurePa} Pa is outside 611.213 Pa to 22.064 MPa, the saturation line of water`,
    );
  const beta = (pressurePa / 1e6) ** 0.25;
  const e = beta ** 2 + N[2] * beta + N[5];
  const f = N[0] * beta ** 2 + N[3] * beta + N[6];
  const g = N[1] * beta ** 2 + N[4] * beta + N[7];
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return (N[9] + d - Math.sqrt((N[9] + d) ** 2 - 4 * (N[8] + N[9] * d))) / 2;
}

/**
 * Pressure under which water boils at a temperature, Pa.
 *
 * Source: IAPWS R7-97 (2012), region 4, basic equation 30.
 *
 * @param temperatureK 273.15 K to 647.096 K
 * @throws RangeError outside that range
 */
export function saturationPressurePa(temperatureK: number): number {
  if (!(temperatureK >= 273.15 && temperatureK <= 647.096))
    throw new RangeError(
      `temperature ${temperatureK} K is outside 273.15 to 647.096 K, the saturation line of water`,
    );
  const theta = temperatureK + N[8] / (temperatureK - N[9]);
  const a = theta ** 2 + N[0] * theta + N[1];
  const b = N[2] * theta ** 2 + N[3] * theta + N[4];
  const c = N[5] * theta ** 2 + N[6] * theta + N[7];
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4;
}

/**
 * Temperature at which water boils in the open at an altitude, °C: the saturation line at the pressure of the standard atmosphere.
 *
 * @param altitudeM -5000 to 11000 m
 * @throws RangeError outside that range
 */
export const boilingPointC = (altitudeM: number): number =>
  saturationTemperatureK(standardPressurePa(altitudeM)) - 273.15;
