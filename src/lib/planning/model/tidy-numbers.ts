/**
 * Rounds every number in a plain structure to a thousandth, so that a plan holds no float dust and prints the same everywhere.
 *
 * @param value plain objects, arrays, strings, booleans, finite numbers
 */
export function tidyNumbers<T>(value: T): T {
  if (typeof value === 'number') return (Math.round(value * 1000) / 1000 + 0) as T;
  if (Array.isArray(value)) return value.map((entry: unknown) => tidyNumbers(entry)) as T;
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(Object.entries(value).map(([key, entry]) => [key, tidyNumbers(entry)])) as T;
  return value;
}
