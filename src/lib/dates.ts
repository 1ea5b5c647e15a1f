/** @returns the calendar date of an instant where the program runs, ISO 8601 */
export function localDate(at: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
