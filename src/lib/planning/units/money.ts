/*
 * Money is an integer of minor units (ISO 4217). How many of them make one major unit is known to Intl:
 * 100 for most currencies, 1 for the yen, 1000 for the dinar of Kuwait.
 */

function minorDigits(currency: string): number {
  return (
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2
  );
}

/** @returns minor units as a person reads them: `showMoney(1250, 'EUR')` is "€12.50". */
export function showMoney(minor: number, currency: string): string {
  return new Intl.NumberFormat('en', { style: 'currency', currency }).format(
    minor / 10 ** minorDigits(currency),
  );
}

/** @returns minor units for a form field, without a currency sign: `moneyFieldValue(1250, 'EUR')` is "12.50". */
export function moneyFieldValue(minor: number, currency: string): string {
  const digits = minorDigits(currency);
  return (minor / 10 ** digits).toFixed(digits);
}

/** @returns what a person typed in major units as minor units; a fraction of the smallest coin is rounded. */
export function moneyToMinor(major: number, currency: string): number {
  return Math.round(Number((major * 10 ** minorDigits(currency)).toPrecision(12)));
}
