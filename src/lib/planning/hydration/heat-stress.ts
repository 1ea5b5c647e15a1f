/**
 * Wet-bulb globe temperature in the sun and light wind, °C, from air temperature and humidity.
 *
 * Source: Australian Bureau of Meteorology, page on thermal comfort (read in programs that name it): 0.567 T + 0.393 e + 3.94, with the vapour pressure
 * e = (RH/100) 6.105 exp(17.27 T / (237.7 + T)) hPa. It takes moderately strong sun and light wind for granted, so it runs high under cloud and at night.
 *
 * @param airTemperatureC °C
 * @param humidityShare relative humidity, 0 to 1
 */
export function wetBulbGlobeC(airTemperatureC: number, humidityShare: number): number {
  const vapourHPa = humidityShare * 6.105 * Math.exp((17.27 * airTemperatureC) / (237.7 + airTemperatureC));
  return 0.567 * airTemperatureC + 0.393 * vapourHPa + 3.94;
}
