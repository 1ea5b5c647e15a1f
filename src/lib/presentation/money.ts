import { sayNumber } from '../texts/say.ts';

/*
 * Money is an integer of minor units (ISO 4217). How many of them make one major unit is known to Intl:
 * 100 for most currencies, 1 for the yen, 1000 for the dinar of Kuwait.
 */

const digitsOf = new Map<string, number>();

function minorDigits(currency: string): number {
  let digits = digitsOf.get(currency);
  if (digits === undefined) {
    const format = new Intl.NumberFormat('en', { style: 'currency', currency });
    digits = format.resolvedOptions().maximumFractionDigits ?? 2;
    digitsOf.set(currency, digits); // making a format takes longer than reading the rest of a row of a table
  }
  return digits;
}

/** @returns minor units as a person reads them: `showMoney(1250, 'EUR')` is "€12.50". */
export function showMoney(minor: number, currency: string): string {
  return sayNumber(minor / 10 ** minorDigits(currency), {
    style: 'currency',
    currency,
    currencyDisplay: 'narrowSymbol', // all of it is in the one currency of the settings
  });
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
