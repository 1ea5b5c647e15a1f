/** Nights are so much colder than midday, °C (rule of thumb). */
export const NIGHT_COLDER_C = 10;
